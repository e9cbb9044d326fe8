"""What doors and drawers sweep, on units put together by hand."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.specs import unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.motions import motions
from rodwright.checks.rules import Rule
from rodwright.geometry import Box
from rodwright.unit import (
    Blank,
    Grain,
    Motion,
    Opening,
    OpeningPlane,
    OpeningShape,
    Part,
    Placement,
    Role,
    Slide,
    Stock,
    Swing,
    Unit,
)

STOCK = Stock("ply", "sheet", "birch plywood", 18, Grain.LENGTHWISE, 680, "test", "#dcc59b")
Corner = tuple[float, float, float]


def _box(ref: str, low: Corner, high: Corner) -> Part:
    """A part that fills a box: its length along x, its width along y."""
    size = [b - a for a, b in zip(low, high, strict=True)]
    blank = Blank(size[0], size[1], size[2], STOCK, Grain.LENGTHWISE)
    return Part(ref, "Piece", Role.SIDE, "Test", blank, Placement(low, (1, 0, 0), (0, 1, 0)))


def _found(
    *parts: Part, moving: tuple[Motion, ...], opening: Opening | None = None
) -> list[Finding]:
    envelope = Box((0, 0, 0), (1000, 400, 1000))
    return list(motions(Unit("Test", envelope, parts, opening=opening, motions=moving)))


DOOR = _box("DO1", (0, 0, 100), (400, 18, 700))
LEFT = Swing(("DO1",), (0.0, 0.0), -110.0)


def test_free_swing() -> None:
    side = _box("SD1", (-20, 18, 0), (0, 400, 800))
    assert _found(DOOR, side, moving=(LEFT,)) == []


def test_post_beside() -> None:
    """The face meets the post's near corner at a quarter turn and atan(10 / 100), both taken in
    by the 0.05 mm that are only touching."""
    post = _box("SD1", (-60, -100, 0), (-10, 0, 800))
    (found,) = _found(DOOR, post, moving=(LEFT,))
    assert (found.severity, found.rule) == (Severity.WARNING, Rule.DOOR_STRIKES)
    assert found.figure == pytest.approx(90 + math.degrees(math.atan(10.05 / 99.95)))
    assert found.parts == ("DO1", "SD1")


def test_post_in_front() -> None:
    """A post 200 in front of the door, from 300 to 340 beside its axis: its far corner is met
    first, at atan(200 / 340) from the closed door."""
    post = _box("SD1", (300, -260, 0), (340, -200, 800))
    (found,) = _found(DOOR, post, moving=(LEFT,))
    assert found.severity is Severity.ERROR
    assert found.figure == pytest.approx(math.degrees(math.atan2(200.05, 339.95)))


def test_out_of_the_doors_height() -> None:
    post = _box("SD1", (300, -260, 700), (340, -200, 800))
    assert _found(DOOR, post, moving=(LEFT,)) == []


@pytest.mark.parametrize(("gap", "strikes"), [(2.0, True), (4.3, True), (4.6, False)])
def test_closing_edge(gap: float, strikes: bool) -> None:
    """A door 100 x 30 between posts: its rear corner swings out to sqrt(100^2 + 30^2) = 104.40."""
    door = _box("DO1", (0, 0, 100), (100, 30, 700))
    post = _box("SD1", (100 + gap, 0, 0), (140, 300, 800))
    found = _found(door, post, moving=(LEFT,))
    assert bool(found) == strikes
    if gap == 2.0:
        corner, phase = math.hypot(100, 30), math.degrees(math.atan2(30, 100))
        assert found[0].figure == pytest.approx(phase - math.degrees(math.acos(102.05 / corner)))
        assert "bevel" in found[0].remedy


def test_right_hand() -> None:
    post = _box("SD1", (410, -100, 0), (460, 0, 800))
    (found,) = _found(DOOR, post, moving=(Swing(("DO1",), (400.0, 0.0), 110.0),))
    assert found.figure == pytest.approx(90 + math.degrees(math.atan(10.05 / 99.95)))


STRAIGHT = OpeningPlane.straight(((-8, 0), (900, 0), (900, 900), (-12, 900)))
WALL = Opening(1000, 900, 400, OpeningShape(STRAIGHT, None, 0, 0), 0.0)


def test_door_in_the_plane_of_the_wall() -> None:
    assert _found(DOOR, moving=(LEFT,), opening=WALL) == []


def test_door_behind_the_reveal() -> None:
    """Set back by 150: the wall leans in from -12 at the top to -8 at the foot, so at 100 up, where
    the door begins, it stands at -8 - 4 / 9, and is met 150 in front of the door."""
    (found,) = _found(DOOR, moving=(LEFT,), opening=replace(WALL, front=-150.0))
    wall = 8 + 4 * 100 / 900
    assert "the left wall" in found.message
    assert found.figure == pytest.approx(
        90 + math.degrees(math.atan((wall + 0.05) / 149.95)), abs=1e-6
    )


def test_neighbours_on_one_divider() -> None:
    """Hung back to back, open past a square both, they cross; open to a square they don't, so it
    is only noted."""
    other = _box("DO2", (-402, 0, 100), (-2, 18, 700))
    right = Swing(("DO2",), (-2.0, 0.0), 110.0)
    (found,) = _found(DOOR, other, moving=(LEFT, right))
    assert (found.severity, found.rule) == (Severity.NOTE, Rule.DOORS_STRIKE_EACH_OTHER)
    square = (replace(LEFT, angle=-90.0), replace(right, angle=90.0))
    assert _found(DOOR, other, moving=square) == []


def test_neighbours_at_a_corner() -> None:
    """Two doors at right angles, the second hung at its far end: wherever it stands, it is in
    the first one's way long before a square."""
    other = _box("DO2", (300, -400, 100), (318, -2, 700))
    wing = Swing(("DO2",), (318.0, -400.0), 5.0)
    found = _found(DOOR, other, moving=(LEFT, wing))
    assert (Severity.WARNING, Rule.DOORS_STRIKE_EACH_OTHER) in {
        (each.severity, each.rule) for each in found
    }


