"""How stiff levels are along their length, with what is cut out of them; N and mm.

Plane sections of what is glued together: ``EI = sum E (b h3 / 12 + b h d2)`` round the neutral axis
``y = sum E A y / sum E A`` (any text on the strength of materials).  What lies loose on each other,
or is screwed, bends together without sharing an axis: their EI are summed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise
from math import inf

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.strength.level_parts import Level, Ply
from rodwright.trade.sources import Figure
from rodwright.unit import Grain, Hole, Part

SHEAR_SHARE = 5 / 6
"""What shear counts of a rectangle's area: A' = 5 b t / 6 (Wood Handbook, ch. 9, from memory)."""
_SMALL = 10.0
"""Bores no wider than this (mm) weaken no level to speak of: pins, screws, dowels."""


@dataclass(frozen=True, slots=True)
class Moduli:
    """Moduli of one part along the span, N/mm2: of elasticity, and of shear (None: not known)."""

    bending: float
    shear: float | None


@dataclass(frozen=True, slots=True)
class Fibre:
    """The part whose bending stress is ``per_moment`` N/mm2 for each N mm of moment, at most."""

    ref: str
    per_moment: float


@dataclass(frozen=True, slots=True)
class Section:
    """A level from ``start`` to ``stop`` (x, unit frame, mm): EI in N mm2, GA' in N, the stress in
    each part, and by how much shear stress in N/mm2 each N of shear force brings."""

    start: float
    stop: float
    bending: float
    shear: float
    fibres: tuple[Fibre, ...]
    per_shear: float


def modulus(part: Part, axis: int) -> Figure | None:
    """The modulus of elasticity of a part for a span along an axis of the unit frame."""
    mechanics = part.blank.stock.mechanics
    if mechanics is None:
        return None
    return mechanics.along if with_grain(part, axis) else mechanics.across


def with_grain(part: Part, axis: int) -> bool:
    """Whether a span along an axis runs along the grain; so does any where there is no grain."""
    lengthwise = abs(part.placement.length[axis]) > 0.5
    grain = part.blank.grain
    return grain is Grain.NONE or lengthwise is (grain is Grain.LENGTHWISE)


def sections_along(
    level: Level, moduli: Callable[[Part], Moduli], axis: int = 0
) -> tuple[Section, ...]:
    """A level's sections one after another along an axis, workings taken off.

    ``moduli`` gives those of each part along that axis.

    Raises:
        ValueError: its workings leave nothing of it somewhere.
    """
    solids = {part.ref: _Solid(part, axis) for part in level.parts}
    box = level.box
    low, high = box.low[axis], box.high[axis]
    breaks = {low, high}
    for solid in solids.values():
        breaks.update(at for at in solid.breaks if low < at < high)
    found = []
    for start, stop in pairwise(_apart(sorted(breaks))):
        found.append(_section(level, solids, moduli, start, stop))
    return tuple(found)


def _apart(places: list[float]) -> list[float]:
    """Places without those that lie at one; the first and the last are kept."""
    kept = [places[0]]
    for at in places[1:-1]:
        if at - kept[-1] > TOUCH and places[-1] - at > TOUCH:
            kept.append(at)
    return [*kept, places[-1]]


class _Solid:
    """A part as the box it fills and the boxes that are cut out of it, unit frame."""

    def __init__(self, part: Part, axis: int) -> None:
        self.part = part
        self.box = part.bounds()
        self.axis = axis
        self.cut = tuple(_cut(part))

    @property
    def breaks(self) -> Iterator[float]:
        """Where its section changes."""
        for box in (self.box, *self.cut):
            yield box.low[self.axis]
            yield box.high[self.axis]

    def rectangles(self, at: float) -> Iterator[tuple[float, float, float]]:
        """Width, and z from and to, of the rectangles that are left of its section at a place."""
        axis, box = self.axis, self.box
        if not box.low[axis] <= at <= box.high[axis]:
            return
        across = 1 - axis
        cuts = [each for each in self.cut if each.low[axis] < at < each.high[axis]]
        ys = _edges(box, cuts, across)
        zs = _edges(box, cuts, 2)
        for front, rear in pairwise(ys):
            for low, high in pairwise(zs):
                y, z = (front + rear) / 2, (low + high) / 2
                if not any(
                    cut.low[across] < y < cut.high[across] and cut.low[2] < z < cut.high[2]
                    for cut in cuts
                ):
                    yield rear - front, low, high


def _edges(box: Box, cuts: Iterable[Box], axis: int) -> list[float]:
    low, high = box.low[axis], box.high[axis]
    inside = {at for cut in cuts for at in (cut.low[axis], cut.high[axis]) if low < at < high}
    return sorted({low, high, *inside})


def _cut(part: Part) -> Iterator[Box]:
    """The boxes round all workings that weaken a part; what runs slanting takes an end."""
    size: Vector = part.blank.size
    for working in part.workings:
        small = isinstance(working, Hole) and working.diameter <= _SMALL
        if not small and (working.fills_bounds or isinstance(working, Hole)):
            yield part.placement.box_to_unit(working.bounds(size))


def _section(
    level: Level,
    solids: dict[str, _Solid],
    moduli: Callable[[Part], Moduli],
    start: float,
    stop: float,
) -> Section:
    middle = (start + stop) / 2
    groups = [_group(ply, solids, moduli, middle) for ply in level.plies]
    groups += [_group(Ply((part,)), solids, moduli, middle) for part in level.beside]
    groups = [each for each in groups if each.stiffness > 0]
    bending = sum(each.stiffness for each in groups)
    if not bending:
        raise ValueError(f"the workings of {level.ref} leave nothing of it")
    fibres = tuple(Fibre(ref, most / bending) for each in groups for ref, most in each.most.items())
    shear = sum(each.shear for each in groups)
    per_shear = max(each.stiffness / bending * each.per_shear for each in groups)
    return Section(start, stop, bending, shear, fibres, per_shear)


@dataclass(frozen=True, slots=True)
class _Group:
    """Parts glued together: EI, GA', E times the farthest distance from the axis of each, and the
    greatest shear stress for each N that it takes."""

    stiffness: float
    shear: float
    most: dict[str, float]
    per_shear: float


def _group(
    ply: Ply, solids: dict[str, _Solid], moduli: Callable[[Part], Moduli], at: float
) -> _Group:
    pieces = [
        (part, moduli(part), *rectangle)
        for part in ply.parts
        for rectangle in solids[part.ref].rectangles(at)
    ]
    area = sum(its.bending * wide * (high - low) for _, its, wide, low, high in pieces)
    if not area:
        return _Group(0.0, 0.0, {}, 0.0)
    axis = (
        sum(its.bending * wide * (high**2 - low**2) / 2 for _, its, wide, low, high in pieces)
        / area
    )
    stiffness = sum(
        its.bending * wide * ((high - axis) ** 3 - (low - axis) ** 3) / 3
        for _, its, wide, low, high in pieces
    )
    most: dict[str, float] = {}
    for part, its, _, low, high in pieces:
        far = its.bending * max(abs(low - axis), abs(high - axis))
        most[part.ref] = max(most.get(part.ref, 0.0), far)
    panels = {part.ref for part in ply.layers}
    shear = sum(
        SHEAR_SHARE * its.shear * wide * (high - low) if its.shear is not None else inf
        for part, its, wide, low, high in pieces
        if part.ref in panels or len(ply.parts) == 1
    )
    return _Group(stiffness, shear or inf, most, _per_shear(pieces, axis, stiffness))


def _per_shear(
    pieces: list[tuple[Part, Moduli, float, float, float]], axis: float, stiffness: float
) -> float:
    """The shear stress at the neutral axis for each N: ``S E / (EI b)``, S the first moment of all
    above it, b the width there."""
    above = sum(
        its.bending * wide * ((high - axis) ** 2 - (max(low, axis) - axis) ** 2) / 2
        for _, its, wide, low, high in pieces
        if high > axis
    )

    def wide_at(height: float) -> float:
        return sum(wide for _, _, wide, low, high in pieces if low < height <= high)

    # Just above the axis and just below it: layers that meet there are not quite at one height.
    width = min(wide_at(axis + TOUCH), wide_at(axis - TOUCH))
    return above / (stiffness * width) if width else 0.0
