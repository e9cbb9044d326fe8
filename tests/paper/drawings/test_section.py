"""Drawings on paper: what is in the PDF by readers that aren't ours, and the same bytes again."""

from __future__ import annotations

import io
from collections import Counter
from pathlib import Path

import pypdf
import pytest

from kit.pages import text_of
from kit.samples import bookcase
from kit.specs import unit_from
from rodwright import read_spec, set_out
from rodwright.paper.book.whole import book_pdf
from rodwright.paper.drawings.layout import DrawnSheet, drawn_sheets
from rodwright.paper.drawings.section import drawing_files, drawings_section
from rodwright.pictures.drafting.figures import PAPERS
from rodwright.unit import Unit

MODELS = Path(__file__).parents[3] / "models"
POINTS_PER_MM = 72 / 25.4


def drawn(unit: Unit) -> tuple[DrawnSheet, ...]:
    return drawn_sheets(unit, PAPERS[unit.display_unit][:1])


def words_of(pdf: bytes, tmp_path: Path) -> str:
    """The text of a PDF, as poppler reads it."""
    path = tmp_path / "drawings.pdf"
    path.write_bytes(pdf)
    return text_of(path, "raw")


@pytest.mark.parametrize("name", ["hallway-bookcase", "linen-cupboard"])
def test_figures_and_refs_of_a_model_are_found_in_the_pdf(name: str, tmp_path: Path) -> None:
    unit = set_out(read_spec(MODELS / f"{name}.yaml"))
    sheets = drawn(unit)
    files = drawing_files(unit, sheets)
    text = words_of(files["book/drawings.pdf"], tmp_path).replace("\n", " ")
    assert unit.title in text
    had = Counter(text.split())
    figures = [
        dimension.text
        for each in sheets
        for view in each.sheet.views
        for dimension in view.view.dimensions
    ]
    wanted = Counter(word for figure in figures for word in figure.split())
    assert all(had[word] >= count for word, count in wanted.items())
    refs = {note.text for each in sheets for view in each.sheet.views for note in view.view.notes}
    assert refs and all(ref in text for ref in refs)
    for number in range(1, len(sheets) + 1):
        assert f"{number} of {len(sheets)}" in text


def test_pages_are_as_large_as_their_paper() -> None:
    unit = bookcase()
    sheets = drawn(unit)
    pages = pypdf.PdfReader(io.BytesIO(drawing_files(unit, sheets)["book/drawings.pdf"])).pages
    assert len(pages) == len(sheets)
    for page, each in zip(pages, sheets, strict=True):
        size = (float(page.mediabox.width), float(page.mediabox.height))
        paper = each.sheet.paper
        assert size == pytest.approx(
            (paper.width * POINTS_PER_MM, paper.height * POINTS_PER_MM), abs=0.01
        )


def test_the_same_unit_gives_the_same_bytes() -> None:
    unit = bookcase()
    assert drawing_files(unit, drawn(unit)) == drawing_files(unit, drawn(unit))


def test_the_section_says_how_drawings_are_read(tmp_path: Path) -> None:
    unit = set_out(read_spec(MODELS / "linen-cupboard.yaml"))
    section = drawings_section(unit, drawn(unit))
    said = " ".join(section.data["conventions"])
    assert "hinged at the triangle's point" in said
    assert "First-angle projection" in said
    assert "solid wood" in said
    # The cupboard stands in an opening: left, right and top are closed somehow.
    assert [line.split(":")[0] for line in section.data["opening"][1:]] == ["Left", "Right", "Top"]
    cover = {"banner": "", "facts": [], "stock": [], "notes": [], "picture": "blank.svg"}
    blank = b'<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10"/>'
    pdf = book_pdf(unit, (cover, {"blank.svg": blank}), [section], "a4", None)
    text = words_of(pdf, tmp_path)
    assert "How to read them" in text
    assert "Section A-A" in text


def test_a_bookcase_needs_no_words_of_doors_or_openings() -> None:
    section = drawings_section(bookcase(), drawn(bookcase()))
    said = " ".join(section.data["conventions"])
    assert "hinged" not in said
    assert "two dots" not in said
    assert section.data["opening"] == []
    assert section.data["services"] == []


def test_what_stays_in_the_room_is_told_with_its_caution() -> None:
    unit = unit_from(
        "size: {width: 900, height: 1200, depth: 400}\n"
        "interior: {shelves: {count: 1, fixed: true}}\n"
        "back: {stock: thin, fixing: applied}\n"
        "cutouts: [{kind: socket, at: [300, 200], width: 150, height: 90}]\n"
    )
    said = drawings_section(unit, drawn(unit)).data["services"]
    assert said[0] == "Cut out round: socket."
    assert "licensed" in said[1]


def test_a_title_of_four_hundred_letters_is_all_there(tmp_path: Path) -> None:
    title = "Bookcase of many words " * 17
    unit = bookcase()
    long = Unit(title.strip()[:400], unit.envelope, unit.parts, unit.joints)
    text = words_of(drawing_files(long, drawn(long)[:1])["book/drawings.pdf"], tmp_path)
    assert text.count("many") >= 17
