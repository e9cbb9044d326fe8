"""Cuts told in the unit frame: however a part stands, they take the box that was told."""

from __future__ import annotations

from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.joint_pairs import board
from rodwright.geometry import Box, Vector, along, times
from rodwright.setout import cuts
from rodwright.unit import Blank, Grain, Part, Placement, Role, Surface
from rodwright.unit.directions import X, Y, Z

SIZE = (600.0, 300.0, 18.0)
STANDING = [
    Placement((100.0, -50.0, 20.0), times(length, one), times(width, other))
    for length, width in product((X, Y, Z), repeat=2)
    if length is not width
    for one, other in product((1.0, -1.0), repeat=2)
]
"""Every way of standing square to the unit."""


def standing(placement: Placement) -> Part:
    blank = Blank(*SIZE, board(18.0), Grain.LENGTHWISE)
    return Part("SD1", "Side", Role.SIDE, "Carcass", blank, placement)


def same(one: Box, other: Box) -> None:
    assert one.low == pytest.approx(other.low)
    assert one.high == pytest.approx(other.high)


def into(part: Part, surface: Surface) -> Vector:
    """The direction of the unit frame that goes in at a surface."""
    return times(part.placement.axes[surface.axis], -1.0 if surface.at_high else 1.0)


@st.composite
def sunk(draw: st.DrawFn, surface: Surface) -> Box:
    """A box that breaks through one surface and lies well inside the others, part frame."""
    spans = [(draw(st.floats(0.1, 0.4)) * size, draw(st.floats(0.6, 0.9)) * size) for size in SIZE]
    box = Box.of_points(zip(*spans, strict=True))  # type: ignore[arg-type]
    if surface.at_high:
        return box.spanning(surface.axis, high=SIZE[surface.axis])
    return box.spanning(surface.axis, low=0.0)


@pytest.mark.parametrize("surface", Surface)
@given(data=st.data())
def test_pockets_and_channels_take_the_box_that_was_told(
    surface: Surface, data: st.DataObject
) -> None:
    part = standing(data.draw(st.sampled_from(STANDING)))
    box = part.placement.box_to_unit(data.draw(sunk(surface)))
    towards = into(part, surface)
    assert cuts.entered(part, towards) is surface
    for working in (
        cuts.mortise(part, box, towards, False, ""),
        cuts.channel(part, box, towards, ""),
    ):
        assert working.surface is surface
        same(part.placement.box_to_unit(working.bounds(SIZE)), box)


@pytest.mark.parametrize("surface", [Surface.FACE, Surface.REVERSE])
@given(data=st.data())
def test_grooves_and_rebates_take_the_box_that_was_told(
    surface: Surface, data: st.DataObject
) -> None:
    part = standing(data.draw(st.sampled_from(STANDING)))
    local = data.draw(sunk(surface))
    box = part.placement.box_to_unit(local)
    groove = cuts.groove_along(part, box, "")
    assert groove.surface is surface
    same(part.placement.box_to_unit(groove.bounds(SIZE)), box)
    corner = part.placement.box_to_unit(local.spanning(1, low=0.0))
    rebate = cuts.rebate_along(part, corner, "")
    assert (rebate.surface, rebate.edge) == (surface, Surface.FACE_EDGE)
    same(part.placement.box_to_unit(rebate.bounds(SIZE)), corner)
    step = cuts.step(part, corner, into(part, Surface.BACK_EDGE), into(part, Surface.FACE), "")
    assert step == rebate


@pytest.mark.parametrize("surface", Surface)
@given(data=st.data())
def test_holes_begin_where_they_were_told(surface: Surface, data: st.DataObject) -> None:
    part = standing(data.draw(st.sampled_from(STANDING)))
    local = data.draw(sunk(surface)).centre
    out = SIZE[surface.axis] if surface.at_high else 0.0
    mouth = tuple(out if axis == surface.axis else local[axis] for axis in range(3))
    at = part.placement.to_unit((mouth[0], mouth[1], mouth[2]))
    hole = cuts.hole(part, at, into(part, surface), 5.0, 10.0, "")
    sunk_to = times(into(part, surface), 10.0)
    middle = part.placement.to_part(
        (at[0] + sunk_to[0] / 2, at[1] + sunk_to[1] / 2, at[2] + sunk_to[2] / 2)
    )
    assert hole.surface is surface
    assert hole.bounds(SIZE).centre == pytest.approx(middle)


def test_a_box_that_breaks_no_surface_is_refused() -> None:
    part = standing(STANDING[0])
    box = part.placement.box_to_unit(Box(along(0, 100.0), (200.0, 50.0, 5.0)).moved((0, 50, 5)))
    with pytest.raises(ValueError, match="breaks no surface"):
        cuts.groove_along(part, box, "")
