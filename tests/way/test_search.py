"""The search against the formulas, and its paths against shapely at many poses between stages."""

from __future__ import annotations

from itertools import pairwise
from math import hypot, radians

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Polygon, box, union_all

from rodwright.way.answer import into_opening
from rodwright.way.body import Body, Niche, slide
from rodwright.way.formulas import longest_round_corner, standing_up_height
from rodwright.way.scenes import corner_scene, plan_scene, section_scene, standing_scene
from rodwright.way.search import Pose, Scene, find_path, placed, tolerance

ONE = (1.0,)
"""One cutting of the angles, so that the tolerance is that of one degree and tests are quick."""


def free_throughout(scene: Scene, poses: tuple[Pose, ...]) -> bool:
    """Whether the body crosses no wall at any of many poses between the stages."""
    walls = union_all([Polygon(wall.ring) for wall in scene.walls])
    for a, b in pairwise(poses):
        for k in np.linspace(0, 1, 12):
            between = Pose(
                a.x + k * (b.x - a.x),
                a.y + k * (b.y - a.y),
                a.turn_rad + k * (b.turn_rad - a.turn_rad),
            )
            # The body is taken a hundredth smaller all round, so that it may stand on a floor.
            if any(piece.buffer(-0.02).intersects(walls) for piece in placed(scene, between).geoms):
                return False
    return True


@settings(max_examples=15)
@given(st.floats(700, 1500), st.floats(700, 1500), st.floats(0.1, 0.95), st.floats(0.8, 1.2))
def test_round_a_corner(before: float, after: float, part: float, near: float) -> None:
    """Never a yes where the formula says no; always one where it leaves the tolerance."""
    width = part * min(before, after)
    longest = longest_round_corner(width, before, after)
    length = max(width, near * longest)
    scene = corner_scene(length, width, before, after)
    path = find_path(scene, ONE)
    grown = 2 * 1.1 * tolerance(scene, 1.0)
    if length > longest + 0.05:
        assert path is None
    elif length + grown <= longest_round_corner(width + grown, before, after):
        assert path is not None
        assert free_throughout(scene, path)


@settings(max_examples=15)
@given(st.floats(500, 2600), st.floats(150, 900), st.floats(-60, 60))
def test_standing_up_under_a_ceiling(height: float, depth: float, spare: float) -> None:
    depth = min(depth, 0.9 * height)
    ceiling = standing_up_height(height, depth) + spare
    scene = standing_scene(height, depth, ceiling)
    path = find_path(scene, ONE) if ceiling > height else None
    grown = 1.1 * tolerance(scene, 1.0)
    if spare < -0.05:
        assert path is None
    elif ceiling >= hypot(height + 2 * grown, depth + 2 * grown):
        assert path is not None
        assert free_throughout(scene, path)
        assert path[0].turn_rad == pytest.approx(radians(-90))


def test_a_finer_cutting_finds_a_tighter_path() -> None:
    scene = corner_scene(longest_round_corner(300, 900, 850) - 25, 300, 900, 850)
    assert find_path(scene, (2.0,)) is None
    assert find_path(scene) is not None
    assert tolerance(scene, 0.5) == pytest.approx(tolerance(scene, 1.0) / 2)


WALLS = {"skirting": 0.0, "skirting_height": 0.0, "front": None, "ceiling": None}


def niche(**given: float | None) -> Niche:
    width, height = given["width"], given["height"]
    assert width is not None
    assert height is not None
    mouth = {"mouth_width": width, "mouth_height": height, "mouth_thickness": 0.0}
    return Niche(**{**WALLS, **mouth, **given})  # type: ignore[arg-type]


@settings(max_examples=10)
@given(st.floats(-30, 30), st.floats(-30, 30), st.floats(0, 20), st.floats(0, 40))
def test_straight_in_agrees_with_the_search(
    wide: float, deep: float, frame: float, skirting: float
) -> None:
    """Into an opening as wide at its mouth as inside, a unit goes exactly if it goes straight.

    Where it is too deep it stands proud, its frame before the wall or over the skirting.
    """
    place = niche(width=1200.0, height=2000.0, depth=400.0, skirting=skirting, skirting_height=90.0)
    body = Body(1200 - 2 * skirting - wide, 1990.0, 400 - skirting - deep - 20, 20.0, frame)
    spare = slide(body, place).width[0]
    path = find_path(plan_scene(body, place), (2.0,))
    if abs(spare) > 0.05:
        assert (path is not None) == (spare > 0)


def test_turned_in_behind_a_narrower_mouth() -> None:
    """1000 wide through 985: one end first, then the other; there is room inside to do it."""
    place = niche(width=1209.0, height=2027.0, depth=700.0, mouth_width=985.0, mouth_thickness=25.0)
    body = Body(1000.0, 1990.0, 330.0)
    step = into_opening(body, place, "mm")
    assert step.passes
    assert "turned" in step.held
    scene = plan_scene(body, place)
    path = find_path(scene)
    assert path is not None
    assert free_throughout(scene, path)
    assert path[-1] == scene.goal


def test_tilted_in_under_a_lower_mouth() -> None:
    place = niche(
        width=1209.0, height=2027.0, depth=700.0, mouth_height=1885.0, mouth_thickness=25.0
    )
    body = Body(1000.0, 1900.0, 330.0)
    step = into_opening(body, place, "mm")
    assert step.passes
    assert "tilted" in step.held
    path = find_path(section_scene(body, place))
    assert path is not None
    assert free_throughout(section_scene(body, place), path)


def test_too_little_floor_before_it_to_turn() -> None:
    """The same as above, with a wall opposite nearer than the unit is deep."""
    place = niche(
        width=1209.0,
        height=2027.0,
        depth=700.0,
        mouth_width=985.0,
        mouth_thickness=25.0,
        front=320.0,
    )
    assert not into_opening(Body(1000.0, 1990.0, 330.0), place, "mm").passes


def test_a_no_names_the_spot_and_about_how_much() -> None:
    """Where the inside is too narrow to turn in, what lacks is what the mouth lacks, or less."""
    place = niche(width=1040.0, height=2027.0, depth=700.0, mouth_width=960.0, mouth_thickness=25.0)
    step = into_opening(Body(1000.0, 1990.0, 600.0), place, "mm")
    assert not step.passes
    assert -40.0 <= step.spare < 0
    assert "mouth" in step.tight


def test_a_frame_over_the_skirting_beside_the_opening() -> None:
    """The frame stands before the wall but behind the skirting's face: straight and by search."""
    place = niche(width=1200.0, height=2000.0, depth=300.0, skirting=15.0, skirting_height=90.0)
    body = Body(1160.0, 1990.0, 290.0, frame_thickness=20.0, frame_sides=30.0)
    assert slide(body, place).width[1] == "the skirting beside it, under the face frame"
    assert find_path(plan_scene(body, place), (2.0,)) is None


def test_swept_hulls_hold_the_body_at_every_angle() -> None:
    """At each stage between two intervals' ends the body stays in the room the cells say."""
    scene = corner_scene(1500, 400, 950, 1000)
    path = find_path(scene, (2.0,))
    assert path is not None
    inside = box(*scene.room).buffer(0.01)
    assert all(inside.covers(placed(scene, pose)) for pose in path[2:-2])
