"""One sheet filled, by the checker's rules and to published values."""

from __future__ import annotations

from dataclasses import replace
from itertools import permutations
from random import Random
from typing import Any

import pytest

from kit.cut_at_random import cut_at_random
from kit.cutting_checker import check_sheets
from kit.cutting_published import Instance, instances, pieces_of, stock_of
from rodwright.cutting import Flaw, Piece, Plan, Supply, Trim, fill_sheet
from rodwright.cutting.bounds.fill import Filled
from rodwright.cutting.progress import Patience

FIRST: dict[str | None, Any] = {"horizontal": "along", "vertical": "across", None: None}


def _check(filled: Filled, pieces: list[Piece], sheet: Supply, **rules: Any) -> None:
    """The layout holds, is worth what is said, and not more than is said to be the most."""
    cut = [placed.piece for placed in filled.layout.placed]
    left = [replace(piece, count=piece.count - cut.count(piece.name)) for piece in pieces]
    layouts = (filled.layout,) if cut else ()
    left_over = tuple(piece for piece in left if piece.count)
    kerf = rules.get("kerf", 0.0)
    plan = Plan(layouts, sheet.price * len(layouts), 0, False, kerf, left_over)
    check_sheets(plan, pieces, [sheet], **rules)
    worth = {
        piece.name: piece.length * piece.width if piece.value is None else piece.value
        for piece in pieces
    }
    assert filled.value == pytest.approx(sum(worth[name] for name in cut))
    assert filled.value <= filled.bound
    assert not filled.proven or filled.value == filled.bound


@pytest.mark.parametrize(
    "instance",
    [*instances("sheet_values_in_two_stages.json"), *instances("sheet_values.json")[:6]],
    ids=lambda each: each["name"],
)
def test_published_values_are_reached_and_proven(instance: Instance) -> None:
    pieces, (sheet,) = pieces_of(instance), stock_of(instance)
    rules = {"stages": instance.get("stages"), "first_cut": FIRST[instance.get("first_cut")]}
    filled = fill_sheet(pieces, sheet, **rules)
    _check(filled, pieces, sheet, **rules)
    assert (filled.value, filled.bound, filled.proven) == (*(instance["best_known"],) * 2, True)


@pytest.mark.parametrize("first_cut", ["along", "across", None])
@pytest.mark.parametrize("stages", [None, 1, 2, 3])
def test_rules_kerf_trims_and_flaws_are_kept(stages: int | None, first_cut: Any) -> None:
    random = Random(stages or 0)
    for _ in range(5):
        cut = cut_at_random(random, kerf=2, most=5)
        supply = cut.stock[0]
        length, width = supply.length, supply.width
        flaws = tuple(
            Flaw(random.randint(0, int(length) - 1), random.randint(0, int(width) - 1), 1, 3)
            for _ in range(random.randint(0, 2))
        )
        sheet = replace(supply, trim=Trim(near=1, back=2), flaws=flaws, count=1)
        rules = {"kerf": 2.0, "stages": stages, "first_cut": first_cut}
        filled = fill_sheet(cut.pieces, sheet, **rules)
        _check(filled, cut.pieces, sheet, **rules)


def test_without_values_the_most_area_is_cut() -> None:
    pieces = [Piece("a", 600, 400, 3), Piece("b", 500, 100, 20)]
    sheet = Supply("s", 1203.2, 803.2)
    filled = fill_sheet(pieces, sheet, kerf=3.2)
    _check(filled, pieces, sheet, kerf=3.2)
    assert filled.proven
    assert filled.value == 3 * 600 * 400 + 3 * 500 * 100


def test_what_does_not_go_on_the_sheet_is_not_cut() -> None:
    pieces = [Piece("a", 600, 400), Piece("b", 100, 100), Piece("c", 90, 110, 0)]
    filled = fill_sheet(pieces, Supply("s", 500, 500))
    assert [placed.piece for placed in filled.layout.placed] == ["b"]
    assert filled.proven
    assert fill_sheet(pieces[:1], Supply("s", 500, 500)) == Filled(
        replace(filled.layout, placed=(), offcuts=()), 0.0, 0.0, True
    )


def test_pieces_of_one_size_may_be_worth_different_sums() -> None:
    pieces = [Piece("a", 60, 60, value=1.5), Piece("b", 60, 60, value=2.25)]
    for order in permutations(pieces):
        filled = fill_sheet(order, Supply("s", 100, 100))
        assert [placed.piece for placed in filled.layout.placed] == ["b"]
        assert filled.value == filled.bound == 2.25


def test_a_flaw_costs_no_more_than_it_must() -> None:
    """Six squares of 40 on 120 x 90, with a flaw where the first would lie: pushed the
    other way it would spoil one as well."""
    sheet = Supply("s", 120, 90, flaws=(Flaw(0, 0, 5, 8),))
    pieces = [Piece("a", 40, 40, 9)]
    filled = fill_sheet(pieces, sheet)
    _check(filled, pieces, sheet)
    assert filled.value == 6 * 1600
    assert filled.proven


def test_the_same_question_has_the_same_answer() -> None:
    cut = cut_at_random(Random(3), kerf=3, most=12, side=300)
    first, second = (fill_sheet(cut.pieces, cut.stock[0], kerf=3) for _ in range(2))
    assert first == second


def test_who_stops_it_gets_what_was_found(monkeypatch: pytest.MonkeyPatch) -> None:
    instance = instances("sheet_values.json")[3]

    def interrupted(*_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr("rodwright.cutting.bounds.joined.Joined.search", interrupted)
    patience = Patience()
    filled = fill_sheet(pieces_of(instance), stock_of(instance)[0], patience=patience)
    _check(filled, pieces_of(instance), stock_of(instance)[0])
    assert filled.stopped
    assert not filled.proven
    assert 0 < filled.value <= instance["best_known"] <= filled.bound
