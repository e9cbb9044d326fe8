"""The sheet of three views, and the lines on it."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from xml.etree import ElementTree

import pytest

from kit import samples
from kit.overlaps import overlaps
from rodwright import read_spec, set_out
from rodwright.pictures.drafting.bands import Rectangle, rectangle
from rodwright.pictures.drafting.chains import pitch_note
from rodwright.pictures.drafting.figures import DASHES, NARROW, PAPERS, WIDE
from rodwright.pictures.drafting.inked import draw
from rodwright.pictures.drafting.seen import AXES, whole
from rodwright.pictures.drafting.sheets import Sheet, draw_sheet, projected
from rodwright.pictures.drafting.title_block import title_block_of
from rodwright.pictures.drafting.views import View
from rodwright.pictures.ink import Drawing, Lettering, Stroke
from rodwright.pictures.linework import tidy
from rodwright.pictures.sheet import draw_views, lay_out, shown_dimensions
from rodwright.pictures.svg import to_svg

MODELS = sorted((Path(__file__).parents[2] / "models").glob("*.yaml"))


def _texts(drawing: Drawing) -> list[Lettering]:
    return [mark for mark in drawing.marks if isinstance(mark, Lettering)]


def _sheet(**changes: object) -> Sheet:
    unit = replace(samples.bookcase(), **changes)
    return lay_out(unit, title_block_of(unit, "Views"))


def test_main_sizes_stand_on_the_sheet() -> None:
    # 800 x 1000 x (22 + 300 + 6), a shelf in its middle, a frame of 45 x 22.
    front, side, above = _sheet().views
    said = [{each.dimension.text for each in view.dimensions} for view in (front, side, above)]
    assert {"800", "1000", "764", "464", "482", "45", "710", "18", "500"} <= said[0]
    assert {"328", "300", "22", "6"} == said[1]
    assert {"800", "328"} <= said[2]
    outermost = max(front.dimensions, key=lambda each: each.line[0][1])
    assert outermost.dimension.text == "800"
    for each in front.dimensions:
        upright = each.line[0][0] == pytest.approx(each.line[1][0])
        assert each.text.upwards == (upright and not each.dimension.running)


def test_inches_are_written_as_fractions() -> None:
    # 800 mm is 31.496 in, 31 1/2 to the nearest 64th.
    unit = replace(samples.bookcase(), display_unit="in")
    assert "31 1/2" in [text.text for text in _texts(draw_views(unit))]


def test_first_angle_layout() -> None:
    front, left, above = (view.box for view in _sheet().views)
    assert left.left > front.right
    assert (left.top, left.bottom) == pytest.approx((front.top, front.bottom), abs=0.01)
    assert (above.left, above.right) == pytest.approx((front.left, front.right), abs=0.01)
    assert above.top > front.bottom


def test_third_angle_layout_in_inches() -> None:
    """ISO 5456-2 and ASME Y14.3: in third-angle projection the view from the left stands to the
    left of the front view, the view from above on top of it."""
    views = _sheet(display_unit="in").views
    front, left, above = (view.box for view in views)
    assert left.right < front.left
    assert (left.top, left.bottom) == pytest.approx((front.top, front.bottom), abs=0.01)
    assert (above.left, above.right) == pytest.approx((front.left, front.right), abs=0.01)
    assert above.bottom < front.top
    # The depth's dimension goes with the side view: 328 mm is 12.913 in, 12 29/32 or 58/64.
    said = [{each.dimension.text for each in view.dimensions} for view in views]
    assert "12 29/32" in said[1]
    assert "39 3/8" in said[0]


@pytest.mark.parametrize(("display", "angle"), [("mm", "first"), ("in", "third")])
def test_the_sheet_says_its_projection_and_bears_its_symbol(display: str, angle: str) -> None:
    """ISO 5456-2, figures of the graphical symbols: the frustum's small end points left; its
    end view stands right of it in first angle, left in third (from memory)."""
    drawing = draw_views(replace(samples.bookcase(), display_unit=display))
    assert f"{angle.capitalize()} angle" in [text.text for text in _texts(drawing)]
    assert f"{angle}-angle projection" in drawing.description
    (symbol,) = (mark for mark in drawing.marks if isinstance(mark, Stroke) and mark.width == 0.35)
    side, *rings = symbol.lines
    heights: dict[float, list[float]] = {}
    for x, y in side:
        heights.setdefault(x, []).append(y)
    small, large = sorted(heights)
    spans = [max(heights[x]) - min(heights[x]) for x in (small, large)]
    # The frustum's ends are as one to two, and the end view shows both.
    assert spans[1] == pytest.approx(2 * spans[0])
    across = [max(x for x, _ in ring) - min(x for x, _ in ring) for ring in rings]
    assert across == pytest.approx(spans, rel=1e-3)
    middle = sum(x for x, _ in rings[0][:-1]) / len(rings[0][:-1])
    assert middle > large if angle == "first" else middle < small


def test_sheets_in_inches_are_of_american_sizes() -> None:
    """Sizes A and B of ASME Y14.1 are 8 1/2 x 11 and 11 x 17 in (from memory)."""
    drawing = draw_views(replace(samples.bookcase(), display_unit="in"))
    assert sorted((drawing.width / 25.4, drawing.height / 25.4)) == pytest.approx([11.0, 17.0])
    assert "1:8, Tabloid" in [text.text for text in _texts(drawing)]
    letter = PAPERS["in"][0]
    assert (letter.width / 25.4, letter.height / 25.4) == pytest.approx((8.5, 11.0))
    metric = draw_views(samples.bookcase())
    assert sorted((metric.width, metric.height)) == [210.0, 297.0]


def test_largest_standard_scale_is_taken() -> None:
    # At 1:5 the views alone would need 1128 / 5 + 328 / 5 > 277 mm; at 1:10 they fit.
    assert "1:10, A4" in [text.text for text in _texts(draw_views(samples.bookcase()))]
    large = replace(samples.bookcase().envelope, high=(90_000.0, 306.0, 1000.0))
    assert _sheet(envelope=large).scale == 500


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_no_text_of_a_models_views_lies_on_a_line(path: Path) -> None:
    """The dimensions of every ready model, round its parts' boxes for lines."""
    unit = set_out(read_spec(path))
    views = []
    for name, (across, up) in AXES.items():
        boxes = [rectangle(part.bounds(), across, up) for part in unit.parts]
        views.append(
            View(
                name,
                *zip(*whole(unit, name), strict=True),
                visible=tuple(line for box in boxes for line in _edges(box)),
                dimensions=shown_dimensions(unit, name),
                notes=pitch_note(unit, name),
            )
        )
    block = title_block_of(unit, "Views")
    sheet = draw_sheet(projected(*views, block), block)
    assert not list(overlaps(draw(sheet, "")))
    assert sheet.paper.name in {paper.name for paper in PAPERS[unit.display_unit]}


def _edges(box: Rectangle) -> Iterator[tuple[tuple[float, float], tuple[float, float]]]:
    (left, right), (foot, head) = box
    corners = ((left, foot), (right, foot), (right, head), (left, head))
    yield from zip(corners, (*corners[1:], corners[0]), strict=True)


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
    left = _sheet().views[0].box.left
    hidden = next(m for m in drawing.marks if isinstance(m, Stroke) and m.dashes == DASHES)
    upright = {round(line[0][0] - left, 3) for line in hidden.lines if line[0][0] == line[1][0]}
    # The shelf reaches 6 mm into sides of 18 mm: its ends lie at 12 and at 788 mm, at 1:10.
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
