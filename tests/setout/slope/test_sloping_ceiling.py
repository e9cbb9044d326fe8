"""Units under a sloping ceiling, against plane trigonometry."""

from __future__ import annotations

import re
from itertools import chain, product
from math import cos, radians, sqrt, tan
from typing import Any

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from kit.specs import of_role, problems_of, unit_from
from rodwright.checks import BY_STRENGTH, CHECKS, check_parts, check_solids
from rodwright.checks.findings import Severity
from rodwright.geometry.halfspaces import vertices
from rodwright.problems import ProblemsError
from rodwright.setout.recut import Workpiece
from rodwright.setout.slope.clipping import planes_of
from rodwright.unit import Bevel, Hole, Mortise, Part, Role, Swing, Unit

SIZE = "size: {width: 1200, height: 2000, depth: 300}\n"
LOW = 1400.0


def _under(pitch: float, falls: str = "right", **more: Any) -> Unit:
    slope = {"falls": falls, "low": LOW, "pitch": pitch, "clearance": 0}
    interior = more.pop("interior", {"shelves": {"at": [1582]}})
    return unit_from(SIZE, slope=slope, interior=interior, **more)


def _bevels(part: Part) -> list[Bevel]:
    return [each for each in part.workings if isinstance(each, Bevel)]


@pytest.mark.parametrize("pitch", [35.0, 45.0, 52.5])
def test_sides_shelves_and_top_end_at_the_sloping_board(pitch: float) -> None:
    unit = _under(pitch)
    rise, board = tan(radians(pitch)), 18 / cos(radians(pitch))

    def under(x: float) -> float:
        """Height of the sloping board's underside."""
        return LOW + (1200 - x) * rise - board

    left, right = of_role(unit, Role.SIDE)
    assert left.blank.length == 2000.0 and not _bevels(left)
    # The long point of the right side is at its inner face, 18 mm from the low end.
    assert right.blank.length == pytest.approx(under(1182))
    (bevel,) = _bevels(right)
    assert min(bevel.angle, 90 - bevel.angle) == pytest.approx(min(pitch, 90 - pitch))
    (shelf,) = of_role(unit, Role.SHELF)
    # Its underside, 1600 up, is its longer face.
    assert under(1182) < 1600
    assert shelf.blank.length == pytest.approx(1200 - (1600 + board - LOW) / rise - 18)
    flat, sloping = of_role(unit, Role.TOP)
    assert flat.blank.length == pytest.approx(1200 - (1982 + board - LOW) / rise - 18)
    # Cut level at the top and plumb at the low end, its underside is the longer by both cuts.
    upper = (2000 - LOW) / rise / cos(radians(pitch))
    lower = (2000 - LOW + board) / rise / cos(radians(pitch))
    assert sloping.blank.length == pytest.approx(max(upper, lower))
    assert check_solids(unit) == ()


def test_a_back_laid_on_is_cut_across_its_corner() -> None:
    unit = _under(45.0, back={"stock": "thin", "fixing": "applied"})
    (back,) = of_role(unit, Role.BACK)
    (bevel,) = _bevels(back)
    assert (bevel.width, bevel.depth) == (pytest.approx(600), pytest.approx(600))
    assert back.blank.size == (2000.0, 1200.0, 6.0)


def test_the_clearance_is_square_to_the_slope() -> None:
    def top(clearance: float) -> float:
        slope = {"falls": "right", "low": LOW, "pitch": 45, "clearance": clearance}
        return of_role(unit_from(SIZE, slope=slope), Role.SIDE)[1].blank.length

    assert top(0) - top(10) == pytest.approx(10 * sqrt(2))


def test_a_run_says_the_same_as_a_pitch() -> None:
    steep = unit_from(SIZE, slope={"falls": "left", "low": LOW, "pitch": 45})
    run = unit_from(SIZE, slope={"falls": "left", "low": LOW, "run": 600, "high": 2000})
    assert {part.shape for part in steep.parts} == {part.shape for part in run.parts}


def test_a_sloping_rail_follows_in_the_frame() -> None:
    frame = {"stock": "ash", "width": 50, "corners": "butted"}
    unit = _under(45.0, face_frame=frame)
    (rail,) = [part for part in of_role(unit, Role.RAIL) if part.name == "Sloping rail"]
    assert rail.blank.width == pytest.approx(50.0)
    assert not [each for each in check_parts(unit) if each.severity is Severity.ERROR]
    assert check_solids(unit) == ()


@pytest.mark.parametrize("falls", ["left", "right"])
def test_no_joint_is_left_to_a_mitre_that_the_slope_takes(falls: str) -> None:
    # The level top and a mitred stile touch along the arris at the corner, and there alone.
    unit = _under(60.0, falls, interior={}, face_frame={"stock": "ash", "width": 45})
    near = "Left stile" if falls == "left" else "Right stile"
    stile = next(part.ref for part in unit.parts if part.name == near)
    flat = next(part.ref for part in unit.parts if part.name == "Top")
    assert not [joint for joint in unit.joints if {joint.first, joint.second} == {stile, flat}]
    assert check_solids(unit) == ()


