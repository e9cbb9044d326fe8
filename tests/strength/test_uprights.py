"""Uprights by hand: what comes down them, what buckles them, what they press on; and the ground."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

import rodwright
from kit.specs import of_role, unit_from
from rodwright.mass import unit_weight
from rodwright.strength.carriers import Ground
from rodwright.strength.ground import ON_FLOOR, ON_FOOT, ON_LEG, ON_PLINTH, ground, shared
from rodwright.strength.paths import GRAVITY, Force, paths
from rodwright.strength.uprights import BUCKLES, PRESSES, critical, stretches, uprights
from rodwright.trade.floors import HOUSE_FLOORS
from rodwright.unit import Role, Unit
from rodwright.unit.loading import Load, Loading, Lump, Stretch

SIZE = "size: {width: 1018, height: 2000, depth: 300}\n"


def bookcase(**more: Any) -> Unit:
    """Two bays with a fixed shelf in each, and 40 kg on the left one, nothing else."""
    columns = {"columns": [{"width": "1 share", "shelves": {"count": 1}}] * 2}
    unit = unit_from(SIZE, interior=columns, carcass={"stock": "ply"}, **more)
    first = of_role(unit, Role.SHELF)[0]
    box = first.bounds()
    middle = (box.low[0] + box.high[0]) / 2
    return replace(unit, loading=Loading((Load(first.ref, "40 kg", (), (Lump(middle, 40.0),)),)))


def test_a_shelf_brings_half_to_either_end() -> None:
    unit = bookcase()
    empty = replace(unit, loading=Loading())
    left, divider = of_role(unit, Role.SIDE)[0], of_role(unit, Role.DIVIDER)[0]
    laden, bare = paths(unit), paths(empty)
    for part in (left, divider):
        foot = part.bounds().low[2]
        more = laden.compression(part.ref, foot) - bare.compression(part.ref, foot)
        assert more == pytest.approx(20 * GRAVITY, rel=1e-3)
        above = laden.compression(part.ref, 1500.0) - bare.compression(part.ref, 1500.0)
        assert above == pytest.approx(0.0, abs=1e-9)


def test_stretches_of_loads_bring_their_moments() -> None:
    """A triangular load of 0 to 30 kg/m: a third and two thirds at the ends."""
    unit = bookcase()
    shelf = of_role(unit, Role.SHELF)[0]
    xs = sorted(joint.at[0] for joint in unit.joints if joint.second == shelf.ref)
    stretch = Stretch(xs[0], xs[-1], 0.0, 30.0)
    loading = Loading((Load(shelf.ref, "30 kg/m", (stretch,)),))
    laden = paths(replace(unit, loading=loading))
    bare = paths(replace(unit, loading=Loading()))
    left, divider = of_role(unit, Role.SIDE)[0], of_role(unit, Role.DIVIDER)[0]
    whole = stretch.mass * GRAVITY
    for part, share in ((left, 1 / 3), (divider, 2 / 3)):
        foot = part.bounds().low[2]
        more = laden.compression(part.ref, foot) - bare.compression(part.ref, foot)
        assert more == pytest.approx(whole * share, rel=1e-6)


def test_critical_load_by_hand() -> None:
    """pi2 x 9811 x 300 x 18^3/12/950^2 = 15,643 N."""
    assert critical(9811.0, 300 * 18**3 / 12, 950.0) == pytest.approx(15643, rel=1e-3)


def test_a_side_buckles_between_its_shelves() -> None:
    unit = bookcase()
    side = of_role(unit, Role.SIDE)[0]
    (low, high) = [each for each in stretches(unit, side, paths(unit)) if each.high - each.low > 50]
    shelf = of_role(unit, Role.SHELF)[0].bounds()
    assert low.high == high.low == pytest.approx((shelf.low[2] + shelf.high[2]) / 2)
    assert low.load > high.load
    results = {each.parts[0]: each for each in uprights(unit) if each.what == BUCKLES}
    assert all(each.holds for each in results.values())
    figures = {each.symbol: each.value for each in results[side.ref].inputs}
    by_hand = critical(figures["E"], figures["I"], figures["L"]) / 3 / GRAVITY
    assert results[side.ref].limit == pytest.approx(by_hand)


def test_a_divider_presses_on_the_bottom() -> None:
    unit = bookcase()
    divider = of_role(unit, Role.DIVIDER)[0]
    (result,) = [each for each in uprights(unit) if each.what == PRESSES]
    load = paths(unit).compression(divider.ref, divider.bounds().low[2])
    assert result.figure == pytest.approx(load / (18 * divider.bounds().size[1]), rel=1e-3)


def test_the_floor_by_hand() -> None:
    unit = bookcase()
    (result,) = [each for each in ground(unit) if each.what == ON_FLOOR]
    by_hand = (unit_weight(unit) + 40) / (1.018 * (0.3 + 0.914))
    assert result.figure == pytest.approx(by_hand, rel=1e-6)
    assert result.limit is None
    load = Load(of_role(unit, Role.TOP)[0].ref, "safe", (), (Lump(500.0, 250.0),))
    heavy = replace(unit, loading=Loading((*unit.loading.loads, load)))
    (result,) = [each for each in ground(heavy) if each.what == ON_FLOOR]
    assert result.limit == HOUSE_FLOORS["mm"].value == 150.0
    assert not result.holds


def test_a_floor_in_inches_is_held_against_what_is_usual_in_the_us() -> None:
    """40 lb/ft2 (IOBA Standard, A weighty subject: 30 to 40): Europe's 1.5 kN/m2 is 31 lb/ft2."""
    unit = bookcase()
    load = Load(of_role(unit, Role.TOP)[0].ref, "safe", (), (Lump(250.0, 250.0),))
    loading = Loading((*unit.loading.loads, load))
    in_inches = replace(unit, loading=loading, display_unit="in")
    (result,) = [each for each in ground(in_inches) if each.what == ON_FLOOR]
    assert result.limit == pytest.approx(40 * 0.45359237 / 0.3048**2)
    assert result.limit_source is not None
    assert result.limit_source.seen
    assert "IOBA" in str(result.limit_source)
    assert not result.holds
    less = result.remedies[0]
    assert result.limit - 1 < less.figure <= result.limit


