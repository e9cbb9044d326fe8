"""A layout as panels within panels: which straight cuts part it, before it is known in which order.

Parallel cuts stand together: a panel is divided along or across into as many parts as it has, and
these are then divided the other way.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Literal, NamedTuple

from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import Layout, Placed
from rodwright.cutting.supplies import Supply

Axis = Literal["along", "across"]
"""Which way cuts run: along the length, at one y; or across it, at one x."""
NOISE = 1e-5
"""mm: lengths that differ by no more are equal."""


class Rectangle(NamedTuple):
    """From its near corner, mm."""

    x: float
    y: float
    length: float
    width: float

    def span(self, axis: Axis) -> tuple[float, float]:
        """From where to where it reaches in the direction that such cuts divide."""
        if axis == "across":
            return self.x, self.x + self.length
        return self.y, self.y + self.width

    def spanning(self, axis: Axis, low: float, high: float) -> Rectangle:
        """The part of it between two such cuts."""
        if axis == "across":
            return Rectangle(low, self.y, high - low, self.width)
        return Rectangle(self.x, low, self.length, high - low)


@dataclass(frozen=True)
class Block:
    """What lies on a sheet and is parted from the rest: a piece, or a chain of pieces with slanted
    ends that lie head to tail."""

    area: Rectangle
    placed: tuple[Placed, ...]
    slanted: bool = False


@dataclass(frozen=True)
class Panel:
    """A rectangle, and what becomes of it.

    With an ``axis`` it is divided into ``parts`` by cuts of the saw's width; else it is just what
    is ``placed`` on it (one piece, or a chain of ``slanted`` ones), or with nothing placed a rest.
    A rest narrower than nothing is where a cut lies beside another, or beside the edge, and leaves
    nothing; a ``trim`` is one off the edge of a sheet.
    """

    area: Rectangle
    axis: Axis | None = None
    parts: tuple[Panel, ...] = ()
    placed: tuple[Placed, ...] = ()
    slanted: bool = False
    trim: bool = False

    @property
    def is_rest(self) -> bool:
        """Whether nothing on it is wanted."""
        return self.axis is None and not self.placed

    def leaves(self) -> Iterator[Panel]:
        """All that isn't divided further."""
        if self.axis is None:
            yield self
        for part in self.parts:
            yield from part.leaves()

    @cached_property
    def merit(self) -> tuple[float, int, int]:
        """How good a way to part it this is: the largest rest that stays whole, rounds of cuts,
        and cuts."""
        rests = [leaf.area for leaf in self.leaves() if leaf.is_rest]
        largest = max((area.length * area.width for area in rests if _there(area)), default=0.0)
        return round(largest, 3), -self.depth, -self.cuts

    @cached_property
    def depth(self) -> int:
        """How many rounds of cuts part it."""
        return 1 + max(part.depth for part in self.parts) if self.parts else 0

    @cached_property
    def cuts(self) -> int:
        """How many cuts part it."""
        return len(self.parts) - 1 + sum(part.cuts for part in self.parts) if self.parts else 0


def panel_of(
    layout: Layout,
    supply: Supply,
    pieces: Sequence[Piece],
    kerf: float,
    first: Axis | None = None,
) -> Panel | None:
    """The layout as panels; None if straight cuts from edge to edge don't part it.

    Trims are no part of it.  ``first`` is how the first cuts run, if there is a choice.
    """
    trim = supply.trim
    width = supply.width - trim.face - trim.back if supply.width else 0.0
    face = trim.face if supply.width else 0.0
    whole = Rectangle(trim.near, face, supply.length - trim.near - trim.far, width)
    return divided(blocks_of(layout.placed, pieces), whole, kerf, first)


def blocks_of(placed: Sequence[Placed], pieces: Sequence[Piece]) -> tuple[Block, ...]:
    """What lies on a sheet, with neighbours whose slanted ends overlap as one."""
    slanted = {piece.name for piece in pieces if any(piece.slants)}
    blocks: list[Block] = []
    for each in sorted(placed, key=lambda one: (one.y, one.x)):
        area = Rectangle(each.x, each.y, each.length, each.width)
        last = blocks[-1] if blocks else None
        # Slanted ends that are far apart are parted by two cuts all the same.
        if last is not None and each.piece in slanted and last.placed[-1].piece in slanted:
            same = abs(last.area.y - area.y) < NOISE and abs(last.area.width - area.width) < NOISE
            if same:
                end = max(last.area.x + last.area.length, area.x + area.length)
                joined = last.area._replace(length=end - last.area.x)
                blocks[-1] = Block(joined, (*last.placed, each), slanted=True)
                continue
        blocks.append(Block(area, (each,), each.piece in slanted))
    return tuple(blocks)


def divided(
    blocks: Sequence[Block], area: Rectangle, kerf: float, first: Axis | None = None
) -> Panel | None:
    """A rectangle with blocks on it as panels; None where no straight cuts part these."""
    if not blocks:
        return Panel(area)
    if len(blocks) == 1 and _alike(blocks[0].area, area):
        return Panel(area, placed=blocks[0].placed, slanted=blocks[0].slanted)
    axes: tuple[Axis, ...] = ("along", "across")
    found = [panel for axis in axes if (panel := _divided_by(axis, blocks, area, kerf))]
    if first is not None and any(panel.axis == first for panel in found):
        found = [panel for panel in found if panel.axis == first]
    return max(found, key=lambda panel: panel.merit, default=None)


def _divided_by(axis: Axis, blocks: Sequence[Block], area: Rectangle, kerf: float) -> Panel | None:
    """It divided by all straight cuts that run this way; None where there are none that help."""
    groups = _groups(axis, blocks, kerf)
    low, high = area.span(axis)
    spans = [_spanned(axis, group) for group in groups]
    if len(groups) == 1 and spans[0][0] - low < NOISE and high - spans[0][1] < NOISE:
        return None
    parts: list[Panel] = []
    for group, (start, stop) in zip(groups, spans, strict=True):
        within = divided(group, area.spanning(axis, start, stop), kerf)
        if within is None:
            return None
        parts.append(within)
    return Panel(area, axis, tuple(_with_rests(axis, area, parts, kerf)))


def _with_rests(axis: Axis, area: Rectangle, parts: list[Panel], kerf: float) -> Iterator[Panel]:
    """Parts with what lies between them, before the first and after the last."""
    low, high = area.span(axis)
    at = low
    for part in parts:
        start, stop = part.area.span(axis)
        if start - at > NOISE:
            yield Panel(area.spanning(axis, at, start - kerf))
        yield part
        at = stop + kerf
    if high - (at - kerf) > NOISE:
        yield Panel(area.spanning(axis, at, high))


def _groups(axis: Axis, blocks: Sequence[Block], kerf: float) -> list[list[Block]]:
    groups: list[list[Block]] = []
    end = 0.0
    for block in sorted(blocks, key=lambda each: each.area.span(axis)):
        start, stop = block.area.span(axis)
        if groups and start < end + kerf - NOISE:
            groups[-1].append(block)
            end = max(end, stop)
        else:
            groups.append([block])
            end = stop
    return groups


def _spanned(axis: Axis, blocks: Sequence[Block]) -> tuple[float, float]:
    spans = [block.area.span(axis) for block in blocks]
    return min(low for low, _ in spans), max(high for _, high in spans)


def _alike(one: Rectangle, other: Rectangle) -> bool:
    return all(abs(a - b) < NOISE for a, b in zip(one, other, strict=True))


def _there(area: Rectangle) -> bool:
    return area.length > NOISE and area.width > -NOISE
