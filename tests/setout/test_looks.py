"""Knobs, bars and hinges stand where the holes for them are, and count as nothing else."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from kit.specs import unit_from
from rodwright.mass import unit_weight
from rodwright.pictures.bodies import bodies_of, placed_facets
from rodwright.pictures.opened import opened
from rodwright.setout.looks import ware_of
from rodwright.unit import Block, Fitting, Knob, Rod, Unit
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
    seen = replace(fitting, fine=False)
    alone = replace(unit, parts=(unit.part(fitting.ref),), fittings=(seen,))
    facets = placed_facets(bodies_of(alone, {}, inner=True)[1:])
    return facets.points.min(axis=0), facets.points.max(axis=0)


@pytest.mark.parametrize(("spacing", "shapes"), [(0, [Knob]), (128, [Rod, Rod, Rod])])
@pytest.mark.parametrize("spec", [CUPBOARD, DRAWERS])
def test_a_handle_stands_before_its_front(spec: str, spacing: int, shapes: list[type]) -> None:
    unit = unit_from(spec.replace("HOLES", str(spacing)))
    handles = [each for each in unit.fittings if not each.inner and not each.fine]
    assert len(handles) == 2
    for each in handles:
        assert [type(shape) for shape in each.shapes] == shapes
        front = unit.part(each.ref).bounds()
        low, high = _extent(unit, each)
        out = 25.0 if spec is DRAWERS else 30.0
        assert (low[1], high[1]) == pytest.approx((front.low[1] - out, front.low[1]), abs=0.2)
        for axis in (0, 2):
            assert front.low[axis] < low[axis] < high[axis] < front.high[axis]


def test_hinges_lie_inside_while_doors_are_shut() -> None:
    unit = unit_from(CUPBOARD.replace("HOLES", "0"))
    inner = [each for each in unit.fittings if each.inner and not each.fine]
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


def test_what_is_fine_is_in_no_drawing() -> None:
    unit = unit_from(CUPBOARD.replace("HOLES", "0"))
    fine = [each for each in unit.fittings if each.fine]
    assert fine
    without = replace(unit, fittings=tuple(each for each in unit.fittings if not each.fine))
    assert len(bodies_of(unit, {}, inner=True)) == len(bodies_of(without, {}, inner=True))


def test_each_loose_shelf_rests_on_four_pins() -> None:
    unit = unit_from("""
size: {width: 600, height: 900, depth: 300}
interior: {shelves: {count: 2, fixed: false}}
""")
    pins = [each for each in unit.fittings if each.fine]
    assert len(pins) == 8
    for each in pins:
        low, high = _extent(unit, each)
        upright = unit.part(each.ref).bounds()
        assert high[2] - low[2] == pytest.approx(5.0)
        assert low[0] < upright.high[0] < high[0] or low[0] < upright.low[0] < high[0]
        under = [
            part.bounds()
            for part in unit.parts
            if part.name == "Shelf" and part.bounds().low[2] == pytest.approx(high[2])
        ]
        assert len(under) == 1
        assert under[0].low[0] < high[0]
        assert low[0] < under[0].high[0]
        assert under[0].low[1] < low[1]
        assert high[1] < under[0].high[1]


@pytest.mark.parametrize("kind", ["side", "under"])
def test_slides_fill_their_gap_and_are_drawn_out_with_their_drawer(kind: str) -> None:
    unit = unit_from(f"""
size: {{width: 600, height: 400, depth: 450}}
interior: {{drawers: {{count: 1, slides: {{kind: {kind}}}}}}}
""")
    slides = [each for each in unit.fittings if each.fine]
    assert len(slides) == 4
    sides, far = ("SD1", "SD2"), opened(unit)
    for each in slides:
        before, after = _extent(unit, each), _extent(far, each)
        moved = after[0][1] - before[0][1]
        assert moved == pytest.approx(
            0.0 if each.ref in sides else -0.525 * (before[1] - before[0])[1]
        )
        assert unit.part("SD1").bounds().high[0] <= before[0][0] + 1e-6
        assert before[1][0] <= unit.part("SD2").bounds().low[0] + 1e-6


def test_feet_reach_from_the_floor_to_the_bottom() -> None:
    unit = unit_from("""
size: {width: 1000, height: 900, depth: 500}
base: {kind: levellers, height: 100}
""")
    feet = [each for each in unit.fittings if each.fine]
    (bought,) = [each for each in unit.fixings if each.name == "adjustable foot"]
    assert len(feet) == bought.count
    for each in feet:
        low, high = _extent(unit, each)
        assert (low[2], high[2]) == pytest.approx((0.0, unit.part(each.ref).bounds().low[2]))


def test_leaves_of_butt_hinges_lie_in_what_is_cut_for_them() -> None:
    unit = unit_from("""
size: {width: 500, height: 700, depth: 350}
interior: {doors: {hinge: {kind: butt}, gap: 2}}
""")
    leaves = [each for each in unit.fittings if each.fine and each.inner]
    assert len(leaves) == 4
    for each in leaves:
        low, high = _extent(unit, each)
        bounds = unit.part(each.ref).bounds()
        assert high[0] - low[0] == pytest.approx(2.0)
        # A millimetre is in the wood, and one in the gap.
        assert min(high[0], bounds.high[0]) - max(low[0], bounds.low[0]) == pytest.approx(1.0)
        assert high[2] - low[2] == pytest.approx(65.0)


@pytest.mark.parametrize(
    ("name", "ware"),
    [
        ("knob", "steel"),
        ("Brass knob", "brass"),
        ("turned knob", "wood"),
        ("bar handle, black", "black"),
        ("black-iron pull", "black"),
        ("washed handle", "steel"),
        ("turned oak knob", "oak"),
        ("black walnut knob", "walnut"),
        ("porcelain knob", "white"),
        ("turned knob, painted", "painted"),
    ],
)
def test_what_handles_are_of_is_told_by_their_name(name: str, ware: str) -> None:
    assert ware_of(name) == ware


def test_a_pull_has_a_lip_to_take_hold_of() -> None:
    unit = unit_from(DRAWERS.replace("spacing: HOLES", "name: edge pull"))
    pulls = [each for each in unit.fittings if not each.fine]
    assert len(pulls) == 2
    for each in pulls:
        assert [type(shape) for shape in each.shapes] == [Block, Block]
        low, high = _extent(unit, each)
        assert (high - low)[:2] == pytest.approx([70.0, 25.0])
