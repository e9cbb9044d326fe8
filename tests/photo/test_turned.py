"""Bodies of revolution against the arithmetic of prisms and frusta, and trimesh."""

from __future__ import annotations

import math
from typing import Literal

import numpy as np
import pytest
import trimesh

from rodwright.photo.scene import Surface
from rodwright.photo.turned import turned, turned_along, turned_body
from rodwright.pictures.triangles import Mesh

BAR = [(0.0, 0.0), (6.0, 0.0), (6.0, 40.0), (0.0, 40.0)]
CONE = [(0.0, 0.0), (9.0, 0.0), (0.0, 12.0)]


def _solid(mesh: Mesh) -> trimesh.Trimesh:
    assert np.linalg.norm(mesh.normals, axis=1) == pytest.approx(1.0)
    made = trimesh.Trimesh(np.round(mesh.points, 9), mesh.triangles, process=False)
    towards = mesh.normals[mesh.triangles] * made.face_normals[:, None]
    assert (towards.sum(axis=2) > 0.5).all()
    assert (made.area_faces > 0).all()
    made.merge_vertices(merge_norm=True)
    assert made.is_watertight
    return made


@pytest.mark.parametrize("sides", [12, 40])
def test_what_is_turned_has_the_volume_of_its_flats(sides: int) -> None:
    flat = sides / 2 * math.sin(2 * math.pi / sides)
    assert _solid(turned(BAR, sides)).volume == pytest.approx(flat * 6**2 * 40)
    assert _solid(turned(CONE, sides)).volume == pytest.approx(flat * 9**2 * 12 / 3)


def test_edges_are_sharp_and_curves_round() -> None:
    square = turned(BAR, 12)
    assert {round(abs(up), 9) for up in square.normals[:, 2].tolist()} == {0.0, 1.0}
    bent = turned([(6.0, 0.0), (6.0, 10.0), (8.0, 20.0)], 12)
    middle = bent.normals[bent.points[:, 2] == 10.0]
    assert middle == pytest.approx(np.tile(middle[:12], (2, 1)))


@pytest.mark.parametrize("end", [(1.0, 2.0, 43.0), (-39.0, 2.0, 3.0), (25.0, -30.0, 3.0)])
def test_it_reaches_from_its_foot_towards_its_end(end: tuple[float, float, float]) -> None:
    start = (1.0, 2.0, 3.0)
    made = _solid(turned_along(CONE, start, end, 20))
    way = np.subtract(end, start) / math.dist(start, end)
    up = (made.vertices - start) @ way
    assert (up.min(), up.max()) == pytest.approx((0.0, 12.0), abs=1e-6)
    assert made.vertices[up.argmax()] == pytest.approx(np.array(start) + 12 * way)


@pytest.mark.parametrize("axis", [0, 1, 2])
def test_a_body_stands_on_its_foot_along_its_axis(axis: Literal[0, 1, 2]) -> None:
    foot = np.array([10.0, 20.0, 30.0])
    body = turned_body("pipe", BAR, (10.0, 20.0, 30.0), Surface((0.5, 0.5, 0.5)), axis=axis)
    low, high = body.points.min(axis=0), body.points.max(axis=0)
    along = np.eye(3)[axis]
    assert low == pytest.approx(foot - 6 * (1 - along), abs=0.1)
    assert high == pytest.approx(foot + 40 * along + 6 * (1 - along), abs=0.1)
