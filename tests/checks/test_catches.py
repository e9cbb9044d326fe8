"""Doors on butts have nothing to hold them shut."""

from __future__ import annotations

import pytest

from kit.specs import unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Severity
from rodwright.checks.rules import Rule


@pytest.mark.parametrize(("kind", "told"), [("butt", True), ("cup", False)])
def test_a_door_on_butts_wants_a_catch(kind: str, told: bool) -> None:
    unit = unit_from(
        "size: {width: 800, height: 900, depth: 400}\n",
        interior={"doors": {"count": 2, "hung": "inset", "hinge": {"kind": kind}}},
    )
    found = [each for each in check_parts(unit) if each.rule is Rule.NO_CATCH]
    assert len(found) == told
    for each in found:
        assert each.severity is Severity.NOTE
        assert each.parts == ("DO1", "DO2")
        assert "nothing holds door 1 (DO1) shut" in each.message
        assert "catch" in each.remedy
