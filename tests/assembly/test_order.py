"""In which order units go together."""

from __future__ import annotations

from kit.specs import unit_from
from rodwright.assembly.order import order_of
from rodwright.assembly.steps import Order
from rodwright.unit import Unit

BOOKCASE = """
title: Bookcase
unit: mm
size: {width: 900, height: 1200, depth: 300}
stock:
  case: {kind: sheet, material: birch plywood, thickness: 18}
  thin: {kind: sheet, material: birch plywood, thickness: 6}
carcass: {stock: case, corners: housed}
interior: {shelves: {count: 2}}
back: {stock: thin}
"""


def _told(order: Order) -> list[str]:
    """Each step in short: where it belongs, what comes, and towards where."""
    ways = {(0.0, 0.0, 0.0): "first"}
    for axis, name in enumerate("xyz"):
        for sign in (-1.0, 1.0):
            way = [0.0, 0.0, 0.0]
            way[axis] = sign
            ways[way[0], way[1], way[2]] = f"{'+' if sign > 0 else '-'}{name}"
    return [
        f"{step.within}: {' '.join(step.refs)} {ways[tuple(each + 0.0 for each in step.towards)]}"
        for step in order.steps
    ]


def _joints_closed_once(unit: Unit, order: Order) -> None:
    closed = [joint for step in order.steps for joint in step.joints]
    assert sorted(map(repr, closed)) == sorted(map(repr, unit.joints))


def test_shelves_stand_in_one_side_before_the_other_goes_on_and_the_back_comes_last() -> None:
    unit = unit_from(BOOKCASE)
    order = order_of(unit)
    assert _told(order) == [
        ": SD1 first",
        ": BT1 -x",
        ": SH1 -x",
        ": SH2 -x",
        ": TP1 -x",
        ": SD2 -x",
        ": BK1 -y",
    ]
    assert all(step.free and step.where == "bench" for step in order.steps)
    _joints_closed_once(unit, order)
