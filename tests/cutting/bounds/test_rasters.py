"""Places where cuts are tried."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rodwright.cutting.bounds.rasters import raster


def test_places_are_sums_of_lengths_as_often_as_there_are() -> None:
    found = raster([(3, 1), (5, 2)], 14)
    assert found.exact
    assert [found.length(place) for place in range(len(found.points))] == [0, 3, 5, 8, 10, 13, 14]


def test_what_all_lengths_share_is_one_step() -> None:
    found = raster([(30, 2), (50, 1)], 119)
    assert (found.step, found.exact) == (10, True)
    assert [found.length(place) for place in range(len(found.points))] == [0, 30, 50, 60, 80, 110]


def test_places_of_a_whole_side_beyond_its_middle_are_what_cuts_leave() -> None:
    found = raster([(3, 9), (10, 1)], 14, whole=True)
    assert found.points.tolist() == [0, 3, 6, 10, 13, 14]


@pytest.mark.parametrize("side", [100_000, 97_536_000])
def test_too_many_places_are_rounded(side: int) -> None:
    """A side of 96 in in millionths of 25 mm, too."""
    lengths = [(side * k // 977 + k, 5) for k in range(40, 400, 7)]
    down, up = raster(lengths, side), raster(lengths, side, up=True)
    for found in (down, up):
        assert not found.exact
        assert len(found.points) <= 261
    length = lengths[3][0]
    assert down.length(down.point(length)) <= length <= up.length(up.point(length))


@given(st.lists(st.integers(1, 400), min_size=1, max_size=5), st.integers(300, 400))
def test_what_fits_a_side_fits_it_rounded(lengths: list[int], side: int) -> None:
    found = raster([(length, 3) for length in lengths], side, most=12)
    if sum(lengths) > side:
        return
    used = sum(int(found.points[found.point(length)]) for length in lengths)
    assert used <= found.points[-1]
