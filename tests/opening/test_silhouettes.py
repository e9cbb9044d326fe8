"""A unit under a sloping ceiling in its opening: nothing told of it lies above the ceiling."""

from __future__ import annotations

from math import cos, hypot, radians, sin, tan

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from shapely import LineString, Point, Polygon

from kit.planes import STRAIGHT
from kit.specs import spec_from, unit_from
from rodwright.checks import check_parts
from rodwright.jobs.survey import survey
from rodwright.opening.closings import closing_text, closings
from rodwright.opening.gaps import fixing_points, gap_map, packing
from rodwright.opening.sheet import FitSheet
from rodwright.opening.silhouettes import Silhouette, SlopeLine
from rodwright.unit import OpeningShape

SHAPE = OpeningShape(STRAIGHT, None, 1190.0, 1990.0)
SIZE = (1193.0, 1993.0)
STOCKED = (1.0, 2.0, 3.0, 5.0, 10.0)
CLEARANCE = 7.0

CASE = """
opening: {width: 1000, height: 2290, depth: 620}
interior: {shelves: 2}
"""


def sheet(falls: str, low: float, pitch: float, more: str = "") -> FitSheet:
    slope = f"slope: {{falls: {falls}, low: {low}, pitch: {pitch}}}\n"
    fit = survey(spec_from(CASE + slope + more)).fit
    assert fit is not None
    return fit


slopes = st.builds(
    lambda pitch, low, left: (radians(pitch), low, left),
    st.floats(10.0, 70.0),
    st.floats(300.0, 1900.0),
    st.booleans(),
)


def line_under(pitch: float, low: float, left: bool) -> SlopeLine:
    """The unit's edge that keeps 7 mm off a ceiling ``low`` up at the unit's left or right."""
    rise = tan(pitch) * (1.0 if left else -1.0)
    plumb = CLEARANCE / cos(pitch)
    at_left = low if left else low + SIZE[0] * tan(pitch)
    return SlopeLine(at_left - plumb, rise, CLEARANCE, plumb)


@settings(max_examples=60, suppress_health_check=[HealthCheck.too_slow])
@given(slopes)
def test_nothing_is_told_above_the_ceiling(slope: tuple[float, float, bool]) -> None:
    """By shapely: the outline is the box less what lies over the slope, and every gap and packer is
    on it and under the ceiling."""
    line = line_under(*slope)
    outline = Silhouette(*SIZE, line)
    width, height = SIZE
    box = Polygon([(0, 0), (width, 0), (width, height), (0, height)])
    under = Polygon([(0, -1e4), (width, -1e4), (width, line.edge(width)), (0, line.edge(0))])
    expected = box.intersection(under)
    assert Polygon(outline.corners).symmetric_difference(expected).area < 1.0
    ceiling = LineString([(-100, line.ceiling(-100)), (width + 100, line.ceiling(width + 100))])
    planes = {"front": line} if outline.run("slope") else {}
    packed = [each.gap for each in packing(SHAPE, SIZE, STOCKED, 500.0, under=planes)]
    round_it = [gap for each in closings(SHAPE, SIZE, {}, line) for gap in each.gaps]
    for gap in (*gap_map(SHAPE, SIZE, planes), *packed, *round_it):
        if gap.side == "slope":
            at = Point(outline.on_slope(gap.at))
            assert at.distance(ceiling) == pytest.approx(gap.gap, abs=1e-6)
        else:
            at = Point(
                {
                    "left": (0.0, gap.at),
                    "right": (width, gap.at),
                    "top": (gap.at, height),
                    "bottom": (gap.at, 0.0),
                }[gap.side]
            )
        assert at.distance(expected.exterior) < 1e-6
        assert at.y < line.ceiling(at.x)