DRAWER = Slide(("DB1",), (0.0, -350.0, 0.0))


@pytest.mark.parametrize(("left", "depth"), [(18.5, 0.0), (15.0, 3.0)])
def test_drawer_behind_a_door(left: float, depth: float) -> None:
    """Open to a square, the door stands 18 within its edge."""
    box = _box("DB1", (left, 20, 200), (380, 370, 300))
    found = _found(DOOR, box, moving=(replace(LEFT, angle=-90.0), DRAWER))
    assert [(each.severity, each.figure) for each in found] == (
        [(Severity.ERROR, pytest.approx(depth))] if depth else []
    )


def test_drawer_beside_an_open_door() -> None:
    """The door opens past a square, in front of the drawer next to it."""
    box = _box("DB1", (-300, 0, 200), (-20, 350, 300))
    (found,) = _found(DOOR, box, moving=(LEFT, DRAWER))
    assert (found.severity, found.rule) == (Severity.NOTE, Rule.DRAWER_STRIKES_DOOR)


def test_drawer_and_a_fixed_part() -> None:
    box = _box("DB1", (20, 20, 200), (380, 370, 300))
    rail = _box("CR1", (0, 0, 295), (400, 18, 313))
    (found,) = _found(box, rail, moving=(DRAWER,))
    assert found.rule is Rule.DRAWER_STRIKES
    assert (found.severity, found.figure) == (Severity.ERROR, pytest.approx(5.0))
    assert (
        _found(
            box,
            replace(rail, placement=Placement((0, 0, 300), (1, 0, 0), (0, 1, 0))),
            moving=(DRAWER,),
        )
        == []
    )


@pytest.mark.parametrize(("low", "said"), [(4.9, True), (5.0, False)])
def test_over_the_floor(low: float, said: bool) -> None:
    """Common practice, no source: at least 5 mm under a door."""
    door = _box("DO1", (0, 0, low), (400, 18, 700))
    assert bool(_found(door, moving=(LEFT,))) == said


def test_a_neighbour_held_shut_is_told_as_such() -> None:
    """Two overlay doors hung on one divider under a slope: past square one lies before the other,
    whose corner it touches from the start."""
    door = {"stock": "ply", "hung": "overlay"}
    columns = [{"width": "1 share", "doors": door}, {"width": "1 share", "doors": door}]
    text = "size: {width: 1400, height: 2000, depth: 500}\n"
    slope = {"falls": "left", "low": 700, "pitch": 50}
    unit = unit_from(text, interior={"columns": columns}, slope=slope)
    (found,) = (each for each in motions(unit) if each.rule is Rule.DOORS_STRIKE_EACH_OTHER)
    assert found.message.endswith("with one open 110 degrees, the other doesn't open at all")


@pytest.mark.parametrize("front", ["doors", "drawers"])
def test_what_hangs_on_the_wall_has_no_floor_under_its_fronts(front: str) -> None:
    text = "size: {width: 500, height: 600, depth: 300}\n"
    wish = {"hung": "overlay"} | (
        {"count": 2, "bottom": {"stock": "thin"}} if front == "drawers" else {}
    )
    for hung in (False, True):
        unit = unit_from(text, hung=hung, interior={front: wish})
        assert any(each.rule is Rule.NEAR_FLOOR for each in check_parts(unit)) != hung
