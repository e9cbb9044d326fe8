"""Pages of labels: all of them there, within the paper, and not over each other."""

from __future__ import annotations

import pytest

from rodwright.lengths import LengthUnit
from rodwright.pictures.cut_labels import PAGES, LabelText, label_pages
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Drawing, Lettering, Stroke

LONG = "plane it from 22 to 18 mm thick and glue it up with SH1b before both are trimmed together"


def labels(count: int) -> list[LabelText]:
    return [
        LabelText(f"B SH{at}a" * (1 + 3 * (at % 2)), ("Shelf, Bookcase", LONG, LONG, LONG, LONG))
        for at in range(count)
    ]


def boxes(page: Drawing) -> list[tuple[float, float, float, float]]:
    """The outline of each label: left, top, right, foot."""
    found = []
    for mark in page.marks:
        if isinstance(mark, Stroke):
            xs, ys = zip(*mark.lines[0], strict=True)
            found.append((min(xs), min(ys), max(xs), max(ys)))
    return found


@pytest.mark.parametrize("unit", ["mm", "in"])
def test_every_label_is_on_the_paper_and_apart_from_others(unit: LengthUnit) -> None:
    pages = label_pages(labels(50), unit, "Bookcase")
    assert sum(len(boxes(page)) for page in pages) == 50
    for page in pages:
        assert (page.width, page.height) == PAGES[unit]
        found = boxes(page)
        for at, (left, top, right, foot) in enumerate(found):
            assert left > 0 and top > 0 and right < page.width and foot < page.height
            for other in found[:at]:
                apart = (
                    right <= other[0] + 1e-9
                    or other[2] <= left + 1e-9
                    or foot <= other[1] + 1e-9
                    or other[3] <= top + 1e-9
                )
                assert apart


def test_no_text_leaves_its_label() -> None:
    (page,) = label_pages(labels(20), "mm", "Bookcase")
    found = boxes(page)
    for mark in page.marks:
        if isinstance(mark, Lettering):
            x, y = mark.at
            right = x + text_width(mark.text, mark.size)
            assert any(
                left < x and right < far and top < y - 0.7 * mark.size and y < foot
                for left, top, far, foot in found
            ), mark.text


def test_what_finds_no_room_is_said_to_be_elsewhere() -> None:
    (page,) = label_pages(labels(1), "mm", "Bookcase")
    texts = [mark.text for mark in page.marks if isinstance(mark, Lettering)]
    assert texts[0] == "B SH0a"
    assert texts[-1] == "more: see the cut list"
    short = label_pages([LabelText("SD1", ("Side",))], "mm", "Bookcase")[0]
    assert [mark.text for mark in short.marks if isinstance(mark, Lettering)] == ["SD1", "Side"]


def test_pages_are_counted() -> None:
    assert [page.title for page in label_pages(labels(25), "mm", "Bookcase")] == [
        "Bookcase: labels 1 of 2",
        "Bookcase: labels 2 of 2",
    ]
