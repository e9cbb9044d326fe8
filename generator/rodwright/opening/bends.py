"""Where walls, floor and top leave the straight lines between their corners.

An edge is the line through its readings: straight from one to the next.  A tape says how far two
opposite edges have bowed together, never which of them: they are taken to share it evenly, and
either may have all of it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from rodwright.opening.adjustment import SIGMAS, Plane, slopes, spans
from rodwright.opening.readings import BOW_ERROR

Array = NDArray[np.float64]

SAME_PLACE = 0.005
"""Readings nearer each other than this share of an edge are of one place."""


@dataclass(frozen=True, slots=True)
class Bend:
    """One place between the corners of two opposite edges, ``share`` of the way along them.

    There is ``inwards`` mm less between them than between the straight lines; ``slopes`` of it
    by the six coordinates of the corners.  ``noise`` is the bound on it, ``split`` that on how
    much more of it the first edge (left, bottom) has than the second.
    """

    share: float
    inwards: float
    slopes: tuple[float, ...]
    noise: float
    split: float


@dataclass(frozen=True, slots=True)
class Bends:
    """The bends of a plane, from below or from the left: of its two walls, and of floor and
    top."""

    walls: tuple[Bend, ...]
    levels: tuple[Bend, ...]

    def of(self, name: str) -> tuple[Bend, ...]:
        """Those of the edge of this name."""
        return self.walls if "wall" in name else self.levels

    @property
    def all(self) -> tuple[Bend, ...]:
        """The walls' first."""
        return (*self.walls, *self.levels)


def bends_of(plane: Plane) -> Bends:
    """The bends at the readings between the corners; where there are none between two edges,
    what is assumed of them half-way."""
    walls: list[Bend] = []
    levels: list[Bend] = []
    for reading, residual, row in zip(plane.readings, plane.residuals, slopes(plane), strict=True):
        if reading.bow:
            share = reading.first[2]
            found = walls if spans(reading) == (True, False) else levels
            bend = Bend(share, -residual, tuple(row.tolist()), reading.tape, 0.0)
            found.append(bend)
    return Bends(_gathered(walls), _gathered(levels))


def _gathered(found: list[Bend]) -> tuple[Bend, ...]:
    """In order, those of one place made one."""
    if not found:
        return (Bend(0.5, 0.0, (0.0,) * 6, BOW_ERROR, BOW_ERROR),)
    groups: list[list[Bend]] = []
    for bend in sorted(found, key=lambda each: each.share):
        if groups and bend.share - groups[-1][0].share < SAME_PLACE:
            groups[-1].append(bend)
        else:
            groups.append([bend])
    return tuple(map(_as_one, groups))


def _as_one(group: list[Bend]) -> Bend:
    inwards = sum(each.inwards for each in group) / len(group)
    rows = zip(*(each.slopes for each in group), strict=True)
    return Bend(
        group[0].share,
        inwards,
        tuple(sum(row) / len(group) for row in rows),
        group[0].noise / len(group) ** 0.5,
        max(BOW_ERROR, abs(inwards)),
    )


def shares_of(bends: Sequence[Bend], share: float) -> list[float]:
    """How much of each bend an edge has, ``share`` of the way along it: all at the bend, none at
    the next, evenly between."""
    knots = [0.0, *(bend.share for bend in bends), 1.0]
    return [
        float(np.interp(share, knots, np.eye(len(knots))[number + 1]))
        for number in range(len(bends))
    ]


def bend_gradient(bends: Bends, name: str, share: float) -> tuple[float, Array, Array]:
    """How far an edge lies off its straight line at ``share`` of it, towards +x or +z (mm); the
    slopes of that by the corners' eight coordinates; and by the bends' noises and splits, all of
    the plane's noises first."""
    first = name in ("left wall", "floor")
    turn = 0.5 if first else -0.5
    own = bends.of(name)
    start = 0 if own is bends.walls else len(bends.walls)
    count = len(bends.all)
    value, by_corners, by_bends = 0.0, np.zeros(8), np.zeros(2 * count)
    for number, part in enumerate(shares_of(own, share)):
        bend = own[number]
        value += turn * part * bend.inwards
        by_corners[2:] += turn * part * np.array(bend.slopes)
        by_bends[start + number] = turn * part
        by_bends[count + start + number] = 0.5 * part
    return value, by_corners, by_bends


def bend_variances(bends: Bends) -> Array:
    """Variances (mm2) of the noises and the splits, in the order of `bend_gradient`."""
    bounds = [bend.noise for bend in bends.all] + [bend.split for bend in bends.all]
    return (np.array(bounds) / SIGMAS) ** 2
