"""Plans to cut by: what is drawn of them, and that no lettering runs over a line or over other."""

from __future__ import annotations

import re
import subprocess
import sys
from io import BytesIO
from itertools import combinations, pairwise
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
from hypothesis import given, settings
from PIL import Image
from shapely import LineString, MultiLineString, Polygon, box, unary_union

from kit.cut_sheets import sheets
from rodwright.cutting import (
    Flaw,
    Inner,
    Layout,
    Piece,
    Placed,
    Plan,
    Supply,
    plan_boards,
    plan_sheets,
)
from rodwright.cutting.demand import Job, lots_of
from rodwright.cutting.offcuts import Least, kept_offcuts
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps import LotSteps, arranged, lot_steps
from rodwright.cutting.work import Label, Lot, LotPlan
from rodwright.pictures.cutting import cutting_pages, cutting_pictures
from rodwright.pictures.cutting_sheet import EDGED
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Drawing, Fill, Lettering, Stroke
from rodwright.setout import set_out
from rodwright.wishes.reading.files import read_spec

MODELS = Path(__file__).parents[2] / "models"


def steps_of(planned: LotPlan, saw: Saw) -> LotSteps:
    planned = arranged(planned)
    return lot_steps(planned, saw, kept_offcuts([planned], "ab" * 32, Least(200, 80)))


def lots_in(name: str) -> list[LotSteps]:
    lots = lots_of([Job(set_out(read_spec(MODELS / f"{name}.yaml")))], kerf=3.2)
    plans = [
        (plan_sheets if lot.kind == "sheet" else plan_boards)(lot.pieces, lot.supplies, kerf=3.2)
        for lot in lots
    ]
    return [steps_of(LotPlan(*each), Saw()) for each in zip(lots, plans, strict=True)]


def texts(drawing: Drawing) -> list[Lettering]:
    return [mark for mark in drawing.marks if isinstance(mark, Lettering)]


def extent(text: Lettering) -> Polygon:
    """What the capitals and figures of a text cover, a hair less."""
    x, y = text.at
    wide = text_width(text.text, text.size)
    begins = {"start": 0.0, "middle": -wide / 2, "end": -wide}[text.anchor]
    if text.upwards:
        return box(x - 0.7 * text.size, y - begins - wide, x, y - begins)
    return box(x + begins, y - 0.7 * text.size, x + begins + wide, y)


def assert_legible(drawing: Drawing) -> None:
    """No lettering over a line that is seen, over other lettering, under a later area, or off the
    page."""
    areas = [extent(text) for text in texts(drawing)]
    page = box(0, 0, drawing.width, drawing.height)
    assert all(page.contains(area) for area in areas)
    for one, other in combinations(areas, 2):
        assert one.intersection(other).area < 1e-6, f"{one.bounds} and {other.bounds}"
    seen: list[tuple[MultiLineString, float]] = []
    lettered: list[Polygon] = []
    for mark in drawing.marks:
        if isinstance(mark, Lettering):
            lettered.append(extent(mark))
        elif isinstance(mark, Fill):
            cover = unary_union([Polygon(ring) for ring in mark.rings])
            assert not any(cover.intersects(each) for each in lettered), "an area over lettering"
            near = cover.envelope
            seen = [
                (line.difference(cover) if line.intersects(near) else line, width)
                for line, width in seen
            ]
        else:
            assert isinstance(mark, Stroke)
            seen += [
                (LineString(pair), mark.width)
                for line in mark.lines
                for pair in pairwise(line)
                if pair[0] != pair[1]
            ]
    for line, width in seen:
        if not line.is_empty:
            drawn = line.buffer(width / 2)
            hit = [text.text for text in texts(drawing) if drawn.intersects(extent(text))]
            assert not hit, f"a line runs through {hit}"


@pytest.mark.parametrize("name", ["reading-alcove", "record-cabinet", "drying-rack"])
def test_no_lettering_runs_over_lines_or_other_lettering(name: str) -> None:
    for steps in lots_in(name):
        for page in cutting_pages(steps, "mm"):
            assert_legible(page)


@settings(max_examples=5)
@given(sheets())
def test_nor_on_sheets_cut_at_random(case: tuple[LotPlan, Saw]) -> None:
    steps = steps_of(*case)
    pages = cutting_pages(steps, "in")
    for page in pages:
        assert_legible(page)
    told = " ".join(text.text for page in pages for text in texts(page))
    inner = {each.name for piece in steps.lot.pieces for each in piece.inner}
    outer = {piece.name for piece in steps.lot.pieces if not piece.inner}
    assert outer | inner <= set(re.split("[ ,;]+", told))


def test_every_piece_offcut_and_cut_is_told_once() -> None:
    for steps in lots_in("reading-alcove"):
        written = (
            " ".join(text.text for page in cutting_pages(steps, "mm") for text in texts(page))
            .replace(",", " ")
            .replace(";", " ")
            .split()
        )
        for labels in steps.lot.labels.values():
            for label in labels:
                assert written.count(label.ref) == 1, label.ref
        for sheet in steps.sheets:
            for _, names in sheet.kept:
                assert all(written.count(name) == 1 for name in names)
            for step in sheet.steps:
                assert str(step.number) in written


