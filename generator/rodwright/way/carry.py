"""Carrying a box through doorways, round corners and up on end: how to hold it, and what is left.

Exact for a box that is carried steadily: straight through a doorway (upright, on its back,
on its side, or rolled in the doorway's plane), and round a corner at one slope (every slope
up to the ceiling).  Millimetres.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from math import cos, degrees, inf, pi, sin

from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit, format_length
from rodwright.unit.way import Corner, Doorway, WayIn
from rodwright.way.formulas import (
    longest_round_corner,
    rolled_into,
    standing_up_height,
    steepest_carry,
)


@dataclass(frozen=True, slots=True)
class Load:
    """A box to be carried: what it is, and its width, height and depth as it will stand."""

    name: str
    width: float
    height: float
    depth: float


class StepKind(StrEnum):
    """What is passed at a step."""

    DOORWAY = "doorway"
    CORNER = "corner"
    STANDING = "standing"
    OPENING = "opening"


@dataclass(frozen=True, slots=True)
class Step:
    """One place on the way: how the load passes it, or by how much it doesn't.

    ``number`` counts the doorways and the corners, each from 1.  ``place`` and ``held`` are in
    words: where it is, and how the load is held there, at its best; ``upright`` says whether it
    stands as it will.  ``spare`` is what is left, in mm; less than 0 is what is lacking, and then
    ``tight`` says where.  ``outline`` is what the load shows there: across and up in a doorway,
    the sides of its footprint in a corner (none under too low a ceiling, where it shows nothing),
    depth and height where it is tilted up; ``roll_rad`` is how far that is rolled, anticlockwise.
    """

    kind: StepKind
    number: int
    place: str
    held: str
    spare: float
    tight: str
    outline: tuple[float, float] | None = None
    roll_rad: float = 0.0
    upright: bool = False

    @property
    def name(self) -> str:
        """A short name, of small letters, digits and hyphens: ``corner-2``, ``opening``."""
        counted = self.kind in (StepKind.DOORWAY, StepKind.CORNER)
        return f"{self.kind}-{self.number}" if counted else str(self.kind)

    @property
    def passes(self) -> bool:
        """Whether the load gets past."""
        return self.spare >= -TOUCH


def said(length: float, unit: LengthUnit) -> str:
    """A length with its unit, as the spec's file gives lengths."""
    return f"{format_length(length, unit)} {unit}"


def carry(load: Load, way: WayIn, unit: LengthUnit) -> tuple[Step, ...]:
    """Every doorway and corner in turn, and standing the load up at the end.

    ``unit`` is what lengths are said in.
    """
    steps = [
        through_doorway(load, door, way.hands, number, unit)
        for number, door in enumerate(way.doors, 1)
    ]
    steps += [
        round_corner(load, corner, way.hands, number, unit)
        for number, corner in enumerate(way.corners, 1)
    ]
    if way.ceiling is not None:
        steps.append(stood_up(load, way, steps, unit))
    return tuple(steps)


def through_doorway(
    load: Load, door: Doorway, hands: float, number: int, unit: LengthUnit = "mm"
) -> Step:
    """The best way of holding a box straight through a doorway, the easiest first."""
    wide, high = door.width - 2 * hands, door.height - hands
    place = f"doorway {number} ({format_length(door.width, unit)} x {said(door.height, unit)})"
    w, h, d = load.width, load.height, load.depth
    held = [
        ("upright, side first", d, h, True),
        ("upright, front first", w, h, True),
        ("on its back, end first", w, d, False),
        ("on its side, end first", d, w, False),
        ("on its back, side first", h, d, False),
        ("on its side, front first", h, w, False),
    ]
    tries = []
    for how, across, up, upright in held:
        spare = min(wide - across, high - up)
        tries.append(
            Step(
                StepKind.DOORWAY,
                number,
                place,
                how,
                spare,
                "the width" if wide - across < high - up else "the height",
                (across, up),
                upright=upright,
            )
        )
        if spare >= -TOUCH:
            return tries[-1]
    for how, across, up, _ in held[:3]:
        long, short = max(across, up), min(across, up)
        spare = _to_spare_rolled(long, short, max(wide, high), min(wide, high))
        if spare > 0:
            roll = rolled_into(long, short, max(wide, high), min(wide, high)) or 0.0
            lean = roll if (up >= across) == (high >= wide) else pi / 2 - roll
            held_so = f"leaning {round(degrees(lean))} degrees sideways, from {how}"
            return Step(StepKind.DOORWAY, number, place, held_so, spare, "both", (across, up), lean)
    return max(tries, key=lambda step: step.spare)


