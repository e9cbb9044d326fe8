"""The table of strength: figures in the maker's measures, what is alike told once, and its JSON."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from kit.results import BREAKS, PINS, PRACTICE, REMEMBERED, SAG, SEEN, STANDS, UNKNOWN
from kit.specs import unit_from
from rodwright.handover.strength_json import strength_json
from rodwright.handover.strength_list import (
    counted_text,
    figure_text,
    limit_text,
    number_text,
    remedy_text,
    sources_of,
    spare_text,
    strength_rows,
    told_figure,
    works_of,
)
from rodwright.lengths import LengthUnit
from rodwright.strength.fixings import level_joints
from rodwright.strength.ground import ON_FLOOR
from rodwright.strength.joint_results import LOADED
from rodwright.strength.results import Beyond, Group, Remedy


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (0.0, "0"),
        (0.001234, "0.00123"),
        (0.5, "0.5"),
        (2.0, "2"),
        (7.254, "7.25"),
        (12.34, "12.3"),
        (123.4, "123"),
        (10048.0, "10048"),
        (-3.456, "-3.46"),
        (float("inf"), "no end"),
    ],
)
def test_numbers_have_three_figures_that_count(value: float, text: str) -> None:
    assert number_text(value) == text


@pytest.mark.parametrize(
    ("value", "measure", "unit", "text"),
    [
        (25.4, "mm", "mm", "25.4 mm"),
        (25.4, "mm", "in", "1 in"),
        (10.0, "kg", "in", "22 lb"),
        (9.80665, "N", "mm", "1 kg"),
        (4.4482216, "N", "in", "1 lb"),
        (1000.0, "N/mm2", "mm", "1000 N/mm2"),
        (6.894757, "N/mm2", "in", "1000 psi"),
        (112.98483, "N mm", "in", "1 lb in"),
        (112984.83, "N mm/rad", "in", "1000 lb in/rad"),
        (2869.8147, "N mm2", "in", "1 lb in2"),
        (1851488.0, "N mm4", "in", "1 lb in4"),
        (9806.65, "N mm", "mm", "1 kg m"),
        (1.488164, "kg/m", "in", "1 lb/ft"),
        (14.0, "degrees", "in", "14 degrees"),
        (28.316847, "dm3", "in", "1 ft3"),
        (1.2, "", "mm", "1.2"),
        (None, "mm", "mm", "not known"),
        (0.00014, "mm", "mm", "under 0.01 mm"),
        (-0.00014, "mm", "in", "under 0.001 in"),
        (0.2032, "mm", "in", "0.008 in"),
        (0.4764, "mm", "in", "0.019 in"),
        (5.842, "mm", "in", "0.23 in"),
        (1800.0, "mm", "in", "70.9 in"),
        (9981.66, "N/mm2", "in", "1450000 psi"),
        (16.134, "N/mm2", "in", "2340 psi"),
        (float("inf"), "N/mm2", "in", "no end psi"),
        (0.00014, "N/mm2", "mm", "0.00014 N/mm2"),
    ],
)
def test_figures_in_the_measures_of_the_maker(
    value: float | None, measure: str, unit: LengthUnit, text: str
) -> None:
    """Factors of NIST Special Publication 811, appendix B.8."""
    assert figure_text(value, measure, unit) == text


def test_limits_spare_and_remedies_in_words() -> None:
    assert limit_text(SAG, "mm") == "at most 4.6 mm"
    assert limit_text(STANDS, "mm") == "at least 10 kg"
    assert limit_text(replace(SAG, limit=None), "mm") == ""
    assert spare_text(STANDS) == "x 2" and spare_text(replace(SAG, limit=None)) == ""
    first, second = SAG.remedies
    assert remedy_text(first, "mm", "mm") == "25 mm thick: 2.7 mm, +12.50 each, net"
    assert remedy_text(second, "mm", "mm") == "a lipping of 30 mm: 5.1 mm"
    other = (Beyond("bending stress", 6.0, 5.5, "N/mm2"),)
    half = Remedy("two shelves", 2.0, False, limit=3.3, beyond=other)
    assert remedy_text(half, "mm", "mm") == (
        "two shelves: 2 mm, at most 3.3 mm; but its bending stress is 6 N/mm2, at most 5.5 N/mm2"
    )


@pytest.mark.parametrize(
    ("figure", "limit", "told", "spare"),
    [
        (4.6, 4.6, "4.6 mm", "x 1"),
        (4.6001, 4.6, "just over 4.6 mm", "x 0.999"),
        (4.5999, 4.6, "just under 4.6 mm", "x 1"),
        (4.65, 4.6, "4.65 mm", "x 0.989"),
    ],
)
def test_what_fails_never_reads_like_its_limit(
    figure: float, limit: float, told: str, spare: str
) -> None:
    result = replace(SAG, figure=figure, limit=limit)
    assert (told_figure(result, "mm"), spare_text(result)) == (told, spare)


def test_what_a_joint_carries_is_held_to_what_it_bears() -> None:
    """It reads as a load of so much, at most what the joint bears; what would help bears more."""
    unit = unit_from(
        "size: {width: 800, height: 900, depth: 300}\n"
        "loads: 150 kg/m\n"
        "interior: {shelves: {count: 1, ends: screwed}}\n"
    )
    found = next(e for e in level_joints(unit) if e.what == LOADED and "SH1" in e.parts)
    load = next(each.value for each in found.inputs if each.symbol == "R")
    assert not found.holds
    assert told_figure(found, "mm") == figure_text(load, "kg", "mm")
    assert limit_text(found, "mm").startswith("at most ")
    each, count = (next(e.value for e in found.inputs if e.symbol == s) for s in ("R1", "n"))
    assert found.limit == pytest.approx(each * count)
    assert found.remedies
    assert all(": bears " in remedy_text(each, "kg", "mm") for each in found.remedies)


def test_that_something_is_more_than_nothing_is_no_limit_worth_telling() -> None:
    stands = replace(STANDS, limit=0.0, measure="degrees", figure=13.2)
    assert (limit_text(stands, "in"), spare_text(stands)) == ("", "")
    assert limit_text(replace(stands, figure=-1.0), "in") == "at least 0 degrees"


def test_what_tips_by_itself_has_nothing_to_spare() -> None:
    """By -5.5 times nothing is told: a multiple below nought says nothing."""
    assert spare_text(replace(STANDS, figure=-55.3)) == "none"
    assert spare_text(replace(STANDS, figure=0.0)) == "none"


def test_rows_go_by_group_with_what_fails_first() -> None:
    rows = strength_rows((STANDS, PINS, UNKNOWN, SAG, BREAKS), "mm")
    assert [row.subject for row in rows] == [
        "shelf SH1",
        "shelf SH1",
        "shelf SH2",
        "screws of SH1",
        "the unit",
    ]
    assert [row.result.holds for row in rows] == [False, True, True, False, True]
    groups = [list(Group).index(row.result.group) for row in rows]
    assert groups == sorted(groups)


def test_what_is_told_alike_is_one_row() -> None:
    others = [replace(SAG, subject=f"shelf SH{n}", parts=(f"SH{n}",)) for n in (3, 4)]
    far = replace(SAG, subject="shelf SH5", figure=7.26)
    rows = strength_rows((SAG, *others, far), "mm")
    assert [row.subject for row in rows] == ["shelf SH1, SH3, SH4", "shelf SH5"]
    many = [replace(SAG, subject=f"shelf SH{n}") for n in (1, 3, 4, 5, 7, 8, 10)]
    (row,) = strength_rows(many, "mm")
    assert row.subject == "shelf SH1, SH3-SH5, SH7, SH8, SH10"
    rail = replace(SAG, subject="front rail RA1")
    assert strength_rows((SAG, rail), "mm")[0].subject == "shelf SH1, front rail RA1"
    ends = [replace(SAG, subject=f"shelf SH{n} on side SD1") for n in (1, 2)]
    assert strength_rows(ends, "mm")[0].subject == "shelf SH1, SH2 on side SD1"
    both = [replace(SAG, subject=f"shelf SH{n} on side SD{n}") for n in (1, 2)]
    assert strength_rows(both, "mm")[0].subject == "shelf SH1 on side SD1, shelf SH2 on side SD2"


@pytest.mark.parametrize(
    "change",
    [
        {"figure": 7.3},
        {"limit": 5.0},
        {"what": "sag at once"},
        {"notes": ()},
        {"measure": "N"},
        {"remedies": SAG.remedies[:1]},
        {"inputs": ()},
        {"lacking": "its creep"},
    ],
)
def test_what_is_told_otherwise_is_a_row_of_its_own(change: dict[str, object]) -> None:
    assert len(strength_rows((SAG, replace(SAG, subject="shelf SH2", **change)), "mm")) == 2  # type: ignore[arg-type]


def test_what_was_taken_for_granted_parts_rows_where_it_is_told() -> None:
    other = replace(SAG, subject="shelf SH2", notes=("records are taken for granted",))
    assert len(strength_rows((SAG, other), "mm")) == 1
    assert len(strength_rows((SAG, other), "mm", in_full=True)) == 2


def test_memory_is_told_by_any_source() -> None:
    remembered, seen = strength_rows((SAG, PINS), "mm")
    assert remembered.from_memory and not seen.from_memory
    assert [source.seen for source in sources_of(SAG)] == [True, True, False]


def test_a_work_that_was_seen_in_part_is_told_once_so() -> None:
    half = replace(PINS, limit_source=replace(SEEN, seen=False))
    assert works_of(strength_rows((half, SAG), "mm")) == {
        SEEN.work: f"{SEEN.work} (in part from memory)",
        PRACTICE.work: PRACTICE.work,
        REMEMBERED.work: f"{REMEMBERED.work} (from memory)",
    }


def test_json_has_every_result_whole() -> None:
    unit = unit_from("size: {width: 800, height: 500, depth: 300}\n")
    results = (SAG, replace(SAG, subject="shelf SH3"), PINS, BREAKS, STANDS, UNKNOWN)
    document = json.loads(strength_json(unit, results, breaks=True))
    assert document["title"] == "Test" and document["measures"]["stress"] == "N/mm2"
    assert document["holds"] is False and document["breaks"] is True
    sag, _, _, _, stands, unknown = document["results"]
    assert (sag["figure"], sag["limit"], sag["measure"]) == (7.25, 4.6, "mm")
    assert sag["inputs"][1]["source"] == {
        "work": "Lavers, The strength properties of timber (1983)",
        "seen": False,
    }
    assert sag["remedies"][0] == {
        "what": "25 mm thick",
        "figure": 2.7,
        "holds": True,
        "cost": 12.5,
        "bears": False,
        "limit": None,
        "beyond": [],
    }
    assert sag["holds"] is False and "breaks" not in sag
    assert stands["at_least"] is True and stands["spare"] == 2.0
    assert unknown["figure"] is None and "bamboo" in unknown["lacking"]


def test_json_has_no_number_that_is_none() -> None:
    endless = replace(PINS, figure=0.0, limit=float("inf"))
    unit = unit_from("size: {width: 800, height: 500, depth: 300}\n")
    (record,) = json.loads(
        strength_json(unit, (endless,), breaks=False), parse_constant=pytest.fail
    )["results"]
    assert record["limit"] is None and record["spare"] is None


def test_weights_are_counted_apart_from_what_doesnt_hold() -> None:
    lift = replace(SAG, group=Group.LIFTING)
    floor = replace(STANDS, what=ON_FLOOR, figure=9.0, limit=2.0, at_least=False)
    assert not lift.holds
    assert not floor.holds
    assert counted_text(strength_rows((SAG, PINS), "mm")) == "2 figures, 1 beyond their limits."
    weighed = counted_text(strength_rows((lift, floor), "mm"))
    assert weighed == (
        "2 figures, 0 beyond their limits. 1 lift takes more hands. "
        "What weighs on the floor is for somebody who knows it."
    )
