"""Knobs, bars and hinges stand where the holes for them are, and count as nothing else."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from kit.specs import unit_from
from rodwright.mass import unit_weight
from rodwright.pictures.bodies import bodies_of, placed_facets
from rodwright.pictures.opened import opened
from rodwright.unit import Block, Fitting, Rod, Unit
from rodwright.unit.laid import laid_unit

CUPBOARD = """
size: {width: 600, height: 700, depth: 350}
interior:
  doors:
    count: 2
    hung: overlay
    handle: {spacing: HOLES}
"""
DRAWERS = """
size: {width: 600, height: 400, depth: 450}
interior: {drawers: {count: 2, handle: {spacing: HOLES, count: 1, projection: 25}}}
"""


def _extent(unit: Unit, fitting: Fitting) -> tuple[np.ndarray, np.ndarray]:
    """Where a fitting stands, unit frame."""
    alone = replace(unit, parts=(unit.part(fitting.ref),), fittings=(fitting,))
    facets = placed_facets(bodies_of(alone, {}, inner=True)[1:])
    return facets.points.min(axis=0), facets.points.max(axis=0)


@pytest.mark.parametrize(("spacing", "shapes"), [(0, 2), (128, 3)])
@pytest.mark.parametrize("spec", [CUPBOARD, DRAWERS])
def test_a_handle_stands_before_its_front(spec: str, spacing: int, shapes: int) -> None:
    unit = unit_from(spec.replace("HOLES", str(spacing)))
    handles = [each for each in unit.fittings if not each.inner]
    assert len(handles) == 2
    for each in handles:
        assert len(each.shapes) == shapes
        assert all(isinstance(shape, Rod) for shape in each.shapes)
        front = unit.part(each.ref).bounds()
        low, high = _extent(unit, each)
        out = 25.0 if spec is DRAWERS else 30.0
        assert (low[1], high[1]) == pytest.approx((front.low[1] - out, front.low[1]), abs=0.2)
        for axis in (0, 2):
            assert front.low[axis] < low[axis] < high[axis] < front.high[axis]


def test_hinges_lie_inside_while_doors_are_shut() -> None:
    unit = unit_from(CUPBOARD.replace("HOLES", "0"))
    inner = [each for each in unit.fittings if each.inner]
    arms = [each for each in inner if isinstance(each.shapes[0], Block)]
    cups = [each for each in inner if isinstance(each.shapes[0], Rod)]
    assert len(arms) == len(cups) >= 4
    left, right = (unit.part(ref).bounds() for ref in ("SD1", "SD2"))
    for each in arms:
        low, high = _extent(unit, each)
        assert left.high[0] - 1e-6 <= low[0] and high[0] <= right.low[0] + 1e-6
    for each in cups:
        low, high = _extent(unit, each)
        door = unit.part(each.ref).bounds()
        assert door.low[0] < low[0] and high[0] < door.high[0]
        assert door.low[1] < low[1] < door.high[1] < high[1]


def test_fittings_move_with_their_parts_and_weigh_nothing() -> None:
    unit = unit_from(CUPBOARD.replace("HOLES", "0"))
    knob = next(each for each in unit.fittings if not each.inner)
    shut, wide = _extent(unit, knob), _extent(opened(unit), knob)
    assert np.linalg.norm(np.subtract(shut, wide)) > 100
    assert unit_weight(unit) == unit_weight(replace(unit, fittings=()))
    assert unit.envelope == replace(unit, fittings=()).envelope


@pytest.mark.parametrize("spec", [CUPBOARD, DRAWERS])
def test_fittings_stay_where_they_are_when_parts_are_laid_to_be_worked(spec: str) -> None:
    unit = unit_from(spec.replace("HOLES", "96"))
    laid = laid_unit(unit)
    assert any(a.placement != b.placement for a, b in zip(unit.parts, laid.parts, strict=True))
    for before, after in zip(unit.fittings, laid.fittings, strict=True):
        for a, b in zip(_extent(unit, before), _extent(laid, after), strict=True):
            assert a == pytest.approx(b, abs=0.2)
