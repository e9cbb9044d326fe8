"""GLB files held against the Khronos validator and read by pygltflib."""

from __future__ import annotations

import json
import math
import shutil
import subprocess
from functools import lru_cache
from pathlib import Path
from typing import Any

import numpy as np
import pygltflib  # type: ignore[import-untyped]
import pytest
from scipy.spatial.transform import Rotation

from kit import samples, specs
from kit.needed import need
from rodwright.handover.gltf import unit_glb
from rodwright.handover.names import groups
from rodwright.jobs.new import model_names, model_path
from rodwright.mass import mass_of
from rodwright.page.placing import dresses, wares
from rodwright.page.tiles import LONG, WIDE, textures_of
from rodwright.pictures.opened import opened
from rodwright.unit import Unit

pytestmark = pytest.mark.xdist_group("glb")
"""What they share is made once."""

SCRIPT = Path(__file__).parent / "validate_gltf.mjs"
VALIDATOR = Path(__file__).parents[2] / "generator/viewer/node_modules/gltf-validator"
NAMES = ("sample", "worked", *model_names())


def unit_called(name: str) -> Unit:
    if name == "sample":
        return samples.bookcase()
    if name == "worked":
        part = samples.worked_part()
        return Unit("Arbeitsstück — 1/3 “grün”", part.bounds(), (part,))
    return specs.unit_from(model_path(name).read_text(encoding="utf-8"))


