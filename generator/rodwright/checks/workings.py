"""Can every working be cut, and is enough wood left beside it?"""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import combinations, product

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.wording import length_in, named
from rodwright.parts import (
    Bevel,
    Box,
    Easing,
    Groove,
    Hole,
    Housing,
    Mitre,
    Notch,
    Part,
    PocketHole,
    Rebate,
    Surface,
    Unit,
    Vector,
    Working,
)

LEAST_TONGUE = 3.0
"""Wood left between two channels, or beside a channel at an edge, mm."""
LEAST_FLOOR = 1.5
"""Wood left under a blind hole, mm."""
LEAST_BORING, LEAST_RIM = 20.0, 2.0
"""From this diameter on a hole holds a cup or the like, which needs only so much wood beside its
rim, mm."""
_ROUNDING = 1e-6
_GEOMETRY = "geometry of the part"

Channel = Rebate | Groove | Housing


def workings(unit: Unit) -> Iterator[Finding]:
    """Findings about each part's workings; limits are common practice, no source."""
    for part in unit.parts:
        outside = list(_outside(unit, part))
        yield from outside
        if not outside:
            yield from _deep(unit, part)
            yield from _thin_tongues(unit, part)
            yield from _crossing_mitres(unit, part)
            yield from _holes(unit, part)


def _words(working: object) -> str:
    return type(working).__name__.lower()


def _outside(unit: Unit, part: Part) -> Iterator[Finding]:
    size = part.blank.size
    for working in part.workings:
        over = _past(size, working)
        if over > _ROUNDING:
            yield Finding(
                Severity.ERROR,
                "working outside the blank",
                f"a {_words(working)} reaches {length_in(unit, over)} past the edge of "
                f"{named(part)}",
                "Move it in, or make the part larger.",
                (part.ref,),
                over,
                0.0,
                source=_GEOMETRY,
            )


def _past(size: Vector, working: Working) -> float:
    """How far (mm) a working reaches past the blank, at most; a slanting cut is meant to."""
    if isinstance(working, Mitre | Bevel | PocketHole):
        return 0.0
    if isinstance(working, Hole):
        across = [axis for axis in range(3) if axis != working.surface.axis]
        half = working.diameter / 2
        return max(
            half - min(centre, size[axis] - centre)
            for centre, axis in zip(working.position, across, strict=True)
        )
    if isinstance(working, Easing):
        surface, edge, radius = working.surface, working.edge, working.radius
        working = Rebate(surface, edge, radius, radius, working.start, working.stop)
    box = working.removal(size)
    return max(max(-a, b - c) for a, b, c in zip(box.low, box.high, size, strict=True))


def _deep(unit: Unit, part: Part) -> Iterator[Finding]:
    for working in part.workings:
        if not isinstance(working, Rebate | Groove | Housing):
            continue
        through = part.blank.size[working.surface.axis]
        most = through if isinstance(working, Rebate) else through / 2
        if working.depth >= through - _ROUNDING:
            yield Finding(
                Severity.ERROR,
                "depth",
                f"a {_words(working)} {length_in(unit, working.depth)} deep goes right through "
                f"{named(part)}, which is {length_in(unit, through)} there",
                "Make it shallower, or use thicker stock.",
                (part.ref,),
                working.depth,
                through,
                source=_GEOMETRY,
            )
        elif working.depth > most + _ROUNDING:
            yield Finding(
                Severity.WARNING,
                "depth",
                f"a {_words(working)} in {named(part)} is {length_in(unit, working.depth)} deep, "
                f"more than half of {length_in(unit, through)}",
                "Keep housings and grooves to a third of the thickness, a half at the most.",
                (part.ref,),
                working.depth,
                most,
            )


def _thin_tongues(unit: Unit, part: Part) -> Iterator[Finding]:
    """Wood left beside a channel at an edge, or between two channels that face each other."""
    size = part.blank.size
    channels = [
        (working, working.removal(size))
        for working in part.workings
        if isinstance(working, Rebate | Groove | Housing)
    ]
    for working, box in channels:
        beside = _left_beside(size, working, box)
        if beside < LEAST_TONGUE - _ROUNDING:
            yield Finding(
                Severity.WARNING,
                "thin tongue",
                f"beside a {_words(working)} in {named(part)} only {length_in(unit, beside)} of "
                "wood is left at the edge",
                f"Leave at least {length_in(unit, LEAST_TONGUE)}, or cut it out to the edge.",
                (part.ref,),
                beside,
                LEAST_TONGUE,
            )
    for (first, one), (second, other) in combinations(channels, 2):
        left = _left_between(one, other)
        if left is not None and left < LEAST_TONGUE - _ROUNDING:
            yield Finding(
                Severity.WARNING,
                "thin tongue",
                f"between a {_words(first)} and a {_words(second)} in {named(part)} only "
                f"{length_in(unit, left)} of wood is left",
                f"Leave at least {length_in(unit, LEAST_TONGUE)}: cut them shallower or apart.",
                (part.ref,),
                left,
                LEAST_TONGUE,
            )


