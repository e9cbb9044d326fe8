"""Visible and hidden lines, against lengths worked out by hand and shapely."""

from dataclasses import replace

import numpy as np
import pytest
import shapely
from cadquery import Solid
from hypothesis import given
from hypothesis import strategies as st

from kit import samples
from rodwright.geometry import Box
from rodwright.pictures.bodies import bodies_of, foremost, pictured
from rodwright.pictures.camera import FRONT, PLAN, Array, Camera, three_quarter
from rodwright.pictures.hidden import lines
from rodwright.unit import Easing, Surface

Extents = tuple[tuple[float, float, float], tuple[float, float, float]]
NEAR: Extents = ((0, 0, 0), (100, 10, 100))


def _drawn(camera: Camera, *extents: Extents) -> tuple[Array, Array]:
    boxes = [
        Solid.makeBox(*(b - a for a, b in zip(low, high, strict=True))).translate(low)
        for low, high in extents
    ]
    return lines([box.wrapped for box in boxes], camera)


def _drawing(ends: Array) -> shapely.Geometry:
    """Lines that lie on one another count once."""
    return shapely.union_all(shapely.linestrings(ends), grid_size=1e-3)


def test_a_box_wholly_behind_has_hidden_lines_only() -> None:
    shown, hidden = _drawn(FRONT, NEAR, ((20, 50, 20), (80, 60, 80)))
    assert _drawing(shown).length == pytest.approx(4 * 100)
    behind = shapely.box(20, 20, 80, 80).boundary
    assert _drawing(hidden).intersection(behind.buffer(0.01)).length == pytest.approx(
        4 * 60, rel=1e-3
    )


def test_a_line_is_split_where_it_passes_behind() -> None:
    shown, hidden = _drawn(FRONT, NEAR, ((-50, 50, 40), (60, 60, 60)))
    level = shapely.linestrings([(-50, 60), (60, 60)]).buffer(0.01)
    assert _drawing(shown).intersection(level).length == pytest.approx(50, abs=0.05)
    # The rear edges lie straight behind the front ones.
    covered = _drawing(hidden).difference(_drawing(shown).buffer(0.001))
    assert covered.intersection(level).length == pytest.approx(60, abs=0.05)


def test_a_cylinder_has_its_contours_and_no_seam() -> None:
    upright = Solid.makeCylinder(10.0, 50.0).wrapped
    shown, _ = lines([upright], FRONT)
    level = np.abs(shown[:, 0, 1] - shown[:, 1, 1]) < 1e-6
    assert sorted(shown[~level][:, 0, 0].tolist()) == pytest.approx([-10.0, 10.0])
    round_about, _ = lines([upright], PLAN)
    # A circle of 12 chords.
    assert _drawing(round_about).length == pytest.approx(12 * 20 * np.sin(np.pi / 12), rel=0.01)


@given(
    st.lists(
        st.tuples(st.tuples(*[st.integers(0, 2)] * 3), st.tuples(*[st.floats(20, 95)] * 3)),
        min_size=1,
        max_size=6,
        unique_by=lambda item: item[0],
    ),
    st.floats(-60, 60),
    st.floats(10, 60),
)
def test_the_outermost_lines_are_the_silhouettes(
    cells: list[tuple[tuple[int, ...], tuple[float, ...]]], turn: float, tilt: float
) -> None:
    extents = [
        (
            (100.0 * cell[0], 100.0 * cell[1], 100.0 * cell[2]),
            (100.0 * cell[0] + s[0], 100.0 * cell[1] + s[1], 100.0 * cell[2] + s[2]),
        )
        for cell, s in cells
    ]
    camera = three_quarter(Box((0, 0, 0), (300, 300, 300)), turn, tilt)
    shown, _ = _drawn(camera, *extents)
    corners = [
        [[extent[i][0], extent[j][1], extent[k][2]] for i in (0, 1) for j in (0, 1) for k in (0, 1)]
        for extent in extents
    ]
    hulls = [
        shapely.multipoints(camera.screen(np.array(each))[:, :2]).convex_hull for each in corners
    ]
    silhouette = shapely.union_all(hulls)
    drawing = _drawing(shown)
    assert silhouette.boundary.difference(drawing.buffer(0.05)).length < 0.5
    assert drawing.difference(silhouette.buffer(0.05)).length < 0.5


def test_an_eased_arris_has_no_line_where_it_meets_the_faces() -> None:
    size, radius = (300.0, 60.0, 20.0), 6.0
    solid, _ = pictured((size, (Easing(Surface.FACE, Surface.FACE_EDGE, radius),)))
    shown, _ = lines([solid.wrapped], PLAN)
    along = np.abs(shown[:, 0, 1] - shown[:, 1, 1]) < 1e-6
    assert sorted({round(y, 3) for y in shown[along][:, 0, 1].tolist()}) == [0.0, 60.0]


def test_equal_pieces_straight_behind_each_other_are_drawn_once() -> None:
    unit = samples.bookcase()
    bodies = bodies_of(unit, {})
    behind = [replace(body, matrix=body.matrix + np.eye(4, k=3) * 0) for body in bodies]
    for body in behind:
        body.matrix[1, 3] += 500.0
    both = [*behind, *bodies]
    assert {id(each) for each in foremost(both, FRONT)} == {
        id(each) for each in foremost(bodies, FRONT)
    }
    assert len(foremost(both, PLAN)) == 2 * len(foremost(bodies, PLAN))
    whole, few = (
        lines([body.placed_solid() for body in chosen], FRONT)
        for chosen in (both, foremost(both, FRONT))
    )
    for every, some in zip(whole, few, strict=True):
        assert _drawing(every).symmetric_difference(_drawing(some)).length < 0.01 * len(every)
