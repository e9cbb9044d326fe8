"""Texts as rectangles of the page; mm of paper, x to the right and y down."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import DARK, Lettering

ASCENT = 0.76
"""What capitals, figures and brackets reach above the baseline, as a share of the size."""
DESCENT = 0.25
"""What hanging letters reach below it."""
_HANGING = frozenset("gjpqy,;()[]{}|@/QJçşţŋρφγ")
"""Letters of the fonts that hang below the baseline; others beyond ASCII are taken for such."""


class Rect(NamedTuple):
    """A rectangle of the page."""

    left: float
    top: float
    right: float
    bottom: float

    def grown(self, by: float) -> Rect:
        """The rectangle with so much more at each side."""
        return Rect(self.left - by, self.top - by, self.right + by, self.bottom + by)

    def moved(self, x: float, y: float) -> Rect:
        """The rectangle moved to the right and down."""
        return Rect(self.left + x, self.top + y, self.right + x, self.bottom + y)

    def meets(self, other: Rect) -> bool:
        """Whether two rectangles overlap."""
        return (
            self.left < other.right
            and other.left < self.right
            and self.top < other.bottom
            and other.top < self.bottom
        )


def around(rects: list[Rect]) -> Rect:
    """The rectangle round others (one at least)."""
    return Rect(
        min(each.left for each in rects),
        min(each.top for each in rects),
        max(each.right for each in rects),
        max(each.bottom for each in rects),
    )


def descent(text: str) -> float:
    """What a text reaches below its baseline, as a share of its size."""
    hangs = any(letter in _HANGING or ord(letter) > 0x17F for letter in text if letter != "°")
    return DESCENT if hangs else 0.03


@lru_cache(maxsize=4096)
def extent(text: str, size: float) -> tuple[float, float]:
    """How long and how tall a text of this size is."""
    return text_width(text, size), (ASCENT + descent(text)) * size


@dataclass(frozen=True, slots=True)
class Written:
    """A text and the rectangle it fills; ``upwards`` reads from the page's foot to its head."""

    text: str
    rect: Rect
    size: float
    upwards: bool = False

    def moved(self, x: float, y: float) -> Written:
        """The text moved to the right and down."""
        return Written(self.text, self.rect.moved(x, y), self.size, self.upwards)

    @property
    def base(self) -> tuple[float, float]:
        """The middle of its baseline."""
        left, top, right, bottom = self.rect
        hang = descent(self.text) * self.size
        if self.upwards:
            return right - hang, (top + bottom) / 2
        return (left + right) / 2, bottom - hang

    def lettering(self, colour: str = DARK) -> Lettering:
        """The text as a mark."""
        return Lettering(self.base, self.text, self.size, upwards=self.upwards, colour=colour)


def written(text: str, centre: tuple[float, float], size: float, upwards: bool = False) -> Written:
    """A text round a point."""
    long, tall = extent(text, size)
    across, down = (tall, long) if upwards else (long, tall)
    x, y = centre
    return Written(
        text, Rect(x - across / 2, y - down / 2, x + across / 2, y + down / 2), size, upwards
    )
