"""Lines of rods against where parts and workings lie: by unit.json alone, and by the solids."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from functools import cache
from typing import Any
from unittest.mock import patch

import numpy as np
import pytest
from hypothesis import HealthCheck, assume, given, settings

from kit.rod_places import AXES, NEAR, invented, missing, places_on
from kit.samples import bookcase
from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright.jobs.new import model_names, model_path
from rodwright.lengths import format_length
from rodwright.paper.rods.marks import Mark, own_marks, rows_of
from rodwright.paper.rods.pieces import refs_text
from rodwright.paper.rods.rods import Rod, rods_of
from rodwright.problems import ProblemsError
from rodwright.setout import set_out
from rodwright.solids.meshes import placed_mesh
from rodwright.unit import UPRIGHTS, Hole, JointKind, Part, Unit
from rodwright.wishes import read_spec


@cache
def model(name: str) -> Unit:
    return set_out(read_spec(model_path(name)))


@pytest.mark.parametrize("name", model_names())
def test_every_end_and_every_working_is_on_the_rods_where_unit_json_has_it(name: str) -> None:
    unit = model(name)
    assert list(missing(unit)) == []
    assert list(invented(unit)) == []


@given(wish=wishes())
@settings(
    max_examples=12, suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow]
)
def test_nothing_of_a_random_unit_is_missing_from_its_rods(wish: Wish) -> None:
    try:
        unit = unit_from("", **wish)
    except ProblemsError:
        assume(False)
    assert list(missing(unit)) == []
    assert list(invented(unit)) == []


def test_a_hole_that_a_rod_lacks_is_found() -> None:
    """What the tests above go by can fail."""
    unit = model("reading-alcove")
    side = unit.part("SD2")
    fewer = replace(side, workings=side.workings[:1])

    def forgetful(part: Part, *more: Any) -> Iterator[Mark]:
        return own_marks(fewer if part.ref == "SD2" else part, *more)

    with patch("rodwright.paper.rods.pieces.own_marks", forgetful):
        lacking = list(missing(unit))
    assert any("SD2 hole middle at 741.5" in each for each in lacking)


@pytest.mark.parametrize("name", ["reading-alcove", "pottery-dresser", "hostel-eaves"])
def test_every_flat_side_of_a_solid_is_on_its_rod(name: str) -> None:
    """Facets of the mesh that look along the rod, of upright panels along their height and depth,
    where no hole has a bottom."""
    unit = model(name)
    height, _, depth = rods_of(unit)
    for rod in (height, depth):
        axis, there = AXES[rod.name], places_on(rod)
        start = min(part.bounds().low[axis] for part in unit.parts)
        for part in unit.parts:
            if part.role not in UPRIGHTS:
                continue
            mesh = placed_mesh(part)
            level = abs(mesh.face_normals[:, axis]) > 1 - 1e-6
            looking = mesh.triangles_center[level][:, axis] - start
            assert len(looking) > 1
            on = np.array(there[part.ref])
            assert np.max(np.min(abs(looking[:, None] - on), axis=1)) < NEAR, part.ref


def texts(rod: Rod) -> dict[str, list[str]]:
    """What is told at each figure of a rod, in mm."""
    found: dict[str, list[str]] = {}
    for track in rod.tracks:
        for line in track.lines:
            found.setdefault(format_length(line.at, "mm"), []).append(line.text)
    return found


def drawers(slides: str) -> Unit:
    wish = f"{{drawers: {{count: 2, slides: {{{slides}}}}}}}"
    return unit_from(f"size: {{width: 600, height: 800, depth: 500}}\ninterior: {wish}\n")


def test_slides_are_told_on_the_upright_and_on_the_box_with_their_lower_edge() -> None:
    unit = drawers("kind: side, height: 40")
    height = rods_of(unit)[0]
    slides = [joint for joint in unit.joints if joint.kind is JointKind.SLIDING]
    assert len(slides) == 4
    for joint in slides:
        bounds = unit.part(joint.second).bounds()
        middle = (bounds.low[2] + bounds.high[2]) / 2
        for ref in (joint.first, joint.second):
            marks = {
                (mark.where, round(mark.at, 3))
                for track in height.tracks
                for piece in track.pieces
                for mark in piece.marks
                if ref in piece.refs and mark.what == "slide" and joint.second in mark.of
            }
            assert marks == {("middle line", middle), ("lower edge", middle - 20.0)}


def test_the_depth_rod_has_both_ends_of_a_slide_that_begins_before_the_upright() -> None:
    unit = model("tape-drawers")
    upright, box = unit.part("SD1").bounds(), unit.part("DRS7").bounds()
    assert box.low[1] < upright.low[1] - 1
    depth = rods_of(unit)[2]
    start = min(part.bounds().low[1] for part in unit.parts)
    found = {
        mark.where: mark.at
        for track in depth.tracks
        for piece in track.pieces
        for mark in piece.marks
        if "SD1" in piece.refs and mark.what == "slide" and "DRS7" in mark.of
    }
    assert found == {
        "front end": pytest.approx(box.low[1] - start),
        "rear end": pytest.approx(box.high[1] - start),
    }


@pytest.mark.parametrize(
    ("slides", "what"),
    [
        ("runners", "RN1, RN2 underside"),
        ("under", "slide for DRS1, DRS2, lower edge of the box"),
    ],
)
def test_what_drawers_run_on_is_on_the_upright(slides: str, what: str) -> None:
    height = rods_of(drawers(f"kind: {slides}"))[0]
    on = [track for track in height.tracks if any("SD1" in each.refs for each in track.pieces)]
    told = [line.text for track in on for line in track.lines]
    assert any(what in each for each in told), told


def test_rows_beside_each_other_that_differ_are_told_each_by_itself() -> None:
    """Hinge plates take the place of holes in the front row only."""
    wish = """
