"""Mitres and bevels in words: the saw's angle, where the cut runs, and what it leaves."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.geometry import TOUCH
from rodwright.handover.words import Words, degrees
from rodwright.unit import Bevel, Mitre, Surface
from rodwright.unit.surfaces import HIGH, LOW

_NOUNS = ("long", "wide", "thick")


@dataclass(frozen=True, slots=True)
class _End:
    """A cut that takes a whole end off: what it takes of the length along ``long``, the
    surface of its long point, and along the one opposite."""

    end: Surface
    long: Surface
    angle: float
    least: float
    most: float

    def taken(self, surface: Surface) -> float:
        return self.least if surface is self.long else self.most


def slants(words: Words, workings: Sequence[Mitre | Bevel]) -> Iterator[str]:
    """Texts for the mitres and bevels of a piece.

    Lengths over the long and the short points follow where a whole end is taken off.
    """
    ends, others = [], []
    for working in workings:
        if isinstance(working, Mitre):
            most = words.size[working.long.axis] * math.tan(math.radians(working.angle))
            ends.append(_End(working.end, working.long, working.angle, 0.0, most))
        elif (whole := _whole(words, working)) and whole.axis == 0:
            side = _other(working, whole)
            most, least = _taken(words, working, side)
            angle = _degrees_from(working, whole)
            ends.append(_End(whole, side.opposite, angle, least, most))
        else:
            others.append(_bevel(words, working))
    yield from _ends(words, ends)
    yield from _lengths_over_points(words, ends)
    yield from others


def _other(bevel: Bevel, surface: Surface) -> Surface:
    return bevel.edge if surface is bevel.surface else bevel.surface


def _leg(bevel: Bevel, surface: Surface) -> float:
    """How much of one of its two surfaces a bevel takes, measured from the other."""
    return bevel.width if surface is bevel.surface else bevel.depth


def _degrees_from(bevel: Bevel, surface: Surface) -> float:
    """Degrees between the cut and one of its two surfaces."""
    return bevel.angle if surface is bevel.edge else 90 - bevel.angle


def _whole(words: Words, bevel: Bevel) -> Surface | None:
    """The surface that a bevel takes off whole, an end before an edge; None for an arris."""
    for surface in sorted((bevel.surface, bevel.edge), key=lambda each: each.axis):
        if _leg(bevel, surface) >= words.size[_other(bevel, surface).axis] - TOUCH:
            return surface
    return None


def _taken(words: Words, bevel: Bevel, surface: Surface) -> tuple[float, float]:
    """What a bevel takes of one of its two surfaces, and of the one opposite."""
    leg, down = _leg(bevel, surface), _leg(bevel, _other(bevel, surface))
    return leg, leg * max(0.0, 1 - words.size[surface.axis] / down)


def _ends(words: Words, cuts: Sequence[_End]) -> Iterator[str]:
    """Cuts that are set alike gathered into one text for both ends."""
    alike: dict[tuple[str, Surface], list[Surface]] = {}
    for cut in cuts:
        alike.setdefault((degrees(cut.angle), cut.long), []).append(cut.end)
    for (angle, long), ends in alike.items():
        text = f"{'mitre' if long.axis == 1 else 'bevel'} {angle} at"
        if len(ends) == 1:
            yield f"{text} the {words.name(ends[0])}, long point on the {words.name(long)}"
        else:
            yield f"{text} both ends, long points on the {words.name(long)}"


def _lengths_over_points(words: Words, cuts: Sequence[_End]) -> Iterator[str]:
    """Lengths along the two surfaces that the cuts slope between."""
    say = words.say
    for axis in (1, 2):
        sloping = [cut for cut in cuts if cut.long.axis == axis]
        if not sloping:
            continue
        lengths = {
            surface: max(0.0, words.size[0] - sum(cut.taken(surface) for cut in sloping))
            for surface in (LOW[axis], HIGH[axis])
        }
        longs = {cut.long for cut in sloping}
        if len(longs) == 1 and axis == 1:
            (long,) = longs
            points = "points" if len(sloping) > 1 else "point"
            yield (
                f"{say(lengths[long])} over the long {points}, "
                f"{say(lengths[long.opposite])} over the short {points}"
            )
        else:
            yield ", ".join(
                f"{say(length)} along the {words.name(surface)}"
                for surface, length in lengths.items()
            )


def _bevel(words: Words, bevel: Bevel) -> str:
    """A bevel along an edge or a face, along an arris, or across a corner."""
    say, name = words.say, words.name
    whole = _whole(words, bevel)
    if whole is not None:
        # Along a whole edge, or from end to end of it: what is left of the width at both.
        side = _other(bevel, whole)
        at = "at" if side.axis == 0 else "on"
        left = [
            f"{say(max(0.0, words.size[whole.axis] - taken))} {_NOUNS[whole.axis]} {at} the {where}"
            for taken, where in zip(
                _taken(words, bevel, side), (name(side), name(side.opposite)), strict=True
            )
        ]
        angle = degrees(_degrees_from(bevel, whole))
        noun = "taper" if (whole.axis, side.axis) == (1, 0) else "bevel"
        return f"{noun} {angle} along the whole {name(whole)}, {', '.join(left)}"
    if {bevel.surface.axis, bevel.edge.axis} != {0, 1}:
        return (
            f"bevel {degrees(bevel.angle)} where the {name(bevel.surface)} meets the "
            f"{name(bevel.edge)}, {say(bevel.width)} over the {name(bevel.surface)}, "
            f"{say(bevel.depth)} down the {name(bevel.edge)}"
        )
    end, edge = sorted((bevel.surface, bevel.edge), key=lambda each: each.axis)
    return (
        f"corner of the {name(end)} and the {name(edge)} cut off, "
        f"{say(_leg(bevel, edge))} along the {name(edge)} x {say(_leg(bevel, end))} along the "
        f"{name(end)}, {degrees(_degrees_from(bevel, end))} off the {name(end)}"
    )
