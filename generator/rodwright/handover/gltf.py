"""GLB (binary glTF 2.0): metres, y up, the unit's front towards +z.

glTF 2.0 specification, 3.4 (coordinate system and units) and 3.9.2 (base colours are linear, those
of pictures sRGB; stock colours are sRGB).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import lru_cache
from typing import Any

import numpy as np

from rodwright.handover.clips import OPENING, Move, opening
from rodwright.handover.dressed import (
    METRES,
    PANE,
    Y_UP,
    Dress,
    Look,
    Ware,
    cut_by_side,
    look_at,
    places,
)
from rodwright.handover.glb import Glb
from rodwright.handover.names import groups, shown_name
from rodwright.pictures.colours import linear
from rodwright.pictures.triangles import Array, Mesh
from rodwright.solids.meshes import mesh_of
from rodwright.unit import Part, ShapeKey, Stock, Swing, Unit

_ROUGHNESS = {"sheet": 0.55, "board": 0.65}
"""Lacquered boards are a little smoother than oiled solid wood; common practice, no source."""


def unit_glb(
    unit: Unit, dress: Mapping[str, Dress] | None = None, ware: Sequence[Ware] = ()
) -> bytes:
    """The unit as GLB: nodes nested unit > group > part, equal pieces sharing one mesh.

    Each part's node bears its ref and name, and in its extras ref, role, stock and material.  Doors
    and drawers hang on a node of their own within their group, and open and shut in an animation.
    ``dress`` says how each part looks, by its ref (None: in the colour of its stock), ``ware`` is
    what is bought in.

    Raises:
        ValueError: a part has no single closed solid.
    """
    return _File(unit, dress or _plain_dress(unit), ware).packed()


def linear_colour(colour: str) -> list[float]:
    """A ``#rrggbb`` sRGB colour as linear red, green, blue and opacity.

    IEC 61966-2-1, the sRGB transfer function.
    """
    return [*(round(each, 6) for each in linear(colour)), 1.0]


def _plain_dress(unit: Unit) -> dict[str, Dress]:
    looks: dict[Stock, Dress] = {}
    for part in unit.parts:
        stock = part.blank.stock
        looks.setdefault(stock, Dress(Look(stock.name, stock.colour, _ROUGHNESS[stock.kind])))
    return {part.ref: looks[part.blank.stock] for part in unit.parts}


class _File:
    """One unit's file in the making; what is equal is written once."""

    def __init__(self, unit: Unit, dress: Mapping[str, Dress], ware: Sequence[Ware]) -> None:
        self._unit, self._dress = unit, dress
        self._ware: dict[str, list[Ware]] = {}
        for each in ware:
            self._ware.setdefault(each.ref, []).append(each)
        self._glb = Glb("Rodwright")
        self._made: dict[Any, Any] = {}
        clip = opening(unit)
        self._move_of = {ref: move for move in clip.moves for ref in move.motion.refs}
        self._moving: list[tuple[int, Move]] = []

    def packed(self) -> bytes:
        glb, unit = self._glb, self._unit
        root = glb.add("nodes", {"name": unit.title, "children": []})
        for name, parts in groups(unit).items():
            group = self._child(root, {"name": name})
            hung: dict[Move, int] = {}
            for part in parts:
                move = self._move_of.get(part.ref)
                if move is not None and move not in hung:
                    hung[move] = self._hung(group, move)
                    self._moving.append((hung[move], move))
                self._part(part, hung[move] if move is not None else group, move)
        glb.tree |= {"scene": 0, "scenes": [{"nodes": [root]}]}
        if self._moving:
            self._animate()
        return glb.packed()

    def _child(self, parent: int, node: dict[str, Any]) -> int:
        made = self._glb.add("nodes", node)
        self._glb.tree["nodes"][parent].setdefault("children", []).append(made)
        return made

    def _hung(self, group: int, move: Move) -> int:
        """A node that a door turns about, or that a drawer slides with."""
        name = "hinges" if isinstance(move.motion, Swing) else "slides"
        at = _axis(move) @ Y_UP[:3, :3].T * METRES
        return self._child(group, {"name": name, "translation": at.tolist()})

    def _part(self, part: Part, parent: int, move: Move | None) -> None:
        matrix = np.array(part.placement.matrix())
        if move is not None:
            matrix[:3, 3] -= _axis(move)
        matrix[:3, 3] *= METRES
        stock, placed = part.blank.stock, Y_UP @ matrix
        told: dict[str, Any] = {"name": shown_name(part), "mesh": self._mesh_of(part)}
        if not np.array_equal(placed, np.eye(4)):
            told["matrix"] = (placed + 0.0).T.ravel().tolist()
        told["extras"] = {
            "ref": part.ref,
            "role": str(part.role),
            "stock": stock.name,
            "material": stock.material,
        }
        node = self._child(parent, told)
        for each in self._ware.get(part.ref, ()):
            piece = self._primitive(self._vertices(each.mesh), self._material(each.look, None))
            mesh = self._glb.add("meshes", {"name": each.name, "primitives": [piece]})
            self._child(node, {"name": each.name, "mesh": mesh})

    def _mesh_of(self, part: Part) -> int:
        dress = self._dress[part.ref]
        key: tuple[object, ...] = (
            part.shape,
            dress.look.name,
            *(each.name for each in dress.edges.values()),
        )
        if dress.look.pictures is not None or any(each.pictures for each in dress.edges.values()):
            key = (*key, dress.lie)
        if key not in self._made:
            primitives = [
                self._shown(each, dress, shown, at)
                for shown, (each, at) in self._cut(part, dress).items()
            ]
            name = f"{shown_name(part)} ({len(self._glb.tree.get('meshes', ()))})"
            self._made[key] = self._glb.add("meshes", {"name": name, "primitives": primitives})
        number: int = self._made[key]
        return number

    def _cut(self, part: Part, dress: Dress) -> dict[str, tuple[Mesh, dict[str, int]]]:
        """A part's mesh by what its sides show, each with its accessors; its own for each shape,
        however many look different."""
        pictured = dress.look.pictures is not None
        key = ("cut", part.shape, pictured, dress.across, tuple(dress.edges))
        if key not in self._made:
            cut = cut_by_side(flat_mesh(part.shape), part.blank.size, dress)
            self._made[key] = {side: (mesh, self._vertices(mesh)) for side, mesh in cut.items()}
        found: dict[str, tuple[Mesh, dict[str, int]]] = self._made[key]
        return found

    def _vertices(self, mesh: Mesh) -> dict[str, int]:
        array = self._glb.array
        return {
            "POSITION": array(mesh.points * METRES, "vertices", bounds=True),
            "NORMAL": array(_unit_length(mesh.normals), "vertices"),
            "indices": array(mesh.triangles.astype(np.uint32).ravel(), "indices"),
        }

    def _shown(self, mesh: Mesh, dress: Dress, shown: str, at: Mapping[str, int]) -> dict[str, Any]:
        look, picture = look_at(dress, shown)
        primitive = self._primitive(at, self._material(look, picture))
        if picture is not None:
            right_up = places(mesh, dress, shown)
            # From the upper left corner down, as pictures are stored (3.9.2 and 5.22).
            down = np.column_stack([right_up[:, 0], 1.0 - right_up[:, 1]])
            primitive["attributes"]["TEXCOORD_0"] = self._glb.array(down, "vertices")
        return primitive

    def _primitive(self, at: Mapping[str, int], material: int) -> dict[str, Any]:
        attributes = {name: at[name] for name in ("POSITION", "NORMAL")}
        return {"attributes": attributes, "indices": at["indices"], "material": material}

    def _material(self, look: Look, picture: bytes | None) -> int:
        key = ("material", look, picture)
        if key not in self._made:
            surface: dict[str, Any] = {
                "metallicFactor": 1.0 if look.metal else 0.0,
                "roughnessFactor": look.roughness,
            }
            material: dict[str, Any] = {"name": look.name, "pbrMetallicRoughness": surface}
            if picture is None:
                surface["baseColorFactor"] = linear_colour(look.colour)
            else:
                surface["baseColorTexture"] = {"index": self._glb.texture(picture, look.name)}
            if look.clear:
                surface["baseColorFactor"][3] = PANE
                material["alphaMode"] = "BLEND"
            self._made[key] = self._glb.add("materials", material)
        number: int = self._made[key]
        return number

    def _animate(self) -> None:
        """One clip for all that moves, since viewers play one (3.11)."""
        glb, times = self._glb, {}
        channels: list[dict[str, Any]] = []
        samplers: list[dict[str, Any]] = []
        for node, move in self._moving:
            seconds = tuple(each for each, _ in move.keys)
            if seconds not in times:
                times[seconds] = glb.array(np.array(seconds), "other", bounds=True)
            path, poses = _poses(move)
            channels.append({"sampler": len(samplers), "target": {"node": node, "path": path}})
            output = glb.array(poses, "other")
            samplers.append({"input": times[seconds], "output": output})
        glb.add("animations", {"name": OPENING, "channels": channels, "samplers": samplers})


