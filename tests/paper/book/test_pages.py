"""The book's own pages as other programs read them: sizes, places of words, nothing cut off."""

from __future__ import annotations

import io
import re
import subprocess
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PIL import Image
from pypdf import PdfReader

from kit.pages import pages_of
from rodwright.checks import check_parts
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.jobs.cut import cut
from rodwright.paper.book.buying import buying_section
from rodwright.paper.book.cautions import cautions_section
from rodwright.paper.book.cover import cover_data
from rodwright.paper.book.cutting import cutting_section
from rodwright.paper.book.parts import parts_section
from rodwright.paper.book.strength import strength_section
from rodwright.paper.book.whole import SIZES, book_pdf, lying
from rodwright.paper.lists.section import lists_section
from rodwright.paper.sections import Section
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


def in_quotes(text: str) -> str:
    """As pages have words of the spec, which findings have in backticks."""
    return re.sub("`([^`]+)`", r"“\1”", text)


def assert_clean(pdf: Path) -> None:
    """No page is empty, every word is 5 mm within the paper, none runs into another, and what is
    copied has no letters that aren't seen."""
    for number, page in enumerate(pages_of(pdf), 1):
        assert len(page.words) > 5, number
        assert page.outside(5 / POINT) == [], number
        assert page.overlapping() == [], number
        assert "\u200b" not in page.text, number
    told = subprocess.run(["pdfinfo", str(pdf)], capture_output=True, check=True)
    assert told.stderr == b""


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
        assert in_quotes(each.message[1:]) in told and in_quotes(each.remedy) in told, each.message
    assert "Saws and routers maim" in told


def test_words_of_the_spec_are_in_quotes(tmp_path: Path) -> None:
    spec, grey = plain(tmp_path, "Niche shelf"), picture()
    finding = Finding(
        Severity.WARNING,
        Rule.SMALL_OPENING,
        "at `left` there is too little room",
        "Give `hinge.opens_to_where_it_is_stopped` less, or `middle` more.",
    )
    sections = [cautions_section([finding])]
    cover = cover_data(set_out(spec), (), grey)
    made = tmp_path / "book.pdf"
    made.write_bytes(
        book_pdf(set_out(spec), cover, sections, "a4", datetime(2026, 11, 20, tzinfo=UTC))
    )
    told = " ".join(page.text for page in pages_of(made))
    for word in ("left", "hinge.opens_to_where_it_is_stopped", "middle"):
        assert f"“{word}”" in told
    assert "`" not in told


def test_what_would_help_stays_with_what_fails(tmp_path: Path) -> None:
    row = {
        **{"subject": "plinth", "what": "sag after 10 years", "figure": "9 mm", "spare": "none"},
        **{"limit": "at most 3 mm", "word": "Doesn't hold", "lacking": "", "memory": True},
        "remedies": ["Would do: a thicker one", "Would do: another " * 6, "Not enough: a third"],
    }
    data = {"groups": [{"title": "Bases", "rows": [row] * 40}]}
    unit, grey = set_out(plain(tmp_path, "Niche shelf")), picture()
    sections, when = (
        [Section("strength", "Will it hold?", data)],
        datetime(2026, 11, 20, tzinfo=UTC),
    )
    made = tmp_path / "book.pdf"
    made.write_bytes(book_pdf(unit, cover_data(unit, (), grey), sections, "a4", when))
    counts = [
        [page.text.count(word) for word in ("plinth", "Doesn", "third")]
        for page in pages_of(made)[1:]
    ]
    assert len(counts) > 2 and sum(each[0] for each in counts) == 40
    assert all(one == two == three for one, two, three in counts)
    told = next(iter(pages_of(made)[1:])).words
    at = next(number for number, word in enumerate(told) if word.text == "plinth")
    assert len({round(word.top) for word in told[at : at + 5]}) == 1, "what fails is on one line"


def test_a_heading_stays_with_its_table(tmp_path: Path) -> None:
    """Whatever room the pictures before it leave on their page."""
    unit, grey = set_out(plain(tmp_path, "Niche shelf")), picture()
    cover = cover_data(unit, (), grey)
    for lines in range(0, 30, 2):
        title = "The unit, open, " + "as it stands " * 9 * lines
        section = parts_section(unit, {"Open": grey, title: grey}, {})
        made = tmp_path / "book.pdf"
        made.write_bytes(book_pdf(unit, cover, [section], "a4", datetime(2026, 11, 20, tzinfo=UTC)))
        (page,) = [each for each in pages_of(made) if "Parts, finished" in each.text]
        assert "SD1" in page.text, lines


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
