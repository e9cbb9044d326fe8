"""How far levels sag and whether they break, by hand for each way of lying."""

from __future__ import annotations

import re
from dataclasses import replace
from math import sqrt

import pytest
from hypothesis import HealthCheck, given, settings

import rodwright
from kit.carcasses import BOARD, STIFF, between_sides, books, carcass, level, stress, strip, upright
from kit.mirrors import mirrored
from kit.samples import X, Z
from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright.amounts import GRAVITY
from rodwright.jobs.new import model_names, model_path
from rodwright.problems import ProblemsError
from rodwright.strength.levels import levels
from rodwright.strength.results import Result
from rodwright.trade.sources import Source
from rodwright.unit import (
    Blank,
    Fixing,
    Grain,
    Hole,
    Joint,
    JointKind,
    Notch,
    Part,
    Placement,
    Role,
    Surface,
    Unit,
)

REST, HOUSED, GLUED = JointKind.RESTING, JointKind.HOUSING, JointKind.FACE_GLUED
LOAD = 30 * GRAVITY / 1000
"""30 kg/m as N/mm."""
EI = 10_000 * 300 * 20**3 / 12
AT_ONCE = 5 * LOAD * 800**4 / (384 * EI)
"""Of a shelf 800 x 300 x 20 with E = 10,000 N/mm2, under 30 kg/m on its two ends."""


def _shelf(
    *parts: Part, joints: tuple[tuple[str, str, JointKind], ...] = (), **more: object
) -> Unit:
    """A shelf 800 mm long on two ends, under 30 kg/m, and what is joined to it."""
    shelf = level("SH1", (20, 820), 500)
    carried, at_ends = between_sides(800, shelf)
    load = books("SH1", (20, 820), 30)
    return carcass([*carried, *parts], [*at_ends, *joints], load, **more)


def _found(unit: Unit, what: str, ref: str = "SH1") -> Result:
    return next(each for each in levels(unit) if ref in each.parts and each.what.startswith(what))


def _sag(unit: Unit, ref: str = "SH1", what: str = "sag after") -> float:
    figure = _found(unit, what, ref).figure
    assert figure is not None
    return figure


def test_a_shelf_on_two_ends_sags_by_the_handbook() -> None:
    """5 w L^4/(384 E I) at once; 1 + psi2 kdef = 1.64 times that in the end, without weight."""
    unit = _shelf()
    assert _sag(unit, what="sag at once") == pytest.approx(AT_ONCE)
    assert _sag(unit) == pytest.approx(AT_ONCE * (1 + 0.8 * 0.8))
    assert _found(unit, "sag after").limit == 4.0


def test_own_weight_creeps_whole() -> None:
    """w_fin = w_G (1 + kdef) + w_Q (1 + psi2 kdef), EN 1995-1-1, 2.2.3."""
    heavy = replace(BOARD, density=2500.0)
    shelf = level("SH1", (20, 820), 500, stock=heavy)
    parts, joints = between_sides(800, shelf)
    unit = carcass(parts, joints, books("SH1", (20, 820), 30))
    own = 300 * 20 * 2500e-9 * GRAVITY
    hand = AT_ONCE * (own / LOAD * 1.8 + 1.64)
    assert _sag(unit) == pytest.approx(hand)


def test_at_once_is_held_to_the_limit_where_no_years_are_asked_for() -> None:
    unit = _shelf(years=0)
    results = [each for each in levels(unit) if each.what.startswith("sag")]
    assert [each.what for each in results] == ["sag at once"]
    assert results[0].limit == 4.0


def test_a_shelf_is_within_its_limit_just_inside_it() -> None:
    span_over = 800 / (AT_ONCE * 1.64)
    assert _found(_shelf(limit=span_over * 0.9999), "sag after").holds
    assert not _found(_shelf(limit=span_over * 1.0001), "sag after").holds


