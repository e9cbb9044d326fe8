"""The book's own pages as other programs read them: sizes, places of words, nothing cut off."""

from __future__ import annotations

import io
import shutil
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PIL import Image
from pypdf import PdfReader

from kit.pages import pages_of
from rodwright.checks import check_parts
from rodwright.checks.findings import Severity
from rodwright.jobs.cut import cut
from rodwright.paper.book.buying import buying_section
from rodwright.paper.book.cautions import cautions_section
from rodwright.paper.book.cover import cover_data
from rodwright.paper.book.cutting import cutting_section
from rodwright.paper.book.parts import parts_section
from rodwright.paper.book.strength import strength_section
from rodwright.paper.book.whole import SIZES, book_pdf, lying
from rodwright.paper.lists.section import lists_section
from rodwright.setout import set_out
from rodwright.trade.label_sheets import Paper
from rodwright.wishes import SpecFile, read_spec

MODELS = Path(__file__).parents[3] / "models"
POINT = 25.4 / 72
PLAIN = """
title: {title}
date: 2026-11-20
made_by: {{name: {name}, organisation: The Workshop of Many Words and Sons}}
number: RW-2026-000000000117
revision: B
size: {{width: 620, height: 900, depth: 250}}
stock:
  {stock}: {{kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}}
carcass: {{stock: {stock}}}
interior: {{shelves: {{count: 2}}}}
"""
pytestmark = pytest.mark.skipif(shutil.which("pdftotext") is None, reason="no poppler-utils")


def picture() -> bytes:
    file = io.BytesIO()
    Image.new("RGB", (400, 300), "grey").save(file, format="JPEG")
    return file.getvalue()


def written(spec: SpecFile, paper: Paper, folder: Path) -> Path:
    """The pages that need no solids, with grey for pictures."""
    unit = set_out(spec)
    findings, plan, grey = check_parts(unit), cut([spec]), picture()
    strength = strength_section(unit)
    sections = [
        cautions_section(findings),
        parts_section(unit, {}, {"Taken apart": grey}),
        *([strength] if strength is not None else []),
        buying_section(unit, plan),
        cutting_section(plan, lying(paper)),
        lists_section(unit, plan),
    ]
    when = datetime(2026, 11, 20, tzinfo=UTC)
    made = folder / "book.pdf"
    made.write_bytes(book_pdf(unit, cover_data(unit, findings, grey), sections, paper, when))
    return made


def plain(folder: Path, title: str, name: str = "A. Joiner", stock: str = "ply") -> SpecFile:
    path = folder / "spec.yaml"
    path.write_text(PLAIN.format(title=title, name=name, stock=stock), encoding="utf-8")
    return read_spec(path)


def assert_clean(pdf: Path) -> None:
    """No page is empty, every word is 5 mm within the paper, and none runs into another."""
    for number, page in enumerate(pages_of(pdf), 1):
        assert len(page.words) > 5, number
        assert page.outside(5 / POINT) == [], number
        assert page.overlapping() == [], number


@pytest.mark.parametrize(
    ("model", "paper"), [("hallway-bookcase", "letter"), ("record-cabinet", "a4")]
)
def test_every_word_is_within_the_margins_and_alone(
    model: str, paper: Paper, tmp_path: Path
) -> None:
    made = written(read_spec(MODELS / f"{model}.yaml"), paper, tmp_path)
    assert_clean(made)
    width, height = SIZES[paper]
    for page in pages_of(made):
        sides = sorted((page.width * POINT, page.height * POINT))
        assert sides == pytest.approx([width, height], abs=0.02)


@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("Bookcase for the very long landing of the house on the hill " * 6, "Ann " * 9),
        ("W" * 400, "M" * 80),
        ("Шкаф για τον Γιώργο ארון כתר خزانة الكتب", "Ольга Ἀγάθη"),
    ],
)
def test_long_titles_and_other_alphabets(title: str, name: str, tmp_path: Path) -> None:
    spec = plain(tmp_path, title.strip(), name, "a stock whose name says where it was bought")
    made = written(spec, "a4", tmp_path)
    assert_clean(made)
    reader = PdfReader(made)
    assert reader.metadata is not None and reader.metadata.title == title.strip()
    assert name.strip() in str(reader.metadata.author)


def test_every_finding_is_told_before_any_work(tmp_path: Path) -> None:
    spec = read_spec(MODELS / "hallway-bookcase.yaml")
    pages = pages_of(written(spec, "letter", tmp_path))
    told = " ".join(page.text for page in pages[1:3])
    findings = check_parts(set_out(spec))
    assert any(each.severity is Severity.CAUTION for each in findings)
    for each in findings:
        assert each.message[1:] in told and each.remedy in told, each.message
    assert "Saws and routers maim" in told


def test_fonts_are_embedded_and_ours(tmp_path: Path) -> None:
    """So that it prints alike everywhere: no font of the machine's is asked for."""
    reader = PdfReader(written(plain(tmp_path, "Niche shelf"), "a4", tmp_path))
    names = set()
    for page in reader.pages:
        for font in page["/Resources"].get("/Font", {}).values():  # type: ignore[attr-defined]
            inner = font.get_object()["/DescendantFonts"][0].get_object()
            descriptor = inner["/FontDescriptor"].get_object()
            assert any(f"/FontFile{kind}" in descriptor for kind in ("", "2", "3"))
            names.add(str(descriptor["/FontName"]).split("+")[-1].split("-")[0])
    assert names <= {"Aileron", "DejaVuSans"}
