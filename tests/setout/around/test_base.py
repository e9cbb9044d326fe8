"""Plinths, toe boards, legs and feet against sizes worked out by hand.

What a base looks like is common practice, no source, unless a check says otherwise.
"""

from __future__ import annotations

from itertools import product
from typing import Any

import pytest

from kit.specs import STOCK, of_role, problems_of, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.rules import Rule
from rodwright.unit import Hole, JointKind, Notch, Part, Role, Unit

SIZE = "size: {width: 800, height: 900, depth: 400}\n"
LEGS = "  leg: {kind: board, material: oak, thickness: 45}\n"
PLINTH = {"kind": "plinth", "height": 100}
BASES: dict[str, dict[str, Any]] = {
    "plinth": PLINTH | {"levelling": 5, "spacing": 200, "sides": 10, "rear": 20},
    "flush plinth": PLINTH | {"toe_space": 0},
    "toe board": {"kind": "toe_board", "height": 100},
    "legs on blocks": {"kind": "legs", "height": 100, "stock": "leg"},
    "legs on rails": {
        "kind": "legs", "height": 150, "stock": "leg", "held_by": "rails", "span": 300, "inset": 20,
    },
    "feet": {"kind": "levellers", "height": 100, "board": {}},
}  # fmt: skip


def _unit(text: str = SIZE, **more: Any) -> Unit:
    return unit_from(text + STOCK + LEGS, **more)


def _problems(text: str = SIZE, **more: Any) -> list[str]:
    return problems_of(text + STOCK + LEGS, **more)


def _named(unit: Unit, name: str) -> list[Part]:
    return [part for part in unit.parts if part.name == name]


@pytest.mark.parametrize(
    ("base", "side", "begins", "inside"),
    [
        (None, 900.0, 0.0, 18.0),
        (PLINTH, 800.0, 100.0, 118.0),
        ({"kind": "toe_board", "height": 100}, 900.0, 0.0, 118.0),
        ({"kind": "levellers", "height": 120}, 780.0, 120.0, 138.0),
    ],
)
def test_the_base_counts_towards_the_height(
    base: dict[str, Any] | None, side: float, begins: float, inside: float
) -> None:
    unit = _unit(**({"base": base} if base else {}))
    sides = of_role(unit, Role.SIDE)
    assert [part.blank.length for part in sides] == [side, side]
    assert {part.bounds().low[2] for part in sides} == {begins}
    assert of_role(unit, Role.BOTTOM)[0].bounds().high[2] == inside
    assert unit.size[1] == pytest.approx(900.0)


def test_openings_given_as_lengths_stand_on_the_base() -> None:
    unit = _unit(
        "size: {width: 800, depth: 400}\n",
        base=PLINTH,
        interior={"shelves": {"openings": [200, 300]}},
    )
    assert unit.size[1] == pytest.approx(100 + 18 + 300 + 18 + 200 + 18)


def test_a_plinth_by_hand() -> None:
    """100 high, however far it may be packed up off a low floor; 800 - 2 x 10 wide; 400 - 50 - 20
    deep; the ends stand between front and back; 780 - 4 x 18 of boards leaves 236 clear, three
    times."""
    unit = _unit(base=PLINTH | {"levelling": 5, "sides": 10, "rear": 20, "spacing": 240})
    front, back = _named(unit, "Plinth front"), _named(unit, "Plinth back")
    assert [part.blank.size for part in front + back] == [(780.0, 100.0, 18.0)] * 2
    assert front[0].bounds().low == (10.0, 50.0, 0.0)
    assert back[0].bounds().high == (790.0, 380.0, 100.0)
    ends, cross = _named(unit, "Plinth end"), _named(unit, "Plinth cross member")
    assert {part.blank.size for part in ends + cross} == {(294.0, 100.0, 18.0)}
    assert [part.bounds().low[0] for part in cross] == [264.0, 518.0]
    assert unit.levelling == 5.0


@pytest.mark.parametrize(("spacing", "members"), [(764, 0), (763, 1), (373, 1), (372, 2)])
def test_no_cross_member_more_than_it_takes(spacing: float, members: int) -> None:
    """Between the ends there are 764; with one member in the middle, (764 - 18) / 2 = 373."""
    unit = _unit(base=PLINTH | {"spacing": spacing})
    assert len(_named(unit, "Plinth cross member")) == members