def test_twice_the_load_sags_twice_as_far() -> None:
    parts, joints = between_sides(800, level("SH1", (20, 820), 500))
    double = carcass(parts, joints, books("SH1", (20, 820), 60))
    assert _sag(double) == pytest.approx(2 * _sag(_shelf()))


def test_layers_glued_sag_a_quarter_of_layers_that_lie_loose() -> None:
    top, worktop = (
        level("TP1", (20, 820), 500, Role.TOP),
        level("WT1", (20, 820), 520, Role.WORKTOP),
    )
    parts, joints = between_sides(800, top, kind=HOUSED)
    load = books("WT1", (20, 820), 30)
    loose = carcass([*parts, worktop], [*joints, ("TP1", "WT1", JointKind.BUTTONED)], load)
    glued = carcass([*parts, worktop], [*joints, ("TP1", "WT1", GLUED)], load)
    one, two = (
        replace(unit, joints=tuple(_pinned(joint) for joint in unit.joints))
        for unit in (loose, glued)
    )
    assert _sag(one, "TP1", "sag at once") == pytest.approx(AT_ONCE / 2)
    assert _sag(two, "TP1", "sag at once") == pytest.approx(AT_ONCE / 8)


def _pinned(joint: Joint) -> Joint:
    return replace(joint, kind=REST) if joint.kind is HOUSED else joint


def test_a_lipping_below_the_front_acts_with_the_shelf() -> None:
    """Shelf 300 x 20 and lip 20 x 50, tops flush: neutral axis and EI by hand."""
    lip = strip("LP1", (20, 820), 470, 520)
    unit = _shelf(lip, joints=(("SH1", "LP1", JointKind.EDGE_GLUED),))
    shelf, lipping = 300 * 20, 20 * 50
    axis = (shelf * 10 + lipping * 25) / (shelf + lipping)
    inertia = (
        300 * 20**3 / 12 + shelf * (axis - 10) ** 2 + 20 * 50**3 / 12 + lipping * (25 - axis) ** 2
    )
    hand = AT_ONCE * (300 * 20**3 / 12) / inertia
    assert _sag(unit, what="sag at once") == pytest.approx(hand)


def test_a_strip_that_is_only_screwed_adds_its_own_stiffness() -> None:
    rail = strip("RL1", (20, 820), 470, 520, role=Role.RAIL)
    unit = _shelf(rail, joints=(("SH1", "RL1", JointKind.SCREWED),))
    own, added = 300 * 20**3, 20 * 50**3
    assert _sag(unit, what="sag at once") == pytest.approx(AT_ONCE * own / (own + added))


def test_a_cut_out_weakens_a_shelf_where_it_is() -> None:
    """Half of its depth is gone over the middle 200 mm, so that it bends twice as much there: by
    the unit load, the sag is more by the integral of m M/EI over that, m = x/2, M = w x (L - x)/2.
    """
    notch = Notch(300.0, 0.0, 200.0, 150.0)
    parts, joints = between_sides(800, level("SH1", (20, 820), 500, Role.SHELF, notch))
    unit = carcass(parts, joints, books("SH1", (20, 820), 30))

    def up_to(x: float) -> float:
        """The integral of x/2 w x (L - x)/2 from 0 to x."""
        return LOAD / 4 * (800 * x**3 / 3 - x**4 / 4)

    extra = 2 * (up_to(400) - up_to(300)) / EI
    assert _sag(unit, what="sag at once") == pytest.approx(AT_ONCE + extra)


def test_housed_ends_sag_less_than_pins_and_break_alike() -> None:
    parts, joints = between_sides(800, level("SH1", (14, 826), 500), kind=HOUSED)
    housed = carcass(parts, joints, books("SH1", (20, 820), 30))
    pinned = replace(housed, joints=tuple(map(_pinned, housed.joints)))
    assert 0.5 * _sag(pinned) < _sag(housed) < _sag(pinned)
    assert _sag(housed, what="bending") == pytest.approx(_sag(pinned, what="bending"), rel=1e-6)


