"""The sheet of three views, and the lines on it."""

from dataclasses import replace
from xml.etree import ElementTree

import pytest

import samples
from rodwright.pictures.ink import Drawing, Lettering, Stroke
from rodwright.pictures.linework import tidy
from rodwright.pictures.sheet import DASHES, NARROW, WIDE, draw_views
from rodwright.pictures.svg import to_svg


def _texts(drawing: Drawing) -> list[Lettering]:
    return [mark for mark in drawing.marks if isinstance(mark, Lettering)]


def test_overall_sizes_stand_on_the_sheet() -> None:
    texts = {text.text: text for text in _texts(draw_views(samples.bookcase()))}
    # 800 x 1000 x (22 + 300 + 6); only the height is written upwards.
    assert {"800", "1000", "328"} <= texts.keys()
    assert [text for text, mark in texts.items() if mark.upwards] == ["1000"]


def test_inches_are_written_as_fractions() -> None:
    # 800 mm is 31.496 in, 31 1/2 to the nearest 64th.
    unit = replace(samples.bookcase(), display_unit="in")
    assert "31 1/2" in [text.text for text in _texts(draw_views(unit))]


def test_first_angle_layout() -> None:
    at = {text.text: text.at for text in _texts(draw_views(samples.bookcase()))}
    front, left, above = at["Front"], at["From the left"], at["From above"]
    assert left[0] > front[0]
    assert left[1] == pytest.approx(front[1])
    assert above[0] == pytest.approx(front[0])
    assert above[1] > front[1]


def test_largest_standard_scale_is_taken() -> None:
    # At 1:5 the views alone would need 1128 / 5 + 328 / 5 > 277 mm; at 1:10 they fit.
    notes = [text.text for text in _texts(draw_views(samples.bookcase()))]
    assert any("Scale 1:10 on A4" in note for note in notes)
    large = replace(samples.bookcase().envelope, high=(90_000.0, 306.0, 1000.0))
    wide = replace(samples.bookcase(), envelope=large)
    assert any("Scale 1:500" in text.text for text in _texts(draw_views(wide)))


def test_lines_stay_on_the_sheet_and_visible_and_hidden_differ() -> None:
    drawing = draw_views(samples.bookcase())
    strokes = [mark for mark in drawing.marks if isinstance(mark, Stroke)]
    assert any(stroke.width == WIDE and stroke.dashes is None for stroke in strokes)
    assert any(stroke.width == NARROW and stroke.dashes == DASHES for stroke in strokes)
    for stroke in strokes:
        for line in stroke.lines:
            for x, y in line:
                assert 0 <= x <= drawing.width
                assert 0 <= y <= drawing.height


def test_shelf_ends_are_hidden_in_the_front_view_at_the_right_place() -> None:
    drawing = draw_views(samples.bookcase())
    front = next(text for text in _texts(drawing) if text.text == "Front")
    left = front.at[0] - 40.0  # half of 800 mm at 1:10
    hidden = next(m for m in drawing.marks if isinstance(m, Stroke) and m.dashes == DASHES)
    upright = {round(line[0][0] - left, 3) for line in hidden.lines if line[0][0] == line[1][0]}
    # The shelf reaches 6 mm into sides of 18 mm: its ends lie at 12 and at 788 mm.
    assert {1.2, 78.8} <= upright


def test_svg_of_the_sheet_is_in_millimetres_of_paper() -> None:
    drawing = draw_views(samples.bookcase())
    root = ElementTree.fromstring(to_svg(drawing))
    assert root.get("width") == f"{drawing.width:g}mm"
    assert root.get("viewBox") == f"0 0 {drawing.width:g} {drawing.height:g}"


def test_duplicates_are_drawn_once_and_visible_lines_cover_hidden_ones() -> None:
    visible = [((0.0, 0.0), (10.0, 0.0)), ((12.0, 0.0), (5.0, 0.0))]
    hidden = [((-5.0, 0.0), (20.0, 0.0)), ((20.0, 0.0), (-5.0, 0.0)), ((0.0, 1.0), (5.0, 1.0))]
    solid, dashed = tidy(visible, hidden, 0.1)
    assert [sorted(x for x, _ in line) for line in solid] == [pytest.approx([0.0, 12.0])]
    spans = sorted((min(a[0], b[0]), max(a[0], b[0]), round(a[1], 3)) for a, b in dashed)
    assert spans == [
        pytest.approx((-5.0, 0.0, 0.0)),
        pytest.approx((0.0, 5.0, 1.0)),
        pytest.approx((12.0, 20.0, 0.0)),
    ]