def _axis(move: Move) -> Array:
    """Where the axis is that a door turns about, unit frame; the origin, of drawers."""
    return np.array([*move.motion.hinge, 0.0]) if isinstance(move.motion, Swing) else np.zeros(3)


def _poses(move: Move) -> tuple[str, Array]:
    """What of its node moves, and how it stands at each key: about y, which is up, by quaternions,
    or along."""
    shares = np.array([share for _, share in move.keys])
    if isinstance(move.motion, Swing):
        half = np.radians(move.motion.angle) / 2 * shares
        nought = np.zeros_like(half)
        return "rotation", np.column_stack([nought, np.sin(half), nought, np.cos(half)])
    travel = np.array(move.motion.travel) @ Y_UP[:3, :3].T * METRES
    return "translation", shares[:, None] * travel


def _unit_length(normals: Array) -> Array:
    found: Array = normals / np.maximum(np.linalg.norm(normals, axis=1, keepdims=True), 1e-12)
    return found


@lru_cache(maxsize=4096)
def flat_mesh(shape: ShapeKey) -> Mesh:
    """A shape's mesh whose vertices are shared only by triangles in one plane.

    So each vertex has its plane's normal, and no shading runs over an arris.
    """
    mesh = mesh_of(shape)
    directions, plane = np.unique(np.round(mesh.face_normals, 5) + 0.0, axis=0, return_inverse=True)
    corners = np.column_stack([mesh.faces.ravel(), np.repeat(plane.ravel(), 3)])
    own, index = np.unique(corners, axis=0, return_inverse=True)
    return Mesh(mesh.vertices[own[:, 0]], directions[own[:, 1]], index.reshape(-1, 3))
