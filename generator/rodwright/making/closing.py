"""Along which directions joints close: what their dowels, tenons, biscuits and bolts allow.

Tongues, housings, rebates and mitres are in the shape of the parts: a sweep sees them.  What is let
into both parts is no part, so that its direction is told here.  Screws and pins go in afterwards,
and hold no part back from coming along any way that is free.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from rodwright.geometry import Vector, cross, dot, minus, times
from rodwright.geometry.halfspaces import beyond
from rodwright.making.sweeping import Sweeps
from rodwright.unit import Hole, Joint, JointKind, Mitre, Mortise, Part, Slide, Surface, Unit

Axes = tuple[Vector, ...]
"""Unit vectors: a joint closes along any of them, either way round as far as it goes by this."""

_LET_IN = (JointKind.DOWEL, JointKind.LOOSE_TENON, JointKind.BISCUIT)
_ACROSS_MITRES = {"dowel", "biscuit", "loose tenon", "loose tongue"}
_NEAR = 1.0
"""mm.  Mouths of two bores this near each other belong together, as do a joint and a cut."""


def closes_along(unit: Unit, joint: Joint, sweeps: Sweeps) -> Axes | None:
    """The directions along which a joint's two parts go together; None where it leaves them free.

    Dowels, loose tenons, biscuits and the bolts of cams go in along themselves, a drawer along its
    slides, a loose tongue along its grooves or straight into them.
    """
    if joint.kind is JointKind.SLIDING:
        return (
            tuple(
                times(motion.travel, 1 / math.hypot(*motion.travel))
                for motion in unit.motions
                if isinstance(motion, Slide) and {joint.first, joint.second} & set(motion.refs)
            )[:1]
            or None
        )
    first, second = unit.part(joint.first), unit.part(joint.second)
    bought = {fixing.name for fixing in joint.fixings}
    if joint.kind is JointKind.MITRE and bought & _ACROSS_MITRES:
        square = _square_to_mitre(joint, first) or _square_to_mitre(joint, second)
        if square is None:
            return None
        loose = "loose tongue" in bought
        return (square, _along_mitre(first, second)) if loose else (square,)
    if joint.kind in _LET_IN or "cam bolt" in bought:
        return _axis_of_bores(first, second) or sweeps.square_to_meeting(
            joint.first, joint.second, joint.at
        )
    return None


def _axis_of_bores(first: Part, second: Part) -> Axes | None:
    """The direction of bores or slots in two parts that open at the same place, face to face."""
    others = list(_mouths(second))
    for at, out in _mouths(first):
        for there, back in others:
            if dot(out, back) < -1 + 1e-6 and math.dist(at, there) < _NEAR:
                return (out,)
    return None


def _mouths(part: Part) -> Iterator[tuple[Vector, Vector]]:
    """Where bores and slots open, and the direction out of them; unit frame."""
    size, placed = part.blank.size, part.placement
    for each in part.workings:
        if not isinstance(each, Hole | Mortise):
            continue
        surface: Surface = each.entered
        middle = list(each.bounds(size).centre)
        middle[surface.axis] = size[surface.axis] if surface.at_high else 0.0
        out = placed.axes[surface.axis]
        at = placed.to_unit((middle[0], middle[1], middle[2]))
        yield at, out if surface.at_high else times(out, -1.0)


def _square_to_mitre(joint: Joint, part: Part) -> Vector | None:
    """The direction square to the mitre of a part at a joint, unit frame."""
    for each in part.workings:
        if isinstance(each, Mitre):
            ((at, normal),) = each.planes(part.blank.size)
            if abs(beyond((at, normal), part.placement.to_part(joint.at))) < _NEAR:
                return _turned(part, normal)
    return None


def _along_mitre(first: Part, second: Part) -> Vector:
    """The direction along a mitre that lies square to both its parts' lengths."""
    run = cross(first.placement.length, second.placement.length)
    return times(run, 1 / math.hypot(*run))


def _turned(part: Part, direction: Vector) -> Vector:
    placed = part.placement
    return minus(placed.to_unit(direction), placed.origin)