def test_a_toe_board_stands_behind_a_notch() -> None:
    unit = _unit(base={"kind": "toe_board", "height": 110, "toe_space": 60})
    left, right = of_role(unit, Role.SIDE)
    assert left.workings == (Notch(0.0, 0.0, 110.0, 60.0),)
    assert right.workings == (Notch(0.0, 340.0, 110.0, 60.0),)  # measured from its rear
    (board,) = _named(unit, "Toe board")
    assert board.blank.size == (764.0, 110.0, 18.0)
    assert board.bounds().low == (18.0, 60.0, 0.0)


def test_the_toe_space_begins_at_the_front_of_a_face_frame() -> None:
    frame = {"stock": "ash", "width": 45}
    toe = _unit(base={"kind": "toe_board", "height": 110, "toe_space": 60}, face_frame=frame)
    assert of_role(toe, Role.SIDE)[0].workings == (Notch(0.0, 0.0, 110.0, 38.0),)
    for unit, begins in ((toe, 110.0), (_unit(base=PLINTH, face_frame=frame), 100.0)):
        stiles = of_role(unit, Role.STILE)
        assert {part.bounds().low[2] for part in stiles} == {begins}
        assert {part.blank.length for part in stiles} == {900.0 - begins}
        assert min(part.bounds().low[2] for part in of_role(unit, Role.RAIL)) == begins
    assert _named(_unit(base=PLINTH, face_frame=frame), "Plinth front")[0].bounds().low[1] == 28.0


def test_legs_and_what_holds_them() -> None:
    unit = _unit(base=BASES["legs on blocks"] | {"inset": 10})
    legs = _named(unit, "Leg")
    assert {part.blank.size for part in legs} == {(100.0, 45.0, 45.0)}
    assert [part.bounds().low[:2] for part in legs] == [
        (10.0, 10.0), (10.0, 345.0), (745.0, 10.0), (745.0, 345.0),
    ]  # fmt: skip
    assert len(_named(unit, "Leg block")) == 4
    # 800 - 2 x 20 - 2 x 45 leaves 670 between the outer legs: two more, 193.3 apart.
    rails = _unit(base=BASES["legs on rails"] | {"span": 200})
    assert len(_named(rails, "Leg")) == 8
    assert len(_named(rails, "Leg rail")) == 2 * 3 + 4


def test_dowels_from_two_sides_of_a_leg_miss_each_other() -> None:
    """45 square: dowels of 8 that reach 22.5 - 4 - 3 - 1 = 14.5 in, 29 long; holes 1 deeper."""
    unit = _unit(base=BASES["legs on rails"] | {"span": 900})
    dowelled = [joint for joint in unit.joints if joint.kind is JointKind.DOWEL]
    assert len(dowelled) == 2 * 4  # four rails
    assert {(each.name, each.count, each.size) for joint in dowelled for each in joint.fixings} == {
        ("dowel", 2, "8 x 29 mm")
    }
    for leg in _named(unit, "Leg"):
        holes = [each for each in leg.workings if isinstance(each, Hole)]
        assert len(holes) == 4
        assert {each.depth for each in holes} == {15.5}


@pytest.mark.parametrize(
    ("width", "depth", "feet"), [(400, 300, 4), (720, 400, 4), (721, 400, 6), (1400, 800, 12)]
)
def test_feet_are_counted(width: float, depth: float, feet: int) -> None:
    """60 in from every edge, in two rows at least, no more than 600 apart."""
    size = f"size: {{width: {width}, height: 900, depth: {depth}}}\n"
    unit = _unit(size, base={"kind": "levellers", "height": 100})
    counts = {fixing.name: fixing.count for fixing in unit.fixings}
    assert counts == {"adjustable foot": feet, "wood screw": 4 * feet}
    assert [each.on for each in unit.fixings] == ["BT1", "the feet under BT1"]
    assert unit.fixings[0].size == "85 mm to 115 mm high"
    assert unit.levelling == 15.0