def test_bending_and_shear_by_hand() -> None:
    """sigma = 0.75 w L^2/(b t^2), tau = 1.5 V/(b t), loads times 1.5; f kmod/gammaM = 0.7/1.2 f."""
    unit = _shelf()
    bending, shear = _found(unit, "bending"), _found(unit, "shear")
    assert bending.figure == pytest.approx(1.5 * 0.75 * LOAD * 800**2 / (300 * 20**2))
    assert bending.limit == pytest.approx(40 * 0.7 / 1.2)
    assert shear.figure == pytest.approx(1.5 * 1.5 * LOAD * 400 / (300 * 20))
    assert shear.limit == pytest.approx(3 * 0.7 / 1.2)


def test_a_shelf_over_a_firm_divider_has_two_spans() -> None:
    """w L^4/(185 E I) of each span of 400."""
    divider = upright("DV1", 410, (0, 500))
    unit = _shelf(divider, joints=(("SH1", "DV1", HOUSED),))
    assert _sag(unit, what="sag at once") == pytest.approx(LOAD * 400**4 / (184.6 * EI), rel=1e-3)
    assert _found(unit, "sag after").limit == pytest.approx(2.0)


def test_a_bottom_between_plinth_boards_spans_from_front_to_back() -> None:
    """Across its grain, E = 5,000, over the 260 mm between the boards; what lies over them, 20 mm
    at either side, takes w 20^2/2 of the moment off."""
    bottom = level("BT1", (20, 820), 100, Role.BOTTOM)
    parts, joints = between_sides(800, bottom)
    boards = [
        strip("PL1", (20, 820), 0, 100, (0, 20), role=Role.PLINTH),
        strip("PL2", (20, 820), 0, 100, (280, 300), role=Role.PLINTH),
    ]
    unit = carcass([*parts, *boards], joints, books("BT1", (20, 820), 30))
    per_width = LOAD / 300
    strip_ei = 5_000 * 20**3 / 12
    over = per_width * 20**2 / 2
    hand = 5 * per_width * 260**4 / (384 * strip_ei) - over * 260**2 / (8 * strip_ei)
    found = _found(unit, "sag at once", "BT1")
    assert found.figure == pytest.approx(hand, rel=1e-6)
    assert _found(unit, "sag after", "BT1").limit == pytest.approx(1.3)


def test_an_unknown_material_has_no_figure_and_says_what_to_give() -> None:
    unknown = replace(BOARD, mechanics=None, material="moon wood")
    parts, joints = between_sides(800, level("SH1", (20, 820), 500, stock=unknown))
    found = list(levels(carcass(parts, joints, books("SH1", (20, 820), 30))))
    assert [(each.figure, each.limit) for each in found] == [(None, None)]
    assert "moon wood" in found[0].lacking
    assert "stiffness" in found[0].lacking


def test_glass_does_not_creep() -> None:
    unit = unit_from(
        "size: {width: 636, height: 900, depth: 300}\n"
        "stock:\n"
        "  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}\n"
        "  pane: {kind: sheet, material: glass, thickness: 8, size: [2000, 1000], grain: none}\n"
        "interior: {shelves: {count: 1, fixed: false, stock: pane}}\n"
    )
    assert _sag(unit) == pytest.approx(_sag(unit, what="sag at once"))


def _on_pins(hole: float) -> Unit:
    """A shelf on two pins of 5 mm at each end, in holes so deep, 32 mm apart."""
    dense = replace(
        BOARD,
        mechanics=replace(STIFF, gravity=replace(stress(0.6), measure=""), bearing=stress(5.0)),
    )
    unit = _shelf()

    def bored(part: Part) -> Part:
        if part.role is not Role.SIDE:
            return replace(part, blank=replace(part.blank, stock=dense))
        inner = Surface.REVERSE if part.ref == "SD1" else Surface.FACE
        holes = tuple(
            Hole(inner, (x, y), 5.0, hole, "adjustable shelves")
            for x in (465.5, 497.5)
            for y in (40.0, 260.0)
        )
        blank = replace(part.blank, stock=dense)
        return replace(part, blank=blank, workings=holes)

    return replace(unit, parts=tuple(map(bored, unit.parts)))


