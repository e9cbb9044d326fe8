"""Screws, dowels and drills as they are sold, and units in inches that are set out with them."""

from __future__ import annotations

import re
from itertools import pairwise
from typing import Any, Literal

import pytest

from kit.specs import of_role, unit_from
from rodwright import check
from rodwright.checks.findings import Severity
from rodwright.checks.rules import Rule
from rodwright.handover.lists import hardware_list, parts_list
from rodwright.lengths import from_inches
from rodwright.problems import ProblemsError
from rodwright.trade.screws import gauge_diameter
from rodwright.trade.sizes import INCH, METRIC, TradeSizes
from rodwright.unit import Grain, Hole, JointKind, Mortise, Role, Stock, Unit

STOCK = """
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 23/32 in, size: [96, 48]}
  thin: {kind: sheet, material: birch plywood, thickness: 1/4 in, size: [96, 48]}
  box: {kind: sheet, material: birch plywood, thickness: 1/2 in}
  maple: {kind: board, material: maple, thickness: 1 1/16 in}
"""
SIZE = "unit: in\nsize: {width: 36, height: 34 1/2, depth: 23}\n"
METRIC_WARE = {5.0, 35.0, 15.0, 8.0}
"""Holes for what is sold in mm everywhere: plate screws, cups, cams and their bolts."""


@pytest.mark.parametrize(
    ("gauge", "shank"), [(4, 2.8), (6, 3.5), (8, 4.2), (10, 4.8), (12, 5.5), (14, 6.1)]
)
def test_gauges_of_wood_screws(gauge: int, shank: float) -> None:
    """Shank diameters in mm to a tenth, ASME B18.6.1 (from memory)."""
    assert gauge_diameter(gauge) == pytest.approx(shank, abs=0.051)
    assert INCH.screw_name(gauge_diameter(gauge)) == f"no. {gauge}"


def test_no_8_is_0_164_in_of_the_standard() -> None:
    """ASME B18.6.1, table 1: no. 8 is 0.164 in (from memory)."""
    assert gauge_diameter(8) / 25.4 == pytest.approx(0.164)


@pytest.mark.parametrize(
    ("gauge", "clearance"), [(4, "1/8"), (6, "9/64"), (8, "11/64"), (12, "7/32"), (14, "1/4")]
)
def test_drills_for_clearance(gauge: int, clearance: str) -> None:
    """The shank holes that tables of wood screws print: 9/64 for no. 6, 11/64 for no. 8, 7/32 for
    no. 12, 1/4 for no. 14 (from memory)."""
    diameter = gauge_diameter(gauge)
    assert INCH.clearance(diameter) == pytest.approx(from_inches(clearance))
    assert diameter <= INCH.clearance(diameter) < diameter + 25.4 / 64 + 1e-9


@pytest.mark.parametrize("gauge", [4, 6, 8, 10, 12, 14])
def test_pilots_lie_between_those_for_softwood_and_for_hardwood(gauge: int) -> None:
    """Wood Handbook (FPL-GTR-190), ch. 8 (from memory): lead holes of 70 % of the root's diameter
    in softwood and 90 % in hardwood; the root is about two thirds of the shank."""
    root = 2 / 3 * gauge_diameter(gauge)
    pilot = INCH.pilot(gauge_diameter(gauge), "sheet")
    assert 0.7 * root <= pilot <= 0.9 * root + 25.4 / 128
    assert pilot / 25.4 * 64 == pytest.approx(round(pilot / 25.4 * 64))
    assert INCH.pilot(gauge_diameter(gauge), "splitting") >= pilot


@pytest.mark.parametrize("sizes", [INCH, METRIC])
def test_hardwood_takes_larger_pilots_than_softwood(sizes: TradeSizes) -> None:
    """Wood Handbook (FPL-GTR-190), ch. 8 (from memory): 70 % of the root in softwood, 90 % in
    hardwood; of drills that are sold the nearest, in hardwood none that is less."""
    for diameter in sizes.screw_diameters:
        root = 2 / 3 * diameter
        soft, hard = sizes.pilot(diameter, "softwood"), sizes.pilot(diameter, "hardwood")
        assert abs(soft - 0.7 * root) <= sizes.drill / 2 + 1e-9
        assert 0.9 * root - 1e-9 <= hard < 0.9 * root + sizes.drill
        assert soft < hard


@pytest.mark.parametrize(
    ("kind", "material", "held"),
    [
        ("board", "hard maple", "hardwood"),
        ("board", "European oak", "hardwood"),
        ("board", "Scots pine", "softwood"),
        ("board", "Douglas-fir", "softwood"),
        ("sheet", "pine plywood", "sheet"),
        ("sheet", "mdf", "splitting"),
    ],
)
def test_what_a_screw_goes_into(kind: Literal["sheet", "board"], material: str, held: str) -> None:
    stock = Stock("s", kind, material, 18.0, Grain.LENGTHWISE, 600.0, "given", "#c8b08c")
    assert stock.grip == held


