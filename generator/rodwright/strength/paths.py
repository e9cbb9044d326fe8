"""How every weight goes down: from part to part to the floor, the base or the wall.

Millimetres, unit frame; newtons, downwards.  Each part is carried where it is joined to what
stands under it or beside it (``carriers.py``).  What a level part carries it hands on as a
continuous beam on unyielding supports; anything else by the nearest places that carry it, each
by the rule of the lever.  What comes to the floor, the base and the wall is all there is.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from graphlib import TopologicalSorter
from itertools import pairwise

from rodwright.geometry import TOUCH, Vector
from rodwright.mass import mass_of, weight
from rodwright.strength.beams import Beam, Point, Segment, Support, bend
from rodwright.strength.carriers import GROUNDS, Ground, Hold, carriers
from rodwright.unit import LEVELS, Part, Unit

GRAVITY = 9.81
"""N for each kg."""


@dataclass(frozen=True, slots=True)
class Force:
    """A weight, N, that acts at a place; ``of`` is the part it comes from first, ``loaded``
    whether it is what the unit carries and not its own weight."""

    at: Vector
    force: float
    of: str
    loaded: bool = False


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
            yield load.ref, Force((lump.at, y, top), lump.mass * GRAVITY, load.ref, loaded=True)
        for each in load.stretches:
            half = (each.stop - each.start) / 2
            middle = (each.stop + each.start) / 2
            for side in (-1, 1):
                share = (1 + side / 3**0.5) / 2
                density = each.at_start + (each.at_stop - each.at_start) * share
                force = density * half / 1000 * GRAVITY
                place = (middle + side * half / 3**0.5, y, top)
                yield load.ref, Force(place, force, load.ref, loaded=True)


def _handed_on(
    part: Part, holds: tuple[Hold, ...], forces: Iterable[Force]
) -> Iterator[tuple[Hold, Force]]:
    """Where a part gives what it carries: straight down onto the ground it lies on, else to its
    holds by statics."""
    for force in forces:
        for hold, share in _shares(part, holds, force.at):
            place = (force.at[0] if hold.spread else hold.at[0], force.at[1], hold.at[2])
            yield hold, Force(place, force.force * share, force.of, force.loaded)


def _shares(part: Part, holds: tuple[Hold, ...], at: Vector) -> list[tuple[Hold, float]]:
    """Which share of a force at a place each hold of a part takes."""
    if len(holds) == 1:
        return [(holds[0], 1.0)]
    lain = all(hold.spread for hold in holds)
    axis = 1 - _long_axis(part) if lain else _long_axis(part)
    lines: dict[float, list[Hold]] = {}
    for hold in holds:
        near = next((x for x in lines if abs(x - hold.at[axis]) < 1.0), hold.at[axis])
        lines.setdefault(near, []).append(hold)
    xs = sorted(lines)
    shares = _along(part, axis, xs, at[axis])
    return [
        (hold, share / len(lines[x]))
        for x, share in zip(xs, shares, strict=True)
        if share
        for hold in lines[x]
    ]


def _along(part: Part, axis: int, xs: list[float], at: float) -> list[float]:
    """The shares of supports at places along a part."""
    if len(xs) == 1:
        return [1.0]
    if part.role in LEVELS and len(xs) > 2:
        return _continuous(part, axis, xs, at)
    shares = [0.0] * len(xs)
    i = next((i for i, (_, right) in enumerate(pairwise(xs)) if at <= right), len(xs) - 2)
    left, right = xs[i], xs[i + 1]
    shares[i] = (right - at) / (right - left)
    shares[i + 1] = (at - left) / (right - left)
    return shares


def _continuous(part: Part, axis: int, xs: list[float], at: float) -> list[float]:
    """The shares of the supports of one stiff beam that runs on over them."""
    box = part.bounds()
    start, stop = min(box.low[axis], xs[0], at), max(box.high[axis], xs[-1], at)
    length = stop - start
    beam = Beam(
        length,
        (Segment(length, 1e9),),
        tuple(Support(x - start) for x in xs),
        points=(Point(at - start, 1.0),),
    )
    return list(bend(beam).reactions)


def _long_axis(part: Part) -> int:
    across, back, _ = part.bounds().size
    return 0 if across >= back else 1
