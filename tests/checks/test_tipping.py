"""What is said of units that tip: warnings, notes, a caution, each with what would help.

The figures themselves are worked out by hand in `tests/strength/test_tipping.py`.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.blocks import block, unit_of_blocks
from kit.specs import problems_of, unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.checks.tipping import tipping
from rodwright.mass import unit_weight
from rodwright.unit import Loading, Opening, Role, Slide, Swing, Unit


def _chest(travel: float = 300.0, weight: float = 1.0) -> Unit:
    """Two drawers of 10 kg, drawn out side by side, on a block that weighs some times 40 kg."""
    return unit_of_blocks(
        block("SD1", (0, 0, 0), (1000, 400, 100 * weight)),
        block("FR1", (0, 0, 100), (500, 200, 100), Role.DRAWER_FRONT, "Drawer 1"),
        block("FR2", (500, 0, 100), (500, 200, 100), Role.DRAWER_FRONT, "Drawer 2"),
        motions=(
            Slide(("FR1",), (0.0, -travel, 0.0)),
            Slide(("FR2",), (0.0, -travel, 0.0)),
        ),
    )


def _only(unit: Unit) -> Finding:
    (found,) = tipping(unit)
    return found


def test_by_its_own_weight() -> None:
    """Both drawn out by 1000 mm, 20 kg at -900 outweigh 40 kg at 200."""
    found = _only(_chest(1000.0))
    assert found.severity is Severity.WARNING
    assert found.rule is Rule.TIPS_WITH_DRAWERS_OUT
    assert found.parts
    assert "by its own weight when every drawer is drawn out" in found.message
    assert found.figure is not None and found.figure < 0
    assert (found.limit, found.measure) == (0.0, "degrees")
    assert "follow local rules" in found.remedy
    assert "the fixing has to hold" in found.remedy
    assert "plugs in masonry or " in found.remedy


def test_plasterboard_alone_is_told() -> None:
    unit = replace(_chest(1000.0), loading=Loading(wall="plasterboard"))
    assert "plasterboard alone doesn't hold it: find a stud" in _only(unit).remedy


def test_under_a_child() -> None:
    """On a carpet, 1.5641 degrees: (4000 cos - 5000 sin) / (300 cos + 200 sin) = 12.648 kg."""
    found = _only(_chest())
    assert "freestanding on a carpet" in found.message
    assert found.figure == pytest.approx(12.648, abs=1e-3)
    assert found.limit == pytest.approx(27.2155, abs=1e-3)
    assert "without if it had" in found.remedy


def test_heavy_enough_it_is_not_told() -> None:
    """Twice as heavy, and no higher than 600 mm: 80 x 200 - 20 x 200 = 12,000 at -300 is 40 kg."""
    assert list(tipping(_chest(weight=2.0))) == []


def test_doors_have_a_rule_of_their_own() -> None:
    unit = unit_of_blocks(
        block("SD1", (0, 0, 0), (600, 200, 500)),
        block("DO1", (0, -20, 0), (600, 20, 500), Role.DOOR, "Door 1"),
        motions=(Swing(("DO1",), (0.0, 0.0), -110.0),),
    )
    found = _only(unit)
    assert found.rule is Rule.TIPS_WITH_DOORS_OPEN
    # 60 x 100 - 6 x 300 = 4200 kg mm at 600: 7 kg, less than 75 N.
    assert found.figure == pytest.approx(7.0)
    assert found.limit == pytest.approx(75 / 9.80665)
    assert found.parts == ("DO1",)


@pytest.mark.parametrize(("depth", "told"), [(56, Severity.WARNING), (58, Severity.NOTE)])
def test_without_drawers_a_pull_at_its_top_counts(depth: float, told: Severity) -> None:
    """A block 280 wide and 1000 high is pulled over by 0.28 x depth x depth / 2 kg: 4.39 and
    4.71, the limit being 10 lb, or 4.54 kg."""
    found = _only(unit_of_blocks(block("SD1", (0, 0, 0), (280 * 10, depth, 1000))))
    assert found.rule is Rule.TALL_AND_FREESTANDING
    assert found.severity is told
    assert f"{0.28 * depth * depth / 2 / 100:.1f} kg" in found.message


def test_a_fixing_holds_no_less_than_restraints_are_tried_with() -> None:
    """4.39 kg pull it over, 4.54 are asked: a few newtons are lacking; 50 lb are 22.7 kg."""
    told = _only(unit_of_blocks(block("SD1", (0, 0, 0), (2800, 56, 1000))))
    assert "the fixing has to hold 23 kg (what restraints are tried with)" in told.remedy
    assert "plugs in masonry or 2 screws in studs" in told.remedy


def test_a_child_on_a_shelf_is_told_beside_the_pull() -> None:
    text = "size: {width: 900, height: 1980, depth: 250}\nloads: books\n"
    base = {"kind": "plinth", "height": 75, "toe_space": 50}
    found = _only(unit_from(text, interior={"shelves": {"count": 5}}, base=base))
    assert "a level pull of" in found.message
    assert "on the front of a shelf does it" in found.message


def test_a_child_on_a_shelf_tips_a_bookcase() -> None:
    """280 kg at 200 and less than 2 kg at -1250 stand a pull of 4.5 kg at the top; with a child at
    -2500, 27.2 x 2500 are more than 280 x 200."""
    unit = unit_of_blocks(
        block("SD1", (0, 0, 0), (700, 400, 1000)),
        block("SH1", (0, -2500, 900), (700, 2500, 1), Role.SHELF, "Shelf"),
    )
    found = _only(unit)
    assert (found.severity, found.rule) == (Severity.WARNING, Rule.TALL_AND_FREESTANDING)
    assert "on the front of a shelf does it, and a child weighs 27 kg" in found.message
    assert found.limit == pytest.approx(27.2155, abs=1e-3)


def test_what_is_worked_at_may_stand_free() -> None:
    """A bench that stands its trials isn't to be fixed whatever its figures, nor to be hung."""
    top = block("WT1", (0, 0, 900), (1200, 600, 30), Role.WORKTOP, "Worktop")
    bench = unit_of_blocks(block("SD1", (0, 0, 0), (1200, 600, 900)), top)
    found = _only(bench)
    assert (found.severity, found.rule) == (Severity.NOTE, Rule.TALL_AND_FREESTANDING)
    assert "it may stand free" in found.remedy
    assert "whatever its figures" not in found.remedy
    assert "hung" not in found.remedy


