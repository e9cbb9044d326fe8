"""One sheet filled piece by piece, each where it goes best by some rule."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from random import Random

from rodwright.cutting.free.rectangles import Box, free_in, without
from rodwright.cutting.sheet_problem import Pattern, Put, SheetProblem

Rule = Callable[[Box, int, int], tuple[int, ...]]
"""How badly a piece, so long and so wide, goes into the corner of a free rectangle."""

Lies = tuple[bool, int, int]
"""Turned or not, the length along x and the width along y."""


def _short_side(box: Box, length: int, width: int) -> tuple[int, ...]:
    beside, above = box.x1 - box.x0 - length, box.y1 - box.y0 - width
    return (beside, above) if beside < above else (above, beside)


def _long_side(box: Box, length: int, width: int) -> tuple[int, ...]:
    beside, above = box.x1 - box.x0 - length, box.y1 - box.y0 - width
    return (above, beside) if beside < above else (beside, above)


def _area(box: Box, length: int, width: int) -> tuple[int, ...]:
    return (box.area - length * width, *_short_side(box, length, width))


def _far_end(box: Box, length: int, width: int) -> tuple[int, ...]:
    return (box.x0 + length, box.y0 + width)


def _back_edge(box: Box, length: int, width: int) -> tuple[int, ...]:
    return (box.y0 + width, box.x0 + length)


RULES: tuple[Rule, ...] = (_short_side, _far_end, _area, _back_edge, _long_side)
"""Best short side, long side and area fit, and the corner nearest to one end or edge (J. Jylanki,
A thousand ways to pack the bin, 2010; from memory)."""


@dataclass(frozen=True, slots=True)
class Way:
    """How a sheet is filled: the sizes in their ``order``, each by the ``rule``.

    ``best_fit``: of the first ``best_fit`` sizes that still go on, the one that fits best.
    """

    order: tuple[int, ...]
    rule: Rule
    best_fit: int = 1


def order_by(problem: SheetProblem, weights: Sequence[float]) -> tuple[int, ...]:
    """The sizes, the heaviest first."""
    return tuple(sorted(range(len(problem.sizes)), key=lambda size: (-weights[size], size)))


def fill(problem: SheetProblem, sheet: int, left: Sequence[int], way: Way) -> Pattern:
    """A sheet with as many of the pieces that are ``left`` as go on, one after another."""
    remaining = list(left)
    ways = [size.ways for size in problem.sizes]
    free = free_in(problem.sheets[sheet])
    order = [size for size in way.order if remaining[size]]
    puts: list[Put] = []
    least = _least(ways, order)
    while order and free:
        best: tuple[tuple[int, ...], int, int, Box, bool] | None = None
        found = 0
        for place, size in enumerate(order):
            fits = _best(ways[size], free, way.rule)
            if fits is None:
                continue
            found += 1
            key, box, turned = fits
            if best is None or key < best[0]:
                best = (key, place, size, box, turned)
            if found == way.best_fit:
                break
        if best is None:
            break
        _, place, size, box, turned = best
        if way.best_fit == 1 and place:  # what didn't go on before doesn't go on later
            del order[:place]
            place = 0
            least = _least(ways, order)
        puts.append(Put(size, box.x0, box.y0, turned))
        length, width = problem.sizes[size].lying(turned)
        remaining[size] -= 1
        if not remaining[size]:
            del order[place]
            least = _least(ways, order)
        free = without(free, (box.x0, box.y0, box.x0 + length, box.y0 + width), least)
    return Pattern(sheet, tuple(puts))


def _best(
    ways: Sequence[Lies], free: Sequence[Box], rule: Rule
) -> tuple[tuple[int, ...], Box, bool] | None:
    """The free rectangle that a piece goes into best, and how it lies there."""
    best: tuple[tuple[int, ...], Box, bool] | None = None
    for turned, length, width in ways:
        for box in free:
            if box[2] - box[0] >= length and box[3] - box[1] >= width:
                key = rule(box, length, width)
                if best is None or key < best[0]:
                    best = (key, box, turned)
    return best


def _least(ways: Sequence[Sequence[Lies]], order: Sequence[int]) -> tuple[int, int]:
    """What a free rectangle has to be at least, along x and y, to be of use."""
    lying = [way for size in order for way in ways[size]]
    if not lying:
        return (1, 1)
    return min(length for _, length, _ in lying), min(width for _, _, width in lying)


def drawn_way(problem: SheetProblem, weights: Sequence[float], random: Random) -> Way:
    """A way drawn at random: weights shaken, some rule."""
    shake = random.choice((0.0, 0.1, 0.3, 0.6))
    shaken = [weight * (1 + shake * (random.random() - 0.5)) for weight in weights]
    best_fit = random.choice((1, 1, 2, 4, 16))
    return Way(order_by(problem, shaken), random.choice(RULES), best_fit)
