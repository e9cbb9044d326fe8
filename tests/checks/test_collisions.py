"""Overlaps, gaps and joints against closed forms, shapely, manifold3d and CadQuery."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

import manifold3d
import numpy as np
import pytest
import trimesh
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import affinity
from shapely.geometry import Polygon
from shapely.geometry import box as rectangle

from kit.samples import PLYWOOD, X, Y, bookcase
from rodwright.checks import check_solids
from rodwright.checks.closed_meshes import ClosedMesh, gap, overlap
from rodwright.checks.collisions import check_meshes
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.geometry import Box
from rodwright.solids import location_of, solid_of
from rodwright.solids.meshes import placed_mesh
from rodwright.unit import (
    Blank,
    Clearance,
    Grain,
    Housing,
    Joint,
    JointKind,
    Notch,
    Part,
    Placement,
    Role,
    Surface,
    Unit,
)


def _block(ref: str, x: float, y: float = 0.0, z: float = 0.0, turn: float = 0.0) -> Part:
    """A block 100 x 50 x 20, turned about its lower corner in plan."""
    angle = np.radians(turn)
    cos, sin = float(np.cos(angle)), float(np.sin(angle))
    blank = Blank(100.0, 50.0, 20.0, PLYWOOD, Grain.LENGTHWISE)
    return Part(
        ref,
        f"Block {ref}",
        Role.SHELF,
        "Blocks",
        blank,
        Placement((x, y, z), (cos, sin, 0.0), (-sin, cos, 0.0)),
    )


def _unit(parts: Sequence[Part], **more: object) -> Unit:
    return Unit("Blocks", Box((0, 0, 0), (1, 1, 1)), tuple(parts), **more)  # type: ignore[arg-type]


def _found(*parts: Part, **more: object) -> tuple[Finding, ...]:
    return check_solids(_unit(parts, **more))


@pytest.mark.parametrize(
    ("reach", "found"), [(-1.0, 0), (0.0, 0), (0.005, 0), (0.0099, 0), (0.02, 1), (3.0, 1)]
)
def test_overlap_deeper_than_a_hundredth_is_found(reach: float, found: int) -> None:
    findings = _found(_block("A", 0.0), _block("B", 100.0 - reach))
    assert [finding.rule for finding in findings] == [Rule.COLLISION] * found
    if findings:
        assert findings[0].figure == pytest.approx(reach, abs=3e-3)
        assert findings[0].parts == ("A", "B")
        assert findings[0].place == pytest.approx((100 - reach / 2, 25, 10), abs=3e-3)
        assert "Block A (A)" in findings[0].message
        assert findings[0].severity is Severity.ERROR


def test_a_joint_excuses_touching_but_not_overlapping() -> None:
    joint = Joint(JointKind.BUTT, "A", "B", (100.0, 25.0, 10.0))
    assert not _found(_block("A", 0.0), _block("B", 100.0), joints=(joint,))
    findings = _found(_block("A", 0.0), _block("B", 99.0), joints=(joint,))
    assert [finding.rule for finding in findings] == [Rule.COLLISION]


@pytest.mark.parametrize(("gap", "found"), [(0.0, 0), (0.04, 0), (0.06, 1), (5.0, 1), (900.0, 1)])
def test_a_joint_whose_parts_do_not_meet_is_an_error(gap: float, found: int) -> None:
    joint = Joint(JointKind.BUTT, "B", "A", (100.0, 25.0, 10.0))
    findings = _found(_block("A", 0.0), _block("B", 100.0 + gap), joints=(joint,))
    assert [finding.rule for finding in findings] == [Rule.JOINT_APART] * found
    assert [finding.figure for finding in findings] == pytest.approx([gap] * found)


@pytest.mark.parametrize(("gap", "found"), [(0.0, 1), (1.9, 1), (2.0, 0), (2.5, 0)])
def test_asked_clearance(gap: float, found: int) -> None:
    clearance = Clearance("A", "B", 2.0)
    parts = (_block("A", 0.0), _block("B", 100.0 + gap))
    findings = _found(*parts, clearances=(clearance,))
    told = [(finding.severity, finding.rule) for finding in findings]
    assert told == [(Severity.ERROR, Rule.CLEARANCE_SHORT)] * found
    assert [finding.figure for finding in findings] == pytest.approx([gap] * found)


@pytest.mark.parametrize(("gap", "found"), [(0.0, 0), (0.5, 1), (1.0, 0)])
def test_least_gap_between_parts_that_are_not_joined(gap: float, found: int) -> None:
    parts = (_block("A", 0.0), _block("B", 100.0 + gap))
    findings = _found(*parts, least_gap=1.0)
    told = [(finding.severity, finding.rule) for finding in findings]
    assert told == [(Severity.WARNING, Rule.CLEARANCE_SHORT)] * found
    joint = Joint(JointKind.RESTING, "A", "B", (100.0, 25.0, 10.0))
    assert not _found(*parts, joints=(joint,), least_gap=1.0)


@pytest.mark.parametrize(("second", "words"), [("Z", "no part of the unit"), ("A", "twice")])
def test_refs_that_make_no_pair_are_refused(second: str, words: str) -> None:
    parts = (_block("A", 0.0), _block("B", 200.0))
    with pytest.raises(ValueError, match=words):
        _found(*parts, clearances=(Clearance("A", second, 1.0),))
    with pytest.raises(ValueError, match=words):
        _found(*parts, joints=(Joint(JointKind.BUTT, "A", second, (0.0, 0.0, 0.0)),))


def test_open_meshes_are_refused() -> None:
    whole = placed_mesh(_block("A", 0.0))
    with_hole = trimesh.Trimesh(whole.vertices, whole.faces[1:], process=False)
    with pytest.raises(ValueError, match="closed"):
        overlap(ClosedMesh(with_hole), ClosedMesh(placed_mesh(_block("B", 50.0, 10.0))))


@pytest.mark.parametrize("turn", [0.0, 1e-3])
def test_a_block_inside_another_is_as_deep_as_it_is_thin(turn: float) -> None:
    """Boxes square to the axes go by their bounds, others by their solids; both agree."""
    blank = Blank(10.0, 8.0, 4.0, PLYWOOD, Grain.LENGTHWISE)
    inner = replace(_block("B", 30.0, 20.0, 5.0, turn), blank=blank)
    (finding,) = _found(_block("A", 0.0), inner)
    assert finding.figure == pytest.approx(4.0, abs=1e-3)
    assert finding.place == pytest.approx((35.0, 24.0, 7.0), abs=0.01)


def test_a_small_notch_makes_a_panel_no_plain_box() -> None:
    """A peg in a notch of a hundred-thousandth of the panel touches, but doesn't collide."""
    panel = replace(_block("A", 0.0), blank=Blank(2400.0, 600.0, 18.0, PLYWOOD, Grain.LENGTHWISE))
    notched = replace(panel, workings=(Notch(0.0, 0.0, 4.0, 4.0),))
    peg = replace(_block("B", 0.0), blank=Blank(4.0, 4.0, 18.0, PLYWOOD, Grain.LENGTHWISE))
    assert [finding.rule for finding in _found(panel, peg)] == [Rule.COLLISION]
    assert not _found(notched, peg)


