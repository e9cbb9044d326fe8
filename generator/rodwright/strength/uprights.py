"""Whether sides, dividers and legs stand under what comes down them: buckling, and what they stand
on.

Millimetres, newtons.  An upright buckles in its thickness between two levels that meet it (those
that are only butted are for the maker to fix), as if hinged at both (Euler); past the last one it
is free at its end.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import pairwise
from math import pi

from rodwright.strength.carriers import GROUNDS, Hold, carriers
from rodwright.strength.lacking import lacking
from rodwright.strength.paths import GRAVITY, Paths, paths
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.strength.told_support import said
from rodwright.trade.creep import Duration
from rodwright.trade.design_strength import design_strength
from rodwright.trade.sizes import trade_sizes
from rodwright.trade.sources import Source
from rodwright.unit import LEVELS, UPRIGHTS, JointKind, Part, Role, Unit

EULER = Source("Euler: any text on strength of materials")
BUCKLING_SAFETY = 3.0
"""What buckles an upright over what it may carry."""
BUCKLING_SOURCE = Source("a third of what buckles it: common practice, no source")
BUCKLES = "load that comes down it, against buckling"
PRESSES = "pressure under its foot"
_LOOSE = (JointKind.RESTING, JointKind.FLOATING)


@dataclass(frozen=True, slots=True)
class Stretch:
    """A stretch of an upright between two heights: ``length`` times ``factor`` is how long it
    counts for buckling, ``load`` what comes down it (N)."""

    low: float
    high: float
    factor: float
    load: float

    @property
    def effective(self) -> float:
        """Its effective length, mm."""
        return (self.high - self.low) * self.factor


def uprights(unit: Unit) -> Iterator[Result]:
    """Buckling of every upright and leg, and what presses under its foot.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    down, holds = paths(unit), carriers(unit)
    for part in unit.parts:
        if part.role in UPRIGHTS or (part.role is Role.LEG and _is_post(part)):
            yield _buckles(unit, part, down)
            yield from _presses(unit, part, holds[part.ref], down)


def _is_post(part: Part) -> bool:
    across, deep, up = part.bounds().size
    return up > max(across, deep)


def stretches(unit: Unit, part: Part, down: Paths) -> tuple[Stretch, ...]:
    """The stretches of an upright between the levels that hold it, from the lowest up."""
    box = part.bounds()
    low, high = box.low[2], box.high[2]
    heights = {low}
    for joint in unit.joints:
        if part.ref in {joint.first, joint.second} and joint.kind not in _LOOSE:
            other = unit.part(joint.second if joint.first == part.ref else joint.first)
            if other.role in LEVELS:
                heights.add(min(max(joint.at[2], low), high))
    ordered = sorted(heights)
    found = [
        Stretch(one, other, 1.0, down.compression(part.ref, one + _STEP))
        for one, other in pairwise(ordered)
        if other - one > _STEP
    ]
    if high - ordered[-1] > _NEAR:
        found.append(
            Stretch(ordered[-1], high, 2.0, down.compression(part.ref, ordered[-1] + _STEP))
        )
    return tuple(found)


_NEAR = 40.0
"""A level so near an upright's end holds that end, mm."""
_STEP = 1.0
"""Stretches are longer than this, and carry what comes in higher than it above their lower end."""


def critical(modulus: float, inertia: float, length: float) -> float:
    """The load (N) that buckles a hinged post: pi^2 E I/L^2."""
    return pi**2 * modulus * inertia / length**2


def _buckles(unit: Unit, part: Part, down: Paths) -> Result:
    told = lacking(part.blank.stock, "along")
    mechanics = part.blank.stock.mechanics
    named = f"{part.role.value} {part.ref}"
    if told or mechanics is None:
        return Result(
            Group.UPRIGHTS,
            named,
            (part.ref,),
            BUCKLES,
            None,
            None,
            "kg",
            "N",
            EULER,
            lacking=told,
        )
    across, deep, _ = part.bounds().size
    thick, wide = min(across, deep), max(across, deep)
    worst = max(stretches(unit, part, down), key=lambda each: each.load * each.effective**2)
    modulus = mechanics.along.value

    def carries(thickness: float, length: float) -> float:
        inertia = wide * thickness**3 / 12
        return critical(modulus, inertia, length) / BUCKLING_SAFETY / GRAVITY

    thicker = trade_sizes(unit.display_unit).round_up(1.5 * thick)
    figure, limit = max(worst.load, 0.0) / GRAVITY, carries(thick, worst.effective)
    free = said(unit, worst.high - worst.low)
    remedies = (
        Remedy(
            f"a fixed shelf half-way up the {free} that nothing holds",
            figure * limit / carries(thick, worst.effective / 2),
            figure <= carries(thick, worst.effective / 2),
        ),
        Remedy(
            f"{said(unit, thicker)} thick instead of {said(unit, thick)}",
            figure * limit / carries(thicker, worst.effective),
            figure <= carries(thicker, worst.effective),
        ),
    )
    return Result(
        Group.UPRIGHTS,
        named,
        (part.ref,),
        BUCKLES,
        figure,
        limit,
        "kg",
        "N <= pi^2 E I/(k L)^2/3",
        EULER,
        (
            Input("N", "what comes down it", max(worst.load, 0.0), "N"),
            Input("E", "modulus along it", modulus, "N/mm2", mechanics.along.source),
            Input("I", "b t^3/12", wide * thick**3 / 12, "mm4"),
            Input("L", "between levels that hold it", worst.high - worst.low, "mm"),
            Input("k", "hinged at both ends 1, free at one 2", worst.factor, ""),
        ),
        limit_source=BUCKLING_SOURCE,
        notes=("loose shelves, back and face frame aren't counted on to hold it",),
        remedies=remedies if figure > limit else (),
    )


def _presses(unit: Unit, part: Part, holds: tuple[Hold, ...], down: Paths) -> Iterator[Result]:
    """Pressure on what one stands on, through its thickness."""
    under = [hold for hold in holds if hold.on not in GROUNDS]
    if len(under) != 1 or part.role not in UPRIGHTS:
        return
    below = unit.part(under[0].on)
    box, other = part.bounds(), below.bounds()
    if below.role not in LEVELS or other.low[2] >= box.low[2] - _STEP:
        return
    width, deep = (min(box.high[i], other.high[i]) - max(box.low[i], other.low[i]) for i in (0, 1))
    load = max(down.compression(part.ref, box.low[2]), 0.0)
    mechanics = below.blank.stock.mechanics
    bears = (
        design_strength(mechanics, "bearing", Duration.LONG, unit.loading.service_class)
        if mechanics
        else None
    )
    pressed = Result(
        Group.UPRIGHTS,
        f"{part.role.value} {part.ref} on {below.role.value} {below.ref}",
        (part.ref, below.ref),
        PRESSES,
        load / (width * deep),
        bears.value if bears else None,
        "N/mm2",
        "s = N/(t d)",
        Source("statics: load over the area that it stands on"),
        (
            Input("N", "what comes down it", load, "N"),
            Input("t", "thickness of the foot", width, "mm"),
            Input("d", "its depth", deep, "mm"),
        ),
        limit_source=bears.source if bears else None,
        notes=() if bears else (lacking(below.blank.stock, "bearing"),),
    )
    if bears and not pressed.holds:
        wide = trade_sizes(unit.display_unit).round_up(load / (bears.value * deep))
        told = f"a foot {said(unit, wide)} thick instead of {said(unit, width)}"
        pressed = replace(pressed, remedies=(Remedy(told, load / (wide * deep), holds=True),))
    yield pressed