@pytest.mark.parametrize(
    ("base", "what"),
    [
        ({"kind": "levellers", "height": 120}, ON_FOOT),
        ({"kind": "legs", "height": 150, "stock": "oak", "held_by": "rails"}, ON_LEG),
        ({"kind": "plinth", "height": 100}, ON_PLINTH),
    ],
)
def test_what_it_stands_on(base: dict[str, Any], what: str) -> None:
    unit = bookcase(base=base)
    (result,) = [each for each in ground(unit) if each.what == what]
    whole = paths(unit).total / GRAVITY
    assert result.figure is not None
    assert 0 < result.figure < whole
    if what != ON_PLINTH:
        count = next(each.value for each in result.inputs if each.symbol == "n")
        assert result.figure >= whole / count


@given(
    st.lists(st.tuples(st.floats(-50, 1050), st.floats(-50, 450), st.floats(1, 900)), max_size=8),
    st.integers(2, 5),
)
def test_feet_carry_all_of_it_with_its_moments(
    loads: list[tuple[float, float, float]], columns: int
) -> None:
    xs = [60 + i * 880 / (columns - 1) for i in range(columns)]
    ys = [60.0, 340.0]
    forces = [Force((x, y, 0.0), force, "P") for x, y, force in loads]
    carried = shared(forces, xs, ys)
    cells = [(xs[i], ys[j], carried[i][j]) for i in range(columns) for j in range(2)]
    for power in ((0, 0), (1, 0), (0, 1)):
        by_feet, by_loads = (
            sum(x ** power[0] * y ** power[1] * force for x, y, force in each)
            for each in (cells, loads)
        )
        assert by_feet == pytest.approx(by_loads, rel=1e-6, abs=1e-6)


def test_models_stand_under_what_they_carry() -> None:
    for model in sorted((Path(__file__).parents[2] / "models").glob("*.yaml")):
        unit = rodwright.set_out(rodwright.read_spec(model))
        assert all(each.holds for each in uprights(unit)), model.stem
        grounds = {where for where, _, _ in paths(unit).given}
        assert grounds == ({Ground.WALL} if unit.hung else grounds - {Ground.WALL})
