"""Visible surfaces and hidden lines against areas by hand and an independent z-buffer."""

import numpy as np
import pytest
import shapely
import trimesh
from hypothesis import given, settings
from hypothesis import strategies as st

from kit import samples
from rodwright.geometry import Box
from rodwright.pictures.bodies import bodies_of, pictured, placed_facets
from rodwright.pictures.camera import FRONT, PLAN, Camera, three_quarter
from rodwright.pictures.facets import Facets, facets_of, place
from rodwright.pictures.visible import mouth_lines, see

Extents = tuple[tuple[float, float, float], tuple[float, float, float]]


def _boxes(*extents: Extents) -> Facets:
    bodies = [facets_of(trimesh.creation.box(bounds=np.array(each))) for each in extents]
    return place((body, np.eye(4)) for body in bodies)


def _area(facets: Facets, camera: Camera, body: int) -> float:
    seen = see(facets, camera)
    return float(shapely.area(seen.areas[facets.body_of[seen.facing] == body]).sum())


NEAR: Extents = ((0, 0, 0), (100, 10, 100))


def test_box_has_six_facets_with_one_outline_each() -> None:
    facets = _boxes(NEAR)
    assert len(facets.normals) == 6
    assert sorted(facets.ring_of.tolist()) == [0, 1, 2, 3, 4, 5]
    assert [len(ring) for ring in facets.rings] == [4] * 6


def test_half_of_the_box_behind_is_hidden() -> None:
    facets = _boxes(NEAR, ((50, 50, 0), (150, 60, 100)))
    assert _area(facets, FRONT, 0) == pytest.approx(100 * 100)
    assert _area(facets, FRONT, 1) == pytest.approx(50 * 100)


def test_box_wholly_behind_shows_no_area() -> None:
    facets = _boxes(NEAR, ((20, 50, 20), (80, 60, 80)))
    assert _area(facets, FRONT, 1) == 0


def test_what_is_known_to_be_hidden_may_be_left_out() -> None:
    facets = _boxes(NEAR, ((50, 50, 0), (150, 60, 100)), ((20, 80, 20), (60, 90, 60)))
    whole = see(facets, FRONT)
    showing = whole.facing[shapely.area(whole.areas) > 0]
    part = see(facets, FRONT, showing)
    assert part.facing.tolist() == showing.tolist()
    assert shapely.area(part.areas).tolist() == pytest.approx(
        [area for area in shapely.area(whole.areas) if area > 0]
    )


def test_touching_boxes_hide_the_faces_between_them() -> None:
    facets = _boxes(((0, 0, 0), (100, 50, 10)), ((0, 0, 10), (100, 50, 20)))
    seen = see(facets, three_quarter(Box((0, 0, 0), (100, 50, 20))))
    between = (facets.normals[seen.facing][:, 2] > 0.5) & (facets.body_of[seen.facing] == 0)
    assert between.sum() == 1
    assert shapely.area(seen.areas[between]).sum() == 0


def test_a_facet_is_cut_where_planes_pass_through_each_other() -> None:
    # A board through the middle of an upright one: its nearer half hides, its other is hidden.
    facets = _boxes(((0, 0, 40), (100, 100, 60)), ((40, -200, 0), (60, 300, 100)))
    camera = three_quarter(Box((0, -200, 0), (100, 300, 100)))
    seen = see(facets, camera)
    assert shapely.area(seen.areas).sum() == pytest.approx(
        shapely.union_all(seen.outlines).area, rel=1e-6
    )


@pytest.mark.parametrize("perspective", [True, False])
def test_what_shows_of_a_unit_is_its_silhouette(perspective: bool) -> None:
    unit = samples.bookcase()
    facets = placed_facets(bodies_of(unit, {}))
    camera = three_quarter(unit.envelope) if perspective else PLAN
    seen = see(facets, camera)
    # The silhouette comes from every triangle, whichever way it faces.
    corners = camera.screen(facets.points)[:, :2][facets.triangles]
    triangles = shapely.polygons(corners)
    silhouette = shapely.union_all(triangles[shapely.area(triangles) > 1e-6])
    assert shapely.area(seen.areas).sum() == pytest.approx(silhouette.area, rel=1e-4)


