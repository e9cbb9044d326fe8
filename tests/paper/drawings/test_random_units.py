"""Drawings of random units: their figures add up, and what is cut is what planes go through."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from hypothesis import HealthCheck, assume, given, settings

from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright.lengths import as_shown, parse_length
from rodwright.paper.drawings.sheets import sheets_of
from rodwright.pictures.drafting.views import Dimension, View
from rodwright.problems import ProblemsError
from rodwright.unit import Unit


@settings(max_examples=6, suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much])
@given(wishes())
def test_chains_of_random_units_add_up(wish: Wish) -> None:
    try:
        unit = unit_from("unit: mm\n", **wish)
    except ProblemsError:
        assume(False)
        return
    sheets = sheets_of(unit)
    assert sheets[0].name == "general"
    for sheet in sheets:
        for view in sheet.views:
            holds(unit, view)


def holds(unit: Unit, view: View) -> None:
    """Every chain runs from point to point and reads what it measures; nothing leaves the view."""
    chains: dict[tuple[str, str], list[Dimension]] = {}
    for each in view.dimensions:
        if not each.running:
            chains.setdefault((each.side, each.chain), []).append(each)
    for chain in chains.values():
        if chain[0].chain.startswith(("opening", "unit")):
            continue
        axis = 0 if chain[0].along == "x" else 1
        said = math.fsum(parse_length(each.text, "mm") for each in chain)
        whole = chain[-1].end[axis] - chain[0].start[axis]
        assert said == pytest.approx(as_shown(whole, "mm"), abs=1e-6)
        assert all(a.end == b.start for a, b in pairwise(chain))
    (left, foot), (right, head) = view.low, view.high
    for (ax, ay), (bx, by) in view.visible:
        assert left - 1e-6 <= min(ax, bx) <= max(ax, bx) <= right + 1e-6
        assert foot - 1e-6 <= min(ay, by) <= max(ay, by) <= head + 1e-6
    refs = {part.ref for part in unit.parts} | {"wall"}
    assert {cut.ref for cut in view.cuts} <= refs