def test_a_clip_on_board_hangs_on_the_front_feet() -> None:
    unit = _unit(base=BASES["feet"])
    (board,) = of_role(unit, Role.PLINTH)
    assert board.blank.size == (800.0, 97.0, 18.0)  # 3 of 100 to get it in
    assert board.bounds().low == (0.0, 50.0, 0.0)
    (clipped,) = [joint for joint in unit.joints if joint.second == board.ref]
    assert clipped.kind is JointKind.CLIPPED
    assert [(fixing.name, fixing.count) for fixing in clipped.fixings] == [("plinth clip", 3)]
    assert check_solids(unit) == ()


@pytest.mark.parametrize("base", BASES)
def test_parts_meet_whatever_stands_on_the_base(base: str) -> None:
    columns = [{"width": "1 share"}, {"width": "1 share", "shelves": {"count": 1}}]
    for bottom, corners, fixing, frame in product(
        ("between", "over", "none"),
        ("butted", "housed"),
        (None, "applied"),
        (None, "mitred"),
    ):
        needs = {
            "toe board": ("between",),
            "plinth": ("between", "over", "none"),
            "flush plinth": ("between", "over", "none"),
        }
        if bottom not in needs.get(base, ("between", "over")):
            continue
        more: dict[str, Any] = {
            "base": BASES[base],
            "carcass": {"stock": "ply", "bottom": bottom, "corners": corners},
            "interior": {"columns": columns},
        }
        if fixing:
            more["back"] = {"stock": "thin", "fixing": fixing}
        if frame:
            more["face_frame"] = {"stock": "ash", "width": 45, "corners": frame}
        else:
            more["lipping"] = {"stock": "ash", "thickness": 10, "edges": ["sides", "bottom"]}
            if bottom == "none":
                more["lipping"]["edges"] = ["sides"]
        unit = _unit(**more)
        assert check_solids(unit) == ()
        joined = {ref for joint in unit.joints for ref in (joint.first, joint.second)}
        assert {part.ref for part in unit.parts if part.group == "Base"} <= joined


def test_what_is_screwed_says_with_what() -> None:
    unit = _unit(base=PLINTH)
    screwed = [joint for joint in unit.joints if joint.kind is JointKind.SCREWED]
    # Ends and cross member to front and back; all but the ends, which the sides cover, to the
    # bottom.
    assert len(screwed) == 2 * 3 + 3
    assert all(joint.fixings and joint.fixings[0].count >= 2 for joint in screwed)


@pytest.mark.parametrize(
    ("base", "more", "where"),
    [
        (PLINTH | {"height": 900}, {}, "base.height"),
        (PLINTH | {"height": 880}, {}, "size.height"),
        (PLINTH | {"toe_space": 350}, {}, "base.toe_space"),
        (PLINTH | {"rear": 380}, {}, "base.rear"),
        (PLINTH | {"sides": 390}, {}, "base.sides"),
        (PLINTH | {"levelling": 100}, {}, "base.levelling"),
        (PLINTH | {"sides": 18}, {"carcass": {"stock": "ply", "bottom": "none"}}, "base.sides"),
        (PLINTH | {"stock": "elm"}, {}, "base.stock"),
        (PLINTH, {"carcass": {"stock": "ply", "bottom_height": 50}}, "carcass.bottom_height"),
        (BASES["toe board"] | {"toe_space": 390}, {}, "base.toe_space"),
        (
            BASES["toe board"] | {"toe_space": 20},
            {"face_frame": {"stock": "ash", "width": 45}},
            "base.toe_space",
        ),
        (BASES["toe board"], {"carcass": {"stock": "ply", "bottom": "over"}}, "carcass.bottom"),
        (BASES["feet"], {"carcass": {"stock": "ply", "bottom": "none"}}, "carcass.bottom"),
        (BASES["feet"] | {"range": {"least": 120, "most": 150}}, {}, "base.range"),
        (BASES["feet"] | {"board": {"toe_space": 200}}, {}, "base.board.toe_space"),
        ({"kind": "legs", "height": 100}, {}, "base"),
        (BASES["legs on blocks"] | {"stock": "ply"}, {}, "base.stock"),
        (BASES["legs on blocks"] | {"section": 60}, {}, "base.section"),
        (BASES["legs on blocks"] | {"inset": 170}, {}, "base.inset"),
        (BASES["legs on blocks"] | {"span": 80}, {}, "base.span"),
        (BASES["legs on rails"] | {"rail_width": 150}, {}, "base.rail_width"),
        (BASES["legs on rails"] | {"section": 15}, {}, "base.rail_stock"),
        (BASES["legs on rails"] | {"section": 20}, {}, "base.section"),
    ],
)
def test_what_nobody_can_make(base: dict[str, Any], more: dict[str, Any], where: str) -> None:
    found = _problems(base=base, **more)
    assert [each.split(":")[0] for each in found] == [where]


