"""Simple units as models, held to closed forms and to anastruct."""

from __future__ import annotations

from dataclasses import replace

import pytest
from anastruct import SystemElements

from kit.carcasses import BOARD, STIFF, between_sides, books, carcass, level, stress, upright
from rodwright.amounts import GRAVITY
from rodwright.strength.bracing import shear_sway
from rodwright.strength.model.loads import total
from rodwright.strength.model.sagging import borne_on, curve, sag_of
from rodwright.strength.model.solving import UnsolvedError
from rodwright.strength.model.swaying import sway
from rodwright.strength.model.whole import Model, after_years, model_of
from rodwright.unit import Blank, Grain, JointKind, Part, Placement, Role, Unit

REST, HOUSED, DOWELLED = JointKind.RESTING, JointKind.HOUSING, JointKind.DOWEL
EVEN = 30 * GRAVITY / 1000
"""30 kg/m as N/mm."""
EI = 10_000.0 * 300.0 * 20.0**3 / 12
GA = 5 / 6 * 10_000.0 / 16 * 300.0 * 20.0


def _shelf(kind: JointKind = REST) -> Unit:
    parts, joints = between_sides(800, level("SH1", (20, 820), 500), kind=kind)
    # A top that is housed keeps the sides from leaning.
    top = level("TP1", (5, 835), 1960, Role.TOP)
    joints += [("SD1", "TP1", HOUSED), ("SD2", "TP1", HOUSED)]
    return carcass([*parts, top], joints, books("SH1", (20, 820), 30))


def _reactions(model: Model) -> float:
    return sum(each[2] for each in model.moved().reactions)


def test_a_shelf_on_pins_sags_as_a_beam_and_its_weight_comes_down() -> None:
    model = model_of(_shelf())
    moved = model.moved()
    expected = 5 * EVEN * 800**4 / (384 * EI) + EVEN * 800**2 / (8 * GA)
    assert sag_of(model, model.bearings["SH1"], moved) == pytest.approx(expected, rel=0.01)
    for side in ("SD1", "SD2"):
        assert borne_on(model, ("SH1",), side, moved) == pytest.approx(400 * EVEN, rel=1e-3)
    assert total(model.forces)[2] == pytest.approx(-800 * EVEN)
    assert sum(each[2] for each in moved.reactions) == pytest.approx(800 * EVEN, rel=1e-6)


def test_a_load_on_part_of_a_shelf_bends_it_as_a_beam() -> None:
    unit = _shelf()
    unit = replace(unit, loading=replace(unit.loading, loads=(books("SH1", (420, 820), 30),)))
    model = model_of(unit)
    moved = model.moved()
    # Half of a beam loaded: half of the sag half-way of all of it, and 3/8 of the load at one end.
    half = 5 * EVEN * 800**4 / (768 * EI) + EVEN * 800**2 / (16 * GA)
    line = curve(model.mesh.grids["SH1"], moved)
    assert line.off(420.0, 20.0, 820.0) == pytest.approx(half, rel=0.01)
    assert borne_on(model, ("SH1",), "SD1", moved) == pytest.approx(100 * EVEN, rel=1e-3)


def test_after_years_it_sags_by_its_creep_more() -> None:
    unit = _shelf()
    lasting = {part.ref: 1.0 for part in unit.parts}
    now, later = model_of(unit), model_of(unit, after_years(unit, lasting))
    sags = [sag_of(each, each.bearings["SH1"], each.moved()) for each in (now, later)]
    assert sags[1] / sags[0] == pytest.approx(1 + 0.8, rel=1e-3)


def test_a_bottom_runs_on_over_a_divider_that_stands_on_the_floor() -> None:
    """Two equal spans: 3/8, 10/8, 3/8 of the load of one, w L4 / 185 EI (any handbook)."""
    parts, joints = between_sides(1020, level("SH1", (20, 1040), 480), kind=DOWELLED)
    parts.append(upright("DV1", 520, (0, 480)))
    joints.append(("DV1", "SH1", HOUSED))
    model = model_of(carcass(parts, joints, books("SH1", (20, 1040), 30)))
    moved = model.moved()
    assert borne_on(model, ("SH1",), "DV1", moved) == pytest.approx(1.25 * 510 * EVEN, rel=0.02)
    # The divider and the floor under it give a little.
    expected = EVEN * 510**4 / (185 * EI)
    assert sag_of(model, model.bearings["SH1"], moved) == pytest.approx(expected, rel=0.08)


def test_layers_that_are_glued_bend_as_one() -> None:
    parts, joints = between_sides(800, level("SH1a", (20, 820), 500), level("SH1b", (20, 820), 520))
    top = level("TP1", (20, 820), 1980, Role.TOP)
    joints += [("SD1", "TP1", HOUSED), ("SD2", "TP1", HOUSED)]
    joints.append(("SH1a", "SH1b", JointKind.FACE_GLUED))
    model = model_of(carcass([*parts, top], joints, books("SH1b", (20, 820), 30)))
    expected = 5 * EVEN * 800**4 / (384 * 8 * EI) + EVEN * 800**2 / (8 * 2 * GA)
    found = sag_of(model, model.bearings["SH1a"], model.moved())
    assert found == pytest.approx(expected, rel=0.01)


