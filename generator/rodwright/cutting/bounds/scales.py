"""The least cost by conservative scales: what no plan can beat, however pieces lie.

A linear programme shares the pieces out, fractions of them allowed, over kinds of sheets and
ways of lying, so that by no scale more lies on the sheets used than they hold.  Scales that are
broken are added until none is.  Its dual solution, rounded down to whole numbers, is the proof:
it is evaluated exactly, so that no rounding of the solver can spoil it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from rodwright.cutting.bounds.dual_feasible import Images, images
from rodwright.cutting.bounds.linear import Programme, Reals
from rodwright.cutting.sheet_problem import Sheet, SheetProblem, Size

_ROUNDS = 40
"""How often broken scales are looked for at most."""

_A_ROUND = 5
"""Scales added for each kind of sheet at a time, at most."""

_BROKEN = 1e-7
"""By which part of a sheet a scale has to be broken to be added."""

_FINE = 10**12
"""Parts of the dearest sheet's price, about, that a proof is counted in."""

_LEFT = 100
"""What it costs to leave out a piece, in times what all sheets cost together."""


@dataclass(frozen=True, slots=True)
class _Lying:
    """The ways in which pieces may lie on one kind of sheet: way j is one of size ``size[j]``,
    and its column in the programme is number ``first`` + j."""

    first: int
    size: list[int]
    along: Images
    across: Images


@dataclass(frozen=True, slots=True)
class _Cut:
    """A scale of one kind of sheet: what its ways measure by it, and what it holds."""

    kind: int
    measured: list[int]
    holds: int


