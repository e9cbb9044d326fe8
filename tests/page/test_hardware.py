"""Bought-in pieces as they are drawn, against arithmetic of boxes and cylinders, and trimesh."""

from __future__ import annotations

import base64
import math

import numpy as np
import pytest
import trimesh

from rodwright.page.document import Shape
from rodwright.page.hardware import hardware_shape
from rodwright.unit import Block, Knob, Rod


def _mesh(shape: Shape) -> trimesh.Trimesh:
    points, normals = (
        np.frombuffer(base64.b64decode(each), "<f4").reshape(-1, 3)
        for each in (shape.points, shape.normals)
    )
    triangles = np.frombuffer(base64.b64decode(shape.triangles), "<u4").reshape(-1, 3)
    assert points.shape == normals.shape
    assert np.allclose(np.linalg.norm(normals, axis=1), 1, atol=1e-5)
    mesh = trimesh.Trimesh(points, triangles, process=False)
    # Each corner's normal looks out of the triangles that it belongs to.
    for corner in range(3):
        towards = np.einsum("ij,ij->i", mesh.face_normals, normals[triangles[:, corner]])
        assert (towards > 0.5).all()
    mesh.merge_vertices(merge_norm=True)
    assert mesh.is_watertight
    return mesh


def test_a_block_has_its_volume() -> None:
    _, shape = hardware_shape((Block((1.0, 2.0, 3.0), (4.0, 6.0, 8.0)),))
    mesh = _mesh(shape)
    assert mesh.volume == pytest.approx(3 * 4 * 5, rel=1e-5)
    assert mesh.bounds.tolist() == [[1, 2, 3], [4, 6, 8]]


@pytest.mark.parametrize("end", [(40.0, 0.0, 0.0), (0.0, -40.0, 0.0), (24.0, 0.0, 32.0)])
def test_a_bar_has_the_volume_of_a_prism_of_its_flats(end: tuple[float, float, float]) -> None:
    _, shape = hardware_shape((Rod((0.0, 0.0, 0.0), end, 12.0),))
    flats = 20
    area = flats / 2 * 36 * math.sin(2 * math.pi / flats)
    assert _mesh(shape).volume == pytest.approx(area * 40, rel=1e-4)


def test_a_knob_stands_out_from_where_it_is_fixed() -> None:
    _, shape = hardware_shape((Knob((5.0, 0.0, 7.0), (5.0, -30.0, 7.0), 30.0, 12.0),))
    mesh = _mesh(shape)
    low, high = mesh.bounds
    assert (low[1], high[1]) == pytest.approx((-30, 0), abs=1e-4)
    assert high[0] - low[0] == pytest.approx(30, abs=0.5)
    assert len(mesh.faces) < 700


def test_pieces_on_one_part_are_drawn_as_one() -> None:
    one, other = Block((0.0, 0.0, 0.0), (1.0, 1.0, 1.0)), Block((5.0, 0.0, 0.0), (7.0, 1.0, 1.0))
    _, both = hardware_shape((one, other))
    assert _mesh(both).volume == pytest.approx(3, rel=1e-5)
    assert hardware_shape((one,))[0] != hardware_shape((other,))[0]
