"""The box that a working takes, held by random points against what the working means."""

from __future__ import annotations

import math
from typing import get_args

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from kit.points import Array, cut_away
from kit.strategies import WORKINGS, lengths, pocket_holes, sizes
from rodwright.geometry import Box
from rodwright.unit import PocketHole, Working

FEWER = settings(max_examples=50)
"""Each is looked at with many points, for each kind."""
KINDS = pytest.mark.parametrize("kind", get_args(Working), ids=lambda kind: kind.__name__)
POINTS = 3_000
SKIN = 0.05
"""Share of a box's extent that is looked at below each of its sides."""


def in_box(seed: int, low: Array, high: Array) -> Array:
    """Points of a box, half of them spread evenly and half crowded towards its sides."""
    share = np.random.default_rng(seed).uniform(size=(POINTS, 3))
    crowded = share[::2]
    share[::2] = np.where(crowded < 0.5, (2 * crowded) ** 6 / 2, 1 - (2 - 2 * crowded) ** 6 / 2)
    return low + (1e-6 + share * (1 - 2e-6)) * (high - low)


@KINDS
@FEWER
@given(st.data())
def test_a_working_takes_nothing_outside_its_bounds(
    kind: type[Working], data: st.DataObject
) -> None:
    size = data.draw(sizes())
    working = data.draw(WORKINGS[kind](size))
    box = working.bounds(size)
    points = in_box(data.draw(st.integers(0, 2**32 - 1)), np.zeros(3), np.array(size))
    taken = points[cut_away(points, np.array(size), working)]
    assert np.all(taken >= np.array(box.low) - 1e-9)
    assert np.all(taken <= np.array(box.high) + 1e-9)


@KINDS
@FEWER
@given(st.data())
def test_a_working_reaches_every_side_of_its_bounds(
    kind: type[Working], data: st.DataObject
) -> None:
    """No box is larger than it must be: something is cut just below each of its six sides."""
    size = data.draw(sizes())
    working = data.draw(WORKINGS[kind](size))
    if isinstance(working, PocketHole):
        # With the middle of its floor in the air less than its whole width is in the wood, and
        # with its mouth past the far side it never comes out of the face; checks refuse both.
        assume(working.exit > working.stop * math.sin(math.radians(working.angle)))
        assume(working.mouth < size[working.end.axis])
    box, seed = working.bounds(size), data.draw(st.integers(0, 2**32 - 1))
    low, high = np.array(box.low), np.array(box.high)
    assert np.all(low >= -1e-9)
    assert np.all(high <= np.array(size) + 1e-9)
    for axis in range(3):
        for side in (low, high):
            near, far = low.copy(), high.copy()
            inward = side[axis] + SKIN * ((low + high)[axis] - 2 * side[axis])
            near[axis], far[axis] = sorted((side[axis], inward))
            assert cut_away(in_box(seed, near, far), np.array(size), working).any(), (axis, side)


@KINDS
@FEWER
@given(st.data())
def test_what_fills_its_bounds_takes_all_of_them(kind: type[Working], data: st.DataObject) -> None:
    size = data.draw(sizes())
    working = data.draw(WORKINGS[kind](size))
    box = working.bounds(size)
    points = in_box(data.draw(st.integers(0, 2**32 - 1)), np.array(box.low), np.array(box.high))
    whole = bool(cut_away(points, np.array(size), working).all())
    assert working.fills_bounds is whole


@FEWER
@given(st.data())
def test_a_pocket_hole_takes_nothing_outside_its_bounds_beside_another_box(
    data: st.DataObject,
) -> None:
    size = data.draw(sizes())
    pocket = data.draw(pocket_holes(size))
    first, second = sorted(data.draw(lengths(0.0, size[pocket.end.axis])) for _ in range(2))
    other = Box.of_size(size).spanning(pocket.end.axis, first, second)
    box = pocket.bounds_beside(size, other)
    seed = data.draw(st.integers(0, 2**32 - 1))
    points = in_box(seed, np.array(other.low), np.array(other.high))
    taken = points[cut_away(points, np.array(size), pocket)]
    assert np.all(taken >= np.array(box.low) - 1e-9)
    assert np.all(taken <= np.array(box.high) + 1e-9)
