"""Can every working be cut, and is enough wood left beside it?"""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import combinations, product

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.checks.wood_round_bores import wood_round_bores
from rodwright.geometry import TOUCH, Box, Vector
from rodwright.trade.wood_left import LEAST_TONGUE
from rodwright.unit import (
    Bevel,
    Channel,
    FingerPull,
    Mitre,
    Mortise,
    Part,
    PocketHole,
    Rebate,
    Role,
    Surface,
    Unit,
    Working,
)

STEEPEST = 45.0
"""How far most saws tilt away from square, degrees; many go 1 or 2 further (common practice, no
source)."""
_DEGREES = 0.05
_GEOMETRY = "geometry of the part"


def workings(unit: Unit) -> Iterator[Finding]:
    """Findings about each part's workings; limits are common practice, no source."""
    for part in unit.parts:
        outside = list(_outside(unit, part))
        yield from outside
        if not outside:
            yield from _deep(unit, part)
            yield from _thin_tongues(unit, part)
            yield from _crossing_mitres(unit, part)
            yield from wood_round_bores(unit, part)
    yield from _past_the_saw(unit)


def _outside(unit: Unit, part: Part) -> Iterator[Finding]:
    size = part.blank.size
    for working in part.workings:
        over = _past(size, working)
        if over > TOUCH:
            yield Finding(
                Severity.ERROR,
                Rule.OUTSIDE_BLANK,
                f"a {working.word} reaches {length_in(unit, over)} past the edge of {named(part)}",
                "Move it in, or make the part larger.",
                (part.ref,),
                over,
                0.0,
                source=_GEOMETRY,
                case=(working.kind,),
            )


def _past(size: Vector, working: Working) -> float:
    """How far (mm) a working reaches past the blank, at most; a slanting cut is meant to."""
    if isinstance(working, PocketHole):
        return 0.0  # where it breaks out is told with its other faults
    box = working.bounds(size)
    return max(max(-a, b - c) for a, b, c in zip(box.low, box.high, size, strict=True))


def _deep(unit: Unit, part: Part) -> Iterator[Finding]:
    for working in part.workings:
        if not isinstance(working, Channel):
            continue
        through = part.blank.size[working.surface.axis]
        most = through if isinstance(working, Rebate) else through / 2
        if working.depth >= through - TOUCH:
            yield Finding(
                Severity.ERROR,
                Rule.RIGHT_THROUGH,
                f"a {working.word} {length_in(unit, working.depth)} deep goes right through "
                f"{named(part)}, which is {length_in(unit, through)} there",
                "Make it shallower, or use thicker stock.",
                (part.ref,),
                working.depth,
                through,
                source=_GEOMETRY,
                case=(working.kind,),
            )
        elif working.depth > most + TOUCH:
            yield Finding(
                Severity.WARNING,
                Rule.DEEPER_THAN_HALF,
                f"a {working.word} in {named(part)} is {length_in(unit, working.depth)} deep, "
                f"more than half of {length_in(unit, through)}",
                "Keep housings and grooves to a third of the thickness, a half at the most.",
                (part.ref,),
                working.depth,
                most,
                case=(working.kind,),
            )


_MOVE = "move what goes into it, or make it thinner (`thickness`)"
_SET_BACK = "set back what goes into it further (`setback`), or stop the channel (`stopped`)"
_WAYS_OUT = {
    str(Role.SHELF): _SET_BACK,
    str(Role.DIVIDER): _SET_BACK,
    str(Role.CARCASS_RAIL): _SET_BACK,
    str(Role.BACK): "change `back.inset`, or let it into a rebate (`back.fixing: rebated`)",
}
"""What helps a channel too near an edge, by what it is for."""


