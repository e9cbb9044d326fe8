"""The edges of solids as lines of a view: those that show, and those that are hidden; mm."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import pairwise

from OCP.TopoDS import TopoDS_Shape
from shapely import MultiPoint

from rodwright.geometry.vectors import dot
from rodwright.pictures.bodies import Body, bodies_of
from rodwright.pictures.camera import Array, Camera
from rodwright.pictures.drafting.views import Line
from rodwright.pictures.hidden import LEAST_LENGTH, lines
from rodwright.pictures.linework import tidy
from rodwright.unit import Part, Unit
from rodwright.unit.corners import part_corners

Lines = tuple[Line, ...]


def only(unit: Unit, parts: Iterable[Part]) -> Unit:
    """The unit with some of its parts alone, and with what is bought in on those."""
    kept = tuple(parts)
    refs = {part.ref for part in kept}
    return replace(
        unit, parts=kept, fittings=tuple(each for each in unit.fittings if each.ref in refs)
    )


def bodies(unit: Unit) -> tuple[Body, ...]:
    """Parts as views show them, without small holes, and the fittings outside."""
    return bodies_of(unit, {})


def lines_seen(shapes: Sequence[TopoDS_Shape], camera: Camera) -> Lines:
    """The edges of placed solids that a camera sees, each stretch once."""
    if not shapes:
        return ()
    shown, _ = lines(shapes, camera, hidden=False)
    return tuple(tidy(_as_lines(shown), (), LEAST_LENGTH)[0])


def outlines_behind(parts: Iterable[Part], camera: Camera, visible: Lines) -> Lines:
    """The outlines of parts as they are before anything is let into them, where no line shows:
    panels that are covered, and ends that stand in housings.

    All hidden edges would be too many to read: every dowel's, every drawer's.
    """
    covered = []
    for part in parts:
        corners = [(dot(at, camera.right), dot(at, camera.up)) for at in part_corners(part)]
        ring = list(MultiPoint(corners).convex_hull.exterior.coords)
        covered += list(pairwise(ring))
    return tuple(tidy(visible, covered, LEAST_LENGTH)[1])


def _as_lines(ends: Array) -> list[Line]:
    return [((ax, ay), (bx, by)) for (ax, ay), (bx, by) in ends.tolist()]
