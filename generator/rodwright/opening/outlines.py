"""The lines of an opening's edges: the likeliest, and others that the readings allow as well.

An outline of a plane holds one array for each side, (n, points, 2): n shapes at once, the points
from below or from the left, how far along and where across; mm.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from functools import lru_cache
from typing import TypedDict

import numpy as np
from numpy.typing import NDArray

from rodwright.opening.adjustment import SIGMAS, Plane
from rodwright.opening.bends import Bend, Bends
from rodwright.opening.readings import EDGES

Array = NDArray[np.float64]

SHAPES = 600
"""How many shapes are looked at beside the likeliest: enough for the bound that holds nineteen
times in twenty to a twentieth of itself."""
_SETTLING = 4
"""Where a unit stands and how high hang on each other, but only through small slopes."""


class Outline(TypedDict):
    """The four lines of a plane, by the side of the unit they are at."""

    left: Array
    right: Array
    bottom: Array
    top: Array


_SIDES = {"left": "left wall", "right": "right wall", "bottom": "floor", "top": "top"}


def outlines(
    planes: Sequence[Plane], bends: Sequence[Bends], shift_error: float, count: int = SHAPES
) -> tuple[Outline, ...]:
    """The planes' outlines in the front's frame: the likeliest first, and ``count`` more, spread
    as the readings leave them.

    Planes are taken to share the middle of their floor lines, to within ``shift_error``.  Equal
    readings give equal outlines: the spread is no matter of chance (`spread_out`).
    """
    found: list[Outline] = []
    sizes = [6 + 2 * len(each.all) for each in bends]
    drawn = spread_out(count, sum(sizes) + 2 * len(planes))
    middle: Array | None = None
    taken = 0
    for plane, own, size in zip(planes, bends, sizes, strict=True):
        part, shift = drawn[:, taken : taken + size], drawn[:, taken + size : taken + size + 2]
        taken += size + 2
        corners = _corners(plane, part[:, :6])
        floor = corners[:, list(EDGES["floor"])].mean(axis=1)
        if middle is None:
            middle = floor
        corners_at = middle - floor + (shift * shift_error / SIGMAS if found else 0.0)
        found.append(_outline(plane, own, corners, corners_at, part[:, 6:]))
    return tuple(found)


@lru_cache(maxsize=8)
def spread_out(count: int, size: int) -> Array:
    """Normal numbers, (count + 1, size), evenly spread, after one row of zeros.

    Uniform ones by the additive recurrence of the roots of primes (H. Niederreiter, *Random
    Number Generation and Quasi-Monte Carlo Methods*, SIAM 1992; from memory), made normal in
    pairs (G. Box and M. Muller, *Annals of Mathematical Statistics* 29, 1958; from memory).
    """
    pairs = (size + 1) // 2
    roots = np.sqrt(np.array(_primes(2 * pairs), dtype=float)) % 1.0
    uniform = (0.5 + np.arange(1, count + 1)[:, None] * roots) % 1.0
    first, second = uniform[:, :pairs], uniform[:, pairs:]
    radius = np.sqrt(-2.0 * np.log(np.clip(first, 1e-12, 1.0)))
    normal = np.hstack([radius * np.cos(2 * np.pi * second), radius * np.sin(2 * np.pi * second)])
    return np.vstack([np.zeros(size), normal[:, :size]])


def _primes(count: int) -> list[int]:
    found: list[int] = []
    number = 2
    while len(found) < count:
        if all(number % prime for prime in found):
            found.append(number)
        number += 1
    return found


def _corners(plane: Plane, drawn: Array) -> Array:
    """(n, 4, 2): the corners, spread by their covariance."""
    values, vectors = np.linalg.eigh(np.array(plane.covariance))
    moved = drawn @ (vectors * np.sqrt(np.clip(values, 0.0, None))).T
    corners = np.repeat(np.array(plane.corners)[None], len(drawn), axis=0)
    corners[:, 1:] += moved.reshape(-1, 3, 2)
    return corners


def _outline(plane: Plane, bends: Bends, corners: Array, shift: Array, drawn: Array) -> Outline:
    moved = (corners - np.array(plane.corners))[:, 1:].reshape(-1, 6)
    count = len(bends.all)
    noises, splits = drawn[:, :count], drawn[:, count:]
    lines = {}
    for side, name in _SIDES.items():
        first = side in ("left", "bottom")
        own = bends.of(name)
        start = 0 if own is bends.walls else len(bends.walls)
        along = 1 if "wall" in name else 0
        low, high = EDGES[name]
        points = np.empty((len(corners), len(own) + 2, 2))
        shares = np.array([0.0, *(bend.share for bend in own), 1.0])
        ends = corners[:, low] + shift, corners[:, high] + shift
        straight = ends[0][:, None] + shares[:, None] * (ends[1] - ends[0])[:, None]
        points[:, :, 0], points[:, :, 1] = straight[..., along], straight[..., 1 - along]
        for number, bend in enumerate(own):
            column = start + number
            points[:, number + 1, 1] += _off(
                bend, moved, noises[:, column], splits[:, column], first
            )
        lines[side] = points
    return Outline(
        left=lines["left"], right=lines["right"], bottom=lines["bottom"], top=lines["top"]
    )


def _off(bend: Bend, moved: Array, noise: Array, split: Array, first: bool) -> Array:
    """How far one edge lies off its straight line at a bend, towards +x or +z."""
    both = bend.inwards + moved @ np.array(bend.slopes) + noise * bend.noise / SIGMAS
    more = split * bend.split / SIGMAS
    off: Array = (both + more) / 2 if first else (more - both) / 2
    return off


# --- a unit in them ----------------------------------------------------------------------


def place_in(
    shapes: Sequence[Outline], width: float, height: float, inset: float = 0.0
) -> tuple[Array, Array]:
    """Left and bottom of a unit of this size as it stands in each of the shapes; mm.

    X
    """
    middles = [
        (shape["left"][:, (0, -1), 1] + shape["right"][:, (0, -1), 1]).mean(axis=1) / 2
        for shape in shapes
    ]
    left: Array = np.mean(middles, axis=0) - width / 2
    bottom = np.zeros(len(left))
    for _ in range(_SETTLING):
        ends = left + inset, left + width - inset
        bottom = np.max([_highest(shape["bottom"], *ends) for shape in shapes], axis=0)
        stands = bottom, bottom + height
        lefts = np.max([_highest(shape["left"], *stands) for shape in shapes], axis=0)
        rights = np.max([_highest(_mirrored(shape["right"]), *stands) for shape in shapes], axis=0)
        left = (lefts - rights - width) / 2
    return left, bottom


def _mirrored(line: Array) -> Array:
    """Lines seen from behind."""
    turned: Array = line * np.array([1.0, -1.0])
    return turned


def _highest(line: Array, low: Array, high: Array) -> Array:
    """The most that lines lie across, between two places along them."""
    along, across = line[..., 0], line[..., 1]
    ends = np.maximum(_at(along, across, low), _at(along, across, high))
    inside = (along > low[:, None]) & (along < high[:, None])
    most: Array = np.maximum(ends, np.where(inside, across, -np.inf).max(axis=1))
    return most


def _at(along: Array, across: Array, place: Array) -> Array:
    """Where lines lie across at a place along them; the first and last stretch go on."""
    number = (place[:, None] >= along[:, 1:-1]).sum(axis=1)
    rows = np.arange(len(along))
    a, b = along[rows, number], along[rows, number + 1]
    share = (place - a) / (b - a)
    found: Array = across[rows, number] * (1 - share) + across[rows, number + 1] * share
    return found


def _bound(rows: Array) -> Array:
    """What nineteen of twenty rows don't exceed, linear between the two nearest.

    numpy's own `quantile` loads its masked arrays, which takes longer than all else here.
    """
    place = 0.95 * (len(rows) - 1)
    low, high = math.floor(place), math.ceil(place)
    ordered = np.partition(rows, (low, high), axis=0)
    found: Array = ordered[low] + (ordered[high] - ordered[low]) * (place - low)
    return found


def errors_round(
    shapes: Sequence[Outline], left: Array, bottom: Array
) -> tuple[Mapping[str, Array], ...]:
    """The bound (mm, nineteen times in twenty) on the gap at each point of each line, the unit
    standing at ``left`` and ``bottom``: how far the others are from the likeliest's, the first."""
    found = []
    for shape in shapes:
        errors = {}
        for side, line in shape.items():
            assert isinstance(line, np.ndarray)
            unit = left if side in ("left", "right") else bottom
            gaps = line[..., 1] - unit[:, None]
            errors[side] = _bound(np.abs(gaps[1:] - gaps[0]))
        found.append(errors)
    return tuple(found)
