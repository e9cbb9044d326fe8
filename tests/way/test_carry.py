"""Doorways, corners and standing up, and what helps where a unit doesn't go."""

from __future__ import annotations

import json
from dataclasses import replace
from math import hypot
from pathlib import Path

import pytest

from kit.samples import bookcase
from kit.specs import unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Severity
from rodwright.checks.rules import Rule
from rodwright.handover.unit_json import read_unit, unit_json
from rodwright.unit import Unit
from rodwright.unit.way import Corner, Doorway, Mouth, Skirting, WayIn
from rodwright.way.body import body_of, niche_of, straight_in
from rodwright.way.carry import Load, StepKind, carry, round_corner, through_doorway
from rodwright.way.remedies import Remedy, remedies, steps_for

ALCOVE = """
opening: {width: 1209, height: 2027, depth: 318}
fit: {sides: 3.5, top: 7, back: 2}
back: {stock: thin, fixing: rebated}
"""


def alcove(way: str, frame: bool = False) -> Unit:
    more = "\nface_frame: {stock: ash, width: 45}" if frame else ""
    return unit_from(f"{ALCOVE}{more}\nway_in: {way}\n")


def works(tried: tuple[Remedy, ...]) -> list[str]:
    return [remedy.what for remedy in tried if remedy.works]


@pytest.mark.parametrize(
    ("door", "held", "spare"),
    [
        (Doorway(760, 2100), "upright, side first", 60.0),
        (Doorway(760, 1980), "on its side, end first", 400.0),
        (Doorway(380, 1980), "on its side, end first", 20.0),
    ],
)
def test_a_doorway(door: Doorway, held: str, spare: float) -> None:
    step = through_doorway(Load("case", 1200.0, 2020.0, 320.0), door, 20.0, 1)
    assert step.passes
    assert step.spare == pytest.approx(spare)
    assert step.held == held


def test_a_doorway_too_small_says_by_how_much() -> None:
    step = through_doorway(Load("case", 900.0, 2000.0, 800.0), Doorway(760, 1980), 20.0, 1)
    assert not step.passes
    assert step.spare == pytest.approx(760 - 40 - 800)
    assert step.tight == "the width"


def test_leaning_sideways_through_a_doorway() -> None:
    """2000 x 100 into 760 x 1980: only leaning, since the doorway's diagonal is 2121."""
    step = through_doorway(Load("panel", 3000.0, 2000.0, 100.0), Doorway(760, 1980), 0.0, 1)
    assert step.passes
    assert step.held.startswith("leaning")
    assert step.held.endswith("upright, side first")
    sideways = Doorway(1980, 760)
    assert through_doorway(
        Load("panel", 3000.0, 2000.0, 100.0), sideways, 0.0, 1
    ).spare == pytest.approx(step.spare)


def test_raising_an_end_gets_a_long_box_round() -> None:
    """Flat it is too long for the turn; raised to the ceiling its footprint is shorter."""
    load = Load("case", 400.0, 2500.0, 300.0)
    flat = round_corner(load, Corner(900, 900, 450), 0.0, 1)
    raised = round_corner(load, Corner(900, 900, 2400), 0.0, 1)
    assert not flat.passes
    assert raised.passes
    assert raised.held.startswith("one end raised")


def test_standing_up_needs_the_diagonal() -> None:
    load = Load("case", 1200.0, 2020.0, 320.0)
    needed = hypot(2020, 320)
    lying_door = (Doorway(1300, 1500),)
    for ceiling, goes in ((needed + 0.5, True), (needed - 0.5, False)):
        *_, step = carry(load, WayIn(ceiling, lying_door), "mm")
        assert step.passes is goes
        assert step.spare == pytest.approx(ceiling - needed)
    *_, step = carry(load, WayIn(needed - 0.5, (Doorway(900, 2100),)), "mm")
    assert step.passes
    assert "never laid down" in step.held


