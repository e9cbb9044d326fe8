"""Plans for boards and bought lengths."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.cutting.boards.layouts import layouts_of, left_of
from rodwright.cutting.boards.lengths import LengthOracle
from rodwright.cutting.boards.offers import Oracle
from rodwright.cutting.boards.question import problem_of
from rodwright.cutting.boards.search import searched
from rodwright.cutting.boards.strips import StripOracle
from rodwright.cutting.boards.tidying import tidied
from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import CannotCutError, Plan
from rodwright.cutting.progress import Patience
from rodwright.cutting.supplies import Supply


def plan_boards(
    pieces: Sequence[Piece],
    stock: Sequence[Supply],
    *,
    kerf: float = 0.0,
    seed: int = 0,
    patience: Patience | None = None,
) -> Plan:
    """The plan that costs least; of those one with few boards, then one with a large offcut, as
    far as the search finds them.  All lengths in mm.

    Without widths, pieces are cut from bought lengths.  With widths, boards are ripped along their
    whole length to strips, and these are cut to length; the grain runs along.  Pieces with slanted
    ends lie head to tail where that saves.  A cut along a slant takes ``kerf`` across itself, so
    more along the length; that is counted up to the next hundredth of a millimetre.

    The bound is worked out in whole numbers, so it is proven whatever the solver's rounding errors
    are.  The same question and seed have the same answer, unless patience ends.

    Raises:
        CannotCutError: A piece goes on no board, or there is proven to be too little stock.
        ValueError: A figure makes no sense.
    """
    patience = patience or Patience()
    problem = problem_of(pieces, stock, kerf)
    if not problem.items:
        return Plan((), 0.0, 0.0, True, kerf, fewest=True)
    wide = any(item.width for item in problem.items)
    oracle: Oracle = StripOracle(problem) if wide else LengthOracle(problem)
    best = searched(problem, oracle, patience, seed)
    patterns, fewest = tidied(problem, oracle, best.draft, patience, seed)
    left = left_of(problem, best.draft.left, pieces)
    if left and best.bound >= best.too_much:
        raise CannotCutError("not enough", tuple(piece.name for piece in left))
    cost = sum(stock[problem.boards[each.board].supply].price for each in patterns)
    proven = not left and best.draft.cost == best.bound
    bound = cost if proven else problem.money.length(min(best.bound, best.too_much - 1))
    return Plan(
        layouts_of(problem, patterns, pieces, stock),
        cost,
        bound,
        proven,
        kerf,
        left,
        patience.stopped,
        proven and fewest,
    )
