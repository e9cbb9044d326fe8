"""Of plans that cost the same: fewer boards, then a larger offcut."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from rodwright.cutting.boards.best import Draft, without_surplus
from rodwright.cutting.boards.offers import Oracle
from rodwright.cutting.boards.problem import BoardProblem, Pattern
from rodwright.cutting.boards.search import searched
from rodwright.cutting.boards.slants import required
from rodwright.cutting.progress import Patience

_PASSES = 4
"""How often all boards are looked at for a larger offcut."""


def tidied(
    problem: BoardProblem, oracle: Oracle, draft: Draft, patience: Patience, seed: int
) -> tuple[tuple[Pattern, ...], bool]:
    """The patterns of a plan that costs the same; with no more boards, and no less of an offcut.

    And whether none that costs as little is proven to have fewer boards."""
    patterns, fewest = list(draft.patterns), False
    try:
        if not any(draft.left):
            patterns, fewest = _fewer(problem, oracle, patterns, patience, seed)
        _larger_offcut(problem, oracle, patterns, patience)
    except KeyboardInterrupt:
        patience.stop()
    return tuple(sorted(patterns, key=lambda each: _place(problem, each))), fewest


def _fewer(
    problem: BoardProblem, oracle: Oracle, patterns: list[Pattern], patience: Patience, seed: int
) -> tuple[list[Pattern], bool]:
    """Patterns that cost no more, with fewer boards if such are found: each board is a little
    dearer than it is, by less than all of them together could save.

    And whether it is proven that there are none with fewer yet."""
    alike = len({board.price for board in problem.boards}) == 1 and problem.boards[0].price
    if alike or len(patterns) <= _least_boards(problem):
        return patterns, True
    many = problem.total() + 1
    boards = tuple(replace(board, price=board.price * many + 1) for board in problem.boards)
    quiet = Patience(None if patience.left == float("inf") else patience.left)
    weighed = replace(problem, boards=boards)
    free = not any(board.price for board in problem.boards)
    best = searched(weighed, oracle, quiet, seed, patterns, thorough=free)
    if quiet.stopped:
        patience.stop()
    return list(best.draft.patterns), best.draft.cost == best.bound


def _least_boards(problem: BoardProblem) -> int:
    """So many boards hold no more than all pieces, if they are all as large as the largest."""
    wide = any(item.width for item in problem.items)
    whole = sum(
        item.count * (item.length - sum(item.slants)) * (item.width if wide else 1)
        for item in problem.items
    )
    largest = max(
        sum(blank.length * (blank.width if wide else 1) for blank in board.roomy)
        for board in problem.boards
    )
    return -(-whole // largest)


def _larger_offcut(
    problem: BoardProblem, oracle: Oracle, patterns: list[Pattern], patience: Patience
) -> None:
    """Pieces of the board with the largest offcut change places with those of each other board, as
    long as that makes the offcut larger."""
    for _ in range(_PASSES if len(patterns) > 1 else 0):
        better = False
        rest = max(range(len(patterns)), key=lambda n: largest_offcut(problem, patterns[n]))
        for other in range(len(patterns)):
            if patience.over():
                return
            if other != rest:
                better |= _exchanged(problem, oracle, patterns, other, rest)
        if not better:
            return


def _exchanged(
    problem: BoardProblem, oracle: Oracle, patterns: list[Pattern], full: int, rest: int
) -> bool:
    """Fill one board as far as it goes with the pieces of two; the others on the other board."""
    pool = [0] * len(problem.items)
    for pattern in (patterns[full], patterns[rest]):
        for item, n in pattern.counts:
            pool[item] += n
    filled = _fullest(problem, oracle, patterns[full].board, pool)
    without_surplus(filled, pool)
    if not any(pool):
        return False
    others = _fullest(problem, oracle, patterns[rest].board, pool)
    without_surplus(others, pool)
    if any(pool) or largest_offcut(problem, others) <= largest_offcut(problem, patterns[rest]):
        return False
    patterns[full], patterns[rest] = filled, others
    return True


def _fullest(problem: BoardProblem, oracle: Oracle, board: int, counts: Sequence[int]) -> Pattern:
    """As much as goes on a board."""
    sizes = [item.length * max(item.width, 1) for item in problem.items]
    prices = [max(size * n for size, n in zip(sizes, counts, strict=True)) * len(sizes) + 1]
    thresholds = prices * len(problem.boards)
    thresholds[board] = 0
    offer = oracle.offers(sizes, counts, thresholds, 0)[board]
    return max(
        offer.patterns,
        key=lambda each: sum(n * sizes[item] for item, n in each.counts),
        default=Pattern.of(board, ()),
    )


def largest_offcut(problem: BoardProblem, pattern: Pattern) -> int:
    """The size of the largest offcut of a board: its length, times its width if it has one."""
    return max(
        (
            (run.length - required(problem, run.items) - problem.kerf * (not run.items))
            * max(run.width - problem.rip, not run.width)
            for run in pattern.runs
        ),
        default=0,
    )


def _place(problem: BoardProblem, pattern: Pattern) -> tuple[object, ...]:
    """By boards as they are named; equal patterns together, those that leave least first."""
    return (
        problem.boards[pattern.board].supply,
        largest_offcut(problem, pattern),
        pattern.counts,
        pattern.runs[0].length,
    )
