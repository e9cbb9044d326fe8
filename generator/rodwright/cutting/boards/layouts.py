"""Patterns as layouts in mm, with the pieces' names and what is left of each board."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import islice

from rodwright.cutting.boards.problem import BoardProblem, Item, Pattern, Run
from rodwright.cutting.boards.slants import head_to_tail, nearer, required
from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import Layout, Offcut, Placed
from rodwright.cutting.supplies import Supply


def layouts_of(
    problem: BoardProblem,
    patterns: Sequence[Pattern],
    pieces: Sequence[Piece],
    stock: Sequence[Supply],
) -> tuple[Layout, ...]:
    """Patterns as layouts; equal pieces get their names in the order they were asked for."""
    names = [(pieces[place].name for place in _places(item)) for item in problem.items]
    layouts = []
    for pattern in patterns:
        board = problem.boards[pattern.board]
        placed = [each for run in pattern.runs for each in _row(problem, run, names)]
        offcuts = sorted(_offcuts(problem, pattern), key=lambda cut: -cut.area)
        layouts.append(Layout(stock[board.supply].name, tuple(placed), tuple(offcuts)))
    return tuple(layouts)


def left_of(
    problem: BoardProblem, left: Sequence[int], pieces: Sequence[Piece]
) -> tuple[Piece, ...]:
    """The pieces that found no place; ``left`` is how many there are of each item."""
    counted: dict[int, int] = {}
    for item, many in zip(problem.items, left, strict=True):
        for place in islice(reversed(_places(item)), many):
            counted[place] = counted.get(place, 0) + 1
    return tuple(replace(pieces[place], count=counted[place]) for place in sorted(counted))


def _places(item: Item) -> list[int]:
    return [place for place, many in item.of for _ in range(many)]


def _row(problem: BoardProblem, run: Run, names: Sequence[Iterator[str]]) -> Iterator[Placed]:
    """The pieces of a run, each with its begin: head to tail where ends are slanted."""
    grid, across = problem.grid, problem.across
    order = head_to_tail(problem, run.items)[0]
    x = run.x
    for place, (item, flipped) in enumerate(order):
        if place:
            x -= nearer(problem, order[place - 1], (item, flipped))
        size = problem.items[item]
        yield Placed(
            next(names[item]),
            grid.length(x),
            across.length(run.y),
            grid.length(size.length - problem.kerf),
            across.length(size.width - problem.rip),
            flipped=flipped,
        )
        x += size.length


def _offcuts(problem: BoardProblem, pattern: Pattern) -> Iterator[Offcut]:
    """What is left of each strip behind its last piece, or all of it."""
    grid, across = problem.grid, problem.across
    for run in pattern.runs:
        begin = run.x + (required(problem, run.items) if run.items else 0)
        length = run.x + run.length - problem.kerf - begin
        if length > 0 and (run.width > problem.rip or not run.width):
            yield Offcut(
                grid.length(begin),
                across.length(run.y),
                grid.length(length),
                across.length(run.width - problem.rip),
            )