@pytest.mark.parametrize(("wood", "pilot"), [("maple", "7/64"), ("pine", "5/64")])
def test_pilots_go_by_what_the_screw_goes_into(wood: str, pilot: str) -> None:
    """A no. 8 through plywood into a top of maple or of pine."""
    text = f"""unit: in
size: {{width: 32, height: 32, depth: 20}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 3/4}}
  top: {{kind: board, material: {wood}, thickness: 1}}
"""
    unit = unit_from(text, worktop={"stock": "top"})
    holes = [
        fixing.pilot
        for joint in unit.joints
        for fixing in joint.fixings
        if unit.part(joint.second).role is Role.WORKTOP and fixing.name == "wood screw"
    ]
    assert holes == [f"clearance 11/64 in, pilot {pilot} in"]


def test_words_for_screws() -> None:
    eight, long = gauge_diameter(8), from_inches("1 1/2")
    assert INCH.screw_size(eight, long) == "no. 8 x 1 1/2 in"
    assert INCH.holes(eight) == "clearance 11/64 in, pilot 3/32 in"
    assert METRIC.screw_size(4.0, 40.0) == "4 x 40 mm"
    assert METRIC.holes(4.0) == "clearance 4.5 mm, pilot 2.5 mm"
    # A diameter of the maker's own that is no gauge's stays a diameter: 5/32 is 3.97 mm.
    assert INCH.screw_size(from_inches("5/32"), long) == "5/32 x 1 1/2 in"


@pytest.mark.parametrize(
    ("mm", "inches"),
    [
        (0.5, "1/32"),
        (1, "1/32"),
        (2, "1/16"),
        (3, "1/8"),
        (5, "3/16"),
        (6, "1/4"),
        (8, "5/16"),
        (10, "3/8"),
        (12, "1/2"),
        (20, "3/4"),
        (25, "1"),
        (32, "1 1/4"),
        (50, "2"),
        (70, "2 3/4"),
        (100, "4"),
        (150, "6"),
        (200, "8"),
        (300, "12"),
        (400, "16"),
        (600, "24"),
    ],
)
def test_figures_of_our_own_choosing_are_round(mm: float, inches: str) -> None:
    assert INCH.usual(mm) == pytest.approx(from_inches(inches))
    assert METRIC.usual(mm) == mm


def hardware(unit: Unit) -> dict[str, tuple[str, tuple[str, ...]]]:
    return {row.name: (row.size, row.holes) for row in hardware_list(unit)}


def unit(more: str) -> Unit:
    return unit_from(SIZE + STOCK + more)


def approx(*sizes: str) -> Any:
    return pytest.approx(list(map(from_inches, sizes)))


def drilled(made: Unit) -> set[float]:
    return {
        working.diameter
        for part in made.parts
        for working in part.workings
        if isinstance(working, Hole)
    }


def test_screws_of_a_carcass() -> None:
    """No. 8 through 23/32 into as much: 7 diameters, 1.148 in, further, so 2 in long."""
    made = unit("carcass: {stock: ply, corners: screwed}")
    assert hardware(made)["wood screw"] == ("no. 8 x 2 in", ("clearance 11/64 in, pilot 3/32 in",))
    assert sorted(drilled(made)) == approx("3/32", "11/64")


def test_dowels_of_a_carcass() -> None:
    """Half of 3/4 in boards: 3/8 x 2 in, two thirds of the thickness into the face and 1/32 for
    glue."""
    made = unit_from(
        SIZE + "carcass: {stock: pine, corners: dowelled}\n"
        "stock:\n  pine: {kind: board, material: pine, thickness: 3/4}\n"
    )
    assert hardware(made)["dowel"] == ("3/8 x 2 in", ("3/8 in, 17/32 and 1 17/32 in deep",))
    assert sorted(drilled(made)) == approx("3/8")
    depths = {w.depth for p in made.parts for w in p.workings if isinstance(w, Hole)}
    assert sorted(depths) == approx("17/32", "1 17/32")


def test_dowels_of_sheets_keep_from_breaking_out() -> None:
    """3/8 is more than half of sheets sold as 3/4 that are 23/32 thick: 5/16 x 1 1/2 in."""
    made = unit("carcass: {stock: ply, corners: dowelled}")
    assert hardware(made)["dowel"][0] == "5/16 x 1 1/2 in"
    warned = {each.rule for each in check(made) if each.severity is Severity.WARNING and each.parts}
    assert warned <= {Rule.NOTHING_BRACES_IT}  # it has no back


