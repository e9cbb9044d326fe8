"""The lines that levels are drawn by are those of their results."""

from __future__ import annotations

from dataclasses import replace

import pytest

import rodwright
from kit.specs import unit_from
from rodwright.jobs.new import model_path
from rodwright.strength.levels import levels
from rodwright.strength.sag_lines import sag_lines

SHELVES = """
size: {width: 900, height: 900, depth: 300}
carcass: {stock: ply, corners: housed}
loads: books
interior: {shelves: {count: 2, fixed: true}}
"""


@pytest.mark.parametrize("name", ["hallway-bookcase", "record-cabinet", "pottery-dresser"])
def test_sag_and_limit_are_those_of_the_results(name: str) -> None:
    unit = rodwright.set_out(rodwright.read_spec(model_path(name)))
    years = f"sag after {unit.loading.years:g} years"
    results = {each.parts: each for each in levels(unit) if each.what == years}
    lines = {line.refs: line for line in sag_lines(unit)}
    assert lines.keys() == results.keys()
    for refs, line in lines.items():
        assert line.sag == pytest.approx(results[refs].figure)
        assert line.limit == pytest.approx(results[refs].limit)
        assert line.holds is results[refs].holds


def test_a_line_goes_down_by_its_sag() -> None:
    """A shelf of one span: as deep as its sag at the middle, at rest at both ends."""
    unit = unit_from(SHELVES)
    line = next(line for line in sag_lines(unit) if line.ref == "SH1")
    downs = [down for _, down in line.line]
    assert line.sag is not None
    assert max(downs) == pytest.approx(line.sag, rel=1e-3)
    assert abs(downs[0]) < 0.05 * line.sag
    assert abs(downs[-1]) < 0.05 * line.sag
    assert [x for x, _ in line.line] == sorted(x for x, _ in line.line)
    assert line.line[0][0] == pytest.approx(line.box.low[0])
    assert line.line[-1][0] == pytest.approx(line.box.high[0])


def test_what_lies_on_it_is_what_was_said() -> None:
    unit = unit_from(SHELVES)
    line = next(line for line in sag_lines(unit) if line.ref == "SH1")
    assert line.mass == pytest.approx(sum(load.mass for load in unit.loading.on("SH1")), rel=0.02)
    assert line.loads == unit.loading.on("SH1")


def test_at_once_it_sags_less() -> None:
    unit = unit_from(SHELVES)
    at_once = replace(unit, loading=replace(unit.loading, years=0.0))
    for now, later in zip(sag_lines(at_once), sag_lines(unit), strict=True):
        assert now.sag is not None and later.sag is not None
        assert now.sag < later.sag


def test_what_isnt_known_is_drawn_straight() -> None:
    unit = unit_from(SHELVES)
    unknown = replace(
        unit,
        parts=tuple(
            replace(
                part,
                blank=replace(part.blank, stock=replace(part.blank.stock, mechanics=None)),
            )
            if part.ref == "SH1"
            else part
            for part in unit.parts
        ),
    )
    line = next(line for line in sag_lines(unknown) if line.ref == "SH1")
    assert line.sag is None and line.limit is None and line.holds
    assert {down for _, down in line.line} == {0.0}
