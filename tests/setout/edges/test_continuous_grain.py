"""Fronts whose grain runs on: which belong together, and where there is nothing to run on."""

from __future__ import annotations

import pytest

from kit.specs import problems_of, unit_from

SIZE = "size: {width: 900, height: 1200, depth: 400}\n"
TWO = "interior: {%s, columns: [{width: 1 share, %s}, {width: 1 share, %s}]}\n"


def runs(text: str) -> dict[str, str]:
    return {part.ref: part.grain_run for part in unit_from(text).parts if part.grain_run}


def test_all_fronts_of_a_space_are_one_run() -> None:
    text = SIZE + TWO % ("continuous_grain: true", "drawers: 2", "doors: {kind: slab, count: 1}")
    assert runs(text) == {"DRF1": "1", "DRF2": "1", "DO1": "1"}


def test_the_innermost_space_counts() -> None:
    text = SIZE + TWO % ("continuous_grain: true", "continuous_grain: true, drawers: 2", "doors: 2")
    assert runs(text) == {"DRF1": "1", "DRF2": "1", "DO1": "2", "DO2": "2"}


def test_nothing_runs_on_unless_it_is_said() -> None:
    assert runs(SIZE + "interior: {drawers: 3}\n") == {}


@pytest.mark.parametrize(
    ("inside", "told"),
    [
        (
            "doors: 1",
            "only one front of one piece is in this space for the grain to run on through",
        ),
        (
            "shelves: 2",
            "no front of one piece is in this space for the grain to run on through",
        ),
        (
            "doors: {kind: framed, count: 2, stock: ash, panel: {stock: thin}}",
            "no front of one piece is in this space for the grain to run on through; doors with a "
            "frame have no one grain",
        ),
    ],
)
def test_a_space_with_nothing_to_run_on_through(inside: str, told: str) -> None:
    text = SIZE + f"interior: {{continuous_grain: true, {inside}}}\n"
    assert problems_of(text) == [f"interior.continuous_grain: {told}"]


def test_fronts_without_grain() -> None:
    stock = (
        "stock:\n  ply: {kind: sheet, material: birch plywood, thickness: 18}\n"
        "  grey: {kind: sheet, material: mdf, thickness: 18}\n"
    )
    text = SIZE + "interior: {continuous_grain: true, drawers: {count: 2, front_stock: grey}}\n"
    assert problems_of(text + stock) == [
        "interior.continuous_grain: fronts of `grey` have no grain that could run on"
    ]
