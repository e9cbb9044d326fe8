"""Pieces from handbooks printed before 1929: a spec must yield their bill, part by part.

The texts were read in electronic editions, which give no printed page; they are cited by
chapter.  Where a bill and the parts differ, the test says why and asserts by how much.
"""

from __future__ import annotations

import itertools
import math
from collections import Counter

import pytest

from kit.specs import of_role, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.rules import Rule
from rodwright.lengths import format_length, parse_length
from rodwright.unit import Part, Role, Unit

Line = tuple[str, str, str]


def _line(part: Part) -> Line:
    """Thickness, width and length in inches, as a bill has them."""
    blank = part.blank
    return (
        format_length(blank.thickness, "in"),
        format_length(blank.width, "in"),
        format_length(blank.length, "in"),
    )


def _bill(unit: Unit, *roles: Role) -> Counter[Line]:
    return Counter(_line(part) for role in roles for part in of_role(unit, role))


def _inches(text: str) -> float:
    return parse_length(text, "in")


FOSTERS_CABINET = """
title: Cabinet for twelve drawers
unit: in
size: {width: 25 1/8, height: 14, depth: 12 1/4}
stock:
  white: {kind: board, material: poplar, thickness: 1/2}
  thin: {kind: board, material: poplar, thickness: 1/4}
carcass: {stock: white, corners: housed, housing_depth: 1/4}
back: {stock: thin}
interior: {shelves: {count: 2}}
"""


def test_fosters_cabinet_with_its_shelves_gained_into_the_ends() -> None:
    """E. W. Foster, Carpentry and Woodwork, the chapter in which the boys make drawers.

    4 pcs. 24 5/8 x 12 x 1/2 shelves, 2 pcs. 14 x 12 x 1/2 ends, 1 pc. 25 1/8 x 14 x 1/4 back.
    "The shelves ... were gained into the sides, and ... the top and bottom were to be
    rabbeted into the sides": the bill counts top and bottom as shelves, and only housings
    1/4 in deep give both lengths.  Nothing differs; of the back, which is nailed on, the
    book has the grain the long way, and here it stands upright.
    """
    unit = unit_from(FOSTERS_CABINET)
    assert _bill(unit, Role.SHELF, Role.TOP, Role.BOTTOM) == Counter({("1/2", "12", "24 5/8"): 4})
    assert _bill(unit, Role.SIDE) == Counter({("1/2", "12", "14"): 2})
    (back,) = of_role(unit, Role.BACK)
    assert _line(back) == ("1/4", "25 1/8", "14")
    assert check_solids(unit) == ()


def test_fosters_twelve_drawers_have_their_space() -> None:
    """The same chapter: "The total width of the drawers in each tier was 1/8 inch less".

    Four shelves make three tiers, so twelve drawers are four a tier: 24 1/8 in between the
    ends less 1/8 leaves 6 in each, and a tier is 4 in high.
    """
    unit = unit_from(FOSTERS_CABINET)
    left, right = of_role(unit, Role.SIDE)
    between = right.bounds().low[0] - left.bounds().high[0]
    assert (between - _inches("1/8")) / 4 == pytest.approx(_inches("6"))
    levels = sorted(
        (
            part.bounds()
            for role in (Role.SHELF, Role.TOP, Role.BOTTOM)
            for part in of_role(unit, role)
        ),
        key=lambda box: box.low[2],
    )
    for lower, upper in itertools.pairwise(levels):
        assert upper.low[2] - lower.high[2] == pytest.approx(_inches("4"))


def test_fosters_back_is_what_moves_in_his_cabinet() -> None:
    """Its 12 in ends and shelves lie the same way, but the back crosses all of them."""
    held = {
        finding.parts[0]
        for finding in check_parts(unit_from(FOSTERS_CABINET))
        if finding.rule is Rule.HELD_ACROSS_GRAIN
    }
    assert held == {"BK1"}


