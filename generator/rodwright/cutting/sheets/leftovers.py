"""The largest rectangles that can stay whole on a sheet without spoiling its cuts."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rodwright.cutting.sheet_problem import Rules, Spot
from rodwright.cutting.sheets.separating import Box, Node, part

KEPT = -2
"""``which`` of a box that is an offcut."""
_TRIED = 60
"""How many empty rectangles are tried for each offcut."""


def part_with_offcuts(
    boxes: Sequence[Box],
    area: Box,
    rules: Rules,
    *,
    kerf: int = 0,
    spots: Sequence[Spot] = (),
    least: tuple[int, int] = (1, 1),
    most: int = 3,
) -> Node | None:
    """The cuts that part boxes and leave the largest rectangle whole, then the next, and so on.

    ``least`` is what an offcut has to be, kerf and all, either way round; up to ``most`` of them.
    None if the boxes can't be parted.
    """
    node = part(boxes, area, rules)
    kept = list(boxes)
    for _ in range(most if node else 0):
        for empty in _empty(kept, area, kerf, spots, least)[:_TRIED]:
            parted = part([*kept, empty], area, rules)
            if parted:
                node = parted
                kept.append(empty)
                break
        else:
            break
    return node


def _empty(
    boxes: Sequence[Box], area: Box, kerf: int, spots: Sequence[Spot], least: tuple[int, int]
) -> list[Box]:
    """Empty rectangles that can't be larger, the largest first."""
    taken = [*(box[:4] for box in boxes), *spots]
    found = {empty for empty in _maximal(taken, area) if _useful(empty, least)}

    def order(box: Box) -> tuple[int, Box]:
        return (kerf + box.x0 - box.x1) * (box.y1 - box.y0 - kerf), box

    return sorted(found, key=order)


def _useful(box: Box, least: tuple[int, int]) -> bool:
    length, width = box.x1 - box.x0, box.y1 - box.y0
    return any(
        one >= least[0] and two >= least[1] for one, two in ((length, width), (width, length))
    )


def _maximal(taken: Sequence[tuple[int, int, int, int]], area: Box) -> Iterator[Box]:
    """From each near side, towards the far end, between what narrows it down."""
    starts = sorted({area.x0, *(x1 for _, _, x1, _ in taken if area.x0 < x1 < area.x1)})
    for start in starts:
        beyond = sorted(each for each in taken if each[2] > start)
        yield from _grown(start, beyond, area)


def _grown(start: int, beyond: Sequence[tuple[int, int, int, int]], area: Box) -> Iterator[Box]:
    gaps = [(area.y0, area.y1)]
    for x0, y0, _, y1 in beyond:
        hit = [gap for gap in gaps if y0 < gap[1] and y1 > gap[0]]
        if not hit:
            continue
        if x0 > start:
            yield from (Box(start, low, x0, high, KEPT) for low, high in hit)
        gaps = [gap for gap in gaps if gap not in hit]
        for low, high in hit:
            gaps += [(low, y0)] if y0 > low else []
            gaps += [(y1, high)] if y1 < high else []
    yield from (Box(start, low, area.x1, high, KEPT) for low, high in gaps)
