"""Do doors and drawers clear what is round them, and each other, as they open?

What moves is taken as the box round it, what it may strike as the box round each part.
Boxes that overlap from the start are left to the check of solids, which is exact.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named, what_opens
from rodwright.checks.rules import Rule
from rodwright.checks.sweeping import Polygon, first_contact, overlap, rectangle, turned
from rodwright.geometry import Box
from rodwright.geometry.nearby import Nearby
from rodwright.opening.gaps import bent_at, edge_at
from rodwright.trade.gaps import ABOVE_FLOOR
from rodwright.unit import Motion, Slide, Swing, Unit

NEEDED = 90.0
"""A door that stops short of this, in degrees, is of little use (common practice, no source)."""
TOUCHING = 0.05
"""Sweeps that come this near (mm) only touch: far below any workshop's reach."""
_FAR = 5000.0
_SOURCE = "geometry of the set-out"


@dataclass(frozen=True, slots=True)
class _Obstacle:
    """What may be struck: its words, its refs, and its box."""

    words: str
    refs: tuple[str, ...]
    box: Box


@dataclass(frozen=True, slots=True)
class _Door:
    """A swing, and the box round what swings."""

    swing: Swing
    box: Box

    @property
    def reach(self) -> Box:
        """The box that holds all it sweeps."""
        (x, y), (a, b, z), (c, d, v) = self.swing.hinge, self.box.low, self.box.high
        far = max(math.hypot(u - x, w - y) for u in (a, c) for w in (b, d))
        return Box((x - far, y - far, z), (x + far, y + far, v))


def motions(unit: Unit) -> Iterator[Finding]:
    """Findings about each door and drawer of a unit."""
    if not unit.motions:
        return
    parts = [_Obstacle(named(part), (part.ref,), part.bounds()) for part in unit.parts]
    doors = [
        _Door(swing, _around(unit, swing.refs))
        for swing in unit.motions
        if isinstance(swing, Swing)
    ]
    all_parts = Nearby((part.box, part) for part in parts)
    all_doors = Nearby((door.reach, (number, door)) for number, door in enumerate(doors))
    for number, door in enumerate(doors):
        yield from _swings(unit, door, all_parts)
        yield from _over_floor(unit, door.swing, door.box)
        for other_number, other in all_doors.within(door.reach):
            if other_number > number:
                yield from _neighbours(unit, door, other)
    turning = {ref for door in doors for ref in door.swing.refs}
    fixed = Nearby((part.box, part) for part in parts if part.refs[0] not in turning)
    for slide in unit.motions:
        if isinstance(slide, Slide):
            box = _around(unit, slide.refs)
            yield from _over_floor(unit, slide, box)
            whole = _swept(box, slide)
            yield from _slides(unit, slide, whole, fixed)
            for _, door in all_doors.within(whole):
                yield from _past_door(unit, slide, door)


def _swings(unit: Unit, turning: _Door, parts: Nearby[_Obstacle]) -> Iterator[Finding]:
    """What a door strikes first."""
    swing, door, own = turning.swing, turning.box, set(turning.swing.refs)
    plan = _plan(door)
    hits = []
    for other in (*parts.within(turning.reach), *_walls(unit, door)):
        if own.intersection(other.refs) or not _level(door, other.box):
            continue
        met = first_contact(plan, swing.hinge, swing.angle, _plan(other.box, TOUCHING))
        if met:
            hits.append((met, other))
    if not hits:
        return
    met, other = min(hits, key=lambda hit: hit[0])
    words = what_opens(unit, swing)
    remedy = (
        "Set the doors further forward, hang it on the other side, or limit how far it opens "
        "(`hinge.opens`)."
    )
    if math.radians(met) < math.atan2(door.size[1], door.size[0]):
        # Up to there its rear corner at the closing edge swings outwards.
        remedy = "Leave a wider gap, make the door thinner, or plane its closing edge to a bevel."
    yield Finding(
        Severity.ERROR if met < NEEDED else Severity.WARNING,
        Rule.DOOR_STRIKES,
        f"{words} opens {met:.1f} of {abs(swing.angle):g} degrees and strikes {other.words}",
        remedy,
        (*swing.refs[:1], *other.refs),
        met,
        abs(swing.angle),
        "degrees",
        _SOURCE,
        case=() if other.refs else (other.words,),
    )


def _over_floor(unit: Unit, motion: Motion, box: Box) -> Iterator[Finding]:
    """What opens close over the floor."""
    low, what = box.low[2], "door" if isinstance(motion, Swing) else "drawer"
    if not unit.hung and low < ABOVE_FLOOR - TOUCHING:
        yield Finding(
            Severity.WARNING,
            Rule.NEAR_FLOOR,
            f"{what_opens(unit, motion)} hangs {length_in(unit, low)} over the floor: where that "
            "rises, it scrapes",
            f"Leave at least {length_in(unit, ABOVE_FLOOR)}: give the unit a `base`, or let the "
            f"{what} end {length_in(unit, ABOVE_FLOOR - low)} higher (`carcass.bottom_height`, "
            "less `overlay`, or a wider `gap`).",
            motion.refs[:1],
            low,
            ABOVE_FLOOR,
        )


