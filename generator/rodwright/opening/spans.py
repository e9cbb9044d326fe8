"""What surely goes into an opening, nineteen times in twenty."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from rodwright.opening.adjustment import SIGMAS, Plane
from rodwright.opening.bends import Bends, bend_gradient, bend_variances
from rodwright.opening.fit import Limits, Rectangle
from rodwright.opening.readings import EDGES
from rodwright.unit import Quadrilateral

Array = NDArray[np.float64]

SPLAY_ASSUMED = 3.0
"""Per metre of depth, how far the rear plane is shifted against the front's, mm: nobody
measures this with a tape.  Common practice, no source."""
_COMPLEX_STEP = 1e-30


def least_spans(
    planes: Sequence[Plane],
    bends: Sequence[Bends],
    shifted: Sequence[Quadrilateral],
    limits: Limits,
    at: Rectangle,
    shift_error: float,
) -> tuple[float, float]:
    """Width and height that surely go in, nineteen times in twenty: each of the spans that
    bound the rectangle ``at``, less its own error; mm.

    A span runs from one wall at the rectangle's top or bottom, or where it bends, to the other
    wall at such a place, so that what shifts both alike takes nothing from it.  ``shifted`` are
    the planes' corners in one frame, ``shift_error`` the bound on how far those are apart.
    """
    found = []
    for names, ends, limit in (
        (("left wall", "right wall"), (at.bottom, at.top), limits.width),
        (("floor", "top"), (at.left, at.right), limits.height),
    ):
        places = [
            [_place(corners, own, name, ends) for name in names]
            for corners, own in zip(shifted, bends, strict=True)
        ]
        found.append(min(_least(planes, bends, places, shift_error), limit))
    return found[0], found[1]


Position = tuple[float, Array, Array]
"""Where an edge is, and the slopes of that by its plane's corners and by its bends."""


def _place(
    corners: Quadrilateral, bends: Bends, name: str, ends: tuple[float, float]
) -> list[Position]:
    """An edge at both ends of the rectangle, and at its bends between them."""
    low, high = EDGES[name]
    along = 1 if "wall" in name else 0
    start, length = corners[low][along], corners[high][along] - corners[low][along]
    shares = [(end - start) / length for end in ends]
    bent = [bend.share for bend in bends.of(name) if shares[0] < bend.share < shares[1]]
    found = []
    for share in (*shares, *bent):
        value, by_corners = _position(corners, name, start + share * length)
        off, more, by_bends = bend_gradient(bends, name, share)
        found.append((value + off, by_corners + more, by_bends))
    return found


def _least(
    planes: Sequence[Plane],
    bends: Sequence[Bends],
    places: Sequence[Sequence[Sequence[Position]]],
    shift_error: float,
) -> float:
    variances = [bend_variances(each) for each in bends]

    def variance(number: int, by_corners: Array, by_bends: Array) -> float:
        corners = by_corners[2:] @ np.array(planes[number].covariance) @ by_corners[2:]
        return max(0.0, float(corners)) + float(by_bends**2 @ variances[number])

    spans: list[float] = []
    for one in range(len(planes)):
        for other in range(len(planes)):
            for low, near, near_bends in places[one][0]:
                for high, far, far_bends in places[other][1]:
                    if one == other:
                        found = variance(one, far - near, far_bends - near_bends)
                    else:
                        found = (
                            variance(one, near, near_bends)
                            + variance(other, far, far_bends)
                            + (shift_error / SIGMAS) ** 2
                        )
                    spans.append(high - low - SIGMAS * found**0.5)
    return min(spans)


def _position(corners: Quadrilateral, name: str, place: float) -> tuple[float, Array]:
    """Where the straight line between an edge's corners is at a height or a distance from the
    left, and its slopes by the corners' eight coordinates (by the complex step)."""
    stepped = np.array(corners).ravel() + 1j * _COMPLEX_STEP * np.eye(8)
    value = _edge_position(stepped.reshape(8, 4, 2), name, place)
    return float(value[0].real), value.imag / _COMPLEX_STEP


def _edge_position(
    corners: NDArray[np.complex128], name: str, place: float
) -> NDArray[np.complex128]:
    low, high = EDGES[name]
    along = 1 if "wall" in name else 0
    start, end = corners[:, low], corners[:, high]
    share = (place - start[:, along]) / (end[:, along] - start[:, along])
    found: NDArray[np.complex128] = start[:, 1 - along] + share * (
        end[:, 1 - along] - start[:, 1 - along]
    )
    return found