def test_shelves_that_the_slope_leaves_nothing_are_told() -> None:
    shelves = {"shelves": {"count": 1}}
    space = {"columns": [{"width": "1 share"}, {"width": 200, **shelves}]}
    slope = {"falls": "right", "low": 600, "pitch": 30}
    said = problems_of(SIZE, slope=slope, interior=space)
    assert said and all(each.startswith("interior.columns.1.shelves") for each in said)


def _limit(slope: dict[str, Any], **more: Any) -> float:
    """The height that the one problem's remedy gives, mm."""
    with pytest.raises(ProblemsError) as told:
        unit_from(SIZE, slope=slope, **more)
    (problem,) = told.value.problems
    (limit,) = re.findall(r"([\d.]+) mm up", problem.remedy)
    return float(limit)


def _shelf(height: float, *, fixed: bool) -> dict[str, Any]:
    """A shelf whose underside is so high above the floor: the bottom is 18 mm thick."""
    holes = {} if fixed else {"holes": {"near": 2}}
    return {"interior": {"shelves": {"at": [height - 18], "fixed": fixed} | holes}}


@pytest.mark.parametrize("falls", ["left", "right", "front", "rear"])
def test_a_shelf_as_high_as_the_limit_says_can_be_made(falls: str) -> None:
    """The limit told for a shelf too high is the last whole millimetre that will do."""
    slope = {"falls": falls, "low": 900, "pitch": 40}
    limit = _limit(slope, **_shelf(1940, fixed=True))
    assert not problems_of(SIZE, slope=slope, **_shelf(limit, fixed=True))
    assert problems_of(SIZE, slope=slope, **_shelf(limit + 1, fixed=True))


@pytest.mark.parametrize("falls", ["left", "right", "front", "rear"])
def test_a_loose_shelf_is_told_what_its_pins_need(falls: str) -> None:
    slope = {"falls": falls, "low": 900, "pitch": 40}
    some = _limit(slope, **_shelf(1940, fixed=False))
    pins = _limit(slope, **_shelf(some, fixed=False))
    assert not problems_of(SIZE, slope=slope, **_shelf(pins, fixed=False))


def test_drawers_under_a_slope_are_told_how_high_they_may_go() -> None:
    slope = {"falls": "right", "low": 1200, "pitch": 45}

    def drawers(top: float) -> dict[str, Any]:
        bay = {"rows": [{"height": "1 share"}, {"height": top, "drawers": {"count": 2}}]}
        columns = [{"width": "1 share"}, {"width": 300, **bay}]
        return {"interior": {"columns": columns}, "back": {"stock": "thin"}}

    limit = _limit(slope, **drawers(1300))
    assert not problems_of(SIZE, slope=slope, **drawers(limit - 40))


def test_the_pitches_that_are_worked_out_are_told() -> None:
    (said,) = problems_of(SIZE, slope={"falls": "right", "low": 1400, "pitch": 2})
    assert "from 3 to 87 degrees" in said


@pytest.mark.parametrize(
    ("slope", "where"),
    [
        ({"falls": "right", "low": 2100, "pitch": 45}, "slope"),
        ({"falls": "right", "low": 1400}, "slope"),
        ({"falls": "right", "low": 1400, "pitch": 45, "run": 300}, "slope"),
        ({"falls": "right", "low": 40, "pitch": 10}, "slope"),
    ],
)
def test_slopes_that_say_too_little_or_too_much(slope: dict[str, Any], where: str) -> None:
    said = problems_of(SIZE, slope=slope)
    assert said and all(each.startswith(where) for each in said)


@settings(
    max_examples=60, suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow]
)
@given(
    falls=st.sampled_from(["left", "right", "front", "rear"]),
    low=st.integers(700, 1900),
    pitch=st.integers(12, 75),
    corners=st.sampled_from(["butted", "housed"]),
    fixing=st.sampled_from([None, "applied", "rebated", "grooved"]),
    front=st.sampled_from(["bare", "lipped", "framed"]),
)
def test_units_under_any_slope_are_whole(
    falls: str, low: int, pitch: int, corners: str, fixing: str | None, front: str
) -> None:
    more: dict[str, Any] = {"carcass": {"stock": "ply", "corners": corners}}
    if fixing:
        more["back"] = {"stock": "thin", "fixing": fixing}
    if front == "lipped":
        edges = ["shelves", "dividers", "sides", "top"]
        more["lipping"] = {"stock": "ash", "thickness": 10, "edges": edges}
    elif front == "framed":
        more["face_frame"] = {"stock": "ash", "width": 45, "corners": "butted", "mid_stiles": 40}
    columns = [{"width": "1 share"} | {"shelves": {"at": at}} for at in ([300, 600], [250])]
    slope = {"falls": falls, "low": low, "pitch": pitch}
    try:
        unit = unit_from(SIZE, slope=slope, interior={"columns": columns}, **more)
    except ProblemsError:
        assume(False)
        raise
    assert check_solids(unit) == ()
    found = chain.from_iterable(check(unit) for check in CHECKS if check not in BY_STRENGTH)
    assert not [each for each in found if each.severity is Severity.ERROR]


