"""Do doors and drawer fronts of solid wood keep their gaps when they swell?"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH, along
from rodwright.geometry.nearby import Nearby
from rodwright.trade.movement import TABLE
from rodwright.unit import JointKind, Part, Role, Slide, Stock, Swing, Unit

NEAR = 100.0
"""Nothing that opens swells by more than this, mm."""


@dataclass(frozen=True, slots=True)
class _Front:
    """A slab or drawer front of solid wood, and the place along ``axis`` (unit frame) about which
    it swells: the hinged edge of a door, the screws that hold a drawer's front."""

    part: Part
    axis: int
    held: float

    def grows(self, way: int, moisture: tuple[float, float], stock: Stock | None = None) -> float:
        """How far (mm) the edge at the low (-1) or high (1) end of the axis moves outwards."""
        box = self.part.bounds()
        edge = box.high[self.axis] if way > 0 else box.low[self.axis]
        reach = max(0.0, (edge - self.held) * way)
        return (stock or self.part.blank.stock).swelling(reach, moisture)


@dataclass(frozen=True, slots=True)
class _Gap:
    """What a front swells into: the gap (mm) at its low (-1) or high (1) edge, and what lies
    beyond it."""

    front: _Front
    way: int
    wide: float
    beyond: Part


def binding(unit: Unit) -> Iterator[Finding]:
    """Slabs and drawer fronts of solid wood that swell by more than the gap beside them.

    They may be made at the driest.  A door's hinges hold one edge, so that all of its swelling
    goes to the other; a drawer's front swells up and down from the screws that hold it.  Two
    that meet share the gap.  Frames move by their stiles alone, and are left out.
    """
    fronts = {each.part.ref: each for each in _fronts(unit)}
    if not fronts:
        return
    parts = Nearby((part.bounds(), part) for part in unit.parts)
    moving = {ref: set(motion.refs) for motion in unit.motions for ref in motion.refs}
    told: set[frozenset[str]] = set()
    for front in fronts.values():
        for way in (-1, 1):
            gap = _beside(front, way, moving[front.part.ref], parts)
            if gap is None or frozenset({front.part.ref, gap.beyond.ref}) in told:
                continue
            other = fronts.get(gap.beyond.ref)
            if (finding := _closed(unit, gap, other)) is not None:
                told.add(frozenset({front.part.ref, gap.beyond.ref}))
                yield finding


def _fronts(unit: Unit) -> Iterator[_Front]:
    """Everything of solid wood in one piece that opens."""
    for motion in unit.motions:
        front = unit.part(motion.refs[0])
        if front.blank.stock.kind != "board":
            continue
        if isinstance(motion, Swing) and front.role is Role.DOOR:
            box = front.bounds()
            left = motion.hinge[0] < box.centre[0]
            yield _Front(front, 0, box.low[0] if left else box.high[0])
        elif isinstance(motion, Slide) and front.role is Role.DRAWER_FRONT:
            yield _Front(front, 2, _held(unit, motion))


def _held(unit: Unit, slide: Slide) -> float:
    """The height (z) about which a drawer's front swells.

    Where it moves apart from its box, its lowest screws; else that of the whole drawer: the
    runners under it, or the screws of its slides in the middle of its sides.
    """
    for joint in unit.joints:
        if joint.second == slide.refs[0] and joint.kind is JointKind.BUTTONED:
            return joint.at[2]
    for joint in unit.joints:
        if joint.second in slide.refs and joint.kind is JointKind.SLIDING:
            side = unit.part(joint.second).bounds()
            return side.centre[2] if joint.fixings else side.low[2]
    return unit.part(slide.refs[0]).bounds().centre[2]


def _beside(front: _Front, way: int, own: set[str], parts: Nearby[Part]) -> _Gap | None:
    """The gap at one edge of a front, and what lies beyond it, if it is near."""
    box, axis = front.part.bounds(), front.axis
    gaps = []
    for other in parts.within(box.grown(along(axis, NEAR))):
        there = other.bounds()
        beside = all(lap > TOUCH for i, lap in enumerate(box.overlap(there)) if i != axis)
        wide = there.low[axis] - box.high[axis] if way > 0 else box.low[axis] - there.high[axis]
        if wide >= -TOUCH and other.ref not in own and beside:
            gaps.append(_Gap(front, way, max(0.0, wide), other))
    return min(gaps, key=lambda each: each.wide, default=None)


def _closed(unit: Unit, gap: _Gap, other: _Front | None) -> Finding | None:
    """What there is to say of a gap that swelling closes; None of one that stays open."""
    front, way = gap.front, gap.way

    def closes(calm: bool = False) -> float:
        sides = [(front, way), *([(other, -way)] if other is not None else [])]
        return sum(
            each.grows(to, unit.moisture, each.part.blank.stock.quarter_sawn if calm else None)
            for each, to in sides
        )

    grows = closes()
    if grows <= gap.wide + TOUCH:
        return None
    dry, wet = unit.moisture
    what = "drawer" if front.axis == 2 else "door"
    into, wide = length_in(unit, grows), length_in(unit, gap.wide)
    swell = (
        f"{named(front.part)} and {named(gap.beyond)} swell {into} into their gap of {wide}"
        if other is not None
        else f"{named(front.part)} swells {into} into its gap of {wide} to {named(gap.beyond)}"
    )
    remedies = [f"Leave a gap of {length_in(unit, ceil(2 * grows - TOUCH) / 2)} (`gap`)"]
    if (calmer := closes(calm=True)) <= gap.wide + TOUCH:
        remedies.append(
            f"take quarter-sawn wood (`sawn: quarter`), which takes {length_in(unit, calmer)} of it"
        )
    elif calmer < grows:
        remedies.append(
            f"take quarter-sawn wood (`sawn: quarter`) and leave "
            f"{length_in(unit, ceil(2 * calmer - TOUCH) / 2)}"
        )
    remedies.append("make it of sheet material" + (" or framed" if what == "door" else ""))
    return Finding(
        Severity.WARNING,
        Rule.FRONT_SWELLS_SHUT,
        f"from {dry:g} to {wet:g} % moisture {swell}",
        "; or ".join(remedies) + ".",
        (front.part.ref, *([gap.beyond.ref] if other is not None else [])),
        grows,
        gap.wide,
        source=str(TABLE),
        case=() if other is not None else (gap.beyond.ref,),
    )
