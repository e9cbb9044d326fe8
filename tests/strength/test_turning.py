"""How stiffly joints turn."""

from __future__ import annotations

from dataclasses import replace
from math import sqrt

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from scipy.optimize import minimize_scalar

import rodwright
from kit.samples import PLYWOOD, Y
from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright.geometry import Box
from rodwright.jobs.new import model_names, model_path
from rodwright.problems import ProblemsError
from rodwright.strength.meetings import meeting_of
from rodwright.strength.turning import couple, lasting, pull_of, thread_stiffness, turning_of
from rodwright.trade.mechanics import Family, Mechanics
from rodwright.trade.sources import Figure, Source
from rodwright.unit import (
    Blank,
    Fixing,
    Grain,
    Joint,
    JointKind,
    Part,
    Placement,
    Role,
    Stock,
    Unit,
)

TOLD = Source("told by the test")
STIFF = Mechanics(
    Family.PLYWOOD,
    along=Figure(9000.0, "N/mm2", TOLD),
    across=Figure(6000.0, "N/mm2", TOLD),
    shear=Figure(60.0, "N/mm2", TOLD),
)
KNOWN = replace(PLYWOOD, mechanics=STIFF)
FRAMED = """
size: {width: 800, height: 900, depth: 300}
carcass: {stock: ply, corners: screwed}
interior: {shelves: {count: 1}}
face_frame: {stock: ash, width: 60, corners: butted}
"""
SCREWS = Fixing("wood screw", 2, "4 x 45 mm", diameter=4.0, length=45.0)


def shelf_and_side(
    kind: JointKind,
    *fixings: Fixing,
    reach: float = 0.0,
    thick: float = 18.0,
    deep: float = 300.0,
    known: bool = True,
) -> tuple[Unit, Joint]:
    """A shelf 800 long that meets a side at x = 18, reaching so far into it."""
    stock = replace(KNOWN if known else PLYWOOD, thickness=thick)
    side = Part(
        "SD1",
        "Side",
        Role.SIDE,
        "Test",
        Blank(900.0, deep, 18.0, KNOWN if known else PLYWOOD, Grain.LENGTHWISE),
        Placement((18.0, 0.0, 0.0), (0.0, 0.0, 1.0), Y),
    )
    shelf = Part(
        "SH1",
        "Shelf",
        Role.SHELF,
        "Test",
        Blank(800.0 + reach, deep, thick, stock, Grain.LENGTHWISE),
        Placement((18.0 - reach, 0.0, 400.0), (1.0, 0.0, 0.0), Y),
    )
    if side.bounds().low[0] < -1:
        side = replace(side, placement=replace(side.placement, origin=(36.0, 0.0, 0.0)))
    joint = Joint(kind, "SD1", "SH1", (18.0, deep / 2, 400.0 + thick / 2), fixings)
    return Unit("Test", Box((0, 0, 0), (10, 10, 10)), (side, shelf), (joint,)), joint


def turning(kind: JointKind, *fixings: Fixing, **more: float) -> float:
    return turning_of(*shelf_and_side(kind, *fixings, **more)).value


@pytest.mark.parametrize(
    "kind", [JointKind.RESTING, JointKind.BUTT, JointKind.PINNED, JointKind.HINGED]
)
def test_pins_do_not_resist_turning(kind: JointKind) -> None:
    pins = Fixing("panel pin", 9, "1.4 x 25 mm", diameter=1.4, length=25.0)
    figure = turning_of(*shelf_and_side(kind, pins))
    assert figure.value == 0.0
    assert str(figure.source) == "a pin: it isn't counted on to resist turning"


def test_of_an_unknown_material_it_is_a_pin_and_says_so() -> None:
    figure = turning_of(*shelf_and_side(JointKind.SCREWED, SCREWS, known=False))
    assert figure.value == 0.0
    assert "isn't known" in str(figure.source)


def test_dowels_turn_where_shear_is_not_known_by_a_low_estimate() -> None:
    """Many a sheet is known in its plane alone: a tenth of that counts, or 1/160 of its modulus."""
    dowels = Fixing("dowel", 4, "8 x 40 mm", diameter=8.0, length=40.0)
    unit, joint = shelf_and_side(JointKind.DOWEL, dowels)
    known = turning_of(unit, joint)
    plane = Figure(450.0, "N/mm2", TOLD)
    for panel_shear, shear in ((plane, 45.0), (None, 9000 / 160)):
        mechanics = replace(STIFF, shear=None, panel_shear=panel_shear)
        stock = replace(KNOWN, mechanics=mechanics)
        low = _turning_in(unit, joint, stock)
        told = replace(STIFF, shear=Figure(shear, "N/mm2", TOLD))
        assert low.value == pytest.approx(
            _turning_in(unit, joint, replace(KNOWN, mechanics=told)).value
        )
        assert 0 < low.value < known.value
        assert "stated estimate, taken low" in str(low.source)
        assert low.source != known.source


def _turning_in(unit: Unit, joint: Joint, stock: Stock) -> Figure:
    parts = tuple(
        replace(part, blank=replace(part.blank, stock=replace(stock, thickness=18.0)))
        for part in unit.parts
    )
    return turning_of(replace(unit, parts=parts), joint)


