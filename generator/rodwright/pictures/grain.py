"""Wood grain: how much darker or lighter each point of a part is than its stock."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from rodwright.pictures.camera import Array

Shades = NDArray[np.float32]

_CELLS = 256
_NOISE = np.random.default_rng(7).random((_CELLS, _CELLS), dtype=np.float32)
_CONTRAST = 0.13


def wood(points: Array, seeds: NDArray[np.int64], pixel: float) -> Shades:
    """Shades about 1 at points (n, 3) in part frames whose x runs with the grain, mm.

    ``seeds`` (n,) tell parts apart; ``pixel`` is how many mm a pixel covers, as finer
    figure than that would only flicker.
    """
    along = points[:, 0].astype(np.float32) + seeds.astype(np.float32) * np.float32(377.1)
    across = (points[:, 1] + 0.7 * points[:, 2]).astype(np.float32)
    across += seeds.astype(np.float32) * np.float32(91.7)
    across += 26.0 * (_noise(along / 650.0, across / 120.0) - 0.5)
    fine = max(2.2, 1.6 * pixel)
    figure = 0.45 * _noise(along / 900.0, across / (8 * fine))
    figure += 0.35 * _noise(along / 420.0, across / (2.6 * fine))
    figure += 0.20 * _noise(along / 120.0, across / fine)
    return (1.0 + 2 * _CONTRAST * (figure - 0.5)).astype(np.float32)


def _noise(x: NDArray[np.floating], y: NDArray[np.floating]) -> Shades:
    """Smooth noise between 0 and 1 over a grid of cells of size 1."""
    column, row = np.floor(x).astype(np.int64), np.floor(y).astype(np.int64)
    right, down = x - column, y - row
    right, down = right * right * (3 - 2 * right), down * down * (3 - 2 * down)
    column, row = column % _CELLS, row % _CELLS
    beside, below = (column + 1) % _CELLS, (row + 1) % _CELLS
    upper = _NOISE[row, column] * (1 - right) + _NOISE[row, beside] * right
    lower = _NOISE[below, column] * (1 - right) + _NOISE[below, beside] * right
    return np.asarray(upper * (1 - down) + lower * down, dtype=np.float32)