@pytest.mark.parametrize("far", [150.0, 900.0, 5000.0])
def test_gap_of_far_turned_blocks_is_exact(far: float) -> None:
    first, second = _block("A", 0.0), _block("B", far, 30.0, 0.0, 30.0)
    outline = rectangle(0, 0, 100, 50)
    turned = affinity.translate(affinity.rotate(outline, 30.0, origin=(0, 0)), far, 30.0)
    found, _ = gap(ClosedMesh(placed_mesh(first)), ClosedMesh(placed_mesh(second)))
    assert found == pytest.approx(outline.distance(turned), abs=1e-4)


def test_findings_keep_the_order_of_the_parts() -> None:
    blocks = [_block(ref, x) for ref, x in zip("DBCA", (0.0, 90.0, 180.0, 270.0), strict=True)]
    joint = Joint(JointKind.BUTT, "A", "D", (0.0, 0.0, 0.0))
    pairs = [finding.parts for finding in _found(*blocks, joints=(joint,))]
    assert pairs == [("D", "B"), ("D", "A"), ("B", "C"), ("C", "A")]


@settings(max_examples=60)
@given(st.floats(-150, 150), st.floats(-150, 150), st.floats(0, 180))
def test_turned_blocks_against_shapely(x: float, y: float, turn: float) -> None:
    """Volume of overlap and distance of blocks turned in plan, by plane geometry."""
    first, second = _block("A", 0.0), _block("B", x, y, 5.0, turn)
    outline = rectangle(0, 0, 100, 50)
    turned = affinity.translate(affinity.rotate(outline, turn, origin=(0, 0)), x, y)
    common, distance = outline.intersection(turned), outline.distance(turned)
    shared = overlap(ClosedMesh(placed_mesh(first)), ClosedMesh(placed_mesh(second)))
    if shared is not None:
        assert shared.volume == pytest.approx(common.area * 15.0, rel=1e-4, abs=0.1)
    else:
        assert common.area == 0 or _thinnest(common) < 0.02
    if distance > 0.02:
        clearance = Clearance("A", "B", 40.0)
        findings = _found(first, second, clearances=(clearance,))
        assert bool(findings) == (distance < 40.0 - 0.01)
        assert [finding.figure for finding in findings] == pytest.approx(
            [distance] * len(findings), abs=1e-3
        )


