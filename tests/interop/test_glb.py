"""GLB files held against the Khronos validator and read by pygltflib."""

from __future__ import annotations

import json
import math
import os
import shutil
import subprocess
from pathlib import Path
from typing import Any

import numpy as np
import pygltflib  # type: ignore[import-untyped]
import pytest

from kit import samples, specs
from rodwright.handover.gltf import unit_glb
from rodwright.handover.names import groups
from rodwright.jobs.new import model_names, model_path
from rodwright.mass import mass_of
from rodwright.unit import Unit

pytestmark = pytest.mark.xdist_group("glb")
"""What they share is made once."""

NODE = Path(__file__).parent / "node"
NAMES = ("sample", "worked", *model_names())


def unit_called(name: str) -> Unit:
    if name == "sample":
        return samples.bookcase()
    if name == "worked":
        part = samples.worked_part()
        return Unit("Arbeitsstück — 1/3 “grün”", part.bounds(), (part,))
    return specs.unit_from(model_path(name).read_text(encoding="utf-8"))


@pytest.fixture(scope="session")
def validator() -> Path:
    """The script that runs the Khronos validator (npm gltf-validator), fetched when missing."""
    if shutil.which("node") is None:
        assert not os.environ.get("CI"), "the glTF validator needs node"
        pytest.skip("the glTF validator needs node")
    if not (NODE / "node_modules" / "gltf-validator").is_dir():
        subprocess.run(["npm", "ci", "--no-audit", "--no-fund"], cwd=NODE, check=True)
    return NODE / "validate.mjs"


@pytest.mark.parametrize("name", NAMES)
def test_the_khronos_validator_has_nothing_to_say(
    name: str, validator: Path, tmp_path: Path
) -> None:
    path = tmp_path / "unit.glb"
    path.write_bytes(unit_glb(unit_called(name)))
    done = subprocess.run(
        ["node", str(validator), str(path)], capture_output=True, text=True, check=True
    )
    report = json.loads(done.stdout)
    assert report["issues"]["messages"] == []
    assert report["info"]["totalTriangleCount"] > 0


def test_the_validator_is_really_run(validator: Path, tmp_path: Path) -> None:
    path = tmp_path / "unit.glb"
    content = unit_glb(samples.bookcase())
    path.write_bytes(content.replace(b'"version":"2.0"', b'"version":"9.0"'))
    done = subprocess.run(
        ["node", str(validator), str(path)], capture_output=True, text=True, check=True
    )
    assert json.loads(done.stdout)["issues"]["numErrors"] > 0


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
        own = np.array(node.matrix).reshape(4, 4).T if node.matrix else np.eye(4)
        matrix = above @ own
        if node.mesh is not None:
            primitive = gltf.meshes[node.mesh].primitives[0]
            points = read(primitive.attributes.POSITION, "<f4", 3).astype(float)
            corners = read(primitive.indices, "<u4", 1).reshape(-1, 3)
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