size: {width: 1200, height: 876, depth: 381}
carcass: {stock: ply, corners: housed}
interior:
  columns:
    - width: 1 share
      shelves: {count: 1, fixed: false}
      doors: {hung: overlay, count: 1, hinges: left}
    - {width: 1 share}
"""
    unit = unit_from(wish)
    side = unit.part("SD1")
    front = side.bounds().low[1]
    rows: dict[float, list[float]] = {}
    for each in side.workings:
        if isinstance(each, Hole) and each.use == "adjustable shelves":
            x, y = each.position
            there = side.placement.to_unit((x, y, 0.0))
            rows.setdefault(round(there[1] - front, 3), []).append(there[2])
    assert len({len(row) for row in rows.values()}) == 2
    told = texts(rods_of(unit)[0])
    runs = [(aside, run) for aside, row in rows.items() for run in rows_of(sorted(row))[0]]
    assert len(runs) >= 2
    for aside, row in runs:
        for at, which in ((min(row), "first"), (max(row), "last")):
            text = f"{which} of {len(row)}, {format_length(aside, 'mm')} from the front edge"
            assert any(text in each for each in told[format_length(at, "mm")]), text


def test_hinges_are_told_by_their_cups_plates_leaves_and_knuckles() -> None:
    told = texts(rods_of(model("linen-cupboard"))[0])
    for at in (119.5, 696.8, 1274.2, 1851.5):
        low, high = (told[format_length(at + by, "mm")] for by in (0.0, 65.0))
        assert any("hinge knuckle" in each and "lower end" in each for each in low)
        assert any("leaf recess" in each and "upper side" in each for each in high)
    every = [each for told in texts(rods_of(model("archive-wall"))[0]).values() for each in told]
    assert any("hinge plate hole for DO" in each for each in every)
    assert any("hinge cup hole" in each for each in every)


def test_a_mitred_frame_has_its_long_and_short_points() -> None:
    told = texts(rods_of(model("reading-alcove"))[0])
    assert "ST1, ST2 bottom end, long point; RL1 lower edge" in told["0"]
    assert "ST1, ST2 short point; RL1 upper edge" in told["45"]


def test_a_hung_unit_is_measured_from_its_lowest_point_and_one_on_feet_from_the_floor() -> None:
    text = "size: {width: 600, height: 800, depth: 300}\ninterior: {shelves: {count: 1}}\n"
    hung = rods_of(unit_from(text + "hung: true\nback: {stock: ply, fixing: rebated}\n"))[0]
    assert hung.datum == "the underside of the carcass (BT1, SD1, SD2)"
    feet = rods_of(unit_from(text + "base: {kind: levellers, height: 100}\n"))[0]
    assert feet.datum == "the floor, with the feet set to their height"
    assert min(line.at for track in feet.tracks for line in track.lines) == pytest.approx(100.0)


def test_feet_and_fixings_to_the_wall_are_told_where_the_trade_has_them() -> None:
    text = "size: {width: 600, height: 800, depth: 300}\ninterior: {shelves: {count: 1}}\n"
    unit = unit_from(text + "base: {kind: levellers, height: 100}\n")
    _, width, depth = map(texts, rods_of(unit))
    for told, figures in ((width, ("60", "540")), (depth, ("60", "240"))):
        assert all("outermost feet, middle" in told[figure] for figure in figures)
    hung = unit_from(text + "hung: true\nback: {stock: ply, fixing: rebated}\n")
    height, width, _ = map(texts, rods_of(hung))
    assert "upper fixings to the wall, middle" in height["750"]
    assert all("outermost fixings to the wall, middle" in width[at] for at in ("50", "550"))


def test_a_unit_of_one_board_has_its_two_ends_on_each_rod() -> None:
    unit = bookcase()
    shelf = replace(unit, parts=unit.parts[3:4], joints=())
    figures = [
        [(line.at, line.text) for track in rod.tracks for line in track.lines]
        for rod in rods_of(shelf)
    ]
    assert figures == [
        [(482.0, "SH1 underside"), (500.0, "SH1 upper face")],
        [(0.0, "SH1 left end"), (776.0, "SH1 right end")],
        [(0.0, "SH1 front edge"), (300.0, "SH1 rear edge")],
    ]


def test_refs_are_told_in_runs_and_layers_apart() -> None:
    refs = ["SH2b", "SH10", "SH1a", "SH2a", "SH1b", "SH3a", "SH9", "SH8"]
    assert refs_text(refs) == "SH8-SH10, SH1a-SH3a, SH1b, SH2b"
    assert not refs_text([])
    assert refs_text(["A1", "A3", "A5"], 2) == "A1 and others, 3 pieces"


def test_places_in_equal_steps_are_rows() -> None:
    row = [100.0 + 32 * number for number in range(6)]
    assert rows_of([10.0, 70.0, *row, 300.0]) == ([row], [10.0, 70.0, 300.0])
    assert rows_of([1.0, 2.0, 3.0, 4.0]) == ([], [1.0, 2.0, 3.0, 4.0])
    assert rows_of([]) == ([], [])
