"""Published instances, and the same with a kerf; sources are in ``data/lengths.json``."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from kit.cutting_checker import check_boards
from rodwright.cutting import CannotCutError, Piece, Supply, plan_boards

INSTANCES: list[dict[str, Any]] = json.loads(
    (Path(__file__).parents[1] / "data" / "lengths.json").read_text(encoding="utf-8")
)


def question(instance: dict[str, Any], kerf: int = 0) -> tuple[list[Piece], list[Supply]]:
    """The instance; with a kerf, every size a becomes 10 a - kerf: then (10 a - k) + k + (10 b - k)
    = 10 (a + b) - k, so the same pieces go on the same boards."""

    def size(length: int) -> int:
        return 10 * length - kerf if kerf else length

    pieces = [
        Piece(f"p{number}", size(length), count=count)
        for number, (length, count) in enumerate(instance["items"])
    ]
    stock = [
        Supply(f"s{number}", size(length), count=count, price=price)
        for number, (length, count, price) in enumerate(instance["stock"])
    ]
    return pieces, stock


@pytest.mark.parametrize("instance", INSTANCES, ids=lambda each: each["name"])
def test_the_published_optimum_is_reached_and_proven(instance: dict[str, Any]) -> None:
    pieces, stock = question(instance)
    plan = plan_boards(pieces, stock)
    check_boards(plan, pieces, stock)
    assert (plan.cost, plan.bound, plan.proven) == (instance["best"], instance["best"], True)


@pytest.mark.parametrize("kerf", [1, 4, 9])
@pytest.mark.parametrize("instance", INSTANCES[:4], ids=lambda each: each["name"])
def test_a_kerf_that_is_in_the_sizes_changes_nothing(instance: dict[str, Any], kerf: int) -> None:
    pieces, stock = question(instance, kerf)
    plan = plan_boards(pieces, stock, kerf=kerf)
    check_boards(plan, pieces, stock, kerf=kerf)
    assert (plan.cost, plan.proven) == (instance["best"], True)


@pytest.mark.parametrize("instance", INSTANCES[:5], ids=lambda each: each["name"])
def test_as_many_as_the_optimum_do_and_one_less_is_not_enough(instance: dict[str, Any]) -> None:
    pieces, (supply,) = question(instance)
    enough = Supply(supply.name, supply.length, count=instance["best"])
    assert plan_boards(pieces, [enough]).proven
    with pytest.raises(CannotCutError, match="not enough"):
        plan_boards(pieces, [Supply(supply.name, supply.length, count=instance["best"] - 1)])
