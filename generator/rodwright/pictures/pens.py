"""Pens for lines that run close beside each other, so that they don't merge into a black bar."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import shapely

from rodwright.pictures.camera import Array

SHARE = 0.5
"""A line is at most so wide, as a share of the way to the next one's middle: as much stays
white between them."""
SKEW = 0.06
"""Lines that turn less than this (radians) from each other run side by side."""
SAME = 0.05
"""Lines closer than this, as a share of the pen, are one line."""

LEAST = 1e-9
"""Shorter lines are none."""


def thinned(
    ends: Array, width: float, least: float, among: Array | None = None
) -> dict[float, Array]:
    """Lines (m, 2, 2) by the pen they are drawn with: ``width``, or less where others run beside
    them, down to ``least``; cut where the pen changes.

    The others are the lines themselves and those ``among`` which they are drawn.
    """
    others = ends if among is None else np.concatenate([ends, among])
    if not len(ends):
        return {}
    along = others[:, 1] - others[:, 0]
    lengths = np.maximum(np.linalg.norm(along, axis=1), 1e-12)
    along = along / lengths[:, None]
    tree = shapely.STRtree(shapely.linestrings(others))
    mine, other = tree.query(shapely.linestrings(ends), predicate="dwithin", distance=width / SHARE)
    turn = along[mine, 0] * along[other, 1] - along[mine, 1] * along[other, 0]
    beside = (mine != other) & (np.abs(turn) < SKEW)
    mine, other = mine[beside], other[beside]
    # Where the other line begins and ends, in mm along this one and across it.
    away = others[other] - ends[mine, :1]
    on = np.einsum("ikj,ij->ik", away, along[mine])
    across = along[mine, :1] * away[..., 1] - along[mine, 1:] * away[..., 0]
    low = np.clip(on.min(axis=1), 0.0, lengths[mine])
    high = np.clip(on.max(axis=1), 0.0, lengths[mine])
    share = ((low + high) / 2 - on[:, 0]) / np.where(on[:, 1] == on[:, 0], 1.0, on[:, 1] - on[:, 0])
    gap = np.abs(across[:, 0] + share * (across[:, 1] - across[:, 0]))
    near = (high - low > width) & (gap > SAME * width) & (gap < width / SHARE)
    spans: dict[int, list[tuple[float, float, float]]] = {}
    for number, *span in zip(
        *(each[near].tolist() for each in (mine, low, high, gap)), strict=True
    ):
        spans.setdefault(number, []).append((span[0], span[1], span[2]))
    # Most lines have nothing beside them, and stay as they are.
    alone = lengths[: len(ends)] >= LEAST
    alone[list(spans)] = False
    pieces = [
        (number, *piece)
        for number in sorted(spans)
        for piece in _pieces(float(lengths[number]), spans[number], width, least)
    ]
    number = np.array([piece[0] for piece in pieces], dtype=np.int64)
    places = np.array([piece[1:] for piece in pieces]).reshape(-1, 3)
    cut = ends[number, :1] + places[:, :2, None] * along[number, None]
    whole = places[:, 1] - places[:, 0] >= lengths[number]
    cut[whole] = ends[number[whole]]
    pens = np.concatenate([np.full(np.count_nonzero(alone), round(width, 3)), places[:, 2]])
    cut = np.concatenate([ends[alone], cut])
    return {float(pen): cut[pens == pen] for pen in np.unique(pens)}


def _pieces(
    length: float, spans: list[tuple[float, float, float]], width: float, least: float
) -> list[tuple[float, float, float]]:
    """A line's pieces from end to end, each with its pen; pens go in steps of a tenth."""
    cuts = sorted({0.0, length, *(end for span in spans for end in span[:2])})
    pieces: list[tuple[float, float, float]] = []
    for low, high in pairwise(cuts):
        if high - low < LEAST:
            continue
        middle = (low + high) / 2
        gap = min((gap for start, stop, gap in spans if start < middle < stop), default=np.inf)
        pen = round(round(min(width, max(least, SHARE * gap)) / width, 1) * width, 3)
        if pieces and pieces[-1][2] == pen:
            pieces[-1] = (pieces[-1][0], high, pen)
        else:
            pieces.append((low, high, pen))
    return pieces
