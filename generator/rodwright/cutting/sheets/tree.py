"""The guillotine cuts of a sheet as a tree: what is cut where, and what is on either side."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.cutting.grid import Grid
from rodwright.cutting.plans import Offcut, Placed
from rodwright.cutting.sheet_problem import FirstCut, Rules, Spot
from rodwright.cutting.sheets.leftovers import part_with_offcuts
from rodwright.cutting.sheets.separating import Box, Node
from rodwright.cutting.supplies import Supply


@dataclass(frozen=True, slots=True)
class Cut:
    """A cut from edge to edge, ``along`` the length (a rip) or ``across`` it.

    ``at`` is where the kerf begins: its y for a cut along, its x for one across, mm in the frame of
    the sheet.  ``low`` is what is on the side of the near end or the face edge, ``high`` what
    is on the other; None where the kerf leaves nothing.  Cuts of one axis that follow each other
    stand one in the ``high`` of the other.
    """

    axis: FirstCut
    at: float
    low: Panel | None
    high: Panel | None


@dataclass(frozen=True, slots=True)
class Panel:
    """A rectangle that is cut (``cut``), is a ``piece``, or is left over; mm, in the frame of the
    sheet."""

    x: float
    y: float
    length: float
    width: float
    piece: Placed | None = None
    cut: Cut | None = None

    def leaves(self) -> Iterator[Panel]:
        """Pieces and what is left over, from the near end and the face edge on."""
        if self.cut is None:
            yield self
        else:
            for side in (self.cut.low, self.cut.high):
                if side is not None:
                    yield from side.leaves()

    def left_over(self) -> tuple[Offcut, ...]:
        """What is left over, largest first."""
        empty = (leaf for leaf in self.leaves() if leaf.piece is None)
        offcuts = (Offcut(leaf.x, leaf.y, leaf.length, leaf.width) for leaf in empty)
        return tuple(sorted(offcuts, key=lambda each: (-each.area, each.x, each.y)))


_FREE = Rules()


def tree(
    placed: Sequence[Placed],
    supply: Supply,
    kerf: float,
    *,
    rules: Rules = _FREE,
    least_offcut: tuple[float, float] = (0.0, 0.0),
) -> Panel | None:
    """The cuts that free the pieces from a sheet whose trims are off already.

    As few stages as can be, with the largest rectangle left whole (of ``least_offcut`` at least,
    mm, and without a flaw).  All cuts of a panel that go one way stand together.  None if no
    guillotine cuts, or none by the ``rules``, part the pieces.
    """
    trim = supply.trim
    trims = (trim.near, trim.far, trim.face, trim.back)
    sides = [side for each in placed for side in (each.x, each.y, each.length, each.width)]
    marred = [side for flaw in supply.flaws for side in (flaw.x, flaw.y, flaw.length, flaw.width)]
    grid = Grid.of([kerf, supply.length, supply.width, *trims, *least_offcut, *sides, *marred])
    whole, cut = grid.whole, grid.whole(kerf)
    boxes = [_box(each, which, grid, cut) for which, each in enumerate(placed)]
    spots = [
        Spot(whole(flaw.x) + cut, whole(flaw.y) + cut,
             whole(flaw.x + flaw.length), whole(flaw.y + flaw.width))
        for flaw in supply.flaws
    ]  # fmt: skip
    far, back = supply.length - trim.far, supply.width - trim.back
    area = Box(whole(trim.near), whole(trim.face), whole(far) + cut, whole(back) + cut)
    least = (whole(least_offcut[0]) + cut + 1, whole(least_offcut[1]) + cut + 1)
    node = part_with_offcuts(boxes, area, rules, kerf=cut, spots=spots, least=least)
    return None if node is None else _panel(node, placed, grid, cut)


def _box(placed: Placed, which: int, grid: Grid, kerf: int) -> Box:
    x, y = grid.whole(placed.x), grid.whole(placed.y)
    length, width = grid.whole(placed.length) + kerf, grid.whole(placed.width) + kerf
    return Box(x, y, x + length, y + width, which)


def _panel(node: Node, placed: Sequence[Placed], grid: Grid, kerf: int) -> Panel | None:
    """None if there is nothing of it beside the kerf."""
    area = node.area
    length, width = area.x1 - area.x0 - kerf, area.y1 - area.y0 - kerf
    if min(length, width) <= 0:
        return None
    piece = placed[node.which] if node.which >= 0 else None
    cut = _cuts(node.axis, node.parts, placed, grid, kerf) if node.parts else None
    mm = grid.length
    return Panel(mm(area.x0), mm(area.y0), mm(length), mm(width), piece, cut)


def _cuts(
    axis: FirstCut, parts: Sequence[Node], placed: Sequence[Placed], grid: Grid, kerf: int
) -> Cut:
    first, rest = parts[0], parts[1:]
    low = _panel(first, placed, grid, kerf)
    end = first.area.x1 if axis == "across" else first.area.y1
    behind = rest[0]
    if len(rest) > 1:
        area = rest[0].area._replace(x1=rest[-1].area.x1, y1=rest[-1].area.y1)
        behind = Node(area, axis, tuple(rest))
    return Cut(axis, grid.length(end - kerf), low, _panel(behind, placed, grid, kerf))
