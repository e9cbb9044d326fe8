"""What is best cut from one sheet when not all of it goes there."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from rodwright.cutting.bounds.filled import best_filled
from rodwright.cutting.grid import Grid
from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import CannotCutError, Layout
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import FirstCut, Pattern, Rules, SheetProblem, Size
from rodwright.cutting.sheet_question import layouts_of, problem_of
from rodwright.cutting.sheets.left_over import left_over
from rodwright.cutting.supplies import Supply


@dataclass(frozen=True, slots=True)
class Filled:
    """How a sheet is cut so that its pieces are worth most together.

    ``value`` is what they are worth; no other way by the rules asked gives more than ``bound``.
    ``proven`` says that this is the best.  ``stopped`` that time or the maker ended the search.
    """

    layout: Layout
    value: float
    bound: float
    proven: bool
    stopped: bool = False


def fill_sheet(
    pieces: Sequence[Piece],
    sheet: Supply,
    *,
    kerf: float = 0.0,
    turning: bool = False,
    stages: int | None = None,
    first_cut: FirstCut | None = None,
    patience: Patience | None = None,
) -> Filled:
    """What to cut from one sheet, by guillotine cuts, so that it is worth most; lengths in mm.

    A piece is worth its ``value``, or its area in mm2 if it has none; pieces that don't go on
    the sheet aren't cut.  The rest is as in ``plan_sheets``.

    Raises:
        ValueError: A figure makes no sense.
    """
    waiting = patience or Patience()
    one = replace(sheet, count=1)
    rules = Rules(stages=stages, first_cut=first_cut)
    some = [piece for piece in pieces if _goes(piece, one, rules, kerf, turning)]
    grid = Grid.of(_value(piece) for piece in some)
    problem = problem_of(some, [one], rules, kerf=kerf, turning=turning)
    if not some:
        return Filled(Layout(sheet.name, ()), 0.0, 0.0, True)
    sizes, values = _by_value(problem, some, grid)
    problem = replace(problem, sizes=sizes)
    best = best_filled(problem, values, waiting)
    (layout,) = layouts_of(
        problem, [Pattern(0, best.puts)], some, [one], lambda each: left_over(problem, each)
    )
    worth = {piece.name: _value(piece) for piece in some}
    value = sum(worth[placed.piece] for placed in layout.placed)
    bound = value if best.proven else max(value, grid.length(best.bound))
    return Filled(layout, value, bound, best.proven, waiting.stopped)


def _value(piece: Piece) -> float:
    return piece.length * piece.width if piece.value is None else piece.value


def _goes(piece: Piece, sheet: Supply, rules: Rules, kerf: float, turning: bool) -> bool:
    try:
        problem_of([piece], [sheet], rules, kerf=kerf, turning=turning)
    except CannotCutError:
        return False  # all that is asked here is whether it can
    return piece.count > 0 and _value(piece) > 0


def _by_value(
    problem: SheetProblem, pieces: Sequence[Piece], grid: Grid
) -> tuple[tuple[Size, ...], list[int]]:
    """Sizes whose pieces are all worth the same, no more of each than go on a sheet; and that."""
    sizes, values = [], []
    for size in problem.sizes:
        most = problem.sheets[0].area // size.area
        alike: dict[int, list[tuple[int, int]]] = {}
        for place, many in size.of:
            alike.setdefault(grid.whole(_value(pieces[place])), []).append((place, many))
        for value, of in alike.items():
            count = min(most, sum(many for _, many in of))
            sizes.append(replace(size, count=count, of=tuple(of)))
            values.append(value)
    return tuple(sizes), values