DRESSER = """
size: {width: 1200, height: 860, depth: 500}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18}
carcass: {stock: ply, corners: dowelled}
base: {kind: plinth, height: 80}
interior: {drawers: {count: 4%s}}
"""


@pytest.mark.parametrize("load", ["", ", load: folded clothes"])
def test_the_test_that_applies_is_told_with_what_fails_of_it(load: str) -> None:
    (found,) = tipping(unit_from(DRESSER % load))
    applies = "" if load else " if clothing may be kept in it"
    assert f"; ASTM F2057-23 applies (16 CFR 1261){applies}: it fails" in found.message
    assert "clothing in its drawers, all out (it falls by itself)" in found.message
    assert "a child of 27 kg on what is open" in found.message


def test_a_low_chest_is_outside_that_test() -> None:
    (found,) = tipping(unit_from(DRESSER.replace("860", "500") % ""))
    assert "ASTM" not in found.message


@pytest.mark.parametrize(("height", "told"), [(600.0, False), (600.1, True)])
def test_a_high_unit_is_told_whatever_its_figures(height: float, told: bool) -> None:
    found = list(tipping(unit_of_blocks(block("SD1", (0, 0, 0), (1000, 400, height)))))
    assert [each.severity for each in found] == [Severity.NOTE] * told
    assert all(each.limit == 600.0 for each in found)


def test_what_is_built_in_may_tip_until_it_is_fixed() -> None:
    opening = Opening(1000, 600, 500)
    assert list(tipping(replace(_chest(), opening=opening))) == []
    found = _only(replace(_chest(1000.0), opening=opening))
    assert (found.severity, found.rule) == (Severity.CAUTION, Rule.TIPS_UNTIL_FIXED)
    assert "drawers out" in found.brief
    thin = unit_of_blocks(block("SD1", (0, 0, 0), (2800, 56, 1000)), opening=opening)
    assert "a pull of 4.4 kg at its top" in _only(thin).brief


WALL_CABINET = "size: {width: 600, height: 720, depth: 320}\ncarcass: {stock: ply}\n"


def test_a_wall_cabinet_hangs_and_does_not_tip() -> None:
    """It weighs 12 kg or so; what it is hung by is a back 9 mm thick (common practice)."""
    rules = {each.rule: each for each in check_parts(unit_from(WALL_CABINET))}
    assert "`hung: true`" in rules[Rule.TALL_AND_FREESTANDING].remedy
    assert Rule.HANGING not in rules
    hung = unit_from(WALL_CABINET + "hung: true\n")
    rules = {each.rule: each for each in check_parts(hung)}
    assert Rule.TALL_AND_FREESTANDING not in rules
    assert rules[Rule.HANGING].severity is Severity.CAUTION
    assert rules[Rule.HANGING].figure == pytest.approx(unit_weight(hung))
    assert "local codes" in rules[Rule.HANGING].remedy
    assert rules[Rule.NOTHING_TO_HANG_BY].figure == 0.0


@pytest.mark.parametrize(("thickness", "told"), [(9, False), (8.9, True)])
def test_a_wall_cabinet_hangs_by_its_back(thickness: float, told: bool) -> None:
    text = f"""{WALL_CABINET}hung: true
back: {{stock: rear}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 18}}
  rear: {{kind: sheet, material: birch plywood, thickness: {thickness}}}
"""
    found = [each for each in check_parts(unit_from(text)) if each.rule is Rule.NOTHING_TO_HANG_BY]
    assert len(found) == told
    for each in found:
        assert (each.figure, each.limit) == (thickness, 9.0)


def test_what_hangs_stands_on_no_base() -> None:
    text = WALL_CABINET + "hung: true\nbase: {kind: plinth, height: 80}\n"
    assert problems_of(text) == ["hung: a unit that hangs on the wall stands on no base"]
