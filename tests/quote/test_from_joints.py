"""Operations at the bench, counted by hand."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest

from kit.panels import panel, unit_of
from kit.specs import unit_from
from rodwright.quote.from_joints import carcasses, put_together
from rodwright.trade.feet import FOOT
from rodwright.unit import Fixing, Joint, JointKind, Part, Placement, Role, Unit

SIZE = "size: {width: 800, height: 900, depth: 300}\n"
UPPER: Part = replace(
    panel(), ref="P2", placement=Placement((100.0, 20.0, 18.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0))
)


def counted(unit: Unit) -> dict[str, float]:
    found: Counter[str] = Counter()
    for key, amount in put_together(unit):
        found[key] += amount  # type: ignore[assignment]
    return {key: amount for key, amount in found.items() if amount}


def joined(kind: JointKind, *fixings: Fixing) -> Unit:
    return unit_of(panel(), UPPER, joints=(Joint(kind, "P1", "P2", (0.0, 0.0, 18.0), fixings),))


def test_layers_go_by_the_area_where_they_lie_on_each_other() -> None:
    """400 x 120, the second one 100 further along and 20 further back: 300 x 100 = 0.03 m2."""
    assert counted(joined(JointKind.FACE_GLUED)) == {"layers": pytest.approx(0.03)}


@pytest.mark.parametrize(
    ("kind", "name", "key", "glued"),
    [
        (JointKind.DOWEL, "dowel", "dowel", 1),
        (JointKind.BISCUIT, "biscuit", "biscuit", 1),
        (JointKind.LOOSE_TENON, "loose tenon", "loose_tenon", 1),
        (JointKind.MITRE, "loose tongue", "small_part", 1),
        (JointKind.SCREWED, "wood screw", "screw", 0),
        (JointKind.SCREWED, "plug", "plug", 0),
        (JointKind.POCKET_SCREW, "pocket screw", "screw", 0),
        (JointKind.PINNED, "panel pin", "pin", 0),
        (JointKind.KNOCK_DOWN, "cam", "knock_down", 0),
        (JointKind.KNOCK_DOWN, "barrel nut", "knock_down", 0),
        (JointKind.HINGED, "butt hinge, 65 mm", "hinge", 0),
        (JointKind.HINGED, "countersunk screw", "screw", 0),
        (JointKind.SLIDING, "pair of side-mounted drawer slides", "slides", 0),
        (JointKind.RESTING, "shelf pin", "small_part", 0),
        (JointKind.CLIPPED, "plinth clip", "small_part", 0),
    ],
)
def test_what_is_done_with_each_article(kind: JointKind, name: str, key: str, glued: int) -> None:
    wanted = {key: 3} | ({"glued_joint": 1} if glued else {})
    assert counted(joined(kind, Fixing(name, 3))) == wanted


@pytest.mark.parametrize("name", ["cam bolt", "connecting bolt", "hinge plate"])
def test_what_goes_in_with_another_is_no_work_of_its_own(name: str) -> None:
    assert counted(joined(JointKind.KNOCK_DOWN, Fixing(name, 3))) == {}


def test_handles_are_known_by_whatever_name_they_have() -> None:
    fixings = (Fixing("Turned brass ring", 2), Fixing("handle screw", 4), Fixing(FOOT, 4))
    assert counted(unit_of(panel(), fixings=fixings)) == {"handle": 2, "foot": 4}


def test_a_drawer_and_a_slab_door() -> None:
    """One drawer is put together out of its front, sides, ends and bottom; a slab door isn't."""
    unit = unit_from(
        SIZE
        + "interior: {rows: [{height: 1 share, doors: {stock: ply, hung: overlay}}, "
        + "{height: 200, drawers: {count: 1, hung: overlay, front_stock: ply, stock: ply, "
        + "bottom: {stock: thin}}}]}\n"
    )
    found = counted(unit)
    assert (found["drawer"], found["slides"]) == (1, 1)
    assert "door" not in found
    assert found["hinge"] == sum(
        fixing.count
        for joint in unit.joints
        for fixing in joint.fixings
        if fixing.name.startswith("concealed hinge")
    )


def test_a_back_is_fitted_for_each_panel() -> None:
    unit = unit_from(SIZE + "back: {stock: thin, fixing: applied}\n")
    assert counted(unit)["back"] == sum(part.role is Role.BACK for part in unit.parts) == 1


def test_a_carcass_made_where_it_stands_counts_as_one() -> None:
    assert carcasses(unit_from(SIZE)) == 1
    assert carcasses(unit_from("opening: {width: 806, height: 906, depth: 320}\n")) == 1


def test_boards_by_themselves_are_no_carcass() -> None:
    assert carcasses(unit_of(panel())) == 0