@pytest.mark.parametrize(("falls", "fixing"), product(("front", "rear"), ("applied", "grooved")))
def test_ceilings_that_fall_to_the_front_or_the_rear(falls: str, fixing: str) -> None:
    unit = _under(60.0, falls, interior={}, back={"stock": "thin", "fixing": fixing})
    sides = of_role(unit, Role.SIDE)
    assert len({part.blank.length for part in sides}) == 1
    assert all(_bevels(side) for side in sides)
    assert check_solids(unit) == ()


def _hinge_heights(unit: Unit, kind: str) -> tuple[list[float], float, float]:
    """Heights of a raked door's hinges, and of both ends of its hinged edge, unit frame."""
    (door,) = of_role(unit, Role.DOOR)
    (swing,) = (each for each in unit.motions if isinstance(each, Swing))
    left = swing.hinge[0] < door.bounds().centre[0]
    edge = door.bounds().low[0] if left else door.bounds().high[0]
    corners = vertices(planes_of(Workpiece(door, door.workings)))
    ends = [z for x, _, z in corners if abs(x - edge) < 1e-6]
    if kind == "cup":
        borings = [hole for hole in door.workings if isinstance(hole, Hole) and hole.diameter == 35]
        places = [(hole.position[0], hole.position[1], 0.0) for hole in borings]
    else:
        leaves = [each for each in door.workings if isinstance(each, Mortise)]
        assert leaves
        # Leaves lie in an edge: along the door's length first.
        places = [(each.position[0] + each.extent[0] / 2, 0.0, 0.0) for each in leaves]
    return (
        sorted(door.placement.to_unit(place)[2] for place in places),
        min(ends),
        min(z for x, _, z in corners if abs(x - edge) < 1e-6 and z > min(ends) + 1),
    )


@pytest.mark.parametrize(
    ("falls", "hinges", "hung", "kind", "pitch"),
    [
        each
        for each in product(
            ("left", "right"), ("left", "right"), ("inset", "overlay"), ("cup", "butt"), (30, 45)
        )
        if each[2:4] != ("overlay", "butt")
    ],
)
def test_hinges_of_a_raked_door_are_measured_from_what_is_left_of_it(
    falls: str, hinges: str, hung: str, kind: str, pitch: int
) -> None:
    """100 mm from either end of the edge they are on (common practice, no source), at the low side
    of the slope as at the high one, however much is cut off."""
    unit = unit_from(
        "size: {width: 600, height: 2000, depth: 300}\n",
        slope={"falls": falls, "low": 1300, "pitch": pitch, "clearance": 0},
        interior={"doors": {"hung": hung, "hinges": hinges, "hinge": {"kind": kind}, "handle": {}}},
    )
    heights, low, high = _hinge_heights(unit, kind)
    assert high < 1990
    assert heights[0] == pytest.approx(low + 100)
    assert heights[-1] == pytest.approx(high - 100)
    # The handle is at half of the other edge's height.
    (door,) = of_role(unit, Role.DOOR)
    (knob,) = (hole for hole in door.workings if isinstance(hole, Hole) and hole.diameter == 5)
    rise = tan(radians(pitch)) * door.blank.width * (1 if hinges == falls else -1)
    height = door.placement.to_unit((*knob.position, 0.0))[2]
    assert height == pytest.approx((low + min(high + rise, door.bounds().high[2])) / 2)
    assert check_solids(unit) == ()


def test_a_hinge_keeps_clear_of_what_a_steep_slope_brings_down_beside_it() -> None:
    """At 60 degrees the slope is 60 x tan 60 = 103.9 lower 60 mm in from the edge, where the arm
    of a hinge ends (from memory): it must be 104 + 32 below the end of the door, not 100."""
    unit = unit_from(
        "size: {width: 600, height: 2000, depth: 300}\n",
        slope={"falls": "right", "low": 1000, "pitch": 60, "clearance": 0},
        interior={"doors": {"hinges": "left", "hinge": {"count": 3}}},
    )
    heights, _, high = _hinge_heights(unit, "cup")
    assert high < 1980
    # Steps of 1 mm down from 100.
    assert heights[-1] == pytest.approx(high - 136)