@pytest.mark.parametrize(
    ("joint", "name", "size", "holes"),
    [
        ("biscuited", "biscuit", "size 20", "slot 5/32 in wide, 1/2 in deep"),
        ("loose-tenoned", "loose tenon", "1 9/16 in long, 1 5/8 x 1/4 in",
         "mortises 1/4 in wide, 19/32 and 1 1/32 in deep"),
        ("pocket-screwed", "pocket screw", "no. 8 x 1 1/4 in",
         "pocket 3/8 in at 15 degrees, 1 11/32 in from the end"),
        ("{joint: knock-down, fitting: barrel_nut}", "barrel nut", "1/4-20, 3/8 in",
         "boring 3/8 in, 9/16 in deep"),
        ("knock-down", "cam", "15 mm (19/32 in)",
         "boring 15 mm (19/32 in), 17/32 in deep"),
        ("{joint: mitred, reinforced: dowels}", "dowel", "1/4 x 3/4 in",
         "1/4 in, 3/8 in deep each side, square to the mitre near its inner corner"),
    ],
)  # fmt: skip
def test_what_joints_take(joint: str, name: str, size: str, holes: str) -> None:
    ends = "interior: {}"
    made = unit(
        f"carcass: {{stock: ply, corners: {joint}, top: over, bottom: over}}\n{ends}"
        if "mitred" in joint
        else f"carcass: {{stock: ply, corners: {joint}}}"
    )
    assert hardware(made)[name] == (size, (holes,))


FURNISHED = """
carcass: {stock: ply, corners: screwed}
base: {kind: levellers, height: 4}
worktop: {stock: maple}
interior:
  columns:
    - width: 15
      drawers:
        {count: 3, hung: overlay, stock: box, bottom: {stock: thin}, handle: {spacing: 3}}
    - width: 1 share
      shelves: {count: 2, fixed: false, holes: {sleeves: true}}
      doors: {hung: overlay, count: 2, handle: {name: knob}}
back: {stock: thin}
"""


def test_every_hole_is_of_a_drill_that_is_sold() -> None:
    for diameter in drilled(unit(FURNISHED)) - METRIC_WARE:
        assert diameter / 25.4 * 64 == pytest.approx(round(diameter / 25.4 * 64), abs=1e-6)


def test_lists_of_a_unit_in_inches_have_no_decimals_and_no_millimetres() -> None:
    made = unit(FURNISHED)
    texts = [text for row in hardware_list(made) for text in (row.name, row.size, *row.holes)] + [
        text for row in parts_list(made) for text in row.workings
    ]
    assert len(texts) > 60
    for text in texts:
        assert not re.search(r"\d\.\d", text.replace("45.0°", "")), text
        assert not re.search(r"(?<![\d/])0 \d+/\d+", text), text
        plain = re.sub(r"\b(5|32|35) mm \([0-9/ ]+(?: in)?\)", "", text)
        assert "mm" not in plain, text


def test_slides_pins_and_feet_of_a_unit_in_inches() -> None:
    bought = hardware(unit(FURNISHED))
    assert bought["shelf pin"][0] == "1/4 in"
    assert bought["sleeve for a shelf pin"][0] == "1/4 in inside, 9/32 in outside"
    assert bought["pair of side-mounted drawer slides"][0] == "22 in"
    assert bought["washer"][0] == "for no. 8 screws"
    assert bought["adjustable foot"][0] == "3 7/16 in to 4 9/16 in high"


def test_rows_of_holes_in_inches() -> None:
    made = unit("carcass: {stock: ply}\ninterior: {shelves: {count: 2, fixed: false}}")
    (left, _) = of_role(made, Role.SIDE)
    holes = [each for each in left.workings if isinstance(each, Hole)]
    rows = sorted({round(each.position[1], 6) for each in holes})
    assert from_inches("1 7/16") == pytest.approx(rows[0])
    along = sorted(each.position[0] for each in holes if each.position[1] == pytest.approx(rows[0]))
    steps = {round(b - a, 6) for a, b in pairwise(along)}
    assert steps == {31.75}
    assert sorted({each.depth for each in holes}) == approx("3/8")


def test_slots_of_biscuits_have_the_size_of_the_list() -> None:
    made = unit("carcass: {stock: ply, corners: biscuited}")
    slots = [w for p in made.parts for w in p.workings if isinstance(w, Mortise)]
    assert {round(slot.depth, 6) for slot in slots} == {12.7}
    assert {joint.kind for joint in made.joints} == {JointKind.BISCUIT}


def test_who_follows_a_remedy_in_inches_isnt_refused_again() -> None:
    """The rim of a cup keeps 2 mm of wood, which is 5.04 64ths: 6/64 is what is asked for."""
    wish = (
        SIZE + STOCK + "carcass: {stock: ply}\n"
        "interior: {doors: {hung: overlay, count: 2, hinge: {edge: %s}}}"
    )
    try:
        unit_from(wish % "1/32")
    except ProblemsError as error:
        (problem,) = error.problems[:1]
    said = re.search(r"at least ([\d/ ]+) in", problem.remedy)
    assert said is not None
    assert said[1] == "3/32"
    assert unit_from(wish % said[1]).parts
