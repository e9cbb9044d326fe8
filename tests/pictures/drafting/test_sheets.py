"""Sheets of views: nothing overlaps, views line up, scales and papers are the standards'."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from kit.overlaps import overlaps
from rodwright.pictures.drafting.figures import PAPERS
from rodwright.pictures.drafting.inked import draw
from rodwright.pictures.drafting.sheets import Place, Sheet, draw_sheet, numbered, projected
from rodwright.pictures.drafting.title_block import TitleBlock
from rodwright.pictures.drafting.views import Dimension, Line, Note, View

SIDES = ("left", "right", "above", "below", "inside")


def _box(low: tuple[float, float], high: tuple[float, float]) -> tuple[Line, ...]:
    (left, foot), (right, head) = low, high
    corners = ((left, foot), (right, foot), (right, head), (left, head))
    return tuple(zip(corners, (*corners[1:], corners[0]), strict=True))


@st.composite
def views(draw: st.DrawFn, most: int = 60) -> View:
    """A view of some boxes with chains at all sides, crowded or not, and notes."""
    width, height = draw(st.floats(20, 3000)), draw(st.floats(20, 3000))
    places = st.tuples(st.floats(0, width), st.floats(0, height))
    boxes = [
        _box((min(a[0], b[0]), min(a[1], b[1])), (max(a[0], b[0]), max(a[1], b[1])))
        for a, b in draw(st.lists(st.tuples(places, places), max_size=6))
    ]
    dimensions: list[Dimension] = []
    for number in range(draw(st.integers(0, 8))):
        side = draw(st.sampled_from(SIDES))
        running = draw(st.booleans()) and side != "inside" and draw(st.booleans())
        along = "y" if side in ("left", "right") else "x"
        if side == "inside":
            along = draw(st.sampled_from(("x", "y")))
        full = height if along == "y" else width
        at = sorted(draw(st.lists(st.floats(0, full), min_size=2, max_size=12, unique=True)))
        other = width if along == "y" else height
        where = {"left": 0.0, "below": 0.0, "right": other, "above": other}.get(side)
        off = draw(st.floats(0, other)) if where is None else where
        rank = draw(st.integers(0, 3))
        pairs = [(at[0], each) for each in at[1:]] if running else list(pairwise(at))
        for low, high in pairs:
            start, end = ((off, low), (off, high)) if along == "y" else ((low, off), (high, off))
            text = f"{high - low:.1f}"
            dimensions.append(
                Dimension(start, end, text, along, side, f"chain {number}", rank, running)
            )
    texts = st.text("ABCgj0123", min_size=1, max_size=5)
    notes = draw(st.lists(st.builds(Note, places, texts, st.booleans()), max_size=10))
    lines = tuple(line for box in boxes for line in box)
    return View(
        "View",
        (0.0, 0.0),
        (width, height),
        visible=(*_box((0.0, 0.0), (width, height)), *lines[::2]),
        hidden=lines[1::2],
        planes=(("A", ((width / 3, 0.0), (width / 3, height))),) if draw(st.booleans()) else (),
        dimensions=tuple(dimensions[:most]),
        notes=tuple(notes),
    )


@given(views(), views(), st.sampled_from(["mm", "in"]))
@settings(max_examples=15, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
def test_no_text_meets_a_line_or_a_text(front: View, side: View, unit: str) -> None:
    block = TitleBlock("A cupboard", display_unit=unit)
    sheet = draw_sheet(projected(front, side, None, block), block)
    assert not list(overlaps(draw(sheet, "")))


@given(views(20), views(20))
@settings(max_examples=6, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
def test_what_belongs_to_a_view_is_apart_from_the_next(front: View, above: View) -> None:
    block = TitleBlock("A cupboard")
    sheet = draw_sheet((Place(front), Place(above, 0, 1, aligned=False)), block)
    one, two = (view.extent for view in sheet.views)
    assert two.top - one.bottom > 5.0
    for view in sheet.views:
        assert not view.extent.meets(sheet.block.rect)
        assert view.extent.left >= sheet.frame.left
        assert view.extent.right <= sheet.frame.right
        assert view.extent.top >= sheet.frame.top
        assert view.extent.bottom <= sheet.frame.bottom


def test_a_number_changes_the_title_block_alone() -> None:
    sheet = draw_sheet((Place(_plain(800.0, 600.0)),), TitleBlock("A cupboard"))
    second = numbered(sheet, "Sections", (2, 3))
    assert {"2 of 3", "Sections"} <= {text.text for text in second.block.texts}
    assert (second.views, second.paper, second.scale) == (sheet.views, sheet.paper, sheet.scale)


def test_only_the_scales_asked_for_are_tried() -> None:
    places = (Place(_plain(8000.0, 2000.0)),)
    with pytest.raises(ValueError, match="no scale"):
        draw_sheet(places, TitleBlock("A wall"), PAPERS["mm"], (10, 20))
    assert draw_sheet(places, TitleBlock("A wall"), PAPERS["mm"], (20, 50)).scale == 50


def _plain(width: float, height: float) -> View:
    return View("", (0.0, 0.0), (width, height), _box((0.0, 0.0), (width, height)))


def _sheet(unit: str, *sizes: tuple[float, float]) -> Sheet:
    block = TitleBlock("A cupboard", display_unit=unit)
    return draw_sheet(projected(*(_plain(*size) for size in sizes), block), block)


def test_views_line_up_as_the_angle_of_projection_has_them() -> None:
    """ISO 5456-2: in first angle the view from the left stands on the right of the front view and
    that from above below it, in third angle on the left and above."""
    sizes = ((800.0, 1000.0), (300.0, 1000.0), (800.0, 300.0))
    front, side, above = (view.box for view in _sheet("mm", *sizes).views)
    assert (side.top, side.bottom) == pytest.approx((front.top, front.bottom))
    assert (above.left, above.right) == pytest.approx((front.left, front.right))
    assert side.left > front.right
    assert above.top > front.bottom
    front, side, above = (view.box for view in _sheet("in", *sizes).views)
    assert (side.top, side.bottom) == pytest.approx((front.top, front.bottom))
    assert (above.left, above.right) == pytest.approx((front.left, front.right))
    assert side.right < front.left
    assert above.bottom < front.top


@pytest.mark.parametrize(
    ("unit", "size", "scale", "paper"),
    [
        # A3 has 267 mm across within its frame, A4 180 (upright): at 1:5 neither is enough.
        ("mm", (2000.0, 2000.0), 10, "A3"),
        ("mm", (1400.0, 2100.0), 10, "A4"),
        ("mm", (100.0, 100.0), 1, "A4"),
        # 96 in at 1 in to the foot is 8 in, and Letter has 7.3 in across within its frame.
        ("in", (96 * 25.4, 96 * 25.4), 12, "Tabloid"),
        ("in", (80 * 25.4, 98 * 25.4), 12, "Letter"),
    ],
)
def test_the_largest_scale_on_the_smallest_sheet_for_it(
    unit: str, size: tuple[float, float], scale: int, paper: str
) -> None:
    block = TitleBlock("A cupboard", display_unit=unit)
    sheet = draw_sheet((Place(_plain(*size)),), block)
    assert (sheet.scale, sheet.paper.name) == (scale, paper)
    assert any(text.text == f"1:{scale}, {paper}" for text in sheet.block.texts)