def test_pins_press_and_tear_by_hand() -> None:
    """Each pin bears a quarter of the load, 4 mm before the upright."""
    unit = _on_pins(10.0)
    force = LOAD * 800 / 4
    mouth = _found(unit, "pressure on pin holes")
    bears_by = sqrt((2 * 4 + 10) ** 2 + 10**2) - (2 * 4 + 10)
    assert mouth.figure == pytest.approx(force / (5 * bears_by))
    torn = _found(unit, "tear-out")
    assert torn.figure == pytest.approx(1.5 * force / (2 * 27 * 10))
    assert torn.limit == pytest.approx(3 * 0.7 / 1.2)
    pressed = _found(unit, "pressure on the pins")
    assert pressed.figure == pytest.approx(1.5 * force / (5 * 8))


def test_deeper_holes_are_pressed_less() -> None:
    shallow, deep = (_found(_on_pins(hole), "pressure on pin holes") for hole in (6.0, 12.0))
    assert shallow.figure is not None
    assert deep.figure is not None
    assert deep.figure < shallow.figure / 2


def test_every_figure_says_what_it_comes_from() -> None:
    found = _found(_shelf(), "sag after")
    symbols = [each.symbol for each in found.inputs]
    assert symbols == ["L", "Q", "G", "E", "kdef", "psi2"]
    assert found.from_memory == (Source("EN 1990:2002, table A1.1, category E", seen=False),)
    assert found.notes[0] == "on pins in SD1, on pins in SD2; the span is 800 mm"


@pytest.mark.parametrize("name", model_names())
def test_every_level_of_the_models_has_figures(name: str) -> None:
    unit = rodwright.set_out(rodwright.read_spec(model_path(name)))
    for each in levels(unit):
        assert each.figure is not None
        assert each.figure >= 0


@settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(wishes())
def test_any_unit_and_its_mirror_image_sag_alike(wish: Wish) -> None:
    try:
        units = [unit_from("unit: mm\n", **each) for each in (wish, mirrored(wish))]
    except ProblemsError:
        return
    one, other = (sorted(_told(each) for each in levels(unit)) for unit in units)
    assert len(one) == len(other)
    for here, there in zip(one, other, strict=True):
        assert here[0] == there[0]
        assert here[1] == pytest.approx(there[1], rel=1e-3, abs=1e-3)


def _told(result: Result) -> tuple[str, float]:
    role = result.subject.split()[0]
    return f"{role}: {result.what}", round(result.figure or 0.0, 4)


def test_a_shelf_screwed_along_its_back_sags_as_a_plate_with_a_free_front() -> None:
    """Timoshenko's plate on three edges: b/a = 0.5, alpha 0.00709 against 5/384 (1 - nu^2) of a
    strip (Timoshenko & Woinowsky-Krieger, from memory), at Poisson's ratio 0.3; boards have it
    left out, which is on the safe side."""
    even = replace(STIFF, across=stress(10_000.0), panel_shear=stress(10_000.0 / 2.6), creep=None)
    stock = replace(BOARD, mechanics=even)
    shelf = level("SH1", (20, 820), 500, depth=(0.0, 400.0), stock=stock)
    back = Part(
        "BK1",
        "Back",
        Role.BACK,
        "Test",
        Blank(840.0, 1000.0, 6.0, stock, Grain.LENGTHWISE),
        Placement((0.0, 406.0, 0.0), X, Z),
    )
    parts, joints = between_sides(800, shelf)
    unit = carcass([*parts, back], joints, books("SH1", (20, 820), 30), years=0)
    screws = (Fixing("wood screw", 5),)
    screwed = tuple(
        Joint(JointKind.SCREWED, ref, "BK1", (400.0, 400.0, 510.0), screws)
        for ref in ("SD1", "SD2", "SH1")
    )
    loose, held = (
        _sag(unit, what="sag"),
        _sag(replace(unit, joints=(*unit.joints, *screwed)), what="sag"),
    )
    # Without Poisson's effect D is E t^3/12 in both, and a plate sags a little more.
    published = 0.00709 * (1 - 0.3**2) / (5 / 384)
    assert held / loose == pytest.approx(published, rel=0.12)
    assert held / loose > published