def _portal() -> Unit:
    top = level("TP1", (12, 1028), 1960, Role.TOP)
    parts, joints = between_sides(1000, top, kind=HOUSED)
    return carcass(parts, joints, books("TP1", (20, 1020), 200))


def test_a_portal_sways_as_by_hand() -> None:
    """Sides that stand on the floor and turn there, a top between them on springs: F h2 (2 h + b)
    / (12 E I) for stiff corners (any handbook of rigid frames), and F h2 / (2 k) for what corners
    turn: each takes half of F h, at the face of the side."""
    model = model_of(_portal())
    springs = [
        tie.turns[1] for tie in model.mesh.ties if model.unit.joints[tie.joint].first == "SD1"
    ]
    high, wide, push = 1970.0, 1020.0, 20.0
    by_members = push * high**2 * (2 * high + wide) / (12 * EI)
    at_face = 1000.0 / wide
    expected = by_members + push * high**2 * at_face**2 / (2 * sum(springs))
    assert sway(model, push).mean == pytest.approx(expected, rel=0.02)


def test_a_braced_frame_sways_as_anastruct_has_it() -> None:
    """The same with a shelf half-way."""
    parts, joints = between_sides(
        1000, level("TP1", (5, 1035), 1960, Role.TOP), level("SH1", (5, 1035), 975), kind=HOUSED
    )
    model = model_of(carcass(parts, joints, books("TP1", (20, 1020), 10)))
    spring = sum(
        tie.turns[1]
        for tie in model.mesh.ties
        if model.unit.joints[tie.joint].first == "SD1"
        and model.unit.joints[tie.joint].second == "TP1"
    )
    frame = SystemElements()
    member = {"EA": 10_000.0 * 300 * 20, "EI": EI}
    for x in (10, 1030):
        frame.add_element([[x, 0], [x, 985]], **member)
        frame.add_element([[x, 985], [x, 1970]], **member)
    for z in (985, 1970):
        # A short bar at each end turns as the joint does: by M / k for a moment at both ends.
        soft = {"EA": member["EA"], "EI": spring * 10}
        frame.add_element([[10, z], [20, z]], **soft)
        frame.add_element([[20, z], [1020, z]], **member)
        frame.add_element([[1020, z], [1030, z]], **soft)
    for x in (10, 1030):
        frame.add_support_hinged(frame.find_node_id([x, 0]))
    frame.point_load(frame.find_node_id([10, 1970]), Fx=20.0)
    frame.solve()
    expected = abs(frame.get_node_displacements(frame.find_node_id([10, 1970]))["ux"])
    assert sway(model, 20.0).mean == pytest.approx(expected, rel=0.05)


def _back(thick: float) -> Part:
    stock = replace(BOARD, thickness=thick, mechanics=replace(STIFF, panel_shear=stress(600.0)))
    blank = Blank(2000.0, 1040.0, thick, stock, Grain.LENGTHWISE)
    placed = Placement((1040.0, 300.0, 0.0), (0.0, 0.0, 1.0), (-1.0, 0.0, 0.0))
    return Part("BK1", "Back", Role.BACK, "Test", blank, placed)


def test_a_back_keeps_a_carcass_square_by_its_shear() -> None:
    bottom = level("BT1", (20, 1020), 0, Role.BOTTOM)
    top = level("TP1", (20, 1020), 1980, Role.TOP)
    parts, joints = between_sides(1000, bottom, top, kind=HOUSED)
    back = _back(6.0)
    parts.append(back)
    joints += [(ref, "BK1", JointKind.GROOVE) for ref in ("SD1", "SD2", "BT1", "TP1")]
    unit = carcass(parts, joints, books("BT1", (20, 1020), 300))
    loose, tight = model_of(unit), model_of(unit, tight=True)
    shear = shear_sway(100.0, 1040.0, 2000.0, 6.0, 600.0)
    braced = sway(tight, 100.0)
    # The floor gives under the sides' back edges: 2 F h / (B k) on each side of B, 0.04 mm here;
    # and the front, which no back braces, goes further.
    assert shear < braced.back < shear + 0.05
    assert braced.back < braced.mean < braced.front
    assert sway(loose, 100.0).mean > 20 * braced.mean


def test_what_nothing_holds_is_said_to_move_freely() -> None:
    parts, joints = between_sides(800, level("SH1", (20, 820), 500))
    unit = carcass(parts, joints[:1], books("SH1", (20, 820), 30))
    with pytest.raises(UnsolvedError):
        model_of(unit).moved()
