"""Levels that sag too far, break, tear their pins out, or of which nothing is known."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import replace

import pytest

from kit.carcasses import BOARD, STIFF, between_sides, books, carcass, level, stress, upright
from kit.specs import unit_from
from rodwright.checks import check_parts
from rodwright.checks.breaking import breaking
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.checks.sagging import sagging
from rodwright.checks.unknown_stiffness import unknown_stiffness
from rodwright.unit import Hole, JointKind, Part, Role, Surface, Unit

SPEC = """
size: {{width: {width}, height: 900, depth: 300}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220], price: 74}}
  thick: {{kind: sheet, material: birch plywood, thickness: {thick}, size: [2440, 1220], price: 96}}
interior: {{shelves: {{count: 1, fixed: false, stock: {stock}}}}}
loads: 30 kg/m
{more}
"""


def _bookcase(width: int, stock: str = "ply", thick: float = 24.0, more: str = "") -> Unit:
    """A bookcase with one adjustable shelf; a divider of the thicker stock makes that known."""
    return unit_from(SPEC.format(width=width, stock=stock, thick=thick, more=more))


def _shelf(unit: Unit, check: Callable[[Unit], Iterable[Finding]]) -> Finding | None:
    return next((each for each in check(unit) if "SH1" in each.parts), None)


def test_a_shelf_that_sags_too_far_is_told_with_what_would_do() -> None:
    found = _shelf(_bookcase(1236), sagging)
    assert found is not None
    assert found.severity is Severity.WARNING
    assert found.rule is Rule.SAGS_TOO_FAR
    assert re.fullmatch(
        r"Shelf \(SH1\) sags \d+(\.\d)? mm after 10 years under 30 kg/m; 6 mm \(span/200\) is the "
        r"limit",
        found.message,
    )
    assert re.fullmatch(
        r"Would do: two layers of birch plywood, glued: [\d.]+ mm, [\d.]+ dearer each, net; "
        r"24 mm thick: [\d.]+ mm; 27 mm thick: [\d.]+ mm; a lipping 40 mm high of birch "
        r"plywood, glued along its front: [\d.]+ mm\.",
        found.remedy,
    )
    assert found.figure is not None
    assert found.limit == pytest.approx(1198 / 200)


def test_a_short_shelf_is_not_told() -> None:
    assert _shelf(_bookcase(636), sagging) is None


def test_what_is_assumed_is_said_to_be() -> None:
    unit = unit_from(
        SPEC.replace("loads: 30 kg/m\n", "").format(width=1436, stock="ply", thick=24, more="")
    )
    found = _shelf(unit, sagging)
    assert found is not None
    assert "under books (37 kg/m, assumed)" in found.message


def test_in_inches_all_is_told_in_inches() -> None:
    unit = unit_from(
        "unit: in\n"
        "size: {width: 49 1/2, height: 36, depth: 12}\n"
        "stock:\n"
        "  ply: {kind: sheet, material: birch plywood, thickness: 3/4, size: [96, 48]}\n"
        "interior: {shelves: {count: 1, fixed: false}}\n"
        "loads: 40 lb/ft\n"
    )
    found = _shelf(unit, sagging)
    assert found is not None
    assert re.search(
        r"sags \S+ in after 10 years under 40 lb/ft; \S+ in \(span/200\)", found.message
    )
    assert "mm" not in found.message + found.remedy


def test_a_shelf_that_sags_a_hair_too_far_is_told_in_decimals() -> None:
    """Both its sag and its limit are 43/64 in to the nearest 1/64."""
    unit = unit_from(
        "unit: in\n"
        "size: {width: 49 1/2, height: 36, depth: 12}\n"
        "stock:\n"
        "  ply: {kind: sheet, material: birch plywood, thickness: 3/4, size: [96, 48]}\n"
        "interior: {shelves: {count: 1, fixed: false}}\n"
        "loads: 40 lb/ft\n"
    )
    found = _shelf(unit, sagging)
    assert found is not None and found.figure is not None and found.limit is not None

    def told(share: float) -> str:
        span_over = share * 200 * (found.limit or 0.0) / (found.figure or 1.0)
        one = _shelf(replace(unit, loading=replace(unit.loading, limit=span_over)), sagging)
        assert one is not None
        return one.message.replace(" in after 10 years under 40 lb/ft", "")

    inches = found.figure / 25.4
    over = rf"{inches:.3f}; {inches / 1.005:.3f} in \(span"
    assert re.search(rf"sags {over}", told(1.005))
    assert re.search(rf"sags just over {inches:.3f}; {inches:.3f} in \(span", told(1.00001))


def test_shelves_alike_are_told_once() -> None:
    text = SPEC.format(width=1236, stock="ply", thick=24, more="").replace("count: 1", "count: 3")
    told = [each for each in check_parts(unit_from(text)) if each.rule is Rule.SAGS_TOO_FAR]
    found = [each for each in told if "SH1" in each.parts]
    assert len(found) == 1
    assert found[0].parts == ("SH1", "SH2", "SH3")


def test_remedies_are_told_cheapest_first_where_prices_are_known() -> None:
    """A stock of the spec that is 24 thick costs 22 more for a sheet, and so does its share."""
    found = _shelf(_bookcase(1236, more="back: {stock: thick, fixing: applied}"), sagging)
    assert found is not None
    assert re.match(
        r"Would do: 24 mm thick: \d(\.\d)? mm, 2\.\d\d dearer each, net; two layers ", found.remedy
    )


def _weak(strength: float) -> Unit:
    stock = replace(BOARD, mechanics=replace(STIFF, bending=stress(strength)))
    parts, joints = between_sides(800, level("SH1", (20, 820), 500, stock=stock))
    return carcass(parts, joints, books("SH1", (20, 820), 30))


def test_a_shelf_that_may_break_is_an_error_just_past_its_strength() -> None:
    """0.75 w L^2/(b t^2) times 1.5 against 0.7/1.2 of its strength."""
    figure = 1.5 * 0.75 * 30 * 9.80665e-3 * 800**2 / (300 * 400)
    just = figure / (0.7 / 1.2)
    assert _shelf(_weak(just * 1.001), breaking) is None
    found = _shelf(_weak(just * 0.999), breaking)
    assert found is not None
    assert (found.severity, found.rule) == (Severity.ERROR, Rule.BREAKS)
    assert found.message == (
        f"Shelf (SH1) may break: it is stressed in bending by just over {figure:.1f} N/mm2 under "
        f"books; {figure * 0.999:.1f} N/mm2 is what it may be"
    )
    assert found.remedy.startswith("Would do: ")


def test_pins_in_soft_wood_under_a_great_load_are_an_error() -> None:
    soft = replace(BOARD, mechanics=replace(STIFF, gravity=replace(stress(0.2), measure="")))

    def bored(part: Part) -> Part:
        inner = Surface.REVERSE if part.ref == "SD1" else Surface.FACE
        holes = tuple(
            Hole(inner, (497.5, y), 5.0, 6.0, "adjustable shelves") for y in (40.0, 260.0)
        )
        return replace(part, blank=replace(part.blank, stock=soft), workings=holes)

    parts, joints = between_sides(400, level("SH1", (20, 420), 500))
    parts = [bored(part) if part.role is Role.SIDE else part for part in parts]
    few, many = (
        carcass(parts, joints, books("SH1", (20, 420), per_metre)) for per_metre in (2, 200)
    )
    assert _shelf(few, breaking) is None
    found = _shelf(many, breaking)
    assert found is not None
    assert (found.severity, found.rule) == (Severity.ERROR, Rule.PINS_TEAR_OUT)
    assert "5 mm" in found.message


def test_an_unknown_material_is_a_note_that_says_what_to_give() -> None:
    unknown = replace(BOARD, mechanics=None, material="moon wood")
    parts, joints = between_sides(800, level("SH1", (20, 820), 500, stock=unknown))
    found = _shelf(carcass(parts, joints), unknown_stiffness)
    assert found is not None
    assert (found.severity, found.rule) == (Severity.NOTE, Rule.STIFFNESS_UNKNOWN)
    assert "moon wood" in found.message


def test_a_shelf_with_an_end_in_the_air_is_told() -> None:
    parts, joints = between_sides(800, level("SH1", (20, 820), 500))
    found = _shelf(carcass(parts, joints[:1]), unknown_stiffness)
    assert found is not None
    assert (found.severity, found.rule) == (Severity.WARNING, Rule.NOTHING_UNDER_ITS_END)


@pytest.mark.parametrize(
    ("limit", "told"),
    [
        (6000, " after 10 years under books; "),
        (4000, " after 10 years, every other span empty under books; "),
        (2000, ""),
    ],
)
def test_a_shelf_over_two_spans_is_told_once(limit: float, told: str) -> None:
    """0.098 mm loaded all over and 0.166 mm by turns, of spans of 500."""
    parts, joints = between_sides(1000, level("SH1", (20, 1020), 520))
    parts.append(upright("DV1", 510, (0, 520)))
    joints.append(("SH1", "DV1", JointKind.HOUSING))
    unit = carcass(parts, joints, books("SH1", (20, 1020), 36), limit=limit)
    found = [each.message for each in sagging(unit)]
    assert len(found) == bool(told)
    assert all(told in message for message in found)