def test_a_front_lipping_twists_a_shelf() -> None:
    """The back edge sags more than the front, and the two lie about the beam's own sag."""
    sheared = replace(STIFF, shear=stress(500.0), panel_shear=stress(700.0))
    stock = replace(BOARD, mechanics=sheared)
    shelf = level("SH1", (20, 820), 500, stock=stock)
    parts, joints = between_sides(800, shelf)
    lip = strip("LP1", (20, 820), 470, 520, stock=stock)
    load = books("SH1", (20, 820), 30)
    unit = carcass([*parts, lip], [*joints, ("SH1", "LP1", JointKind.EDGE_GLUED)], load)
    twist = _found(unit, "twist")
    assert twist.limit is None
    assert twist.figure is not None
    assert twist.figure > 0
    told = r"at once its front edge sags ([\d.]+) mm and its back edge ([\d.]+) mm"
    match = re.fullmatch(told, twist.notes[0])
    assert match is not None
    front, back = map(float, match.groups())
    assert front < _sag(unit, what="sag at once") < back
    assert back - front == pytest.approx(twist.figure, abs=0.11)


def _two_spans(weight: float = 0.0) -> Unit:
    stock = replace(BOARD, density=weight)
    shelf = level("SH1", (20, 1020), 520, stock=stock)
    parts, joints = between_sides(1000, shelf)
    parts.append(upright("DV1", 510, (0, 520)))
    return carcass(parts, [*joints, ("SH1", "DV1", HOUSED)], books("SH1", (20, 1020), 30))


def test_one_span_of_two_sags_farther_with_the_other_empty() -> None:
    """0.00915 w L^4/(E I) of the one that is loaded, against 0.00542 of both (tables of
    continuous beams, from memory)."""
    unit = _two_spans()
    found = [each for each in levels(unit) if each.what.startswith("sag after")]
    assert [each.what for each in found] == [
        "sag after 10 years",
        "sag after 10 years, every other span empty",
    ]
    whole = LOAD * 500**4 / EI * 1.64
    assert found[0].figure == pytest.approx(0.00542 * whole, rel=1e-3)
    assert found[1].figure == pytest.approx(0.00915 * whole, rel=1e-3)
    assert found[1].limit == 2.5


def test_what_lies_on_one_span_alone_is_as_bad_by_turns() -> None:
    unit = _two_spans()
    one = replace(unit, loading=replace(unit.loading, loads=(books("SH1", (20, 520), 30),)))
    found = [each for each in levels(one) if each.what.startswith("sag after")]
    assert len(found) == 1
    assert found[0].figure == pytest.approx(_sag(unit, what="sag after 10 years, every"))


@pytest.mark.parametrize("apart", [-1e-9, 0.0, 1e-9])
def test_layers_that_meet_at_the_axis_shear_as_one_board(apart: float) -> None:
    """tau = 1.5 V/(b t) of both, whether or not they meet to the last digit."""
    lower, upper_layer = level("SH1", (20, 820), 500), level("SH2", (20, 820), 520 + apart)
    parts, joints = between_sides(800, lower)
    unit = carcass(
        [*parts, upper_layer], [*joints, ("SH1", "SH2", GLUED)], books("SH1", (20, 820), 30)
    )
    assert _sag(unit, what="shear") == pytest.approx(1.5 * 1.5 * LOAD * 400 / (300 * 40))
