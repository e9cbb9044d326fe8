"""Published cutting problems as the pieces and stock of ours, each with its academic source."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from rodwright.cutting import Piece, Supply
from rodwright.cutting.sheet_problem import Rules, SheetProblem
from rodwright.cutting.sheet_question import problem_of

_DATA = Path(__file__).parents[1] / "cutting" / "data"

Instance = dict[str, Any]
"""As in its file: ``stock`` and ``items`` with length along x and width along y, ``rotation`` (may
items turn), ``best_known`` and ``proven``; ``kerf``, ``stages`` and ``first_cut`` if there are."""


def instances(file: str) -> list[Instance]:
    """All problems of a file in tests/cutting/data."""
    found: list[Instance] = json.loads((_DATA / file).read_text())
    return found


def pieces_of(instance: Instance, *, any_number: int = 1) -> list[Piece]:
    """What is cut; ``any_number`` stands for a count that has no limit."""
    return [
        Piece(
            f"p{number}",
            item["length"],
            item["width"],
            item["count"] or any_number,
            turning=item.get("rotation", instance.get("rotation")),
            value=item.get("value"),
        )
        for number, item in enumerate(instance["items"])
    ]


def stock_of(instance: Instance) -> list[Supply]:
    """What it is cut from."""
    return [
        Supply(
            f"s{number}",
            sheet["length"],
            sheet["width"],
            sheet["count"],
            price=sheet.get("cost", 1),
        )
        for number, sheet in enumerate(instance["stock"])
    ]


def problem(instance: Instance) -> SheetProblem:
    """The question in whole numbers."""
    first = {"horizontal": "along", "vertical": "across", None: None}[instance.get("first_cut")]
    rules = Rules(stages=instance.get("stages"), first_cut=first)  # type: ignore[arg-type]
    return problem_of(
        pieces_of(instance), stock_of(instance), rules, kerf=instance.get("kerf", 0.0)
    )
