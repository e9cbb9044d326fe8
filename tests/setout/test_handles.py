"""Knobs and handles on doors and drawers, their screws, and slides in pairs, as they are bought."""

from __future__ import annotations

import pytest

from kit.specs import of_role, unit_from
from rodwright.handover.lists import HardwareRow, hardware_list
from rodwright.lengths import from_inches
from rodwright.setout.handles import handle_fixings, screw_length
from rodwright.trade.screws import HANDLE_BITE
from rodwright.trade.sizes import INCH, METRIC
from rodwright.unit import Hole, Role, Unit
from rodwright.wishes.drawers import DrawerHandleSpec

SIZE = "size: {width: 1200, height: 870, depth: 560}\n"
BOTH = """
interior:
  columns:
    - {width: 480, drawers: {count: 4, hung: overlay, stock: box, bottom: {stock: thin},
                             handle: {name: Knob}}}
    - {width: 1 share, doors: {hung: overlay, count: 2, handle: {name: knob}}}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18}
  box: {kind: sheet, material: birch plywood, thickness: 12}
  thin: {kind: sheet, material: birch plywood, thickness: 6}
"""


def rows(unit: Unit, name: str) -> list[HardwareRow]:
    return [row for row in hardware_list(unit) if row.name.casefold() == name]


def test_slides_are_counted_in_pairs() -> None:
    (row,) = (row for row in hardware_list(unit_from(SIZE + BOTH)) if "slide" in row.name)
    assert (row.name, row.size, row.quantity) == ("pair of side-mounted drawer slides", "550 mm", 4)
    (use,) = row.uses
    assert use.startswith("on slides: ")
    assert use.count(" and ") == 4  # a left and a right side of each of four boxes


def test_a_knob_has_one_row_wherever_it_goes() -> None:
    """Four drawers and a pair of doors, whose spec writes its name otherwise."""
    unit = unit_from(SIZE + BOTH)
    (row,) = rows(unit, "knob")
    assert (row.quantity, row.size, row.holes) == (6, "1 hole", ("5 mm, right through",))
    fronts = {part.ref for part in of_role(unit, Role.DRAWER_FRONT) + of_role(unit, Role.DOOR)}
    (use,) = row.uses
    assert set(use.removeprefix("on: ").split(", ")) == fronts


def test_screws_of_knobs_fit_what_they_go_through() -> None:
    """Through a door of 18, and through a front of 18 and a box of 12: the least lengths of M4
    that bite 5 mm into the knob (common practice, no source)."""
    unit = unit_from(SIZE + BOTH)
    found = {row.size: (row.quantity, row.holes) for row in rows(unit, "handle screw")}
    assert found == {
        "M4 x 25 mm": (2, ("through 18 mm",)),
        "M4 x 35 mm": (4, ("through 30 mm",)),
    }


def test_a_handle_takes_two_screws() -> None:
    spec = BOTH.replace("{name: knob}", "{name: bar, spacing: 128}")
    unit = unit_from(SIZE + spec)
    (bar,) = rows(unit, "bar")
    assert (bar.quantity, bar.size) == (2, "2 holes 128 mm apart")
    found = {row.size: row.quantity for row in rows(unit, "handle screw")}
    assert found["M4 x 25 mm"] == 4
    for door in of_role(unit, Role.DOOR):
        holes = [each for each in door.workings if isinstance(each, Hole) and each.diameter == 5.0]
        assert len(holes) == 2


def test_screws_through_front_and_box_and_through_the_front_alone() -> None:
    wish = DrawerHandleSpec.model_validate({"name": "bar", "count": 2, "spacing": 96})
    made = handle_fixings(METRIC, wish, [18.0, 30.0, 18.0, 30.0], "FR1")
    assert [(each.name, each.count, each.size) for each in made] == [
        ("bar", 2, "2 holes 96 mm apart"),
        ("handle screw", 2, "M4 x 25 mm"),
        ("handle screw", 2, "M4 x 35 mm"),
    ]
    assert {each.on for each in made} == {"FR1"}


@pytest.mark.parametrize("sizes", [METRIC, INCH], ids=lambda sizes: sizes.unit)
@pytest.mark.parametrize("wood", [12.0, 16.0, 18.0, 19.05, 22.0, 25.0, 30.0, 31.75, 38.1, 45.0])
def test_handle_screws_bite_and_dont_bottom_out(sizes: object, wood: float) -> None:
    """Knobs are tapped about half an inch deep (common practice, no source)."""
    length = screw_length(sizes, wood)  # type: ignore[arg-type]
    assert HANDLE_BITE <= length - wood <= 13.5


def test_handle_screws_in_inches() -> None:
    """Knobs come with 8-32 x 1 in for doors of 3/4 in (from memory)."""
    assert screw_length(INCH, from_inches("3/4")) == pytest.approx(from_inches("1"))
    assert screw_length(INCH, from_inches("1 1/4")) == pytest.approx(from_inches("1 1/2"))


@pytest.mark.parametrize("unit_name", ["mm", "in"])
def test_holes_that_let_the_front_move_are_on_the_list(unit_name: str) -> None:
    """A front of solid oak moves on a box of plywood: what is bored wider there is said."""
    text = f"""unit: {unit_name}
size: {{width: 600 mm, height: 400 mm, depth: 560 mm}}
interior:
  drawers: {{count: 1, hung: overlay, front_stock: oak, stock: box, bottom: {{stock: thin}},
            handle: {{name: knob}}}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 18 mm}}
  box: {{kind: sheet, material: birch plywood, thickness: 12 mm}}
  thin: {{kind: sheet, material: birch plywood, thickness: 6 mm}}
  oak: {{kind: board, material: european oak, thickness: 20 mm}}
"""
    unit = unit_from(text)
    sizes = INCH if unit_name == "in" else METRIC
    bored = {
        part.role: each.diameter
        for part in unit.parts
        for each in part.workings
        if isinstance(each, Hole) and each.use == "handle"
    }
    assert bored[Role.DRAWER_END] > bored[Role.DRAWER_FRONT]
    (row,) = rows(unit, "handle screw")
    assert row.holes == (
        f"through {sizes.say(32)}, {sizes.say(bored[Role.DRAWER_END])} wide in the drawer's box "
        f"so that the wood can move",
    )
