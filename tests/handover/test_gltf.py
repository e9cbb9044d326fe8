"""GLB: what the specification asks (glTF 2.0) and what viewers need."""

from __future__ import annotations

import json
import struct
from typing import Any

import numpy as np
import pytest

from kit.samples import bookcase, worked_part
from rodwright.handover.gltf import linear_colour, unit_glb
from rodwright.unit import Unit


def document(content: bytes) -> dict[str, Any]:
    """The JSON chunk of a GLB (glTF 2.0, 4.4)."""
    length = struct.unpack_from("<I", content, 12)[0]
    parsed: dict[str, Any] = json.loads(content[20 : 20 + length])
    return parsed


def array(content: bytes, accessor: int) -> np.ndarray[Any, Any]:
    """An accessor's figures, by the layout of glTF 2.0, 3.6."""
    tree = document(content)
    access = tree["accessors"][accessor]
    view = tree["bufferViews"][access["bufferView"]]
    start = 28 + struct.unpack_from("<I", content, 12)[0] + view.get("byteOffset", 0)
    kind = {5123: "<u2", 5125: "<u4", 5126: "<f4"}[access["componentType"]]
    columns = {"SCALAR": 1, "VEC3": 3}[access["type"]]
    flat = np.frombuffer(content, kind, access["count"] * columns, start)
    return flat.reshape(-1, columns)


def test_equal_pieces_share_a_mesh() -> None:
    unit = bookcase()
    tree = document(unit_glb(unit))
    # Two sides, three shelves, a back, two stiles and two rails: of these the stiles and
    # rails are handed, and bottom, shelf and top are one shape.
    assert len(unit.parts) == 10
    assert len(tree["meshes"]) == len(unit.shapes) == 7
    used = [node["mesh"] for node in tree["nodes"] if "mesh" in node]
    assert len(used) == 10


def test_nodes_nest_as_unit_group_part() -> None:
    tree = document(unit_glb(bookcase()))
    nodes = tree["nodes"]
    (root,) = tree["scenes"][0]["nodes"]
    assert nodes[root]["name"] == "Sample bookcase"
    groups = [nodes[each] for each in nodes[root]["children"]]
    assert [group["name"] for group in groups] == ["Carcass", "Shelves", "Back", "Face frame"]
    names = [[nodes[each]["name"] for each in group["children"]] for group in groups]
    assert names[0] == ["SD1 Left side", "SD2 Right side", "BT1 Bottom", "TP1 Top"]
    assert names[1] == ["SH1 Shelf"]
    shelf = next(node for node in nodes if node["name"] == "SH1 Shelf")
    assert shelf["extras"] == {
        "ref": "SH1",
        "role": "shelf",
        "stock": "case",
        "material": "birch plywood",
    }


def test_a_group_may_have_the_units_name() -> None:
    unit = bookcase()
    tree = document(unit_glb(Unit("Carcass", unit.envelope, unit.parts)))
    assert [node["name"] for node in tree["nodes"]].count("Carcass") == 2


def test_no_normal_runs_over_an_arris() -> None:
    """Every triangle's corners have the triangle's own normal."""
    part = worked_part()
    content = unit_glb(Unit("Worked", part.bounds(), (part,)))
    primitive = document(content)["meshes"][0]["primitives"][0]
    points = array(content, primitive["attributes"]["POSITION"]).astype(float)
    normals = array(content, primitive["attributes"]["NORMAL"])
    corners = array(content, primitive["indices"]).reshape(-1, 3)
    a, b, c = (points[corners[:, i]] for i in range(3))
    own = np.cross(b - a, c - a)
    own /= np.linalg.norm(own, axis=1)[:, None]
    for i in range(3):
        assert np.min(np.sum(own * normals[corners[:, i]], axis=1)) > 0.9999
    assert np.linalg.norm(normals, axis=1) == pytest.approx(1, abs=1e-5)


def test_vertices_in_one_plane_are_shared() -> None:
    """A plain box has 24 vertices: 4 on each of its 6 sides."""
    shelf = bookcase().part("SH1")
    content = unit_glb(Unit("Shelf", shelf.bounds(), (shelf,)))
    primitive = document(content)["meshes"][0]["primitives"][0]
    assert len(array(content, primitive["attributes"]["POSITION"])) == 24
    assert len(array(content, primitive["indices"])) == 36


def test_colours_are_linear() -> None:
    # IEC 61966-2-1: 0.5 in sRGB is 0.21404 linear; 188/255 is 0.50289.
    assert linear_colour("#80bc00") == pytest.approx([0.215861, 0.502886, 0.0, 1.0], abs=1e-6)
    assert linear_colour("#ffffff") == [1.0, 1.0, 1.0, 1.0]


def test_each_stock_is_a_material_without_metal() -> None:
    materials = document(unit_glb(bookcase()))["materials"]
    assert [material["name"] for material in materials] == ["case", "back", "ash"]
    for material in materials:
        surface = material["pbrMetallicRoughness"]
        assert surface["metallicFactor"] == 0
        assert 0.4 <= surface["roughnessFactor"] <= 0.9  # common practice, no source
    case = materials[0]["pbrMetallicRoughness"]["baseColorFactor"]
    assert case == linear_colour("#e3c99a")


def test_the_same_unit_gives_the_same_bytes() -> None:
    assert unit_glb(bookcase()) == unit_glb(bookcase())
