"""What lies on a page already, and whether there is room for more; mm of paper, y down.

What may never meet are texts with texts, and texts with the lines of dimensions.  The lines of a
view are ``soft``: a text stands clear of them where it can, else they are broken round it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import numpy as np
from numpy.typing import NDArray

from rodwright.pictures.drafting.letters import Rect
from rodwright.pictures.drafting.views import Line

Array = NDArray[np.float64]

_HAIR = 1e-3


class Room:
    """Texts and lines that lie on a page."""

    def __init__(self, soft: Sequence[Line] = ()) -> None:
        """A page with a view's lines."""
        self._texts = np.empty((0, 4))
        self._soft = as_array(soft)
        self._lines = as_array(())

    @property
    def texts(self) -> list[Rect]:
        """All texts that were laid down."""
        return [Rect(*each) for each in self._texts.tolist()]

    def write(self, rect: Rect) -> None:
        """Lay down a text."""
        self._texts = np.concatenate([self._texts, [rect]])

    def draw(self, lines: Iterable[Line]) -> None:
        """Lay down lines of a dimension or a note."""
        self._lines = np.concatenate([self._lines, as_array(tuple(lines))])

    def is_free(self, rect: Rect) -> bool:
        """Whether a text fits here: it meets no text and no line of a dimension."""
        left, top, right, bottom = self._texts.T
        apart = (left >= rect.right) | (right <= rect.left) | (top >= rect.bottom)
        if not (apart | (bottom <= rect.top)).all():
            return False
        return not meeting(self._lines, rect).any()

    def softly_met(self, rect: Rect) -> int:
        """How many of the view's lines a text here would lie on."""
        return int(np.count_nonzero(meeting(self._soft, rect)))

    def texts_met(self, lines: Iterable[Line]) -> int:
        """How many texts these lines would cross."""
        found = 0
        for start, end in lines:
            low, high = _within(np.array([start]), np.array([end]), *np.split(self._texts, 2, 1))
            found += int(np.count_nonzero(low < high))
        return found

    def lines_met(self, lines: Iterable[Line]) -> int:
        """How many lines of dimensions these level or upright ones would cross."""
        return sum(int(np.count_nonzero(meeting(self._lines, _thin(line)))) for line in lines)


def _thin(line: Line) -> Rect:
    (ax, ay), (bx, by) = line
    return Rect(min(ax, bx), min(ay, by), max(ax, bx), max(ay, by)).grown(_HAIR)


def as_array(lines: Sequence[Line]) -> Array:
    """Lines as ends (m, 2, 2)."""
    return np.array(lines, dtype=np.float64).reshape(-1, 2, 2)


def meeting(ends: Array, rect: Rect) -> NDArray[np.bool_]:
    """Which lines pass through the inside of a rectangle."""
    # Most lie wholly at one side of it.
    start, end = ends[:, 0], ends[:, 1]
    low, high = np.minimum(start, end), np.maximum(start, end)
    near: NDArray[np.bool_] = np.all((low < rect[2:]) & (high > rect[:2]), axis=1)
    if near.any():
        within = spans(ends[near], rect)
        near[near] = within[0] < within[1]
    return near


def spans(ends: Array, rect: Rect) -> tuple[Array, Array]:
    """The stretch of each line within a rectangle, as shares of the way from end to end; the
    first isn't less than the second where there is none."""
    return _within(ends[:, 0], ends[:, 1], np.array([rect[:2]]), np.array([rect[2:]]))


def _within(start: Array, end: Array, least: Array, most: Array) -> tuple[Array, Array]:
    """Lines or one line within a rectangle or many (Liang and Barsky's clipping)."""
    way = end - start
    still = np.abs(way) < 1e-9
    safe = np.where(still, 1.0, way)
    one, two = (least - start) / safe, (most - start) / safe
    outside = still & ((start <= least) | (start >= most))
    low = np.where(still, 0.0, np.minimum(one, two)).max(axis=1, initial=0.0)
    high = np.where(still, 1.0, np.maximum(one, two)).min(axis=1, initial=1.0)
    return low, np.where(outside.any(axis=1), -1.0, high)


def broken(lines: Sequence[Line], texts: Iterable[Rect]) -> list[Line]:
    """Lines without what of them lies within texts."""
    ends = as_array(lines)
    for rect in texts:
        low, high = spans(ends, rect)
        met = low < high
        if not met.any():
            continue
        hit, way = ends[met], (ends[:, 1] - ends[:, 0])[met]
        before = np.stack([hit[:, 0], hit[:, 0] + low[met, None] * way], axis=1)
        after = np.stack([hit[:, 0] + high[met, None] * way, hit[:, 1]], axis=1)
        pieces = np.concatenate([before, after])
        long = np.linalg.norm(pieces[:, 1] - pieces[:, 0], axis=1) > 1e-6
        ends = np.concatenate([ends[~met], pieces[long]])
    return [((ax, ay), (bx, by)) for (ax, ay), (bx, by) in ends.tolist()]
