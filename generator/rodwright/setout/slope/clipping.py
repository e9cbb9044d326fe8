"""Parts cut back to planes: the smallest blank that holds what is left, and what is left of the
workings.

Planes are given in the unit frame, as :mod:`rodwright.geometry.halfspaces` has them.
Lengths in mm.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from rodwright.geometry import TOUCH, Box, Vector, minus, vector
from rodwright.geometry.halfspaces import Plane, beyond, box_planes, vertices
from rodwright.setout.recut import Workpiece
from rodwright.unit import (
    Bevel,
    Bore,
    Easing,
    Hole,
    Mitre,
    Placement,
    Refit,
    Surface,
    Working,
)


def planes_of(piece: Workpiece) -> list[Plane]:
    """What bounds a part, unit frame: its blank's surfaces, its mitres and its bevels."""
    part, size = piece.part, piece.part.blank.size
    local = box_planes(Box.of_size(size)) + _cuts(size, piece.workings)
    axes = part.placement.axes
    return [
        (
            part.placement.to_unit(point),
            vector(sum(normal[k] * axes[k][i] for k in range(3)) for i in range(3)),
        )
        for point, normal in local
    ]


def cut_back(piece: Workpiece, planes: Sequence[Plane]) -> Workpiece | None:
    """A part and its workings, cut back to planes; None where nothing is left of it.

    The blank becomes the smallest that holds what is left, at its stock's thickness, so that
    lengths are over the long points.  What planes leave askew are bevels.  Workings wholly
    beyond a plane go; so do holes, pockets and mortises that a plane touches.
    """
    part, workings, size = piece.part, piece.workings, piece.part.blank.size
    new = [_into(part.placement, plane) for plane in planes]
    whole = box_planes(Box.of_size(size))
    cuts = [*_cuts(size, workings), *new]
    corners = vertices([*whole, *cuts])
    if not corners:
        return None
    left_over = Box.of_points(corners)
    if min(left_over.size) < TOUCH:
        return None
    kept = left_over.spanning(2, 0.0, size[2])
    for axis in range(2):
        at_low, at_high = kept.low[axis] < TOUCH, kept.high[axis] > size[axis] - TOUCH
        kept = kept.spanning(axis, 0.0 if at_low else None, size[axis] if at_high else None)
    left: list[Working] = []
    for working in workings:
        if not working.planes(size):
            moved = _kept(working, Refit(size, kept), new)
            if moved is not None:
                left.append(moved)
    new_size = kept.size
    for number, cut in enumerate(cuts):
        others = cuts[:number] + cuts[number + 1 :]
        if not any(beyond(cut, corner) > TOUCH for corner in vertices([*whole, *others])):
            continue
        bevel = _cut_of(_shifted(cut, kept.low), new_size, workings)
        if bevel is not None:
            left.append(bevel)
    placement = replace(part.placement, origin=part.placement.to_unit(kept.low))
    blank = replace(part.blank, length=new_size[0], width=new_size[1])
    return Workpiece(replace(part, blank=blank, placement=placement, workings=()), tuple(left))


def _kept(working: Working, to: Refit, planes: Sequence[Plane]) -> Working | None:
    """A working moved to the new blank, clipped to it; None where it goes."""
    box = working.bounds(to.size)
    for plane in planes:
        reaches = [beyond(plane, corner) for corner in box.corners()]
        if min(reaches) > -TOUCH:
            return None
        room = working.diameter / 2 if isinstance(working, Hole) else 0.0
        if isinstance(working, Bore) and max(reaches) > -room:
            return None
    left = box.intersection(to.blank)
    if left.is_empty:
        return None
    # Of an arris that is cut off along its run no round is left.
    if isinstance(working, Easing) and any(
        left.size[each.axis] < working.radius - TOUCH for each in (working.surface, working.edge)
    ):
        return None
    return working.moved(to)


def _cut_of(cut: Plane, size: Vector, workings: Sequence[Working]) -> Mitre | Bevel | None:
    """A plane that cuts a blank, as the mitre it was or as a bevel; None where the blank ends
    at it."""
    for working in workings:
        if isinstance(working, Mitre):
            ((at, normal),) = working.planes(size)
            same = max(abs(a - b) for a, b in zip(normal, cut[1], strict=True)) < 1e-9
            if same and abs(beyond(cut, at)) < TOUCH:
                return working
    normal = cut[1]
    axes = [axis for axis in range(3) if abs(normal[axis]) > 1e-9]
    if len(axes) == 1:
        return None
    if len(axes) == 3:
        raise AssertionError("a compound cut is no bevel")
    surfaces = [Surface.at(axis, normal[axis] > 0) for axis in axes]
    corner = vector(size[i] if normal[i] > 0 else 0.0 for i in range(3))
    reach = beyond(cut, corner)
    if reach < TOUCH:
        return None
    along = [reach / abs(normal[axis]) for axis in axes]
    # Named from the surface that it is the less askew to: no saw tilts past 45 degrees.
    edge = 0 if along[0] <= along[1] + TOUCH else 1
    return Bevel(surfaces[1 - edge], surfaces[edge], along[edge], along[1 - edge])


def _cuts(size: Vector, workings: Sequence[Working]) -> list[Plane]:
    return [plane for working in workings for plane in working.planes(size)]


def _shifted(plane: Plane, by: Vector) -> Plane:
    at, normal = plane
    return minus(at, by), normal


def _into(placement: Placement, plane: Plane) -> Plane:
    """A plane of the unit frame in a part's frame."""
    point, normal = plane
    return placement.to_part(point), placement.turned_to_part(normal)
