"""Cautions of what is heavy, just inside and just outside what one person lifts."""

from __future__ import annotations

import pytest

from kit.blocks import block, unit_of_blocks
from rodwright.checks.findings import Severity
from rodwright.checks.lifting import lifting
from rodwright.checks.rules import Rule

BENCH = 23 * 1.0 * 0.85 * 0.89 * 0.9
"""From the floor to the bench, close, a poor grip, by the NIOSH equation."""


@pytest.mark.parametrize(("more", "told"), [(-0.01, False), (0.01, True)])
def test_a_part(more: float, told: bool) -> None:
    """A panel 20 thick, as heavy as one person lifts from the floor to the bench."""
    length = (BENCH + more) / (0.5 * 0.02 * 1000) * 1000
    unit = unit_of_blocks(block("SD1", (0, 0, 0), (length, 500, 20)))
    found = [each for each in lifting(unit) if each.rule is Rule.HEAVY_PART]
    assert [each.severity for each in found] == [Severity.CAUTION] * told
    for each in found:
        assert each.limit == pytest.approx(BENCH)
        assert each.brief == "Lifting: SD1 weighs 16 kg: 2 people."


def test_equal_parts_are_told_with_it() -> None:
    unit = unit_of_blocks(
        block("SD1", (0, 0, 0), (1000, 500, 40)), block("SD2", (0, 0, 100), (1000, 500, 40))
    )
    found = {each.rule: each for each in lifting(unit)}
    part, whole = found[Rule.HEAVY_PART], found[Rule.HEAVY_UNIT]
    assert part.parts == ("SD1", "SD2")
    assert part.figure == pytest.approx(20.0)
    assert "and 1 more part that one person doesn't lift" in part.message
    assert part.brief == "Lifting: SD1 weighs 20 kg: 2 people; 1 more part."
    assert whole.figure == pytest.approx(40.0)
    assert "assemble it where it will stand" in whole.brief