def test_skirting_narrows_the_opening_at_both_sides() -> None:
    unit = alcove("{skirting: {height: 120, thickness: 18}}")
    assert unit.way_in is not None
    (step,) = steps_for(unit, unit.way_in)
    assert step.spare == pytest.approx(1209 - 36 - 1202)
    assert "between the skirtings" in step.tight
    assert works(remedies(unit, unit.way_in)) == ["take the skirting off where it stands"]


def test_a_frame_that_stops_it_is_left_off() -> None:
    """The frame adds 22 to the depth; without it the diagonal is under the ceiling."""
    ceiling = (hypot(2020, 294) + hypot(2020, 316)) / 2
    unit = alcove(f"{{ceiling: {ceiling}, doors: [{{width: 700, height: 1500}}]}}", frame=True)
    assert unit.way_in is not None
    assert not all(step.passes for step in steps_for(unit, unit.way_in))
    first = works(remedies(unit, unit.way_in))[0]
    assert first == "bring the face frame separately and fit it in place"


def test_sections_are_as_few_as_will_do() -> None:
    unit = alcove("{doors: [{width: 700, height: 900}], hands: 0}")
    assert unit.way_in is not None
    assert any("2 boxes side by side" in what for what in works(remedies(unit, unit.way_in)))
    tighter = replace(unit.way_in, doors=(Doorway(317, 500),))
    assert any("3 boxes side by side" in what for what in works(remedies(unit, tighter)))


def test_sections_must_stand_together_in_the_end() -> None:
    """Half-width sections each go between the skirtings, but both together don't."""
    unit = alcove("{skirting: {height: 120, thickness: 18}}")
    assert unit.way_in is not None
    assert [each for each in works(remedies(unit, unit.way_in)) if "boxes" in each] == []


def test_what_stands_before_the_mouth_and_behind_it() -> None:
    unit = alcove("{mouth: {width: 1190, height: 2010, thickness: 25}}")
    assert unit.opening is not None
    assert unit.way_in is not None
    body = body_of(unit)
    step = straight_in(body, niche_of(unit.opening, unit.way_in, body), "mm")
    assert step.spare == pytest.approx(min(1190 - 1202, 2010 - 2020))
    assert step.tight == "the width of its mouth"


def test_findings_name_place_amount_and_remedy() -> None:
    unit = alcove("{skirting: {height: 120, thickness: 18}}")
    rules = (Rule.WAY_TOO_TIGHT, Rule.CARRYING_IN)
    found = [finding for finding in check_parts(unit) if finding.rule in rules]
    assert found[0].severity is Severity.WARNING
    assert "29 mm short" in found[0].message
    assert "take the skirting off" in found[0].remedy
    assert not [each for each in check_parts(bookcase()) if each.rule in rules]


def test_unit_json_reads_back_with_a_way_in(tmp_path: Path) -> None:
    way = WayIn(
        2400.0,
        (Doorway(760.0, 1980.0),),
        (Corner(900.0, 850.0, None),),
        Skirting(120.0, 18.0),
        Mouth(None, 2000.0, 25.0),
        1500.0,
        0.0,
    )
    path = tmp_path / "unit.json"
    for unit in (replace(bookcase(), way_in=way), replace(bookcase(), way_in=WayIn())):
        path.write_bytes(unit_json(unit))
        assert read_unit(path) == unit


def test_unit_json_from_before_there_was_a_way_in(tmp_path: Path) -> None:
    document = json.loads(unit_json(bookcase()))
    del document["way_in"]
    path = tmp_path / "unit.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    assert read_unit(path) == bookcase()


CUPBOARD = """
size: {width: 1000, height: 2200, depth: 620}
carcass: {stock: ply}
base: {kind: plinth, height: 120, toe_space: 40}
interior: {doors: {hung: overlay, count: 2, bumper: 0}}
"""
PLINTH = "bring the plinth separately, and stand the unit on it in place"
DOORS = "take the doors off their hinges"


def cupboard(ceiling: float, text: str = CUPBOARD) -> Unit:
    """Carried lying through a low doorway, and stood up under a ceiling."""
    way = f"way_in: {{ceiling: {ceiling}, doors: [{{width: 1200, height: 1100}}]}}\n"
    return unit_from(f"{text}{way}")


