"""Hatching fills what is cut, and tells neighbours and kinds apart without colour."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from rodwright.pictures.drafting.hatching import hatched
from rodwright.pictures.drafting.views import Cut, Line, Point

KINDS = ("along the grain", "end grain", "sheet", "other")


def _box(left: float, top: float, right: float, bottom: float) -> tuple[Point, ...]:
    return ((left, top), (right, top), (right, bottom), (left, bottom))


def _slants(lines: tuple[Line, ...]) -> set[int]:
    """Degrees of the lines, between 0 and 180."""
    return {round(math.degrees(math.atan2(b[1] - a[1], b[0] - a[0]))) % 180 for a, b in lines}


def _cut(kind: str, *rings: tuple[Point, ...]) -> tuple[Cut, tuple[tuple[Point, ...], ...]]:
    return Cut("A", rings, kind), rings


@given(st.sampled_from(KINDS), st.floats(2, 60), st.floats(2, 60))
def test_lines_stay_within_what_is_cut_and_off_its_holes(
    kind: str, width: float, height: float
) -> None:
    hole = _box(width * 0.4, height * 0.4, width * 0.6, height * 0.6)
    (lines,) = hatched([_cut(kind, _box(0, 0, width, height), hole)])
    area = shapely.box(0, 0, width, height) - shapely.Polygon(hole)
    assert shapely.MultiLineString(lines).difference(area.buffer(1e-6)).length < 1e-6


@pytest.mark.parametrize("kind", KINDS)
def test_no_place_is_left_bare(kind: str) -> None:
    (lines,) = hatched([_cut(kind, _box(0, 0, 60, 30))])
    inner = shapely.box(3, 3, 57, 27)
    assert inner.difference(shapely.MultiLineString(lines).buffer(2.0)).area < 1e-6


def test_each_kind_looks_different() -> None:
    looks = {kind: hatched([_cut(kind, _box(0, 0, 60, 20))])[0] for kind in KINDS}
    assert _slants(looks["end grain"]) == {45}
    assert _slants(looks["sheet"]) == {45}
    assert _slants(looks["along the grain"]) == {0}
    assert _slants(looks["other"]) == {45, 135}

    def gaps(lines: tuple[Line, ...]) -> set[float]:
        away = sorted({round((a[1] - a[0]) / math.sqrt(2), 3) for a, _ in lines})
        return {round(high - low, 2) for low, high in pairwise(away)}

    # Single lines are evenly spaced, pairs are not.
    assert len(gaps(looks["end grain"])) == 1
    assert len(gaps(looks["sheet"])) == 2


@pytest.mark.parametrize("kind", ["end grain", "sheet"])
def test_neighbours_differ_in_slant_or_spacing(kind: str) -> None:
    row = [_cut(kind, _box(20 * at, 0, 20 * at + 20, 20)) for at in range(3)]
    one, two, three = hatched(row)
    assert _slants(one) != _slants(two)
    assert _slants(two) != _slants(three)
    corner = hatched([*row[:2], _cut(kind, _box(0, 20, 40, 40))])
    # What differs of those that slant alike is the length of line in the same area.
    areas = (400, 400, 800)
    thick = [
        sum(math.dist(*line) for line in one) / a for one, a in zip(corner, areas, strict=True)
    ]
    assert _slants(corner[0]) != _slants(corner[1])
    for at in (0, 1):
        assert _slants(corner[at]) != _slants(corner[2]) or thick[2] < 0.8 * thick[at]
