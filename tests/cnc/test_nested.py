"""Nested sheets read back from their DXF: nothing overlaps, all keeps the tool's distance."""

from __future__ import annotations

from itertools import combinations
from pathlib import Path

import pytest
from shapely.geometry import Point, Polygon

import rodwright
from kit.machine_reader import areas, outline, read
from rodwright.cnc.dxf import shapes_dxf
from rodwright.cnc.nested import NestedSheet, nested_sheets
from rodwright.cnc.part_shapes import PartShapes, part_shapes
from rodwright.cnc.shapes import Circle, Move
from rodwright.handover.cut_sequence import steps_of
from rodwright.handover.products import products
from rodwright.jobs.cut import Asked
from rodwright.unit import Unit

MODELS = ("reading-alcove", "tape-drawers", "hallway-bookcase", "boot-room")
TOOL = 6.0


@pytest.fixture(scope="module", params=MODELS)
def nested(
    request: pytest.FixtureRequest,
) -> tuple[Unit, dict[str, PartShapes], tuple[NestedSheet, ...]]:
    spec = rodwright.read_spec(Path("models").resolve() / f"{request.param}.yaml")
    unit = rodwright.set_out(spec)
    drawn = {
        piece.ref: shapes
        for shapes in (part_shapes(each) for each in products(unit, "cut"))
        for piece in shapes.product.shop.pieces
    }
    plan = rodwright.cut([spec], asked=Asked(free=True, kerf="6 mm"))
    return unit, drawn, nested_sheets(steps_of(plan), drawn)


def test_parts_lie_on_their_sheets_and_keep_the_tools_distance(
    nested: tuple[Unit, dict[str, PartShapes], tuple[NestedSheet, ...]],
) -> None:
    _, _, sheets = nested
    assert sheets
    for sheet in sheets:
        document = read(shapes_dxf(sheet.shapes))
        (whole,) = areas(document, "SHEET")
        usable = (areas(document, "SHEET_TRIMMED") or [whole])[0].buffer(0.01)
        parts = areas(document, "OUTLINE")
        # A part's own holes are outlines too, inside it; notches are no shapes of their own.
        outer = [it for it in parts if not any(o is not it and o.contains(it) for o in parts)]
        assert len(outer) == len(sheet.refs)
        assert all(usable.contains(each) for each in outer)
        assert all(one.distance(two) > TOOL - 0.15 for one, two in combinations(outer, 2))
        offcuts = areas(document, "OFFCUT")
        assert all(each.intersection(other).area < 1 for each in offcuts for other in outer)


def test_every_sheet_part_is_nested_once(
    nested: tuple[Unit, dict[str, PartShapes], tuple[NestedSheet, ...]],
) -> None:
    unit, _, sheets = nested
    refs = [ref for sheet in sheets for ref in sheet.refs]
    assert len(refs) == len(set(refs))
    wanted = {part.ref for part in unit.parts if part.blank.stock.kind == "sheet"}
    assert set(refs) == wanted


def test_parts_on_sheets_are_the_parts_and_their_holes_come_along(
    nested: tuple[Unit, dict[str, PartShapes], tuple[NestedSheet, ...]],
) -> None:
    _, drawn, sheets = nested
    for sheet in sheets:
        parts = areas(read(shapes_dxf(sheet.shapes)), "OUTLINE")
        whole = [ref for ref in sheet.refs if ref not in sheet.bare]
        wanted = sum(outline(read(shapes_dxf(drawn[ref].cut))).area for ref in whole)
        assert wanted <= sum(each.area for each in parts) + 1
        circles = [it for it in sheet.shapes if isinstance(it, Circle)]
        assert len(circles) == sum(isinstance(it, Circle) for ref in whole for it in drawn[ref].cut)
        for circle in circles:
            assert any(each.contains(Point(circle.centre)) for each in parts)


@pytest.mark.parametrize("quarters", range(4))
def test_a_turned_piece_fills_its_box_and_is_never_mirrored(quarters: int) -> None:
    move = Move(100.0, 50.0, 30.0, 20.0, quarters)
    corners = [move.point(at) for at in ((0, 0), (30, 0), (30, 20), (0, 20))]
    shape = Polygon(corners)
    assert shape.exterior.is_ccw
    wide, high = (30.0, 20.0) if quarters % 2 == 0 else (20.0, 30.0)
    assert shape.bounds == (100.0, 50.0, 100.0 + wide, 50.0 + high)