@pytest.mark.parametrize(
    ("height", "depth", "what"),
    [
        # By Pythagoras: the carcass stands on a plinth of 120, its doors 18 before it.
        (2080.0, 638.0, PLINTH),
        (2200.0, 620.0, DOORS),
        (2080.0, 620.0, f"{DOORS}, and {PLINTH}"),
    ],
)
def test_standing_it_up_without_its_plinth_or_its_doors(
    height: float, depth: float, what: str
) -> None:
    for more, goes in ((0.5, True), (-0.5, False)):
        unit = cupboard(hypot(height, depth) + more)
        assert unit.way_in is not None
        assert not all(step.passes for step in steps_for(unit, unit.way_in))
        assert (what in works(remedies(unit, unit.way_in))) is goes


def test_the_remedies_tell_of_plinth_and_doors_in_check() -> None:
    unit = cupboard(hypot(2080.0, 620.0) + 0.5)
    (found,) = [each for each in check_parts(unit) if each.rule is Rule.WAY_TOO_TIGHT]
    assert f"{DOORS}, and {PLINTH}" in found.remedy


def test_more_than_a_remedy_that_works_is_not_offered() -> None:
    """The plinth alone does, or the doors alone: nobody need take off both."""
    for height, depth, what in ((2080.0, 638.0, PLINTH), (2200.0, 620.0, DOORS)):
        unit = cupboard(hypot(height, depth) + 0.5)
        assert unit.way_in is not None
        tried = [remedy.what for remedy in remedies(unit, unit.way_in)]
        assert what in tried
        assert f"{DOORS}, and {PLINTH}" not in tried


def test_a_plinth_has_to_pass_the_doorway_too() -> None:
    """A carcass lying on its side is 500 high, and its plinth as wide as it is."""
    unit = unit_from(CUPBOARD)
    way = WayIn(None, (Doorway(900.0, 115.0 + 20.0),), hands=20.0)
    tried = {remedy.what: remedy.still for remedy in remedies(unit, way)}
    assert any(step.kind is StepKind.DOORWAY for step in tried[PLINTH])


def test_what_is_not_a_frame_of_its_own_is_not_left_off() -> None:
    boards = ("{kind: toe_board, height: 120}", "{kind: levellers, height: 120, board: {}}")
    for base in boards:
        text = CUPBOARD.replace("{kind: plinth, height: 120, toe_space: 40}", base)
        unit = cupboard(2100.0, text)
        assert unit.way_in is not None
        tried = [remedy.what for remedy in remedies(unit, unit.way_in)]
        assert [what for what in tried if "plinth" in what] == []
        assert any(DOORS in what for what in tried)


def test_a_carcass_is_lifted_over_its_plinth_into_its_opening() -> None:
    """2193 in all under 2200; standing on a plinth of 120 there must be room for the rest."""
    text = CUPBOARD.replace("size: {width: 1000, height: 2200, depth: 620}", "").strip()
    opening = "opening: {width: 1007, height: 2207, depth: 640}\nsize: {depth: 620}\n"
    unit = cupboard(hypot(2080.0, 638.0) + 0.5, f"{opening}{text}\n")
    assert unit.way_in is not None
    assert PLINTH in works(remedies(unit, unit.way_in))
    low = replace(unit.way_in, mouth=Mouth(None, 2190.0, 25.0))
    still = {remedy.what: remedy.still for remedy in remedies(unit, low)}[PLINTH]
    (step,) = [each for each in still if each.kind is StepKind.OPENING]
    assert step.spare == pytest.approx(2190.0 - unit.size[1])


def test_four_boxes_are_no_remedy() -> None:
    unit = alcove("{doors: [{width: 310, height: 700}], hands: 0}")
    assert unit.way_in is not None
    tried = [remedy.what for remedy in remedies(unit, unit.way_in)]
    assert [what for what in tried if "4 boxes" in what] == []
