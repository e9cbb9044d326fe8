"""What of boxes is seen from an eye, by arithmetic: a page is held to that."""

from __future__ import annotations

from collections.abc import Mapping

from rodwright.geometry import Box, Vector

_ASIDE = 0.1
"""mm: a corner is seen where a face of it is, so near it."""
_BEFORE = 1e-3
"""mm: a face is looked for so far before it, or its own box would hide it."""
_INTO = ((0.1, 0.9), (0.5, 0.5), (0.9, 0.1))
"""Ways from a corner into a face, as shares along its two edges."""


def is_corner_seen(corner: Vector, of: Box, boxes: Mapping[str, Box], eye: Vector) -> bool:
    """Whether anything of the faces that meet in a corner of a box is seen there, among boxes."""
    return any(
        not any(_hides(each, point, eye) for each in boxes.values())
        for point in _beside(corner, of)
    )


def _beside(corner: Vector, of: Box) -> list[Vector]:
    inwards = [1 if at == low else -1 for at, low in zip(corner, of.low, strict=True)]
    points = []
    for face, (one, other) in ((0, (1, 2)), (1, (0, 2)), (2, (0, 1))):
        for first, second in _INTO:
            point = list(corner)
            point[one] += _ASIDE * first * inwards[one]
            point[other] += _ASIDE * second * inwards[other]
            point[face] -= _BEFORE * inwards[face]
            points.append((point[0], point[1], point[2]))
    return points


def _hides(box: Box, point: Vector, eye: Vector) -> bool:
    """Whether the line from a point to the eye goes through a box: whether all three pairs of its
    faces have a stretch of it between them in common."""
    enter, leave = 0.0, 1.0
    for here, there, low, high in zip(point, eye, box.low, box.high, strict=True):
        ends = sorted((each - here) / (there - here) for each in (low, high))
        enter, leave = max(enter, ends[0]), min(leave, ends[1])
    return leave > enter
