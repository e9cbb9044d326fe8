"""Cuts told in the unit frame, as workings in the frame of the part that they are made in.

No sign is worked out by hand twice: a cut is a box, or a point and a direction, and here it is
turned into the part's own frame.  Parts stand square to the unit.  Lengths in mm.
"""

from __future__ import annotations

from rodwright.geometry import TOUCH, Box, Vector, times
from rodwright.unit import Groove, Hole, Housing, Mortise, Notch, Part, Rebate, Surface


def rebate_along(part: Part, box: Box, use: str) -> Rebate:
    """What rebates a box along an edge.

    Raises:
        ValueError: the box doesn't break through a face and an edge.
    """
    local = part.placement.box_to_part(box)
    surface = _broken(part, local, (Surface.FACE, Surface.REVERSE))
    edge = _broken(part, local, (Surface.FACE_EDGE, Surface.BACK_EDGE))
    return Rebate(surface, edge, local.size[1], local.size[2], *_run(part, local, 0), use)


def groove_along(part: Part, box: Box, use: str) -> Groove:
    """What ploughs a box along the length, in the face or reverse.

    Raises:
        ValueError: the box breaks through neither.
    """
    local = part.placement.box_to_part(box)
    surface = _broken(part, local, (Surface.FACE, Surface.REVERSE))
    return Groove(surface, local.low[1], local.size[1], local.size[2], *_run(part, local, 0), use)


def notch(part: Part, box: Box, use: str) -> Notch:
    """What notches a box out, right through the thickness."""
    local = part.placement.box_to_part(box)
    return Notch(local.low[0], local.low[1], local.size[0], local.size[1], use)


def hole(
    part: Part, at: Vector, into: Vector, diameter: float, depth: float | None, use: str
) -> Hole:
    """A hole at a point of a surface, in a direction square to it."""
    local, surface = part.placement.to_part(at), entered(part, into)
    first, second = surface.across
    return Hole(surface, (local[first], local[second]), diameter, depth, use)


def mortise(part: Part, box: Box, into: Vector, round_ends: bool, use: str) -> Mortise:
    """A pocket that takes a box, from the surface that ``into`` goes in at."""
    local, surface = part.placement.box_to_part(box), entered(part, into)
    first, second = surface.across
    return Mortise(
        surface,
        (local.low[first], local.low[second]),
        (local.size[first], local.size[second]),
        local.size[surface.axis],
        round_ends,
        use,
    )


def channel(part: Part, box: Box, into: Vector, use: str) -> Rebate | Groove | Housing | Mortise:
    """What takes a box from the surface that ``into`` goes in at.

    A housing across, a groove along, a rebate where it reaches an end or an edge, a pocket in
    an end.
    """
    local, surface = part.placement.box_to_part(box), entered(part, into)
    depth, size = local.size[surface.axis], part.blank.size
    along, other = sorted(surface.across, key=lambda axis: -local.size[axis])
    start, stop = _run(part, local, along)
    if local.low[other] < TOUCH or local.high[other] > size[other] - TOUCH:
        edge = Surface.at(other, local.low[other] > TOUCH)
        return Rebate(surface, edge, local.size[other], depth, start, stop, use)
    if along == 0:
        return Groove(surface, local.low[other], local.size[other], depth, start, stop, use)
    if surface.axis == 2:
        return Housing(surface, local.low[0], local.size[0], depth, start, stop, use)
    return mortise(part, box, into, False, use)


def step(part: Part, box: Box, outwards: Vector, across: Vector, use: str) -> Rebate:
    """What takes a box off the end or edge that looks ``outwards``, along with one of the two
    surfaces that ``across`` is square to."""
    local = part.placement.box_to_part(box)
    edge = entered(part, times(outwards, -1.0))
    axis = entered(part, across).axis
    surface = Surface.at(axis, local.low[axis] > TOUCH)
    start, stop = _run(part, local, 3 - edge.axis - axis)
    return Rebate(surface, edge, local.size[edge.axis], local.size[axis], start, stop, use)


def entered(part: Part, into: Vector) -> Surface:
    """The surface of a part that a direction goes in at, square to it."""
    turned = part.placement.turned_to_part(into)
    axis = max(range(3), key=lambda i: abs(turned[i]))
    return Surface.at(axis, turned[axis] < 0)


def _broken(part: Part, local: Box, candidates: tuple[Surface, ...]) -> Surface:
    """Which of the surfaces a box breaks through."""
    size = part.blank.size
    for surface in candidates:
        axis = surface.axis
        if local.high[axis] > size[axis] - TOUCH if surface.at_high else local.low[axis] < TOUCH:
            return surface
    raise ValueError(f"a box from {local.low} to {local.high} breaks no surface of a {size} blank")


def _run(part: Part, local: Box, axis: int) -> tuple[float, float | None]:
    """Start and stop along an axis, kept inside the blank; stop is None at the far end."""
    start, stop = local.low[axis], local.high[axis]
    at_end = stop > part.blank.size[axis] - TOUCH
    return start if start > TOUCH else 0.0, None if at_end else stop
