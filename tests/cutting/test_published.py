"""A few published instances of each set come out at their best known value, by plans that pass the
checker; all of them are in tests/benchmarks/cutting."""

from __future__ import annotations

from dataclasses import replace

import pytest

from benchmarks.cutting.instances import SETS, Instance, read
from benchmarks.cutting.outcomes import run

LONG = ("1d_hard28", "2d_multi_size_two_stage")
"""Sets whose instances take seconds each: one is enough here."""


def few(of: str) -> list[Instance]:
    """Those with the fewest pieces whose optimum is proven, or which are open."""
    known = [each for each in read(of) if each.proven] or read(of)
    return sorted(known, key=lambda each: each.count)[: 1 if of in LONG else 3]


@pytest.mark.parametrize("of", SETS)
def test_the_smallest_instances_of_each_set(of: str) -> None:
    """At the optimum; where that is open within half a percent of the best known; and of the bins
    that are hard to prove (Hard28) at most one more."""
    for instance in few(of):
        outcome = run(instance)
        assert not outcome.wrong, f"{instance.name}: {outcome.wrong}"
        assert outcome.got is not None
        if of == "1d_hard28":
            assert outcome.got <= instance.best + 1, instance.name
        elif not instance.proven:
            assert outcome.worse <= 0.005, instance.name
        else:
            assert outcome.reached, f"{instance.name}: {outcome.got} of {outcome.best}"


def test_what_cannot_be_true_is_told() -> None:
    """A plan better than what is proven, or a limit that excludes a known plan."""
    instance = read("1d_scholl")[0]
    assert not run(instance).wrong
    assert "better than the proven bound" in run(replace(instance, bound=instance.best + 1)).wrong
    assert "excludes a known plan" in run(replace(instance, best=instance.best - 1)).wrong