def test_equal_sheets_are_drawn_once_and_boards_share_a_page() -> None:
    placed = (Placed("A", 0, 0, 2000, 100), Placed("B", 2003.2, 0, 200, 100))
    pieces = (Piece("A", 2000, 100, 4), Piece("B", 200, 100, 4))
    supply = Supply("oak", 2400, 140)
    lot = Lot("lot", "board", "oak", 25, 700, pieces, {}, (supply,))
    plan = Plan((Layout("oak", placed),) * 4, 4, 4, True, 3.2)
    (page,) = cutting_pages(steps_of(LotPlan(lot, plan), Saw()), "mm")
    assert [text.text for text in texts(page)].count("Boards 1 to 4, 4 cut alike") == 1


def test_flaws_are_crossed_and_rows_divided() -> None:
    row = Piece(
        "R", 700, 900, inner=(Inner("F1", 0, 0, 700, 448.4), Inner("F2", 0, 451.6, 700, 448.4))
    )
    supply = Supply("ply", 2440, 1220, flaws=(Flaw(1000, 500, 200, 100),))
    lot = Lot("lot", "sheet", "ply", 18, 680, (row,), {}, (supply,))
    plan = Plan((Layout("ply", (Placed("R", 0, 0, 700, 900),)),), 1, 1, True, 3.2)
    (page,) = cutting_pages(steps_of(LotPlan(lot, plan), Saw()), "mm")
    assert_legible(page)
    assert {"F1", "F2"} <= {text.text for text in texts(page)}
    crossed = [mark for mark in page.marks if isinstance(mark, Stroke) and len(mark.lines) == 3]
    assert crossed


@pytest.mark.parametrize("deep", [600, 90])
def test_offcuts_with_flaws_say_so(deep: int) -> None:
    flaw = Flaw(1320, 10, 60, deep - 20, "old screw holes")
    lot = Lot(
        "lot",
        "sheet",
        "ply",
        18,
        680,
        (Piece("A", 900, deep),),
        {},
        (Supply("ply", 1800, deep, flaws=(flaw,)),),
    )
    layout = Layout("ply", (Placed("A", 0, 0, 900, deep),))
    steps = steps_of(LotPlan(lot, Plan((layout,), 1, 1, True, 3.2)), Saw())
    assert steps.sheets[0].kept
    (page,) = cutting_pages(steps, "mm")
    assert_legible(page)
    written = " ".join(text.text for text in texts(page))
    assert "with a flaw: old screw holes" in written
    (crossed,) = (mark for mark in page.marks if isinstance(mark, Stroke) and len(mark.lines) == 3)
    seen = Polygon(crossed.lines[0])
    assert not any(extent(text).intersects(seen) for text in texts(page))


def test_what_gets_edging_is_drawn_thick() -> None:
    label = Label("SH1", "alcove", "shelf", (700, 300, 18), edged=("face", "near"))
    lot = Lot(
        "lot",
        "sheet",
        "ply",
        18,
        680,
        (Piece("SH1", 700, 300, turning=True),),
        {"SH1": (label,)},
        (Supply("ply", 1000, 1220),),
    )
    for turned in (False, True):
        size = (300, 700) if turned else (700, 300)
        layout = Layout("ply", (Placed("SH1", 0, 0, *size, turned=turned),))
        planned = LotPlan(lot, Plan((layout,), 1, 1, True, 3.2))
        (page,) = cutting_pages(steps_of(planned, Saw()), "mm")
        (thick,) = (
            mark.lines for mark in page.marks if isinstance(mark, Stroke) and mark.width == EDGED
        )
        # Turned to the left, the face edge is at the right and the near end at the foot.
        upright = [one[0] == other[0] for one, other in thick]
        assert upright == ([True, False] if turned else [False, True])
        assert any("gets edging" in text.text for text in texts(page))


def test_a_router_has_no_cuts_to_number() -> None:
    placed = (Placed("A", 0, 0, 500, 300), Placed("S", 510, 0, 80, 50))
    pieces = (Piece("A", 500, 300), Piece("S", 80, 50))
    lot = Lot("lot", "sheet", "ply", 18, 680, pieces, {}, (Supply("ply", 2440, 1220),))
    plan = Plan((Layout("ply", placed),), 1, 1, True, 8.0)
    steps = lot_steps(LotPlan(lot, plan), Saw("router", 8.0))
    (sheet,) = steps.sheets
    assert [(each.name, each.tabs) for each in sheet.contours] == [("A", False), ("S", True)]
    (page,) = cutting_pages(steps, "mm")
    assert_legible(page)


def test_files_are_svg_and_png_of_a_page_and_equal_for_equal_steps() -> None:
    steps = lots_in("record-cabinet")[1]
    files = cutting_pictures(steps, "mm", "panel")
    assert sorted(files) == ["panel-1.png", "panel-1.svg"]
    root = ET.fromstring(files["panel-1.svg"])
    assert (root.get("width"), root.get("height")) == ("297mm", "210mm")
    with Image.open(BytesIO(files["panel-1.png"])) as image:
        assert image.size == (297 * 8, 210 * 8)
        assert abs(image.info["dpi"][0] - 8 * 25.4) < 0.1
        shades = image.convert("L").getcolors(maxcolors=1 << 20)
        assert shades is not None and min(shade for _, shade in shades) < 80
    assert cutting_pictures(steps, "mm", "panel") == files
    letter = ET.fromstring(cutting_pictures(steps, "in", "panel")["panel-1.svg"])
    assert letter.get("width") == "279.4mm"


def test_plans_are_drawn_without_a_geometry_kernel() -> None:
    say = (
        "import sys, rodwright.pictures.cutting;"
        "print([m for m in ('cadquery', 'OCP', 'vtkmodules', 'scipy') if m in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", say], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"
