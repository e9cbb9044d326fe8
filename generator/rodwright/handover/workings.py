"""Workings in words, as a maker would pencil them on a cutting list.

Surfaces are named by where they lie in the unit, as far as the pieces of a row agree (see
:mod:`rodwright.handover.lie`).  Every place is measured from the bottom or left end and the
front, lower or left edge, never stepped off from the one before, so that errors don't add up; of
a long even row, as a drilling guide makes it, the first, the last and the pitch.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise, takewhile

from rodwright.handover.lie import HIGH, LOW, Lie, lie_of
from rodwright.lengths import LengthUnit, format_length
from rodwright.parts import (
    Bevel,
    Easing,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    Part,
    PocketHole,
    Rebate,
    Surface,
    Vector,
)

_TOUCH = 1e-6
"""mm.  Nearer than this to a surface is at it: figures turned end for end are rounded."""
_EVEN = 0.01
"""mm.  Steps that differ by less are equal."""
_SHORTEST_ROW = 5
"""Fewer holes are named one by one."""


def describe_workings(parts: Sequence[Part], unit: LengthUnit) -> tuple[str, ...]:
    """The workings of equal pieces, one short text each, lengths in ``unit`` without naming it.

    Equal holes in a line are gathered into one text; mitres are followed by the lengths
    over their long and short points.
    """
    lie, size = lie_of(parts), parts[0].blank.size
    texts = _Texts(lie, size, lambda mm: format_length(mm, unit))
    turned = [lie.turn(working, size) for working in parts[0].workings]
    mitres = [working for working in turned if isinstance(working, Mitre)]
    holes = [working for working in turned if isinstance(working, Hole)]
    return (
        *texts.mitres(mitres),
        *texts.lengths_over_points(mitres),
        *(texts.one(working) for working in turned if not isinstance(working, Mitre | Hole)),
        *texts.holes(holes),
    )


_Single = Rebate | Groove | Housing | Notch | Easing | Bevel | Mortise | PocketHole
"""Workings that are told one by one."""


@dataclass(frozen=True, slots=True)
class _Texts:
    """Texts for workings whose figures are turned to how the pieces lie."""

    lie: Lie
    size: Vector
    say: Callable[[float], str]

    def name(self, surface: Surface) -> str:
        return self.lie.low_or_high(surface.axis, surface.at_high)

    def one(self, working: _Single) -> str:
        name, say = self.name, self.say
        match working:
            case Rebate(surface, edge, width, depth, start, stop):
                run = 3 - surface.axis - edge.axis
                text = (
                    f"rebate {say(width)} x {say(depth)} deep along the {name(edge)}, "
                    f"on the {name(surface)}"
                )
                return text + self.stopped(start, stop, run)
            case Groove(surface, position, width, depth, start, stop):
                text = (
                    f"groove {say(width)} x {say(depth)} deep at {say(position)} "
                    f"from the {name(LOW[3 - surface.axis])}, {self.on(surface)}"
                )
                return text + self.stopped(start, stop, 0)
            case Housing(surface, position, width, depth, start, stop):
                text = (
                    f"housing {say(width)} x {say(depth)} deep at {say(position)} "
                    f"from the {name(LOW[0])}, on the {name(surface)}"
                )
                return text + self.stopped(start, stop, 1)
            case Notch():
                return self.notch(working)
            case Easing(surface, edge, radius, start, stop):
                run = 3 - surface.axis - edge.axis
                text = f"eased {say(radius)} radius where the {name(surface)} meets the "
                return f"{text}{name(edge)}" + self.stopped(start, stop, run)
            case Bevel(surface, edge, width, depth):
                return (
                    f"bevel {working.angle:.1f}° where the {name(surface)} meets the {name(edge)}, "
                    f"{say(width)} over the {name(surface)}, {say(depth)} down the {name(edge)}"
                )
            case Mortise(surface, (along, across), (length, width), depth, rounded):
                first, second = (LOW[axis] for axis in range(3) if axis != surface.axis)
                return (
                    f"mortise {say(length)} x {say(width)}, {say(depth)} deep, {self.on(surface)}, "
                    f"at {say(along)} from the {name(first)} and {say(across)} from the "
                    f"{name(second)}{', round ends' if rounded else ''}"
                )
            case PocketHole(surface, end, position, leaves, stop, diameter, screw, angle):
                return (
                    f"pocket hole {say(diameter)} dia. at {angle:g}° {self.on(surface)}, at "
                    f"{say(position)} from the {name(LOW[3 - surface.axis - end.axis])}, ending "
                    f"{say(stop)} before the {name(end)}, then {say(screw)} dia. out of it "
                    f"{say(leaves)} below the {name(surface)}"
                )

    def on(self, surface: Surface) -> str:
        return f"{'on' if surface.axis == 2 else 'in'} the {self.name(surface)}"

    def stopped(self, start: float, stop: float | None, axis: int) -> str:
        """Nothing for a working that runs right through, else where it starts and stops."""
        length, say = self.size[axis], self.say
        low, high = self.name(LOW[axis]), self.name(HIGH[axis])
        end = length if stop is None else stop
        if start <= _TOUCH and end >= length - _TOUCH:
            return ""
        if start <= _TOUCH:
            return f", stopped {say(length - end)} short of the {high}"
        if end >= length - _TOUCH:
            return f", stopped {say(start)} short of the {low}"
        return f", stopped at both ends, from {say(start)} to {say(end)} from the {low}"

    def notch(self, notch: Notch) -> str:
        say = self.say
        sides = []
        for axis, (low, extent) in enumerate(((notch.x, notch.length), (notch.y, notch.width))):
            if low <= _TOUCH:
                sides.append(LOW[axis])
            elif low + extent >= self.size[axis] - _TOUCH:
                sides.append(HIGH[axis])
        names = [self.name(side) for side in sides]
        text = f"notch {say(notch.length)} along x {say(notch.width)} across, right through, "
        if len(sides) == 2:
            return f"{text}at the corner of the {names[0]} and the {names[1]}"
        along = f"{say(notch.x)} from the {self.name(LOW[0])}"
        across = f"{say(notch.y)} from the {self.name(LOW[1])}"
        if not sides:
            return f"{text}at {along} and {across}"
        return f"{text}out of the {names[0]}, at {across if sides[0].axis == 0 else along}"

    def mitres(self, mitres: Sequence[Mitre]) -> Iterable[str]:
        """Mitres that are set alike gathered into one text for both ends."""
        alike: dict[tuple[float, Surface], list[Surface]] = {}
        for mitre in mitres:
            alike.setdefault((mitre.angle, mitre.long), []).append(mitre.end)
        for (angle, long), ends in alike.items():
            text = f"{'mitre' if long.axis == 1 else 'bevel'} {angle:g}° at"
            if len(ends) == 1:
                yield f"{text} the {self.name(ends[0])}, long point on the {self.name(long)}"
            else:
                yield f"{text} both ends, long points on the {self.name(long)}"

    def lengths_over_points(self, mitres: Sequence[Mitre]) -> Iterable[str]:
        """Lengths along the two surfaces that the mitres slope between."""
        size, say = self.size, self.say
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
                for surface in (LOW[axis], HIGH[axis])
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
                    f"{say(length)} along the {self.name(surface)}"
                    for surface, length in lengths.items()
                )

    def _places(self, places: Sequence[float]) -> str:
        """Places on a line, in order; rows of equal steps by their ends and their pitch."""
        said: list[str] = []
        alone: list[str] = []
        rest = list(places)
        while rest:
            row = _even(rest)
            if len(row) < _SHORTEST_ROW:
                alone.append(self.say(rest.pop(0)))
                continue
            pitch, (first, last) = row[1] - row[0], (row[0], row[-1])
            said.append(f"{self.say(pitch)} apart, from {self.say(first)} to {self.say(last)}")
            del rest[: len(row)]
        return ", and ".join([*([f"at {', '.join(alone)}"] if alone else []), *said])

    def holes(self, holes: Sequence[Hole]) -> Iterable[str]:
        """Equal holes in a line gathered: the line's place once, then every hole's place on it."""
        kinds: dict[tuple[Surface, float, float | None], dict[float, list[float]]] = {}
        for hole in holes:
            along, across = hole.position
            lines = kinds.setdefault((hole.surface, hole.diameter, hole.depth), {})
            lines.setdefault(across, []).append(along)
        say = self.say
        for (surface, diameter, depth), lines in kinds.items():
            first, second = (LOW[axis] for axis in range(3) if axis != surface.axis)
            deep = "right through" if depth is None else f"{say(depth)} deep"
            for across, places in sorted(lines.items()):
                count = f"{len(places)} holes" if len(places) > 1 else "hole"
                yield (
                    f"{count} {say(diameter)} dia., {deep}, {self.on(surface)}, {say(across)} "
                    f"from the {self.name(second)}, {self._places(sorted(places))} "
                    f"from the {self.name(first)}"
                )


def _even(places: Sequence[float]) -> Sequence[float]:
    """The places from the first on that follow each other in equal steps."""
    steps = [after - before for before, after in pairwise(places)]
    equal = takewhile(lambda step: abs(step - steps[0]) < _EVEN, steps)
    return places[: sum(1 for _ in equal) + 1]