@pytest.mark.parametrize("falls", ["left", "right"])
def test_sideways_by_hand(falls: str) -> None:
    """45 degrees from 1250 up at a wall: by hand, the unit's low side is as much lower than the
    ceiling over it as 7 mm square to the slope are plumb."""
    fit = sheet(falls, 1250.0, 45.0)
    assert fit.sloped is not None
    assert (fit.sloped.falls, fit.sloped.gap) == (falls, pytest.approx(CLEARANCE))
    assert fit.sloped.pitch == pytest.approx(45.0)
    outline, width = fit.outline("front"), fit.size[0]
    corners = fit.shape.front.corners
    beside = -corners[0][0] if falls == "left" else corners[1][0] - width
    low_side = 1250.0 + beside - CLEARANCE * 2**0.5
    x, other = (0.0, "right") if falls == "left" else (width, "left")
    assert outline.top_at(x) == pytest.approx(low_side, abs=0.01)
    assert outline.top_at(width - x) == pytest.approx(min(fit.size[1], low_side + width), abs=0.01)
    packers = [each.gap.at for each in fit.packing if each.gap.side == falls]
    assert packers == list(fixing_points(outline.top_at(x), 600.0))
    assert max(packers) < low_side < 1300.0
    assert max(each.gap.at for each in fit.packing if each.gap.side == other) > 1800.0
    along = [gap.at for gap in fit.gaps if gap.side == "slope"]
    assert max(along) == pytest.approx(hypot(1.0, 1.0) * min(width, fit.size[1] - low_side), abs=1)
    if fit.size[1] - low_side > width:
        assert not [gap for gap in fit.gaps if gap.side == "top"]


def test_a_ceiling_that_falls_to_the_front_ends_the_front_plane() -> None:
    """At 50 degrees from 1900 up in the plane of the front the whole front keeps 7 mm square to
    it, and no level top is left there."""
    fit = sheet("front", 1900.0, 50.0)
    top = 1900.0 - CLEARANCE / cos(radians(50.0))
    assert fit.outline("front").top_at(0.0) == pytest.approx(top, abs=0.01)
    assert fit.outline("front").run("top") is None
    sides = {gap.side for gap in fit.gaps}
    assert "top" not in sides and "slope" in sides
    assert max(each.gap.at for each in fit.packing) < top
    assert [each.side for each in fit.closings] == ["left", "right", "slope"]


def test_a_ceiling_that_falls_to_the_rear_leaves_the_front_plane() -> None:
    more = "back: {stock: thin, fixing: rebated}\n"
    fit = sheet("rear", 1900.0, 50.0, more)
    assert fit.outline("front").slope is None
    assert [each.side for each in fit.closings] == ["left", "right", "top"]
    assert fit.sloped is not None and fit.sloped.falls == "rear"
    assert sin(radians(fit.sloped.pitch)) == pytest.approx(sin(radians(50.0)))


def test_no_frame_is_told_that_the_slope_cuts() -> None:
    framed = "face_frame: {stock: ash, width: 45, corners: butted}\n"
    level = survey(spec_from(CASE + framed)).fit
    assert level is not None and level.frame is not None and not level.frame_note
    fit = sheet("right", 1250.0, 45.0, framed)
    assert fit.frame is None
    assert "parts list" in fit.frame_note


def test_a_side_left_open_on_purpose_is_passed_over_in_silence() -> None:
    """A window seat in a tall recess; 60 mm are a gap still."""
    seat = "opening: {width: 1500, height: 1500, depth: 500}\ninterior: {shelves: 1}\nSIZE\n"
    low, near = (seat.replace("SIZE", f"size: {{height: {high}}}") for high in (450, 1440))
    fit = survey(spec_from(low)).fit
    assert fit is not None and fit.open_sides == ("top",)
    assert "top" not in {each.side for each in (*fit.gaps, *fit.closings)}
    messages = [each.message for each in check_parts(unit_from(low))]
    assert not [each for each in messages if "over the top" in each or "in height" in each]
    messages = [each.message for each in check_parts(unit_from(near))]
    assert [each for each in messages if "over the top" in each]


def test_a_scribe_of_the_unit_closes_its_side() -> None:
    """What is planed off is what it was cut wider than the least that the gap may be."""
    scribed = "scribes: {stock: ash, edges: [left, right]}\n"
    fit = survey(spec_from(CASE + scribed)).fit
    assert fit is not None
    unit = unit_from(CASE + scribed)
    strips = {each.side: each.scribe for each in fit.closings}
    assert strips["top"] is None
    for side in ("left", "right"):
        strip = strips[side]
        assert strip is not None
        assert unit.part(strip.ref).rough_size[1] == strip.width
        closing = next(each for each in fit.closings if each.side == side)
        planed = strip.width - closing.narrowest
        said = closing_text(closing, lambda mm: f"{mm:.2f}")
        assert said.startswith(f"closed by {strip.ref}, planed to the wall by up to {planed:.2f}")
