"""Holes, mortises, pocket holes and finger pulls: is enough wood left round
them, and do they stay apart?"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from typing import assert_never

import numpy as np

from rodwright.checks.between_cuts import Cut, runs_into, wood_between
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH
from rodwright.trade.wood_left import LEAST_BORING, LEAST_FLOOR, LEAST_RIM
from rodwright.unit import Bore, FingerPull, Hole, Mortise, Notch, Part, PocketHole, Surface, Unit

_GEOMETRY = "geometry of the part"


def wood_round_bores(unit: Unit, part: Part) -> Iterator[Finding]:
    """Findings about a part's holes, mortises and pocket holes; limits are common practice, no
    source."""
    notched = any(isinstance(working, Notch) for working in part.workings)
    for working in part.workings:
        if not isinstance(working, Bore):
            continue
        match working:
            case Hole(depth=depth):
                if not notched:
                    yield from _near_an_edge(unit, part, working)
                if depth is not None:
                    yield from _deep(unit, part, working, depth)
            case Mortise(depth=depth) | FingerPull(depth=depth):
                yield from _deep(unit, part, working, depth)
            case PocketHole():
                yield from _pocket(unit, part, working)
            case _:
                assert_never(working)
    yield from _meetings(unit, part)


def _near_an_edge(unit: Unit, part: Part, hole: Hole) -> Iterator[Finding]:
    if hole.surface not in (Surface.FACE, Surface.REVERSE):
        return
    across = hole.surface.across
    edge = min(
        min(centre, part.blank.size[axis] - centre)
        for centre, axis in zip(hole.position, across, strict=True)
    )
    # Nothing is driven into a wide boring that would wedge its rim off.
    bored = hole.diameter >= LEAST_BORING
    least = hole.diameter / 2 + LEAST_RIM if bored else hole.diameter
    if edge < least - TOUCH:
        yield Finding(
            Severity.WARNING,
            Rule.HOLE_NEAR_EDGE,
            f"a {length_in(unit, hole.diameter)} hole in {named(part)} is "
            f"{length_in(unit, edge)} from an edge",
            f"Keep its middle at least {length_in(unit, least)} from the edge, or it may "
            "break out.",
            (part.ref,),
            edge,
            least,
            case=(hole.diameter,),
        )


def _deep(
    unit: Unit, part: Part, working: Hole | Mortise | FingerPull, depth: float
) -> Iterator[Finding]:
    through, what = part.blank.size[working.surface.axis], working.word
    floor, how = through - depth, "Drill" if isinstance(working, Hole) else "Cut"
    # A mortise as deep as its part is a slot, which lets a screw follow the wood.
    if abs(floor) <= TOUCH and isinstance(working, Mortise):
        return
    if floor <= TOUCH:
        yield Finding(
            Severity.ERROR,
            Rule.RIGHT_THROUGH,
            f"a {what} {length_in(unit, depth)} deep goes right through {named(part)}, "
            f"which is {length_in(unit, through)} there",
            f"{how} it shallower, or use thicker stock.",
            (part.ref,),
            depth,
            through,
            source=_GEOMETRY,
            case=(working.kind,),
        )
    elif floor < LEAST_FLOOR - TOUCH:
        yield Finding(
            Severity.WARNING,
            Rule.NEARLY_THROUGH,
            f"under a {what} in {named(part)} only {length_in(unit, floor)} are left",
            f"{how} it shallower, or use thicker stock.",
            (part.ref,),
            floor,
            LEAST_FLOOR,
            case=(working.kind,),
        )


def _pocket(unit: Unit, part: Part, pocket: PocketHole) -> Iterator[Finding]:
    """Where a pocket hole leaves the wood other than by its face and its end."""
    size, surface, end = part.blank.size, pocket.surface, pocket.end
    slope, radius, screw = math.radians(pocket.angle), pocket.diameter / 2, pocket.screw / 2
    through, along = size[surface.axis], size[pocket.run]
    # Depth below the face of the middle of the pocket's floor.
    floor = pocket.exit - pocket.stop * math.sin(slope)
    room = {
        "its pocket runs out at the side": min(pocket.position, along - pocket.position) - radius,
        "its screw comes out through the face": pocket.exit - screw / math.cos(slope),
        "its screw comes out at the back": through - pocket.exit - screw / math.cos(slope),
        "its pocket comes out through the back": through - pocket.floor,
        "its pocket comes out at the end": pocket.stop * math.cos(slope) - radius * math.sin(slope),
        "the middle of its floor isn't in the wood": floor,
        "its mouth runs off the far side": size[end.axis] - pocket.mouth,
    }
    worst = min(room, key=lambda each: room[each])
    if room[worst] < -TOUCH:
        yield Finding(
            Severity.ERROR,
            Rule.POCKET_HOLE_BREAKS_OUT,
            f"a pocket hole in {named(part)} breaks out: {worst}, by "
            f"{length_in(unit, -room[worst])}",
            "Change how deep it leaves the end or where it stops, or use thicker stock.",
            (part.ref,),
            room[worst],
            0.0,
            source=_GEOMETRY,
            case=(worst,),
        )
    elif through - pocket.floor < LEAST_FLOOR - TOUCH:
        yield Finding(
            Severity.WARNING,
            Rule.NEARLY_THROUGH,
            f"under a pocket hole in {named(part)} only {length_in(unit, through - pocket.floor)} "
            "are left",
            "Stop it farther from the end, or let it leave the end less deep.",
            (part.ref,),
            through - pocket.floor,
            LEAST_FLOOR,
            case=(pocket.kind,),
        )


def _meetings(unit: Unit, part: Part) -> Iterator[Finding]:
    """Bores that meet other workings, or nearly; one finding for all alike, at the worst."""
    cuts = [cut for working in part.workings if (cut := Cut.of(part.blank.size, working))]
    thin: dict[tuple[str, str], list[float]] = {}
    running: dict[tuple[str, str], int] = {}
    for first, second in _close(cuts):
        one, other = first.working.word, second.working.word
        left = wood_between(first, second)
        if left is not None and left < LEAST_FLOOR - TOUCH:
            thin.setdefault((one, other), []).append(left)
        elif left is None and runs_into(first, second):
            running[one, other] = running.get((one, other), 0) + 1
    for (one, other), lefts in thin.items():
        least = min(lefts)
        meets = least <= TOUCH
        yield Finding(
            Severity.ERROR if meets else Severity.WARNING,
            Rule.BORES_MEET if meets else Rule.THIN_WOOD_BETWEEN_BORES,
            f"in {named(part)} a {one} and a {other} from opposite surfaces "
            + ("meet" if meets else f"leave only {length_in(unit, least)} of wood between them")
            + (f", and so in {len(lefts)} places" if len(lefts) > 1 else ""),
            f"Leave at least {length_in(unit, LEAST_FLOOR)}: move one, or make them shallower.",
            (part.ref,),
            least,
            LEAST_FLOOR,
            case=(one, other, len(lefts)),
        )
    for (one, other), count in running.items():
        yield Finding(
            Severity.WARNING,
            Rule.BORE_RUNS_INTO_CUT,
            f"in {named(part)} a {one} and a {other} run into each other"
            + (f" in {count} places" if count > 1 else ""),
            "Move one of them: a bit wanders where it breaks into a cut, and holds little there.",
            (part.ref,),
            source=_GEOMETRY,
            case=(one, other, count),
        )


def _close(cuts: Sequence[Cut]) -> Iterator[tuple[Cut, Cut]]:
    """Pairs of a bore and another cut whose bounds lie less than the least floor apart."""
    bores_too = [isinstance(cut.working, Bore) for cut in cuts]
    bored = [number for number, is_bore in enumerate(bores_too) if is_bore]
    if not bored:
        return
    lows, highs = (np.array([getattr(cut.box, end) for cut in cuts]) for end in ("low", "high"))
    apart = np.maximum(lows[bored, None] - highs, lows - highs[bored, None])
    for row, other in np.argwhere(apart.max(axis=2) < LEAST_FLOOR).tolist():
        # Two bores come up twice.
        if other < bored[row] or (other > bored[row] and not bores_too[other]):
            yield cuts[bored[row]], cuts[other]