@settings(max_examples=25)
@given(
    st.lists(
        st.tuples(
            st.tuples(*[st.integers(0, 2)] * 3),
            st.tuples(*[st.floats(20, 95)] * 3),
        ),
        min_size=2,
        max_size=8,
        unique_by=lambda item: item[0],
    ),
    st.floats(-70, 70),
    st.floats(5, 70),
)
def test_agrees_with_a_z_buffer(
    cells: list[tuple[tuple[int, ...], tuple[float, ...]]], turn: float, tilt: float
) -> None:
    extents = [
        (
            tuple(100.0 * c for c in cell),
            tuple(100.0 * c + s for c, s in zip(cell, size, strict=True)),
        )
        for cell, size in cells
    ]
    facets = _boxes(*extents)
    camera = three_quarter(Box((0, 0, 0), (300, 300, 300)), turn, tilt)
    seen = see(facets, camera)
    points, nearest = _z_buffer(facets, camera)
    shapely.prepare(seen.areas)
    for (x, y), facet in zip(points, nearest, strict=True):
        point = shapely.Point(x, y)
        close = shapely.distance(shapely.boundary(seen.areas), point)
        if np.nanmin(np.where(shapely.is_empty(seen.areas), np.inf, close)) < 0.5:
            continue
        holding = seen.facing[shapely.contains(seen.areas, point)]
        assert holding.tolist() == ([] if facet < 0 else [facet])


def _z_buffer(facets: Facets, camera: Camera) -> tuple[np.ndarray, np.ndarray]:
    """Points over the screen and the facet nearest at each (-1: none), from triangles alone."""
    corners = camera.screen(facets.points)[facets.triangles]
    low, high = corners.min(axis=(0, 1)), corners.max(axis=(0, 1))
    x, y = np.meshgrid(np.linspace(low[0], high[0], 17), np.linspace(low[1], high[1], 17))
    points = np.column_stack([x.ravel(), y.ravel()])
    depth = np.full(len(points), -np.inf)
    nearest = np.full(len(points), -1)
    for triangle, facet in zip(corners, facets.facet_of, strict=True):
        edges = np.column_stack(
            [triangle[1, :2] - triangle[0, :2], triangle[2, :2] - triangle[0, :2]]
        )
        if abs(np.linalg.det(edges)) < 1e-9:
            continue
        share = np.linalg.solve(edges, (points - triangle[0, :2]).T)
        inside = (share >= 0).all(axis=0) & (share.sum(axis=0) <= 1)
        here = triangle[0, 2] + share.T @ (triangle[1:, 2] - triangle[0, 2])
        closer = inside & (here > depth)
        depth[closer], nearest[closer] = here[closer], facet
    return points, nearest


def test_small_holes_are_mouths_on_their_surface() -> None:
    part = samples.worked_part()
    _, body = pictured(part.shape)
    # Three holes, one of them right through.
    assert body.mouths.sum() == 4
    seen = see(body, PLAN)
    mouths = body.mouths[seen.facing]
    assert mouths.sum() == 1
    # A regular polygon of 16 corners in a circle of 8 mm.
    assert shapely.area(seen.areas[mouths])[0] == pytest.approx(
        16 / 2 * 4.0**2 * np.sin(2 * np.pi / 16)
    )


def test_a_facet_with_openings_shows_what_is_behind_them() -> None:
    plate = trimesh.creation.extrude_polygon(
        shapely.box(0, 0, 100, 100).difference(
            shapely.union_all([shapely.box(10, 10, 40, 40), shapely.box(60, 60, 90, 90)])
        ),
        10.0,
    )
    body = facets_of(plate)
    assert np.bincount(body.ring_of).max() == 3
    seen = see(body, PLAN)
    up = body.normals[seen.facing][:, 2] > 0.5
    assert shapely.area(seen.areas[up]).sum() == pytest.approx(100 * 100 - 2 * 30 * 30)


def test_mouths_are_drawn_where_nothing_covers_them() -> None:
    part = samples.worked_part()
    _, body = pictured(part.shape)
    shown = mouth_lines(body, PLAN)
    assert len(shown) == 16
    assert np.linalg.norm(shown[:, 1] - shown[:, 0], axis=1).sum() == pytest.approx(
        16 * 8.0 * np.sin(np.pi / 16)
    )
    low, high = body.points.min(axis=0), body.points.max(axis=0)
    lid = facets_of(trimesh.creation.box(bounds=[low, high]))
    above = np.eye(4)
    above[2, 3] = 40.0
    covered = place([(body, np.eye(4)), (lid, above)])
    assert len(mouth_lines(covered, PLAN)) == 0
