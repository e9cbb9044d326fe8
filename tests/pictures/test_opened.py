"""Doors turn about their hinges and drawers come forward; nothing else moves."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.specs import unit_from
from rodwright.pictures.opened import opened
from rodwright.unit import Blank, Grain, Part, Placement, Role, Slide, Stock, Swing, Unit


def _part(ref: str, x: float, y: float, z: float) -> Part:
    stock = Stock("oak", "board", "oak", 20.0, Grain.LENGTHWISE, 700.0, "test", "#aa8855")
    blank = Blank(100.0, 300.0, 20.0, stock, Grain.LENGTHWISE)
    placement = Placement((x, y, z), (0.0, 0.0, 1.0), (-1.0, 0.0, 0.0))
    return Part(ref, "Front", Role.DOOR, "Doors", blank, placement)


def _unit(*parts: Part, motions: tuple[Swing | Slide, ...]) -> Unit:
    unit = unit_from("size: {width: 800, height: 500, depth: 300}\n")
    return replace(unit, parts=(*unit.parts, *parts), motions=motions)


@pytest.mark.parametrize("angle", [-90.0, -110.0])
def test_a_door_turns_about_its_hinge_to_a_right_angle_at_most(angle: float) -> None:
    # Hinged at its left front corner, it turns clockwise, seen from above, by 90 degrees.
    unit = _unit(_part("DO1", 300.0, 0.0, 0.0), motions=(Swing(("DO1",), (0.0, -20.0), angle),))
    turned = opened(unit).part("DO1").bounds()
    assert turned.low == pytest.approx((0.0, -320.0, 0.0), abs=1e-9)
    assert turned.high == pytest.approx((20.0, -20.0, 100.0), abs=1e-9)
    assert opened(unit).part("SD1") == unit.part("SD1")


def test_a_door_that_opens_less_is_pictured_so() -> None:
    unit = _unit(_part("DO1", 300.0, 0.0, 0.0), motions=(Swing(("DO1",), (300.0, 0.0), 45.0),))
    box = opened(unit).part("DO1").bounds()
    assert box.size[0] == pytest.approx((300 + 20) * 2**-0.5)


def test_drawers_of_a_stack_come_out_further_the_lower_they_are() -> None:
    boxes = [_part(f"FR{n}", 300.0, 0.0, 110.0 * n) for n in range(3)]
    slides = tuple(Slide((box.ref,), (0.0, -200.0, 0.0)) for box in boxes)
    out = opened(_unit(*boxes, motions=slides))
    ys = [out.part(box.ref).placement.origin[1] for box in boxes]
    assert ys == pytest.approx([-150.0, -105.0, -60.0])
    assert all(out.part(b.ref).placement.length == b.placement.length for b in boxes)
