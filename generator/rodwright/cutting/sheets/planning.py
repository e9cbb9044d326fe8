"""Plans for sheets: searches for good ones, bounds that say how good they are."""

from __future__ import annotations

from collections.abc import Sequence
from random import Random
from typing import Literal

from rodwright.cutting.bounds.by_saw import SawBound, saw_bound
from rodwright.cutting.bounds.least_cost import counting, free_bound, none_fewer
from rodwright.cutting.bounds.settled import settled
from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import CannotCutError, Offcut, Plan
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, Rules, SheetProblem
from rodwright.cutting.sheet_question import layouts_of, left_of, problem_of
from rodwright.cutting.sheets.filling import Effort
from rodwright.cutting.sheets.left_over import left_over
from rodwright.cutting.sheets.searching import Search
from rodwright.cutting.sheets.state import Found, Ground
from rodwright.cutting.supplies import Supply

EFFORT = 25_000_000
"""How many places a search looks at: some seconds.  Of several sizes of sheets it takes longer to
look at one: a half of them for two sizes, and a third for more."""
_LAST = 8
"""One part in so many is spent, after all, on a larger offcut."""
_MANY = 60
_ROUNDS = 300
"""How often better patterns are looked for; a fifth as often for more pieces than these."""
_HUNDREDS = 400
PAIRS = 3_000_000
"""How many pairs of rectangles are looked at for the last word on a plan: some seconds."""
EFFORT_EACH = 50_000
"""What is looked at more for each piece beyond so many."""
_FIRST = 6
"""One part in so many of the effort is spent before better bounds are looked for."""


def plan_sheets(  # noqa: PLR0913 (what can be asked is what it is)
    pieces: Sequence[Piece],
    stock: Sequence[Supply],
    *,
    kerf: float = 0.0,
    turning: bool = False,
    guillotine: bool = True,
    stages: int | None = None,
    first_cut: Literal["along", "across"] | None = None,
    head_cuts: bool = False,
    least_offcut: tuple[float, float] = (0.0, 0.0),
    seed: int = 0,
    patience: Patience | None = None,
) -> Plan:
    """How to cut pieces from sheets, at the least cost; then from the fewest sheets, and of these
    the smallest; then with the largest offcut.

    Lengths in mm.  ``turning`` lets pieces lie across the grain, where they don't say.  Cuts go
    from edge to edge (``guillotine``), any number of times or in so many ``stages``: cuts that go
    one way, then the other, and one more that trims a piece to its size.  ``first_cut`` is the
    direction of the first, and ``head_cuts`` allows one across the sheet before them.  Offcuts
    smaller than ``least_offcut`` are of no use.  Equal questions with one ``seed`` have equal
    answers.

    Raises:
        CannotCutError: A piece goes on no sheet, or there are proven to be too few.
        ValueError: A figure makes no sense.
    """
    rules = Rules(guillotine, stages, first_cut, head_cuts)
    problem = problem_of(
        pieces, stock, rules, kerf=kerf, turning=turning, least_offcut=least_offcut
    )
    if not problem.sizes:
        return Plan((), 0.0, 0.0, True, kerf, fewest=True)
    waiting = patience or Patience()
    counted, unit = _counted(problem)
    bound = free_bound(counted)
    run = None if bound is None else _Run(counted, unit, bound, seed, waiting)
    if run is None or not run.go():
        raise CannotCutError("not enough", tuple(piece.name for piece in pieces if piece.count))
    found = run.best
    if not guillotine:
        from rodwright.cutting.free.planning import plan_free  # loads OR-Tools

        start = [filling.pattern() for filling in found.fillings]
        return plan_free(problem, pieces, stock, start=start, seed=seed, patience=waiting)
    money = problem.money.length

    def offcuts(pattern: Pattern) -> tuple[Offcut, ...]:
        return left_over(problem, pattern)

    patterns = [filling.pattern() for filling in found.fillings]
    proven = found.whole and found.cost // unit <= run.bound // unit
    counted_too = unit > 1 and found.cost <= run.bound
    return Plan(
        layouts_of(problem, patterns, pieces, stock, offcuts),
        money(found.cost // unit),
        money(run.bound // unit),
        proven,
        kerf,
        left_of(problem, [found.left.count(n) for n in range(len(problem.sizes))], pieces),
        waiting.stopped,
        proven and (counted_too or none_fewer(problem, [each.sheet for each in patterns])),
    )


def _counted(problem: SheetProblem) -> tuple[SheetProblem, int]:
    """Where some sheets cost nothing, each costs a little more than it does, so that bounds count
    them too; and how many times dearer all are then."""
    return (problem, 1) if all(sheet.price for sheet in problem.sheets) else counting(problem)


class _Run:
    """A search and what is proven so far; ``unit`` is what a step of money is in its prices."""

    def __init__(
        self, problem: SheetProblem, unit: int, bound: int, seed: int, patience: Patience
    ) -> None:
        ways = tuple(size.ways for size in problem.sizes)
        least = min(size.area for size in problem.sizes)
        more = EFFORT_EACH * max(0, problem.pieces - _MANY)
        self._most = EFFORT // min(3, len(problem.sheets)) + more
        effort = Effort(self._most, patience)
        ground = Ground(problem, ways, Random(seed), effort, least, unit)
        self._search = Search(ground, self._tell)
        self._problem = problem
        self._unit = unit
        self._known: SawBound | None = None
        self._patience = patience
        self.bound = bound

    @property
    def best(self) -> Found:
        """The best plan so far."""
        return self._search.best

    def go(self) -> bool:
        """Search until nothing can be better, or the effort or the patience is at its end, which
        it is never before there is a first plan; False if there is proven to be too little
        stock."""
        steps = [self._begin, self._combine]
        if self._problem.rules.guillotine:
            more = (self._prove, self._combine, self._end, self._combine, self._settle)
            steps = [self._begin, *more, self._combine]
        try:
            for number, step in enumerate(steps):
                if number and (self._patience.stopped or self._search.done(self.bound)):
                    break
                if not step():
                    return False
            if self._problem.rules.guillotine:
                self._search.squeeze(self._most // _LAST)
        except KeyboardInterrupt:
            if not self.best.fillings:
                raise
            self._patience.stop()
        return True

    def _begin(self) -> bool:
        self._search.build(self.bound, self._most // _FIRST)
        self._search.match(self.bound, self._most // 2)
        self._search.improve(self.bound, self._most // _FIRST)
        return True

    def _prove(self) -> bool:
        rounds = _ROUNDS if self._problem.pieces <= _HUNDREDS else _ROUNDS // 5
        proven = saw_bound(self._problem, self._patience, rounds=rounds)
        if proven.cost is None:
            return False
        self._take(proven)
        return True

    def _settle(self) -> bool:
        """The last word, on plans of not too many pieces that cost more than is proven."""
        whole, few = self.best.whole, self._problem.pieces <= _MANY
        if self._known is not None and whole and few and self.best.cost > self.bound:
            problem, cost = self._problem, self.best.cost
            self._take(settled(problem, self._known, cost, self._patience, pairs=PAIRS))
        return True

    def _take(self, proven: SawBound) -> None:
        self._known = proven
        self.bound = max(self.bound, proven.cost or 0)
        self._search.offer(proven.patterns)
        self._tell(self.best)

    def _combine(self) -> bool:
        self._search.combine()
        return True

    def _end(self) -> bool:
        self._search.improve(self.bound, self._search.ground.effort.left)
        return True

    def _tell(self, found: Found) -> None:
        money, unit = self._problem.money, self._unit
        self._patience.told(money.length(found.cost // unit), money.length(self.bound // unit))
