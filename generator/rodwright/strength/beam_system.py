"""The equations of a beam in pieces: what each begins with, and what its supports give.

Unknown are the sag, slope, moment and shear at the left of each piece, the force and the moment
of each support, and the turn in each hinge.  A piece carries its left state to its right end in
closed form; at each break the two sides differ by what the support, the load or the hinge there
gives.  Nothing is divided by a piece's length, so that very short pieces do no harm.  All is scaled
by the beam's length and its greatest EI.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import isinf
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from rodwright.strength.curves import Piece, integral

if TYPE_CHECKING:
    from rodwright.strength.beams import Beam, Support

_LEAST = 1e-13
"""A mechanism's equations have a singular value less than this share of the greatest."""

_NOT_HELD = "nothing holds the beam, or part of it, where it is"

_SAG, _SLOPE, _MOMENT, _SHEAR = range(4)


class BeamNotHeldError(ValueError):
    """Nothing holds a beam, or part of it, where it is: it would fall, turn over or fold up."""


@dataclass(frozen=True, slots=True)
class _Field:
    """A piece before it is bent: its ends (mm), stiffness, and load (N/mm) at either end."""

    start: float
    stop: float
    bending: float
    shear: float
    load: tuple[float, float]


@dataclass(frozen=True, slots=True)
class Solution:
    """The bent pieces, and of each support the force (N, up), and the moment (N mm)."""

    pieces: tuple[Piece, ...]
    reactions: tuple[float, ...]
    turnings: tuple[float, ...]


def solve(beam: Beam, supports: Sequence[Support]) -> Solution:
    """A beam on these supports, all of which hold (in place of its own).

    Raises:
        BeamNotHeldError: they don't hold it, or part of it.
    """
    if not supports:
        raise BeamNotHeldError(_NOT_HELD)
    return _System(beam, tuple(supports)).solution()


class _System:
    """The matrix and the right side, filled row by row, in scaled figures."""

    def __init__(self, beam: Beam, supports: tuple[Support, ...]) -> None:
        self.beam = beam
        self.supports = supports
        self.fields = tuple(_fields(beam, supports))
        self.stiffest = max(segment.bending for segment in beam.segments)
        size = 4 * len(self.fields) + 2 * len(supports) + len(beam.hinges)
        self.matrix = np.zeros((size, size))
        self.right = np.zeros(size)
        self.row = 0
        self.scale_of_force = self.stiffest / beam.length**2

    def solution(self) -> Solution:
        """Fill it and solve it."""
        self._breaks()
        self._springs()
        # Rows and columns alike in size, so that what is soft in shear isn't taken for adrift.
        rows, columns = _even(self.matrix)
        matrix = self.matrix * rows[:, None] * columns
        sizes = np.linalg.svd(matrix, compute_uv=False)
        if sizes[-1] < _LEAST * sizes[0]:
            raise BeamNotHeldError(_NOT_HELD)
        found = columns * np.linalg.solve(matrix, rows * self.right)
        units = self._units()
        states = found[: 4 * len(self.fields)].reshape(-1, 4) * units
        forces = found[4 * len(self.fields) :]
        count = len(self.supports)
        return Solution(
            tuple(_bent(f, state) for f, state in zip(self.fields, states, strict=True)),
            tuple(map(float, forces[:count] * units[_SHEAR])),
            tuple(map(float, forces[count : 2 * count] * units[_MOMENT])),
        )

    def _units(self) -> NDArray[np.float64]:
        length = self.beam.length
        return np.array([length, 1.0, self.stiffest / length, self.scale_of_force])

    def _breaks(self) -> None:
        """At each break: the left side carried over, what acts there, the right side."""
        points = _forces_at(self.beam)
        ends = [each.start for each in self.fields] + [self.beam.length]
        for number, at in enumerate(ends):
            rows = slice(self.row, self.row + 4)
            block = self.matrix[rows]
            ahead, behind = number < len(self.fields), number > 0
            if ahead:
                block[:, 4 * number : 4 * number + 4] -= np.eye(4)
            if behind:
                carry, load = self._carried(self.fields[number - 1])
                block[:, 4 * number - 4 : 4 * number] += carry
                self.right[rows] -= load
            self._held(block, at)
            self.right[self.row + _SHEAR] += points.get(at, 0.0) / self.scale_of_force
            if ahead and behind:
                self.row += 4
            else:
                # Beyond its ends there is no beam: moment and shear end, sag and slope are free.
                self.matrix[self.row : self.row + 2] = block[_MOMENT:]
                self.right[self.row : self.row + 2] = self.right[self.row + 2 : self.row + 4]
                self.matrix[self.row + 2 : self.row + 4] = 0.0
                self.right[self.row + 2 : self.row + 4] = 0.0
                self.row += 2

    def _held(self, block: NDArray[np.float64], at: float) -> None:
        """What supports and hinges at a place add to shear, moment and slope there."""
        first = 4 * len(self.fields)
        count = len(self.supports)
        for number, support in enumerate(self.supports):
            if support.at == at:
                block[_SHEAR, first + number] = 1.0
                block[_MOMENT, first + count + number] = -1.0
        for number, hinge in enumerate(self.beam.hinges):
            if hinge == at:
                block[_SLOPE, first + 2 * count + number] = 1.0

    def _springs(self) -> None:
        """Force and moment of each support from how it gives; no moment right of a hinge."""
        first = 4 * len(self.fields)
        count = len(self.supports)
        starts = {each.start: 4 * number for number, each in enumerate(self.fields)}
        for number, support in enumerate(self.supports):
            where = starts.get(support.at)
            state, side = np.zeros((2, self.matrix.shape[1])), np.zeros(2)
            if where is None:
                carry, load = self._carried(self.fields[-1])
                state[:, first - 4 : first], side[:] = carry[:2], -load[:2]
            else:
                state[:, where : where + 2] = np.eye(2)
                for hinge_number, hinge in enumerate(self.beam.hinges):
                    if hinge == support.at:
                        state[_SLOPE, first + 2 * count + hinge_number] = -1.0
            length = self.beam.length
            stiffness = (
                support.sinking * length**3 / self.stiffest,
                support.turning * length / self.stiffest,
            )
            for which, stiff in enumerate(stiffness):
                column = first + which * count + number
                share = 1.0 if isinf(stiff) or stiff > 1.0 else stiff
                give = 0.0 if isinf(stiff) else min(1.0, 1.0 / stiff) if stiff > 0 else 1.0
                self.matrix[self.row] = share * state[which]
                self.matrix[self.row, column] = -give
                self.right[self.row] = share * side[which]
                self.row += 1
        for hinge in self.beam.hinges:
            self.matrix[self.row, starts[hinge] + _MOMENT] = 1.0
            self.row += 1

    def _carried(self, each: _Field) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """What a piece makes of its left state at its right end, and what its load adds."""
        length = self.beam.length
        h = (each.stop - each.start) / length
        f, g = self.stiffest / each.bending, self.scale_of_force / each.shear
        w, more = (load * length / self.scale_of_force for load in each.load)
        more -= w
        carry = np.array(
            [
                [1.0, h, -f * h**2 / 2, g * h - f * h**3 / 6],
                [0.0, 1.0, -f * h, -f * h**2 / 2],
                [0.0, 0.0, 1.0, h],
                [0.0, 0.0, 0.0, 1.0],
            ]
        )
        load = np.array(
            [
                f * h**4 * (w / 24 + more / 120) - g * h**2 * (w / 2 + more / 6),
                f * h**3 * (w / 6 + more / 24),
                -(h**2) * (w / 2 + more / 6),
                -h * (w + more / 2),
            ]
        )
        return carry, load


