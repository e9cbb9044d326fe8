"""Cautions, just inside and just outside what brings them."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.panels import panel, unit_of
from rodwright.checks import check_parts
from rodwright.checks.findings import Severity
from rodwright.checks.rules import Rule
from rodwright.checks.safety import safety
from rodwright.geometry import Box
from rodwright.unit import Opening, Unit


def test_cautions() -> None:
    heavy = panel(length=2400.0, width=1000.0)
    wide = Unit("Test", Box((0, 0, 0), (1000, 300, 601)), (heavy,))
    rules = [(finding.rule, finding.severity.value) for finding in check_parts(wide)]
    assert rules == [
        (Rule.TALL_AND_FREESTANDING, "note"),
        (Rule.HEAVY_SHEET, "caution"),
        (Rule.HEAVY_PART, "caution"),
        (Rule.HEAVY_UNIT, "caution"),
        (Rule.DUST, "caution"),
    ]
    low = Unit("Test", Box((0, 0, 0), (1000, 300, 600)), (panel(),))
    assert [finding.rule for finding in check_parts(low)] == [Rule.HEAVY_SHEET, Rule.DUST]


def test_heavy_parts_are_one_caution() -> None:
    heavy = [panel(length=2400.0, width=1000.0), panel(length=2400.0, width=900.0)]
    heavy[1] = replace(heavy[1], ref="P2")
    unit = Unit("Test", Box((0, 0, 0), (1000, 300, 500)), tuple(heavy))
    rules = (Rule.HEAVY_PART, Rule.HEAVY_UNIT)
    first, whole = (each for each in check_parts(unit) if each.rule in rules)
    assert first.parts == ("P1", "P2")
    assert first.figure == pytest.approx(2.4 * 1.0 * 0.018 * 680.0)
    assert "P1" in first.brief and "1 more" in first.brief
    assert whole.figure == pytest.approx(2.4 * 1.9 * 0.018 * 680.0)


def test_walls_hold_cables_and_pipes_wherever_there_is_an_opening() -> None:
    unit = unit_of(panel(), opening=Opening(1000, 2000, 300))
    (caution,) = (each for each in safety(unit) if each.rule is Rule.CABLES_AND_PIPES)
    assert caution.severity is Severity.CAUTION
    assert "licensed" in caution.remedy and "local codes" in caution.remedy
    assert Rule.CABLES_AND_PIPES not in {each.rule for each in safety(unit_of(panel()))}
