"""What pictures are made of: every part as a solid and as facets, and where it stands."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from types import MappingProxyType

import numpy as np
import trimesh
from cadquery import Solid
from cadquery import Vector as Vector3
from OCP.BRepBuilderAPI import BRepBuilderAPI_Copy
from OCP.BRepLib import BRepLib
from OCP.gp import gp_Trsf
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS_Shape

from rodwright.geometry import Box, Vector
from rodwright.pictures.camera import Array, Camera
from rodwright.pictures.facets import Facets, as_one, facets_of, mouth, place
from rodwright.solids import solid_of
from rodwright.solids.meshes import mesh_of
from rodwright.unit import Block, Grain, Hole, Knob, Part, Rod, ShapeKey, Unit, Ware

SMALL_HOLE = 15.0
"""Holes up to this diameter (mm) are pictured by their mouths alone: hundreds of drilled
walls would cost much time and show little."""
ROUND = 20
"""Sides that bought-in rounds have."""
WARES: Mapping[Ware, str] = MappingProxyType({
    "steel": "#c4c5c4", "brass": "#f5e4ae", "black": "#353535", "white": "#e5e3df",
    "plastic": "#454546", "wood": "#c89f70", "oak": "#b59676", "walnut": "#755d47",
})  # fmt: skip
"""What bought-in pieces are shown in: the reflectances of photographs (`photo.wares`), wooden ones
lacquered, as sRGB."""
SMOOTH = 0.02
"""A surface that turns less than this (radians) at an edge goes on smoothly."""


@dataclass(frozen=True, eq=False, slots=True)
class Body:
    """A piece as a picture shows it: its solid and facets in a frame whose x runs with the grain,
    and the 4 x 4 ``matrix`` from there to where it stands."""

    solid: Solid
    facets: Facets
    matrix: Array
    colour: str
    grain: Grain

    def placed_solid(self) -> TopoDS_Shape:
        """The solid where it stands."""
        move = gp_Trsf()
        move.SetValues(*self.matrix[:3].ravel().tolist())
        return self.solid.wrapped.Located(TopLoc_Location(move))


def bodies_of(unit: Unit, moves: Mapping[str, Vector], *, inner: bool = False) -> tuple[Body, ...]:
    """A unit's parts, in their order, each moved if ``moves`` says so; then its fittings, the
    inner ones if asked for, without the fine ones."""
    found = []
    for part in unit.parts:
        solid, facets = pictured(part.shape)
        matrix = _matrix(part, moves)
        found.append(Body(solid, facets, matrix, part.blank.stock.colour, part.blank.grain))
    for fitting in unit.fittings:
        if (inner or not fitting.inner) and not fitting.fine:
            part = unit.part(fitting.ref)
            matrix, colour = _matrix(part, moves), _ware_colour(fitting.ware, part)
            found += [
                Body(*_bought(plain), matrix, colour, Grain.NONE)
                for shape in fitting.shapes
                for plain in (shape.rods if isinstance(shape, Knob) else (shape,))
            ]
    return tuple(found)


def _ware_colour(ware: Ware, under: Part) -> str:
    """What a bought-in piece is shown in on a part: painted ones as the part is, or of wood."""
    if ware in WARES:
        return WARES[ware]
    finish = under.finish
    return finish.colour if finish is not None and finish.kind == "paint" else WARES["wood"]


def placed_facets(bodies: Sequence[Body]) -> Facets:
    """The facets of bodies where they stand."""
    return place((body.facets, body.matrix) for body in bodies)


def foremost(bodies: Sequence[Body], camera: Camera) -> list[Body]:
    """The bodies that matter to a parallel view: of equal ones straight behind each other, whose
    lines fall together, the foremost alone."""
    found: dict[tuple[object, ...], tuple[float, Body]] = {}
    for body in bodies:
        turned = camera.axes() @ body.matrix[:3]
        (x, y, depth), turn = turned[:, 3].tolist(), np.round(turned[:, :3], 6).tobytes()
        key = (id(body.solid), turn, round(x, 3), round(y, 3))
        if key not in found or depth > found[key][0]:
            found[key] = (depth, body)
    return [body for _, body in found.values()]


@lru_cache(maxsize=4096)
def pictured(shape: ShapeKey) -> tuple[Solid, Facets]:
    """A shape's solid without its small holes, and its facets with their mouths; part frame."""
    size, workings = shape
    small = [w for w in workings if isinstance(w, Hole) and w.diameter <= SMALL_HOLE]
    rest = (size, tuple(working for working in workings if working not in small))
    facets = facets_of(mesh_of(rest))
    mouths = [each for hole in small for each in _mouths(hole, size)]
    return _smoothed(solid_of(rest)), as_one([facets, *mouths]) if mouths else facets


@lru_cache(maxsize=4096)
def _bought(shape: Block | Rod) -> tuple[Solid, Facets]:
    """The solid and facets of a bought-in piece's shape."""
    if isinstance(shape, Block):
        solid = Solid.makeBox(*Box(shape.low, shape.high).size, pnt=Vector3(*shape.low))
        return solid, facets_of(trimesh.creation.box(bounds=(shape.low, shape.high)))
    start, end, radius = Vector3(*shape.start), Vector3(*shape.end), shape.diameter / 2
    along = end - start
    mesh = trimesh.creation.cylinder(
        radius, sections=ROUND, segment=np.array([shape.start, shape.end])
    )
    return Solid.makeCylinder(radius, along.Length, start, along), facets_of(mesh)


def _smoothed(solid: Solid) -> Solid:
    """A copy that knows at which edges its surface goes on smoothly, which cutting forgets."""
    copy = BRepBuilderAPI_Copy(solid.wrapped).Shape()
    BRepLib.EncodeRegularity_s(copy, SMOOTH)
    return Solid(copy)


def _matrix(part: Part, moves: Mapping[str, Vector]) -> Array:
    matrix = np.array(part.placement.matrix())
    matrix[:3, 3] += moves.get(part.ref, (0.0, 0.0, 0.0))
    return matrix


def _mouths(hole: Hole, size: Vector) -> Iterator[Facets]:
    axis = hole.surface.axis
    through = hole.depth is None or hole.depth >= size[axis]
    for at_high in (False, True) if through else (hole.surface.at_high,):
        centre, normal = list(hole.position), [0.0, 0.0, 0.0]
        centre.insert(axis, size[axis] if at_high else 0.0)
        normal[axis] = 1.0 if at_high else -1.0
        yield mouth(
            (centre[0], centre[1], centre[2]), (normal[0], normal[1], normal[2]), hole.diameter
        )