def _even(matrix: NDArray[np.float64]) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Factors of rows and columns by which the greatest in each is about one; an empty one stays
    so."""
    size = np.abs(matrix)
    rows, columns = np.ones(len(size)), np.ones(len(size))
    for _ in range(3):
        even = size * rows[:, None] * columns
        most = even.max(axis=1), even.max(axis=0)
        rows = rows / np.sqrt(np.where(most[0] > 0, most[0], 1.0))
        columns = columns / np.sqrt(np.where(most[1] > 0, most[1], 1.0))
    return rows, columns


def _fields(beam: Beam, supports: Sequence[Support]) -> Iterator[_Field]:
    """The pieces between breaks, with section and load of each."""
    for start, stop in pairwise(_breaks(beam, supports)):
        middle = (start + stop) / 2
        segment = next(each for each in beam.segments if middle < each.stop)
        at_start = at_stop = 0.0
        for load in beam.stretches:
            if load.start < middle < load.stop:
                slope = (load.at_stop - load.at_start) / (load.stop - load.start)
                at_start += load.at_start + slope * (start - load.start)
                at_stop += load.at_start + slope * (stop - load.start)
        yield _Field(start, stop, segment.bending, segment.shear, (at_start, at_stop))


def _breaks(beam: Beam, supports: Sequence[Support]) -> list[float]:
    """Where something changes along a beam, its ends with them (mm)."""
    return sorted(
        {
            0.0,
            beam.length,
            *(support.at for support in supports),
            *(segment.stop for segment in beam.segments[:-1]),
            *(end for load in beam.stretches for end in (load.start, load.stop)),
            *(point.at for point in beam.points),
            *beam.hinges,
        }
    )


def _forces_at(beam: Beam) -> dict[float, float]:
    """All points at one place as one force (N)."""
    forces: dict[float, float] = {}
    for point in beam.points:
        forces[point.at] = forces.get(point.at, 0.0) + point.force
    return forces


def _bent(each: _Field, state: NDArray[np.float64]) -> Piece:
    """A piece's curves from its state at its left end, by integration."""
    length = each.stop - each.start
    sag, slope, moment, shear = (float(figure) for figure in state)
    load = np.array([each.load[0], each.load[1] - each.load[0]])
    shears = integral(-load, length, shear)
    moments = integral(shears, length, moment)
    slopes = integral(-moments / each.bending, length, slope)
    slides = np.pad(shears / each.shear, (0, len(slopes) - len(shears)))
    return Piece(
        each.start, each.stop, integral(slopes + slides, length, sag), slopes, moments, shears
    )
