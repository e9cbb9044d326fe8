"""The largest level-and-plumb rectangle inside the opening, and how a given size sits in it.

A rectangle [x0, x1] x [z0, z1] lies in a convex plane where, for each edge, the one of its
corners that is nearest that edge lies within: a linear program in four unknowns, solved
exactly by trying every corner of the feasible region (few enough here).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations
from math import inf, isfinite

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry import TOUCH
from rodwright.unit import Quadrilateral

Array = NDArray[np.float64]


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
    """What bounds a rectangle beside the straight lines between corners, mm: infinite where
    nothing does.

    ``width`` and ``height`` are the least on the tape, whatever the corners say.  ``left``,
    ``right``, ``bottom`` and ``top`` are how far the edges bow in, in the frame of the planes.
    """

    width: float = inf
    height: float = inf
    left: float = -inf
    right: float = inf
    bottom: float = -inf
    top: float = inf

    @property
    def rows(self) -> list[tuple[tuple[float, float, float, float], float]]:
        """Rows a and levels b of what is bounded: a . (x0, x1, z0, z1) >= b."""
        found = [
            ((1.0, -1.0, 0.0, 0.0), -self.width),
            ((0.0, 0.0, 1.0, -1.0), -self.height),
            ((1.0, 0.0, 0.0, 0.0), self.left),
            ((0.0, -1.0, 0.0, 0.0), -self.right),
            ((0.0, 0.0, 1.0, 0.0), self.bottom),
            ((0.0, 0.0, 0.0, -1.0), -self.top),
        ]
        return [(row, level) for row, level in found if isfinite(level)]


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
    for row, bound in limits.rows:
        rows.append(row)
        least.append(bound)
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
    middle = unknowns @ found[rated >= rated.max() - TOUCH].mean(axis=0) + shift
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
        " and ".join(_touched(planes, limits, across, ("left wall", "right wall")))
        or "the smallest reading",
        " and ".join(_touched(planes, limits, upright, ("floor", "top"))) or "the smallest reading",
    )


def _touched(
    planes: Sequence[Quadrilateral],
    limits: Limits,
    rectangle: Rectangle,
    names: tuple[str, str],
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
    bowed = {
        "left wall": rectangle.left - limits.left,
        "right wall": limits.right - rectangle.right,
        "floor": rectangle.bottom - limits.bottom,
        "top": limits.top - rectangle.top,
    }
    found += [
        f"{name} where it bows in"
        for name in names
        if bowed[name] < 1e-4 and not any(each.startswith(name) for each in found)
    ]
    return sorted(found, key=lambda each: not each.startswith(names[0]))
