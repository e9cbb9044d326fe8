"""Sheets that were cut up without waste are put together again, to a hair."""

from __future__ import annotations

from random import Random

import pytest

from kit.cutting_checker import check_sheets
from rodwright.cutting import Piece, Supply, plan_sheets

KERF = 3.2


def _cut_up(rng: Random, many: int) -> list[tuple[float, float]]:
    """A sheet of 2440 x 1220 in so many rectangles, by cuts from edge to edge (zero-waste sets:
    P. Y. Wang and C. L. Valenzuela, Data set generation for rectangular placement problems,
    European Journal of Operational Research 134(2), 2001; from memory)."""
    rects = [(2440.0, 1220.0)]
    while len(rects) < many:
        length, width = rects.pop(max(range(len(rects)), key=lambda n: rects[n][0] * rects[n][1]))
        if rng.random() < length / (length + width):
            at = round(rng.uniform(0.25, 0.75) * length, 1)
            rects += [(at, width), (round(length - at - KERF, 1), width)]
        else:
            at = round(rng.uniform(0.25, 0.75) * width, 1)
            rects += [(length, at), (length, round(width - at - KERF, 1))]
    return rects


@pytest.mark.parametrize("seed", range(4))
def test_nothing_is_wasted_where_nothing_need_be(seed: int) -> None:
    rng = Random(seed)
    sizes = _cut_up(rng, 12) + _cut_up(rng, 10)
    turned = [rng.random() < 0.5 for _ in sizes]
    pieces = [
        Piece(f"p{n}", *(size[::-1] if turn else size), turning=turn)
        for n, (size, turn) in enumerate(zip(sizes, turned, strict=True))
    ]
    stock = [Supply("ply", 2440, 1220, 2)]
    plan = plan_sheets(pieces, stock, kerf=KERF)
    check_sheets(plan, pieces, stock, kerf=KERF)
    assert (len(plan.layouts), plan.left, plan.proven) == (2, (), True)
