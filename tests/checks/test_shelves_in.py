"""Adjustable shelves that have to go in past a face frame, against shapely."""

from __future__ import annotations

from math import degrees
from typing import Any

import pytest
import shapely
from shapely import affinity

from kit.specs import unit_from
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.checks.shelves_in import Room, goes_one_end_first, least_slant, shelves_in


def found(size: str, frame: float | None, **shelves: Any) -> list[Finding]:
    more: dict[str, Any] = {"back": {"stock": "thin", "fixing": "rebated"}}
    if frame is not None:
        more["face_frame"] = {"stock": "ash", "width": frame, "corners": "butted"}
    wish = {"count": 1, "fixed": False} | shelves
    return list(shelves_in(unit_from(f"size: {{{size}}}\n", interior={"shelves": wish}, **more)))


def test_a_wide_shelf_goes_in_with_one_end_raised() -> None:
    """Frame of 45 on a unit 1187 wide: 1097 clear, the shelf 1187 - 36 - 2 = 1149 long and 18
    thick.  By trigonometry the slant a with 1149 cos a + 18 sin a = 1097 is 18.22 degrees, and
    1149 sin a + 18 cos a = 376.4."""
    (note,) = found("width: 1187, height: 1000, depth: 330", 45)
    assert (note.severity, note.rule) == (Severity.NOTE, Rule.SHELF_AT_SLANT)
    assert (note.figure, note.limit) == (1149.0, 1097.0)
    assert "with one end raised, 376.4 mm high" in note.message


def test_nothing_is_said_where_it_goes_straight_in() -> None:
    assert found("width: 1187, height: 1000, depth: 330", None) == []
    assert found("width: 1187, height: 1000, depth: 330", 18) == []


def test_a_low_opening_lets_it_in_on_edge_or_not_at_all() -> None:
    """An opening 340 high is too low for the 376.4 of a slant, and high enough for a shelf 300
    wide on edge.  With one end behind a stile that hides 27, 1149 cos a + 18 sin a = 1124 at 12.90
    degrees, which takes 274.1 of the depth."""
    (way,) = found("width: 1187, height: 430, depth: 330", 45)
    assert way.severity is Severity.NOTE
    assert "on edge, one end first behind a stile" in way.message
    (none,) = found("width: 800, height: 180, depth: 330", 60)
    assert (none.severity, none.rule) == (Severity.WARNING, Rule.SHELF_CANNOT_GO_IN)
    assert "`clearance`" in none.remedy and "`fixed: true`" in none.remedy


def test_a_short_thick_shelf_binds_as_it_is_turned() -> None:
    """Three layers, 54 thick and 200 long: the diagonal is 207.2, and 202 is free."""
    (none,) = found("width: 238, height: 1000, depth: 330", 40, layers=3)
    assert (none.severity, none.rule) == (Severity.WARNING, Rule.SHELF_CANNOT_GO_IN)
    (note,) = found("width: 238, height: 1000, depth: 330", 40, layers=3, clearance=4)
    assert note.severity is Severity.NOTE


@pytest.mark.parametrize("clear", [300.0, 700.0, 1000.0, 1097.0])
def test_the_least_slant_against_shapely(clear: float) -> None:
    slant = least_slant(1149.0, 18.0, clear)
    assert slant is not None

    def wide(angle: float) -> float:
        low, _, high, _ = affinity.rotate(shapely.box(0, 0, 1149, 18), angle).bounds
        return float(high - low)

    assert wide(degrees(slant)) == pytest.approx(clear)
    assert wide(degrees(slant) - 0.1) > clear


@pytest.mark.parametrize("depth", [150.0, 200.0, 260.0, 400.0])
def test_one_end_first_against_shapely(depth: float) -> None:
    """Against every slant in steps of a hundredth of a degree, with stiles of 27 by 22."""
    room = Room(1151.0, 300.0, depth, 1097.0, 280.0, 22.0, 27.0)
    walls = shapely.box(-500, -22, 27, 0) | shapely.box(1124, -22, 2000, 0)
    goes = False
    for number in range(1, 9000):
        stick = affinity.rotate(shapely.box(0, 0, 1149, 18), -number / 100)
        low, front, high, rear = stick.bounds
        if high - low > 1124 or rear - front > depth:
            continue
        # Its tail has just passed the right stile; slid out along itself it clears both.
        inside = affinity.translate(stick, 0.0 - low, 0.0 - front)
        across = affinity.rotate(shapely.box(-3000, 0, 3000, 18), -number / 100)
        free = any(
            not affinity.translate(
                across, x - across.centroid.x, -11 - across.centroid.y
            ).intersects(walls.buffer(-1e-6))
            for x in range(28, 1124, 4)
        )
        goes = goes or (free and not inside.intersects(walls.buffer(-1e-6)))
        if goes:
            break
    assert goes_one_end_first(1149.0, 18.0, room) is goes
