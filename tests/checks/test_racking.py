"""What braces a carcass, in figures."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any

import pytest

from kit.specs import unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import stress_in
from rodwright.checks.rules import Rule
from rodwright.strength.racking import FRONT_TO_BACK, SIDEWAYS, racking
from rodwright.unit import Role

SIZE = "size: {width: 800, height: 900, depth: 300}\n"
BARE = {"stock": "ply", "top": "none", "bottom": "none"}
BACK = {"stock": "thin"}
FRAME = {"stock": "ash", "width": 45}
DOWELLED = {"stock": "ply", "corners": "dowelled"}


def _found(rule: Rule, text: str = SIZE, **more: Any) -> list[Finding]:
    return [each for each in check_parts(unit_from(text, **more)) if each.rule is rule]


@pytest.mark.parametrize(
    ("more", "told"),
    [
        ({"carcass": BARE, "interior": {"shelves": {"count": 3}}}, True),
        ({"carcass": BARE | {"bottom": "between"}}, True),
        ({"carcass": BARE, "interior": {"shelves": {"count": 3, "fixed": False}}}, True),
        ({"carcass": BARE, "interior": {"shelves": {"count": 3}}, "back": BACK}, False),
        ({"interior": {"shelves": {"count": 3}}, "back": BACK}, False),
        ({"carcass": {"stock": "ply", "corners": "butted"}}, True),
    ],
)
def test_what_braces_a_carcass(more: dict[str, Any], told: bool) -> None:
    found = _found(Rule.NOTHING_BRACES_IT, **more)
    assert len(found) == told
    for each in found:
        assert each.severity is Severity.WARNING
        assert each.figure is not None
        assert each.limit == pytest.approx(900 / 200)
        assert each.figure > each.limit
        assert "a back of 6 mm birch plywood" in each.remedy
        assert not _found(Rule.OPEN_BACK, **more)


def test_dowels_in_a_sheet_of_unknown_shear_hold_it_more_than_pocket_screws() -> None:
    stock = {"oak": {"kind": "sheet", "material": "oak plywood", "thickness": 18}}
    sway = {}
    for corners in ("dowelled", "pocket-screwed"):
        unit = unit_from(SIZE, carcass={"stock": "oak", "corners": corners}, stock=stock)
        (result,) = (each for each in racking(unit) if each.what == SIDEWAYS)
        assert result.figure is not None
        sway[corners] = result.figure
        low = [note for note in result.notes if "shear modulus isn't known" in note]
        assert len(low) == (corners == "dowelled")
    assert sway["dowelled"] < sway["pocket-screwed"]


INCHES = (
    "unit: in\nsize: {width: 36, height: 78, depth: 11 1/2}\nloads: hardbacks\n"
    "base: {kind: plinth, height: 3}\n"
)


def test_in_a_spec_in_inches_nothing_is_metric_nor_nothing_that_is_a_little() -> None:
    (found,) = _found(
        Rule.NOTHING_BRACES_IT,
        INCHES,
        carcass={"stock": "ply", "corners": "butted"},
        interior={"shelves": {"count": 5}},
        stock={"ply": {"kind": "sheet", "material": "birch plywood", "thickness": "3/4"}},
    )
    said = f"{found.message} {found.remedy}"
    assert not re.search(r"\d (mm|kg|m|N)\b|N/mm2", said)
    assert "7 in apart (under 1/64 in)" in said
    assert "lb sideways (0 in)" in said


def test_a_back_that_buckles_is_told_in_the_makers_stress() -> None:
    unit = unit_from(SIZE)
    assert stress_in(unit, 1.8) == "1.8 N/mm2"
    assert stress_in(replace(unit, display_unit="in"), 1.8) == "261 psi"


def test_a_remedy_says_what_it_gives() -> None:
    """A back of 6 mm screwed on: 100 N and some over 800 x 900 give about a tenth of a mm."""
    (found,) = _found(Rule.NOTHING_BRACES_IT, carcass={"stock": "ply", "corners": "butted"})
    assert found.message == (
        "pushed with 10 kg at the top, with all that stands in it, its joints don't keep it "
        "upright, glue not counted"
    )
    assert "a back of 6 mm birch plywood, screwed on all round with 3 mm screws" in found.remedy
    assert re.search(r"fix it to the wall near the top, for 1\d kg sideways \(0 mm\)", found.remedy)


def test_a_dowelled_carcass_stands_without_a_back() -> None:
    (found,) = _found(
        Rule.OPEN_BACK,
        "size: {width: 800, height: 300, depth: 500}\n",
        carcass={"stock": "ply", "corners": "dowelled"},
        interior={"shelves": {"count": 1}},
    )
    assert found.severity is Severity.NOTE
    assert found.figure is not None
    assert 0 < found.figure < 1.5 == found.limit
    assert not _found(Rule.OPEN_BACK, back=BACK)


def test_in_an_opening_the_wall_braces_what_ties_its_sides() -> None:
    opening = "opening: {width: 800, height: 900, depth: 300}\n"
    (found,) = _found(Rule.NOTHING_BRACES_IT, opening, carcass=BARE)
    assert found.remedy.startswith("Fix each upright to the wall. It would sway less with ")
    assert not _found(Rule.NOTHING_BRACES_IT, opening, carcass=DOWELLED)


def test_a_wall_that_it_is_fixed_to_braces_it() -> None:
    unit = unit_from(SIZE, carcass=DOWELLED)
    rules = {each.rule for each in check_parts(unit)}
    assert Rule.NOTHING_BRACES_IT in rules
    for wall, told in (("masonry", False), ("studs", False), ("plasterboard", True)):
        fixed = replace(unit, loading=replace(unit.loading, wall=wall))
        rules = {each.rule for each in check_parts(fixed)}
        assert (Rule.NOTHING_BRACES_IT in rules) == told


def test_a_weak_face_frame_is_not_enough() -> None:
    """Members of 45 and two dowels in each corner: it sways a few mm, more than 900/200."""
    (found,) = _found(Rule.SWAYS_TOO_FAR, face_frame=FRAME)
    assert found.limit == pytest.approx(4.5)
    assert found.figure is not None
    assert 4.5 < found.figure < 20
    assert "a back of 6 mm" in found.remedy
    assert not _found(Rule.SWAYS_TOO_FAR, face_frame=FRAME, back=BACK)


def _sway(held_by: str, what: str) -> float:
    base = {"kind": "legs", "height": 150, "stock": "oak", "held_by": held_by}
    unit = unit_from(SIZE, base=base, back=BACK, carcass=DOWELLED)
    (figure,) = [each.figure for each in racking(unit) if each.what == what]
    assert figure is not None
    return figure


@pytest.mark.parametrize("what", [SIDEWAYS, FRONT_TO_BACK])
def test_legs_sway_less_with_rails_between_them(what: str) -> None:
    """One block a leg, two screws in it: some mm.  Rails dowelled in: less than one."""
    assert 1 < _sway("blocks", what) < 8
    assert 0 < _sway("rails", what) < 1


def test_a_loose_back_is_told_to_be_glued() -> None:
    """1 mm of play on all sides of 500 x 1900: 2 (1 + 3.8) = 9.6 mm before it bears, and 1900/200 =
    9.5; with shelves housed."""
    text = "size: {width: 500, height: 1900, depth: 300}\n"
    back = {"stock": "thin", "fixing": "grooved", "clearance": 1.2}
    (found,) = _found(Rule.SWAYS_TOO_FAR, text, back=back)
    assert "the back glued into its grooves all round (" in found.remedy


def test_a_thin_back_buckles() -> None:
    text = SIZE.replace("width: 800", "width: 2400") + (
        "stock:\n  ply: {kind: sheet, material: birch plywood, thickness: 18}\n"
        "  skin: {kind: sheet, material: birch plywood, thickness: 0.4}\n"
    )
    found = _found(Rule.BACK_BUCKLES, text, back={"stock": "skin"})
    assert len(found) == 1


def test_few_pins_work_loose() -> None:
    """One pin in each edge of 800 x 900: 100 N and more over 800, times 900, for a pin that may
    carry some 50 N."""
    unit = unit_from(SIZE, carcass=DOWELLED, back=BACK | {"fixing": "rebated"})
    backs = {part.ref for part in unit.parts if part.role is Role.BACK}
    joints = tuple(
        replace(joint, fixings=tuple(replace(each, count=1) for each in joint.fixings))
        if joint.second in backs
        else joint
        for joint in unit.joints
    )
    found = {each.rule: each for each in check_parts(replace(unit, joints=joints))}
    told = found[Rule.BACK_FIXINGS_GIVE]
    assert told.severity is Severity.WARNING
    assert told.figure is not None
    assert told.limit is not None
    assert 100 < told.figure < 130
    assert told.limit < 60
    assert Rule.BACK_FIXINGS_GIVE not in {each.rule for each in check_parts(unit)}


UNKNOWN = """
size: {width: 900, height: 1900, depth: 290}
stock:
  thin: {kind: sheet, material: birch plywood, thickness: 6}
  wood: {kind: sheet, material: moon plywood, thickness: 18, density: 600%s}
