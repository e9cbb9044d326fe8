"""Tags in the margins and the leaders from them to what they name.

Leaders run straight from a point inside the frame to a port on the frame's border.  Of all
ways to give ports to points, the one with the least total length is chosen: no two leaders
of it cross, for two that crossed would become shorter by swapping their ports (the triangle
inequality).  Tags lie outside the frame, so no leader crosses a tag.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
from scipy.optimize import linear_sum_assignment

from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Point

PADDING = 0.45
"""Room left and right of a tag's text, as a share of the text's size."""
TAG_HEIGHT = 1.5
"""Height of a tag, as a multiple of its text's size."""
SPACING = 0.5
"""Least room between tags, as a share of the text's size."""


@dataclass(frozen=True, slots=True)
class Anchor:
    """A point to be named, page coordinates; ``hidden`` if it can't be seen."""

    text: str
    at: Point
    hidden: bool = False


@dataclass(frozen=True, slots=True)
class Tag:
    """A tag's box from ``low`` to ``high``, and its leader from the anchor to ``port``."""

    anchor: Anchor
    port: Point
    low: Point
    high: Point


@dataclass(frozen=True, slots=True)
class Frame:
    """The rectangle that anchors lie in; tags stand around it."""

    left: float
    top: float
    right: float
    bottom: float


@dataclass(frozen=True, slots=True)
class _Slot:
    port: Point
    side: Literal["left", "right", "top", "bottom"]


def place_tags(anchors: Sequence[Anchor], frame: Frame, size: float) -> tuple[Tag, ...]:
    """Tags for anchors inside a frame, in the anchors' order; ``size`` is the text's.

    They stand left and right of the frame, and above and below it too if there are many.

    Raises:
        ValueError: there is no room for so many tags of this size.
    """
    slots = _slots([anchor.text for anchor in anchors], frame, size)
    if len(slots) < len(anchors):
        raise ValueError(f"there is room for {len(slots)} tags, not for {len(anchors)}")
    points = np.array([anchor.at for anchor in anchors]).reshape(-1, 1, 2)
    ports = np.array([slot.port for slot in slots]).reshape(1, -1, 2)
    _, chosen = linear_sum_assignment(np.linalg.norm(points - ports, axis=2))
    return tuple(
        _tag(anchor, slots[slot], size) for anchor, slot in zip(anchors, chosen, strict=True)
    )


def room(texts: Sequence[str], frame: Frame, size: float) -> bool:
    """Whether tags with these texts find room around a frame."""
    return len(_slots(texts, frame, size)) >= len(texts)


def tag_width(text: str, size: float) -> float:
    """How wide a tag is."""
    return text_width(text, size) + 2 * PADDING * size


def faults(tags: Sequence[Tag]) -> tuple[str, ...]:
    """What is wrong with placed tags: leaders that meet, tags that overlap, leaders over tags."""
    found: list[str] = []
    for i, first in enumerate(tags):
        for second in tags[i + 1 :]:
            names = f"{first.anchor.text} and {second.anchor.text}"
            if _cross(first.anchor.at, first.port, second.anchor.at, second.port):
                found.append(f"the leaders of {names} cross")
            if all(first.low[k] < second.high[k] and second.low[k] < first.high[k] for k in (0, 1)):
                found.append(f"the tags of {names} overlap")
        found += [
            f"the leader of {first.anchor.text} runs over {other.anchor.text}"
            for other in tags
            if other is not first and _enters(first.anchor.at, first.port, other.low, other.high)
        ]
    return tuple(found)


def _slots(texts: Sequence[str], frame: Frame, size: float) -> list[_Slot]:
    """Places for tags: on two sides, or on all four if two haven't enough."""
    widest = max((tag_width(text, size) for text in texts), default=0.0)
    heights = _spread(frame.top, frame.bottom, (TAG_HEIGHT + SPACING) * size)
    slots = [_Slot((frame.left, y), "left") for y in heights]
    slots += [_Slot((frame.right, y), "right") for y in heights]
    if len(slots) < len(texts):
        widths = _spread(frame.left, frame.right, widest + SPACING * size)
        slots += [_Slot((x, frame.top), "top") for x in widths]
        slots += [_Slot((x, frame.bottom), "bottom") for x in widths]
    return slots


def _spread(low: float, high: float, pitch: float) -> list[float]:
    count = max(0, int((high - low) / pitch))
    return [low + (i + 0.5) * (high - low) / count for i in range(count)]


def _tag(anchor: Anchor, slot: _Slot, size: float) -> Tag:
    x, y = slot.port
    width, height = tag_width(anchor.text, size), TAG_HEIGHT * size
    low = {
        "left": (x - width, y - height / 2),
        "right": (x, y - height / 2),
        "top": (x - width / 2, y - height),
        "bottom": (x - width / 2, y),
    }[slot.side]
    return Tag(anchor, slot.port, low, (low[0] + width, low[1] + height))


def _turn(a: Point, b: Point, c: Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def _cross(a: Point, b: Point, c: Point, d: Point) -> bool:
    return _turn(a, b, c) * _turn(a, b, d) < 0 and _turn(c, d, a) * _turn(c, d, b) < 0


def _enters(a: Point, b: Point, low: Point, high: Point) -> bool:
    """Whether the stretch from a to b passes the inside of a box (Liang and Barsky, 1984)."""
    start, stop = 0.0, 1.0
    for k in (0, 1):
        step = b[k] - a[k]
        if step == 0.0:
            if not low[k] < a[k] < high[k]:
                return False
            continue
        near, far = sorted(((low[k] - a[k]) / step, (high[k] - a[k]) / step))
        start, stop = max(start, near), min(stop, far)
    return start < stop
