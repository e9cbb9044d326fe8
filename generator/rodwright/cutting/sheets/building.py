"""First plans: pieces placed one after another, in several orders, on sheets opened as needed."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Sequence

from rodwright.cutting.sheet_problem import Sheet, Size
from rodwright.cutting.sheets.filling import Filling, Taste, best_place, place_all
from rodwright.cutting.sheets.state import Found, Ground

Order = Callable[[Size], tuple[int, ...]]

ORDERS: tuple[Order, ...] = (
    lambda size: (-size.area, -size.length),
    lambda size: (-max(size.length, size.width), -size.area),
    lambda size: (-size.length, -size.width),
    lambda size: (-size.width, -size.length),
    lambda size: (-size.length - size.width, -size.area),
)
"""Which pieces come first."""

_TRIES = 16
_LARGE = (1.05, 1.02, 1.1, 1.0, 1.2)
_SNUG = (0.0, 0.1, 0.3, 1.0)
_TASTES = (Taste(), Taste(snug=0.3))


def first_plans(ground: Ground) -> Iterator[Found]:
    """Plans in every order and by every way to choose sheets."""
    sizes = ground.problem.sizes
    for prefer in _choices(ground.problem.sheets):
        for order in ORDERS:
            numbers = sorted(range(len(sizes)), key=lambda number: order(sizes[number]))
            queue = [number for number in numbers for _ in range(sizes[number].count)]
            for taste in _TASTES:
                for together in (True, False):
                    yield _built(ground, queue, taste, prefer, together=together)
                    if ground.effort.over():
                        return


def dense_plans(ground: Ground) -> Iterator[Found]:
    """Plans sheet by sheet, each the best filled of some tries, where large pieces count more or
    less more than small ones, since they are harder to place later."""
    while True:
        for large in _LARGE:
            yield _dense(ground, large)


def _dense(ground: Ground, large: float) -> Found:
    prefer = _choices(ground.problem.sheets)[0]
    there = Counter({n: sheet.count for n, sheet in enumerate(ground.problem.sheets)})
    sizes = ground.problem.sizes
    weights = [size.area**large for size in sizes]
    left = [number for number, size in enumerate(sizes) for _ in range(size.count)]
    fillings: list[Filling] = []
    while left:
        left.sort(key=lambda number: -sizes[number].area)
        sheet = _next_sheet(ground, left[0], prefer, there)
        if sheet is None:
            break
        there[sheet] -= 1
        tries = [_filled(ground, sheet, left) for _ in range(_TRIES)]
        filling, rest = max(
            tries, key=lambda each: sum(weights[number] for number in each[0].sizes())
        )
        if filling.empty:
            there[sheet] = 0
            continue
        fillings.append(filling)
        left = rest
    return ground.found(fillings, left)


def _filled(ground: Ground, sheet: int, left: Sequence[int]) -> tuple[Filling, list[int]]:
    rng, sizes = ground.rng, ground.problem.sizes
    noise = rng.uniform(0, 0.5)
    order = sorted(left, key=lambda size: -sizes[size].area * rng.uniform(1 - noise, 1 + noise))
    filling = ground.open(sheet)
    taste = Taste(rng.choice(_SNUG))
    return filling, place_all([filling], order, ground.ways, taste, ground.effort, rng)


def _choices(sheets: Sequence[Sheet]) -> list[list[int]]:
    """In which order kinds of sheets are opened: cheapest by area, cheapest, largest first."""
    numbers = range(len(sheets))
    keys: tuple[Callable[[int], tuple[float, float]], ...] = (
        lambda n: (sheets[n].price / sheets[n].area, -sheets[n].area),
        lambda n: (sheets[n].price, -sheets[n].area),
        lambda n: (-sheets[n].area, sheets[n].price),
    )
    chosen: list[list[int]] = []
    for key in keys:
        order = sorted(numbers, key=key)
        if order not in chosen:
            chosen.append(order)
    return chosen


def _built(
    ground: Ground, queue: Sequence[int], taste: Taste, prefer: Sequence[int], *, together: bool
) -> Found:
    """Pieces in their order: ``together`` on any sheet that is open, or sheet by sheet."""
    if together:
        return _on_any(ground, queue, taste, prefer)
    there = Counter({n: sheet.count for n, sheet in enumerate(ground.problem.sheets)})
    fillings: list[Filling] = []
    left = list(queue)
    while left:
        sheet = _next_sheet(ground, left[0], prefer, there)
        if sheet is None:
            break
        there[sheet] -= 1
        filling = ground.open(sheet)
        rest = place_all([filling], left, ground.ways, taste, ground.effort, ground.rng)
        if len(rest) == len(left):
            there[sheet] = 0
            continue
        fillings.append(filling)
        left = rest
    return ground.found(fillings, left)


def _next_sheet(
    ground: Ground, size: int, prefer: Sequence[int], there: Counter[int]
) -> int | None:
    sheets = ground.problem.sheets
    open_to = [n for n in prefer if there[n] > 0]
    taking = (n for n in open_to if sheets[n].takes(ground.problem.sizes[size]))
    return next(taking, next(iter(open_to), None))


def _on_any(ground: Ground, queue: Sequence[int], taste: Taste, prefer: Sequence[int]) -> Found:
    there = Counter({n: sheet.count for n, sheet in enumerate(ground.problem.sheets)})
    fillings: list[Filling] = []
    left: list[int] = []
    for size in queue:
        if not place_all(fillings, [size], ground.ways, taste, ground.effort, ground.rng):
            continue
        for sheet in prefer:
            if not there[sheet] or not ground.problem.sheets[sheet].takes(
                ground.problem.sizes[size]
            ):
                continue
            filling = ground.open(sheet)
            place = best_place(filling, ground.ways[size], taste, ground.effort)
            if place is not None:
                filling.add(place, size)
                fillings.append(filling)
                there[sheet] -= 1
                break
        else:
            left.append(size)
    return ground.found(fillings, left)