carcass: {stock: wood, corners: housed}
base: {kind: plinth, height: 75}
loads: books
interior: {shelves: {count: 5}}
"""
STATED = ", strength: {stiffness: 8300 N/mm2, source: the maker}"
SWAYS = (Rule.SWAY_UNKNOWN, Rule.NOTHING_BRACES_IT, Rule.SWAYS_TOO_FAR, Rule.OPEN_BACK)


def _of_sway(text: str, **more: Any) -> list[Finding]:
    return [each for each in check_parts(unit_from(text, **more)) if each.rule in SWAYS]


def test_an_open_carcass_of_unknown_wood_is_warned_of() -> None:
    (found,) = _of_sway(UNKNOWN % "")
    assert (found.rule, found.severity) == (Rule.SWAY_UNKNOWN, Severity.WARNING)
    assert "neither a back nor a face frame" in found.message
    assert "`moon plywood`" in found.message and "`strength: {" in found.message
    (backed,) = _of_sway(UNKNOWN % "", back=BACK)
    assert (backed.rule, backed.severity) == (Rule.SWAY_UNKNOWN, Severity.NOTE)
    assert not _of_sway(UNKNOWN % "" + "wall: studs\n")


def test_unknown_shear_of_the_sides_is_no_sway_from_front_to_back() -> None:
    """Its stiffness alone is known: it is told once that nothing braces it sideways."""
    (found,) = _of_sway(UNKNOWN % STATED)
    assert found.rule is Rule.NOTHING_BRACES_IT
    (back,) = [e for e in racking(unit_from(UNKNOWN % STATED)) if e.what == FRONT_TO_BACK]
    push, give = (each.value for each in back.inputs)
    assert give == pytest.approx(2 * 8300 / 16 * 18 * 290 / (1900 - 75))
    assert back.figure == pytest.approx(push / give)
    assert any("E/16" in note for note in back.notes)
