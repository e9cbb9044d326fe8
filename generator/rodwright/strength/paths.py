"""How every weight goes down: from part to part to the floor, the base or the wall.

Millimetres, unit frame; newtons, downwards.  Each part is carried where it is joined to what
stands under it or beside it (``carriers.py``).  What a level part carries it hands on as a
continuous beam on unyielding supports; anything else by the nearest places that carry it, each
by the rule of the lever.  What comes to the floor, the base and the wall is all there is.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from graphlib import TopologicalSorter
from itertools import pairwise

from rodwright.geometry import TOUCH, Vector
from rodwright.mass import mass_of, weight
from rodwright.strength.beams import Beam, BeamNotHeldError, Point, Segment, Support, bend
from rodwright.strength.carriers import GROUNDS, Ground, Hold, carriers
from rodwright.unit import LEVELS, Part, Unit

GRAVITY = 9.81
"""N for each kg."""


@dataclass(frozen=True, slots=True)
class Force:
    """A weight, N, that acts at a place; ``of`` is the part that it comes from: itself, what lies
    on it, or the last level part that handed it on."""

    at: Vector
    force: float
    of: str


@dataclass(frozen=True, slots=True)
class Paths:
    """Where all weights go: ``taken`` is what each part carries with its own weight, ``given``
    what comes to floor, base or wall, and from which part."""

    taken: dict[str, tuple[Force, ...]]
    given: tuple[tuple[Ground, str, Force], ...]

    def onto(self, ground: Ground) -> tuple[tuple[str, Force], ...]:
        """What comes to a ground, and from which part."""
        return tuple((ref, force) for where, ref, force in self.given if where is ground)

    @property
    def total(self) -> float:
        """All that the ground carries, N."""
        return sum(force.force for _, _, force in self.given)

    def compression(self, ref: str, height: float) -> float:
        """What an upright carries at a height, N: all that comes in above, with the share of its
        own weight that is counted at its middle."""
        return sum(each.force for each in self.taken[ref] if each.at[2] >= height - TOUCH)

    def from_others(self, ref: str) -> tuple[Force, ...]:
        """What other parts bring to one, N."""
        return tuple(each for each in self.taken[ref] if each.of != ref)


def paths(unit: Unit) -> Paths:
    """How all weights of a unit, its own and what it is to carry, go down.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    holds = carriers(unit)
    taken: dict[str, list[Force]] = {part.ref: list(_own(part)) for part in unit.parts}
    for ref, force in _loads(unit):
        taken[ref].append(force)
    given: list[tuple[Ground, str, Force]] = []
    carried_by = {ref: {each.on for each in of_one} - GROUNDS for ref, of_one in holds.items()}
    # A part comes after all that it carries.
    order = list(TopologicalSorter(carried_by).static_order())
    for ref in reversed(order):
        for hold, force in _handed_on(unit.part(ref), holds[ref], taken[ref]):
            if hold.on in GROUNDS:
                given.append((Ground(hold.on), ref, force))
            else:
                taken[hold.on].append(force)
    return Paths({ref: tuple(each) for ref, each in taken.items()}, tuple(given))


def _own(part: Part) -> Iterator[Force]:
    centre = part.placement.to_unit(mass_of(part.shape).centroid)
    yield Force(centre, weight(part) * GRAVITY, part.ref)


def _loads(unit: Unit) -> Iterator[tuple[str, Force]]:
    """What the unit is to carry, on the parts that carry it: every stretch as two forces that
    have its weight and its moments, those of two points of the rule of Gauss."""
    for load in unit.loading.loads:
        box = unit.part(load.ref).bounds()
        _, y, _ = box.centre
        top = box.high[2]
        for lump in load.lumps:
            yield load.ref, Force((lump.at, y, top), lump.mass * GRAVITY, load.ref)
        for each in load.stretches:
            half = (each.stop - each.start) / 2
            middle = (each.stop + each.start) / 2
            for side in (-1, 1):
                share = (1 + side / 3**0.5) / 2
                density = each.at_start + (each.at_stop - each.at_start) * share
                force = density * half / 1000 * GRAVITY
                place = (middle + side * half / 3**0.5, y, top)
                yield load.ref, Force(place, force, load.ref)


def _handed_on(
    part: Part, holds: tuple[Hold, ...], forces: Sequence[Force]
) -> Iterator[tuple[Hold, Force]]:
    """Where a part gives what it carries: straight down onto what it lies on all along, else to its
    holds by statics."""
    lain = all(hold.spread for hold in holds)
    axis = 1 - _long_axis(part) if lain else _long_axis(part)
    lines = _lines(holds, axis)
    if part.role in LEVELS and len(lines) > 2 and not lain:
        yield from _continuous(part, axis, lines, forces)
        return
    for force in forces:
        for at, share in _levers(sorted(lines), force.at[axis]):
            for hold in lines[at]:
                x, z = force.at[0] if hold.spread else hold.at[0], hold.at[2]
                given = force.force * share / len(lines[at])
                yield hold, Force((x, force.at[1], z), given, force.of)


def _lines(holds: Iterable[Hold], axis: int) -> dict[float, list[Hold]]:
    """The holds of a part by their place along it; those nearer than 1 mm are one."""
    lines: dict[float, list[Hold]] = {}
    for hold in holds:
        near = next((at for at in lines if abs(at - hold.at[axis]) < 1.0), hold.at[axis])
        lines.setdefault(near, []).append(hold)
    return lines


def _levers(places: list[float], at: float) -> tuple[tuple[float, float], ...]:
    """The places that carry a force at a place, and their shares of it."""
    if len(places) == 1:
        return ((places[0], 1.0),)
    pairs = list(pairwise(places))
    left, right = next((pair for pair in pairs if at <= pair[1]), pairs[-1])
    share = (at - left) / (right - left)
    return ((left, 1 - share), (right, share))


def _continuous(
    part: Part, axis: int, lines: dict[float, list[Hold]], forces: Sequence[Force]
) -> Iterator[tuple[Hold, Force]]:
    """What one stiff beam that runs on over its supports brings to each; where it would lift off
    one, that carries nothing, unless it would tip without."""
    box = part.bounds()
    places = sorted(lines)
    start = min(box.low[axis], places[0], *(force.at[axis] for force in forces))
    stop = max(box.high[axis], places[-1], *(force.at[axis] for force in forces))
    length = stop - start
    beam = Beam(
        length,
        (Segment(length, 1e9),),
        tuple(Support(at - start, lifts=True) for at in places),
        points=tuple(Point(min(f.at[axis] - start, length), f.force) for f in forces),
    )
    try:
        reactions = bend(beam).reactions
    except BeamNotHeldError:
        held = tuple(replace(each, lifts=False) for each in beam.supports)
        reactions = bend(replace(beam, supports=held)).reactions
    whole = sum(force.force for force in forces)
    middle = sum(force.force * force.at[1] for force in forces) / whole
    for at, reaction in zip(places, reactions, strict=True):
        for hold in lines[at]:
            place = (hold.at[0], middle, hold.at[2])
            yield hold, Force(place, reaction / len(lines[at]), part.ref)


def _long_axis(part: Part) -> int:
    across, back, _ = part.bounds().size
    return 0 if across >= back else 1
