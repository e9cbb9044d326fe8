"""From a spec to the job book, read back by programs that aren't ours."""

from __future__ import annotations

import shutil
import subprocess
from pathlib import Path

import pytest
from pypdf import PdfReader

from rodwright.jobs.book import Book, book
from rodwright.jobs.build import build
from rodwright.jobs.cut import cut, write_cut
from rodwright.problems import ProblemsError
from rodwright.wishes import SpecFile, read_spec

SPEC = """
title: {title}
size: {{width: 620, height: 900, depth: 250}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220], price: 74}}
carcass: {{stock: ply}}
interior: {{shelves: {{count: 2}}}}
{more}
"""


def spec(folder: Path, title: str = "Niche shelf", more: str = "") -> SpecFile:
    path = folder / "spec.yaml"
    path.write_text(SPEC.format(title=title, more=more), encoding="utf-8")
    return read_spec(path)


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Book:
    folder = tmp_path_factory.mktemp("book")
    return book(spec(folder), folder / "out")


def pages(path: Path) -> list[str]:
    return [page.extract_text() for page in PdfReader(path).pages]


def test_the_book_has_its_sections_where_the_outline_says(made: Book) -> None:
    reader = PdfReader(made.folder / "book.pdf")
    texts = pages(made.folder / "book.pdf")
    titles = [each for each in reader.outline if not isinstance(each, list)]
    assert [each.title for each in titles] == [
        "Before any work: take care",
        "The parts",
        "Drawings",
        "Will it hold?",
        "What to buy",
        "Cutting plan",
        "Lists for the bench",
        "Rods",
        "Part sheets",
        "Putting it together",
        "Fitting on site",
        "Finishing",
    ]
    for each in titles:
        number = reader.get_destination_page_number(each)
        assert number is not None and each.title in texts[number]


def test_pages_are_of_the_paper_asked_for(made: Book) -> None:
    for page in PdfReader(made.folder / "book.pdf").pages:
        sides = sorted((float(page.mediabox.width), float(page.mediabox.height)))
        assert sides == pytest.approx([210 / 25.4 * 72, 297 / 25.4 * 72], abs=0.01)


@pytest.mark.skipif(shutil.which("qpdf") is None, reason="qpdf isn't installed")
def test_qpdf_finds_nothing_wrong(made: Book) -> None:
    for name in made.files:
        if name.endswith(".pdf"):
            done = subprocess.run(["qpdf", "--check", made.folder / name], capture_output=True)
            assert done.returncode == 0, done.stdout


def test_the_same_spec_gives_the_same_bytes(made: Book, tmp_path: Path) -> None:
    again = book(spec(tmp_path), tmp_path / "out")
    assert again.files == made.files
    for name in made.files:
        assert (again.folder / name).read_bytes() == (made.folder / name).read_bytes(), name


def test_build_cut_and_book_share_a_folder_and_ctrl_c_leaves_it_alone(tmp_path: Path) -> None:
    wished, out = spec(tmp_path), tmp_path / "out"
    made = book(wished, out)
    cutting = cut([wished])
    built = build(made.unit, out, pictures=False)
    planned = write_cut(cutting, out)
    names = {*made.files, *built.files, *planned}
    before = {name: (out / name).read_bytes() for name in names}

    def stop(step: str) -> None:
        if step == "setting labels":
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        book(wished, out, progress=stop)
    assert {name: (out / name).read_bytes() for name in names} == before
    assert {path.relative_to(out).as_posix() for path in out.rglob("*") if path.is_file()} == {
        *names,
        "manifest.json",
    }


def test_what_cant_be_made_is_refused_before_the_work(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def worked(step: str) -> None:
        raise AssertionError(step)

    with pytest.raises(ProblemsError, match="no sheet of labels called `round`") as caught:
        book(spec(tmp_path), tmp_path / "out", labels="round", progress=worked)
    assert "99.1 x 57" in str(caught.value)
    monkeypatch.setattr("rodwright.paper.typesetting.find_spec", lambda _: None)
    with pytest.raises(ProblemsError, match="pip install typst"):
        book(spec(tmp_path), tmp_path / "out", progress=worked)
    assert not (tmp_path / "out").exists()


def test_what_isnt_ours_is_refused(tmp_path: Path) -> None:
    out = tmp_path / "out"
    out.mkdir()
    (out / "book.pdf").write_text("mine")
    with pytest.raises(ProblemsError, match="in the way"):
        book(spec(tmp_path), out)
    assert [each.name for each in out.iterdir()] == ["book.pdf"]


def test_errors_are_told_across_the_cover_and_why_there_is_no_plan(tmp_path: Path) -> None:
    path = tmp_path / "spec.yaml"
    path.write_text(SPEC.format(title="Long", more="").replace("[2440, 1220]", "[800, 400]"))
    made = book(read_spec(path), tmp_path / "out")
    texts = pages(made.folder / "book.pdf")
    assert "Not to be cut: 1 error" in texts[0]
    whole = " ".join(" ".join(texts).split())
    assert "No cutting plan can be made" in whole
    assert made.no_plan[0].splitlines()[0].split(": ", 1)[1][:40] in whole
    assert {"book/labels.pdf", "book/rods.pdf", "book/part-sheets.pdf"} <= set(made.files)
