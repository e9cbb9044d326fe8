"""The sheet of three views, and the lines on it."""

from dataclasses import replace
from xml.etree import ElementTree

import pytest

from kit import samples
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


def test_third_angle_layout_in_inches() -> None:
    """ISO 5456-2 and ASME Y14.3: in third-angle projection the view from the left stands to the
    left of the front view, the view from above on top of it."""
    unit = replace(samples.bookcase(), display_unit="in")
    drawing = draw_views(unit)
    at = {text.text: text.at for text in _texts(drawing)}
    front, left, above = at["Front"], at["From the left"], at["From above"]
    assert left[0] < front[0]
    assert left[1] == pytest.approx(front[1])
    assert above[0] == pytest.approx(front[0])
    assert above[1] < front[1]
    # The depth's dimension goes with the side view: 328 mm is 12.913 in, 12 29/32 or 58/64.
    assert at["12 29/32"][0] == pytest.approx(left[0])
    assert at["39 3/8"][0] < front[0]  # the height's, left of the front view


@pytest.mark.parametrize(("display", "angle"), [("mm", "first"), ("in", "third")])
def test_the_sheet_says_its_projection_and_bears_its_symbol(display: str, angle: str) -> None:
    """ISO 5456-2, figures of the graphical symbols: the frustum's small end points left; its
    end view stands right of it in first angle, left in third (from memory)."""
    drawing = draw_views(replace(samples.bookcase(), display_unit=display))
    assert f"{angle}-angle projection" in [text.text for text in _texts(drawing)]
    assert f"{angle}-angle projection" in drawing.description
    (symbol,) = (mark for mark in drawing.marks if isinstance(mark, Stroke) and mark.width == 0.35)
    side, *rings = symbol.lines
    heights: dict[float, list[float]] = {}
    for x, y in side:
        heights.setdefault(x, []).append(y)
    small, large = sorted(heights)
    spans = [max(heights[x]) - min(heights[x]) for x in (small, large)]
    assert spans == [pytest.approx(5.0), pytest.approx(10.0)]
    middle = sum(x for x, _ in rings[0][:-1]) / len(rings[0][:-1])
    assert middle > large if angle == "first" else middle < small


def test_sheets_in_inches_are_of_letter_size() -> None:
    """Size A of ASME Y14.1 is 8 1/2 x 11 in (from memory)."""
    drawing = draw_views(replace(samples.bookcase(), display_unit="in"))
    assert sorted((drawing.width / 25.4, drawing.height / 25.4)) == [
        pytest.approx(8.5),
        pytest.approx(11.0),
    ]
    assert any("on Letter" in text.text for text in _texts(drawing))
    metric = draw_views(samples.bookcase())
    assert sorted((metric.width, metric.height)) == [210.0, 297.0]


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


def test_words_of_an_svg_can_be_found() -> None:
    drawing = draw_views(replace(samples.bookcase(), title="Größe <a> & b"))
    root = ElementTree.fromstring(to_svg(drawing, words=True))
    texts = root.findall("{http://www.w3.org/2000/svg}text")
    assert [each.text for each in texts] == [each.text for each in _texts(drawing)]
    assert [float(each.get("font-size", "")) for each in texts] == pytest.approx(
        [each.size for each in _texts(drawing)], abs=1e-3
    )
    assert not ElementTree.fromstring(to_svg(drawing)).findall("{http://www.w3.org/2000/svg}text")


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
