"""Which cuts part what lies on a sheet: edge-to-edge cuts, in any order or in stages."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import chain

from shapely import Polygon

TOLERANCE = 1e-5
"""mm; sizes are whole multiples of a millionth, give or take the last digit of a float."""


@dataclass(frozen=True)
class Block:
    """What must come out whole: its name for messages, its outline, and the box round it."""

    name: str
    outline: Polygon

    @property
    def low(self) -> tuple[float, float]:
        return self.outline.bounds[:2]

    @property
    def high(self) -> tuple[float, float]:
        return self.outline.bounds[2:]


def groups(blocks: Sequence[Block], axis: int, kerf: float) -> list[list[Block]]:
    """The blocks as parted by all straight cuts across an axis (0: x) that go clear of them."""
    parted: list[list[Block]] = []
    end = -float("inf")
    for block in sorted(blocks, key=lambda each: each.low[axis]):
        if not parted or block.low[axis] >= end + kerf - TOLERANCE:
            parted.append([])
        parted[-1].append(block)
        end = max(end, block.high[axis])
    return parted


def separable(blocks: Sequence[Block], kerf: float) -> bool:
    """Whether edge-to-edge cuts part all of them.

    What can be parted can still be when some of it is taken away, so any cut is a good first one.
    """
    if len(blocks) <= 1:
        return True
    for axis in (0, 1):
        parted = groups(blocks, axis, kerf)
        if len(parted) > 1:
            return all(separable(group, kerf) for group in parted)
    return False


def in_stages(blocks: Sequence[Block], axis: int, stages: int, kerf: float) -> bool:
    """Whether so many stages of cuts part all of them, the first of them across this axis.

    What then lies alone may be trimmed to its size.
    """
    if len(blocks) <= 1:
        return True
    if not stages:
        return False
    parted = groups(blocks, axis, kerf)
    return all(in_stages(group, 1 - axis, stages - 1, kerf) for group in parted)


def headed(blocks: Sequence[Block], kerf: float) -> list[tuple[list[Block], list[Block]]]:
    """The ways in which one cut straight across the sheet parts the blocks in two."""
    parted = groups(blocks, 0, kerf)
    return [
        ([*chain(*parted[:number])], [*chain(*parted[number:])]) for number in range(1, len(parted))
    ]
