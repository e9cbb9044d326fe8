"""Chance that falls the same way on every run, and noise made of it."""

from __future__ import annotations

from functools import lru_cache
from hashlib import blake2b
from typing import Any

import numpy as np
from numpy.typing import NDArray

Numbers = NDArray[Any]
"""Numbers of single precision, or what is worked out of them."""
_CELLS = (32, 128, 128)
"""Cells of the table that noise repeats after: few along the grain, where they are long."""


def chance(*words: object) -> np.random.Generator:
    """A generator whose numbers depend on the words alone."""
    said = "\x1f".join(map(str, words)).encode()
    return np.random.default_rng(int.from_bytes(blake2b(said, digest_size=8).digest(), "big"))


@lru_cache(maxsize=1)
def _table() -> Numbers:
    drawn: Numbers = chance("noise").standard_normal(_CELLS).astype(np.float32).ravel()
    return drawn


def noise(x: Numbers, y: Numbers, z: Numbers) -> Numbers:
    """Smooth noise, one cell to a unit, of mean 0; each cell's corner has a normal deviate.

    It repeats after 32 cells in x and 128 in y and z.
    """
    table = _table()
    (x0, fx), (y0, fy), (z0, fz) = (_cell(each) for each in (x, y, z))
    total = np.zeros_like(x)
    for i in (0, 1):
        plane = (((x0 + i) & (_CELLS[0] - 1)) * _CELLS[1] * _CELLS[2]).astype(np.int32)
        along = fx if i else 1 - fx
        for j in (0, 1):
            row = plane + ((y0 + j) & (_CELLS[1] - 1)) * _CELLS[2]
            across = along * (fy if j else 1 - fy)
            near = table.take(row + (z0 & (_CELLS[2] - 1)))
            far = table.take(row + ((z0 + 1) & (_CELLS[2] - 1)))
            total += across * (near + (far - near) * fz)
    return total


def _cell(value: Numbers) -> tuple[NDArray[np.int32], Numbers]:
    """The number of the cell that each value lies in, and how far into it, smoothed."""
    low = np.floor(value)
    part = value - low
    return low.astype(np.int32), part * part * (3 - 2 * part)


def drawn(*cells: NDArray[np.int32]) -> Numbers:
    """A number from 0 to 1 of each cell: the same for the same whole numbers, evenly spread."""
    mixed = np.zeros(cells[0].shape, np.uint32)
    for each, factor in zip(cells, (0x9E3779B1, 0x85EBCA6B, 0xC2B2AE35, 0x27D4EB2F), strict=False):
        mixed ^= each.astype(np.uint32) * np.uint32(factor)
        mixed ^= mixed >> np.uint32(15)
        mixed *= np.uint32(0x2C1B3C6D)
    mixed ^= mixed >> np.uint32(12)
    mixed *= np.uint32(0x297A2D39)
    mixed ^= mixed >> np.uint32(15)
    return mixed.astype(np.float32) * np.float32(2**-32)


class Waves:
    """A few sine waves of two coordinates, added: slow, smooth, never the same.

    ``lengths`` are the least and greatest wavelength in each coordinate; the sum has a root mean
    square of ``height``.
    """

    def __init__(
        self,
        rng: np.random.Generator,
        height: float,
        first: tuple[float, float],
        second: tuple[float, float],
        count: int = 4,
    ) -> None:
        turns = 2 * np.pi * rng.choice((-1, 1), (2, count))
        self._turns = turns / np.exp(
            [rng.uniform(np.log(low), np.log(high), count) for low, high in (first, second)]
        )
        self._phases = rng.uniform(0, 2 * np.pi, count)
        self._heights = height * np.sqrt(2 / count) * np.ones(count)

    def __call__(self, one: Numbers, other: Numbers) -> Numbers:
        """The height at each place."""
        total = np.zeros_like(one)
        for (a, b), phase, height in zip(self._turns.T, self._phases, self._heights, strict=True):
            total += np.float32(height) * np.sin(
                np.float32(a) * one + np.float32(b) * other + np.float32(phase)
            )
        return total
