"""What is drawn of a part is what its solid is: held to Open CASCADE's and to arithmetic."""

from __future__ import annotations

import base64
import math
from pathlib import Path

import manifold3d
import numpy as np
import pytest
from hypothesis import assume, given, settings
from numpy.typing import NDArray

import rodwright
from kit.strategies import shapes
from rodwright.mass import mass_of
from rodwright.page.carving import Carved, carved
from rodwright.page.shapes import shape_of
from rodwright.setout import set_out
from rodwright.solids.meshes import LINEAR_TOLERANCE, mesh_of
from rodwright.unit import Easing, Hole, Housing, Mitre, Notch, ShapeKey, Surface

MODELS = sorted((Path(__file__).parents[2] / "models").glob("*.yaml"))
OFF_ROUND = 0.05 + LINEAR_TOLERANCE
"""How far (mm) both kinds of facets may stand off a round, together."""


def _manifold(points: NDArray[np.float64], triangles: NDArray[np.int64]) -> manifold3d.Manifold:
    body = manifold3d.Manifold(
        manifold3d.Mesh64(
            np.array(points, dtype=np.float64),
            np.array(triangles, dtype=np.uint64),
        )
    )
    assert body.status() == manifold3d.Error.NoError
    return body


def _areas(body: Carved) -> NDArray[np.float64]:
    a, b, c = np.moveaxis(body.points[body.triangles], 1, 0)
    return np.asarray(np.linalg.norm(np.cross(b - a, c - a), axis=1) / 2)


def _assert_same(shape: ShapeKey) -> None:
    body, solid = carved(shape), mesh_of(shape)
    ours = _manifold(body.points, body.triangles)
    kernels = _manifold(np.asarray(solid.vertices), np.asarray(solid.faces))
    differing = (ours - kernels).volume() + (kernels - ours).volume()
    rounds = float(_areas(body)[body.round_of >= 0].sum())
    assert differing <= OFF_ROUND * rounds + 1e-7 * solid.volume


@settings(max_examples=60)
@given(shapes())
def test_random_shapes_are_what_open_cascade_makes_of_them(shape: ShapeKey) -> None:
    try:
        mesh_of(shape)
    except ValueError as error:
        assume("closed" not in str(error))  # the kernel has the solid, but no mesh of it
        with pytest.raises(ValueError, match=r"leave|blank"):
            carved(shape)
        return
    _assert_same(shape)


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_models_parts_have_the_volume_of_their_arithmetic(path: Path) -> None:
    for shape in {part.shape for part in set_out(rodwright.read_spec(path)).parts}:
        body = carved(shape)
        volume = _manifold(body.points, body.triangles).volume()
        rounds = float(_areas(body)[body.round_of >= 0].sum())
        assert abs(volume - mass_of(shape).volume) <= 0.05 * rounds + 1e-9 * volume


def test_what_falls_in_two_is_refused() -> None:
    cut_through = Notch(100.0, 0.0, 20.0, 80.0)
    with pytest.raises(ValueError, match="leave 2 pieces"):
        carved(((300.0, 80.0, 18.0), (cut_through,)))
    with pytest.raises(ValueError, match="leave nothing"):
        carved(((300.0, 80.0, 18.0), (Notch(0.0, 0.0, 300.0, 80.0),)))


def _lines(shape: ShapeKey) -> NDArray[np.float32]:
    _, drawn = shape_of(shape)
    return np.frombuffer(base64.b64decode(drawn.edges), dtype="<f4").reshape(-1, 2, 3)


def _total(lines: NDArray[np.float32]) -> float:
    return float(np.linalg.norm(lines[:, 1] - lines[:, 0], axis=1).sum())


BLANK = (300.0, 80.0, 18.0)
OUTLINE = 4 * (300.0 + 80.0 + 18.0)


def test_a_blank_is_drawn_by_its_twelve_edges() -> None:
    assert len(_lines((BLANK, ()))) == 12
    assert _total(_lines((BLANK, ()))) == pytest.approx(OUTLINE)


def test_of_a_hole_its_mouths_are_drawn_and_no_line_along_it() -> None:
    lines = _lines((BLANK, (Hole(Surface.FACE, (100.0, 40.0), 8.0, None),)))
    assert _total(lines) == pytest.approx(OUTLINE + 2 * math.pi * 8.0, rel=2e-3)
    upright = np.abs(lines[:, 0, 2] - lines[:, 1, 2]) > 1.0
    assert upright.sum() == 4


def test_an_eased_arris_is_drawn_by_one_line_along_its_middle() -> None:
    lines = _lines((BLANK, (Easing(Surface.FACE, Surface.FACE_EDGE, 4.0),)))
    long = lines[np.abs(lines[:, 0, 0] - lines[:, 1, 0]) > 1.0]
    assert _total(long) == pytest.approx(4 * 300.0)
    (middle,) = (line for line in long if 0.1 < line[0][1] < 4.0 or 76.0 < line[0][1] < 79.9)
    inward = 4.0 * (1 - math.sqrt(0.5))
    assert middle[0][2] == pytest.approx(18.0 - inward, abs=1e-4)


@pytest.mark.parametrize(
    "working",
    [
        Hole(Surface.FACE, (100.0, 40.0), 35.0, 12.0),
        Easing(Surface.FACE, Surface.FACE_EDGE, 6.0),
        Housing(Surface.FACE, 40.0, 18.0, 6.0),
        Mitre(Surface.NEAR_END, 45.0, Surface.FACE_EDGE),
    ],
    ids=lambda each: each.word,
)
def test_normals_are_of_length_one_and_turned_out_of_the_wood(working: object) -> None:
    _, drawn = shape_of((BLANK, (working,)))  # type: ignore[arg-type]
    points, normals = (
        np.frombuffer(base64.b64decode(each), dtype="<f4").reshape(-1, 3)
        for each in (drawn.points, drawn.normals)
    )
    triangles = np.frombuffer(base64.b64decode(drawn.triangles), dtype="<u4").reshape(-1, 3)
    assert np.allclose(np.linalg.norm(normals, axis=1), 1.0, atol=1e-3)
    a, b, c = np.moveaxis(points[triangles], 1, 0)
    flat = np.cross(b - a, c - a)
    assert ((normals[triangles] * flat[:, None]).sum(axis=2) > 0).all()


def test_equal_shapes_have_one_name_and_others_another() -> None:
    hole = Hole(Surface.FACE, (100.0, 40.0), 8.0, None)
    moved = Hole(Surface.FACE, (100.1, 40.0), 8.0, None)
    assert shape_of((BLANK, (hole,)))[0] == shape_of((BLANK, (hole,)))[0]
    assert shape_of((BLANK, (hole,)))[0] != shape_of((BLANK, (moved,)))[0]
