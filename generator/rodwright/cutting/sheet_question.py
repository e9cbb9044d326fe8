"""From pieces and stock in mm to a problem in whole numbers, and back to a layout."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from itertools import islice

from rodwright.cutting.grid import Grid
from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import CannotCutError, Layout, Offcut, Placed
from rodwright.cutting.sheet_problem import Pattern, Put, Rules, Sheet, SheetProblem, Size, Spot
from rodwright.cutting.supplies import Flaw, Supply


def problem_of(
    pieces: Sequence[Piece],
    stock: Sequence[Supply],
    rules: Rules,
    *,
    kerf: float = 0.0,
    turning: bool = False,
    least_offcut: tuple[float, float] = (0.0, 0.0),
) -> SheetProblem:
    """The question in whole numbers; all lengths in mm.

    Raises:
        CannotCutError: A piece goes on no sheet, whatever else does.
        ValueError: A size isn't more than 0, or another figure is less.
    """
    _check(pieces, stock, kerf, rules)
    grid = Grid.of(_lengths(pieces, stock, kerf, least_offcut))
    money = Grid.of(supply.price for supply in stock)
    wanted = sum(piece.count for piece in pieces)
    cut = grid.whole(kerf)
    sheets = tuple(
        _sheet(supply, grid, cut, place, money.whole(supply.price), wanted)
        for place, supply in enumerate(stock)
    )
    sizes = _sizes(pieces, grid, cut, turning)
    _refuse(sizes, sheets, pieces)
    useful = tuple(
        sheet for sheet in sheets if sheet.count and any(sheet.takes(size) for size in sizes)
    )
    least = (grid.whole(least_offcut[0]), grid.whole(least_offcut[1]))
    return SheetProblem(sizes, useful, rules, grid, money, cut, least)


def layouts_of(
    problem: SheetProblem,
    patterns: Iterable[Pattern],
    pieces: Sequence[Piece],
    stock: Sequence[Supply],
    offcuts: Callable[[Pattern], tuple[Offcut, ...]],
) -> tuple[Layout, ...]:
    """Patterns as layouts, in mm; equal pieces get their names in the order they were asked for.

    ``offcuts`` says what is left of a sheet.
    """
    names = [(pieces[place].name for place in _places(size)) for size in problem.sizes]
    layouts = []
    for pattern in patterns:
        sheet = pattern.sheet
        placed = (_placed(problem, sheet, put, next(names[put.size])) for put in pattern.puts)
        name = stock[problem.sheets[sheet].supply].name
        layouts.append(Layout(name, tuple(placed), offcuts(pattern)))
    return tuple(layouts)


def left_of(
    problem: SheetProblem, left: Sequence[int], pieces: Sequence[Piece]
) -> tuple[Piece, ...]:
    """The pieces that found no place; ``left`` is how many there are of each size."""
    counted: dict[int, int] = {}
    for size, many in zip(problem.sizes, left, strict=True):
        for place in islice(reversed(_places(size)), many):
            counted[place] = counted.get(place, 0) + 1
    return tuple(replace(pieces[place], count=counted[place]) for place in sorted(counted))


def _places(size: Size) -> list[int]:
    return [place for place, many in size.of for _ in range(many)]


def _placed(problem: SheetProblem, sheet: int, put: Put, name: str) -> Placed:
    grid, on = problem.grid, problem.sheets[sheet]
    length, width = problem.sizes[put.size].lying(put.turned)
    return Placed(
        name,
        grid.length(put.x + on.near),
        grid.length(put.y + on.face),
        grid.length(length - problem.kerf),
        grid.length(width - problem.kerf),
        put.turned,
    )


def _check(pieces: Sequence[Piece], stock: Sequence[Supply], kerf: float, rules: Rules) -> None:
    if kerf < 0:
        raise ValueError(f"a kerf of {kerf}")
    if rules.stages is not None and rules.stages < 1:
        raise ValueError(f"{rules.stages} stages")
    for piece in pieces:
        if piece.length <= 0 or piece.width <= 0 or piece.count < 0:
            raise ValueError(f"the size or the count of {piece.name}")
    for supply in stock:
        trim = supply.trim
        least = min(trim.near, trim.far, trim.face, trim.back, supply.price, supply.count or 0)
        if supply.length <= 0 or supply.width <= 0 or least < 0:
            raise ValueError(f"a figure of {supply.name}")


def _lengths(
    pieces: Sequence[Piece], stock: Sequence[Supply], kerf: float, least: tuple[float, float]
) -> list[float]:
    lengths = [kerf, *least]
    for piece in pieces:
        lengths += (piece.length, piece.width)
    for supply in stock:
        trim = supply.trim
        lengths += (supply.length, supply.width, trim.near, trim.far, trim.face, trim.back)
        for flaw in supply.flaws:
            lengths += (flaw.x, flaw.y, flaw.length, flaw.width)
    return lengths


def _sheet(supply: Supply, grid: Grid, kerf: int, place: int, price: int, wanted: int) -> Sheet:
    trim = supply.trim
    near, face = grid.whole(trim.near), grid.whole(trim.face)
    length = grid.whole(supply.length) - near - grid.whole(trim.far) + kerf
    width = grid.whole(supply.width) - face - grid.whole(trim.back) + kerf
    spots = (_spot(flaw, grid, kerf, near, face) for flaw in supply.flaws)
    within = tuple(spot for spot in spots if spot.under(0, 0, length, width))
    count = wanted if supply.count is None else min(supply.count, wanted)
    return Sheet(length, width, count, price, within, place, near, face)


def _spot(flaw: Flaw, grid: Grid, kerf: int, near: int, face: int) -> Spot:
    x, y = grid.whole(flaw.x) - near, grid.whole(flaw.y) - face
    return Spot(x + kerf, y + kerf, x + grid.whole(flaw.length), y + grid.whole(flaw.width))


def _sizes(pieces: Sequence[Piece], grid: Grid, kerf: int, turning: bool) -> tuple[Size, ...]:
    gathered: dict[tuple[int, int, bool], list[tuple[int, int]]] = {}
    for place, piece in enumerate(pieces):
        length, width = grid.whole(piece.length) + kerf, grid.whole(piece.width) + kerf
        turns = (turning if piece.turning is None else piece.turning) and length != width
        if piece.count:
            gathered.setdefault((length, width, turns), []).append((place, piece.count))
    return tuple(
        Size(length, width, sum(many for _, many in of), turns, tuple(of))
        for (length, width, turns), of in gathered.items()
    )


def _refuse(sizes: Sequence[Size], sheets: Sequence[Sheet], pieces: Sequence[Piece]) -> None:
    reasons: dict[str, list[str]] = {}
    for size in sizes:
        if not any(sheet.takes(size) for sheet in sheets if sheet.count):
            names = (pieces[place].name for place, _ in size.of)
            reasons.setdefault(_reason(size, sheets), []).extend(names)
    for reason in ("too large", "grain", "flaws", "not enough"):
        if reason in reasons:
            raise CannotCutError(reason, tuple(dict.fromkeys(reasons[reason])))


def _reason(size: Size, sheets: Sequence[Sheet]) -> str:
    if not sheets or any(sheet.takes(size) for sheet in sheets):
        return "not enough"
    within = [(sheet.length, sheet.width) for sheet in sheets]
    if any(x <= length and y <= width for _, x, y in size.ways for length, width in within):
        return "flaws"
    if any(size.width <= length and size.length <= width for length, width in within):
        return "grain"
    return "too large"