def test_fosters_tool_cabinet() -> None:
    """E. W. Foster, Carpentry and Woodwork, ch. XXXVIII, Tool Cases and Chests.

    "A dovetailed box 30 x 20 x 6 inches over all", reached from the front: 1 piece pine and
    1 piece oak 30 x 20 x 1/2 (back and front), 2 pieces oak 20 x 5 1/2, 2 pieces oak
    30 x 5 1/2, all 1/2 in thick.  Three things differ:

    - Width of the four rim pieces: front and back take 1 in of the 6 in, so 5 in is left; the
      bill buys 1/2 in over.
    - Length of top and bottom: dovetails need it whole, butted they stand between the sides,
      two thicknesses shorter.
    - The front is a lid of the whole size there; here it is a door, which stays half a gap
      of 3/32 in inside the rim on each side.
    """
    unit = unit_from("""
title: Tool cabinet
unit: in
size: {width: 30, height: 20, depth: 5 1/2}
stock:
  oak: {kind: board, material: oak, thickness: 1/2}
  pine: {kind: board, material: pine, thickness: 1/2}
carcass: {stock: oak, corners: butted}
back: {stock: pine}
interior: {doors: {hung: overlay, hinge: {cup_depth: 8 mm}}}
""")
    assert _bill(unit, Role.BACK) == Counter({("1/2", "30", "20"): 1})
    assert _bill(unit, Role.SIDE) == Counter({("1/2", "5", "20"): 2})
    assert _bill(unit, Role.TOP, Role.BOTTOM) == Counter({("1/2", "5", "29"): 2})
    for part in (*of_role(unit, Role.SIDE), *of_role(unit, Role.TOP)):
        assert _inches("5 1/2") - part.blank.width == pytest.approx(_inches("1/2"))
    (top,) = of_role(unit, Role.TOP)
    assert _inches("30") - top.blank.length == pytest.approx(2 * _inches("1/2"))
    (door,) = of_role(unit, Role.DOOR)
    wide, _, high = door.bounds().size
    assert (_inches("30") - wide, _inches("20") - high) == pytest.approx(
        (_inches("3/32"), _inches("3/32"))
    )
    assert check_solids(unit) == ()


WINDSORS_BOOKCASE = """
title: A bookcase
unit: in
size: {width: 30 1/4, height: 50 3/4, depth: 14}
stock:
  oak: {kind: board, material: oak, thickness: 3/4}
  soft: {kind: board, material: pine, thickness: 1/2}
  backing: {kind: sheet, material: softwood plywood, thickness: 3/8}
  glass: {kind: sheet, material: glass, thickness: 1/8, density: 2500}
carcass: {stock: oak, corners: butted, top: none, bottom_height: 3 1/2}
worktop: {stock: oak, overhang: {front: 1, sides: 1/2}}
back: {stock: backing, fixing: rebated, depth: 1/2, clearance: 0}
interior:
  doors:
    kind: framed
    count: 2
    gap: 1/4
    hinge: {kind: butt}
    frame: {stile_width: 1 1/2, rail_width: 1 1/2, groove: 1/2}
    panel: {stock: glass}
  shelves: {count: 3, fixed: false, stock: soft, clearance: 1/8, setback: 11/16}
"""


def test_windsors_bookcase_with_two_doors() -> None:
    """H. H. Windsor, Mission Furniture: How to Make It, Part 2 (Chicago 1910), A Bookcase.

    "1 top, 3/4 by 15 by 31 1/4; 2 sides, 3/4 by 14 by 50; 1 bottom, 3/4 by 14 by 28 3/4;
    4 door sides, 3/4 by 1 1/2 by 45 1/4; 3 shelves, 1/2 by 12 by 28 1/2": these are ours.
    The doors are given a gap of 1/4 in all round, and nothing else gives the bill's door
    sides and door ends at once.
    """
    unit = unit_from(WINDSORS_BOOKCASE)
    assert _bill(unit, Role.WORKTOP) == Counter({("3/4", "15", "31 1/4"): 1})
    assert _bill(unit, Role.SIDE) == Counter({("3/4", "14", "50"): 2})
    assert _bill(unit, Role.BOTTOM) == Counter({("3/4", "14", "28 3/4"): 1})
    assert _bill(unit, Role.DOOR_STILE) == Counter({("3/4", "1 1/2", "45 1/4"): 4})
    assert _bill(unit, Role.SHELF) == Counter({("1/2", "12", "28 1/2"): 3})
    assert check_solids(unit) == ()