@pytest.mark.parametrize("sides", [0, 5, 30])
@pytest.mark.parametrize("rails", ["both", "top", "bottom"])
def test_a_mitred_frame_that_reaches_past_the_sides_misses_bottom_and_top(
    sides: float, rails: str
) -> None:
    """A stile is cut away where a panel 18 in from the side and 18 high lies behind it."""
    frame = {"stock": "ash", "width": 60, "overhang": {"sides": sides}, "rails": rails}
    unit = _unit(face_frame=frame, base=PLINTH)
    assert check_solids(unit) == ()
    (bottom,) = of_role(unit, Role.BOTTOM)
    stiles = {part.ref for part in of_role(unit, Role.STILE)}
    met = [joint for joint in unit.joints if joint.first == bottom.ref and joint.second in stiles]
    assert len(met) == (0 if sides and rails != "top" else 2)


OAK = """
stock:
  oak: {kind: board, material: european oak, thickness: 22}
"""


@pytest.mark.parametrize("kind", ["plinth", "rails"])
def test_a_base_leaves_a_solid_bottom_room_from_its_front_on(kind: str) -> None:
    """500 of oak moves 500 x 0.00365 x 6 = 11 mm: what runs from front to rear, and the rear, go
    through slots; the front stays put."""
    base: dict[str, Any] = {"kind": "plinth", "height": 80, "stock": "oak"}
    stock = OAK
    if kind == "rails":
        stock += "  leg: {kind: board, material: european oak, thickness: 45}\n"
        base = {
            "kind": "legs", "height": 120, "stock": "leg", "held_by": "rails", "rail_stock": "oak",
        }  # fmt: skip
    unit = unit_from(
        "size: {width: 900, height: 900, depth: 500}\n" + stock, carcass={"stock": "oak"}, base=base
    )
    carried = [
        joint
        for joint in unit.joints
        if joint.first == "BT1" and unit.part(joint.second).group == "Base" and joint.fixings
    ]
    front = min(unit.part(joint.second).bounds().low[1] for joint in carried)
    for joint in carried:
        box = unit.part(joint.second).bounds()
        free = joint.kind is JointKind.BUTTONED
        assert free == (box.size[1] > 100 or box.low[1] > front + 100)
        assert ("slots" in joint.fixings[0].pilot) == free
    assert len({joint.kind for joint in carried}) == 2
    assert not [each for each in check_parts(unit) if each.rule is Rule.HELD_ACROSS_GRAIN]


def test_runners_on_solid_sides_go_through_slots() -> None:
    """A runner lies along 470 of an oak side's width, which moves past it."""
    text = (
        "size: {width: 600, height: 700, depth: 500}\n"
        + OAK
        + "  thin: {kind: sheet, material: birch plywood, thickness: 6}\n"
        "  box: {kind: sheet, material: birch plywood, thickness: 12}\n"
    )
    drawers = {
        "count": 2, "stock": "box", "bottom": {"stock": "thin"}, "slides": {"kind": "runners"},
        "front_stock": "box",
    }  # fmt: skip
    unit = unit_from(text, carcass={"stock": "oak"}, interior={"drawers": drawers})
    runners = {part.ref for part in of_role(unit, Role.RUNNER)}
    held = [joint for joint in unit.joints if joint.first in runners and joint.fixings]
    assert runners
    assert {joint.kind for joint in held} == {JointKind.BUTTONED}
    for joint in held:
        screws, washers = joint.fixings
        assert screws.pilot.startswith("one at the front in a round hole 4.5 mm, the others in")
        assert washers.count == screws.count
    assert not [
        each
        for each in check_parts(unit)
        if each.rule is Rule.HELD_ACROSS_GRAIN and runners & set(each.parts)
    ]
