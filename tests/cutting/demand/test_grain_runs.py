"""Fronts through which the grain runs on become one piece, in the order in which they stand."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import box as rectangle

from kit.specs import unit_from
from rodwright.cutting.demand import DemandError, Job, lots_of
from rodwright.cutting.pieces import Inner, Piece
from rodwright.cutting.work import Lot
from rodwright.unit import Part, Unit

SIZE = "size: {width: 900, height: 1200, depth: 400}\n"
KERF = 3.2


def fronts_lot(unit: Unit) -> Lot:
    return next(
        lot
        for lot in lots_of([Job(unit)], kerf=KERF)
        if any("front" in label.part for each in lot.labels.values() for label in each)
    )


def run_of(lot: Lot) -> Piece:
    (piece,) = (piece for piece in lot.pieces if piece.inner)
    return piece


def in_the_unit(part: Part) -> tuple[float, float]:
    """The middle of a front: to the right, and up."""
    x, _, z = part.bounds().centre
    return x, z


def test_drawer_fronts_above_each_other() -> None:
    """Three fronts 896 wide, edged 1 mm all round, lie above each other with a cut between."""
    text = SIZE + (
        "interior: {continuous_grain: true, drawers: {fronts: [1 share, 200, 300]}}\n"
        "edging: {material: birch, thickness: 1, edges: [drawers]}\n"
    )
    unit = unit_from(text)
    lot = fronts_lot(unit)
    run = run_of(lot)
    sizes = {ref: unit.part(ref).rough_size for ref in ("DRF1", "DRF2", "DRF3")}
    width = unit.part("DRF1").blank.length - 2
    assert (run.name, run.count, run.turning) == ("DRF1 to DRF3", 1, False)
    assert (run.length, run.width) == pytest.approx(
        (width, sum(size[1] for size in sizes.values()) + 2 * KERF)
    )
    assert sizes["DRF2"][1] == pytest.approx(198)
    assert run.inner == (
        Inner("DRF1", 0.0, pytest.approx(298 + 198 + 2 * KERF), width, sizes["DRF1"][1]),
        Inner("DRF2", 0.0, pytest.approx(298 + KERF), width, pytest.approx(198)),
        Inner("DRF3", 0.0, 0.0, width, pytest.approx(298)),
    )
    (label,) = lot.labels["DRF1 to DRF3"]
    assert label.part == "3 fronts in one piece"
    assert label.notes == (
        "cut out of it, seen from the face: DRF1, DRF2, DRF3, from the top; the grain runs on "
        "through them",
    )
    (second,) = lot.labels["DRF2"]
    assert second.ref == "DRF2"
    assert second.notes[0] == (
        "one piece with its neighbours, for the grain: DRF1, DRF2, DRF3, from the top"
    )


def test_a_pair_of_doors() -> None:
    """Their grain stands up, so they lie side by side across it: seen with the grain to the right,
    the right one comes first."""
    unit = unit_from(SIZE + "interior: {continuous_grain: true, doors: 2}\n")
    left, right = sorted(("DO1", "DO2"), key=lambda ref: in_the_unit(unit.part(ref))[0])
    run = run_of(lots_of([Job(unit)], kerf=KERF)[0])
    placed = {inner.name: (inner.x, inner.y) for inner in run.inner}
    assert placed[right] == (0.0, 0.0)
    assert placed[left] == (0.0, pytest.approx(unit.part(right).blank.width + KERF))
    assert [inner.name for inner in run.inner] == [left, right]


def test_rows_and_columns() -> None:
    """Two columns of drawers, not alike: each column is read from the top."""
    text = SIZE + (
        "interior: {continuous_grain: true, columns: [{width: 1 share, drawers: 2}, "
        "{width: 1 share, drawers: 3}]}\n"
    )
    run = run_of(fronts_lot(unit_from(text)))
    assert [inner.name for inner in run.inner] == ["DRF1", "DRF2", "DRF3", "DRF4", "DRF5"]


def test_fronts_that_fill_no_rectangle_are_as_few_pieces_as_they_can_be() -> None:
    """A door as high as two of three drawers beside it."""
    text = SIZE + (
        "interior: {continuous_grain: true, columns: [{width: 300, drawers: 3}, "
        "{width: 1 share, rows: [{height: 300, shelves: 1}, {height: 1 share, drawers: 2}]}]}\n"
    )
    pieces = [each for each in fronts_lot(unit_from(text)).pieces if each.inner]
    assert [[inner.name for inner in each.inner] for each in pieces] == [
        ["DRF1", "DRF2", "DRF3"],
        ["DRF4", "DRF5"],
    ]


def test_a_run_that_goes_on_no_sheet_is_told_as_one() -> None:
    unit = unit_from(SIZE + "interior: {continuous_grain: true, drawers: 5}\n")
    small = replace(unit.part("DRF1").blank.stock, size=(2440.0, 600.0))
    parts = tuple(
        replace(part, blank=replace(part.blank, stock=small))
        if part.blank.stock.name == small.name
        else part
        for part in unit.parts
    )
    with pytest.raises(DemandError) as caught:
        lots_of([Job(replace(unit, parts=parts))], kerf=KERF)
    (refusal,) = caught.value.refusals
    assert refusal.refs == ("DRF1", "DRF2", "DRF3", "DRF4", "DRF5")
    assert refusal.message.startswith(
        "5 fronts in one piece (DRF1, DRF2, DRF3, DRF4, DRF5) needs 860 x "
    )
    assert refusal.remedy.endswith("or say `continuous_grain` of smaller spaces.")


def test_fronts_of_solid_wood_follow_each_other_along_a_board_and_over_no_joint() -> None:
    oak = (
        "stock:\n  ply: {kind: sheet, material: birch plywood, thickness: 18}\n"
        "  oak: {kind: board, material: european oak, thickness: 20}\n"
    )
    fronts = "drawers: {fronts: [120], front_stock: oak}"
    rows = f"rows: [{{height: 1 share, shelves: 1}}, {{height: 124, {fronts}}}]"
    columns = f"[{{width: 1 share, {rows}}}, {{width: 300, {rows}}}]"
    row = f"interior: {{continuous_grain: true, columns: {columns}}}\n"
    lots = {lot.kind: lot for lot in lots_of([Job(unit_from(SIZE + row + oak))], kerf=KERF)}
    assert run_of(lots["board"]).name == "DRF1 to DRF2"
    stacked = "interior: {continuous_grain: true, drawers: {count: 3, front_stock: oak}}\n"
    with pytest.raises(DemandError) as caught:
        lots_of([Job(unit_from(SIZE + stacked + oak))], kerf=KERF)
    (refusal,) = caught.value.refusals
    assert refusal.message.startswith("3 fronts in one piece (DRF1, DRF2, DRF3) needs 860 x ")
    assert refusal.message.endswith(" mm, and no board of `oak` is so large")


@given(
    st.lists(st.integers(1, 4), min_size=1, max_size=4),
    st.integers(0, 12),
)
def test_fronts_stand_in_their_piece_as_in_the_unit(counts: list[int], kerf: int) -> None:
    """Whatever columns of drawers there are: each front's neighbour to the right and above it in
    the unit is so in the piece, no two are nearer than the cut, and all are within it."""
    columns = ", ".join(f"{{width: 1 share, drawers: {count}}}" for count in counts)
    inside = f"columns: [{columns}]" if len(counts) > 1 else f"drawers: {counts[0]}"
    if sum(counts) < 2:
        return
    unit = unit_from(
        "size: {width: 1800, height: 1000, depth: 400}\n"
        f"interior: {{continuous_grain: true, {inside}}}\n"
    )
    lots = lots_of([Job(unit)], kerf=float(kerf))
    (run,) = (piece for lot in lots for piece in lot.pieces if piece.inner)
    assert sorted(each.name for each in run.inner) == sorted(
        part.ref for part in unit.parts if part.grain_run
    )
    shapes = [
        rectangle(each.x, each.y, each.x + each.length, each.y + each.width) for each in run.inner
    ]
    whole = rectangle(0, 0, run.length, run.width).buffer(1e-6)
    assert all(whole.contains(shape) for shape in shapes)
    for number, one in enumerate(run.inner):
        here = in_the_unit(unit.part(one.name))
        for other, shape in zip(run.inner[:number], shapes, strict=False):
            assert shapes[number].distance(shape) >= kerf - 1e-6
            there = in_the_unit(unit.part(other.name))
            for axis, at, to in ((0, one.x, other.x), (1, one.y, other.y)):
                extent = (one.length, one.width)[axis] / 2, (other.length, other.width)[axis] / 2
                if abs(here[axis] - there[axis]) > sum(extent):
                    assert (here[axis] > there[axis]) == (at + extent[0] > to + extent[1])
