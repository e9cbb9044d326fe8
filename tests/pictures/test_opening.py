from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from itertools import combinations

import pytest
from shapely import Polygon, box

from kit.openings import FULLY_READ
from kit.specs import spec_from
from rodwright.jobs.survey import survey
from rodwright.opening.sheet import SurveySheet
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Drawing, Fill, Lettering
from rodwright.pictures.opening import EXAGGERATION, draw_opening
from rodwright.pictures.paper import wrapped
from rodwright.pictures.svg import to_svg

FEW = "opening: {width: 900, height: 1200, depth: 300}\n"
WIDE = (
    "opening: {width: {bottom: 2994, top: 2990}, height: {left: 1388, right: 1380}, depth: 300}\n"
)
INCHES = "opening: {width: {bottom: 36 3/4, top: 36 1/2}, height: 80, depth: 12}\nunit: in\n"

BELLIED = (
    "opening:\n"
    "  width: {bottom: 1013, middle: 1001, top: 1012, others: [{at: 200, width: 1010},\n"
    "    {at: 300, width: 1008}, {at: 500, width: 1006}, {at: 1500, width: 1005}]}\n"
    "  height: {left: 2000, middle: 1990, right: 2001}\n"
    "  depth: 300\n"
)
LEANING = (
    "opening:\n"
    "  width: {bottom: 1065, middle: 1030, top: 1000}\n"
    "  height: 2300\n"
    "  depth: 300\n"
    "  level: {floor: {out: 20, over: 1000, rises: left}}\n"
    "base: {kind: plinth, height: 100, levelling: 20}\n"
)
CONTRADICTING = (
    "opening:\n"
    "  width: {bottom: 1200, middle: 1200, top: 1200}\n"
    "  height: {left: 2000, right: 2000}\n"
    "  depth: 318\n"
    "  diagonals: {rising: 2336, falling: 2332.4}\n"
)

SLOPED = (
    "opening: {width: {bottom: 1412, middle: 1410, top: 1408}, height: {left: 2290, right: 2290},"
    " depth: 420}\nslope: {falls: right, low: 1250, pitch: 45}\n"
    "face_frame: {stock: ash, width: 45, corners: butted}\n"
)
ALL_UNDER = (
    "opening: {width: 1000, height: 2290, depth: 620, back: {width: 1002}}\n"
    "slope: {falls: left, low: 1500, pitch: 30}\n"
)
STEEP = (
    "opening: {width: 3000, height: 1600, depth: 420}\nslope: {falls: left, low: 700, pitch: 65}\n"
)
TO_THE_FRONT = (
    "opening: {width: 1000, height: 2290, depth: 620}\n"
    "slope: {falls: front, low: 1900, pitch: 50}\n"
)
LOW = "opening: {width: 1900, height: 1524, depth: 480}\nsize: {height: 445}\n"
UNDER_SLOPES = [SLOPED, ALL_UNDER, STEEP, TO_THE_FRONT]


def _sheet(text: str) -> SurveySheet:
    return survey(spec_from(text))


def _boxes(drawing: Drawing) -> list[tuple[str, float, float, float, float]]:
    found = []
    for mark in drawing.marks:
        if isinstance(mark, Lettering):
            width, (x, y) = text_width(mark.text, mark.size), mark.at
            back = {"start": 0.0, "middle": width / 2, "end": width}[mark.anchor]
            if mark.upwards:
                box = (x - 0.75 * mark.size, y - width + back, x, y + back)
            else:
                box = (x - back, y - 0.75 * mark.size, x - back + width, y)
            found.append((mark.text, *box))
    return found


@pytest.mark.parametrize(
    "text",
    [FULLY_READ, FEW, WIDE, INCHES, BELLIED, LEANING, CONTRADICTING, LOW, *UNDER_SLOPES],
)
def test_no_text_leaves_the_sheet_or_covers_other_text(text: str) -> None:
    sheet = _sheet(text)
    for plane in sheet.planes:
        drawing = draw_opening(sheet, plane)
        boxes = _boxes(drawing)
        for words, left, top, right, bottom in boxes:
            assert left >= 8.0 and top >= 8.0, words
            assert right <= drawing.width - 8.0 and bottom <= drawing.height - 8.0, words
        for number, (words, left, top, right, bottom) in enumerate(boxes):
            for others, left_2, top_2, right_2, bottom_2 in boxes[:number]:
                apart = right <= left_2 or right_2 <= left or bottom <= top_2 or bottom_2 <= top
                assert apart, (words, others)


@pytest.mark.parametrize("text", UNDER_SLOPES)
def test_the_unit_is_drawn_under_the_slope(text: str) -> None:
    """By shapely: it lies in what is drawn of the opening, and neither is a rectangle but where
    the slope falls to the front."""
    sheet = _sheet(text)
    assert sheet.fit is not None
    for plane in sheet.planes:
        fills = [mark for mark in draw_opening(sheet, plane).marks if isinstance(mark, Fill)]
        (unit,) = (Polygon(mark.rings[0]) for mark in fills if mark.colour == "#f3e7cf")
        measured, opening = (Polygon(mark.rings[1]) for mark in fills if len(mark.rings) == 2)
        assert opening.buffer(1e-6).covers(unit)
        whole = box(*measured.bounds)
        level = "falls: front" in text
        assert (measured.area > 0.98 * whole.area) == level
        top = (max if level else min)(
            point[1] for point in sheet.fit.outline(plane.name).corners[2:]
        )
        assert top < sheet.fit.opening.height - 200


