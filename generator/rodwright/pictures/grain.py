"""Wood grain: how much darker or lighter each point of a part is than its stock."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Shades = NDArray[np.float32]

_CELLS = 256
"""How far the pattern goes before it comes again: a power of two."""
_LAST = _CELLS - 1
_NOISE = np.random.default_rng(7).random((_CELLS, _CELLS), dtype=np.float32).ravel()
_CONTRAST = 0.13


def wood(along: Shades, across: Shades, pixel: float) -> Shades:
    """Shades about 1 at points (n,) of pieces, ``along`` the grain and ``across`` it, mm; what
    tells pieces apart is where on these they begin.

    ``pixel`` is how many mm a pixel covers, as finer figure than that would only flicker.
    """
    across = across + 26.0 * (_noise(along / 650.0, across / 120.0) - 0.5)
    fine = max(2.2, 1.6 * pixel)
    figure = 0.45 * _noise(along / 900.0, across / (8 * fine))
    figure += 0.35 * _noise(along / 420.0, across / (2.6 * fine))
    figure += 0.20 * _noise(along / 120.0, across / fine)
    figure -= 0.5
    figure *= 2 * _CONTRAST
    figure += 1.0
    return np.asarray(figure, dtype=np.float32)


def _noise(x: Shades, y: Shades) -> Shades:
    """Smooth noise between 0 and 1 over a grid of cells of size 1."""
    column, row = np.floor(x), np.floor(y)
    right, down = x - column, y - row
    right, down = right * right * (3 - 2 * right), down * down * (3 - 2 * down)
    cell, under = column.astype(np.int32) & _LAST, (row.astype(np.int32) & _LAST) * _CELLS
    beside, below = (cell + 1) & _LAST, (under + _CELLS) & (_CELLS * _CELLS - 1)
    upper, lower = _NOISE.take(under + cell), _NOISE.take(below + cell)
    upper += (_NOISE.take(under + beside) - upper) * right
    lower += (_NOISE.take(below + beside) - lower) * right
    return np.asarray(upper + (lower - upper) * down)
