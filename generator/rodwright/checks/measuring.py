"""Were enough readings taken of the opening, do they agree, and is what they say to be packed?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in
from rodwright.checks.rules import Rule
from rodwright.opening.gaps import bent_at, gap_along, side_length
from rodwright.opening.readings import EDGES, FLOOR_ASSUMED, PLUMB_ASSUMED, TOP_ASSUMED
from rodwright.trade.gaps import BATTEN_LIMIT
from rodwright.unit import OpeningReadings, OpeningShape, Unit
from rodwright.unit.facts import carcass_size

WIDTHS = HEIGHTS = 3
"""Fewer don't show whether walls, or floor and top, belly (common practice, no source: both ends
and the middle).  By simulation, with a single width read at the floor 7 units in a hundred don't
go in where each wall bellies by up to 4 mm and 33 at 8 mm, with two widths 3 and 37, with three
none: tests/opening/test_calibration.py."""
_SOURCE = "the readings with their assumed errors"


def measuring(unit: Unit) -> Iterator[Finding]:
    """What to read again, or as well, before anything is cut; and what takes a batten."""
    if unit.opening is None or unit.opening.shape is None:
        return
    shape, read = unit.opening.shape, unit.opening.readings
    if read is not None:
        yield from _too_few(read)
        yield from _too_few_heights(read)
        yield from _contradictions(unit, read)
        yield from _leans(unit, shape, read)
    yield from _battens(unit, shape)


def _too_few(read: OpeningReadings) -> Iterator[Finding]:
    lacking = WIDTHS - read.widths
    if lacking <= 0:
        return
    wanted, shown = (
        ("one more width is", "two widths don't")
        if lacking == 1
        else ("two more widths are", "a single width doesn't")
    )
    yield Finding(
        Severity.WARNING,
        Rule.TOO_FEW_WIDTHS,
        f"{wanted} wanted before anything is cut: {shown} show a belly in the walls",
        "Read the width at the floor, half-way up and under the top (`bottom`, `middle`, `top`).",
        figure=float(read.widths),
        limit=float(WIDTHS),
        measure="",
    )


def _too_few_heights(read: OpeningReadings) -> Iterator[Finding]:
    """Floors and tops belly more rarely than walls."""
    if read.heights >= HEIGHTS:
        return
    yield Finding(
        Severity.NOTE,
        Rule.TOO_FEW_HEIGHTS,
        f"{'two heights show' if read.heights > 1 else 'a single height shows'} no hump in the "
        "floor and no sag in the top",
        "Read the height half-way across too (`left`, `middle`, `right`), or hold a straight edge "
        "to both.",
        figure=float(read.heights),
        limit=float(HEIGHTS),
        measure="",
    )


def _contradictions(unit: Unit, read: OpeningReadings) -> Iterator[Finding]:
    for plane in dict.fromkeys(each.plane for each in read.contradictions):
        found = [each for each in read.contradictions if each.plane == plane]
        told = ", or ".join(
            f"{each.reading} says {length_in(unit, abs(each.off))} "
            f"{'more' if each.off > 0 else 'less'} than the others"
            for each in found
        )
        whose = "" if plane == "front" else f" of the {plane} plane"
        yield Finding(
            Severity.WARNING,
            Rule.CONTRADICTORY_READINGS,
            f"readings{whose} contradict each other: {told}",
            "Measure again: "
            + ", or ".join(each.reading for each in found)
            + ".  Until then the unit is made small enough to go in whichever is right.",
            figure=max(abs(each.off) for each in found),
            source="Baarda's test; see rodwright.opening.doubts",
        )


def _leans(unit: Unit, shape: OpeningShape, read: OpeningReadings) -> Iterator[Finding]:
    """Edges that run out by more than is assumed of one that nobody put a level to."""
    walls = {"left wall", "right wall"}
    out = {name: _out(shape, name) for name in EDGES}
    over = _over(shape, "left wall")
    closing = out["left wall"] - out["right wall"]
    if not walls & set(read.levelled) and abs(closing) > 2 * PLUMB_ASSUMED * over / 1000.0:
        # Widths alone: either wall may have all of it.
        yield Finding(
            Severity.WARNING,
            Rule.NO_LEVEL_TAKEN,
            f"the walls come {length_in(unit, abs(closing))} "
            f"{'nearer each other' if closing > 0 else 'farther apart'} going up "
            f"{length_in(unit, round(over))}, and nobody put a level to them: which of them "
            f"leans isn't known",
            "Hold a level or a plumb line to both, and add `opening.plumb`.",
            figure=round(abs(closing), 1),
            limit=round(2 * PLUMB_ASSUMED * over / 1000.0, 1),
            source=_SOURCE,
        )
        out = {name: each for name, each in out.items() if name not in walls}
    for name in [each for each in out if each not in read.levelled]:
        over, upright = _over(shape, name), name in walls
        limit = _ASSUMED.get(name, PLUMB_ASSUMED) * over / 1000.0
        if abs(out[name]) <= limit:
            continue
        what = "plumb" if upright else "level"
        yield Finding(
            Severity.WARNING,
            Rule.NO_LEVEL_TAKEN,
            f"by the other readings the {name} is {length_in(unit, abs(out[name]))} out "
            f"of {what} over {length_in(unit, round(over))}, and nobody put a level to it",
            f"Hold a level or a plumb line to it, and add `opening.{what}."
            f"{name.removesuffix(' wall')}`.",
            figure=round(abs(out[name]), 1),
            limit=round(limit, 1),
            source=_SOURCE,
        )


_ASSUMED = {"floor": FLOOR_ASSUMED, "top": TOP_ASSUMED}


def _out(shape: OpeningShape, name: str) -> float:
    """How far an edge of the front runs out of plumb or level: to +x going up, up going to +x."""
    low, high = (shape.front.corners[number] for number in EDGES[name])
    return high[0] - low[0] if "wall" in name else high[1] - low[1]


def _over(shape: OpeningShape, name: str) -> float:
    """Over what height or length."""
    low, high = (shape.front.corners[number] for number in EDGES[name])
    return high[1] - low[1] if "wall" in name else high[0] - low[0]


def _battens(unit: Unit, shape: OpeningShape) -> Iterator[Finding]:
    """Sides where more is to be packed than packers hold a screw through."""
    size = carcass_size(unit)
    for side in ("left", "right"):
        widest = max(
            (
                gap
                for name, plane in shape.planes.items()
                for gap in gap_along(
                    name, shape, size, side, bent_at(plane, side, 0.0, side_length(side, size))
                )
            ),
            key=lambda gap: gap.gap,
        )
        if widest.gap > BATTEN_LIMIT:
            yield Finding(
                Severity.WARNING,
                Rule.BATTEN_WANTED,
                f"at the {side} wall {length_in(unit, widest.gap)} are to be packed (up "
                f"to {length_in(unit, widest.most)}), and packers hold no screw beyond "
                f"{length_in(unit, BATTEN_LIMIT)}",
                "Fix a batten to the wall first, planed to it, and pack from that; or make the "
                "unit wider.",
                figure=round(widest.gap, 1),
                limit=BATTEN_LIMIT,
            )
