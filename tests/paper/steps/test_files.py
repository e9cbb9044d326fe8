"""Assembly as files of its own: a PDF that readers accept, and JSON that has every step."""

from __future__ import annotations

import json
from collections import Counter
from dataclasses import replace
from io import BytesIO
from pathlib import Path

import pytest
from pypdf import PdfReader

from kit.pages import text_of
from kit.samples import bookcase
from rodwright import hardware_list, read_spec, set_out
from rodwright.making.order import order_of
from rodwright.paper.steps.files import assembly_files, assembly_sections
from rodwright.unit import Unit

MODELS = Path(__file__).parents[3] / "models"


def _files(unit: Unit) -> dict[str, bytes]:
    order = order_of(unit)
    return assembly_files(unit, order, assembly_sections(unit, order), "a4")


@pytest.fixture(scope="module")
def alcove() -> Unit:
    return set_out(read_spec(MODELS / "reading-alcove.yaml"))


@pytest.fixture(scope="module")
def files(alcove: Unit) -> dict[str, bytes]:
    return _files(alcove)


def test_the_same_unit_gives_the_same_bytes(alcove: Unit, files: dict[str, bytes]) -> None:
    assert _files(alcove) == files
    assert sorted(files) == ["book/assembly.json", "book/assembly.pdf"]


def test_the_json_has_every_step_once_and_all_hardware(
    alcove: Unit, files: dict[str, bytes]
) -> None:
    document = json.loads(files["book/assembly.json"])
    steps = [
        step for stage in document["stages"] for made in stage["made"] for step in made["steps"]
    ]
    assert len(steps) == len(order_of(alcove).steps)
    assert all(stage["moves"] for stage in document["stages"])
    numbers = [move["number"] for stage in document["stages"] for move in stage["moves"]]
    assert numbers == list(range(1, len(numbers) + 1))
    found: Counter[tuple[str, str]] = Counter()
    for stage in document["stages"]:
        for move in stage["moves"]:
            for each in move["hardware"]:
                found[each["name"].casefold(), each["size"]] += each["count"]
    for each in document["other_hardware"]:
        found[each["name"].casefold(), each["size"]] += each["count"]
    assert found == {(row.name.casefold(), row.size): row.quantity for row in hardware_list(alcove)}


def test_pages_are_a4_and_each_has_text(files: dict[str, bytes]) -> None:
    reader = PdfReader(BytesIO(files["book/assembly.pdf"]))
    for page in reader.pages:
        assert float(page.mediabox.width) == pytest.approx(210 / 25.4 * 72, abs=0.5)
        assert len(page.extract_text()) > 40


@pytest.mark.parametrize("name", ["reading-alcove", "pottery-dresser"])
def test_no_two_words_lie_over_each_other_and_none_outside_the_margins(
    name: str, tmp_path: Path
) -> None:
    path = tmp_path / "assembly.pdf"
    path.write_bytes(_files(set_out(read_spec(MODELS / f"{name}.yaml")))["book/assembly.pdf"])
    pages = text_of(path, "bbox").split("<page ")[1:]
    assert pages
    for page in pages:
        boxes = []
        for line in page.splitlines():
            if "<word" in line:
                values = [float(each.split('"')[1]) for each in line.split(" ")[-4:] if '"' in each]
                boxes.append((values, line))
        for (xmin, ymin, xmax, ymax), line in boxes:
            assert xmin >= 18 / 25.4 * 72 and xmax <= (210 - 10) / 25.4 * 72, line
            assert ymin >= 10 / 25.4 * 72 and ymax <= (297 - 3) / 25.4 * 72, line
        for at, ((a, b, c, d), line) in enumerate(boxes):
            for (e, f, g, h), other in boxes[at + 1 :]:
                wide, high = min(c, g) - max(a, e), min(d, h) - max(b, f)
                # Boxes are as high as the face's line, a little more than what is inked.
                assert wide <= 0.5 or high <= 3.0, (line, other)


def test_titles_of_stages_and_cautions_are_found(files: dict[str, bytes], tmp_path: Path) -> None:
    path = tmp_path / "assembly.pdf"
    path.write_bytes(files["book/assembly.pdf"])
    text = text_of(path, "layout")
    for stage in json.loads(files["book/assembly.json"])["stages"]:
        if stage["where"] == "bench":
            assert stage["title"] in " ".join(text.split())
    for words in ("Dry fit", "Fitting on site", "catch fire", "cables and pipes"):
        assert words in text


def test_a_title_of_many_letters_and_other_alphabets_stays_in_its_line(alcove: Unit) -> None:
    unit = replace(alcove, title="Книжный шкаф βιβλιοθήκη " * 20)
    reader = PdfReader(BytesIO(_files(unit)["book/assembly.pdf"]))
    foot = reader.pages[0].extract_text().splitlines()
    assert any("Книжный" in line and "…" in line for line in foot)
    assert len(reader.pages) == len(PdfReader(BytesIO(_files(alcove)["book/assembly.pdf"])).pages)


def test_one_board_has_its_pages_too() -> None:
    whole = bookcase()
    unit = replace(whole, parts=whole.parts[:1], joints=(), clearances=())
    reader = PdfReader(BytesIO(_files(unit)["book/assembly.pdf"]))
    assert "nothing to put together" in " ".join(reader.pages[0].extract_text().split())