def test_gaps_are_ten_times_too_large_and_said_to_be() -> None:
    """The unit's outline and the opening's are measured on the page."""
    sheet = _sheet(FULLY_READ)
    assert sheet.fit is not None
    drawing = draw_opening(sheet, sheet.planes[0])
    fills = [mark for mark in drawing.marks if isinstance(mark, Fill)]
    (unit,) = (mark.rings[0] for mark in fills if mark.colour == "#f3e7cf")
    opening = [mark.rings[1] for mark in fills if len(mark.rings) == 2][1]
    scale = (unit[1][0] - unit[0][0]) / sheet.fit.size[0]
    left_gap = (unit[0][0] - opening[0][0]) / scale
    (told,) = (
        each.gap
        for each in sheet.fit.gaps
        if (each.side, each.plane, each.at) == ("left", "front", 0.0)
    )
    assert left_gap == pytest.approx(EXAGGERATION * told, rel=0.01)
    said = [words for words, *_ in _boxes(drawing)]
    assert any("GAPS DRAWN 10 TIMES TOO LARGE" in words for words in said)


@pytest.mark.parametrize(("text", "paper"), [(FEW, (420.0, 297.0)), (INCHES, (279.4, 215.9))])
def test_the_sheet_is_a3_or_letter(text: str, paper: tuple[float, float]) -> None:
    """A3 of ISO 216 is 297 x 420 mm; Letter is 8 1/2 x 11 in (ASME Y14.1, from memory)."""
    sheet = _sheet(text)
    drawing = draw_opening(sheet, sheet.planes[0])
    assert (drawing.width, drawing.height) == paper
    assert min(mark.size for mark in drawing.marks if isinstance(mark, Lettering)) >= 2.3


def test_lengths_on_a_sheet_in_inches_are_fractions() -> None:
    sheet = _sheet(INCHES)
    said = [words for words, *_ in _boxes(draw_opening(sheet, sheet.planes[0]))]
    assert "Lengths in inches" in said
    assert any(words.startswith("36 3/4 (") for words in said)
    for words in said:
        assert not re.search(r"\d\.\d+(?!°)(?!\d)", words), words
        assert "mm" not in words


def test_every_reading_is_on_the_sheet() -> None:
    sheet = _sheet(FULLY_READ)
    said = " ".join(words for words, *_ in _boxes(draw_opening(sheet, sheet.planes[0])))
    for reading in ("1216 (", "1211 (", "1209 (", "1213 (", "2032 (", "2027 (", "2366 (", "2362 ("):
        assert reading in said
    assert "plumb: in 6" in said
    assert "level: rises 2" in said


def test_svg_is_well_formed_and_always_the_same() -> None:
    texts = []
    for _ in range(2):
        sheet = _sheet(FULLY_READ)
        texts.append(to_svg(draw_opening(sheet, sheet.planes[1])))
    assert texts[0] == texts[1]
    assert ET.fromstring(texts[0].encode()).tag.endswith("svg")


def test_a_sheet_without_a_fit_cannot_be_drawn() -> None:
    sheet = _sheet(FULLY_READ.replace("2366", "2380"))
    with pytest.raises(ValueError, match="nothing to draw"):
        draw_opening(sheet, sheet.planes[0])


def test_wrapping() -> None:
    text = "one two three four five six seven"
    lines = wrapped(text, 20.0, 4.0)
    assert " ".join(lines) == text
    assert all(text_width(line, 4.0) <= 20.0 for line in lines)


def test_walls_are_drawn_as_their_lines() -> None:
    """A belly of 11.5 lies half in each wall: ten times that on the page, and its gap is told."""
    sheet = _sheet(BELLIED)
    assert sheet.fit is not None
    drawing = draw_opening(sheet, sheet.planes[0])
    fills = [mark for mark in drawing.marks if isinstance(mark, Fill)]
    (unit,) = (mark.rings[0] for mark in fills if mark.colour == "#f3e7cf")
    opening = [mark.rings[1] for mark in fills if len(mark.rings) == 2][1]
    scale = (unit[1][0] - unit[0][0]) / sheet.fit.size[0]
    right = max(x for x, _ in opening)
    inmost = min(x for x, y in opening if x > unit[1][0])
    assert (right - inmost) / scale / EXAGGERATION == pytest.approx(11.5 / 2, abs=0.8)
    said = [words for words, *_ in _boxes(drawing)]
    assert said.count("gap 3.5") == 2


def test_what_contradicts_is_told() -> None:
    sheet = _sheet(CONTRADICTING)
    said = " ".join(words for words, *_ in _boxes(draw_opening(sheet, sheet.planes[0])))
    assert "contradict each other" in said
    assert "rising diagonal" in said


@pytest.mark.parametrize("height", [1200, 2000, 2400])
@pytest.mark.parametrize("rises", ["left", "right"])
def test_what_packs_a_lower_corner_is_read_apart(height: float, rises: str) -> None:
    """At least half a millimetre of paper between what packers at the sides and below come to."""
    text = (
        f"opening:\n  width: 1226\n  height: {height}\n  depth: 318\n"
        f"  level: {{floor: {{out: 14, over: 1200, rises: {rises}}}}}\n"
        "fit: {sides: 13}\n"
    )
    sheet = _sheet(text)
    packers = [
        mark
        for mark in draw_opening(sheet, sheet.planes[0]).marks
        if isinstance(mark, Lettering) and mark.colour == "#b5762a"
    ]
    assert sum("+" in each.text for each in packers) > 2
    boxes = []
    for mark in packers:
        width, (x, y) = text_width(mark.text, mark.size), mark.at
        left = x - {"start": 0.0, "middle": width / 2, "end": width}[mark.anchor]
        boxes.append((left, y - 0.75 * mark.size, left + width, y))
    for (a0, b0, a1, b1), (c0, d0, c1, d1) in combinations(boxes, 2):
        assert max(c0 - a1, a0 - c1, d0 - b1, b0 - d1) > 0.5
