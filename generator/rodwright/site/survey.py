"""One consistent quadrilateral from the readings of a plane, and how sure it is.

Weighted least squares over the corners (Gauss and Newton's method), every reading weighted by
its error, with assumptions (walls plumb, floor and top level) as weak readings, so that few
readings are enough and what they leave open is carried on as uncertainty.  A reading that
can't be right is found by Baarda's data snooping (W. Baarda, *A testing procedure for use in
geodetic networks*, Netherlands Geodetic Commission, Delft 1968; from memory).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import sqrt

import numpy as np
from numpy.typing import NDArray

from rodwright.parts import Quadrilateral
from rodwright.site.readings import TAPE_ERROR, PlaneReadings, Reading

Array = NDArray[np.float64]

SIGMAS = 2.0
"""Standard deviations to the bound that holds nineteen times in twenty."""
SNOOPING_LIMIT = 3.29
"""Baarda's critical value: a good reading exceeds it once in a thousand."""
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
_CHECKED = 0.02
"""A reading whose share of redundancy is less than this is hardly checked by the others."""
_STEPS = 60
_COMPLEX_STEP = 1e-30


class UnsolvableError(ArithmeticError):
    """Raised where readings contradict each other so far that no quadrilateral is near them."""


@dataclass(frozen=True, slots=True)
class Plane:
    """A plane of the opening as the readings have it.

    ``corners`` (x, z) in mm from the bottom left one, x level and z plumb.  ``covariance``
    (6 x 6, mm2) is of the other three, in the order x, z, x, z, x, z.  ``modelled`` is what
    each of ``readings`` (assumptions last) would be in this shape, ``redundancy`` the share
    of it that the others say too.  ``looseness`` is how many times larger than taken to be
    the errors of the readings at the corners turn out, 1 at least; it is in the covariance.
    """

    name: str
    corners: Quadrilateral
    readings: tuple[Reading, ...]
    modelled: tuple[float, ...]
    covariance: tuple[tuple[float, ...], ...]
    redundancy: tuple[float, ...]
    looseness: float

    @property
    def residuals(self) -> tuple[float, ...]:
        """Each reading less what it would be in this shape, mm."""
        pairs = zip(self.readings, self.modelled, strict=True)
        return tuple(reading.value - value for reading, value in pairs)

    @property
    def normalised(self) -> tuple[float, ...]:
        """Each residual over its own standard deviation (Baarda's w); 0 where the other
        readings say too little of it."""
        return tuple(
            residual / (reading.error / SIGMAS * share**0.5) if share > _CHECKED else 0.0
            for residual, reading, share in zip(
                self.residuals, self.readings, self.redundancy, strict=True
            )
        )

    @property
    def misfit(self) -> float:
        """Sum of the squares of residuals over standard deviations."""
        return sum(
            (SIGMAS * residual / reading.error) ** 2
            for residual, reading in zip(self.residuals, self.readings, strict=True)
        )

    @property
    def corner_errors(self) -> tuple[tuple[float, float], ...]:
        """The bound (mm, nineteen times in twenty) on each corner's x and z."""
        spread = [SIGMAS * self.covariance[i][i] ** 0.5 for i in range(6)]
        return ((0.0, 0.0), *((spread[i], spread[i + 1]) for i in (0, 2, 4)))


@dataclass(frozen=True, slots=True)
class Doubt:
    """A reading that can't be right, and about what it should be.

    ``rivals`` are others that would explain the misfit as well.  ``reading`` of None: no
    single reading explains it.
    """

    plane: str
    reading: Reading | None
    expected: float
    rivals: tuple[Reading, ...] = ()


def with_assumptions(plane: PlaneReadings, readings: Sequence[Reading]) -> tuple[Reading, ...]:
    """Readings of a plane, with what is assumed where none of them says it."""
    said = {(each.kind, each.first[:2]) for each in readings if each.kind != "distance"}
    assumed = (
        each
        for each in plane.assumptions
        if each.kind == "distance" or (each.kind, each.first[:2]) not in said
    )
    return (*readings, *assumed)


def solve_plane(name: str, readings: Sequence[Reading]) -> Plane:
    """The likeliest quadrilateral; ``readings`` include the assumptions.

    Raises:
        UnsolvableError: no quadrilateral is near the readings.
    """
    errors = np.array([each.error / SIGMAS for each in readings])
    values = np.array([each.value for each in readings])
    corners = _start(readings)
    for _ in range(_STEPS):
        modelled, slopes = _modelled(corners, readings)
        weighted = slopes / errors[:, None]
        step = np.linalg.lstsq(weighted, (values - modelled) / errors, rcond=None)[0]
        corners = corners + step
        if not np.all(np.isfinite(corners)):
            break
        if np.abs(step).max() < 1e-8:
            break
    else:
        raise UnsolvableError(f"the readings of the {name} plane make no quadrilateral")
    if not _convex(corners):
        raise UnsolvableError(f"the readings of the {name} plane make no quadrilateral")
    modelled, slopes = _modelled(corners, readings)
    weighted = slopes / errors[:, None]
    covariance = np.linalg.inv(weighted.T @ weighted)
    leverage = np.einsum("ij,jk,ik->i", weighted, covariance, weighted)
    redundancy = np.clip(1.0 - leverage, 0.0, 1.0)
    looseness = _looseness(readings, (values - modelled) / errors, redundancy)
    points = np.vstack([np.zeros(2), corners.reshape(3, 2)]).tolist()
    a, b, c, d = ((x, z) for x, z in points)
    return Plane(
        name,
        (a, b, c, d),
        tuple(readings),
        tuple(modelled.tolist()),
        tuple(map(tuple, (looseness**2 * covariance).tolist())),
        tuple(redundancy.tolist()),
        looseness,
    )


