"""Whether what a unit stands on follows its floor."""

from __future__ import annotations

from typing import Any

import pytest

from rodwright.checks import Finding, Severity, check_parts
from rodwright.parts import Unit
from specs import unit_from

SIZE = "size: {width: 1000, height: 900, depth: 400}\n"
SLOPING = """
opening:
  width: 1008
  height: 2100
  depth: 420
  level: {floor: {out: 8, over: 1000, rises: right}}
size: {height: 900}
"""


def _found(unit: Unit, severity: Severity) -> list[Finding]:
    return [
        each for each in check_parts(unit) if each.rule == "levelling" and each.severity is severity
    ]


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
    assert bool(warned) is not enough
    if warned:
        assert warned[0].figure == pytest.approx(8.0, abs=0.1)


def test_nothing_is_said_where_the_floor_was_not_read_or_nothing_is_levelled() -> None:
    assert not _found(unit_from(SIZE, base={"kind": "plinth", "height": 100}), Severity.WARNING)
    assert not _found(unit_from(SLOPING), Severity.WARNING)
    board = {"kind": "toe_board", "height": 100}
    assert not _found(unit_from(SLOPING, base=board), Severity.WARNING)


def test_a_plinth_made_lower_is_to_be_packed() -> None:
    unit = unit_from(SIZE, base={"kind": "plinth", "height": 100, "levelling": 6})
    (note,) = _found(unit, Severity.NOTE)
    assert note.figure == 6.0
    assert unit.part(note.parts[0]).blank.width == 94.0
    assert not _found(unit_from(SIZE, base={"kind": "plinth", "height": 100}), Severity.NOTE)