def _thinnest(shape: Polygon) -> float:
    if shape.area == 0:
        return 0.0
    corners = shape.minimum_rotated_rectangle.exterior.coords
    sides = [np.hypot(*np.subtract(a, b)) for a, b in pairwise(corners)]
    return float(min(sides))


@settings(max_examples=25)
@given(st.floats(1, 30), st.floats(1, 30), st.floats(1, 15), st.floats(5, 85))
def test_overlap_volume_against_manifold_and_cadquery(
    x: float, y: float, z: float, turn: float
) -> None:
    first, second = _block("A", 0.0), _block("B", x, y, z, turn)
    shared = overlap(ClosedMesh(placed_mesh(first)), ClosedMesh(placed_mesh(second)))
    assert shared is not None
    solids = [solid_of(part.shape).moved(location_of(part)) for part in (first, second)]
    assert shared.volume == pytest.approx(solids[0].intersect(solids[1]).Volume(), rel=1e-4)
    bodies = [_manifold(placed_mesh(part)) for part in (first, second)]
    assert shared.volume == pytest.approx((bodies[0] ^ bodies[1]).volume(), rel=1e-4)
    together = (bodies[0] + bodies[1]).volume()  # by the union, another road of manifold3d's
    assert shared.volume == pytest.approx(200_000.0 - together, rel=1e-4)


def _manifold(mesh: trimesh.Trimesh) -> manifold3d.Manifold:
    return manifold3d.Manifold(
        manifold3d.Mesh64(
            np.asarray(mesh.vertices, dtype=np.float64), np.asarray(mesh.faces, dtype=np.uint64)
        )
    )


def test_a_whole_unit_is_clean_and_a_shifted_shelf_is_not() -> None:
    unit = bookcase()
    assert check_solids(unit) == ()
    shelf = unit.part("SH1")
    origin = shelf.placement.origin
    moved = replace(shelf, placement=Placement((origin[0] + 1.0, origin[1], origin[2]), X, Y))
    shifted = replace(unit, parts=tuple(moved if p is shelf else p for p in unit.parts))
    findings = {finding.parts: finding for finding in check_solids(shifted)}
    assert findings[("SD2", "SH1")].figure == pytest.approx(1.0, abs=3e-3)
    assert findings[("SD2", "SH1")].place == pytest.approx((788.5, 150, 491), abs=0.01)
    assert ("SD1", "SH1") not in findings  # it still meets the housing's walls


@pytest.mark.parametrize(("depth", "found"), [(5.0, 1.0), (5.98, 0.02), (6.0, None), (7.0, None)])
def test_housing_too_shallow_for_its_shelf(depth: float, found: float | None) -> None:
    """Too deep a housing leaves air behind the shelf's end, but its walls still meet the shelf."""
    unit = bookcase()
    side = unit.part("SD1")
    cut = [
        replace(working, depth=depth)
        if working == Housing(Surface.REVERSE, 482.0, 18.0, 6.0)
        else working
        for working in side.workings
    ]
    changed = replace(side, workings=tuple(cut))
    findings = check_solids(
        replace(unit, parts=tuple(changed if p is side else p for p in unit.parts))
    )
    assert {each.parts: each.figure for each in findings} == (
        {("SD1", "SH1"): pytest.approx(found, abs=3e-3)} if found else {}
    )
    for each in findings:
        assert each.message.startswith("Left side (SD1) and Shelf (SH1) run into each other")


def test_a_shelf_that_leaves_its_housing_no_longer_meets_it() -> None:
    unit = bookcase()
    shelf = unit.part("SH1")
    short = replace(
        shelf,
        blank=replace(shelf.blank, length=700.0),
        placement=Placement((50.0, 0.0, 482.0), X, Y),
    )
    changed = replace(unit, parts=tuple(short if p is shelf else p for p in unit.parts))
    found = {finding.parts: finding.figure for finding in check_solids(changed)}
    assert found == {
        ("SD1", "SH1"): pytest.approx(32.0),
        ("SD2", "SH1"): pytest.approx(32.0),
    }


def test_check_meshes_takes_any_meshes() -> None:
    ball = trimesh.creation.icosphere(radius=60.0)
    unit = _unit([_block("A", 0.0), _block("B", 0.0)])
    meshes = {"A": placed_mesh(unit.part("A")), "B": ball}
    assert [finding.rule for finding in check_meshes(unit, meshes)] == [Rule.COLLISION]