def _looseness(readings: Sequence[Reading], weighted: Array, redundancy: Array) -> float:
    """Root of the variance of unit weight, by the readings at the corners alone: away from
    them, and in what is assumed, it is the walls that err and not the tape."""
    at_corners = np.array([each.error <= TAPE_ERROR for each in readings])
    spare = float(redundancy[at_corners].sum())
    if spare < 0.5:
        return 1.0
    variance: float = float((weighted[at_corners] ** 2).sum()) / spare
    return max(1.0, sqrt(variance))


def _start(readings: Sequence[Reading]) -> Array:
    """The rectangle that the sizes read have on average."""
    distances = [each for each in readings if each.kind == "distance"]
    widths = [each.value for each in distances if _spans(each) == (True, False)]
    heights = [each.value for each in distances if _spans(each) == (False, True)]
    width, height = float(np.mean(widths)), float(np.mean(heights))
    return np.array([width, 0.0, width, height, 0.0, height])


def _spans(reading: Reading) -> tuple[bool, bool]:
    """Whether a distance reaches across, and up, in a unit square."""
    square = np.array([(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)])
    (a, b, s), (c, d, t) = reading.first, reading.second
    across, up = np.abs(square[c] * (1 - t) + square[d] * t - square[a] * (1 - s) - square[b] * s)
    return bool(across > 0.5), bool(up > 0.5)


def _convex(corners: Array) -> bool:
    points = np.vstack([np.zeros(2), corners.reshape(3, 2)])
    edges = np.roll(points, -1, axis=0) - points
    following = np.roll(edges, -1, axis=0)
    return bool((edges[:, 0] * following[:, 1] - edges[:, 1] * following[:, 0] > 0).all())


def _modelled(corners: Array, readings: Sequence[Reading]) -> tuple[Array, Array]:
    """What each reading would be, and its slopes by the six coordinates.

    Slopes by the complex step, exact to rounding (W. Squire and G. Trapp, *SIAM Review*
    40, 1998; from memory).
    """
    stepped = corners.astype(np.complex128) + 1j * _COMPLEX_STEP * np.eye(6)
    points = np.concatenate([np.zeros((6, 1, 2)), stepped.reshape(6, 3, 2)], axis=1)
    values = np.array([_value(points, reading) for reading in readings])
    return values[:, 0].real.copy(), values.imag / _COMPLEX_STEP


def _value(points: NDArray[np.complex128], reading: Reading) -> NDArray[np.complex128]:
    (a, b, s), (c, d, t) = reading.first, reading.second
    low = points[:, a] * (1 - s) + points[:, b] * s
    high = points[:, c] * (1 - t) + points[:, d] * t
    across, up = (high - low).T
    if reading.kind == "distance":
        found: NDArray[np.complex128] = np.sqrt(across**2 + up**2)
    elif reading.kind == "plumb":
        found = across / up * reading.over
    else:
        found = up / across * reading.over
    return found


def find_doubts(plane: PlaneReadings) -> tuple[Doubt, ...]:
    """The reading that can't be right, if the readings contradict each other.

    Raises:
        UnsolvableError: no quadrilateral is near the readings.
    """
    if not _contradict(plane, plane.readings):
        return ()
    tried = []
    for left_out in plane.readings:
        rest = [each for each in plane.readings if each is not left_out]
        if _have_sizes([*rest, *plane.assumptions]):
            without = solve_plane(plane.name, with_assumptions(plane, rest))
            tried.append((without.misfit, left_out, without, rest))
    tried.sort(key=lambda each: each[0])
    best, culprit, without, rest = tried[0]
    if _contradict(plane, rest):
        return (Doubt(plane.name, None, 0.0),)
    rivals = tuple(each for misfit, each, _, _ in tried[1:] if misfit < best + _RIVAL)
    expected = _modelled(np.array(without.corners).ravel()[2:], [culprit])[0]
    return (Doubt(plane.name, culprit, float(expected[0]), rivals),)


def _have_sizes(readings: Sequence[Reading]) -> bool:
    """Whether there is a width and a height among them, without which nothing can be solved."""
    spans = [_spans(each) for each in readings if each.kind == "distance"]
    return (True, False) in spans and (False, True) in spans


def _contradict(plane: PlaneReadings, readings: Sequence[Reading]) -> bool:
    solved = solve_plane(
        plane.name, [_cautious(each) for each in with_assumptions(plane, readings)]
    )
    return any(
        abs(w) > SNOOPING_LIMIT
        for w, reading in zip(solved.normalised, solved.readings, strict=True)
        if not reading.is_assumption
    )


def _cautious(reading: Reading) -> Reading:
    """A reading as it is tested."""
    doubtful = reading.is_assumption or reading.error > TAPE_ERROR
    return replace(reading, error=(_CAUTION if doubtful else _CARELESS) * reading.error)
