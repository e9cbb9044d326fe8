from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Polygon

from kit.quadrilaterals import quadrilateral
from rodwright.opening.frames import fit_frame
from rodwright.unit import Quadrilateral


def _leaning(angle: float) -> Quadrilateral:
    """1000 x 2000 with walls that lean so that the lower left corner has this angle."""
    lean = 2000.0 / math.tan(math.radians(angle))
    return ((0.0, 0.0), (1000.0, 0.0), (1000.0 + lean, 2000.0), (lean, 2000.0))


@pytest.mark.parametrize("angle", [85.0, 87.5, 89.0, 90.0, 91.0, 92.5, 95.0])
def test_mitres_by_plane_trigonometry(angle: float) -> None:
    """Half the corner is the mitre; at the inner edge each end is shorter by w / tan(half)."""
    width = 45.0
    frame = fit_frame(_leaning(angle), width, width, True, 4.0)
    other = 180.0 - angle
    assert list(frame.angles.values()) == pytest.approx([angle, other, angle, other])
    bottom, top, left, right = frame.members
    half, other_half = math.radians(angle / 2), math.radians(other / 2)
    shorter = width / math.tan(half) + width / math.tan(other_half)
    stile = 2000.0 / math.sin(math.radians(angle))
    for member, outer in ((bottom, 1000.0), (top, 1000.0), (left, stile), (right, stile)):
        assert member.long_points == pytest.approx(outer)
        assert member.short_points == pytest.approx(outer - shorter)
    assert (bottom.start_cut, bottom.end_cut) == pytest.approx((90 - angle / 2, 90 - other / 2))
    assert (left.start_cut, left.end_cut) == pytest.approx((90 - angle / 2, 90 - other / 2))


@pytest.mark.parametrize("angle", [85.0, 90.0, 95.0])
def test_butted_rails_by_plane_trigonometry(angle: float) -> None:
    """A rail's ends are off square by what the corner is off a right angle."""
    frame = fit_frame(_leaning(angle), 50.0, 80.0, False, 4.0)
    bottom, _, left, _ = frame.members
    between = 1000.0 - 2 * 50.0 / math.sin(math.radians(angle))
    assert (bottom.outer, bottom.inner) == pytest.approx((between, between))
    assert (bottom.start_cut, bottom.end_cut) == pytest.approx((90 - angle, angle - 90))
    assert (left.start_cut, left.end_cut) == pytest.approx((90 - angle, angle - 90))


@settings(max_examples=60)
@given(st.tuples(*[st.floats(-80, 80)] * 6), st.floats(20, 120), st.floats(20, 120))
def test_members_fill_the_frame(moves: tuple[float, ...], stile: float, rail: float) -> None:
    """By shapely: the frame's area is the opening's less that of the inset one; a member's area
    is its width times the mean of its lengths, mitred or butted."""
    corners = quadrilateral(1000.0, 2000.0, moves)  # type: ignore[arg-type]
    areas = []
    for mitred in (True, False):
        frame = fit_frame(corners, stile, rail, mitred, 0.0)
        areas.append(
            sum(
                (each.outer + each.inner) / 2 * (stile if "stile" in each.name else rail)
                for each in frame.members
            )
        )
        for each in frame.members:
            taper = math.tan(math.radians(each.start_cut)) + math.tan(math.radians(each.end_cut))
            width = stile if "stile" in each.name else rail
            assert each.outer - each.inner == pytest.approx(width * taper, abs=1e-6)
    ring = Polygon(corners).area - _inset_area(corners, stile, rail)
    assert areas == pytest.approx([ring, ring], rel=1e-9)


def _inset_area(corners: Quadrilateral, stile: float, rail: float) -> float:
    """What is left of the opening beyond a strip along each edge, by shapely's buffers."""
    inside = Polygon(corners)
    edges = list(zip(corners, (*corners[1:], corners[0]), strict=True))
    for (start, end), width in zip(edges, (rail, stile, rail, stile), strict=True):
        x, z = end[0] - start[0], end[1] - start[1]
        length = math.hypot(x, z)
        x, z = x / length, z / length
        far = 5000.0
        strip = Polygon(
            [
                (start[0] - far * x - width * z * side, start[1] - far * z + width * x * side)
                for side in (1.0, -50.0)
            ]
            + [
                (end[0] + far * x - width * z * side, end[1] + far * z + width * x * side)
                for side in (-50.0, 1.0)
            ]
        )
        inside = inside.difference(strip)
    return float(inside.area)


def test_the_order_names_the_trim() -> None:
    frame = fit_frame(_leaning(88.0), 45.0, 45.0, True, 6.0)
    assert any("6 mm long" in step for step in frame.order)
    assert [each.name for each in frame.members][:2] == ["Bottom rail", "Top rail"]
