"""A plan for a router, in mm, of the question in whole numbers."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.cutting.bounds.least_cost import none_fewer
from rodwright.cutting.free.nesting import nest
from rodwright.cutting.free.rectangles import Box, offcuts_beside
from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import CannotCutError, Offcut, Plan
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, SheetProblem
from rodwright.cutting.sheet_question import layouts_of, left_of
from rodwright.cutting.supplies import Supply


def plan_free(
    problem: SheetProblem,
    pieces: Sequence[Piece],
    stock: Sequence[Supply],
    *,
    start: Sequence[Pattern] = (),
    seed: int = 0,
    patience: Patience | None = None,
) -> Plan:
    """Pieces anywhere on sheets, a kerf apart; ``problem`` was made of ``pieces`` and ``stock``.

    ``start`` is a plan to better, such as one for saws; what comes out is never worse.

    Raises:
        CannotCutError: There is proven to be too little stock.
    """
    patience = patience or Patience()
    nested = nest(problem, start, seed, patience)
    if nested.bound is None:
        raise CannotCutError("not enough", tuple(piece.name for piece in pieces if piece.count))

    def offcuts(pattern: Pattern) -> tuple[Offcut, ...]:
        return tuple(_offcut(problem, pattern, box) for box in offcuts_beside(pattern, problem))

    left = left_of(problem, nested.left, pieces)
    layouts = layouts_of(problem, nested.patterns, pieces, stock, offcuts)
    cost = sum(stock[problem.sheets[each.sheet].supply].price for each in nested.patterns)
    return Plan(
        layouts,
        cost=cost,
        bound=cost if nested.proven else problem.money.length(nested.bound),
        proven=nested.proven,
        kerf=problem.grid.length(problem.kerf),
        left=left,
        stopped=patience.stopped,
        fewest=nested.proven and none_fewer(problem, [each.sheet for each in nested.patterns]),
    )


def _offcut(problem: SheetProblem, pattern: Pattern, box: Box) -> Offcut:
    grid, sheet = problem.grid, problem.sheets[pattern.sheet]
    return Offcut(
        grid.length(box.x0 + sheet.near),
        grid.length(box.y0 + sheet.face),
        grid.length(box.x1 - box.x0 - problem.kerf),
        grid.length(box.y1 - box.y0 - problem.kerf),
    )
