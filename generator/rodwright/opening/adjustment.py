"""One consistent quadrilateral from the readings of a plane, and how sure it is.

Weighted least squares over the corners (Gauss and Newton's method), every reading weighted by
its error, with assumptions (walls plumb, floor and top level) as weak readings, so that few
readings are enough and what they leave open is carried on as uncertainty.  The corners stand on
readings at the corners; how far edges bow between them is learnt from the readings there, which
are weighted by it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt

import numpy as np
from numpy.typing import NDArray

from rodwright.opening.readings import BOW_ERROR, TAPE_ERROR, Place, PlaneReadings, Reading
from rodwright.unit import Quadrilateral

Array = NDArray[np.float64]

SIGMAS = 2.0
"""Standard deviations to the bound that holds nineteen times in twenty."""
SNOOPING_LIMIT = 3.29
"""Baarda's critical value: a good reading exceeds it once in a thousand."""
_CHECKED = 0.02
"""A reading whose share of redundancy is less than this is hardly checked by the others."""
_STEPS = 60
_SETTLED = 0.05
"""A bow is settled that changes by less than this, mm."""
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
    def residuals_of_bows(self) -> tuple[float, ...]:
        """Those of the readings between the corners: how far edges leave the straight lines."""
        pairs = zip(self.readings, self.residuals, strict=True)
        return tuple(residual for reading, residual in pairs if reading.bow)

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

    Where readings away from the corners show that edges bow by more than is assumed, the bow in
    them is widened until it is what they show.

    Raises:
        UnsolvableError: no quadrilateral is near the readings.
    """
    plane = solve_as_told(name, readings)
    for _ in range(_STEPS):
        bowed = _as_bowed(plane)
        settled = all(
            abs(a.bow - b.bow) < _SETTLED for a, b in zip(bowed, plane.readings, strict=True)
        )
        if settled:
            break
        plane = solve_as_told(name, bowed, plane.corners)
    return plane


def _as_bowed(plane: Plane) -> tuple[Reading, ...]:
    """The readings, with the bow that those between the same two edges show.

    They show one only where the straight lines are known without them: both ends of an edge
    were read, or one end, and how both edges run.  A taper would look the same.
    """
    shown: dict[tuple[bool, bool], list[float]] = {}
    for reading, residual in zip(plane.readings, plane.residuals, strict=True):
        if reading.bow and _ends_known(plane, spans(reading)):
            shown.setdefault(spans(reading), []).append(residual)
    return tuple(
        each.bowed(max(BOW_ERROR, SIGMAS * root_mean_square(shown.get(spans(each), [0.0]))))
        if each.bow
        else each
        for each in plane.readings
    )


def _ends_known(plane: Plane, across_or_up: tuple[bool, bool]) -> bool:
    read = [each for each in plane.readings if not each.is_assumption]
    ends = {
        round(each.first[2])
        for each in read
        if each.kind == "distance" and not each.bow and spans(each) == across_or_up
    }
    kind = "plumb" if across_or_up == (True, False) else "level"
    runs = sum(each.kind == kind for each in read)
    return len(ends) + min(runs // 2, 1) >= 2


def root_mean_square(values: Sequence[float]) -> float:
    """Root of the mean of squares."""
    return float(sqrt(sum(each**2 for each in values) / len(values)))


def solve_as_told(
    name: str, readings: Sequence[Reading], near: Quadrilateral | None = None
) -> Plane:
    """The likeliest quadrilateral, with the errors that the readings have; ``near`` is one that
    it is looked for near.

    Raises:
        UnsolvableError: no quadrilateral is near the readings.
    """
    errors = np.array([each.error / SIGMAS for each in readings])
    values = np.array([each.value for each in readings])
    corners = _start(readings) if near is None else np.array(near).ravel()[2:]
    for _ in range(_STEPS):
        modelled, slopes = told_by(corners, readings)
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
    modelled, slopes = told_by(corners, readings)
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
    widths = [each.value for each in distances if spans(each) == (True, False)]
    heights = [each.value for each in distances if spans(each) == (False, True)]
    width, height = float(np.mean(widths)), float(np.mean(heights))
    return np.array([width, 0.0, width, height, 0.0, height])


def spans(reading: Reading) -> tuple[bool, bool]:
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


def told_by(corners: Array, readings: Sequence[Reading]) -> tuple[Array, Array]:
    """What each reading would be, and its slopes by the six coordinates.

    Slopes by the complex step, exact to rounding (W. Squire and G. Trapp, *SIAM Review*
    40, 1998; from memory).
    """
    stepped = corners.astype(np.complex128) + 1j * _COMPLEX_STEP * np.eye(6)
    points = np.concatenate([np.zeros((6, 1, 2)), stepped.reshape(6, 3, 2)], axis=1)
    low, high = (
        _places(points, [getattr(each, end) for each in readings]) for end in ("first", "second")
    )
    across, up = np.moveaxis(high - low, 2, 0)
    kinds = np.array([each.kind for each in readings])
    over = np.array([each.over for each in readings])
    values = np.sqrt(across**2 + up**2)
    for kind, out, along in (("plumb", across, up), ("level", up, across)):
        these = kinds == kind
        values[:, these] = out[:, these] / along[:, these] * over[these]
    return values[0].real.copy(), values.T.imag / _COMPLEX_STEP


def _places(points: NDArray[np.complex128], places: Sequence[Place]) -> NDArray[np.complex128]:
    """Where places are, (6, n, 2), the corners being at ``points``."""
    starts, ends, shares = (list(column) for column in zip(*places, strict=True))
    share = np.array(shares)[:, None]
    found: NDArray[np.complex128] = points[:, starts] * (1 - share) + points[:, ends] * share
    return found


def slopes(plane: Plane) -> Array:
    """How what each reading would be changes with the six coordinates of the corners."""
    return told_by(np.array(plane.corners).ravel()[2:], plane.readings)[1]
