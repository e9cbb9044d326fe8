"""Bounds and patterns where stages are limited."""

from __future__ import annotations

from functools import cache
from random import Random
from typing import Any

import pytest

from kit.cut_at_random import cut_at_random
from kit.cutting_checker import check_sheets
from kit.cutting_published import Instance, instances, problem
from rodwright.cutting import Piece, Plan, Supply
from rodwright.cutting.bounds.any_number import best_values, ground
from rodwright.cutting.bounds.by_saw import saw_bound
from rodwright.cutting.bounds.staged import orders, staged
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Rules, Sheet, Size
from rodwright.cutting.sheet_question import layouts_of, left_of, problem_of


@pytest.mark.parametrize(
    "instance", instances("sheet_sizes_in_two_stages.json"), ids=lambda each: each["name"]
)
def test_published_bounds_in_two_stages_are_reached(instance: Instance) -> None:
    asked = problem(instance)
    bound = asked.money.length(saw_bound(asked, Patience(), rounds=300).cost or 0)
    assert instance["published_lower_bound"] <= bound <= instance["best_known"]


@pytest.mark.parametrize("seed", range(40))
def test_stages_are_worth_what_all_their_cuts_give(seed: int) -> None:
    random = Random(seed)
    side, other = random.randint(3, 10), random.randint(3, 10)
    sizes = [
        Size(random.randint(1, side), random.randint(1, other), 99, random.random() < 0.5, ())
        for _ in range(random.randint(1, 4))
    ]
    values = [random.randint(1, 30) for _ in sizes]

    @cache
    def most(length: int, width: int, axes: tuple[int, ...]) -> int:
        """With any number of pieces; the last of ``axes`` divides first."""
        if not axes:
            return max(
                (
                    value
                    for size, value in zip(sizes, values, strict=True)
                    for _, x, y in size.ways
                    if x <= length and y <= width
                ),
                default=0,
            )
        best = most(length, width, axes[:-1])
        if axes[-1] == 0:
            parts = ((at, width, length - at, width) for at in range(1, length))
        else:
            parts = ((length, at, length, width - at) for at in range(1, width))
        for a, b, c, d in parts:
            best = max(best, most(a, b, axes[:-1]) + most(c, d, axes))
        return best

    on = ground(sizes, Sheet(side, other, 1, 1, (), 0, 0, 0))
    for axes in [(0,), (1,), (0, 1), (1, 0), (0, 1, 0), (1, 0, 1)]:
        assert staged(on, values, axes).most == most(side, other, axes)
    many = tuple(k % 2 for k in range(12))
    assert staged(on, values, many).most == best_values(on, values)[-1, -1]


@pytest.mark.parametrize(
    ("rules", "found"),
    [
        (Rules(stages=2, first_cut="along"), ((0, 1),)),
        (Rules(stages=2, first_cut="across"), ((1, 0),)),
        (Rules(stages=1), ((0,), (1,))),
        (Rules(stages=3, first_cut="along"), ((1, 0, 1),)),
        (Rules(stages=2, first_cut="along", head_cuts=True), ((0, 1, 0),)),
        (Rules(stages=2, first_cut="across", head_cuts=True), ((1, 0),)),
        (Rules(stages=2, head_cuts=True), ((0, 1, 0),)),
    ],
)
def test_a_cut_along_the_length_divides_the_width(
    rules: Rules, found: tuple[tuple[int, ...], ...]
) -> None:
    assert orders(rules) == found


@pytest.mark.parametrize("first", ["along", "across", None])
@pytest.mark.parametrize("stages", [1, 2, 3])
def test_patterns_keep_to_the_stages(stages: int, first: Any) -> None:
    random = Random(stages or 0)
    rules = Rules(stages=stages, first_cut=first)
    for _ in range(12):
        cut = cut_at_random(random, kerf=1)
        asked = problem_of(cut.pieces, cut.stock, rules, kerf=1)
        for pattern in saw_bound(asked, Patience(), rounds=6).patterns:
            counts = asked.counts(pattern)
            left = [size.count - counts.get(n, 0) for n, size in enumerate(asked.sizes)]
            plan = Plan(
                layouts_of(asked, [pattern], cut.pieces, cut.stock, lambda _: ()),
                cost=asked.money.length(asked.sheets[pattern.sheet].price),
                bound=0,
                proven=False,
                kerf=1,
                left=left_of(asked, left, cut.pieces),
            )
            check_sheets(plan, cut.pieces, cut.stock, kerf=1, stages=stages, first_cut=first)


def test_fewer_stages_cost_as_much_or_more() -> None:
    """A square with a strip beside it and one beside both: in one stage it takes two sheets."""
    pieces = [Piece("a", 60, 60), Piece("b", 60, 40, 1), Piece("c", 40, 100, 1)]
    stock = [Supply("s", 100, 100)]
    costs = []
    for stages in (None, 3, 2, 1):
        asked = problem_of(pieces, stock, Rules(stages=stages))
        costs.append(asked.money.length(saw_bound(asked, Patience()).cost or 0))
    assert costs == [1, 1, 1, 2]
