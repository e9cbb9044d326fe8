"""Do doors and drawers clear what is round them, and each other, as they open?

What moves is taken as the box round it, what it may strike as the box round each part.
Boxes that overlap from the start are left to the check of solids, which is exact.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.sweeping import Polygon, first_contact, overlap, rectangle, turned
from rodwright.checks.wording import length_in, named
from rodwright.parts import Box, Slide, Swing, Unit

NEEDED = 90.0
"""A door that stops short of this, in degrees, is of little use (common practice, no source)."""
TOUCHING = 0.05
"""Sweeps that come this near (mm) only touch: far below any workshop's reach."""
ABOVE_FLOOR = 5.0
"""Left under a door, mm, for a floor that rises (common practice, no source)."""
_FAR = 5000.0
_SOURCE = "geometry of the set-out"


@dataclass(frozen=True, slots=True)
class _Obstacle:
    """What may be struck: its words, its refs, and its box."""

    words: str
    refs: tuple[str, ...]
    box: Box


def motions(unit: Unit) -> Iterator[Finding]:
    """Findings about each door and drawer of a unit."""
    if not unit.motions:
        return
    swings = [motion for motion in unit.motions if isinstance(motion, Swing)]
    slides = [motion for motion in unit.motions if isinstance(motion, Slide)]
    parts = [_Obstacle(named(part), (part.ref,), part.bounds()) for part in unit.parts]
    for swing in swings:
        yield from _swings(unit, swing, parts)
        yield from _over_floor(unit, swing)
    for first, second in combinations(swings, 2):
        yield from _neighbours(unit, first, second)
    doors = {ref for swing in swings for ref in swing.refs}
    fixed = [part for part in parts if part.refs[0] not in doors]
    for slide in slides:
        yield from _slides(unit, slide, fixed)
        for swing in swings:
            yield from _past_door(unit, slide, swing)


def _swings(unit: Unit, swing: Swing, parts: list[_Obstacle]) -> Iterator[Finding]:
    """What a door strikes first."""
    door, own = _round(unit, swing.refs), set(swing.refs)
    plan = _plan(door)
    hits = []
    for other in (*parts, *_walls(unit, door)):
        if own.intersection(other.refs) or not _share(door, other.box, 2):
            continue
        met = first_contact(plan, swing.hinge, swing.angle, _plan(other.box, TOUCHING))
        if met:
            hits.append((met, other))
    if not hits:
        return
    met, other = min(hits, key=lambda hit: hit[0])
    words = _door(unit, swing)
    remedy = (
        "Set the doors further forward, hang it on the other side, or limit how far it opens "
        "(`hinge.opens`)."
    )
    if math.radians(met) < math.atan2(door.size[1], door.size[0]):
        # Up to there its rear corner at the closing edge swings outwards.
        remedy = "Leave a wider gap, make the door thinner, or plane its closing edge to a bevel."
    yield Finding(
        Severity.ERROR if met < NEEDED else Severity.WARNING,
        "a door's swing",
        f"{words} opens {met:.1f} of {abs(swing.angle):g} degrees and strikes {other.words}",
        remedy,
        (*swing.refs[:1], *other.refs),
        met,
        abs(swing.angle),
        "degrees",
        _SOURCE,
    )


def _over_floor(unit: Unit, swing: Swing) -> Iterator[Finding]:
    low = _round(unit, swing.refs).low[2]
    if low < ABOVE_FLOOR - TOUCHING:
        yield Finding(
            Severity.WARNING,
            "a door over the floor",
            f"{_door(unit, swing)} hangs {length_in(unit, low)} over the floor: where that rises, "
            "it scrapes",
            f"Leave at least {length_in(unit, ABOVE_FLOOR)}: give the unit a base, or let the "
            "doors cover less.",
            swing.refs[:1],
            low,
            ABOVE_FLOOR,
        )


def _neighbours(unit: Unit, first: Swing, second: Swing) -> Iterator[Finding]:
    """Two doors that can't both stand open."""
    one, other = _round(unit, first.refs), _round(unit, second.refs)
    if not _share(one, other, 2):
        return
    met = [
        angle
        for still, box, swing, plan in (
            (first, one, second, _plan(other)),
            (second, other, first, _plan(one)),
        )
        if (
            angle := first_contact(
                plan, swing.hinge, swing.angle,
                turned(_plan(box, TOUCHING), still.hinge, still.angle),
            )
        )
    ]  # fmt: skip
    if met:
        least = min(met)
        yield Finding(
            Severity.WARNING,
            "open neighbours",
            f"{_door(unit, first)} and {_door(unit, second)} can't both stand open: with one open "
            f"{abs(first.angle):g} degrees, the other strikes it at {least:.0f}",
            "Hang one of them on its other side, or limit how far they open (`hinge.opens`).",
            (first.refs[0], second.refs[0]),
            least,
            abs(second.angle),
            "degrees",
            _SOURCE,
        )


