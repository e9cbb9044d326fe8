"""Eased surfaces: closed, of nearly the solid's volume, their rounds where arrises are."""

from __future__ import annotations

import numpy as np
import pytest
import trimesh
from hypothesis import HealthCheck, given, reject, settings

from kit.samples import worked_part
from kit.strategies import shapes
from rodwright.photo.bodies.easing import Patch, eased
from rodwright.photo.bodies.stretches import stretches
from rodwright.solids.meshes import mesh_of
from rodwright.unit import Hole, ShapeKey, Surface

WIDTH = 0.8
BOX: ShapeKey = ((300.0, 100.0, 20.0), ())


def whole(patches: tuple[Patch, ...]) -> trimesh.Trimesh:
    starts = np.cumsum([0, *(len(each.points) for each in patches)])
    return trimesh.Trimesh(
        np.concatenate([each.points for each in patches]),
        np.concatenate(
            [each.triangles + start for each, start in zip(patches, starts, strict=False)]
        ),
        process=True,
    )


def held(shape: ShapeKey) -> None:
    patches, mesh = eased(shape, WIDTH), mesh_of(shape)
    made = whole(patches)
    assert made.is_watertight
    assert made.is_winding_consistent
    edges = np.linalg.norm(np.diff(mesh.vertices[mesh.edges_unique], axis=1), axis=2).sum()
    # A square arris loses less than the triangle between it and where its round begins.
    assert mesh.volume - WIDTH**2 / 2 * edges <= made.volume <= mesh.volume * (1 + 1e-6) + 1e-3
    assert (made.bounds[0] >= mesh.bounds[0] - 1e-6).all()
    assert (made.bounds[1] <= mesh.bounds[1] + 1e-6).all()
    for patch in patches:
        assert np.linalg.norm(patch.normals, axis=1) == pytest.approx(1.0)
        corners = patch.points[patch.triangles]
        out = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
        areas = np.linalg.norm(out, axis=1)
        with_area = areas > 1e-4
        facing = (patch.normals[patch.triangles] * out[:, None]).sum(axis=2) / areas[:, None]
        assert (facing[with_area] > 0.0).all()


@given(shapes())
@settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow])
def test_any_solid(shape: ShapeKey) -> None:
    try:
        mesh_of(shape)
    except ValueError:
        reject()  # it falls to pieces
    held(shape)


def test_a_part_with_every_working() -> None:
    held(worked_part().shape)


def test_a_box_has_its_arrises_on_rounds_that_touch_its_faces() -> None:
    made = whole(eased(BOX, WIDTH))
    # Each arris is cut by two planes: the round at 45 degrees is 0.414 of its radius deep, and the
    # area between the square corner and the two planes that of two triangles.
    size = np.array(BOX[0])
    deep = WIDTH * (1 - np.sqrt(0.5))
    lost = 4 * (size - 2 * WIDTH).sum() * WIDTH * deep
    assert 300 * 100 * 20 - made.volume == pytest.approx(lost, rel=0.02)
    middle = [
        (point, normal)
        for patch in eased(BOX, WIDTH)
        for point, normal in zip(patch.points, patch.normals, strict=True)
        if abs(point[0] - 1.5 * WIDTH) < 1e-6 and point[1] < WIDTH / 2 and point[2] > 20 - WIDTH / 2
    ]
    assert middle
    for point, normal in middle:
        assert point[1:] == pytest.approx([deep, 20 - deep])
        assert normal == pytest.approx([0.0, -np.sqrt(0.5), np.sqrt(0.5)])


def test_flat_faces_are_flat_within_their_eased_edges() -> None:
    for patch in eased(BOX, WIDTH):
        inside = (
            (patch.points > WIDTH - 1e-6) & (patch.points < np.array(BOX[0]) - WIDTH + 1e-6)
        ).sum(axis=1) == 2
        assert inside.sum() == 4 + 8  # corners, and where edges are divided
        assert patch.normals[inside] == pytest.approx(np.tile(patch.flat, (12, 1)))


def test_the_wall_of_a_hole_is_smooth() -> None:
    hole = Hole(Surface.FACE, (150.0, 50.0), 35.0, 13.0)
    (wall,) = [each for each in eased((BOX[0], (hole,)), WIDTH) if each.flat is None]
    middle = wall.points * [1, 1, 0] - [150, 50, 0]
    assert wall.normals == pytest.approx(-middle / 17.5, abs=0.02)


def test_what_is_too_thin_to_be_eased_keeps_its_edges() -> None:
    thin = ((100.0, 50.0, 0.3), ())
    held(thin)
    assert whole(eased(thin, WIDTH)).volume == pytest.approx(100 * 50 * 0.3, rel=0.02)


def test_an_edge_that_is_flush_stays_sharp_there_and_only_there() -> None:
    flush = (((100.0, 0.0, 20.0), (180.0, 0.0, 20.0)),)
    made = whole(eased(BOX, WIDTH, flush))
    assert made.is_watertight
    assert made.is_winding_consistent
    assert made.bounds == pytest.approx(np.array([[0.0, 0.0, 0.0], BOX[0]]))
    on_edge = made.vertices[(made.vertices[:, 1] < 1e-9) & (made.vertices[:, 2] > 20 - 1e-9)]
    assert on_edge[:, 0].min() == pytest.approx(100.0)
    assert on_edge[:, 0].max() == pytest.approx(180.0)
    # What the round would have taken of 80 mm, and half of it over the ends it runs out in.
    deep, more = WIDTH * (1 - np.sqrt(0.5)), made.volume - whole(eased(BOX, WIDTH)).volume
    assert 80 * WIDTH * deep < more < (80 + 4 * WIDTH) * WIDTH * deep


def test_a_whole_edge_that_is_flush_stays_sharp() -> None:
    flush = (((0.0, 0.0, 20.0), (300.0, 0.0, 20.0)),)
    more = whole(eased(BOX, WIDTH, flush)).volume - whole(eased(BOX, WIDTH)).volume
    assert more == pytest.approx(300 * WIDTH * WIDTH * (1 - np.sqrt(0.5)), rel=0.02)


def test_stretches_of_an_edge_follow_each_other_and_none_is_short() -> None:
    start, along = np.array([0.0, 5.0, 0.0]), np.array([1.0, 0.0, 0.0])

    def line(a: float, b: float, y: float = 5.0) -> list[tuple[float, float, float]]:
        return [(a, y, 0.0), (b, y, 0.0)]

    flush = np.array([line(60.0, 40.0), line(1.0, 20.0), line(70.0, 71.0), line(80.0, 90.0, 6.0)])
    made = list(stretches(start, along, 100.0, flush, 3.0))
    assert made == [
        (0.0, 20.0, True),
        (20.0, 40.0, False),
        (40.0, 60.0, True),
        (60.0, 100.0, False),
    ]
