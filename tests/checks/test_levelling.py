"""Whether what a unit stands on follows its floor."""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import of_role, spec_from, unit_from
from rodwright.checks import Finding, Severity, check_parts
from rodwright.checks.rules import Rule
from rodwright.jobs.survey import survey
from rodwright.opening.gaps import edge_at
from rodwright.pictures.ink import Lettering
from rodwright.pictures.opening import draw_opening
from rodwright.setout import set_out_unit
from rodwright.unit import Role, Unit

SIZE = "size: {width: 1000, height: 900, depth: 400}\n"
SLOPING = """
opening:
  width: 1008
  height: 2100
  depth: 420
  level: {floor: {out: 8, over: 1000, rises: right}}
size: {height: 900}
"""


RULES = (Rule.BASE_CANNOT_LEVEL, Rule.PLINTH_PACKED_UP)


def _found(unit: Unit, severity: Severity) -> list[Finding]:
    return [each for each in check_parts(unit) if each.rule in RULES and each.severity is severity]


@pytest.mark.parametrize(
    ("base", "enough"),
    [
        ({"kind": "plinth", "height": 100}, False),
        ({"kind": "plinth", "height": 100, "levelling": 7}, False),
        ({"kind": "plinth", "height": 100, "levelling": 8}, True),
        ({"kind": "levellers", "height": 100, "range": {"least": 95, "most": 107}}, False),
        ({"kind": "levellers", "height": 100, "range": {"least": 60, "most": 108}}, True),
        ({"kind": "levellers", "height": 100}, True),  # 15 either way
    ],
)
def test_a_floor_that_falls_by_eight(base: dict[str, Any], enough: bool) -> None:
    """8 over 1000 is 8.0 under a unit 1001 wide."""
    warned = _found(unit_from(SLOPING, base=base), Severity.WARNING)
    assert [each.figure for each in warned] == ([] if enough else [pytest.approx(8.0, abs=0.1)])


def test_nothing_is_said_where_the_floor_was_not_read_or_nothing_is_levelled() -> None:
    assert not _found(unit_from(SIZE, base={"kind": "plinth", "height": 100}), Severity.WARNING)
    assert not _found(unit_from(SLOPING), Severity.WARNING)
    board = {"kind": "toe_board", "height": 100}
    assert not _found(unit_from(SLOPING, base=board), Severity.WARNING)


def test_a_plinth_stands_on_the_high_spot() -> None:
    unit = unit_from(SIZE, base={"kind": "plinth", "height": 100, "levelling": 6})
    (note,) = _found(unit, Severity.NOTE)
    assert note.figure == 6.0
    boards = of_role(unit, Role.PLINTH)
    assert {part.blank.width for part in boards} == {100.0}
    assert {part.bounds().low[2] for part in boards} == {0.0}
    assert not _found(unit_from(SIZE, base={"kind": "plinth", "height": 100}), Severity.NOTE)


TWENTY = """
opening:
  width: {bottom: 1000, middle: 1000, top: 1000}
  height: 2300
  depth: 420
  level: {floor: {out: 20, over: 1000, rises: right}}
"""


@pytest.mark.parametrize(
    ("levelling", "severity", "by"),
    [
        (0, Severity.WARNING, "nothing"),
        (20, Severity.NOTE, "packers"),
        (30, Severity.NOTE, "packers"),
    ],
)
def test_a_floor_twenty_out(levelling: float, severity: Severity, by: str) -> None:
    """Set-out, finding, survey and drawing have one meaning: the plinth's right end touches the
    floor, and under its left end there are 20 x 992.5 / 1000, packed where that is allowed."""
    spec = spec_from(TWENTY, base={"kind": "plinth", "height": 100, "levelling": levelling})
    unit = set_out_unit(spec)
    plinth = of_role(unit, Role.PLINTH)
    assert {part.bounds().low[2] for part in plinth} == {0.0}
    assert {part.bounds().high[2] for part in plinth} == {100.0}
    assert unit.opening is not None and unit.opening.shape is not None
    floor = unit.opening.shape.front.bottom
    assert edge_at(floor, unit.size[0]) == pytest.approx(0.0, abs=1e-3)
    assert edge_at(floor, 0.0) == pytest.approx(-20 * unit.size[0] / 1000, abs=0.01)
    (found,) = [each for each in check_parts(unit) if each.rule in RULES]
    assert (found.severity, found.figure, found.limit) == (severity, 19.8, levelling)
    sheet = survey(spec)
    assert sheet.fit is not None
    left, middle, right = [each for each in sheet.fit.packing if each.gap.side == "bottom"]
    assert left.by == middle.by == right.by == by
    assert left.gap.gap == pytest.approx(20 * (sheet.fit.size[0] - 100) / 1000, abs=0.01)
    assert sum(left.packers) == (18 if levelling else 0)
    assert sum(middle.packers) == (10 if levelling else 0)
    assert sum(right.packers) == (2 if levelling else 0)
    drawing = draw_opening(sheet, sheet.planes[0])
    said = " ".join(mark.text for mark in drawing.marks if isinstance(mark, Lettering))
    assert "falls by 19.8 (up to 20.8)" in said
    assert f"may be packed up {levelling}" in said
    assert ("10 + 8" in said) is bool(levelling)


def test_a_plinth_set_in_stands_on_what_is_under_it() -> None:
    base = {"kind": "plinth", "height": 100, "levelling": 30, "sides": 50}
    unit = unit_from(TWENTY, base=base)
    assert unit.opening is not None and unit.opening.shape is not None
    floor = unit.opening.shape.front.bottom
    assert edge_at(floor, unit.size[0] - 50.0) == pytest.approx(0.0, abs=1e-3)
    (found,) = _found(unit, Severity.NOTE)
    assert found.figure == pytest.approx(20 * 893 / 1000, abs=0.06)


def test_legs_and_feet_stand_on_the_high_spot() -> None:
    """Where they are is where the survey packs them, or turns them out."""
    for base, by, first in (
        ({"kind": "legs", "height": 100, "stock": "oak", "inset": 30}, "packers", 46.0),
        ({"kind": "levellers", "height": 100, "range": {"least": 90, "most": 125}}, "foot", 60.0),
    ):
        sheet = survey(spec_from(TWENTY, base=base))
        assert sheet.fit is not None
        under = [each for each in sheet.fit.packing if each.gap.side == "bottom"]
        assert under[0].gap.at == pytest.approx(first)
        assert under[-1].gap.at == pytest.approx(sheet.fit.size[0] - first)
        assert under[0].by == by
        assert under[0].gap.gap - under[-1].gap.gap == pytest.approx(
            20 * (sheet.fit.size[0] - 2 * first) / 1000, abs=0.01
        )


def test_a_hump_in_the_floor_is_stood_on() -> None:
    """Heights of 2300, 2290 and 2300: floor and top share what is lacking in the middle."""
    heights = "height: {left: 2300, middle: 2290, right: 2300}"
    unit = unit_from(
        TWENTY.replace("height: 2300", heights).replace("out: 20", "out: 0"),
        base={"kind": "plinth", "height": 100, "levelling": 3},
    )
    (found,) = _found(unit, Severity.WARNING)
    assert found.figure == pytest.approx(5.0, abs=0.1)
