"""Volume, centre of mass and weight by arithmetic, from blanks and workings alone.

Flat workings leave boxes cut off by planes, which are integrated exactly (``wood``).  Each
round then takes away what is left of it (``rounds``): in closed form where it lies in whole
wood, else the integral, over its cross-section, of the length of the lines through the
remaining wood (``lines``).
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from rodwright.geometry import Box, Vector
from rodwright.mass.lines import taken
from rodwright.mass.pieces import pieces
from rodwright.mass.rounds import Round
from rodwright.mass.wood import Wood
from rodwright.unit import Part, ShapeKey, Unit


@dataclass(frozen=True, slots=True)
class Mass:
    """Volume in mm3 and centre of volume in the part frame, mm."""

    volume: float
    centroid: Vector


@lru_cache(maxsize=4096)
def mass_of(shape: ShapeKey) -> Mass:
    """Volume and centroid of a shape.

    Exact for flat workings, and for round ones in whole wood; to rounding where one round
    working crosses flat ones square to its axis or along it; within about a
    hundred-thousandth of the volume where round or slanting ones cross others.

    Raises:
        ValueError: the workings leave nothing.
    """
    size, workings = shape
    removed = [tuple(pieces(working, size)) for working in workings]
    boxes = [each for removal in removed for each in removal if isinstance(each, Box)]
    rounds = [tuple(each for each in removal if isinstance(each, Round)) for removal in removed]
    wood = Wood(size, boxes, [plane for working in workings for plane in working.planes(size)])
    moments = wood.moments()
    for each, near in _with_near(rounds):
        whole = not near and each.whole and wood.whole(each.box)
        moments -= each.moments() if whole else taken(each, wood, near)
    if moments[0] <= 0:
        raise ValueError("the workings leave nothing of the blank")
    x, y, z = (float(moment / moments[0]) for moment in moments[1:])
    return Mass(float(moments[0]), (x, y, z))


def weight(part: Part) -> float:
    """Weight of a part in kg."""
    return mass_of(part.shape).volume * part.blank.stock.density * 1e-9


def unit_weight(unit: Unit) -> float:
    """Weight of a unit in kg: the sum of its parts'."""
    return math.fsum(weight(part) for part in unit.parts)


def centre_of_mass(unit: Unit) -> Vector:
    """Centre of mass of a unit, unit frame, mm."""
    weights = np.array([weight(part) for part in unit.parts])
    centres = np.array(
        [part.placement.to_unit(mass_of(part.shape).centroid) for part in unit.parts]
    )
    x, y, z = (weights @ centres / weights.sum()).tolist()
    return (x, y, z)


def _with_near(rounds: list[tuple[Round, ...]]) -> Iterator[tuple[Round, list[Round]]]:
    """Each round of each working, and those of earlier workings whose bounds meet its own."""
    each_one = [(number, each) for number, of_one in enumerate(rounds) for each in of_one]
    if not each_one:
        return
    lows = np.array([each.box.low for _, each in each_one])
    highs = np.array([each.box.high for _, each in each_one])
    pairs = (lows[:, None] < highs) & (lows < highs[:, None])
    meet = np.logical_and.reduce(pairs, axis=2).tolist()
    for i, (number, each) in enumerate(each_one):
        before = enumerate(each_one[:i])
        yield each, [other for j, (earlier, other) in before if meet[i][j] and earlier != number]
