"""Workings in another blank for the same piece, held by random points; mm.

The edges as cut, where blanks grow, are held in `tests/handover/test_cut_edges.py`.
"""

from __future__ import annotations

from dataclasses import replace
from typing import get_args

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from kit.points import cut_away
from kit.strategies import WORKINGS, lengths, sizes
from rodwright.geometry import Box, Vector
from rodwright.mass import mass_of
from rodwright.unit import Bore, FingerPull, Groove, Mortise, Notch, Refit, Slant, Surface, Working

FEWER = settings(max_examples=50)
"""Each is looked at with many points, for each kind."""
KINDS = [kind for kind in WORKINGS if kind not in get_args(Slant)]
"""Those that have a place of their own; slanting cuts go with what they take off."""


@st.composite
def smaller(draw: st.DrawFn, size: Vector) -> Box:
    """A blank cut out of one of this size, which keeps its thickness."""
    box = Box.of_size(size)
    for axis in (0, 1):
        low = draw(st.one_of(st.just(0.0), lengths(0.1, 0.45 * size[axis])))
        high = draw(st.one_of(st.just(size[axis]), lengths(0.55 * size[axis], size[axis] - 0.1)))
        box = box.spanning(axis, low, high)
    return box


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
@FEWER
@given(st.data())
def test_what_is_cut_stays_where_it_is(kind: type[Working], data: st.DataObject) -> None:
    size = data.draw(sizes())
    working = data.draw(WORKINGS[kind](size))
    blank = data.draw(smaller(size))
    # Round ends can't be cut short, nor is a bore of use that is.
    assume(not isinstance(working, Bore) or blank.contains(working.bounds(size)))
    moved = working.moved(Refit(size, blank))
    points = np.random.default_rng(data.draw(st.integers(0, 2**32 - 1))).uniform(
        blank.low, blank.high, (500, 3)
    )
    expected = cut_away(points, np.array(size), working)
    found = (
        np.zeros(len(points), bool)
        if moved is None
        else cut_away(points - blank.low, np.array(blank.size), moved)
    )
    assert np.array_equal(found, expected)


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
@FEWER
@given(st.data())
def test_in_the_same_blank_it_is_the_same(kind: type[Working], data: st.DataObject) -> None:
    size = data.draw(sizes())
    working = data.draw(WORKINGS[kind](size))
    assert working.moved(Refit(size, Box.of_size(size))) == working


def test_what_lies_outside_is_gone_and_what_ran_out_still_does() -> None:
    size, blank = (400.0, 120.0, 20.0), Box((100.0, 0.0, 0.0), (300.0, 90.0, 20.0))
    to = Refit(size, blank)
    assert Notch(0.0, 0.0, 50.0, 50.0).moved(to) is None
    assert Notch(80.0, 80.0, 50.0, 40.0).moved(to) == Notch(0.0, 80.0, 30.0, 10.0)
    groove = Groove(Surface.FACE, 80.0, 20.0, 6.0, 150.0)
    assert groove.moved(to) == Groove(Surface.FACE, 80.0, 10.0, 6.0, 50.0)
    mortise = Mortise(Surface.FACE, (150.0, 20.0), (40.0, 8.0), 9.0)
    assert mortise.moved(to) == replace(mortise, position=(50.0, 20.0))


def test_the_round_ends_of_a_finger_pull_stay_round_at_the_ends_of_a_blank() -> None:
    size = (80.0, 40.0, 10.0)
    pull = FingerPull(Surface.FACE, Surface.FACE_EDGE, 8.0, 5.0, 4.0, 8.0, 60.0)
    moved = pull.moved(Refit(size, Box((8.0, 0.0, 0.0), (60.0, 40.0, 10.0))))
    assert moved is not None
    assert moved.lets_in((52.0, 40.0, 10.0)) == pytest.approx((moved.reach, 52.0 - moved.reach))
    assert mass_of(((52.0, 40.0, 10.0), (moved,))).volume == pytest.approx(
        52.0 * 40.0 * 10.0 - 80.0 * 40.0 * 10.0 + mass_of((size, (pull,))).volume
    )
