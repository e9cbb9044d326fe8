"""Knobs: the outline that each is turned to."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from rodwright.unit import Knob

_HEAD = (
    (0.58, 0.0),
    (0.60, 0.045),
    (0.46, 0.11),
    (0.40, 0.24),
    (0.46, 0.38),
    (0.66, 0.49),
    (0.90, 0.59),
    (1.00, 0.70),
    (0.97, 0.81),
    (0.83, 0.91),
    (0.58, 0.97),
    (0.28, 0.995),
    (0.0, 1.0),
)
"""The profile of a knob: radius as a share of its head's (below the first swell: of its stem's,
which is narrower), height as a share of its own; from a knob's usual shape, no source."""
_STEM_ROWS = 5


def knob_profile(knob: Knob, between: int = 1) -> list[tuple[float, float]]:
    """The profile of a knob, radius and height (mm) from where it is fixed, with so many points
    for each stretch of a rough one."""
    long, head = math.dist(knob.start, knob.end), knob.diameter / 2
    stem = knob.stem / (2 * _HEAD[3][0])
    rows = [
        ((stem if number < _STEM_ROWS else head) * share, long * up)
        for number, (share, up) in enumerate(_HEAD)
    ]
    return [(0.0, 0.0), *_smooth(rows, between)]


def _smooth(rows: Sequence[tuple[float, float]], between: int) -> list[tuple[float, float]]:
    """More points on a curve through the given ones (Catmull and Rom's spline)."""
    given = np.array([rows[0], *rows, rows[-1]])
    shares = np.linspace(0.0, 1.0, between, endpoint=False)[:, None]
    made = []
    for a, b, c, d in zip(given, given[1:], given[2:], given[3:], strict=False):
        made.append(
            0.5
            * (
                2 * b
                + (c - a) * shares
                + (2 * a - 5 * b + 4 * c - d) * shares**2
                + (3 * b - a - 3 * c + d) * shares**3
            )
        )
    points = np.concatenate([*made, given[-1:]])
    return [(max(0.0, float(radius)), float(up)) for radius, up in points]