def _thin_tongues(unit: Unit, part: Part) -> Iterator[Finding]:
    """Wood left beside a channel at an edge, or between two channels that face each other."""
    size = part.blank.size
    channels = [
        (working, working.bounds(size))
        for working in part.workings
        if isinstance(working, Channel | Mortise | FingerPull)
    ]
    for working, box in channels:
        beside = _left_beside(size, working, box)
        if beside < LEAST_TONGUE - TOUCH:
            yield Finding(
                Severity.WARNING,
                Rule.THIN_TONGUE,
                f"beside a {working.word} in {named(part)} only {length_in(unit, beside)} of "
                "wood is left at the edge",
                f"Leave at least {length_in(unit, LEAST_TONGUE)}: "
                f"{_WAYS_OUT.get(working.use, _MOVE)}.",
                (part.ref,),
                beside,
                LEAST_TONGUE,
                case=(working.kind,),
            )
    for (first, one), (second, other) in combinations(channels, 2):
        left = _left_between(one, other)
        if left is not None and left < LEAST_TONGUE - TOUCH:
            yield Finding(
                Severity.WARNING,
                Rule.THIN_TONGUE,
                f"between a {first.word} and a {second.word} in {named(part)} only "
                f"{length_in(unit, left)} of wood is left",
                f"Leave at least {length_in(unit, LEAST_TONGUE)}: cut them shallower or apart.",
                (part.ref,),
                left,
                LEAST_TONGUE,
                case=(first.kind, second.kind),
            )


def _left_beside(size: Vector, working: Channel | Mortise | FingerPull, box: Box) -> float:
    """Least wood between a channel and the blank's edges or ends that it doesn't reach."""
    beside = [
        left
        for axis in working.surface.across
        for left in (box.low[axis], size[axis] - box.high[axis])
    ]
    return min((left for left in beside if left > TOUCH), default=math.inf)


def _left_between(first: Box, second: Box) -> float | None:
    """Wood between two channels that face each other along one axis; None where none is held."""
    overlap = first.overlap(second)
    gaps = [-each for each in overlap if each < -TOUCH]
    shared = sum(each > TOUCH for each in overlap)
    return gaps[0] if len(gaps) == 1 and shared == 2 else None


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
            Rule.MITRES_CROSS,
            f"the mitres of {named(part)} cross: {length_in(unit, -short)} are missing between "
            f"its short points",
            "Make the part longer or narrower.",
            (part.ref,),
            short,
            0.0,
            source=_GEOMETRY,
        )


def _past_the_saw(unit: Unit) -> Iterator[Finding]:
    """Bevels that want a saw tilted further from square than it goes; one for each tilt.

    A cut across the whole end or edge is tried from its other surface too: flat on its face a
    board needs the saw tilted by the bevel's angle, on its edge by what is left to 90 degrees.
    Wherever the cut lies in the plane of a face (an upright end cut to a slope, a tapered
    strip), a mitre gauge or a guide sets it, and the saw stands square.
    """
    cut: dict[str, dict[str, float]] = {}
    for part in unit.parts:
        for bevel in (each for each in part.workings if isinstance(each, Bevel)):
            tilt = bevel_tilt(bevel)
            if tilt is not None and tilt > STEEPEST + _DEGREES:
                cut.setdefault(f"{tilt:.1f}", {})[part.ref] = tilt
    for shown, tilts in cut.items():
        ref, tilt = next(iter(tilts.items()))
        yield Finding(
            Severity.WARNING,
            Rule.BEVEL_PAST_SAW,
            f"the bevel on {named(unit.part(ref))} wants a saw tilted {shown} degrees from square; "
            f"most stop at {STEEPEST:g}",
            f"Stand the board on that edge against a tall fence and tilt the saw {90 - tilt:.1f} "
            f"degrees, with the piece held in a jig; or plane the bevel by hand to a line.",
            (ref,),
            tilt,
            STEEPEST,
            "degrees",
        ).likewise(tilts)


def bevel_tilt(bevel: Bevel) -> float | None:
    """Degrees by which a saw tilts from square to cut a bevel with the part flat on its face.

    None where the cut is square to the faces, so that the saw needs no tilt.
    """
    axes = {bevel.surface.axis, bevel.edge.axis}
    if Surface.FACE.axis not in axes:
        return None
    # ``angle`` is measured from the edge; a saw stands square to the face.
    return bevel.angle if bevel.surface.axis == Surface.FACE.axis else 90.0 - bevel.angle


def _taken(mitre: Mitre, section: list[float], corner: tuple[bool, ...]) -> float:
    """What a mitre takes off the length at one corner (high or low by axis) of the section."""
    across = mitre.long.axis - 1
    if corner[across] == mitre.long.at_high:
        return 0.0
    return section[across] * math.tan(math.radians(mitre.angle))