def _neighbours(unit: Unit, one: _Door, other: _Door) -> Iterator[Finding]:
    """Two doors that can't both stand open: worth a warning if not even square, else a note."""
    if not _level(one.box, other.box):
        return
    least = _clash(one, other, math.inf)
    if least is None:
        return
    grave = _clash(one, other, NEEDED) is not None
    first, second = one.swing, other.swing
    stops = (
        f"the other strikes it at {least:.0f}" if least >= 1 else "the other doesn't open at all"
    )
    yield Finding(
        Severity.WARNING if grave else Severity.NOTE,
        Rule.DOORS_STRIKE_EACH_OTHER,
        f"{what_opens(unit, first)} and {what_opens(unit, second)} can't both stand open: with "
        f"one open {abs(first.angle):g} degrees, {stops}",
        "Hang one of them on its other side, or limit how far they open (`hinge.opens`).",
        (first.refs[0], second.refs[0]),
        least,
        abs(second.angle),
        "degrees",
        _SOURCE,
        case=(abs(first.angle),),
    )


def _clash(one: _Door, other: _Door, most: float) -> float | None:
    """How far the one of two doors opens that is stopped first by the other standing open, where
    each opens so many degrees at most; None where neither is."""
    met = [
        angle
        for still, moving in ((one, other), (other, one))
        if (
            angle := first_contact(
                _plan(moving.box),
                moving.swing.hinge,
                _limited(moving.swing.angle, most),
                turned(
                    _plan(still.box, TOUCHING),
                    still.swing.hinge,
                    _limited(still.swing.angle, most),
                ),
            )
        )
    ]
    return min(met, default=None)


def _limited(angle: float, most: float) -> float:
    return math.copysign(min(abs(angle), most), angle)


def _slides(unit: Unit, slide: Slide, whole: Box, fixed: Nearby[_Obstacle]) -> Iterator[Finding]:
    """What stands in a drawer's way."""
    own = set(slide.refs)
    for other in (*fixed.within(whole), *_walls(unit, whole)):
        if own.intersection(other.refs) or whole.penetration(other.box) <= TOUCHING:
            continue
        boxes = [unit.part(ref).bounds() for ref in slide.refs]
        depth = max(
            _swept(box, slide).penetration(other.box)
            if box.penetration(other.box) <= TOUCHING
            else 0.0
            for box in boxes
        )
        if depth > TOUCHING:
            yield Finding(
                Severity.ERROR,
                Rule.DRAWER_STRIKES,
                f"{what_opens(unit, slide)} runs {length_in(unit, depth)} into {other.words} as it "
                "is drawn out",
                "Move one of them, or make the drawer smaller.",
                (*slide.refs[:1], *other.refs),
                depth,
                0.0,
                source=_SOURCE,
                case=() if other.refs else (other.words,),
            )


def _past_door(unit: Unit, slide: Slide, turning: _Door) -> Iterator[Finding]:
    """A drawer against a door that stands open: it must pass one that it lies behind."""
    swing, door = turning.swing, turning.box
    boxes = [_swept(unit.part(ref).bounds(), slide) for ref in slide.refs]
    plans = [_plan(box) for box in boxes if _level(door, box)]

    def depth(angle: float) -> float:
        opened = turned(_plan(door), swing.hinge, angle)
        return max((overlap(plan, opened) for plan in plans), default=0.0)

    found = depth(swing.angle)
    if found <= TOUCHING:
        return
    severity, words = Severity.NOTE, "beside"
    if any(box.penetration(door) > TOUCHING for box in boxes):
        severity, words = Severity.ERROR, "behind"
    elif depth(_limited(swing.angle, NEEDED)) > TOUCHING:
        severity = Severity.WARNING
    yield Finding(
        severity,
        Rule.DRAWER_STRIKES_DOOR,
        f"{what_opens(unit, slide)} {words} {what_opens(unit, swing)} runs "
        f"{length_in(unit, found)} into it when that stands open {abs(swing.angle):g} degrees",
        "Let the door open further, or keep the drawer clear of it on packers (`drawers.packing`)."
        if severity is Severity.ERROR
        else "Close one before the other, or limit how far the door opens (`hinge.opens`).",
        (slide.refs[0], swing.refs[0]),
        found,
        0.0,
        source=_SOURCE,
        case=(abs(swing.angle),),
    )


def _walls(unit: Unit, moving: Box) -> list[_Obstacle]:
    """The walls beside an opening, where they are nearest over the height of what moves."""
    opening = unit.opening
    if opening is None or opening.shape is None or opening.front is None:
        return []
    plane = opening.shape.front
    low, high = moving.low[2], moving.high[2]

    def places(side: str) -> list[float]:
        line = plane.line(side)
        least, most = line[0].along, line[-1].along
        ends = (min(most, max(least, z)) for z in (low, high))
        return [edge_at(line, z) for z in bent_at(plane, side, *ends)]

    left, right = max(places("left")), min(places("right"))
    front, rear = opening.front, opening.front + _FAR
    return [
        _Obstacle("the left wall", (), Box((left - _FAR, front, low), (left, rear, high))),
        _Obstacle("the right wall", (), Box((right, front, low), (right + _FAR, rear, high))),
    ]


def _around(unit: Unit, refs: tuple[str, ...]) -> Box:
    """The box round several parts."""
    return Box.of_boxes(unit.part(ref).bounds() for ref in refs)


def _plan(box: Box, less: float = 0.0) -> Polygon:
    """A box seen from above, taken in by ``less`` mm all round."""
    (a, b, _), (c, d, _) = box.low, box.high
    x, y = min(less, (c - a) / 4), min(less, (d - b) / 4)
    return rectangle(a + x, b + y, c - x, d - y)


def _swept(box: Box, slide: Slide) -> Box:
    """The box round what a box passes through as it is drawn out."""
    return box.union(box.moved(slide.travel))


def _level(first: Box, second: Box) -> bool:
    """Whether two boxes have some height in common."""
    return first.overlap(second)[2] > TOUCHING
