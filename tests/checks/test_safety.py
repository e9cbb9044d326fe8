"""Cautions, just inside and just outside what brings them."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.panels import panel
from rodwright.checks import check_parts
from rodwright.geometry import Box
from rodwright.unit import Unit


def test_cautions() -> None:
    heavy = panel(length=2400.0, width=1000.0)
    wide = Unit("Test", Box((0, 0, 0), (1000, 300, 601)), (heavy,))
    rules = [(finding.rule, finding.severity.value) for finding in check_parts(wide)]
    assert rules == [("tipping", "warning"), ("lifting", "caution"), ("lifting", "caution"),
                     ("dust", "caution")]  # fmt: skip
    low = Unit("Test", Box((0, 0, 0), (1000, 300, 600)), (panel(),))
    assert [finding.rule for finding in check_parts(low)] == ["dust"]


def test_heavy_parts_are_one_caution() -> None:
    heavy = [panel(length=2400.0, width=1000.0), panel(length=2400.0, width=900.0)]
    heavy[1] = replace(heavy[1], ref="P2")
    unit = Unit("Test", Box((0, 0, 0), (1000, 300, 500)), tuple(heavy))
    first, whole = (each for each in check_parts(unit) if each.rule == "lifting")
    assert first.parts == ("P1", "P2")
    assert first.figure == pytest.approx(2.4 * 1.0 * 0.018 * 680.0)
    assert "P1" in first.brief and "1 more" in first.brief
    assert whole.figure == pytest.approx(2.4 * 1.9 * 0.018 * 680.0)
