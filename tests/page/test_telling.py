"""What a page is told beside its picture, against the lists and the checks that say the same."""

from __future__ import annotations

import csv
import io
from dataclasses import asdict

import pytest

import rodwright
from kit.specs import ready_unit
from rodwright.amounts import format_weight
from rodwright.checks.findings import Severity
from rodwright.handover.list_files import edges_csv, hardware_csv, parts_csv
from rodwright.handover.lists import parts_list
from rodwright.handover.strength_list import told_figure
from rodwright.jobs.new import model_names, model_path
from rodwright.jobs.survey import survey
from rodwright.lengths import format_length
from rodwright.mass import weight
from rodwright.page import document as page
from rodwright.page.telling import checked_sections, quick_sections
from rodwright.page.telling.dimensions import dimensions_of
from rodwright.strength import strength_of
from rodwright.unit.facts import size_as_fitted


@pytest.mark.parametrize("name", model_names())
def test_details_say_what_the_parts_list_says(name: str) -> None:
    unit = ready_unit(name)
    place = page.Place(3, 5, "  carcass: {stock: ply}")
    first = unit.parts[0].ref
    sections = quick_sections(unit, {first: place})
    assert sections.details is not None and sections.apart is not None
    assert list(sections.details) == list(sections.apart) == [part.ref for part in unit.parts]
    assert [ref for ref, each in sections.details.items() if each.place] == [first]
    for row in parts_list(unit):
        for ref in row.refs:
            detail = sections.details[ref]
            assert detail.workings == row.workings
            assert detail.material == row.material
            assert detail.finish == row.finish
            kg = weight(unit.part(ref))
            assert detail.weight == format_weight(kg, unit.display_unit, 2)


@pytest.mark.parametrize("name", model_names())
def test_joints_are_told_of_both_parts_and_fixings_are_all_counted(name: str) -> None:
    unit = ready_unit(name)
    details = quick_sections(unit, {}).details
    assert details is not None
    pairs = {frozenset((each.first, each.second)) for each in unit.joints}
    told = {(ref, each.ref): each.how for ref, detail in details.items() for each in detail.joined}
    assert {frozenset(pair) for pair in told} == pairs
    assert len(told) == 2 * len(pairs)
    for joint in unit.joints:
        for ref, other in ((joint.first, joint.second), (joint.second, joint.first)):
            assert other in told[ref, other]
            for fixing in joint.fixings:
                assert fixing.name in told[ref, other] and fixing.size in told[ref, other]


def test_a_shelf_is_told_as_a_maker_would() -> None:
    details = quick_sections(ready_unit("pottery-dresser"), {}).details
    assert details is not None
    assert details["SH2"].joined == (
        page.Joined("SD1", "rests on pins in SD1, 2 x shelf pin 5 mm"),
        page.Joined("DV1", "rests on pins in DV1, 2 x shelf pin 5 mm"),
    )
    assert page.Joined("BT1", "BT1 goes into its housing") in details["SD1"].joined
    assert page.Joined("SD1", "in a housing of SD1") in details["BT1"].joined


@pytest.mark.parametrize("name", model_names())
def test_overall_dimensions_are_the_units_size_as_fitted(name: str) -> None:
    unit = ready_unit(name)
    told = dimensions_of(unit)
    width, height, depth = size_as_fitted(unit)
    assert len(told) < 40
    for axis, size in ((0, width), (2, height), (1, depth)):
        longest = max(abs(each.end[axis] - each.start[axis]) for each in told)
        assert longest == pytest.approx(size, abs=1e-2)
        texts = {
            each.text for each in told if abs(abs(each.end[axis] - each.start[axis]) - size) < 1e-2
        }
        assert texts == {format_length(size, unit.display_unit)}
    for each in told:
        along = [abs(b - a) for a, b in zip(each.start, each.end, strict=True)]
        assert sum(length > 1e-6 for length in along) == 1
        across = [abs(at) for at in each.offset]
        assert all(not (a > 1e-6 and o > 1e-6) for a, o in zip(along, across, strict=True))


def test_clear_openings_are_dimensioned() -> None:
    """By hand: 1201 wide, sides and divider of 18, the right column 420 as wished."""
    texts = [each.text for each in dimensions_of(ready_unit("reading-alcove"))]
    assert "420" in texts and format_length(1201 - 3 * 18 - 420, "mm") in texts


