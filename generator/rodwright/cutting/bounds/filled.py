"""The most from one sheet by the rules of a problem, clear of its flaws."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from rodwright.cutting.bounds.joined import Effort
from rodwright.cutting.bounds.one_sheet import Best, best_of_sheet
from rodwright.cutting.bounds.staged import orders
from rodwright.cutting.bounds.strips import best_in_strips
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, Put, Sheet, SheetProblem, Size, Spot
from rodwright.cutting.sheets.left_over import boxes_of
from rodwright.cutting.sheets.separating import Box, part

_PAIRS = 40_000_000
"""The effort of a search, in pairs of rectangles: some seconds."""


def best_filled(problem: SheetProblem, values: Sequence[int], patience: Patience) -> Best:
    """The pieces worth most together on the first sheet of a problem, by its rules.

    ``values`` are of the sizes, whole and more than 0.
    """
    best = _best(problem, problem.sizes, values, problem.sheets[0], patience)
    alike = [best.puts, *_turned_about(problem, best.puts)]
    found = [puts for puts in alike if _allowed(problem, puts)] or [
        puts for puts in _others(problem, values, patience) if _allowed(problem, puts)
    ]

    def worth(puts: tuple[Put, ...]) -> int:
        return sum(values[put.size] for put in puts)

    puts = max(found, key=worth, default=())
    return Best(worth(puts), puts, best.bound)


def _best(
    problem: SheetProblem,
    sizes: Sequence[Size],
    values: Sequence[int],
    sheet: Sheet,
    patience: Patience,
) -> Best:
    """The best of a sheet without flaws; by any cuts where there are three stages or more, which
    bounds what can be done in these."""
    if problem.rules.stages is None or problem.rules.stages > 2:
        return best_of_sheet(sizes, values, sheet, patience, pairs=_PAIRS)
    found = [
        best_in_strips(sizes, values, sheet, axes, Effort(_PAIRS), patience)
        for axes in orders(problem.rules)
    ]
    best = max(found, key=lambda each: each.value)
    return replace(best, bound=max(each.bound for each in found))


def _allowed(problem: SheetProblem, puts: tuple[Put, ...]) -> bool:
    """Whether pieces lie clear of flaws and are parted by cuts that the rules allow."""
    sheet = problem.sheets[0]
    for put in puts:
        lying = problem.sizes[put.size].lying(put.turned)
        if any(spot.under(put.x, put.y, *lying) for spot in sheet.spots):
            return False
    boxes = boxes_of(problem, Pattern(0, puts))
    return part(boxes, Box(0, 0, sheet.length, sheet.width), problem.rules) is not None


def _turned_about(problem: SheetProblem, puts: tuple[Put, ...]) -> Iterator[tuple[Put, ...]]:
    """The pattern pushed to the other corners of the sheet."""
    sheet = problem.sheets[0]
    for far, back in ((True, False), (False, True), (True, True)) if sheet.spots else ():
        moved = []
        for put in puts:
            length, width = problem.sizes[put.size].lying(put.turned)
            x = sheet.length - put.x - length if far else put.x
            y = sheet.width - put.y - width if back else put.y
            moved.append(put._replace(x=x, y=y))
        yield tuple(moved)


def _others(
    problem: SheetProblem, values: Sequence[int], patience: Patience
) -> Iterator[tuple[Put, ...]]:
    """Patterns that may keep to the rules where the best by fewer rules doesn't: in all fields
    without flaws or in one of them, in as many stages as wished or in two."""
    sheet = problem.sheets[0]
    fields = _fields(Box(0, 0, sheet.length, sheet.width), sheet.spots)
    rules = problem.rules
    two = replace(rules, stages=2 if rules.stages is None else min(2, rules.stages))
    for its_rules in (rules, two):
        for some in (fields, fields[:1]):
            yield _in_fields(replace(problem, rules=its_rules), values, some, patience)


def _in_fields(
    problem: SheetProblem, values: Sequence[int], fields: Sequence[Box], patience: Patience
) -> tuple[Put, ...]:
    """One field after the other, each with the best that is left for it."""
    left = list(problem.sizes)
    found: list[Put] = []
    for field in fields:
        length, width = field.x1 - field.x0, field.y1 - field.y0
        sheet = replace(problem.sheets[0], length=length, width=width, spots=())
        best = _best(problem, left, values, sheet, patience)
        found += (put._replace(x=put.x + field.x0, y=put.y + field.y0) for put in best.puts)
        used = [put.size for put in best.puts]
        left = [
            replace(size, count=max(0, size.count - used.count(n))) for n, size in enumerate(left)
        ]
    return tuple(found)


def _fields(area: Box, spots: Sequence[Spot]) -> list[Box]:
    """What cuts from edge to edge beside flaws leave without one, the largest first."""
    hit = [spot for spot in spots if spot.under(area.x0, area.y0, *_sides(area))]
    if not hit:
        return [area]
    ways = [way for spot in hit for way in _beside(area, spot)]
    if not ways:
        return []

    def clear(way: tuple[Box, Box]) -> int:
        off = way[0]
        marred = any(spot.under(off.x0, off.y0, *_sides(off)) for spot in hit)
        return 0 if marred else _area(off)

    off, rest = max(ways, key=clear)
    return sorted([*_fields(off, hit), *_fields(rest, hit)], key=lambda field: -_area(field))


def _beside(area: Box, spot: Spot) -> Iterator[tuple[Box, Box]]:
    """What a cut beside a flaw takes off, on each of its sides, and what it leaves."""
    for at, far in ((spot.x0, False), (max(spot.x0, spot.x1), True)):
        if area.x0 < at < area.x1:
            parts = area._replace(x1=at), area._replace(x0=at)
            yield parts[::-1] if far else parts
    for at, far in ((spot.y0, False), (max(spot.y0, spot.y1), True)):
        if area.y0 < at < area.y1:
            parts = area._replace(y1=at), area._replace(y0=at)
            yield parts[::-1] if far else parts


def _area(box: Box) -> int:
    length, width = _sides(box)
    return length * width


def _sides(box: Box) -> tuple[int, int]:
    return box.x1 - box.x0, box.y1 - box.y0
