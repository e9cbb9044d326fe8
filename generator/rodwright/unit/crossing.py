"""Where two parts are held together, how much one moves more than the other across its grain.

Lengths in mm, unit frame.
"""

from __future__ import annotations

from rodwright.unit import Part


def crossing(
    first: Part, second: Part, moisture: tuple[float, float]
) -> tuple[float, int, Part, Part]:
    """The most by which one of two parts that meet moves more than the other, and along which axis.

    Over the length they meet on, between the least and the most ``moisture`` (%); then the part
    that moves and the one that holds it.
    """
    found = (0.0, 0, first, second)
    overlap = first.bounds().overlap(second.bounds())
    for axis in range(3):
        meet = max(0.0, overlap[axis])
        one, other = (_moves(part, axis, meet, moisture) for part in (first, second))
        if abs(one - other) > found[0]:
            pair = (first, second) if one > other else (second, first)
            found = (abs(one - other), axis, *pair)
    return found


def _moves(part: Part, axis: int, length: float, moisture: tuple[float, float]) -> float:
    """What a part moves over a length along an axis of the unit frame, mm.

    A part that lies askew has no more of its width there than reaches along that axis.
    """
    along_width = abs(part.placement.width[axis])
    over = min(length, along_width * part.blank.width)
    return along_width**2 * part.blank.stock.swelling(over, moisture)