def _to_spare_rolled(long: float, short: float, wide: float, narrow: float) -> float:
    """By how much both sides of the doorway may shrink until a rolled box just passes."""
    low, high = 0.0, max(0.0, narrow)
    if narrow <= 0 or rolled_into(long, short, wide, narrow) is None:
        return 0.0
    for _ in range(40):
        middle = (low + high) / 2
        goes = rolled_into(long, short, wide - middle, narrow - middle) is not None
        low, high = (middle, high) if goes else (low, middle)
    return low


def round_corner(
    load: Load, corner: Corner, hands: float, number: int, unit: LengthUnit = "mm"
) -> Step:
    """The best slope at which a box is carried round a corner, the easiest first."""
    ceiling = inf if corner.ceiling is None else corner.ceiling - hands
    place = (
        f"corner {number} ({format_length(corner.before, unit)} into {said(corner.after, unit)}"
        + (f", ceiling {said(corner.ceiling, unit)})" if corner.ceiling is not None else ")")
    )
    best: Step | None = None
    for how, one, other, up, upright in _footprints(load, ceiling):
        short, long = (size + 2 * hands for size in sorted((one, other)))
        narrower = min(corner.before, corner.after)
        spare, tight = (
            (narrower - short, "the narrower corridor's width")
            if short > narrower
            else (longest_round_corner(short, corner.before, corner.after) - long, "the turn")
        )
        footprint: tuple[float, float] | None = (one, other)
        if ceiling - up <= spare:
            spare, tight = ceiling - up, "the ceiling"
            footprint = footprint if spare >= -TOUCH else None
        step = Step(StepKind.CORNER, number, place, how, spare, tight, footprint, upright=upright)
        if step.passes:
            return step
        if best is None or step.spare > best.spare:
            best = step
    assert best is not None
    return best


def _footprints(load: Load, ceiling: float) -> Iterator[tuple[str, float, float, float, bool]]:
    """How it is held, the two sides of its footprint, how high it stands, and whether upright.

    Raised by an angle, a box of length A and thickness B covers A cos + B sin on the floor,
    which has no least between its ends: so of all slopes only flat, steepest and on end count.
    """
    w, h, d = load.width, load.height, load.depth
    yield "upright", w, d, h, True
    yield "on its back", h, w, d, False
    yield "on its side", h, d, w, False
    for how, long, thick, across in (
        ("one end raised, from lying on its back", h, d, w),
        ("one end raised, from lying on its side", h, w, d),
        ("one side raised, from lying on its back", w, d, h),
        ("one side raised, from standing upright", w, h, d),
    ):
        slope = steepest_carry(long, thick, ceiling)
        if slope is not None and 0 < slope < pi / 2:
            footprint = long * cos(slope) + thick * sin(slope)
            up = long * sin(slope) + thick * cos(slope)
            yield f"{how}, by {round(degrees(slope))} degrees", footprint, across, up, False


def stood_up(load: Load, way: WayIn, before: list[Step], unit: LengthUnit = "mm") -> Step:
    """Whether a box can be stood up in the room, or need never be laid down."""
    assert way.ceiling is not None
    place = f"standing it up (ceiling {said(way.ceiling, unit)})"
    back = load.depth <= load.width
    needed = standing_up_height(load.height, min(load.depth, load.width))
    spare = way.ceiling - needed
    how = f"from lying on its {'back' if back else 'side'}, over the bottom " + (
        "back edge" if back else "side edge"
    )
    upright = way.ceiling - load.height
    if spare < -TOUCH and all(step.passes and step.upright for step in before):
        how = "carried in upright and never laid down"
        return Step(StepKind.STANDING, 1, place, how, upright, "its height")
    tight = f"tilted over it is {said(needed, unit)} high"
    return Step(
        StepKind.STANDING, 1, place, how, spare, tight, (min(load.depth, load.width), load.height)
    )
