"""The largest offcut: one sheet is emptied as far as the others have room, and what stays on it is
pushed to one side."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.cutting.sheets.fields import Field
from rodwright.cutting.sheets.filling import Filling, Taste, place_all
from rodwright.cutting.sheets.left_over import largest
from rodwright.cutting.sheets.packing import pack
from rodwright.cutting.sheets.state import Found, Ground

_HALVINGS = 6
_SHARE = 2 * _HALVINGS
"""So many tries share the effort: some for each of two sides."""


def squeezed(ground: Ground, found: Found) -> Found:
    """The same sheets with a larger offcut on the emptiest, if one is found.

    A sheet with flaws is left as it is.
    """
    ready = [f for f in found.fillings if not ground.problem.sheets[f.sheet].spots]
    if not ready:
        return found
    emptiest = max(ready, key=lambda filling: filling.free)
    others = [filling for filling in found.fillings if filling is not emptiest]
    best, others = _emptied(ground, emptiest, others)
    area = largest(ground.problem, best.pattern())
    each = ground.effort.left // _SHARE
    for axis in (0, 1):
        for tried in _pushed(ground, best, area, axis, each):
            its_area = largest(ground.problem, tried.pattern())
            if its_area > area:
                best, area = tried, its_area
    before = max(largest(ground.problem, filling.pattern()) for filling in found.fillings)
    return ground.found([*others, best], ()) if area > before else found


def _emptied(
    ground: Ground, emptiest: Filling, others: list[Filling]
) -> tuple[Filling, list[Filling]]:
    """What goes on other sheets is moved there, the largest pieces first."""
    roomy = [filling.copy() for filling in others]
    sizes = ground.problem.sizes
    less = emptiest.copy()
    for size in sorted(emptiest.sizes(), key=lambda number: (-sizes[number].area, number)):
        if place_all(roomy, [size], ground.ways, Taste(), ground.effort, ground.rng):
            continue
        if len(less.sizes()) == 1:
            return emptiest, others  # the fewest sheets were looked for before
        field, leaf = next(
            (field, leaf) for field in less.fields for leaf in field.leaves() if leaf.size == size
        )
        less.take_off([(field, leaf)])
    return less, roomy


def _pushed(
    ground: Ground, filling: Filling, area: int, axis: int, effort: int
) -> Iterator[Filling]:
    """Its pieces on a shorter or a narrower sheet, shorter and shorter."""
    sheet = ground.problem.sheets[filling.sheet]
    side, other = (sheet.length, sheet.width) if axis == 0 else (sheet.width, sheet.length)
    needed = filling.area - filling.free
    low = needed // other
    high = side - area // other
    for _ in range(_HALVINGS):
        at = (low + high) // 2
        if ground.effort.over() or low >= at:
            return
        length, width = (at, other) if axis == 0 else (other, at)
        field = Field(0, 0, length, width, ground.rules, ground.least)
        narrow = Filling(filling.sheet, [field], length * width)
        packed, left = pack(ground, [narrow], filling.sizes(), effort, lambda _: None)
        if left:
            low = at
            continue
        whole = ground.open(filling.sheet)
        whole.fields[0].root = packed[0].fields[0].root
        whole.fields[0].list_entries()
        whole.free -= needed
        high = at
        yield whole