@pytest.mark.parametrize("name", model_names())
def test_findings_are_those_of_check_gravest_first(name: str) -> None:
    unit = ready_unit(name)
    found = rodwright.check(unit)
    told = checked_sections(unit, tuple(reversed(found))).findings
    assert told is not None
    assert sorted(each.message for each in told) == sorted(each.message for each in found)
    order = [list(Severity).index(Severity(each.severity)) for each in told]
    assert order == sorted(order)
    by_message = {each.message: each for each in found}
    for each in told:
        of = by_message[each.message]
        assert (each.rule, each.remedy, each.parts, each.source) == (
            of.rule.value,
            of.remedy,
            of.parts,
            of.source,
        )
        assert bool(each.at) is (of.place is not None)


def _records(content: bytes) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(content.decode("utf-8-sig"))))


def _cells(table: page.Table, heading: str) -> list[str]:
    at = table.columns.index(heading)
    return [row[at] for row in table.rows]


@pytest.mark.parametrize("name", ["reading-alcove", "hallway-bookcase", "archive-wall"])
def test_lists_have_the_rows_of_the_files(name: str) -> None:
    unit = ready_unit(name)
    lists = checked_sections(unit, ()).lists
    assert lists is not None
    tables = {each.title: each for each in lists.tables}
    parts = _records(parts_csv(unit))
    assert _cells(tables["Parts"], "part") == [each["refs"] for each in parts]
    assert _cells(tables["Parts"], "no.") == [each["quantity"] for each in parts]
    hardware = _records(hardware_csv(unit))
    assert _cells(tables["Hardware"], "hardware") == [each["hardware"] for each in hardware]
    assert _cells(tables["Hardware"], "no.") == [each["quantity"] for each in hardware]
    edges = _records(edges_csv(unit))
    if edges:
        assert _cells(tables["Edges"], "strips") == [each["strips"] for each in edges]
    else:
        assert "Edges" not in tables
    for table in lists.tables:
        assert len(table.columns) == len(table.figures)
        assert len(table.rows) == len(table.refs)
        assert {ref for refs in table.refs for ref in refs} <= {part.ref for part in unit.parts}
        assert {len(row) for row in table.rows} == {len(table.columns)}


@pytest.mark.parametrize("name", ["reading-alcove", "hallway-bookcase"])
def test_strength_has_every_figure_that_is_worked_out(name: str) -> None:
    unit = ready_unit(name)
    strength = checked_sections(unit, ()).strength
    assert strength is not None
    rows = [row for table in strength.tables for row in table.rows]
    told = {row[1].split("\n")[0].rstrip("\u00a0\u2060?~") for row in rows}
    results = strength_of(unit)
    assert told == {each.what for each in results}
    figures = {row[2].split("\n")[0].replace("\u00a0", " ") for row in rows}
    assert figures == {told_figure(each, unit.display_unit) for each in results}
    failing = {each.subject for each in results if not each.holds}
    assert bool(failing) is any("heavy" in row[-1] or "fails" in row[-1] for row in rows)
    refs = {ref for table in strength.tables for each in table.refs for ref in each}
    assert refs == {ref for each in results for ref in each.parts}
    assert "structural engineer" in strength.words[-1]
    (drawing,) = strength.drawings
    assert drawing.svg.startswith("<?xml") and unit.title in drawing.caption


def test_the_opening_is_told_as_the_survey_tells_it() -> None:
    spec = rodwright.read_spec(model_path("reading-alcove"))
    sheet = survey(spec)
    opening = checked_sections(rodwright.set_out(spec), (), sheet).opening
    assert opening is not None and sheet.fit is not None
    gaps = next(each for each in opening.tables if each.title == "gaps and packers")
    assert len(gaps.rows) >= len(sheet.fit.packing)
    assert gaps.rows[0][3] == format_length(sheet.fit.packing[0].gap.gap, "mm")
    assert len(opening.drawings) == len(sheet.planes)
    assert any("structural engineer" in each for each in opening.words)
    assert checked_sections(ready_unit("hallway-bookcase"), ()).opening is None


def test_everything_told_is_plain_data() -> None:
    unit = ready_unit("niche-shelf")
    told = asdict(quick_sections(unit, {})) | asdict(checked_sections(unit, ()))
    known = (str, int, float, bool, type(None))

    def plain(value: object) -> bool:
        if isinstance(value, dict):
            return all(isinstance(key, str) and plain(each) for key, each in value.items())
        if isinstance(value, list | tuple):
            return all(map(plain, value))
        return type(value) in known

    assert plain(told)
