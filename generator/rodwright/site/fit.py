"""The largest level-and-plumb rectangle inside the opening, and how a given size sits in it.

A rectangle [x0, x1] x [z0, z1] lies in a convex plane where, for each edge, the one of its
corners that is nearest that edge lies within: a linear program in four unknowns, solved
exactly by trying every corner of the feasible region (few enough here).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations

import numpy as np
from numpy.typing import NDArray

from rodwright.parts import Quadrilateral
from rodwright.site.readings import EDGES
from rodwright.site.survey import SIGMAS, Plane

Array = NDArray[np.float64]

SPLAY_ASSUMED = 3.0
"""Per metre of depth, how far the rear plane is shifted against the front's, mm: nobody
measures this with a tape.  Common practice, no source."""
_TIGHT = 1e-6
_COMPLEX_STEP = 1e-30


@dataclass(frozen=True, slots=True)
class Rectangle:
    """A level-and-plumb rectangle, mm, in the frame of the planes."""

    left: float
    right: float
    bottom: float
    top: float

    @property
    def width(self) -> float:
        """Extent from left to right."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """Extent from bottom to top."""
        return self.top - self.bottom


@dataclass(frozen=True, slots=True)
class Spare:
    """How much larger a unit of a given size could be: negative where it doesn't go in.

    ``width`` at its height, ``height`` at its width, mm.  ``tight_width`` and
    ``tight_height`` say between which places it is tight.
    """

    width: float
    height: float
    tight_width: str
    tight_height: str


@dataclass(frozen=True, slots=True)
class Limits:
    """The least width and height on the tape, mm: no rectangle may be larger, whatever the
    corners say, for walls bow.  Infinite where there is none."""

    width: float = float("inf")
    height: float = float("inf")


def largest_rectangle(
    planes: Sequence[Quadrilateral], limits: Limits = Limits()
) -> Rectangle | None:
    """The rectangle with the largest sum of width and height inside every plane; mm.

    No other is larger both ways.  None where there is no rectangle at all.
    """
    return _best(planes, limits, (-1.0, 1.0, -1.0, 1.0), None, None)


def _best(
    planes: Sequence[Quadrilateral],
    limits: Limits,
    aim: tuple[float, float, float, float],
    width: float | None,
    height: float | None,
) -> Rectangle | None:
    """The middle of all rectangles that ``aim`` (by left, right, bottom, top) rates highest.

    A given ``width`` or ``height`` is kept.
    """
    bounds = [_bound(corners, edge) for corners in planes for edge in _edge_indices()]
    rows = [row for row, _ in bounds]
    least = [level for _, level in bounds]
    for row, limit in (
        ((1.0, -1.0, 0.0, 0.0), limits.width),
        ((0.0, 0.0, 1.0, -1.0), limits.height),
    ):
        if np.isfinite(limit):
            rows.append(row)
            least.append(-limit)
    rows += [(-1.0, 1.0, 0.0, 0.0), (0.0, 0.0, -1.0, 1.0)]
    least += [0.0, 0.0]
    matrix, level = np.array(rows), np.array(least)
    # A size that is given turns two unknowns into one: right = left + width.
    unknowns, shift = np.eye(4), np.zeros(4)
    for size, (low, high) in ((width, (0, 1)), (height, (2, 3))):
        if size is not None:
            unknowns[high, low], unknowns[high, high], shift[high] = 1.0, 0.0, size
    unknowns = unknowns[:, np.abs(unknowns).sum(axis=0) > 0]
    matrix, level = matrix @ unknowns, level - matrix @ shift
    found = _vertices(matrix, level)
    if not len(found):
        return None
    rated = found @ (np.array(aim) @ unknowns)
    middle = unknowns @ found[rated >= rated.max() - _TIGHT].mean(axis=0) + shift
    left, right, bottom, top = middle.tolist()
    return Rectangle(left, right, bottom, top)


def _edge_indices() -> tuple[tuple[int, int], ...]:
    """The edges as pairs of corners, the inside to the left of each."""
    return ((0, 1), (1, 2), (2, 3), (3, 0))


def _bound(
    corners: Quadrilateral, edge: tuple[int, int]
) -> tuple[tuple[float, float, float, float], float]:
    """A row a and a level b: the rectangle keeps inside this edge where a . (x0, x1, z0, z1) >= b.

    The row picks the rectangle's corner that is nearest the edge.
    """
    (ax, az), (bx, bz) = corners[edge[0]], corners[edge[1]]
    length = ((bx - ax) ** 2 + (bz - az) ** 2) ** 0.5
    across, up = -(bz - az) / length, (bx - ax) / length
    row = (max(across, 0.0), min(across, 0.0), max(up, 0.0), min(up, 0.0))
    return row, across * ax + up * az


def _vertices(matrix: Array, level: Array) -> Array:
    """All corners of the region where ``matrix`` times unknowns is at least ``level``."""
    count = matrix.shape[1]
    chosen = np.array(list(combinations(range(len(level)), count)))
    squares = matrix[chosen]
    with np.errstate(divide="ignore", invalid="ignore"):  # said of singular ones, left out here
        regular = np.abs(np.linalg.det(squares)) > 1e-9
    points = np.linalg.solve(squares[regular], level[chosen[regular]][..., None])[..., 0]
    scale = 1e-9 * max(1.0, float(np.abs(level).max()))
    kept: Array = points[(points @ matrix.T >= level - scale).all(axis=1)]
    return kept


def spare(planes: Sequence[Quadrilateral], limits: Limits, width: float, height: float) -> Spare:
    """How a unit of this size sits in the opening; mm.

    Raises:
        ValueError: the planes leave no rectangle at all.
    """
    largest = largest_rectangle(planes, limits)
    if largest is None:
        raise ValueError("the planes of the opening don't overlap")
    across = _best(planes, limits, (-1.0, 1.0, 0.0, 0.0), None, min(height, largest.height))
    upright = _best(planes, limits, (0.0, 0.0, -1.0, 1.0), min(width, largest.width), None)
    assert across is not None and upright is not None
    return Spare(
        across.width - width,
        upright.height - height,
        " and ".join(_touched(planes, across, ("left wall", "right wall")))
        or "the smallest reading",
        " and ".join(_touched(planes, upright, ("floor", "top"))) or "the smallest reading",
    )


def _touched(
    planes: Sequence[Quadrilateral], rectangle: Rectangle, names: tuple[str, str]
) -> list[str]:
    """Where a rectangle touches the edges of these names, in words."""
    order = ("floor", "right wall", "top", "left wall")
    sides = np.array([rectangle.left, rectangle.right, rectangle.bottom, rectangle.top])
    found = []
    for number, corners in enumerate(planes):
        for name, edge in zip(order, _edge_indices(), strict=True):
            row, level = _bound(corners, edge)
            if name in names and float(np.array(row) @ sides) - level < 1e-4:
                upright = name in ("left wall", "right wall")
                towards = row[2:] if upright else row[:2]
                ends = (
                    ("at the bottom", "at the top") if upright else ("on the left", "on the right")
                )
                end = ends[0] if towards[0] > 1e-9 else ends[1] if towards[1] < -1e-9 else ""
                rear = " (rear)" if number else ""
                found.append(f"{name} {end}".strip() + rear)
    return sorted(found, key=lambda each: not each.startswith(names[0]))


# --- the worst case --------------------------------------------------------------------


def least_spans(
    planes: Sequence[Plane], shifted: Sequence[Quadrilateral], limits: Limits, at: Rectangle,
    shift_error: float,
) -> tuple[float, float]:  # fmt: skip
    """Width and height that surely go in, nineteen times in twenty: each of the spans that
    bound the rectangle ``at``, less its own error; mm.

    A span runs from one wall at the rectangle's top or bottom to the other wall at its top
    or bottom, so that what shifts both alike takes nothing from it.  ``shifted`` are the
    planes' corners in one frame, ``shift_error`` the bound on how far those are apart.
    """
    across = _spans(planes, shifted, ("left wall", "right wall"), (at.bottom, at.top), shift_error)
    upright = _spans(planes, shifted, ("floor", "top"), (at.left, at.right), shift_error)
    return min(across, limits.width), min(upright, limits.height)


def _spans(
    planes: Sequence[Plane],
    shifted: Sequence[Quadrilateral],
    names: tuple[str, str],
    places: tuple[float, float],
    shift_error: float,
) -> float:
    positions = [
        (side, number, *_position(shifted[number], name, place))
        for side, name in enumerate(names)
        for number in range(len(planes))
        for place in places
    ]
    spans: list[float] = []
    for _, near_plane, low, near in (each for each in positions if each[0] == 0):
        for _, far_plane, high, far in (each for each in positions if each[0] == 1):
            if near_plane == far_plane:
                variance = _variance(planes[near_plane], far - near)
            else:
                variance = (
                    _variance(planes[near_plane], near)
                    + _variance(planes[far_plane], far)
                    + (shift_error / SIGMAS) ** 2
                )
            spans.append(high - low - SIGMAS * variance**0.5)
    return min(spans)


def _variance(plane: Plane, slopes: Array) -> float:
    variance: float = float(slopes[2:] @ np.array(plane.covariance) @ slopes[2:])
    return variance if variance > 0.0 else 0.0


def _position(corners: Quadrilateral, name: str, place: float) -> tuple[float, Array]:
    """Where an edge is at a height or a distance from the left, and its slopes by the corners'
    eight coordinates (by the complex step)."""
    stepped = np.array(corners).ravel() + 1j * _COMPLEX_STEP * np.eye(8)
    value = edge_position(stepped.reshape(8, 4, 2), name, place)
    return float(value[0].real), value.imag / _COMPLEX_STEP


def edge_position(
    corners: NDArray[np.complex128], name: str, place: float
) -> NDArray[np.complex128]:
    """x of a wall at the height ``place``, or z of floor or top at the distance ``place`` from
    the left; of many planes (n, 4, 2) at once, mm."""
    low, high = EDGES[name]
    along = 1 if "wall" in name else 0
    start, end = corners[:, low], corners[:, high]
    share = (place - start[:, along]) / (end[:, along] - start[:, along])
    found: NDArray[np.complex128] = start[:, 1 - along] + share * (
        end[:, 1 - along] - start[:, 1 - along]
    )
    return found


def edge_at(corners: Quadrilateral, name: str, place: float) -> float:
    """x of a wall at the height ``place``, or z of floor or top at the distance ``place`` from
    the left; mm."""
    (ax, az), (bx, bz) = (corners[number] for number in EDGES[name])
    if "wall" in name:
        return ax + (place - az) / (bz - az) * (bx - ax)
    return az + (place - ax) / (bx - ax) * (bz - az)
