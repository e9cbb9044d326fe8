"""A plan's layouts laid out anew for the saw: the same pieces, of the same stock, by like cuts.

Parallel parts stand in the order in which they are cut off, wide ones first, equal ones together;
what is left over stands behind them as one.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import NamedTuple

from rodwright.cutting.plans import Layout, Offcut, Placed
from rodwright.cutting.steps.ends import beyond, ends_of, wide_of
from rodwright.cutting.steps.panels import (
    NOISE,
    Axis,
    Panel,
    Rectangle,
    panel_of,
    with_rests,
)
from rodwright.cutting.supplies import Flaw
from rodwright.cutting.work import Lot, LotPlan


class _Ground(NamedTuple):
    """What panels are laid out by: the kerf, the flaws of the sheet, and how many pieces of the
    plan have a side of each size (:func:`_sides`)."""

    kerf: float
    flaws: tuple[Flaw, ...]
    sides: Counter[float]


def arranged(planned: LotPlan, first: Axis | None = None) -> LotPlan:
    """The plan with its layouts as they are best cut, and equal layouts one after another.

    Offcuts are then what the cuts leave.  ``first`` is how the first cuts run, if that was asked.
    Parts that hold a flaw stay where they are, and so do mitred pieces in a row, and what no saw
    cuts from edge to edge.
    """
    laid: dict[Layout, int] = {}
    for layout in planned.plan.layouts:
        new = _settled(planned, layout, first)
        laid[new] = laid.get(new, 0) + 1
    layouts = tuple(layout for layout, many in laid.items() for _ in range(many))
    return replace(planned, plan=replace(planned.plan, layouts=layouts))


def _settled(planned: LotPlan, layout: Layout, first: Axis | None) -> Layout:
    """Arranged, and again as long as that leaves more whole."""
    best = _arranged(planned, layout, first)
    while True:
        again = _arranged(planned, best, first)
        if _whole(again) <= _whole(best):
            return best
        best = again


def _whole(layout: Layout) -> list[float]:
    """The areas of its offcuts, the largest first: which of two leaves more whole."""
    return [round(each.area, 3) for each in layout.offcuts]


def _arranged(planned: LotPlan, layout: Layout, first: Axis | None) -> Layout:
    lot, kerf = planned.lot, planned.plan.kerf
    supply = next(each for each in lot.supplies if each.name == layout.stock)
    if not supply.flaws:
        layout = replace(layout, placed=_closed_up(layout.placed, lot, kerf))
    panel = panel_of(layout, supply, lot, kerf, first)
    if panel is None:
        return layout
    sides = _sides(each for one in planned.plan.layouts for each in one.placed)
    panel = _laid(panel, panel.area.x, panel.area.y, _Ground(kerf, supply.flaws, sides))
    placed = tuple(each for leaf in panel.leaves() for each in leaf.placed)
    left = (Offcut(*map(_tidy, area)) for area in _left(panel) if _there(area, supply.width))
    offcuts = tuple(sorted(left, key=lambda each: (-each.area, each.x, each.y)))
    return Layout(layout.stock, placed, offcuts)


def _closed_up(placed: tuple[Placed, ...], lot: Lot, kerf: float) -> tuple[Placed, ...]:
    """Mitred pieces that were planned a hair farther apart than the cut that they share takes."""
    pieces = {piece.name: piece for piece in lot.pieces}
    if not any(any(piece.slants) for piece in lot.pieces):
        return placed
    laid: list[Placed] = []
    spare = 0.0
    for each in sorted(placed, key=lambda one: (one.y, one.x)):
        last, piece = (laid[-1] if laid else None), pieces[each.piece]
        if last is None or abs(last.y - each.y) > NOISE:
            spare = 0.0
        moved = replace(each, x=each.x - spare)
        if last is not None and abs(last.y - each.y) < NOISE and any(piece.slants):
            far = ends_of(last, pieces[last.piece].slants)[1]
            begins = beyond(far, kerf, wide_of(piece))
            near = ends_of(moved, piece.slants)[0]
            gaps = near[0] - begins[0], near[1] - begins[1]
            if abs(gaps[0] - gaps[1]) < NOISE and 0 < gaps[0] < _HAIR:
                spare += gaps[0]
                moved = replace(moved, x=moved.x - gaps[0])
        laid.append(moved)
    return tuple(laid)


_HAIR = 1.0
"""mm."""


def _laid(panel: Panel, x: float, y: float, ground: _Ground) -> Panel:
    """A panel with its near corner here, and all that is in it in the order it is cut off."""
    across, up = x - panel.area.x, y - panel.area.y
    area = panel.area._replace(x=x, y=y)
    if panel.axis is None:
        placed = tuple(
            replace(each, x=_tidy(each.x + across), y=_tidy(each.y + up)) for each in panel.placed
        )
        return replace(panel, area=area, placed=placed)
    axis, kerf = panel.axis, ground.kerf
    mitred = axis == "across" and any(part.slanted for part in panel.parts)
    if mitred or any(_holds(panel.area, flaw) for flaw in ground.flaws):
        stays = (
            _laid(part, part.area.x + across, part.area.y + up, ground) for part in panel.parts
        )
        return replace(panel, area=area, parts=tuple(stays))
    wanted = sorted(
        (part for part in panel.parts if not part.is_rest), key=lambda x: _order(x, axis)
    )
    if len(wanted) == len(panel.parts):
        _last_alone(wanted, axis, ground.sides)
    parts, at = [], area.span(axis)[0]
    for part in wanted:
        corner = (at, y) if axis == "across" else (x, at)
        parts.append(_laid(part, *corner, ground))
        at = parts[-1].area.span(axis)[1] + kerf + (part.skew if axis == "across" else 0.0)
    return Panel(area, axis, tuple(with_rests(axis, area, parts, kerf)))


def _order(part: Panel, axis: Axis) -> tuple[float, int, list[tuple[float, float, str]]]:
    """Wide parts first; of those as wide, what is cut alike together."""
    low, high = part.area.span(axis)
    inside = sorted((each.length, each.width, each.piece) for each in _all(part))
    return -round(high - low, 3), part.cuts, inside


def _last_alone(row: list[Panel], axis: Axis, sides: Counter[float]) -> None:
    """Put a part of a row without waste last that nothing else is as wide as: it is what the
    others leave, and equal pieces come from equal settings."""
    for place in reversed(range(len(row))):
        low, high = row[place].area.span(axis)
        size = round(high - low, 3)
        if sides[size] == _sides(_all(row[place]))[size]:
            row.append(row.pop(place))
            return


def _sides(placed: Iterable[Placed]) -> Counter[float]:
    """How many sides there are of each size, mm."""
    return Counter(round(side, 3) for each in placed for side in (each.length, each.width))


def _all(panel: Panel) -> Iterator[Placed]:
    for leaf in panel.leaves():
        yield from leaf.placed


def _left(panel: Panel) -> Iterator[Rectangle]:
    """What cuts leave whole; between mitred pieces nothing stays."""
    if panel.axis is None:
        if panel.is_rest:
            yield panel.area
        return
    parts = panel.parts
    if any(part.slanted for part in parts):
        parts = parts[-1:]
    for part in parts:
        yield from _left(part)


def _there(area: Rectangle, width: float) -> bool:
    return area.length > NOISE and (area.width > NOISE or not width)


def _holds(area: Rectangle, flaw: Flaw) -> bool:
    beside = flaw.y >= area.y + area.width or flaw.y + flaw.width <= area.y
    before = flaw.x >= area.x + area.length or flaw.x + flaw.length <= area.x
    return not before and not (beside and area.width)


def _tidy(length: float) -> float:
    """A length without the noise of sums, to a millionth of a mm."""
    return round(length, 6) + 0.0
