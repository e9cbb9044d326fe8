"""Whether pieces go on some sheets, asked of a constraint solver: yes, no, or not known."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

from ortools.sat.python import cp_model

from rodwright.cutting.cp_sat import new_solver
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, Put, Sheet, SheetProblem, Size, Spot

_FURTHEST = 2**28
"""Steps that the solver is asked to reckon with at most, so that areas stay whole numbers."""
_POSITIONS = 3000
"""Positions that are listed one by one at most; beyond, all steps between them are allowed."""

Answer = list[Pattern] | Literal["impossible"] | None
"""The sheets, packed; or that it is proven that they can't be; or None, not known."""


@dataclass(slots=True)
class _Piece:
    """A piece in the model: where it may lie and which of the ways it does."""

    size: int
    x: cp_model.IntVar
    y: cp_model.IntVar
    lies: dict[tuple[int, bool], cp_model.IntVar]


def pack(
    problem: SheetProblem,
    sheets: Sequence[int],
    counts: Sequence[int],
    effort: float,
    patience: Patience,
) -> Answer:
    """Pack so many of each size on sheets of these kinds (one for each sheet).

    ``effort`` is counted in the solver's own steps (its deterministic time), which are some seconds
    each here.
    """
    if any(max(each.length, each.width) > _FURTHEST for each in problem.sheets):
        return None
    kinds = [problem.sheets[kind] for kind in sheets]
    model = cp_model.CpModel()
    pieces = _pieces(model, problem, kinds, counts)
    if pieces is None:
        return "impossible"
    for number, sheet in enumerate(kinds):
        _on_sheet(model, problem, pieces, number, sheet)
    _in_order(model, pieces, sheets)
    solver = new_solver(effort, patience)
    status = solver.solve(model)
    if status == cp_model.INFEASIBLE:
        return "impossible"
    if status not in {cp_model.OPTIMAL, cp_model.FEASIBLE}:
        return None
    return _patterns(solver, pieces, sheets)


def _pieces(
    model: cp_model.CpModel, problem: SheetProblem, kinds: Sequence[Sheet], counts: Sequence[int]
) -> list[_Piece] | None:
    """The pieces, largest first; None if one goes on none of the sheets."""
    along = _positions(problem, kinds, counts, 0)
    across = _positions(problem, kinds, counts, 1)
    order = sorted(range(len(counts)), key=lambda size: (-problem.sizes[size].area, size))
    pieces = []
    for size in order:
        for number in range(counts[size]):
            name = f"{size}.{number}"
            lies = {
                (sheet, turned): model.new_bool_var(f"{name} {sheet} {turned}")
                for sheet, kind in enumerate(kinds)
                for turned, length, width in problem.sizes[size].ways
                if length <= kind.length and width <= kind.width
            }
            if not lies:
                return None
            model.add_exactly_one(lies.values())
            x = model.new_int_var_from_domain(along, f"x {name}")
            y = model.new_int_var_from_domain(across, f"y {name}")
            pieces.append(_Piece(size, x, y, lies))
    return pieces


def _positions(
    problem: SheetProblem, kinds: Sequence[Sheet], counts: Sequence[int], axis: int
) -> cp_model.Domain:
    """Where a piece may begin: pushed to the near end and the face edge as far as it goes, it
    begins at a sum of lengths, from the edge or from the end of a flaw."""
    limit = max((kind.length, kind.width)[axis] for kind in kinds)
    sums = {0, *(max(0, (spot.x1, spot.y1)[axis]) for kind in kinds for spot in kind.spots)}
    for size, many in enumerate(counts):
        steps = {way[1 + axis] for way in problem.sizes[size].ways}
        for _ in range(many):
            sums |= {total + step for total in sums for step in steps if total + step < limit}
            if len(sums) > _POSITIONS:
                return cp_model.Domain(0, limit)
    return cp_model.Domain.from_values(sorted(sums))


