"""Workings at the edges as cut, held by random points against the finished piece."""

from __future__ import annotations

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from kit.points import cut_away
from kit.samples import ASH, X, Y
from kit.strategies import EDGES, ENDS, lengths, shapes
from rodwright.unit import (
    Bevel,
    Blank,
    Edging,
    FingerPull,
    Grain,
    Mitre,
    Part,
    Placement,
    PocketHole,
    Role,
    ShapeKey,
    Surface,
)
from rodwright.unit.cut_edges import as_cut, outlines, waits
from rodwright.unit.surfaces import HIGH, LOW

Grown = dict[Surface, float]


@st.composite
def growths(draw: st.DrawFn) -> Grown:
    """Trimmed off or made up by edging, at some of the ends and edges.

    Edging is thinner than what random workings leave beside them, so that none is lost.
    """
    amounts = st.one_of(lengths(0.5, 6.0), lengths(-0.4, -0.1))
    return draw(st.dictionaries(st.sampled_from(ENDS + EDGES), amounts, min_size=1))


@given(shapes(), growths(), st.integers(0, 2**32 - 1))
def test_workings_keep_their_place_and_run_out_where_they_ran_out(
    shape: ShapeKey, grown: Grown, seed: int
) -> None:
    """What is cut away at a point beyond an edge is what was cut away at the edge beside it."""
    size, workings = shape
    low = np.array([grown.get(surface, 0.0) for surface in LOW])
    high = np.array([grown.get(surface, 0.0) for surface in HIGH])
    finished, cut = np.array(size), np.array(size) + low + high
    points = np.random.default_rng(seed).uniform(0, 1, (600, 3)) * cut
    in_piece = points - low
    within = np.all((in_piece > 0) & (in_piece < finished), axis=1)
    for working in workings:
        if waits(size, working, grown):
            continue
        slanting = isinstance(working, Mitre | Bevel | PocketHole | FingerPull)  # or round
        if slanting and any(working.takes_off(surface, size) for surface in grown):
            continue  # goes with what it takes off
        nearest = in_piece if slanting else np.clip(in_piece, 0, finished)
        expected = cut_away(nearest, finished, working)
        moved = as_cut(size, working, grown)
        found = np.zeros(len(points), bool) if moved is None else cut_away(points, cut, moved)
        asked = within if slanting else slice(None)
        assert np.array_equal(found[asked], expected[asked])


@given(shapes(), growths())
def test_a_mitre_leaves_its_end_trim_long_and_its_angle_alone(
    shape: ShapeKey, grown: Grown
) -> None:
    size, workings = shape
    low = [grown.get(surface, 0.0) for surface in LOW]
    cut = tuple(
        a + b + grown.get(surface, 0.0) for a, b, surface in zip(size, low, HIGH, strict=True)
    )
    for working in workings:
        if isinstance(working, Mitre):
            moved = as_cut(size, working, grown)
            assert isinstance(moved, Mitre | Bevel)
            ((before, normal),), ((after, turned),) = working.planes(size), moved.planes(cut)  # type: ignore[arg-type]
            assert np.allclose(normal, turned)
            # Moved along the length by what its end has moved, and not otherwise.
            end = grown.get(working.end, 0.0) * (1 if working.end.at_high else -1)
            shift = np.array(after) - low - np.array(before) - [end, 0.0, 0.0]
            assert abs(shift @ normal) < 1e-6


@given(shapes(), growths())
def test_outlines_are_what_trim_and_edging_make_them(shape: ShapeKey, grown: Grown) -> None:
    size, _ = shape
    trimmed = {surface: amount for surface, amount in grown.items() if amount > 0}
    edged = tuple(
        Edging(surface, "abs", -amount) for surface, amount in grown.items() if amount < 0
    )
    along, across = (
        sum(amount for surface, amount in trimmed.items() if surface.axis == axis)
        for axis in (0, 1)
    )
    blank = Blank(
        *size, ASH, Grain.LENGTHWISE, trim_length=along, trim_width=across, trim_at=tuple(trimmed)
    )
    placement = Placement((0.0, 0.0, 0.0), X, Y)
    part = Part("X1", "Piece", Role.SHELF, "Sample", blank, placement, edged=edged)
    cut, finished = outlines(part)
    assert np.allclose(cut, part.rough_size)
    assert np.allclose(finished.size, size)
    assert np.all(np.array(finished.low) <= cut)