def _left_beside(size: Vector, working: Channel, box: Box) -> float:
    """Least wood between a channel and the blank's edges or ends that it doesn't reach."""
    beside = [
        left
        for axis in range(3)
        if axis != working.surface.axis
        for left in (box.low[axis], size[axis] - box.high[axis])
    ]
    return min((left for left in beside if left > _ROUNDING), default=math.inf)


def _left_between(first: Box, second: Box) -> float | None:
    """Wood between two channels that face each other along one axis; None where none is held."""
    apart = [max(first.low[i] - second.high[i], second.low[i] - first.high[i]) for i in range(3)]
    gaps = [distance for distance in apart if distance > _ROUNDING]
    overlaps = sum(distance < -_ROUNDING for distance in apart)
    return gaps[0] if len(gaps) == 1 and overlaps == 2 else None


def _crossing_mitres(unit: Unit, part: Part) -> Iterator[Finding]:
    """What the mitres leave of the length along each of the blank's four long arrises."""
    mitres = [working for working in part.workings if isinstance(working, Mitre)]
    length, *section = part.blank.size
    short = min(
        length - sum(_taken(mitre, section, corner) for mitre in mitres)
        for corner in product((False, True), repeat=2)
    )
    if mitres and short <= 0:
        yield Finding(
            Severity.ERROR,
            "mitres cross",
            f"the mitres of {named(part)} cross: {length_in(unit, -short)} are missing between "
            f"its short points",
            "Make the part longer or narrower.",
            (part.ref,),
            short,
            0.0,
            source=_GEOMETRY,
        )


def _taken(mitre: Mitre, section: list[float], corner: tuple[bool, ...]) -> float:
    """What a mitre takes off the length at one corner (high or low by axis) of the section."""
    across = mitre.long.axis - 1
    if corner[across] == mitre.long.at_high:
        return 0.0
    return section[across] * math.tan(math.radians(mitre.angle))


def _holes(unit: Unit, part: Part) -> Iterator[Finding]:
    size = part.blank.size
    notched = any(isinstance(working, Notch) for working in part.workings)
    for hole in part.workings:
        if not isinstance(hole, Hole):
            continue
        across = [axis for axis in range(3) if axis != hole.surface.axis]
        edge = min(
            min(centre, size[axis] - centre)
            for centre, axis in zip(hole.position, across, strict=True)
        )
        least = 0.0
        if hole.surface in (Surface.FACE, Surface.REVERSE):
            # Nothing is driven into a wide boring that would wedge its rim off.
            bored = hole.diameter >= LEAST_BORING
            least = hole.diameter / 2 + LEAST_RIM if bored else hole.diameter
        if edge < least - _ROUNDING and not notched:
            yield Finding(
                Severity.WARNING,
                "hole near an edge",
                f"a {length_in(unit, hole.diameter)} hole in {named(part)} is "
                f"{length_in(unit, edge)} from an edge",
                f"Keep its middle at least {length_in(unit, least)} from the edge, or it may "
                "break out.",
                (part.ref,),
                edge,
                least,
            )
        if hole.depth is not None:
            through = size[hole.surface.axis]
            floor = through - hole.depth
            if floor <= _ROUNDING:
                yield Finding(
                    Severity.ERROR,
                    "depth",
                    f"a hole {length_in(unit, hole.depth)} deep goes right through {named(part)}, "
                    f"which is {length_in(unit, through)} there",
                    "Drill it shallower, or use thicker stock.",
                    (part.ref,),
                    hole.depth,
                    through,
                    source=_GEOMETRY,
                )
            elif floor < LEAST_FLOOR - _ROUNDING:
                yield Finding(
                    Severity.WARNING,
                    "hole nearly through",
                    f"under a hole in {named(part)} only {length_in(unit, floor)} are left",
                    "Drill it shallower, or use thicker stock.",
                    (part.ref,),
                    floor,
                    LEAST_FLOOR,
                )
