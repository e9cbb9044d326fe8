"""Slanted ends: an end is a pair of places along a bar, at its face edge and at its back."""

from __future__ import annotations

from math import hypot

from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import Placed

End = tuple[float, float]


def ends_of(placed: Placed, slants: tuple[float, float]) -> tuple[End, End]:
    """A piece's near and far end as it lies: ``flipped`` is turned by half a turn."""
    x, stop = placed.x, placed.x + placed.length
    if placed.flipped:
        return (x + slants[1], x), (stop - slants[0], stop)
    return (x, x + slants[0]), (stop, stop - slants[1])


def beyond(far: End, kerf: float, wide: float) -> End:
    """Where a bar begins once a piece with this end is cut off it: the kerf is longer along a bar
    that is ``wide`` mm where it crosses it at an angle."""
    slant = far[1] - far[0]
    reach = kerf * hypot(wide, slant) / wide if wide else kerf
    return far[0] + reach, far[1] + reach


def wide_of(piece: Piece) -> float:
    """How wide a bar is: where nobody says it of a bought length, its mitres are at 45 degrees."""
    return piece.width or piece.section or max(piece.slants)
