"""A few published instances of each set come out at their best known value, by plans that pass the
checker; all of them are in tests/benchmarks/cutting."""

from __future__ import annotations

import pytest

from benchmarks.cutting.instances import SETS, Instance, read
from benchmarks.cutting.outcomes import run


def few(of: str) -> list[Instance]:
    """The three with the fewest pieces whose optimum is proven, or which are open."""
    known = [each for each in read(of) if each.proven] or read(of)
    return sorted(known, key=lambda each: each.count)[:3]


@pytest.mark.parametrize("of", SETS)
def test_the_smallest_instances_of_each_set(of: str) -> None:
    for instance in few(of):
        outcome = run(instance)
        assert not outcome.wrong, f"{instance.name}: {outcome.wrong}"
        assert outcome.reached, f"{instance.name}: {outcome.got} of {outcome.best}"
