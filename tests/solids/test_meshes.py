"""Meshes: closed, turned outwards, and on the solids they stand for."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import trimesh
from cadquery import Vertex
from hypothesis import given, settings

from kit.samples import bookcase, worked_part
from kit.strategies import placements, shapes
from rodwright.solids import location_of, solid_of
from rodwright.solids.meshes import LINEAR_TOLERANCE, mesh_of, placed_mesh
from rodwright.unit import Notch, Part, Placement, ShapeKey

PARTS = [*bookcase().parts, worked_part()]


def _assert_sound(mesh: trimesh.Trimesh) -> None:
    assert mesh.is_watertight
    assert mesh.is_winding_consistent
    assert mesh.volume > 0
    assert mesh.body_count == 1


@pytest.mark.parametrize("part", PARTS, ids=lambda part: part.ref)
def test_sample_meshes_are_sound(part: Part) -> None:
    _assert_sound(mesh_of(part.shape))
    _assert_sound(placed_mesh(part))


@settings(max_examples=60)
@given(shapes())
def test_random_meshes_are_sound_and_inside_their_blanks(shape: ShapeKey) -> None:
    mesh = mesh_of(shape)
    _assert_sound(mesh)
    assert np.all(mesh.bounds[0] > -1e-6)
    assert np.all(mesh.bounds[1] < np.array(shape[0]) + 1e-6)


@pytest.mark.parametrize("part", PARTS, ids=lambda part: part.ref)
def test_vertices_lie_on_the_solid(part: Part) -> None:
    (shell,) = solid_of(part.shape).Shells()
    for vertex in mesh_of(part.shape).vertices:
        assert shell.distance(Vertex.makeVertex(*vertex)) < 1e-6


@pytest.mark.parametrize("ref", ["X1", "ST1"])
def test_facets_stand_off_no_further_than_the_tolerance(ref: str) -> None:
    (part,) = (part for part in PARTS if part.ref == ref)
    (shell,) = solid_of(part.shape).Shells()
    away = [
        shell.distance(Vertex.makeVertex(*middle))
        for middle in mesh_of(part.shape).triangles_center
    ]
    assert 0 < max(away) <= LINEAR_TOLERANCE


@pytest.mark.parametrize("part", bookcase().parts, ids=lambda part: part.ref)
def test_a_placed_mesh_fills_the_parts_bounds(part: Part) -> None:
    """Housings, mitres and easings leave every side of these blanks some wood."""
    bounds = part.bounds()
    np.testing.assert_allclose(placed_mesh(part).bounds, [bounds.low, bounds.high], atol=1e-6)


@settings(max_examples=30)
@given(placements())
def test_a_placed_mesh_is_where_the_placed_solid_is(placement: Placement) -> None:
    part = replace(worked_part(), placement=placement)
    mesh, solid = placed_mesh(part), solid_of(part.shape).moved(location_of(part))
    assert mesh.volume == pytest.approx(mesh_of(part.shape).volume, rel=1e-9)
    assert mesh.center_mass == pytest.approx(np.array(solid.Center().toTuple()), abs=0.05)
    for vertex in solid.Vertices():
        nearest = np.linalg.norm(mesh.vertices - vertex.toTuple(), axis=1).min()
        assert nearest < 1e-6


def test_equal_shapes_give_one_mesh_and_placing_leaves_it_alone() -> None:
    first, second = bookcase().part("SD1"), bookcase().part("SD2")
    mesh = mesh_of(first.shape)
    assert mesh is mesh_of(second.shape)
    before = mesh.vertices.copy()
    placed_mesh(first).apply_translation([1000.0, 0.0, 0.0])
    placed_mesh(second)
    assert np.array_equal(mesh_of(first.shape).vertices, before)


def test_a_part_in_pieces_has_no_mesh() -> None:
    with pytest.raises(ValueError, match="2 pieces"):
        mesh_of(((400.0, 120.0, 20.0), (Notch(190.0, 0.0, 10.0, 120.0),)))
