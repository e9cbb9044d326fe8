"""Readings that can't be right, found by Baarda's data snooping.

W. Baarda, *A testing procedure for use in geodetic networks*, Netherlands Geodetic Commission,
Delft 1968; from memory.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from rodwright.opening.adjustment import (
    SIGMAS,
    SNOOPING_LIMIT,
    Plane,
    root_mean_square,
    solve_as_told,
    solve_plane,
    spans,
    told_by,
    with_assumptions,
)
from rodwright.opening.readings import DIAGONALS, PlaneReadings, Reading

_CAUTION = 4.0
"""Readings are tested with assumptions, and readings away from the corners, this many times
weaker than in the solution: an opening may be far out of square and its walls bowed, and a
reading that says so is no mistake."""
_CARELESS = 2.0
"""They are tested with errors this many times larger than a careful tape's: small
contradictions widen the errors of the corners, only large ones are refused."""
_RIVAL = 6.0
"""Removing another reading explains the misfit about as well where its sum of squares comes
within this of the best (odds of twenty to one for normal errors: 2 ln 20)."""


@dataclass(frozen=True, slots=True)
class Doubt:
    """A reading that can't be right, and about what it should be.

    ``rivals`` are others that would explain the misfit as well.  ``reading`` of None: no
    single reading explains it.  ``exchanged``: all would fit, were the diagonals exchanged.
    """

    plane: str
    reading: Reading | None
    expected: float
    rivals: tuple[Reading, ...] = ()
    exchanged: bool = False


def find_doubts(plane: PlaneReadings) -> tuple[Doubt, ...]:
    """The reading that can't be right, if the readings contradict each other.

    Raises:
        UnsolvableError: no quadrilateral is near the readings.
    """
    if not _contradict(plane, plane.readings):
        return ()
    bowed = solve_plane(plane.name, with_assumptions(plane, plane.readings)).readings
    tried = []
    for number, left_out in enumerate(plane.readings):
        rest = [each for each in plane.readings if each is not left_out]
        if _have_sizes([*rest, *plane.assumptions]):
            kept = [*bowed[:number], *bowed[number + 1 : len(plane.readings)]]
            without = solve_as_told(plane.name, with_assumptions(plane, kept))
            tried.append((without.misfit, left_out, without, rest))
    tried.sort(key=lambda each: each[0])
    best, culprit, without, rest = tried[0]
    exchanged = _exchanged(plane)
    if _contradict(plane, rest):
        return (Doubt(plane.name, None, 0.0, exchanged=exchanged),)
    rivals = tuple(each for misfit, each, _, _ in tried[1:] if misfit < best + _RIVAL)
    expected = told_by(np.array(without.corners).ravel()[2:], [culprit])[0]
    return (Doubt(plane.name, culprit, float(expected[0]), rivals, exchanged),)


def _exchanged(plane: PlaneReadings) -> bool:
    """Whether all readings agree once the two diagonals have changed places."""
    pair = [each for each in plane.readings if each.name in DIAGONALS]
    if len(pair) < len(DIAGONALS):
        return False
    values = {pair[0].name: pair[1].value, pair[1].name: pair[0].value}
    swapped = [replace(each, value=values.get(each.name, each.value)) for each in plane.readings]
    return not _contradict(plane, swapped)


def _have_sizes(readings: Sequence[Reading]) -> bool:
    """Whether there is a width and a height among them, without which nothing can be solved."""
    found = [spans(each) for each in readings if each.kind == "distance"]
    return (True, False) in found and (False, True) in found


def _contradict(plane: PlaneReadings, readings: Sequence[Reading]) -> bool:
    tested = [_cautious(each) for each in with_assumptions(plane, readings)]
    solved = solve_as_told(plane.name, tested)
    believed = _as_others_bow(solved)
    if believed != solved.readings:
        solved = solve_as_told(plane.name, believed, solved.corners)
    return any(
        abs(w) > SNOOPING_LIMIT
        for w, reading in zip(solved.normalised, solved.readings, strict=True)
        if not reading.is_assumption
    )


def _cautious(reading: Reading) -> Reading:
    """A reading as it is tested."""
    doubtful = reading.is_assumption or reading.bow > 0
    by = _CAUTION if doubtful else _CARELESS
    return replace(reading, error=by * reading.error, bow=by * reading.bow)


def _as_others_bow(plane: Plane) -> tuple[Reading, ...]:
    """The readings as tested, each with the bow that the *others* between its edges show: one
    reading far off may be a slip, several are a bellied wall."""
    rows = [
        (each, residual)
        for each, residual in zip(plane.readings, plane.residuals, strict=True)
        if each.bow
    ]

    def bow(reading: Reading) -> float:
        others = [
            residual
            for each, residual in rows
            if each is not reading and spans(each) == spans(reading)
        ]
        return max(reading.bow, _CAUTION * SIGMAS * root_mean_square(others) if others else 0.0)

    return tuple(each.bowed(bow(each)) if each.bow else each for each in plane.readings)
