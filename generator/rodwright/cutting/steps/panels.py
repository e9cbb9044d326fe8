"""A layout as panels within panels: which straight cuts part it, before it is known in which order.

Parallel cuts stand together: a panel is divided along or across into as many parts as it has, and
these are then divided the other way.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Literal, NamedTuple

from rodwright.cutting.plans import Layout, Placed
from rodwright.cutting.steps.ends import beyond, ends_of, wide_of
from rodwright.cutting.supplies import Supply
from rodwright.cutting.work import Lot

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
    """What lies on a sheet and is parted from the rest: a piece, a chain of pieces with slanted
    ends that lie head to tail, or with nothing placed an offcut that stays whole.  ``skew`` is how
    much more than the kerf a slanted cut behind it takes along the bar."""

    area: Rectangle
    placed: tuple[Placed, ...]
    slanted: bool = False
    skew: float = 0.0


@dataclass(frozen=True)
class Panel:
    """A rectangle, and what becomes of it.

    With an ``axis`` it is divided into ``parts`` by cuts of the saw's width; else it is just what
    is ``placed`` on it (one piece, or a chain of ``slanted`` ones), or with nothing placed a rest.
    A rest narrower than nothing is where a cut lies beside another, or beside the edge, and leaves
    nothing; a ``trim`` is one off the edge of a sheet.  ``skew`` is that of :class:`Block`.
    """

    area: Rectangle
    axis: Axis | None = None
    parts: tuple[Panel, ...] = ()
    placed: tuple[Placed, ...] = ()
    slanted: bool = False
    skew: float = 0.0
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
    layout: Layout, supply: Supply, lot: Lot, kerf: float, first: Axis | None = None
) -> Panel | None:
    """The layout as panels; None if straight cuts from edge to edge don't part it.

    Trims are no part of it.  ``first`` is how the first cuts run, if there is a choice.  The
    offcuts of a sheet or a board stay whole, if pieces and offcuts can be parted.
    """
    trim = supply.trim
    width = supply.width - trim.face - trim.back if supply.width else 0.0
    face = trim.face if supply.width else 0.0
    whole = Rectangle(trim.near, face, supply.length - trim.near - trim.far, width)
    blocks = blocks_of(layout.placed, lot, kerf)
    sides = ((each.x, each.y, each.length, each.width) for each in layout.offcuts)
    kept = [Block(Rectangle(*each), ()) for each in sides]
    if lot.kind == "board":
        kept = [each for each in kept if not any(_behind(each, block) for block in blocks)]
        found = _ripped((*blocks, *kept), whole, kerf) if kept else None
        return found or _ripped(blocks, whole, kerf)
    found = divided((*blocks, *kept), whole, kerf, first) if kept and supply.width else None
    plain = divided(blocks, whole, kerf, first) if found is None or first is not None else None
    return plain if found is None or _keeps_less(found, plain, first) else found


def _keeps_less(found: Panel, plain: Panel | None, first: Axis | None) -> bool:
    """Whether offcuts that stay whole hinder the first cuts that were asked for."""
    if plain is None or plain.axis != first:
        return False
    wanted = [sum(not part.is_rest for part in panel.parts) for panel in (found, plain)]
    return found.axis != first or wanted[0] < wanted[1]


def _behind(kept: Block, block: Block) -> bool:
    """Whether an offcut lies behind a mitre in its strip: where it begins comes of that cut."""
    return block.slanted and _one_strip(kept.area, block.area) and kept.area.x > block.area.x


def _ripped(blocks: Sequence[Block], whole: Rectangle, kerf: float) -> Panel | None:
    """A board ripped over its whole length, if its pieces lie in strips; or first cut across; or
    cut off where its pieces end, if so more of it stays whole."""
    axes: tuple[Axis, ...] = ("along", "across")
    ways = [panel for axis in axes if (panel := divided(blocks, whole, kerf, axis))]
    best = next((panel for panel in ways if _in_strips(panel)), ways[-1] if ways else None)
    low, high = _spanned("across", blocks)
    used = divided(blocks, whole.spanning("across", low, high), kerf, "along")
    if best is None or best.axis == "across" or used is None or used.area == whole:
        return best
    headed = Panel(whole, "across", tuple(with_rests("across", whole, [used], kerf)))
    return max(best, headed, key=lambda panel: panel.merit)


def _in_strips(panel: Panel) -> bool:
    """Whether it is ripped to strips in each of which all lies at one edge."""
    if panel.axis != "along":
        return False
    return all(
        len({round(each.y, 3) for leaf in part.leaves() for each in leaf.placed}) < 2
        for part in panel.parts
    )


def blocks_of(placed: Sequence[Placed], lot: Lot, kerf: float) -> tuple[Block, ...]:
    """What lies on a sheet, with slanted pieces as one that lie so near each other in a strip that
    they share a cut."""
    slanted = {piece.name: piece for piece in lot.pieces if any(piece.slants)}
    blocks: list[Block] = []
    for each in sorted(placed, key=lambda one: (one.y, one.x)):
        area = Rectangle(each.x, each.y, each.length, each.width)
        if each.piece not in slanted:
            blocks.append(Block(area, (each,)))
            continue
        piece = slanted[each.piece]
        far = ends_of(each, piece.slants)[1]
        skew = beyond(far, kerf, wide_of(piece))[0] - far[0] - kerf
        last = blocks[-1] if blocks else None
        if last is not None and last.slanted and _share_cut(last.area, area, kerf):
            area = last.area._replace(length=area.x + area.length - last.area.x)
            blocks[-1] = Block(area, (*last.placed, each), True, skew)
        else:
            blocks.append(Block(area, (each,), True, skew))
    return tuple(blocks)


def _share_cut(one: Rectangle, other: Rectangle, kerf: float) -> bool:
    """Whether what lies behind another in its strip begins a few kerfs from its end, or before."""
    return _one_strip(one, other) and other.x < one.x + one.length + _FEW * kerf + NOISE


_FEW = 3
"""Kerfs: a mitre of 70 degrees takes as much along a bar."""


def _one_strip(one: Rectangle, other: Rectangle) -> bool:
    return abs(one.y - other.y) < NOISE and abs(one.width - other.width) < NOISE


def divided(
    blocks: Sequence[Block], area: Rectangle, kerf: float, first: Axis | None = None
) -> Panel | None:
    """A rectangle with blocks on it as panels; None where no straight cuts part these."""
    if not blocks:
        return Panel(area)
    if len(blocks) == 1 and _alike(blocks[0].area, area):
        block = blocks[0]
        return Panel(area, placed=block.placed, slanted=block.slanted, skew=block.skew)
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
    return Panel(area, axis, tuple(with_rests(axis, area, parts, kerf)))


def with_rests(axis: Axis, area: Rectangle, parts: Sequence[Panel], kerf: float) -> Iterator[Panel]:
    """Parts with what lies between them, before the first and after the last."""
    low, high = area.span(axis)
    at, cut = low, 0.0
    for part in parts:
        start, stop = part.area.span(axis)
        if start - at - cut > NOISE:
            yield Panel(area.spanning(axis, at + cut, start - kerf))
        yield part
        at, cut = stop, kerf + (part.skew if axis == "across" else 0.0)
    if high - at > NOISE:
        yield Panel(area.spanning(axis, at + cut, high))


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
