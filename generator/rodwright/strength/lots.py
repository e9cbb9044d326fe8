"""Where the weight of a unit lies: what stands still, and what each door and drawer moves."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np

from rodwright.geometry import TOUCH, Box, Vector, plus, vector
from rodwright.mass import mass_of, weight
from rodwright.trade.stability import CONTENTS_HEIGHT, PULL_HEIGHT
from rodwright.unit import DRAWERS, TRAITS, Load, Motion, Part, Slide, Swing, Unit

Filling = Literal["empty", "what opens", "said, none on top", "said", "all"]
"""What is in a unit: nothing, only what stands open is full, what its maker says that it carries
(without what lies on its top, or with it) and what stands open is full, or all, even what is only
assumed.  So nothing that is only assumed keeps a unit from tipping where it isn't tried without."""
OPEN = 90.0
"""Doors are tried open at this angle, degrees, or as far as they open."""
_LEVEL = 0.5
"""Square of the sine of 45 degrees: what lies flatter is a level."""


@dataclass(frozen=True, slots=True)
class Lot:
    """Some mass (kg), and its centre (unit frame, mm)."""

    mass: float
    centre: Vector


NOTHING = Lot(0.0, (0.0, 0.0, 0.0))


def together(lots: Iterable[Lot]) -> Lot:
    """Some lots as one: their mass, and their common centre (the origin where there is none)."""
    lots = tuple(lots)
    mass = math.fsum(each.mass for each in lots)
    if mass <= 0:
        return NOTHING
    centre = vector(
        math.fsum(each.mass * each.centre[axis] for each in lots) / mass for axis in range(3)
    )
    return Lot(mass, centre)


@dataclass(frozen=True, slots=True)
class Mover:
    """A door or a drawer: ``own`` weight, that of all that it holds and of what of that is said,
    where they are when it is shut, and the ``box`` round it (unit frame, mm)."""

    motion: Motion
    subject: str
    own: Lot
    held: Lot
    said: Lot
    box: Box

    @property
    def is_drawer(self) -> bool:
        """Whether it slides."""
        return isinstance(self.motion, Slide)

    def opened(self, point: Vector) -> Vector:
        """Where a point of it is when it stands open."""
        if isinstance(self.motion, Slide):
            return plus(point, self.motion.travel)
        turn = math.radians(math.copysign(min(abs(self.motion.angle), OPEN), self.motion.angle))
        hinge_x, hinge_y = self.motion.hinge
        x, y = point[0] - hinge_x, point[1] - hinge_y
        cos, sin = math.cos(turn), math.sin(turn)
        return (hinge_x + cos * x - sin * y, hinge_y + sin * x + cos * y, point[2])

    @property
    def edge(self) -> Vector:
        """The middle of its upper edge that stands out farthest when it is open: a drawer's front,
        or a door's edge away from its hinges."""
        low, high = self.box.low, self.box.high
        middle = self.box.centre
        if isinstance(self.motion, Slide):
            return self.opened((middle[0], low[1], high[2]))
        hinge = self.motion.hinge[0]
        far = max(low[0], high[0], key=lambda x: abs(x - hinge))
        return self.opened((far, middle[1], high[2]))


@dataclass(frozen=True, slots=True)
class Lots:
    """The weight of a unit: what is fixed, what stands on that (all of it, what of that is said,
    and what of that isn't on its top), and what moves."""

    fixed: Lot
    standing: Lot
    said: Lot
    under_top: Lot
    movers: tuple[Mover, ...]

    @property
    def loaded(self) -> bool:
        """Whether anything is to be kept in it."""
        return self.standing.mass > 0 or any(each.held.mass > 0 for each in self.movers)

    def state(self, open_ones: Sequence[Mover] = (), filling: Filling = "empty") -> Lot:
        """The whole with some of what moves open, filled in one way."""
        standing: dict[Filling, Lot] = {
            "said, none on top": self.under_top,
            "said": self.said,
            "all": self.standing,
        }
        lots = [self.fixed, *([standing[filling]] if filling in standing else [])]
        for mover in self.movers:
            if any(mover is each for each in open_ones):
                full = [mover.held] if filling != "empty" else []
                lots += [Lot(lot.mass, mover.opened(lot.centre)) for lot in (mover.own, *full)]
            else:
                shut: dict[Filling, Lot] = {"empty": NOTHING, "what opens": NOTHING}
                shut["all"] = mover.held
                lots += [mover.own, shut.get(filling, mover.said)]
        return together(lots)


