"""How often a unit doesn't go into openings drawn at random, of which it knows the readings."""

from __future__ import annotations

import random
from typing import Any

import pytest

from kit.drawn_openings import draw_opening, read_drawn
from rodwright.opening.survey import measure, usable_opening
from rodwright.problems import Problems
from rodwright.wishes.opening import FitSpec, OpeningSpec

FIT = FitSpec()
WIDTHS: dict[str, Any] = {"widths": ("bottom", "middle", "top")}
HEIGHTS: dict[str, Any] = {"heights": ("left", "middle", "right")}
FULL = WIDTHS | HEIGHTS | {"square": True}
FOOT = HEIGHTS | {"widths": ("bottom",)}


def stuck(
    count: int,
    seed: int,
    how: dict[str, Any],
    walls: float | None = None,
    levels: float | None = None,
) -> float:
    """The share of units, made by the usual fit, that don't go into their true openings."""
    chance = random.Random(seed)
    tried = failed = 0
    for _ in range(count):
        drawn = draw_opening(chance, walls, levels)
        readings = OpeningSpec.model_validate(read_drawn(drawn, chance, **how))
        survey = measure(readings, Problems())
        if survey is None:  # measured again, not cut
            continue
        opening = usable_opening(survey, FIT)
        tried += 1
        failed += not drawn.goes_in(opening.width - 2 * FIT.sides, opening.height - FIT.top)
    assert tried > 0.9 * count
    return failed / tried


@pytest.mark.parametrize(
    ("how", "walls", "levels"),
    [
        (FULL, None, None),
        (WIDTHS | HEIGHTS, None, None),
        (WIDTHS | HEIGHTS, 8.0, None),
        (WIDTHS | HEIGHTS, 8.0, 8.0),
    ],
    ids=["all read", "sizes read", "walls belly by 8", "all bellies by 8"],
)
def test_units_go_in_where_enough_was_read(
    how: dict[str, Any], walls: float | None, levels: float | None
) -> None:
    """Straight edges as assumed, and bellied ones: one in a hundred at most."""
    assert stuck(100, 11, how, walls, levels) <= 0.01


def test_a_single_width_does_not_show_a_belly() -> None:
    """Read at the floor alone, with everything else known, as the warning says."""
    by_four, by_eight = (stuck(150, 5, FOOT, walls) for walls in (4.0, 8.0))
    assert 0.02 <= by_four <= 0.15
    assert 0.2 <= by_eight <= 0.45