def reported(content: bytes, path: Path) -> dict[str, Any]:
    """What the Khronos validator (npm gltf-validator) says of a file."""
    there = shutil.which("node") and VALIDATOR.is_dir()
    need(there, "Node.js and gltf-validator: npm ci in generator/viewer")
    path.write_bytes(content)
    done = subprocess.run(["node", str(SCRIPT), str(path)], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    report: dict[str, Any] = json.loads(done.stdout)
    return report


@pytest.mark.parametrize("name", NAMES)
def test_the_khronos_validator_has_nothing_to_say(name: str, tmp_path: Path) -> None:
    unit = unit_called(name)
    report = reported(unit_glb(unit), tmp_path / "unit.glb")
    assert report["issues"]["messages"] == []
    assert report["info"]["totalTriangleCount"] > 0
    assert report["info"]["animationCount"] == (1 if unit.motions else 0)


@lru_cache(maxsize=1)
def dressed(name: str) -> tuple[Unit, bytes]:
    """A ready model and its file with woods and hardware."""
    unit = unit_called(name)
    return unit, unit_glb(unit, dresses(unit), wares(unit))


@pytest.mark.parametrize("name", model_names())
def test_nor_of_woods_and_hardware(name: str, tmp_path: Path) -> None:
    unit, content = dressed(name)
    report = reported(content, tmp_path / "unit.glb")
    assert report["issues"]["messages"] == []
    assert report["info"]["hasTextures"] == bool(textures_of(unit))
    assert report["info"]["animationCount"] == (1 if unit.motions else 0)
    pictures = [each for each in report["info"]["resources"] if "image" in each]
    # Powers of two, as the specification's implementation note on repeated pictures (3.8.4.5) asks.
    assert {each["image"]["width"] for each in pictures} <= {512, 1024}
    assert {each["image"]["height"] for each in pictures} <= {64, 512}
    assert len(content) < 5_000_000 * max(1.0, len(unit.parts) / 60)


def test_a_metre_of_wood_shows_a_metre_of_its_picture() -> None:
    """Places in a picture run as far as the part, by the size that the picture shows."""
    unit, content = dressed("record-cabinet")
    gltf = pygltflib.GLTF2().load_from_bytes(content)
    part = unit.part("SD1")
    found = places_of(gltf, f"{part.ref} {part.name}", part.blank.stock.material)
    length, width, _ = part.blank.size
    expected = [(length / LONG, width / WIDE), (length / LONG, 1.0), (width / WIDE, 1.0)]
    assert sorted(found) == [pytest.approx(each, abs=1e-4) for each in sorted(expected)]


def places_of(gltf: pygltflib.GLTF2, node: str, material: str) -> list[tuple[float, ...]]:
    """How much of each picture of a material a node shows, to the right and up."""
    (index,) = [each.mesh for each in gltf.nodes if each.name == node]
    found = []
    for primitive in gltf.meshes[index].primitives:
        if gltf.materials[primitive.material].name.startswith(material):
            access = gltf.accessors[primitive.attributes.TEXCOORD_0]
            start = gltf.bufferViews[access.bufferView].byteOffset
            data = np.frombuffer(gltf.binary_blob(), "<f4", access.count * 2, start)
            found.append(tuple(np.ptp(data.reshape(-1, 2), axis=0).tolist()))
    return found


def stands(gltf: pygltflib.GLTF2, at: float | None = None) -> dict[str, np.ndarray[Any, Any]]:
    """Where each part stands, by its ref; ``at`` so many seconds of the animation."""
    poses: dict[int, tuple[str, np.ndarray[Any, Any]]] = {}
    if at is not None:
        (clip,) = gltf.animations
        for channel in clip.channels:
            sampler = clip.samplers[channel.sampler]
            assert sampler.interpolation in (None, "LINEAR")
            times = values(gltf, sampler.input)[:, 0]
            output = values(gltf, sampler.output)
            assert times[0] == 0
            pose = np.array([np.interp(at, times, column) for column in output.T])
            poses[channel.target.node] = (channel.target.path, pose)
    found: dict[str, np.ndarray[Any, Any]] = {}

    def visit(index: int, above: np.ndarray[Any, Any]) -> None:
        node = gltf.nodes[index]
        matrix = above @ local(node, *poses.get(index, ("", np.zeros(0))))
        if node.extras and "ref" in node.extras:
            found[node.extras["ref"]] = matrix
        for child in node.children or []:
            visit(child, matrix)

    visit(gltf.scenes[0].nodes[0], np.eye(4))
    return found


def values(gltf: pygltflib.GLTF2, accessor: int) -> np.ndarray[Any, Any]:
    access = gltf.accessors[accessor]
    columns = {"SCALAR": 1, "VEC3": 3, "VEC4": 4}[access.type]
    start = gltf.bufferViews[access.bufferView].byteOffset
    flat = np.frombuffer(gltf.binary_blob(), "<f4", access.count * columns, start)
    return flat.reshape(-1, columns).astype(float)


def local(node: pygltflib.Node, path: str, pose: np.ndarray[Any, Any]) -> np.ndarray[Any, Any]:
    """A node's own transform (glTF 2.0, 3.5.3: translation after rotation), moved if need be."""
    if node.matrix:
        return np.array(node.matrix).reshape(4, 4).T
    matrix = np.eye(4)
    matrix[:3, 3] = pose if path == "translation" else node.translation or (0, 0, 0)
    if path == "rotation":
        matrix[:3, :3] = Rotation.from_quat(pose).as_matrix()
    return matrix


OPENS = [name for name in model_names() if unit_called(name).motions]


@pytest.mark.parametrize("name", OPENS)
def test_doors_and_drawers_open_as_far_as_pictures_have_them_and_shut_again(name: str) -> None:
    unit = unit_called(name)
    gltf = pygltflib.GLTF2().load_from_bytes(unit_glb(unit))
    (clip,) = gltf.animations
    times = values(gltf, clip.samplers[0].input)[:, 0]
    ends = [values(gltf, each.input)[-1, 0] for each in clip.samplers]
    assert len(set(ends)) == 1  # or a viewer would let what ends sooner stand
    # All stand open in the middle of the time that isn't the last second, when all are shut.
    whole, middle = opened(unit), (times[-1] - 1.0) / 2
    for moved, at in ((unit, None), (unit, 0.0), (whole, middle), (unit, times[-1])):
        for ref, matrix in stands(gltf, at).items():
            # Right stays +x, up becomes +y, and the front (-y) becomes +z; metres.
            (x, y, z), u = moved.part(ref).placement.origin, moved.part(ref).placement.length
            assert matrix[:3, 3] == pytest.approx([x / 1000, z / 1000, -y / 1000], abs=2e-6)
            assert matrix[:3, 0] == pytest.approx([u[0], u[2], -u[1]], abs=1e-6)


def test_the_validator_is_really_run(tmp_path: Path) -> None:
    content = unit_glb(samples.bookcase())
    other = content.replace(b'"version":"2.0"', b'"version":"9.0"')
    assert reported(other, tmp_path / "unit.glb")["issues"]["numErrors"] > 0


def placed(gltf: pygltflib.GLTF2) -> dict[str, np.ndarray[Any, Any]]:
    """Triangles of every node with a mesh, in the scene's frame (metres), by node name."""
    blob = gltf.binary_blob()
    found: dict[str, np.ndarray[Any, Any]] = {}

    def read(accessor: int, kind: str, columns: int) -> np.ndarray[Any, Any]:
        access = gltf.accessors[accessor]
        view = gltf.bufferViews[access.bufferView]
        start = (view.byteOffset or 0) + (access.byteOffset or 0)
        return np.frombuffer(blob, kind, access.count * columns, start).reshape(-1, columns)

    def visit(index: int, above: np.ndarray[Any, Any]) -> None:
        node = gltf.nodes[index]
        matrix = above @ local(node, "", np.zeros(0))
        if node.mesh is not None:
            primitive = gltf.meshes[node.mesh].primitives[0]
            points = read(primitive.attributes.POSITION, "<f4", 3).astype(float)
            whole = {5123: "<u2", 5125: "<u4"}[gltf.accessors[primitive.indices].componentType]
            corners = read(primitive.indices, whole, 1).reshape(-1, 3)
            found[node.name] = (points @ matrix[:3, :3].T + matrix[:3, 3])[corners]
        for child in node.children or []:
            visit(child, matrix)

    for root in gltf.scenes[gltf.scene].nodes:
        visit(root, np.eye(4))
    return found


@pytest.mark.parametrize("name", NAMES)
def test_every_part_stands_in_its_place_in_metres_with_y_up(name: str, tmp_path: Path) -> None:
    unit = unit_called(name)
    path = tmp_path / "unit.glb"
    path.write_bytes(unit_glb(unit))
    gltf = pygltflib.GLTF2().load(str(path))
    assert gltf is not None
    found = placed(gltf)
    assert list(found) == [
        f"{part.ref} {part.name}" for parts in groups(unit).values() for part in parts
    ]
    for part in unit.parts:
        triangles = found[f"{part.ref} {part.name}"]
        low, high = triangles.min(axis=(0, 1)), triangles.max(axis=(0, 1))
        box = part.bounds()
        # Right stays +x, up becomes +y, and the front (-y) becomes +z.
        assert low == pytest.approx(
            [box.low[0] / 1000, box.low[2] / 1000, -box.high[1] / 1000], abs=2e-6
        )
        assert high == pytest.approx(
            [box.high[0] / 1000, box.high[2] / 1000, -box.low[1] / 1000], abs=2e-6
        )
        a, b, c = (triangles[:, i] for i in range(3))
        volume = float(np.sum(a * np.cross(b, c))) / 6 * 1e9  # divergence theorem, mm3
        assert math.isclose(volume, mass_of(part.shape).volume, rel_tol=1e-4)
