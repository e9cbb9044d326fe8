"""Drawings of part sheets: nothing overlaps, nothing is cut off, every figure is there."""

from __future__ import annotations

import itertools
import math
import re
import shutil
import subprocess
from pathlib import Path

import pytest
import shapely
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from pypdf import PdfReader

from kit.overlaps import overlaps
from kit.panels import unit_of
from kit.samples import PLYWOOD, X, Y, bookcase
from kit.strategies import shapes
from rodwright.paper.part_sheets.drawing import LYING, MARGINS, drawings
from rodwright.paper.part_sheets.room import spread
from rodwright.paper.part_sheets.section import part_sheet_files, part_sheets_section
from rodwright.paper.part_sheets.sheets import Laid, laid_sheets
from rodwright.pictures.ink import Drawing, Lettering, Stroke
from rodwright.setout import set_out
from rodwright.unit import Blank, Grain, Hole, Part, Placement, Role, ShapeKey, Surface, Unit
from rodwright.wishes import read_spec

MODELS = sorted(Path(__file__).parents[3].glob("models/*.yaml"))
EIGHT_POINTS = 8 * 25.4 / 72


def faults(drawing: Drawing) -> list[str]:
    """Texts that overlap anything, are too small, or don't lie on the page; lines that don't."""
    page = shapely.box(0, 0, drawing.width, drawing.height)
    found = list(overlaps(drawing))
    for mark in drawing.marks:
        if isinstance(mark, Lettering) and mark.size < EIGHT_POINTS:
            found.append(f"{mark.text} is too small")
        if isinstance(mark, Stroke) and not page.covers(shapely.MultiLineString(mark.lines)):
            found.append(f"a line {mark.width} wide is cut off")
    return found


def held(laid: Laid) -> None:
    page = LYING[laid.sheet.unit]
    for shown in drawings(laid, page):
        drawing = shown.drawing
        assert faults(drawing) == [], drawing.title
        assert drawing.width <= page[0] - MARGINS[0]
        assert drawing.height <= page[1] - MARGINS[1]


@pytest.mark.parametrize("model", MODELS, ids=lambda path: path.stem)
def test_nothing_overlaps_in_any_model(model: Path) -> None:
    for laid in laid_sheets(set_out(read_spec(model))):
        held(laid)


@given(shape=shapes(12), unit=st.sampled_from(["mm", "in"]))
@settings(
    max_examples=60,
    suppress_health_check=[
        HealthCheck.too_slow,
        HealthCheck.filter_too_much,
        HealthCheck.data_too_large,
    ],
)
def test_nothing_overlaps_on_any_piece(shape: ShapeKey, unit: str) -> None:
    (laid,) = laid_sheets(piece(shape, unit))
    held(laid)


def piece(shape: ShapeKey, unit: str = "mm", name: str = "Piece") -> Unit:
    blank = Blank(*shape[0], PLYWOOD, Grain.LENGTHWISE)
    part = Part("P1", name, Role.PACKER, "Test", blank, Placement((0.0, 0.0, 0.0), X, Y), shape[1])
    return unit_of(part, display_unit=unit)


@pytest.mark.parametrize(
    "shape",
    [
        ((12000.0, 600.0, 40.0), (Hole(Surface.FACE, (11990.0, 590.0), 8.0, 12.0),)),
        ((2400.0, 12.0, 8.0), ()),
        ((60.0, 20.0, 6.0), tuple(Hole(Surface.FACE, (6.0 + 3 * i, 10.0), 2.0) for i in range(16))),
        (
            (1200.0, 400.0, 18.0),
            tuple(
                Hole(Surface.FACE, (20.0 + 9.7 * i, 20.0 + 3.1 * (i * 37 % 120)), 4.0, 5.0 + i % 3)
                for i in range(120)
            ),
        ),
    ],
    ids=["longer than the page", "a lath", "small", "a hundred and twenty holes"],
)
def test_what_is_awkward_is_readable(shape: ShapeKey) -> None:
    (laid,) = laid_sheets(piece(shape))
    held(laid)


@given(
    places=st.lists(st.floats(0, 100), min_size=1, max_size=20).map(sorted),
    apart=st.floats(0.5, 5),
)
def test_labels_are_spread_with_the_least_moves(places: list[float], apart: float) -> None:
    """Apart and in order; and no single label could be nearer its place."""
    low, high = -60.0, 160.0
    found = spread(places, apart, low, high)
    for one, other in itertools.pairwise(found):
        assert other - one >= apart - 1e-9
    assert low - 1e-9 <= found[0]
    assert found[-1] <= high + 1e-9
    for number, (place, at) in enumerate(zip(places, found, strict=True)):
        nearer = at + math.copysign(min(1e-3, abs(place - at)), place - at)
        free = [abs(other - nearer) >= apart - 1e-6 for k, other in enumerate(found) if k != number]
        assert abs(place - at) < 1e-6 or not all(free)


def test_labels_without_room_are_refused() -> None:
    with pytest.raises(ValueError, match="no room for 5 labels"):
        spread([0.0] * 5, 3.0, 0.0, 10.0)


def plain(text: str) -> str:
    return re.sub(r"\s+", "", text)


@pytest.mark.parametrize("name", ["hallway-bookcase", "linen-cupboard"])
def test_the_pdf_has_every_figure_as_text(name: str, tmp_path: Path) -> None:
    unit = set_out(read_spec(next(each for each in MODELS if each.stem == name)))
    section, files = part_sheets_section(unit), part_sheet_files(unit)
    assert files == part_sheet_files(unit)
    path = tmp_path / "sheets.pdf"
    path.write_bytes(files["part-sheets.pdf"])
    text = plain(" ".join(page.extract_text() for page in PdfReader(path).pages))
    for sheet in section.data["sheets"]:
        for fact in sheet["facts"]:
            assert plain(fact[1]) in text, fact
        for row in (row for view in sheet["views"] for b in view["blocks"] for row in b["rows"]):
            for cell in row.values():
                assert plain(cell) in text, cell
    if shutil.which("qpdf"):
        subprocess.run(["qpdf", "--check", str(path)], check=True, capture_output=True)


def test_names_in_any_letters_are_set(tmp_path: Path) -> None:
    unit = piece(((400.0, 120.0, 18.0), ()), name="Полка № 1 " + "длинная " * 49)
    path = tmp_path / "sheets.pdf"
    path.write_bytes(part_sheet_files(unit)["part-sheets.pdf"])
    assert "Полка№1длинная" in plain(PdfReader(path).pages[0].extract_text())


def test_a_bookcase_has_a_page_a_part_or_more(tmp_path: Path) -> None:
    path = tmp_path / "sheets.pdf"
    path.write_bytes(part_sheet_files(bookcase())["part-sheets.pdf"])
    pages = [page.extract_text() for page in PdfReader(path).pages]
    sheets = laid_sheets(bookcase())
    assert len(pages) >= len(sheets)
    for laid in sheets:
        assert any(laid.sheet.refs[0] in page for page in pages)
