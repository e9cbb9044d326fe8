"""GLB (binary glTF 2.0): metres, y up, the unit's front towards +z.

glTF 2.0 specification, 3.4 (coordinate system and units) and 3.9.2 (base colours are
linear; stock colours are sRGB).
"""

from __future__ import annotations

from functools import lru_cache
from typing import Any

import numpy as np
import trimesh
from trimesh.visual.material import PBRMaterial
from trimesh.visual.texture import TextureVisuals

from rodwright.handover.names import groups, shown_name
from rodwright.pictures.colours import linear
from rodwright.solids.meshes import mesh_of
from rodwright.unit import ShapeKey, Stock, Unit

_METRES = 0.001
# Rows: where the unit frame's x, y and z go when y is up and z towards the viewer.
_Y_UP = np.array([[1.0, 0, 0, 0], [0, 0, 1.0, 0], [0, -1.0, 0, 0], [0, 0, 0, 1.0]])
_ARRAY_BUFFER, _ELEMENT_ARRAY_BUFFER = 34962, 34963  # glTF 2.0, 5.11.5 bufferView.target
_ROUGHNESS = {"sheet": 0.55, "board": 0.65}
"""Lacquered boards are a little smoother than oiled solid wood; common practice, no source."""


def unit_glb(unit: Unit) -> bytes:
    """The unit as GLB: nodes nested unit > group > part, equal pieces sharing one mesh.

    Each part's node bears its ref and name, and in its extras ref, role, stock and
    material.

    Raises:
        ValueError: a part has no single closed solid.
    """
    scene = trimesh.Scene()
    materials: dict[Stock, PBRMaterial] = {}
    geometry: dict[tuple[ShapeKey, Stock], str] = {}
    names = {"unit": unit.title}
    scene.graph.update("unit", scene.graph.base_frame)
    for group_number, (group, parts) in enumerate(groups(unit).items()):
        group_node = f"group {group_number}"
        names[group_node] = group
        scene.graph.update(group_node, "unit")
        for part in parts:
            key = (part.shape, stock := part.blank.stock)
            if key not in geometry:
                geometry[key] = f"{shown_name(part)} ({len(geometry)})"
                material = materials.setdefault(stock, PBRMaterial(name=stock.name))
                scene.geometry[geometry[key]] = _coloured(part.shape, material)
            names[part_node := f"part {part.ref}"] = shown_name(part)
            scene.graph.update(
                part_node,
                group_node,
                matrix=_Y_UP @ _metres(np.array(part.placement.matrix())),
                geometry=geometry[key],
                metadata={
                    "ref": part.ref,
                    "role": str(part.role),
                    "stock": stock.name,
                    "material": stock.material,
                },
            )

    def finish(tree: dict[str, Any]) -> None:
        tree["asset"]["generator"] = "Rodwright, trimesh"
        for node in tree["nodes"]:
            node["name"] = names[node["name"]]
        for mesh in tree["meshes"]:
            mesh.pop("extras", None)
            for primitive in mesh["primitives"]:
                _mark_views(tree, primitive)
        for stock, material in zip(materials, tree["materials"], strict=True):
            material["pbrMetallicRoughness"] = {
                "baseColorFactor": linear_colour(stock.colour),
                "metallicFactor": 0.0,
                "roughnessFactor": _ROUGHNESS[stock.kind],
            }

    exported: bytes = trimesh.exchange.gltf.export_glb(
        scene, include_normals=True, unitize_normals=True, tree_postprocessor=finish
    )
    return exported


def linear_colour(colour: str) -> list[float]:
    """A ``#rrggbb`` sRGB colour as linear red, green, blue and opacity.

    IEC 61966-2-1, the sRGB transfer function.
    """
    return [*(round(each, 6) for each in linear(colour)), 1.0]


def _mark_views(tree: dict[str, Any], primitive: dict[str, Any]) -> None:
    """Say of each buffer view whether it holds vertices or indices; hints ask for it."""

    def mark(accessor: int, target: int) -> None:
        tree["bufferViews"][tree["accessors"][accessor]["bufferView"]]["target"] = target

    for accessor in primitive["attributes"].values():
        mark(accessor, _ARRAY_BUFFER)
    mark(primitive["indices"], _ELEMENT_ARRAY_BUFFER)


def _metres(matrix: Any) -> Any:
    matrix[:3, 3] *= _METRES
    return matrix


def _coloured(shape: ShapeKey, material: PBRMaterial) -> trimesh.Trimesh:
    mesh = _flat_mesh(shape).copy(include_cache=True)
    mesh.visual = TextureVisuals(material=material)
    return mesh


@lru_cache(maxsize=4096)
def _flat_mesh(shape: ShapeKey) -> trimesh.Trimesh:
    """A shape's mesh in metres whose vertices are shared only by triangles in one plane.

    So each vertex has its plane's normal, and no shading runs over an arris.
    """
    mesh = mesh_of(shape)
    directions, plane = np.unique(np.round(mesh.face_normals, 5) + 0.0, axis=0, return_inverse=True)
    corners = np.column_stack([mesh.faces.ravel(), np.repeat(plane.ravel(), 3)])
    own, index = np.unique(corners, axis=0, return_inverse=True)
    return trimesh.Trimesh(
        vertices=mesh.vertices[own[:, 0]] * _METRES,
        faces=index.reshape(-1, 3),
        vertex_normals=directions[own[:, 1]],
        process=False,
    )
