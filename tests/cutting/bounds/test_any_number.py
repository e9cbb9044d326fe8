"""A sheet with any number of each piece, exactly and with lengths rounded."""

from __future__ import annotations

from random import Random

import pytest

from rodwright.cutting.bounds.any_number import best_puts, best_values, ground
from rodwright.cutting.sheet_problem import Sheet, Size


def _question(random: Random, side: int) -> tuple[list[Size], list[int], Sheet]:
    length, width = random.randint(side // 2, side), random.randint(side // 2, side)
    sizes = [
        Size(random.randint(1, length), random.randint(1, width), 99, random.random() < 0.5, ())
        for _ in range(random.randint(1, 5))
    ]
    values = [size.area + random.randint(0, 9) for size in sizes]
    return sizes, values, Sheet(length, width, 1, 1, (), 0, 0, 0)


@pytest.mark.parametrize("seed", range(150))
def test_rounded_down_a_sheet_is_worth_as_much_or_more_and_rounded_up_no_more(seed: int) -> None:
    """However coarse, and with pieces as small as a step."""
    random = Random(seed)
    sizes, values, sheet = _question(random, 60)
    exact = ground(sizes, sheet)
    best = best_values(exact, values)[-1, -1]
    for most in (3, 5, 9, 17):
        down = ground(sizes, sheet, most=most)
        up = ground(sizes, sheet, most=most, up=True)
        assert best_values(up, values)[-1, -1] <= best <= best_values(down, values)[-1, -1]


@pytest.mark.parametrize("seed", range(60))
def test_the_best_lies_on_the_sheet_apart_and_a_whole_sheet_needs_fewer_places(seed: int) -> None:
    random = Random(seed)
    sizes, values, sheet = _question(random, 40)
    on = ground(sizes, sheet)
    best = best_values(on, values)
    whole = ground(sizes, sheet, whole=True)
    assert best_values(whole, values)[-1, -1] == best[-1, -1]
    for puts in (best_puts(on, values, best), best_puts(whole, values, best_values(whole, values))):
        assert sum(values[put.size] for put in puts) == best[-1, -1]
        taken: set[tuple[int, int]] = set()
        for put in puts:
            length, width = sizes[put.size].lying(put.turned)
            cells = {(put.x + i, put.y + j) for i in range(length) for j in range(width)}
            assert not cells & taken
            assert all(i < sheet.length and j < sheet.width for i, j in cells)
            taken |= cells