@dataclass(frozen=True, slots=True)
class Proof:
    """No plan costs less than ``bound``, in steps of the problem's money, since each size is
    worth what ``worth`` says: no sheet holds more than it costs, or that is paid for.

    ``fine`` parts of a step of money are one of ``worth``.  ``total`` is what all sizes are
    worth, less what is paid, in these; the bound is that rounded up.
    """

    total: int
    worth: tuple[int, ...]
    fine: int

    @property
    def bound(self) -> int:
        """In steps of the problem's money."""
        return max(0, -(-self.total // self.fine))


def scale_bound(problem: SheetProblem) -> Proof:
    """No plan costs less, whether cut by a saw or freely.

    More than :func:`most_paid` where the sheets surely hold too little.
    """
    return _Scales(problem).proof()


def fineness(problem: SheetProblem) -> int:
    """Parts of a step of money that are counted."""
    return max(1, _FINE // max(1, *(sheet.price for sheet in problem.sheets), 1))


def cost_of_leaving(problem: SheetProblem) -> int:
    """What a piece costs that is left out, in steps of the problem's money: so much that a plan for
    all pieces, if there is one, is better than leaving out a small part of one."""
    return _LEFT * (most_paid(problem) + 1)


def most_paid(problem: SheetProblem) -> int:
    """What all sheets cost together, in steps of the problem's money."""
    return sum(sheet.price * sheet.count for sheet in problem.sheets)


class _Scales:
    """The linear programme, as it grows."""

    def __init__(self, problem: SheetProblem) -> None:
        self._sizes = problem.sizes
        self._sheets = problem.sheets
        self._lying: list[_Lying] = []
        self._cuts: list[_Cut] = []
        self._left = cost_of_leaving(problem)
        self._fine = fineness(problem)
        self._unit = max(1, *(each.price for each in problem.sheets), 1)
        self._programme = self._begin()

    def _begin(self) -> Programme:
        programme = Programme()
        for size in self._sizes:
            programme.row(size.count, size.count, [], [])
        for sheet in self._sheets:
            programme.column(sheet.price / self._unit, sheet.count, [], [])
        for number in range(len(self._sizes)):
            programme.column(self._left / self._unit, float("inf"), [number], [1.0])
        first = len(self._sheets) + len(self._sizes)
        for sheet in self._sheets:
            lying = _lie(self._sizes, sheet, first)
            self._lying.append(lying)
            for number in lying.size:
                programme.column(0.0, float("inf"), [number], [1.0])
            first += len(lying.size)
        return programme

    def proof(self) -> Proof:
        best = Proof(0, (0,) * len(self._sizes), self._fine)
        found = [(kind, 0, 0) for kind in range(len(self._sheets))]
        for _ in range(_ROUNDS):
            for kind, k, m in found:
                self._add(kind, k, m)
            if not self._programme.solve():
                break
            best = max(best, self._proven(), key=lambda proof: proof.total)
            columns = self._programme.columns
            found = [
                (kind, k, m)
                for kind in range(len(self._sheets))
                for k, m in self._broken(kind, columns)
            ]
            if not found:
                break
        return best

    def _add(self, kind: int, k: int, m: int) -> None:
        """One more scale: of functions k along the sheet and m across it."""
        lying = self._lying[kind]
        lengths, widths = lying.along.of[k].tolist(), lying.across.of[m].tolist()
        measured = [a * b for a, b in zip(lengths, widths, strict=True)]
        holds = int(lying.along.capacity[k]) * int(lying.across.capacity[m])
        self._cuts.append(_Cut(kind, measured, holds))
        some = [(lying.first + j, each / holds) for j, each in enumerate(measured) if each]
        self._programme.row(
            -float("inf"),
            0.0,
            [kind, *(column for column, _ in some)],
            [-1.0, *(share for _, share in some)],
        )

    def _broken(self, kind: int, columns: Reals) -> list[tuple[int, int]]:
        """The scales by which most lies too much on a kind of sheet."""
        lying = self._lying[kind]
        if not lying.size:
            return []
        shares = columns[lying.first :][: len(lying.size)]
        along = lying.along.of / lying.along.capacity[:, None]
        across = lying.across.of / lying.across.capacity[:, None]
        lie = (along * shares) @ across.T - columns[kind]
        best = lie.argmax(axis=1)
        worst = np.argsort(-lie.max(axis=1), kind="stable")[:_A_ROUND]
        return [(int(k), int(best[k])) for k in worst if lie[k, best[k]] > _BROKEN]

    def _proven(self) -> Proof:
        """What the dual solution proves, in exact whole numbers.

        Scales are weighed so that those of a sheet weigh no more than its price, or what that
        is exceeded by is paid for each that there is; then no piece may count more than it
        measures, however it lies.
        """
        prices = self._programme.prices[len(self._sizes) :]
        weights = [int(max(0.0, -each) * self._unit * self._fine) for each in prices]
        total = -self._within_prices(weights)
        counted = [self._left * self._fine] * len(self._sizes)
        for kind, lying in enumerate(self._lying):
            worth = [0] * len(lying.size)
            for weight, cut in zip(weights, self._cuts, strict=True):
                if weight and cut.kind == kind:
                    worth = [
                        a + weight * b // cut.holds
                        for a, b in zip(worth, cut.measured, strict=True)
                    ]
            for number, each in zip(lying.size, worth, strict=True):
                counted[number] = min(counted[number], each)
        total += sum(a * size.count for a, size in zip(counted, self._sizes, strict=True))
        return Proof(total, tuple(counted), self._fine)

    def _within_prices(self, weights: list[int]) -> int:
        """What is paid for each sheet that there is, where the scales of its kind weigh more."""
        paid = 0
        for kind, sheet in enumerate(self._sheets):
            own = zip(weights, self._cuts, strict=True)
            weight = sum(each for each, cut in own if cut.kind == kind)
            paid += max(0, weight - sheet.price * self._fine) * sheet.count
        return paid


def _lie(sizes: Sequence[Size], sheet: Sheet, first: int) -> _Lying:
    ways = [
        (number, length, width)
        for number, size in enumerate(sizes)
        for _, length, width in size.ways
        if sheet.place(length, width) is not None
    ]
    counts = [sizes[number].count for number, _, _ in ways]
    return _Lying(
        first,
        [number for number, _, _ in ways],
        images([length for _, length, _ in ways], counts, sheet.length),
        images([width for _, _, width in ways], counts, sheet.width),
    )
