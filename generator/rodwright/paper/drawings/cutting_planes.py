"""Planes that cut a unit through, and what they cut: areas of its parts, and what lies behind.

Lengths in mm.  A plane lies square to one axis of the unit frame.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace
from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox
from OCP.BRepTools import BRepTools_WireExplorer
from OCP.GeomAbs import GeomAbs_Line
from OCP.gp import gp_Dir, gp_Pln, gp_Pnt
from OCP.TopAbs import TopAbs_FACE, TopAbs_REVERSED, TopAbs_WIRE
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS, TopoDS_Face, TopoDS_Shape, TopoDS_Wire

from rodwright.geometry import TOUCH, Vector
from rodwright.geometry.vectors import along, dot
from rodwright.paper.drawings.lines import bodies, lines_seen
from rodwright.pictures.bodies import Body
from rodwright.pictures.camera import FROM_LEFT, FRONT, PLAN, Camera
from rodwright.pictures.drafting.views import Cut, Line, Point
from rodwright.solids.parts import location_of, solid_of
from rodwright.unit import Grain, Part, Unit

_STEPS = 12
"""A curve is drawn as so many straight stretches."""
_FAR = 1e5
"""Beyond everything, mm."""
_KIND = Literal["along the grain", "end grain", "sheet", "other"]


@dataclass(frozen=True, slots=True)
class CuttingPlane:
    """Where a unit is cut: ``at`` along an ``axis`` of the unit frame, and the letter it is
    called by.  It is looked at from the left, the front or above."""

    letter: str
    axis: Literal[0, 1, 2]
    at: float

    @property
    def camera(self) -> Camera:
        """What looks square at it."""
        return (FROM_LEFT, FRONT, PLAN)[self.axis]

    @property
    def sign(self) -> float:
        """Which way along its axis the viewer stands: 1 for the high side."""
        return 1.0 if self.axis == 2 else -1.0


def cut_through(unit: Unit, plane: CuttingPlane) -> tuple[tuple[Cut, ...], tuple[Line, ...]]:
    """What a plane cuts of a unit, and the edges that are seen in the plane and behind it."""
    cuts = tuple(cut for part in unit.parts for cut in _cuts(part, plane))
    behind = _half_space(plane)
    shapes = []
    for body in bodies(unit):
        nearest, farthest = _behind(body, plane)
        if farthest > TOUCH:
            solid = body.placed_solid()
            whole = nearest > -TOUCH
            shapes.append(solid if whole else BRepAlgoAPI_Common(solid, behind).Shape())
    return cuts, lines_seen(shapes, plane.camera)


def _behind(body: Body, plane: CuttingPlane) -> tuple[float, float]:
    """How far behind a plane a body begins and ends; below zero before it."""
    turned = body.facets.points @ body.matrix[plane.axis, :3] + body.matrix[plane.axis, 3]
    far = (turned - plane.at) * -plane.sign
    return float(far.min()), float(far.max())


def _half_space(plane: CuttingPlane) -> TopoDS_Shape:
    """All that lies behind a plane, as far as any unit goes."""
    low, high = [-_FAR] * 3, [_FAR] * 3
    (high if plane.sign > 0 else low)[plane.axis] = plane.at
    return BRepPrimAPI_MakeBox(gp_Pnt(*low), gp_Pnt(*high)).Shape()


def _cuts(part: Part, plane: CuttingPlane) -> Iterator[Cut]:
    box = part.bounds()
    if not box.low[plane.axis] + TOUCH < plane.at < box.high[plane.axis] - TOUCH:
        return
    solid = solid_of(part.shape).wrapped.Located(location_of(part).wrapped)
    origin, normal = along(plane.axis, plane.at), along(plane.axis, 1.0)
    sheet = gp_Pln(gp_Pnt(*origin), gp_Dir(*normal))
    face = BRepBuilderAPI_MakeFace(sheet, -_FAR, _FAR, -_FAR, _FAR).Face()
    found = TopExp_Explorer(BRepAlgoAPI_Common(face, solid).Shape(), TopAbs_FACE)
    while found.More():
        rings = tuple(_rings(TopoDS.Face_s(found.Current()), plane.camera))
        yield Cut(part.ref, rings, _kind(part, normal))
        found.Next()


def _rings(face: TopoDS_Face, camera: Camera) -> Iterator[tuple[Point, ...]]:
    wires = TopExp_Explorer(face, TopAbs_WIRE)
    while wires.More():
        yield tuple(_ring(TopoDS.Wire_s(wires.Current()), face, camera))
        wires.Next()


def _ring(wire: TopoDS_Wire, face: TopoDS_Face, camera: Camera) -> Iterator[Point]:
    edges = BRepTools_WireExplorer(wire, face)
    while edges.More():
        edge = edges.Current()
        curve = BRepAdaptor_Curve(edge)
        low, high = curve.FirstParameter(), curve.LastParameter()
        steps = 1 if curve.GetType() == GeomAbs_Line else _STEPS
        ends = [low + (high - low) * step / steps for step in range(steps + 1)]
        if edge.Orientation() == TopAbs_REVERSED:
            ends.reverse()
        for at in ends[:-1]:
            value = curve.Value(at)
            point = (value.X(), value.Y(), value.Z())
            yield dot(point, camera.right), dot(point, camera.up)
        edges.Next()


def _kind(part: Part, normal: Vector) -> _KIND:
    """How what is cut is hatched: boards by which way their grain runs, sheets as such."""
    blank = part.blank
    if blank.stock.kind == "sheet":
        return "sheet"
    if blank.grain is Grain.NONE:
        return "other"
    grain = part.placement.width if blank.grain is Grain.CROSSWISE else part.placement.length
    return "end grain" if abs(dot(grain, normal)) > 0.5**0.5 else "along the grain"