def test_what_differs_in_windsors_bookcase() -> None:
    """The rest of the bill of the bookcase, line by line.

    - "4 door ends, 3/4 by 1 1/2 by 14": as long as a door is wide, so his corners are lapped;
      ours have stub tongues of 1/2 in between stiles, 14 - 2 x 1 1/2 + 2 x 1/2 = 12 in.
    - "4 pieces door lattice ... by 12 1/2" reach 3/4 in into each stile, by which his door is
      the same 14 in wide; lattice is left out here, and the glass isn't in his bill.
    - "12 pieces backing, 3/8 by 4 by 29 3/4": boards lying on each other; ours is one panel as
      wide, and 12 is the whole number of 4 in boards that covers its height.
    - "1 center piece, 3/4 by 2 by 45 3/4" stands between bottom and top, "1 top back board,
      3/4 by 4 by 30 1/4" reaches over both sides, "1 bottom rail, 3/4 by 4 by 28 3/4" stands
      between them: a spec has no words for these three, but the places they fill are there.
    - Four cleats hold his top and bottom; here buttons and the joint do.
    """
    unit = unit_from(WINDSORS_BOOKCASE)
    rails = of_role(unit, Role.DOOR_RAIL)
    assert [_line(rail) for rail in rails] == [("3/4", "1 1/2", "12")] * 4
    stiles = of_role(unit, Role.DOOR_STILE)
    edges = sorted(
        edge for each in stiles[:2] for edge in (each.bounds().low[0], each.bounds().high[0])
    )
    door = edges[-1] - edges[0]
    assert door == pytest.approx(_inches("14"))
    assert rails[0].blank.length == pytest.approx(door - _inches("3") + _inches("1"))
    assert _inches("12 1/2") == pytest.approx(door - _inches("3") + 2 * _inches("3/4"))

    (back,) = of_role(unit, Role.BACK)
    wide, _, high = back.bounds().size
    assert wide == pytest.approx(_inches("29 3/4"))
    assert back.blank.thickness == pytest.approx(_inches("3/8"))
    assert math.ceil(high / _inches("4")) == 12

    (bottom,), (top,) = of_role(unit, Role.BOTTOM), of_role(unit, Role.WORKTOP)
    assert top.bounds().low[2] - bottom.bounds().high[2] == pytest.approx(_inches("45 3/4"))
    left, right = of_role(unit, Role.SIDE)
    assert right.bounds().high[0] - left.bounds().low[0] == pytest.approx(_inches("30 1/4"))
    assert right.bounds().low[0] - left.bounds().high[0] == pytest.approx(_inches("28 3/4"))


def test_craigins_tool_cabinet() -> None:
    """Harry Craigin, A Boy's Workshop, the tool cabinet.

    Boards 3/4 in thick for the rim and 1/2 in for the back; sides 3 ft 3 in long,
    "twenty-two and one fourth inches apart", top and bottom "put in so they will be flush with
    end of sides"; a box 3 1/2 in deep.  Its back is two boards 1 ft wide and as long as the
    sides: 24 in, but 22 1/4 and two sides make 23 3/4, so 1/4 in is planed off the back to
    "keep all the edges flush".
    """
    unit = unit_from("""
title: Tool cabinet
unit: in
size: {height: 39, depth: 3 1/2, width: 23 3/4}
stock:
  pine: {kind: board, material: pine, thickness: 3/4}
  half: {kind: board, material: pine, thickness: 1/2}
carcass: {stock: pine, corners: butted}
back: {stock: half}
""")
    assert _bill(unit, Role.SIDE) == Counter({("3/4", "3", "39"): 2})
    assert _bill(unit, Role.TOP, Role.BOTTOM) == Counter({("3/4", "3", "22 1/4"): 2})
    (back,) = of_role(unit, Role.BACK)
    assert back.blank.length == pytest.approx(_inches("3 ft 3 in"))
    assert 2 * _inches("1 ft") - back.blank.width == pytest.approx(_inches("1/4"))
    assert check_solids(unit) == ()
