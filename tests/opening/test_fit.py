from __future__ import annotations

import random

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import linprog
from shapely import Polygon, box, contains_xy
from shapely.affinity import translate

from kit.quadrilaterals import quadrilateral
from rodwright.opening.fit import Limits, Rectangle, largest_rectangle, spare
from rodwright.unit import Quadrilateral

ROUNDING = 1e-5
"""mm: corners of the linear program are accepted to 1e-9 of the opening's size, some 2e-6 mm."""

MOVES = st.tuples(*[st.floats(-25, 25)] * 6)


def _box(rectangle: Rectangle, grow: float = 0.0) -> Polygon:
    return box(
        rectangle.left - grow, rectangle.bottom - grow, rectangle.right + grow, rectangle.top + grow
    )


def _random_opening(chance: random.Random) -> Quadrilateral:
    moves = [chance.uniform(-20.0, 20.0) for _ in range(6)]
    size = chance.uniform(400.0, 3000.0), chance.uniform(400.0, 2700.0)
    return quadrilateral(*size, (moves[0], moves[1], moves[2], moves[3], moves[4], moves[5]))


def test_three_hundred_openings() -> None:
    """The rectangle never crosses the survey, by shapely, and none 0.1 mm larger both ways fits.

    The larger one is looked for wherever it could be: the corners of a convex opening are
    tried for every shift of it by less than a hundredth of a millimetre.
    """
    chance = random.Random(1)
    for _ in range(300):
        corners = _random_opening(chance)
        rectangle = largest_rectangle([corners])
        assert rectangle is not None
        opening = Polygon(corners)
        assert opening.buffer(ROUNDING).covers(_box(rectangle))
        assert not _goes_in(opening, rectangle.width + 0.1, rectangle.height + 0.1)
        assert _goes_in(opening, rectangle.width - 0.1, rectangle.height - 0.1)


def _goes_in(opening: Polygon, width: float, height: float) -> bool:
    """Whether a rectangle fits somewhere: the places for its lower left corner are the opening
    and its copies moved by the rectangle's sides, all at once (convex, so corners suffice)."""
    places = opening
    for x, z in ((width, 0.0), (width, height), (0.0, height)):
        places = places.intersection(translate(opening, -x, -z))
    return not places.is_empty


@pytest.mark.parametrize("seed", range(6))
def test_grid_search(seed: int) -> None:
    """Every rectangle on a 2 mm grid of left and right, bottom and top near the corners: none
    has a larger sum of sides, by shapely."""
    corners = _random_opening(random.Random(seed))
    rectangle = largest_rectangle([corners])
    assert rectangle is not None
    opening = Polygon(corners)
    steps = np.arange(-44.0, 45.0, 2.0)
    xs = [corners[0][0] + steps, corners[1][0] + steps]
    zs = [corners[0][1] + steps, corners[3][1] + steps]
    inside = {
        (i, j): contains_xy(opening, *np.meshgrid(xs[i], zs[j], indexing="ij"))
        for i in (0, 1)
        for j in (0, 1)
    }
    both = inside[0, 0][:, None, :, None] & inside[1, 0][None, :, :, None]
    both = both & inside[0, 1][:, None, None, :] & inside[1, 1][None, :, None, :]
    left, right, bottom, top = np.nonzero(both)
    sums = xs[1][right] - xs[0][left] + zs[1][top] - zs[0][bottom]
    best = float(sums.max())
    assert best <= rectangle.width + rectangle.height + 1e-6
    assert best >= rectangle.width + rectangle.height - 8.0


@settings(max_examples=60)
@given(MOVES, MOVES, st.floats(-5, 5), st.floats(1150, 1300), st.floats(1900, 2100))
def test_two_planes_by_scipy(
    front: tuple[float, ...], rear: tuple[float, ...], shift: float, width: float, height: float
) -> None:
    """The linear program by scipy's HiGHS, with all sixteen bounds of every plane."""
    planes = [quadrilateral(1200.0, 2000.0, front), quadrilateral(1200.0, 2000.0, rear)]  # type: ignore[arg-type]
    a, b, c, d = ((x + shift, z) for x, z in planes[1])
    planes[1] = (a, b, c, d)
    rectangle = largest_rectangle(planes, Limits(width, height))
    assert rectangle is not None
    rows, levels = [[-1, 1, 0, 0], [0, 0, -1, 1]], [width, height]
    for corners in planes:
        for (ax, az), (bx, bz) in zip(corners, (*corners[1:], corners[0]), strict=True):
            for i in (0, 1):
                for j in (2, 3):
                    row = [0.0] * 4
                    row[i], row[j] = bz - az, -(bx - ax)
                    rows.append(row)
                    levels.append((bz - az) * ax - (bx - ax) * az)
    found = linprog([1, -1, 1, -1], rows, levels, bounds=[(None, None)] * 4, method="highs")
    # Along walls that are all but plumb, what either lets a bound be overstepped by comes to some
    # hundred times as much of the sum.
    assert rectangle.width + rectangle.height == pytest.approx(-found.fun, abs=1e-3)
    for corners in planes:
        assert Polygon(corners).buffer(ROUNDING).covers(_box(rectangle))
    assert rectangle.width <= width + 1e-6
    assert rectangle.height <= height + 1e-6


@settings(max_examples=40)
@given(MOVES, st.floats(1100, 1250), st.floats(1850, 2050))
def test_what_is_spared_just_goes_in(moves: tuple[float, ...], width: float, height: float) -> None:
    corners = quadrilateral(1200.0, 2000.0, moves)  # type: ignore[arg-type]
    found = spare([corners], Limits(), width, height)
    opening = Polygon(corners)
    largest = largest_rectangle([corners])
    assert largest is not None
    across = width + found.width, min(height, largest.height)
    upright = min(width, largest.width), height + found.height
    for wide, high in (across, upright):
        assert _goes_in(opening, wide - 0.01, high - 0.01)
    assert not _goes_in(opening, across[0] + 0.02, across[1] + 1e-6)
    assert not _goes_in(opening, upright[0] + 1e-6, upright[1] + 0.02)


def test_where_it_is_tight() -> None:
    corners = quadrilateral(1200.0, 2000.0, (0.0, 0.0, 8.0, 0.0, 8.0, 0.0))
    found = spare([corners], Limits(), 1185.0, 1990.0)
    assert found.tight_width == "left wall at the top and right wall at the bottom"
    assert found.width == pytest.approx(1200.0 - 8.0 * 1990.0 / 2000.0 - 1185.0)
    assert found.height == pytest.approx(10.0)


def test_planes_that_do_not_overlap() -> None:
    left = quadrilateral(100.0, 100.0, (0.0,) * 6)
    right: Quadrilateral = ((200.0, 0.0), (300.0, 0.0), (300.0, 100.0), (200.0, 100.0))
    assert largest_rectangle([left, right]) is None
    with pytest.raises(ValueError, match="overlap"):
        spare([left, right], Limits(), 50.0, 50.0)
