"""Things put where a unit carries something.  mm, unit frame; masses in kg."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import islice

import numpy as np

from rodwright.geometry.boxes import Box
from rodwright.photo.contents.candidates import Candidates
from rodwright.photo.contents.cloths import garment, rail
from rodwright.photo.contents.free import FreeRoom
from rodwright.photo.contents.kinds import kind_of
from rodwright.photo.contents.things import Thing
from rodwright.unit import Load, Role, Unit

ASSUMED, ON_TOP = 0.5, 0.12
"""The share of its load that is shown where nothing was said of it, and where it stands on top of
the unit: there a few things look better, though the first may weigh all of it (a choice)."""
_OPEN_ABOVE = 500.0
"""A top with so much free above it is on top."""
_MOST_HIGH = 700.0
_SETBACK = 14.0
_STEP = 6.0
_MISSES = 6
_HALF = 12.0
"""Half the width of what feels for free room, mm."""
_LEAST_DEEP, _LEAST_HIGH = 60.0, 45.0
_BETWEEN_RANKS = 12.0
_RAIL, _BELOW_RAIL, _SHOULDERS = 12.5, 35.0, 440.0
_GARMENT_MASS, _GARMENT_WIDE, _GARMENT_LONG = 1.4, 62.0, 980.0
"""A coat on its hanger, kg; how thick it hangs and how long it is, mm (from memory)."""


@dataclass(frozen=True, slots=True)
class Bed:
    """What things stand on: a part, from ``left`` to ``right`` (x), from ``front`` to ``rear`` (y),
    at a height, with ``high`` free above; at the most ``mass`` kg of what is ``said``, of which
    little is shown ``on_top``."""

    ref: str
    said: str
    left: float
    right: float
    front: float
    rear: float
    at: float
    high: float
    mass: float
    on_top: bool


def things_in(unit: Unit, seed: int) -> tuple[Thing, ...]:
    """What is shown on the shelves, in the drawers and on the rails of a unit, at most as heavy as
    what it is said to carry; equal seeds give equal things.  In a unit that stands open things are
    where its parts are then."""
    free = FreeRoom.of(unit)
    things: list[Thing] = []
    for number, load in enumerate(unit.loading.loads):
        random = np.random.default_rng([seed, 23, number])
        for bed in _beds(unit, load, free):
            things += _filled(bed, free, random)
    for number, rod in enumerate(_rails(unit)):
        things += _hung(unit, rod, free, np.random.default_rng([seed, 29, number]))
    return tuple(things)


def _beds(unit: Unit, load: Load, free: FreeRoom) -> Iterator[Bed]:
    part = unit.part(load.ref)
    pieces = [(each.start, each.stop, each.mass) for each in load.stretches]
    pieces += [
        (each.at - 500.0, each.at + 500.0, each.mass) for each in load.lumps if each.up is None
    ]
    # A drawer that is drawn out, or a part askew, is where its bounds are.
    box = part.bounds()
    for left, right, mass in pieces:
        left, right = max(left, box.low[0]), min(right, box.high[0])
        bed = _bed(box, (left, right), free)
        if bed is None:
            continue
        front, rear, high = bed
        top = part.role in (Role.TOP, Role.WORKTOP) and high >= _OPEN_ABOVE
        shown = mass * ASSUMED if load.assumed else mass
        at = box.high[2]
        yield Bed(load.ref, load.said, left, right, front, rear, at, high, shown, top)


def _bed(box: Box, reach: tuple[float, float], free: FreeRoom) -> tuple[float, float, float] | None:
    """Where a bed begins and ends from front to rear, and the height over it; None where there is
    no room to speak of."""
    middle, at = (reach[0] + reach[1]) / 2, box.high[2]
    found = _clear(box, middle, (at, at + _LEAST_HIGH), free)
    if found is None or found[1] - found[0] < _LEAST_DEEP:
        return None
    front, rear = found
    low = (middle - _HALF, front, at)
    over = Box(low, (middle + _HALF, min(front + 150.0, rear), at + 1.0))
    return front, rear, free.height_over(over, _MOST_HIGH)


def _clear(
    box: Box, x: float, levels: tuple[float, float], free: FreeRoom
) -> tuple[float, float] | None:
    """From where to where it is free, in the longest stretch within a box from its front to its
    rear, at a place along x and between two levels."""
    best = start = end = 0.0
    found = None
    for y in np.arange(box.low[1] + 2.0, box.high[1] - _STEP, _STEP).tolist():
        if not free.is_clear(Box((x - _HALF, y, levels[0]), (x + _HALF, y + _STEP, levels[1]))):
            continue
        if y > end + _STEP / 2 or found is None:
            start = y
        end = y + _STEP
        if end - start > best:
            best, found = end - start, (start, end)
    return found


def _filled(bed: Bed, free: FreeRoom, random: np.random.Generator) -> Iterator[Thing]:
    """Things in ranks from the front to the rear, as long as the bed carries them."""
    deep = bed.rear - bed.front - _SETBACK
    if deep < _LEAST_DEEP or bed.high < _LEAST_HIGH:
        return
    candidates = kind_of(bed.said, on_top=bed.on_top)(random, deep, bed.high)
    left, y = bed.mass, bed.front + _SETBACK
    while bed.rear - y >= _LEAST_DEEP and left > 0:
        deepest = 0.0
        for thing in _rank(bed, y, left, free, candidates, random):
            left -= thing.mass
            deepest = max(deepest, thing.box.size[1])
            yield thing
        if not deepest or bed.on_top:
            return
        y += deepest + _BETWEEN_RANKS


def _rank(
    bed: Bed,
    y: float,
    mass: float,
    free: FreeRoom,
    candidates: Candidates,
    random: np.random.Generator,
) -> Iterator[Thing]:
    x, least = bed.left + 2.0, mass
    if bed.on_top:
        x += float(random.uniform(0.06, 0.5)) * (bed.right - bed.left)
        least = mass * (1 - ON_TOP)
    while x < bed.right - 3.0:
        for each in islice(candidates, _MISSES):
            box = Box.of_size(each.size).moved((x, y, bed.at))
            fits = box.high[0] <= bed.right - 1.0 and box.high[1] <= bed.rear
            if each.mass <= mass + 1e-9 and fits and free.is_clear(box):
                free.take(box)
                yield Thing(bed.ref, box, each.mass, each.bodies(box))
                mass -= each.mass
                x = box.high[0] + each.gap
                break
        else:
            x += _STEP
        if bed.on_top and mass <= least:
            return


@dataclass(frozen=True, slots=True)
class _Rail:
    ref: str
    left: float
    right: float
    at: float
    mass: float


def _rails(unit: Unit) -> Iterator[_Rail]:
    """Rails for clothes, each between the two uprights that carry its ends."""
    ends: dict[tuple[str, float], list[tuple[float, float, str]]] = {}
    for load in unit.loading.loads:
        for lump in load.lumps:
            if lump.up is not None:
                ends.setdefault((load.said, round(lump.up, 1)), []).append(
                    (lump.at, lump.mass, load.ref)
                )
    for (_, up), found in ends.items():
        found.sort()
        for (left, mass, ref), (right, other, _) in zip(found[::2], found[1::2], strict=False):
            yield _Rail(ref, left, right, up, mass + other)


def _hung(unit: Unit, rod: _Rail, free: FreeRoom, random: np.random.Generator) -> Iterator[Thing]:
    found = _clear(
        unit.part(rod.ref).bounds(), (rod.left + rod.right) / 2, (rod.at - 200.0, rod.at), free
    )
    if found is None:
        return
    y = (found[0] + found[1]) / 2
    ends = Box((rod.left, y - _RAIL, rod.at - _RAIL), (rod.right, y + _RAIL, rod.at + _RAIL))
    if not free.is_clear(ends):
        return
    yield Thing(rod.ref, ends, 0.0, (rail(rod.left, rod.right, y, rod.at, _RAIL),))
    x, mass = rod.left + 50.0, rod.mass
    half = min(_SHOULDERS, found[1] - found[0] - 20.0) / 2
    while x + _GARMENT_WIDE < rod.right - 20.0 and mass >= _GARMENT_MASS:
        head = rod.at - _BELOW_RAIL
        long = _GARMENT_LONG * float(random.uniform(0.62, 1.0))
        hangs = Box((x, y - half, head - long), (x + _GARMENT_WIDE, y + half, head))
        while long > 300.0 and not free.is_clear(hangs):
            long -= 20.0
            hangs = hangs.spanning(2, head - long, head)
        if free.is_clear(hangs):
            free.take(hangs)
            mass -= _GARMENT_MASS
            yield Thing(rod.ref, hangs, _GARMENT_MASS, garment(hangs, random))
        x += _GARMENT_WIDE + float(random.uniform(2.0, 34.0))
