"""From pieces and boards in mm to a problem in whole numbers."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import product
from math import ceil, hypot

from rodwright.cutting.boards.problem import Blank, Board, BoardProblem, Item, Spot
from rodwright.cutting.boards.spots import beside, stretches
from rodwright.cutting.grid import Grid
from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import CannotCutError
from rodwright.cutting.supplies import Supply

_FINE = 0.005
"""mm: half of how finely cuts along slants are counted."""

_WAYS = 16
"""How many ways of cutting beside narrow flaws are looked at."""


def problem_of(pieces: Sequence[Piece], stock: Sequence[Supply], kerf: float) -> BoardProblem:
    """The question in whole numbers; lengths in mm.

    Raises:
        CannotCutError: A piece goes on no board, whatever else does.
        ValueError: A size isn't more than 0, another figure is less, or some have widths and
            some have none.
    """
    _check(pieces, stock, kerf)
    fine = [_FINE] if any(any(piece.slants) for piece in pieces) else []
    grid = Grid.of([*_lengths(pieces, stock), kerf, *fine])
    across = Grid.of([*_widths(pieces, stock), kerf])
    money = Grid.of(supply.price for supply in stock)
    wide = any(piece.width for piece in pieces)
    cut, rip = grid.whole(kerf), across.whole(kerf) if wide else 0
    wanted = sum(piece.count for piece in pieces)
    items = _items(pieces, grid, across, cut, rip)
    boards = tuple(
        _board(supply, place, wanted, (grid, across), (cut, rip), money.whole(supply.price))
        for place, supply in enumerate(stock)
    )
    _refuse(items, boards, pieces, (cut, rip))
    useful = tuple(
        board
        for board in boards
        if board.limit != 0 and any(_goes(item, board.roomy, (cut, rip)) for item in items)
    )
    return BoardProblem(
        items, useful, grid, across, money, cut, rip, _joints(pieces, grid, across, kerf)
    )


def _check(pieces: Sequence[Piece], stock: Sequence[Supply], kerf: float) -> None:
    if kerf < 0:
        raise ValueError(f"a kerf of {kerf}")
    for piece in pieces:
        if piece.length <= 0 or piece.width < 0 or piece.count < 0 or min(piece.slants) < 0:
            raise ValueError(f"the size or the count of {piece.name}")
        if sum(piece.slants) > piece.length:
            raise ValueError(f"the slanted ends of {piece.name} meet")
    for supply in stock:
        trim = supply.trim
        least = min(trim.near, trim.far, trim.face, trim.back, supply.price, supply.count or 0)
        if supply.length <= 0 or supply.width < 0 or least < 0:
            raise ValueError(f"a figure of {supply.name}")
    widths = [*(each.width for each in pieces), *(each.width for each in stock)]
    if len(set(map(bool, widths))) > 1:
        raise ValueError("some pieces or boards have a width and some have none")


def _lengths(pieces: Sequence[Piece], stock: Sequence[Supply]) -> list[float]:
    lengths: list[float] = []
    for piece in pieces:
        lengths += (piece.length, *piece.slants)
    for supply in stock:
        lengths += (supply.length, supply.trim.near, supply.trim.far)
        for flaw in supply.flaws:
            lengths += (flaw.x, flaw.length)
    return lengths


def _widths(pieces: Sequence[Piece], stock: Sequence[Supply]) -> list[float]:
    widths = [piece.width for piece in pieces]
    for supply in stock:
        widths += (supply.width, supply.trim.face, supply.trim.back)
        for flaw in supply.flaws:
            widths += (flaw.y, flaw.width)
    return widths


def _items(
    pieces: Sequence[Piece], grid: Grid, across: Grid, cut: int, rip: int
) -> tuple[Item, ...]:
    """Equal pieces gathered, the longest first."""
    gathered: dict[tuple[int, int, tuple[int, int], float], list[tuple[int, int]]] = {}
    for place, piece in enumerate(pieces):
        slants = (grid.whole(piece.slants[0]), grid.whole(piece.slants[1]))
        size = grid.whole(piece.length) + cut, across.whole(piece.width) + rip
        value = _value(piece)
        if piece.count:
            gathered.setdefault((*size, slants, value), []).append((place, piece.count))
    most = max((value for *_, value in gathered), default=1.0) or 1.0
    return tuple(
        Item(
            length,
            width,
            slants,
            sum(n for _, n in of),
            max(1, ceil(100 * value / most)),
            tuple(of),
        )
        for (length, width, slants, value), of in sorted(gathered.items(), reverse=True)
    )


def _value(piece: Piece) -> float:
    return piece.length * (piece.width or 1.0) if piece.value is None else piece.value


def _joints(
    pieces: Iterable[Piece], grid: Grid, across: Grid, kerf: float
) -> tuple[tuple[tuple[int, int], int], ...]:
    """What a cut along a slant saves: two pieces lie so much nearer each other, less what it takes
    more of the length because it runs askew.  In even steps, so that each piece has half of it."""
    saved: dict[tuple[int, int], int] = {}
    for piece in pieces:
        width = across.whole(piece.width) + (across.whole(kerf) if piece.width else 0)
        for slant in filter(None, piece.slants):
            wide = piece.width or piece.section or slant
            along = kerf * hypot(wide, slant) / wide
            saving = grid.whole(slant) + grid.whole(kerf) - ceil(grid.exact(along) - 1e-6)
            key = width, grid.whole(slant)
            saved[key] = min(saved.get(key, saving), max(0, saving // 2 * 2))
    return tuple(sorted(saved.items()))


def _board(
    supply: Supply,
    place: int,
    wanted: int,
    grids: tuple[Grid, Grid],
    cuts: tuple[int, int],
    price: int,
) -> Board:
    grid, across = grids
    trim = supply.trim
    begin, end = grid.whole(trim.near), grid.whole(supply.length) - grid.whole(trim.far)
    face, back = across.whole(trim.face), across.whole(supply.width) - across.whole(trim.back)
    flaws = [
        Spot(
            grid.whole(flaw.x),
            across.whole(flaw.y),
            grid.whole(flaw.x + flaw.length),
            across.whole(flaw.y + flaw.width),
        )
        for flaw in supply.flaws
    ]
    whole = [(f.x, f.far) for f in flaws if not supply.width or (f.y <= face and f.back >= back)]
    spots = [f for f in flaws if supply.width and not (f.y <= face and f.back >= back)]
    area = (begin, end, face, back)
    gaps = _merged(whole)
    narrow = [number for number, (x, far) in enumerate(gaps) if far - x < cuts[0]]
    sides = list(product((False, True), repeat=len(narrow)))[:_WAYS]
    ways = (
        _blanks(area, _widened(gaps, dict(zip(narrow, side, strict=True)), cuts[0]), spots, cuts)
        for side in sides
    )
    limit = wanted if supply.count is None else supply.count
    return Board(
        place,
        price,
        None if limit >= wanted else limit,
        (end - begin + cuts[0], back - face + cuts[1]),
        tuple(dict.fromkeys(ways)),
        _blanks(area, gaps, spots, cuts),
    )


def _merged(stretches: Iterable[tuple[int, int]]) -> list[tuple[int, int]]:
    merged: list[tuple[int, int]] = []
    for x, far in sorted(stretches):
        if merged and x <= merged[-1][1]:
            merged[-1] = (merged[-1][0], max(far, merged[-1][1]))
        else:
            merged.append((x, far))
    return merged


def _widened(
    gaps: Sequence[tuple[int, int]], before: dict[int, bool], kerf: int
) -> list[tuple[int, int]]:
    """Flaws with room for the cut that parts the wood there, ``before`` them or after."""
    return [
        (x, far) if number not in before else (far - kerf, far) if before[number] else (x, x + kerf)
        for number, (x, far) in enumerate(gaps)
    ]


def _blanks(
    area: tuple[int, int, int, int],
    gaps: Iterable[tuple[int, int]],
    spots: Iterable[Spot],
    cuts: tuple[int, int],
) -> tuple[Blank, ...]:
    begin, end, face, back = area
    blanks = []
    x = begin
    for gap, far in [*gaps, (end, end)]:
        stop = min(gap, end)
        if stop > x and (back > face or not cuts[1]):
            inside = tuple(
                Spot(max(s.x - x, 0), max(s.y - face, 0), s.far - x, s.back - face)
                for s in spots
                if s.far > x and s.x < stop and s.back > face and s.y < back
            )
            blanks.append(Blank(x, face, stop - x + cuts[0], back - face + cuts[1], inside))
        x = max(x, far)
    return tuple(blanks)


def _goes(item: Item, blanks: Iterable[Blank], cuts: tuple[int, int]) -> bool:
    return any(
        item.length <= length and item.width <= blank.width - y
        for blank in blanks
        for y in beside(blank)
        for _, length in stretches(blank, y, item.width - cuts[1], cuts[0])
    )


def _refuse(
    items: Sequence[Item],
    boards: Sequence[Board],
    pieces: Sequence[Piece],
    cuts: tuple[int, int],
) -> None:
    reasons: dict[str, list[str]] = {}
    for item in items:
        there = [board for board in boards if board.limit != 0]
        if not any(_goes(item, way, cuts) for board in there for way in board.ways):
            names = (pieces[place].name for place, _ in item.of)
            reasons.setdefault(_reason(item, boards, cuts), []).extend(names)
    for reason in ("too large", "grain", "flaws", "not enough"):
        if reason in reasons:
            raise CannotCutError(reason, tuple(dict.fromkeys(reasons[reason])))


def _reason(item: Item, boards: Sequence[Board], cuts: tuple[int, int]) -> str:
    if not boards or any(_goes(item, way, cuts) for board in boards for way in board.ways):
        return "not enough"
    sizes = [board.size for board in boards]
    if any(item.length <= length and item.width <= width for length, width in sizes):
        return "flaws"
    return "too large"