def _slides(unit: Unit, slide: Slide, fixed: list[_Obstacle]) -> Iterator[Finding]:
    """What stands in a drawer's way."""
    own = set(slide.refs)
    whole = _swept(_round(unit, slide.refs), slide)
    for other in (*fixed, *_walls(unit, whole)):
        if own.intersection(other.refs) or _reach(whole, other.box) <= TOUCHING:
            continue
        boxes = [unit.part(ref).bounds() for ref in slide.refs]
        depth = max(
            _reach(_swept(box, slide), other.box) if _reach(box, other.box) <= TOUCHING else 0.0
            for box in boxes
        )
        if depth > TOUCHING:
            yield Finding(
                Severity.ERROR,
                "a drawer's way",
                f"{_drawer(unit, slide)} runs {length_in(unit, depth)} into {other.words} as it is "
                "drawn out",
                "Move one of them, or make the drawer smaller.",
                (*slide.refs[:1], *other.refs),
                depth,
                0.0,
                source=_SOURCE,
            )


def _past_door(unit: Unit, slide: Slide, swing: Swing) -> Iterator[Finding]:
    """A drawer against a door that stands open."""
    door = _round(unit, swing.refs)
    opened = turned(_plan(door), swing.hinge, swing.angle)
    boxes = [_swept(unit.part(ref).bounds(), slide) for ref in slide.refs]
    depth = max((overlap(_plan(box), opened) for box in boxes if _share(door, box, 2)), default=0.0)
    if depth <= TOUCHING:
        return
    behind = any(_reach(box, door) > TOUCHING for box in boxes)
    words = "behind" if behind else "beside"
    yield Finding(
        Severity.ERROR if behind else Severity.WARNING,
        "a drawer and a door",
        f"{_drawer(unit, slide)} {words} {_door(unit, swing)} runs {length_in(unit, depth)} into "
        f"it when that stands open {abs(swing.angle):g} degrees",
        "Let the door open further, or keep the drawer clear of it on packers (`drawers.packing`).",
        (slide.refs[0], swing.refs[0]),
        depth,
        0.0,
        source=_SOURCE,
    )


def _walls(unit: Unit, moving: Box) -> list[_Obstacle]:
    """The walls beside an opening, where they are nearest over the height of what moves."""
    opening = unit.opening
    if opening is None or opening.shape is None or opening.front is None:
        return []
    bottom_left, bottom_right, top_right, top_left = opening.shape.front
    low, high = moving.low[2], moving.high[2]

    def at(lower: tuple[float, float], upper: tuple[float, float], z: float) -> float:
        share = min(1.0, max(0.0, (z - lower[1]) / (upper[1] - lower[1])))
        return lower[0] + share * (upper[0] - lower[0])

    left = max(at(bottom_left, top_left, z) for z in (low, high))
    right = min(at(bottom_right, top_right, z) for z in (low, high))
    front, rear = opening.front, opening.front + _FAR
    return [
        _Obstacle("the left wall", (), Box((left - _FAR, front, low), (left, rear, high))),
        _Obstacle("the right wall", (), Box((right, front, low), (right + _FAR, rear, high))),
    ]


def _round(unit: Unit, refs: tuple[str, ...]) -> Box:
    """The box round several parts."""
    boxes = [unit.part(ref).bounds() for ref in refs]
    low = [min(box.low[axis] for box in boxes) for axis in range(3)]
    high = [max(box.high[axis] for box in boxes) for axis in range(3)]
    return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))


def _plan(box: Box, less: float = 0.0) -> Polygon:
    """A box seen from above, taken in by ``less`` mm all round."""
    (a, b, _), (c, d, _) = box.low, box.high
    x, y = min(less, (c - a) / 4), min(less, (d - b) / 4)
    return rectangle(a + x, b + y, c - x, d - y)


def _swept(box: Box, slide: Slide) -> Box:
    """The box round what a box passes through as it is drawn out."""
    low = [a + min(0.0, way) for a, way in zip(box.low, slide.travel, strict=True)]
    high = [a + max(0.0, way) for a, way in zip(box.high, slide.travel, strict=True)]
    return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))


def _share(first: Box, second: Box, axis: int) -> bool:
    """Whether two boxes have a stretch along an axis in common."""
    low, high = max(first.low[axis], second.low[axis]), min(first.high[axis], second.high[axis])
    return high - low > TOUCHING


def _reach(first: Box, second: Box) -> float:
    """How deep two boxes reach into each other, mm; 0 or less where they don't."""
    return min(min(first.high[i], second.high[i]) - max(first.low[i], second.low[i])
               for i in range(3))  # fmt: skip


def _door(unit: Unit, swing: Swing) -> str:
    part = unit.part(swing.refs[0])
    return named(part) if len(swing.refs) == 1 else f"the door of {named(part)}"


def _drawer(unit: Unit, slide: Slide) -> str:
    return f"the drawer of {named(unit.part(slide.refs[0]))}"
