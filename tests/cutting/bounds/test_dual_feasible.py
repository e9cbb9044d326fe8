"""Lengths that fit together have images that fit together: every function, every such set."""

from __future__ import annotations

from functools import cache

from hypothesis import given
from hypothesis import strategies as st

from rodwright.cutting.bounds.dual_feasible import images


@st.composite
def _some(draw: st.DrawFn) -> tuple[int, list[int], list[int]]:
    capacity = draw(st.integers(2, 40))
    lengths = draw(st.lists(st.integers(1, capacity), min_size=1, max_size=6, unique=True))
    counts = draw(st.lists(st.integers(1, 4), min_size=len(lengths), max_size=len(lengths)))
    return capacity, lengths, counts


@given(_some())
def test_images_of_lengths_that_fit_never_exceed_the_capacity(
    drawn: tuple[int, list[int], list[int]],
) -> None:
    capacity, lengths, counts = drawn
    found = images(lengths, counts, capacity)
    for row, holds in zip(found.of.tolist(), found.capacity.tolist(), strict=True):
        assert _most(tuple(zip(lengths, counts, row, strict=True)), capacity) <= holds


def _most(items: tuple[tuple[int, int, int], ...], capacity: int) -> int:
    """The greatest sum of images that fits, by trying all."""

    @cache
    def most(first: int, room: int) -> int:
        if first == len(items):
            return 0
        length, count, image = items[first]
        return max(
            number * image + most(first + 1, room - number * length)
            for number in range(min(count, room // length) + 1)
        )

    return most(0, capacity)


def test_they_are_more_than_lengths() -> None:
    """Three pieces of 6 in 10 take a sheet each, of which their lengths know nothing."""
    found = images([6], [3], 10)
    assert (found.of[:, 0] == found.capacity).any()
