"""A unit with its doors open and its drawers drawn out, for a picture of what is inside."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from rodwright.geometry import Vector
from rodwright.unit import Motion, Part, Placement, Slide, Swing, Unit

SQUARE = 90.0
"""Doors are pictured open to a right angle at most, whatever their hinges allow."""
LEAST_DRAWN, MOST_DRAWN = 0.3, 0.75
"""How far drawers are drawn out, as shares of their travel: the higher ones less, so that one
looks into each."""


def opened_motions(unit: Unit) -> tuple[Motion, ...]:
    """The motions of a unit as far as they are pictured open."""
    drawn = dict(_drawn(unit))
    return tuple(
        _to_square(motion) if isinstance(motion, Swing) else _shortened(motion, drawn[motion])
        for motion in unit.motions
    )


def opened(unit: Unit) -> Unit:
    """The same unit with every door and drawer open; equal where nothing moves.

    Joints and clearances are those of the closed unit.
    """
    moved: dict[str, Part] = {}
    for motion in opened_motions(unit):
        for ref in motion.refs:
            moved[ref] = _moved(unit.part(ref), motion)
    return replace(unit, parts=tuple(moved.get(part.ref, part) for part in unit.parts))


def _to_square(swing: Swing) -> Swing:
    return replace(swing, angle=math.copysign(min(abs(swing.angle), SQUARE), swing.angle))


def _shortened(slide: Slide, share: float) -> Slide:
    x, y, z = slide.travel
    return replace(slide, travel=(share * x, share * y, share * z))


def _moved(part: Part, motion: Motion) -> Part:
    if isinstance(motion, Swing):
        return _turned(part, motion)
    return _drawn_out(part, motion.travel)


def _turned(part: Part, swing: Swing) -> Part:
    angle = math.radians(swing.angle)
    # A right angle's cosine isn't quite nothing in floating point; square parts stay square.
    cosine, sine = round(math.cos(angle), 12), round(math.sin(angle), 12)

    def turn(vector: Vector) -> Vector:
        x, y, z = vector
        return (cosine * x - sine * y, sine * x + cosine * y, z)

    (hinge_x, hinge_y), (x, y, z) = swing.hinge, part.placement.origin
    x, y, z = turn((x - hinge_x, y - hinge_y, z))
    placed = Placement(
        (x + hinge_x, y + hinge_y, z), turn(part.placement.length), turn(part.placement.width)
    )
    return replace(part, placement=placed)


def _drawn(unit: Unit) -> Iterator[tuple[Slide, float]]:
    """Every drawer with its share of travel, by its place in its stack from the top."""
    stacks: dict[tuple[float, float], list[tuple[float, Slide]]] = {}
    for motion in unit.motions:
        if isinstance(motion, Slide):
            boxes = [unit.part(ref).bounds() for ref in motion.refs]
            across = (
                round(min(box.low[0] for box in boxes), 3),
                round(max(box.high[0] for box in boxes), 3),
            )
            stacks.setdefault(across, []).append((max(box.high[2] for box in boxes), motion))
    for stack in stacks.values():
        stack.sort(key=lambda each: -each[0])
        for rank, (_, slide) in enumerate(stack):
            share = rank / (len(stack) - 1) if len(stack) > 1 else 0.5
            yield slide, LEAST_DRAWN + (MOST_DRAWN - LEAST_DRAWN) * share


def _drawn_out(part: Part, travel: Vector) -> Part:
    x, y, z = part.placement.origin
    origin = (x + travel[0], y + travel[1], z + travel[2])
    return replace(part, placement=replace(part.placement, origin=origin))
