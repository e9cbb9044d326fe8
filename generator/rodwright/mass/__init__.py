"""Volume, centre of mass and weight by arithmetic, from blanks and workings alone.

Flat workings leave boxes cut off by planes, which are integrated exactly (``wood``).  Each
round then takes away what is left of it (``rounds``): in closed form where it lies in whole
wood, else the integral, over its cross-section, of the length of the lines through the
remaining wood (``lines``).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from rodwright.geometry import Vector
from rodwright.mass.lines import taken
from rodwright.mass.rounds import Round, rounds_of
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
    wood = Wood(size, workings)
    moments = wood.moments()
    rounds = [each for number, working in enumerate(workings)
              for each in rounds_of(size, working, number)]  # fmt: skip
    for each, near in zip(rounds, _near(rounds), strict=True):
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


def _near(rounds: list[Round]) -> list[list[Round]]:
    """For each round the earlier ones, of other workings, whose bounds meet its own."""
    if not rounds:
        return []
    lows = np.array([each.box.low for each in rounds])
    highs = np.array([each.box.high for each in rounds])
    pairs = (lows[:, None] < highs) & (lows < highs[:, None])
    meet = np.logical_and.reduce(pairs, axis=2).tolist()
    return [
        [rounds[j] for j in range(i) if meet[i][j] and rounds[j].number != each.number]
        for i, each in enumerate(rounds)
    ]