def _on_sheet(
    model: cp_model.CpModel,
    problem: SheetProblem,
    pieces: Iterable[_Piece],
    number: int,
    sheet: Sheet,
) -> None:
    """What lies on one sheet is inside it, apart, and clear of its flaws."""
    spans: tuple[list[cp_model.IntervalVar], list[cp_model.IntervalVar]] = ([], [])
    sides: tuple[list[int], list[int]] = ([], [])
    areas = []
    for piece in pieces:
        size = problem.sizes[piece.size]
        for turned, length, width in size.ways:
            lies = piece.lies.get((number, turned))
            if lies is None:
                continue
            model.add(piece.x <= sheet.length - length).only_enforce_if(lies)
            model.add(piece.y <= sheet.width - width).only_enforce_if(lies)
            spans[0].append(model.new_optional_fixed_size_interval_var(piece.x, length, lies, ""))
            spans[1].append(model.new_optional_fixed_size_interval_var(piece.y, width, lies, ""))
            sides[0].append(length)
            sides[1].append(width)
            areas.append(size.area * lies)
            for spot in sheet.spots:
                _clear(model, piece, lies, (length, width), spot)
    if areas:
        model.add_no_overlap_2d(*spans)
        model.add_cumulative(spans[0], sides[1], sheet.width)
        model.add_cumulative(spans[1], sides[0], sheet.length)
        model.add(sum(areas) <= sheet.area)


def _clear(
    model: cp_model.CpModel,
    piece: _Piece,
    lies: cp_model.IntVar,
    size: tuple[int, int],
    spot: Spot,
) -> None:
    ways = [model.new_bool_var("") for _ in range(4)]
    model.add(piece.x >= spot.x1).only_enforce_if(ways[0])
    model.add(piece.x + size[0] <= spot.x0).only_enforce_if(ways[1])
    model.add(piece.y >= spot.y1).only_enforce_if(ways[2])
    model.add(piece.y + size[1] <= spot.y0).only_enforce_if(ways[3])
    model.add_bool_or(*ways).only_enforce_if(lies)


def _in_order(model: cp_model.CpModel, pieces: Sequence[_Piece], sheets: Sequence[int]) -> None:
    """Of plans that differ only in which of equal sheets or equal pieces is which, one is left:
    the nth piece lies on one of the first n sheets of each kind, and equal pieces lie in order."""
    for number, kind in enumerate(sheets):
        before = sheets[:number].count(kind)
        for piece in pieces[:before]:
            model.add_bool_and(
                lies.negated() for (sheet, _), lies in piece.lies.items() if sheet == number
            )
    for one, other in pairwise(pieces):
        if one.size == other.size:
            model.add(_sheet(one) <= _sheet(other))


def _sheet(piece: _Piece) -> cp_model.LinearExprT:
    return sum(sheet * lies for (sheet, _), lies in piece.lies.items())


def _patterns(
    solver: cp_model.CpSolver, pieces: Iterable[_Piece], sheets: Sequence[int]
) -> list[Pattern]:
    puts: list[list[Put]] = [[] for _ in sheets]
    for piece in pieces:
        for (sheet, turned), lies in piece.lies.items():
            if solver.boolean_value(lies):
                x, y = solver.value(piece.x), solver.value(piece.y)
                puts[sheet].append(Put(piece.size, x, y, turned))
    return [Pattern(kind, tuple(each)) for kind, each in zip(sheets, puts, strict=True) if each]


def sizes_on(problem: SheetProblem, plan: Iterable[Pattern]) -> list[int]:
    """How many of each size lie on some sheets."""
    counts = [0] * len(problem.sizes)
    for pattern in plan:
        for put in pattern.puts:
            counts[put.size] += 1
    return counts


def holds(problem: SheetProblem, sheets: Sequence[int], counts: Sequence[int]) -> bool:
    """Whether the sheets are large enough together."""
    sizes: Sequence[Size] = problem.sizes
    wanted = sum(size.area * many for size, many in zip(sizes, counts, strict=True))
    return wanted <= sum(problem.sheets[kind].area for kind in sheets)