def lots_of(unit: Unit, loads: Sequence[Load] | None = None) -> Lots:
    """The weight of a unit, by arithmetic, with what it is to carry or with other loads.

    Hardware isn't weighed.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    moving = {ref: motion for motion in unit.motions for ref in motion.refs}
    held: dict[int | None, list[_Kept]] = {}
    overhead = Overhead(unit)
    for load in unit.loading.loads if loads is None else loads:
        motion = moving.get(load.ref)
        on_top = math.isinf(overhead.clear(unit.part(load.ref)))
        held.setdefault(None if motion is None else id(motion), []).extend(
            _Kept(lot, not load.assumed, on_top) for lot in _load_lots(unit, load, overhead)
        )
    movers = tuple(
        Mover(
            motion,
            opens(unit, motion),
            together(_part_lot(unit.part(ref)) for ref in motion.refs),
            together(each.lot for each in held.get(id(motion), [])),
            together(each.lot for each in held.get(id(motion), []) if each.said),
            Box.of_boxes(unit.part(ref).bounds() for ref in motion.refs),
        )
        for motion in unit.motions
    )
    fixed = together(_part_lot(part) for part in unit.parts if part.ref not in moving)
    standing = held.get(None, [])
    return Lots(
        fixed,
        together(each.lot for each in standing),
        together(each.lot for each in standing if each.said),
        together(each.lot for each in standing if each.said and not each.on_top),
        movers,
    )


@dataclass(frozen=True, slots=True)
class _Kept:
    """What lies somewhere: whether its maker says so, and whether nothing is over it."""

    lot: Lot
    said: bool
    on_top: bool


def opens(unit: Unit, motion: Motion) -> str:
    """The door or drawer that a motion opens, with the ref of the first part that moves."""
    part = unit.part(motion.refs[0])
    kind = "door" if isinstance(motion, Swing) else "drawer"
    group = part.group.lower()
    return f"{group if group.startswith(kind) else kind} ({part.ref})"


def front_edges(unit: Unit) -> Iterator[Vector]:
    """The middles of the front edges of shelves, bottoms and tops that a child climbs (unit frame,
    mm): no higher than a pull is tried."""
    for part in unit.parts:
        box = part.bounds()
        if TRAITS[part.role].level and box.high[2] <= PULL_HEIGHT.value:
            yield (box.centre[0], box.low[1], box.high[2])


def _part_lot(part: Part) -> Lot:
    return Lot(weight(part), part.placement.to_unit(mass_of(part.shape).centroid))


def _load_lots(unit: Unit, load: Load, overhead: Overhead) -> Iterator[Lot]:
    """What lies on a part, half-way up to what is over it; at its middle where it is upright, or at
    the height where it hangs."""
    part = unit.part(load.ref)
    box = part.bounds()
    _, y, z = box.centre
    if part.placement.thickness[2] ** 2 > _LEVEL:
        z = box.high[2] + min(overhead.clear(part) / 2, CONTENTS_HEIGHT.value)
    for lump in load.lumps:
        yield Lot(lump.mass, (lump.at, y, z if lump.up is None else lump.up))
    for each in load.stretches:
        # A trapezium: its centre lies towards the heavier end.
        total = each.at_start + each.at_stop
        share = (each.at_start + 2 * each.at_stop) / (3 * total) if total else 0.5
        yield Lot(each.mass, (each.start + share * (each.stop - each.start), y, z))


class Overhead:
    """What hangs over the parts of a unit."""

    def __init__(self, unit: Unit) -> None:
        boxes = [part.bounds() for part in unit.parts]
        self._low = np.array([box.low for box in boxes])
        self._high = np.array([box.high for box in boxes])
        self._groups = np.array([part.group for part in unit.parts])

    def clear(self, part: Part) -> float:
        """The height, mm, that is clear over a part, up to the next that lies across it; without
        end where there is none.  Of a drawer, what is its own isn't in the way."""
        box = part.bounds()
        over = np.all(
            (self._low[:, :2] < np.array(box.high[:2]) - TOUCH)
            & (self._high[:, :2] > np.array(box.low[:2]) + TOUCH),
            axis=1,
        ) & (self._low[:, 2] >= box.high[2] - TOUCH)
        if part.role in DRAWERS:
            over &= self._groups != part.group
        return float(np.min(self._low[over, 2], initial=math.inf)) - box.high[2]
