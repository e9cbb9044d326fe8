"""Workings in words, as a maker would pencil them on a cutting list.

Places are given from the part's own ends and edges: the near end is x = 0 of the part
frame, the face edge y = 0, the reverse z = 0.  Every place is measured from there, never
stepped off from the one before, so that errors don't add up.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence

from rodwright.lengths import LengthUnit, format_length
from rodwright.parts import (
    Easing,
    Groove,
    Hole,
    Housing,
    Mitre,
    Notch,
    Part,
    Placement,
    Rebate,
    Surface,
    Vector,
)

Say = Callable[[float], str]

_LOW = (Surface.NEAR_END, Surface.FACE_EDGE, Surface.REVERSE)
_HIGH = (Surface.FAR_END, Surface.BACK_EDGE, Surface.FACE)
_WHERE = (("left", "right"), ("front", "back"), ("bottom", "top"))


def describe_workings(part: Part, unit: LengthUnit) -> tuple[str, ...]:
    """A part's workings, one short text each, lengths in ``unit`` without naming it.

    Equal holes in a line are gathered into one text; mitres are followed by the lengths
    over their long and short points.
    """
    size = part.blank.size
    say: Say = lambda mm: format_length(mm, unit)  # noqa: E731
    mitres = [working for working in part.workings if isinstance(working, Mitre)]
    holes = [working for working in part.workings if isinstance(working, Hole)]
    return (
        *_mitres(mitres),
        *_lengths_over_points(mitres, size, say),
        *(
            _one(working, size, say)
            for working in part.workings
            if not isinstance(working, Mitre | Hole)
        ),
        *_holes(holes, say),
    )


def describe_lie(placement: Placement) -> str:
    """Which way a part lies in the unit: where its near end, face edge and show face point.

    A direction square to the unit is named (``left`` ... ``top``); one that isn't is left
    out.
    """
    said = [
        f"{name} {where}"
        for name, direction in (
            ("near end", _minus(placement.length)),
            ("face edge", _minus(placement.width)),
            ("face", placement.thickness),
        )
        if (where := _named(direction))
    ]
    return ", ".join(said)


def _minus(v: Vector) -> Vector:
    return (-v[0], -v[1], -v[2])


def _named(direction: Vector) -> str | None:
    for axis, names in enumerate(_WHERE):
        if math.isclose(abs(direction[axis]), 1.0, abs_tol=1e-9):
            return names[direction[axis] > 0]
    return None


def _one(working: Rebate | Groove | Housing | Notch | Easing, size: Vector, say: Say) -> str:
    match working:
        case Rebate(surface, edge, width, depth, start, stop):
            run = 3 - surface.axis - edge.axis
            text = f"rebate {say(width)} x {say(depth)} deep along the {edge}, on the {surface}"
            return text + _stopped(start, stop, run, size, say)
        case Groove(surface, position, width, depth, start, stop):
            across = 3 - surface.axis
            text = (
                f"groove {say(width)} x {say(depth)} deep at {say(position)} "
                f"from the {_LOW[across]}, {_on(surface)}"
            )
            return text + _stopped(start, stop, 0, size, say)
        case Housing(surface, position, width, depth, start, stop):
            text = (
                f"housing {say(width)} x {say(depth)} deep at {say(position)} "
                f"from the near end, on the {surface}"
            )
            return text + _stopped(start, stop, 1, size, say)
        case Notch():
            return _notch(working, size, say)
        case Easing(surface, edge, radius, start, stop):
            run = 3 - surface.axis - edge.axis
            text = f"eased {say(radius)} radius where the {surface} meets the {edge}"
            return text + _stopped(start, stop, run, size, say)


def _on(surface: Surface) -> str:
    return f"{'on' if surface.axis == 2 else 'in'} the {surface}"


def _stopped(start: float, stop: float | None, axis: int, size: Vector, say: Say) -> str:
    """Nothing for a working that runs right through, else where it starts and stops."""
    end = size[axis] if stop is None else stop
    if start <= 0 and end >= size[axis]:
        return ""
    if start <= 0:
        return f", stopped {say(size[axis] - end)} short of the {_HIGH[axis]}"
    if end >= size[axis]:
        return f", stopped {say(start)} short of the {_LOW[axis]}"
    return f", stopped at both ends, from {say(start)} to {say(end)} from the {_LOW[axis]}"


def _notch(notch: Notch, size: Vector, say: Say) -> str:
    sides = []
    for axis, (low, extent) in enumerate(((notch.x, notch.length), (notch.y, notch.width))):
        if low <= 0:
            sides.append(str(_LOW[axis]))
        elif low + extent >= size[axis]:
            sides.append(str(_HIGH[axis]))
    text = f"notch {say(notch.length)} along x {say(notch.width)} across, right through, "
    if len(sides) == 2:
        return f"{text}at the corner of the {sides[0]} and the {sides[1]}"
    place = f"at {say(notch.x)} from the near end"
    if not sides or sides[0] in (Surface.NEAR_END, Surface.FAR_END):
        place = f"{place} and {say(notch.y)} from the face edge"
    return f"{text}out of the {sides[0]}, {place}" if sides else text + place


def _mitres(mitres: Sequence[Mitre]) -> Iterable[str]:
    """Mitres that are set alike gathered into one text for both ends."""
    alike: dict[tuple[float, Surface], list[Surface]] = {}
    for mitre in mitres:
        alike.setdefault((mitre.angle, mitre.long), []).append(mitre.end)
    for (angle, long), ends in alike.items():
        kind = "mitre" if long.axis == 1 else "bevel"
        if len(ends) == 1:
            yield f"{kind} {angle:g}° at the {ends[0]}, long point on the {long}"
        else:
            yield f"{kind} {angle:g}° at both ends, long points on the {long}"


def _lengths_over_points(mitres: Sequence[Mitre], size: Vector, say: Say) -> Iterable[str]:
    """Lengths along the two surfaces that the mitres slope between."""
    for axis in (1, 2):
        sloping = [mitre for mitre in mitres if mitre.long.axis == axis]
        if not sloping:
            continue
        lengths = {
            surface: size[0]
            - sum(
                size[axis] * math.tan(math.radians(mitre.angle))
                for mitre in sloping
                if mitre.long is not surface
            )
            for surface in (_LOW[axis], _HIGH[axis])
        }
        longs = {mitre.long for mitre in sloping}
        if len(longs) == 1 and axis == 1:
            long = longs.pop()
            short = next(surface for surface in lengths if surface is not long)
            points = "points" if len(sloping) > 1 else "point"
            yield (
                f"{say(lengths[long])} over the long {points}, "
                f"{say(lengths[short])} over the short {points}"
            )
        else:
            yield ", ".join(
                f"{say(length)} along the {surface}" for surface, length in lengths.items()
            )


def _holes(holes: Sequence[Hole], say: Say) -> Iterable[str]:
    """Equal holes in a line gathered: the line's place once, then every hole's place on it."""
    lines: dict[tuple[Surface, float, float | None, float], list[float]] = {}
    for hole in holes:
        along, across = hole.position
        key = (hole.surface, hole.diameter, hole.depth, across)
        lines.setdefault(key, []).append(along)
    for (surface, diameter, depth, across), places in lines.items():
        first, second = (axis for axis in range(3) if axis != surface.axis)
        count = f"{len(places)} holes" if len(places) > 1 else "hole"
        deep = "right through" if depth is None else f"{say(depth)} deep"
        yield (
            f"{count} {say(diameter)} dia., {deep}, {_on(surface)}, {say(across)} from the "
            f"{_LOW[second]}, at {', '.join(map(say, sorted(places)))} from the {_LOW[first]}"
        )