def test_two_screws_by_hand() -> None:
    """c = 1 / (18 / 300 + 18 / 9000) = 16.129 N/mm3, b = 300 mm; a screw 27 mm in is held by
    780 x 4^0.2 x 27^0.4 = 3846.5 N/mm and its head by 300 x 8 / 0.91 = 2637.4 N/mm, together
    1564.6 N/mm; the neutral line is where 2419.4 x^2 + 3129.2 x = 28163: x = 2.8265 mm."""
    assert thread_stiffness(4.0, 27.0) == pytest.approx(3846.5, rel=1e-4)
    k = 2 / (1 / 3846.5 + 1 / 2637.36)
    bed = 300 * 16.12903
    x = (-k + sqrt(k * k + 2 * bed * k * 9)) / bed
    by_hand = bed * x**3 / 3 + k * (9 - x) ** 2
    assert by_hand == pytest.approx(1.556e5, rel=0.01)
    assert turning(JointKind.SCREWED, SCREWS) == pytest.approx(by_hand, rel=1e-4)


def test_a_housing_by_hand() -> None:
    """The shelf's face beds 300 / 18 = 16.667 N/mm3; 6 deep and 300 wide: 16.667 x 300 x 216 / 12
    = 90000 N mm/rad."""
    assert turning(JointKind.HOUSING, reach=6.0) == pytest.approx(90000.0, rel=1e-6)
    assert turning(JointKind.HOUSING, reach=9.0) == pytest.approx(303750.0, rel=1e-6)


def test_what_is_glued_in_is_stiffer_than_as_many_screws_into_the_same_depth() -> None:
    dowels = Fixing("dowel", 7, "8 x 40 mm", diameter=8.0, length=40.0)
    screws = replace(SCREWS, count=7, length=38.0)
    assert turning(JointKind.DOWEL, dowels) > turning(JointKind.SCREWED, screws) > 0


def test_joints_creep_twice_as_much_as_what_they_join() -> None:
    assert lasting(1000.0, 0.8) == pytest.approx(1000 / 2.6)


@given(
    st.floats(50.0, 20000.0),
    st.lists(st.tuples(st.floats(0.5, 60.0), st.floats(100.0, 9000.0)), min_size=1, max_size=5),
)
def test_the_couple_is_what_contact_along_the_edge_gives(
    bed: float, springs: list[tuple[float, float]]
) -> None:
    """Against the least energy of a bed of strips that only press and springs that only pull."""
    deep = max(place for place, _ in springs)
    edges = np.linspace(0.0, deep, 4001)
    strips, width = (edges[1:] + edges[:-1]) / 2, deep / 4000
    places, stiff = np.array(springs).T

    def energy(x: float) -> float:
        pressed = np.clip(x - strips, 0.0, None)
        drawn = np.clip(places - x, 0.0, None)
        return float((bed * width * pressed**2).sum() / 2 + (stiff * drawn**2).sum() / 2)

    least = minimize_scalar(energy, bounds=(0.0, deep), method="bounded", options={"xatol": 1e-9})
    assert couple(bed, springs) == pytest.approx(2 * least.fun, rel=2e-3)


@given(st.integers(1, 9), st.floats(12.0, 40.0), st.floats(100.0, 600.0))
def test_more_screws_and_a_thicker_or_deeper_shelf_turn_less(
    count: int, thick: float, deep: float
) -> None:
    few = turning(JointKind.SCREWED, replace(SCREWS, count=count), thick=thick, deep=deep)
    more = turning(JointKind.SCREWED, replace(SCREWS, count=count + 1), thick=thick, deep=deep)
    thicker = turning(JointKind.SCREWED, replace(SCREWS, count=count), thick=thick + 3, deep=deep)
    assert 0 < few < more
    assert few < thicker


@pytest.mark.parametrize("name", model_names())
def test_every_joint_of_the_models_turns_somehow(name: str) -> None:
    """Between a pin and fixed: a level's end no more than if it were bedded over its whole
    thickness on hard wood, 10000 N/mm2 over 18 mm."""
    unit = rodwright.set_out(rodwright.read_spec(model_path(name)))
    for joint in unit.joints:
        figure = turning_of(unit, joint)
        assert figure.value >= 0
        meeting = meeting_of(unit, joint)
        if meeting is not None and (meeting.axis, meeting.across) == (0, 2):
            most = 10000 / 18 * meeting.length * meeting.thickness**3 / 12
            assert figure.value < most
        assert str(figure.source)


@settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(wishes())
def test_joints_of_random_units_turn(wish: Wish) -> None:
    try:
        unit = unit_from("unit: mm\n", **wish)
    except ProblemsError:
        return
    for joint in unit.joints:
        for axis in range(3):
            assert turning_of(unit, joint, axis).value >= 0
        assert pull_of(unit, joint, 1000.0) >= 0


def test_the_pull_on_screws_balances_the_moment() -> None:
    """The couple's arm is no longer than from the screws to the pressed edge, and no shorter than
    two thirds of that."""
    unit, joint = shelf_and_side(JointKind.SCREWED, SCREWS)
    pull = pull_of(unit, joint, 1000.0)
    assert 1000 / 9 < pull < 1000 / 6
    assert pull_of(unit, joint, -2000.0) == pytest.approx(2 * pull)
    assert pull_of(*shelf_and_side(JointKind.HOUSING, reach=6.0), 1000.0) == 0.0


def test_a_frames_corner_turns_about_the_depth_of_the_room_over_the_width_of_its_rail() -> None:
    unit = unit_from(FRAMED)
    parts = tuple(
        replace(
            part,
            blank=replace(part.blank, stock=replace(part.blank.stock, mechanics=STIFF)),
        )
        for part in unit.parts
    )
    known = replace(unit, parts=parts)
    corners = [joint for joint in known.joints if joint.kind is JointKind.DOWEL]
    assert corners
    for joint in corners:
        assert turning_of(known, joint).value > 0
        assert turning_of(known, joint, about=0).value == 0
