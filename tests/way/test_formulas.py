"""Turning, tilting and carrying by formula, against published results and plain geometry."""

from __future__ import annotations

from math import cos, hypot, pi, sin, sqrt

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import affinity, box

from rodwright.way.formulas import (
    longest_round_corner,
    rod_round_corner,
    rolled_into,
    standing_up_height,
    steepest_carry,
    tilted_height,
)

corridors = st.floats(600, 2500)
some = settings(max_examples=50)


def test_ladder_round_a_corner() -> None:
    """Corridors of 8 and 27: (4 + 9)^(3/2); the classic calculus exercise (from memory)."""
    assert rod_round_corner(8, 27) == pytest.approx(13**1.5)
    assert longest_round_corner(0, 8, 27) == pytest.approx(13**1.5)


@some
@given(corridors, corridors)
def test_a_thin_rectangle_is_a_rod(before: float, after: float) -> None:
    assert longest_round_corner(0.0, before, after) == pytest.approx(
        rod_round_corner(before, after)
    )


@some
@given(corridors, st.floats(0.05, 0.7))
def test_equal_corridors_turn_at_half_a_right_angle(width: float, part: float) -> None:
    """By symmetry the tight spot is at 45 degrees: l = 2 (sqrt(2) a - w)."""
    turned = 2 * (sqrt(2) * width - part * width)
    assert longest_round_corner(part * width, width, width) == pytest.approx(max(turned, width))


@some
@given(corridors, corridors, st.floats(0.0, 1.0))
def test_the_least_over_all_angles(before: float, after: float, part: float) -> None:
    """Against the derivation's own function on a fine grid of angles."""
    width = part * min(before, after)
    t = np.linspace(1e-3, pi / 2 - 1e-3, 20_001)
    spans = (before * np.sin(t) + after * np.cos(t) - width) / (np.sin(t) * np.cos(t))
    expected = max(float(spans.min()), before, after)
    assert longest_round_corner(width, before, after) == pytest.approx(expected, rel=1e-4)


def test_wider_than_a_corridor() -> None:
    assert longest_round_corner(901, 900, 2000) == 0.0


@some
@given(st.floats(300, 3000), st.floats(100, 1200))
def test_the_diagonal_is_the_highest_a_tilted_box_stands(height: float, depth: float) -> None:
    tilts = np.linspace(0, pi / 2, 2001)
    highest = max(tilted_height(height, depth, tilt) for tilt in tilts)
    assert highest <= standing_up_height(height, depth) + 1e-9
    assert highest == pytest.approx(standing_up_height(height, depth), rel=1e-6)


@some
@given(st.floats(300, 3000), st.floats(100, 1200), st.floats(0, pi / 2))
def test_tilted_height_by_shapely(height: float, depth: float, tilt: float) -> None:
    turned = affinity.rotate(box(0, 0, depth, height), tilt, use_radians=True)
    low, high = turned.bounds[1], turned.bounds[3]
    assert high - low == pytest.approx(tilted_height(height, depth, tilt))


def test_no_orientation_path_stands_a_box_up_lower() -> None:
    """Every way up from lying passes a ridge no lower than the diagonal over the smaller size."""
    width, height, depth = 700.0, 2000.0, 400.0
    ridge = np.arctan2(depth, height)
    around = np.linspace(0, pi / 2, 500)
    stands = height * cos(ridge) + sin(ridge) * (width * np.cos(around) + depth * np.sin(around))
    assert float(stands.min()) == pytest.approx(standing_up_height(height, depth))


@some
@given(st.floats(500, 3000), st.floats(100, 1200), st.floats(300, 3500))
def test_steepest_carry_touches_the_ceiling(length: float, thick: float, ceiling: float) -> None:
    slope = steepest_carry(length, thick, ceiling)
    if slope is None:
        assert thick > ceiling
    elif slope == pi / 2:
        assert hypot(length, thick) <= ceiling
    elif slope > 0:
        stands = length * sin(slope) + thick * cos(slope)
        assert stands == pytest.approx(ceiling)


@some
@given(*[st.floats(100, 2500)] * 4)
def test_rolled_into_a_doorway_by_shapely(a: float, b: float, p: float, q: float) -> None:
    """Every roll tried by shapely: one goes exactly when the formula says so."""
    long, short, wide, narrow = max(a, b), min(a, b), max(p, q), min(p, q)

    def goes(grown: float) -> bool:
        piece = box(-long / 2, -short / 2, long / 2, short / 2)
        for degrees in np.linspace(0, 90, 181):
            x0, y0, x1, y1 = affinity.rotate(piece, degrees, origin=(0, 0)).bounds
            if x1 - x0 <= wide + grown and y1 - y0 <= narrow + grown:
                return True
        return False

    # Half a degree moves the ends by less than this.
    slack = long * 0.5 * pi / 180
    found = rolled_into(long, short, wide, narrow) is not None
    if found:
        assert goes(slack)
    else:
        assume(short > 1)
        assert not goes(-1e-9)
