"""STL, read back by trimesh and numpy-stl."""

from __future__ import annotations

import io
import math

import numpy as np
import pytest
import trimesh
from hypothesis import given
from stl.mesh import Mesh

from kit.samples import bookcase, worked_part
from kit.specs import unit_from
from kit.strategies import shapes
from rodwright.handover.stl import part_stl, titled, unit_normals, unit_stl
from rodwright.jobs.new import model_names, model_path
from rodwright.mass import mass_of
from rodwright.setout import set_out_unit
from rodwright.unit import Notch, Part, ShapeKey, Unit
from rodwright.wishes import read_spec


def volume_and_centre(content: bytes) -> tuple[float, list[float]]:
    """By numpy-stl, which sums signed tetrahedra over the triangles as they are."""
    mesh = Mesh.from_file("unit.stl", fh=io.BytesIO(content))
    volume, centre, _ = mesh.get_mass_properties()
    return float(volume), centre.tolist()


def read(content: bytes) -> trimesh.Trimesh:
    mesh = trimesh.load_mesh(io.BytesIO(content), file_type="stl")
    assert isinstance(mesh, trimesh.Trimesh)
    return mesh


@pytest.mark.parametrize("part", [*bookcase().parts, worked_part()], ids=lambda part: part.ref)
def test_a_part_is_watertight_and_has_the_arithmetic_volume_and_centre(part: Part) -> None:
    content = part_stl(part.shape)
    mesh = read(content)
    assert mesh.is_watertight
    assert mesh.is_winding_consistent
    # Facets stand up to 0.02 mm off a curve: 1 mm2 or less over the section of an easing.
    mass = mass_of(part.shape)
    volume, centre = volume_and_centre(content)
    assert math.isclose(volume, mass.volume, rel_tol=5e-5)
    assert centre == pytest.approx(mass.centroid, abs=0.02)
    assert np.all(mesh.bounds[0] >= -1e-3)
    assert np.all(mesh.bounds[1] <= np.array(part.blank.size) + 1e-3)


def whole_units() -> list[Unit]:
    return [
        bookcase(),
        *(set_out_unit(read_spec(model_path(name)).spec) for name in model_names()),
        unit_from(
            "size: {width: 1001.3, height: 2003.7, depth: 331.1}\n"
            "interior: {columns: [{width: 1 share, shelves: {count: 7}}, {width: 2 share,"
            " rows: [{height: 1 share, shelves: {count: 2, fixed: false}}, {height: 400}]}]}\n"
            "back: {stock: thin, fixing: grooved, inset: 9}\n"
            "face_frame: {stock: ash, width: 41.7, thickness: 21.3, corners: mitred, eased: 3}\n"
        ),
    ]


@pytest.mark.parametrize("unit", whole_units(), ids=lambda unit: unit.title)
def test_the_whole_unit_is_watertight_and_has_the_arithmetic_volume_and_centre(unit: Unit) -> None:
    content = unit_stl(unit)
    mesh = read(content)
    assert mesh.is_watertight
    assert mesh.is_winding_consistent
    volumes = np.array([mass_of(part.shape).volume for part in unit.parts])
    centres = [part.placement.to_unit(mass_of(part.shape).centroid) for part in unit.parts]
    volume, centre = volume_and_centre(content)
    # Corners lie on a grid of a thousandth of a mm: half of that on 6 mm is 8e-5.
    assert math.isclose(volume, volumes.sum(), rel_tol=1e-4)
    np.testing.assert_allclose(centre, volumes @ centres / volumes.sum(), atol=0.05)
    low = (*unit.envelope.low[:2], min(part.bounds().low[2] for part in unit.parts))
    np.testing.assert_allclose(mesh.bounds, [low, unit.envelope.high], atol=2e-3)


def normals_and_corners(content: bytes) -> tuple[np.ndarray, np.ndarray]:
    """By the layout of a binary STL alone: 80 + 4 bytes, then 12 floats and 2 bytes a triangle."""
    layout = np.dtype([("normal", "<f4", 3), ("corners", "<f4", (3, 3)), ("colour", "<u2")])
    triangles = np.frombuffer(content, dtype=layout, offset=84)
    assert len(triangles) == int.from_bytes(content[80:84], "little")
    return triangles["normal"].astype(float), triangles["corners"].astype(float)


def check_normals(content: bytes) -> None:
    """Every normal is a unit vector and is its triangle's, by the right-hand rule."""
    normals, corners = normals_and_corners(content)
    np.testing.assert_allclose(np.linalg.norm(normals, axis=1), 1.0, atol=1e-6)
    expected = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    area = np.linalg.norm(expected, axis=1)
    wide = area > 0.0  # single precision may bring the corners of a sliver into one line
    np.testing.assert_allclose(normals[wide], expected[wide] / area[wide, None], atol=1e-6)


@pytest.mark.parametrize("part", [*bookcase().parts, worked_part()], ids=lambda part: part.ref)
def test_a_parts_normals_are_unit_vectors_that_agree_with_their_triangles(part: Part) -> None:
    check_normals(part_stl(part.shape))


@pytest.mark.parametrize("unit", whole_units(), ids=lambda unit: unit.title)
def test_a_units_normals_are_unit_vectors_that_agree_with_their_triangles(unit: Unit) -> None:
    check_normals(unit_stl(unit))


@given(shapes(most=3))
def test_the_normals_of_any_part_are_unit_vectors(shape: ShapeKey) -> None:
    check_normals(part_stl(shape))


def test_a_triangle_without_area_has_a_unit_normal_too() -> None:
    line = [[0.0, 0.0, 0.0], [10.0, 0.0, 0.0], [4.0, 0.0, 0.0]]
    point = [[1.0, 2.0, 3.0]] * 3
    normals = unit_normals(np.array([line, point]))
    np.testing.assert_allclose(np.linalg.norm(normals, axis=1), 1.0)
    assert normals[0] @ [1.0, 0.0, 0.0] == 0.0


def test_the_file_is_binary_and_dateless() -> None:
    content = part_stl(bookcase().parts[0].shape)
    assert content[:80] == b"Rodwright; millimetres".ljust(80)
    triangles = int.from_bytes(content[80:84], "little")
    assert len(content) == 84 + 50 * triangles  # the layout of a binary STL


def test_a_title_goes_into_the_header_as_far_as_there_is_room() -> None:
    content = part_stl(bookcase().parts[0].shape)
    named = titled(content, "SD1 Étagère, 2 off")
    assert named[:80] == b"Rodwright; millimetres; SD1 Etagere, 2 off".ljust(80)
    assert named[80:] == content[80:]
    longest = titled(content, "x" * 300)
    assert len(longest) == len(content)
    # A binary file mustn't begin as a text one does, nor hold line breaks that look like one.
    assert not longest.startswith(b"solid")


def test_normals_point_outwards() -> None:
    mesh = Mesh.from_file("unit.stl", fh=io.BytesIO(part_stl(bookcase().part("SH1").shape)))
    outwards = mesh.centroids - np.mean(mesh.centroids, axis=0)
    assert np.all(np.sum(mesh.normals * outwards, axis=1) > 0)


def test_a_part_in_pieces_has_no_file() -> None:
    shelf = bookcase().part("SH1")
    through = (shelf.blank.size, (Notch(100.0, 0.0, 20.0, shelf.blank.width),))
    with pytest.raises(ValueError, match="2 pieces"):
        part_stl(through)
