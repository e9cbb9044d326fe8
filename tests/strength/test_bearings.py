"""What carries levels: seats, edges that are held, dividers; and how loads go down them."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, given, settings

import rodwright
from kit.carcasses import between_sides, books, carcass, level, strip, upright
from kit.mirrors import mirrored
from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright.amounts import GRAVITY
from rodwright.checks import check_parts
from rodwright.checks.rules import Rule
from rodwright.jobs.new import model_names, model_path
from rodwright.problems import ProblemsError
from rodwright.strength.bearings import Bearing, bearings
from rodwright.strength.level_loads import weight_of
from rodwright.unit import JointKind, Role, Unit

REST, HOUSED, DOWELLED = JointKind.RESTING, JointKind.HOUSING, JointKind.DOWEL
EVEN = 30 * GRAVITY / 1000
"""30 kg/m as N/mm."""


def _two_levels(kind: JointKind, *loaded: str) -> dict[str, Bearing]:
    """A bottom over nothing and a shelf above it, 1000 mm clear, a divider half-way between."""
    bottom, shelf = level("BT1", (20, 1020), 100, Role.BOTTOM), level("SH1", (20, 1020), 520)
    parts, joints = between_sides(1000, bottom, shelf)
    parts.append(upright("DV1", 510, (120, 520)))
    joints += [("BT1", "DV1", kind), ("SH1", "DV1", kind)]
    return bearings(carcass(parts, joints, *(books(ref, (20, 1020), 30) for ref in loaded)))


def test_a_shelf_between_sides_bears_on_both_alike() -> None:
    parts, joints = between_sides(800, level("SH1", (22, 818), 500))
    shelf = bearings(carcass(parts, joints, books("SH1", (22, 818), 30)))["SH1"]
    assert [(seat.at, seat.on, seat.how) for seat in shelf.seats] == [
        (22, "SD1", "end"),
        (818, "SD2", "end"),
    ]
    assert [seat.reaction for seat in shelf.seats] == pytest.approx([398 * EVEN] * 2)
    assert shelf.spans == ((22, 818),)


@pytest.mark.parametrize("toe_space", [0, 25, 50])
def test_a_plinth_carries_a_bottom_by_its_lipping_too(toe_space: int) -> None:
    """Its front board stands under the lipping alone where there is no toe space."""
    unit = unit_from(
        "size: {width: 900, height: 1900, depth: 290}\nloads: books\n"
        "carcass: {stock: ply, corners: housed}\n"
        f"base: {{kind: plinth, height: 75, toe_space: {toe_space}}}\n"
        "interior: {shelves: {count: 2}}\nlipping: {stock: ash, thickness: 20, edges: [bottom]}\n"
    )
    bottom = bearings(unit)["BT1"]
    assert {line.edge: line.on for line in bottom.lines} == {"front": ("PL1",), "back": ("PL2",)}
    assert [seat.reaction for seat in bottom.seats] == pytest.approx([0.0] * len(bottom.seats))
    assert not [found for found in check_parts(unit) if found.rule is Rule.JOINT_OVERLOADED]


def test_levels_tied_by_a_divider_share_what_lies_on_the_upper() -> None:
    """5 w L^4/384 - N L^3/48 = N L^3/48: the divider brings 5/16 of what lies on the shelf down."""
    found = _two_levels(HOUSED, "SH1")
    assert found["BT1"].standing[0].force == pytest.approx(5 / 16 * 1000 * EVEN)
    assert found["SH1"].seats[1].reaction == pytest.approx(5 / 16 * 1000 * EVEN)
    sags = [found[ref].bent.deflection(500) for ref in ("SH1", "BT1")]  # type: ignore[union-attr]
    assert sags[0] == pytest.approx(sags[1])


def test_a_divider_hangs_from_a_shelf_only_by_a_joint_that_holds() -> None:
    loose, held = (_two_levels(kind, "BT1")["BT1"] for kind in (HOUSED, DOWELLED))
    assert loose.standing[0].force == pytest.approx(0.0)
    assert held.standing[0].force == pytest.approx(-5 / 16 * 1000 * EVEN)


def test_a_shelf_runs_on_over_a_divider_that_stands_on_the_floor() -> None:
    """Two equal spans: 3/8, 10/8, 3/8 of the load of one."""
    shelf = level("SH1", (20, 1020), 520)
    parts, joints = between_sides(1000, shelf)
    parts.append(upright("DV1", 510, (0, 520)))
    unit = carcass(parts, [*joints, ("SH1", "DV1", HOUSED)], books("SH1", (20, 1020), 30))
    found = bearings(unit)["SH1"]
    assert [seat.how for seat in found.seats] == ["end", "under", "end"]
    assert [seat.reaction for seat in found.seats] == pytest.approx(
        [3 / 8 * 500 * EVEN, 10 / 8 * 500 * EVEN, 3 / 8 * 500 * EVEN]
    )


def test_what_ends_on_a_divider_goes_down_it() -> None:
    bottom = level("BT1", (20, 1040), 100, Role.BOTTOM)
    left, right = level("SH1", (20, 520), 500), level("SH2", (540, 1040), 600)
    parts, joints = between_sides(1020, bottom)
    parts += [upright("DV1", 520, (120, 900)), left, right]
    joints += [
        ("BT1", "DV1", HOUSED),
        ("SD1", "SH1", REST),
        ("DV1", "SH1", REST),
        ("DV1", "SH2", REST),
        ("SD2", "SH2", REST),
    ]
    loads = books("SH1", (20, 520), 30), books("SH2", (540, 1040), 30)
    found = bearings(carcass(parts, joints, *loads))
    assert found["BT1"].standing[0].force == pytest.approx(500 * EVEN)


def test_a_bottom_on_the_floor_bends_nowhere() -> None:
    parts, joints = between_sides(800, level("BT1", (20, 820), 0, Role.BOTTOM))
    found = bearings(carcass(parts, joints, books("BT1", (20, 820), 30)))["BT1"]
    assert found.grounded
    assert found.bent is None


def test_a_rail_on_the_floor_holds_the_front_of_the_bottom_it_is_glued_to() -> None:
    parts, joints = between_sides(800, level("BT1", (20, 820), 40, Role.BOTTOM))
    for low, edges in ((0.0, ["front"]), (10.0, [])):
        rail = strip("RL1", (20, 820), low, 60, role=Role.RAIL)
        unit = carcass([*parts, rail], [*joints, ("BT1", "RL1", JointKind.BISCUIT)])
        assert [line.edge for line in bearings(unit)["BT1"].lines] == edges


@pytest.mark.parametrize("name", model_names())
def test_loads_of_the_models_all_reach_the_ground(name: str) -> None:
    _in_balance(rodwright.set_out(rodwright.read_spec(model_path(name))))


@settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(wishes())
def test_loads_of_any_unit_all_reach_the_ground(wish: Wish) -> None:
    try:
        unit = unit_from("unit: mm\n", **wish)
    except ProblemsError:
        return
    _in_balance(unit)


@settings(max_examples=25, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(wishes())
def test_a_mirror_image_bears_alike(wish: Wish) -> None:
    try:
        units = [unit_from("unit: mm\n", **each) for each in (wish, mirrored(wish))]
    except ProblemsError:
        return
    one, other = (sorted(map(_told, bearings(unit).values())) for unit in units)
    assert len(one) == len(other)
    for here, there in zip(one, other, strict=True):
        assert here == pytest.approx(there, rel=1e-3, abs=0.1)


def _told(bearing: Bearing) -> tuple[float, ...]:
    """A bearing's figures, the same in a mirror."""
    forces = sorted(seat.reaction for seat in bearing.seats)
    sag = bearing.bent.greatest_sag().sag if bearing.bent else 0.0
    turned = sum(abs(seat.turning) for seat in bearing.seats)
    figures = (bearing.level.box.low[2], bearing.weight, bearing.contents, sag, *forces, turned)
    return tuple(round(figure, 2) for figure in figures)


def _in_balance(unit: Unit) -> None:
    """Each level bears what lies and stands on it, and each divider brings what it takes up."""
    found = bearings(unit)
    brought: dict[str, float] = {}
    for each in found.values():
        on_it = each.weight + each.contents + sum(one.force for one in each.standing)
        if each.bent is not None:
            assert sum(seat.reaction for seat in each.seats) == pytest.approx(on_it, abs=1e-3)
        for seat in each.seats:
            brought[seat.on] = brought.get(seat.on, 0.0) + seat.reaction
    for each in found.values():
        for one in each.standing:
            whole = weight_of(unit, one.ref) + brought.get(one.ref, 0.0)
            shares = [pytest.approx(share * whole, abs=1e-3) for share in (0.0, 0.5, 1.0)]
            assert one.force in shares
