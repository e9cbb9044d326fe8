"""Boxes on a sheet, in whole numbers, and the guillotine cuts that part them.

A box is a piece with its kerf (or an offcut that is to stay whole).  A cut goes from edge to edge
of what is cut, past every box.  To make every cut there is in one direction before any in the other
spoils none and needs the fewest stages, so there are two ways at most: begun along or across.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import NamedTuple

from rodwright.cutting.sheet_problem import FirstCut, Rules

Axis = FirstCut


class Box(NamedTuple):
    """From ``x0, y0`` to ``x1, y1``; ``which`` is its place among those that are parted."""

    x0: int
    y0: int
    x1: int
    y1: int
    which: int = -1


@dataclass(frozen=True, slots=True)
class Node:
    """What is cut into ``parts``, in their order, by cuts of one ``axis``.

    Without parts it is a piece (``which``), or what is left over (-1).
    """

    area: Box
    axis: Axis = "along"
    parts: tuple[Node, ...] = ()
    which: int = -1

    def leaves(self) -> Iterator[Node]:
        """Pieces and what is left over."""
        if not self.parts:
            yield self
        for part in self.parts:
            yield from part.leaves()

    @property
    def stages(self) -> int:
        """Turns from one direction to the other, and the first, down to the last piece."""
        return 1 + max(part.stages for part in self.parts) if self.parts else 0

    @property
    def holds_pieces(self) -> bool:
        """Whether there is anything but what is left over."""
        return any(leaf.which != -1 for leaf in self.leaves())

    @property
    def cuts(self) -> int:
        """How many cuts it takes."""
        return max(len(self.parts) - 1, 0) + sum(part.cuts for part in self.parts)


def part(boxes: Sequence[Box], area: Box, rules: Rules) -> Node | None:
    """The cuts, in the fewest stages, that part boxes which lie in an area; None if none do.

    By ``rules`` with a ``first_cut`` but no ``stages``, that cut parts pieces from pieces, unless
    all lie in one strip the other way.
    """
    firsts: tuple[Axis, ...] = (rules.first_cut,) if rules.first_cut else ("along", "across")
    found = [node for axis in firsts if (node := _begun(boxes, area, axis, rules))]
    if not found and rules.head_cuts:
        found = list(_with_head_cuts(boxes, area, rules, firsts))
    return min(found, key=lambda node: (node.stages, node.cuts), default=None)


def other(axis: Axis) -> Axis:
    """The other direction of cuts."""
    return "across" if axis == "along" else "along"


def _with_head_cuts(
    boxes: Sequence[Box], area: Box, rules: Rules, firsts: Sequence[Axis]
) -> Iterator[Node]:
    strips = _strips(boxes, area, "across")
    for place in range(1, len(strips)):
        for axis in firsts:
            sides = []
            for those in (strips[:place], strips[place:]):
                side = area._replace(x0=those[0][0].x0, x1=those[-1][0].x1)
                inside = [box for _, within in those for box in within]
                sides.append(_begun(inside, side, axis, rules))
            if sides[0] and sides[1]:
                yield Node(area, "across", (sides[0], sides[1]))


def _begun(boxes: Sequence[Box], area: Box, axis: Axis, rules: Rules) -> Node | None:
    if rules.stages is not None:
        return _turn(boxes, area, axis, rules.stages)
    node = _turn(boxes, area, axis, 2 * len(boxes) + 2)
    if rules.first_cut is None or node is None or _parts_pieces(node, rules.first_cut):
        return node
    return _turn(boxes, area, other(axis), 1)


def _parts_pieces(node: Node, axis: Axis) -> bool:
    return node.axis == axis and sum(part.holds_pieces for part in node.parts) > 1


def _turn(boxes: Sequence[Box], area: Box, axis: Axis, left: int) -> Node | None:
    if not boxes:
        return Node(area)
    if len(boxes) == 1 and boxes[0][:4] == area[:4]:
        return Node(area, which=boxes[0].which)
    strips = _strips(boxes, area, axis)
    if len(strips) == 1:
        stuck = len(_strips(boxes, area, other(axis))) == 1
        return None if stuck or left <= 0 else _turn(boxes, area, other(axis), left - 1)
    if left <= 0:
        return _trimmed(boxes, area, axis, strips)
    parts = []
    for strip, within in strips:
        node = _turn(within, strip, other(axis), left - 1)
        if node is None:
            return None
        parts.append(node)
    return Node(area, axis, tuple(parts))


def _trimmed(
    boxes: Sequence[Box], area: Box, axis: Axis, strips: Sequence[tuple[Box, Sequence[Box]]]
) -> Node | None:
    """The one cut more that trims a piece to its size."""
    if len(boxes) != 1 or len(strips) != 2 or all(boxes[0][:4] != strip[:4] for strip, _ in strips):
        return None
    parts = (Node(strip, which=within[0].which if within else -1) for strip, within in strips)
    return Node(area, axis, tuple(parts))


def _strips(boxes: Sequence[Box], area: Box, axis: Axis) -> list[tuple[Box, list[Box]]]:
    """An area as cut by every cut of an axis that spares all boxes, with the boxes in each."""
    low, high = (0, 2) if axis == "across" else (1, 3)
    runs: list[tuple[int, int, list[Box]]] = []
    for box in sorted(boxes, key=lambda each: each[low]):
        if runs and box[low] < runs[-1][1]:
            start, end, within = runs[-1]
            within.append(box)
            runs[-1] = (start, max(end, box[high]), within)
        else:
            runs.append((box[low], box[high], [box]))
    strips: list[tuple[Box, list[Box]]] = []
    at = area[low]
    for start, end, within in runs:
        if start > at:
            strips.append((_slice(area, axis, at, start), []))
        strips.append((_slice(area, axis, start, end), within))
        at = end
    if at < area[high]:
        strips.append((_slice(area, axis, at, area[high]), []))
    return strips


def _slice(area: Box, axis: Axis, start: int, end: int) -> Box:
    if axis == "across":
        return Box(start, area.y0, end, area.y1)
    return Box(area.x0, start, area.x1, end)
