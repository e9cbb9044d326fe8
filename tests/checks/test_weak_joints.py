"""Doubtful joints, just inside and just outside each limit (common practice, no source)."""

from __future__ import annotations

import pytest

from kit.specs import STOCK, unit_from
from rodwright.checks import check_parts
from rodwright.checks.rules import Rule

UNIT = """
size: {width: 600, height: 900, depth: 300}
carcass: {stock: %s, corners: %s}
interior: {shelves: {count: 1}}
"""
RULES = (Rule.DEEP_HOUSING, Rule.THIN_DOWELS, Rule.SCREWS_IN_END_GRAIN)


def rules_of(corners: str, stock: str = "ply", thickness: float = 18.0) -> list[str]:
    text = UNIT % (stock, corners) + STOCK.replace("thickness: 18", f"thickness: {thickness:g}")
    return [each.rule for each in check_parts(unit_from(text)) if each.rule in RULES]


@pytest.mark.parametrize(("depth", "told"), [(6, []), (7, []), (7.1, RULES[:1]), (9, RULES[:1])])
def test_housings_from_a_third_on(depth: float, told: tuple[str, ...]) -> None:
    assert rules_of(f"{{joint: housed, depth: {depth}}}") == list(told)


@pytest.mark.parametrize("thickness", [12, 15, 16, 18, 19, 20, 22, 25, 27, 30])
def test_our_own_housings_are_never_too_deep(thickness: float) -> None:
    """Rounded to whole millimetres they may pass a third by half a millimetre."""
    assert rules_of("housed", thickness=thickness) == []


@pytest.mark.parametrize(("diameter", "told"), [(6, []), (5.9, RULES[1:2])])
def test_dowels_thinner_than_a_third(diameter: float, told: tuple[str, ...]) -> None:
    said = rules_of(f"{{joint: dowelled, diameter: {diameter}}}")
    assert sorted(set(said)) == list(told)


def test_screws_in_end_grain_are_told_of_solid_wood_only() -> None:
    assert set(rules_of("screwed", stock="ash")) == {Rule.SCREWS_IN_END_GRAIN}
    (told, *_) = (
        each
        for each in check_parts(unit_from(UNIT % ("ash", "screwed") + STOCK))
        if each.rule is Rule.SCREWS_IN_END_GRAIN
    )
    assert (told.figure, told.limit) == (0.75, 1.0)
    assert rules_of("screwed", stock="ply") == []
    assert rules_of("dowelled", stock="ash") == []
