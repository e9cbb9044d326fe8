"""Along which directions joints close."""

from __future__ import annotations

import math

import pytest

from kit.specs import unit_from
from rodwright.geometry import Vector
from rodwright.making.bodies import body_of
from rodwright.making.closing import closes_along
from rodwright.making.sweeping import Sweeps
from rodwright.unit import JointKind, Unit

HALF = round(math.sqrt(0.5), 6)
DIAGONALS = {(HALF, 0.0, HALF), (HALF, 0.0, -HALF)}


def _axes(unit: Unit, kind: JointKind) -> set[Vector]:
    """The directions of all a unit's joints of a kind, each turned so that it leads to the right,
    the back or up; zero where they are free."""
    sweeps = Sweeps({part.ref: body_of(part) for part in unit.parts})
    found = set()
    for joint in unit.joints:
        if joint.kind is kind:
            for axis in closes_along(unit, joint, sweeps) or ((0.0, 0.0, 0.0),):
                sign = next((math.copysign(1, each) for each in axis if abs(each) > 1e-6), 1)
                x, y, z = (round(each * sign, 6) + 0.0 for each in axis)
                found.add((x, y, z))
    return found


@pytest.mark.parametrize(
    ("ends", "kind", "axes"),
    [
        ("dowelled", JointKind.DOWEL, {(1.0, 0.0, 0.0)}),
        ("biscuited", JointKind.BISCUIT, {(1.0, 0.0, 0.0)}),
        ("loose-tenoned", JointKind.LOOSE_TENON, {(1.0, 0.0, 0.0)}),
        ("{joint: knock-down, fitting: cam}", JointKind.KNOCK_DOWN, {(1.0, 0.0, 0.0)}),
        ("{joint: knock-down, fitting: barrel_nut}", JointKind.KNOCK_DOWN, {(0.0, 0.0, 0.0)}),
        ("screwed", JointKind.SCREWED, {(0.0, 0.0, 0.0)}),
        ("pocket-screwed", JointKind.POCKET_SCREW, {(0.0, 0.0, 0.0)}),
        ("housed", JointKind.HOUSING, {(0.0, 0.0, 0.0)}),
    ],
)
def test_a_shelf_comes_along_what_is_let_into_its_ends(
    ends: str, kind: JointKind, axes: set[Vector]
) -> None:
    unit = unit_from(f"""
size: {{width: 900, height: 700, depth: 300}}
carcass: {{stock: ply, corners: rebated}}
interior: {{shelves: {{count: 1, ends: {ends}}}}}
""")
    assert _axes(unit, kind) == axes


@pytest.mark.parametrize(
    ("reinforced", "axes"),
    [
        ("nothing", {(0.0, 0.0, 0.0)}),
        ("dowels", DIAGONALS),
        ("biscuits", DIAGONALS),
        ("loose_tongue", DIAGONALS | {(0.0, 1.0, 0.0)}),
    ],
)
def test_a_mitre_closes_square_to_itself_or_along_its_tongue(
    reinforced: str, axes: set[Vector]
) -> None:
    unit = unit_from(f"""
size: {{width: 900, height: 700, depth: 300}}
carcass: {{stock: ply, corners: {{joint: mitred, reinforced: {reinforced}}}}}
""")
    assert _axes(unit, JointKind.MITRE) == axes


def test_members_of_a_frame_come_along_their_dowels_and_it_all_onto_its_biscuits() -> None:
    unit = unit_from("""
size: {width: 1200, height: 900, depth: 300}
interior: {columns: [{width: 1 share}, {width: 1 share}]}
face_frame: {stock: ash, width: 45, thickness: 22, corners: butted, mid_stiles: 38}
""")
    assert _axes(unit, JointKind.DOWEL) == {(1.0, 0.0, 0.0), (0.0, 0.0, 1.0)}
    assert _axes(unit, JointKind.BISCUIT) == {(0.0, 1.0, 0.0)}


def test_under_a_slope_dowels_stand_square_to_the_cut() -> None:
    unit = unit_from("""
size: {width: 1400, height: 2000, depth: 400}
carcass: {stock: ply, corners: housed}
interior: {shelves: {count: 2}}
face_frame: {stock: ash, width: 45, thickness: 22, corners: butted}
slope: {falls: right, low: 1200, pitch: 45}
""")
    assert _axes(unit, JointKind.DOWEL) & DIAGONALS


def test_a_drawer_comes_along_its_slides() -> None:
    unit = unit_from("""
size: {width: 600, height: 400, depth: 400}
interior: {drawers: {count: 1, bottom: {stock: thin}}}
""")
    assert _axes(unit, JointKind.SLIDING) == {(0.0, 1.0, 0.0)}
