"""A page to send as it is written: files, photographs, words; nothing that is the maker's alone."""

from __future__ import annotations

import base64
import gzip
import json
import re
from html import unescape
from io import BytesIO
from pathlib import Path
from typing import Any
from zipfile import ZipFile

import pytest
from PIL import Image

from rodwright.checks.findings import Severity
from rodwright.jobs.page import html_of, write_page
from rodwright.photo.stamp import Shot, stamp_of
from rodwright.problems import Problem, ProblemsError
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit
from rodwright.wishes import SpecFile
from rodwright.wishes.reading.files import parse_spec

SPEC = """
title: Small alcove
made_by: {name: Ada Berg, organisation: Berg & Daughter}
size: {width: 800, height: 900, depth: 300}
stock:
  costly: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220], price: 74.31}
carcass: {stock: costly}
interior: {shelves: 2}
finish: oil
quote:
  client: {name: Anna Lind, address: [Hidden Lane 7]}
  words: [It takes up the oak of the stairs.]
  included: [Fitting on a day that you choose]
  not_included: [The wall behind it]
  bought_in: [{what: Glass, price: 140.10}]
  terms: [Half of it with the order]
"""
BREAKS = SPEC.replace("width: 800", "width: 2300") + "loads: 600 kg/m\n"
"""Six hundred kilograms a metre on shelves of 2.3 m break them."""


def _spec(text: str = SPEC) -> SpecFile:
    return parse_spec(text, "alcove.yaml")


def _unit(text: str = SPEC) -> Unit:
    return laid_unit(set_out(_spec(text)))


def told(text: str) -> dict[str, Any]:
    """What a page is told, unpacked."""
    found = re.search(r'<script type="application/gzip" id="told">([^<]*)</script>', text)
    assert found is not None
    document: dict[str, Any] = json.loads(gzip.decompress(base64.b64decode(found[1])))
    return document


def _photograph(unit: Unit, shot: Shot, size: tuple[int, int] = (90, 60)) -> bytes:
    file = BytesIO()
    Image.new("RGB", size, (90, 120, 60)).save(
        file, format="JPEG", comment=stamp_of(unit, shot).encode()
    )
    return file.getvalue()


def _lay(folder: Path, **photographs: bytes) -> None:
    (folder / "photographs").mkdir()
    for name, data in photographs.items():
        (folder / "photographs" / f"{name}.jpg").write_bytes(data)


def _figures(text: str, kind: str) -> list[tuple[str, str, bytes]]:
    """Captions, media types and files of the pictures that stand in a page."""
    found = re.findall(
        rf'<figure class="{kind}"><img alt="([^"]*)" src="data:([^;]*);base64,([^"]*)">', text
    )
    return [(unescape(alt), media, base64.b64decode(data)) for alt, media, data in found]


def test_the_page_stands_alone_and_its_folder_has_a_manifest(tmp_path: Path) -> None:
    made = write_page(_spec(), tmp_path / "out", photographs=False)
    assert made.files == ("page.glb", "page.html", "page.usdz")
    assert (made.folder / "page.glb").read_bytes()[:4] == b"glTF"
    with ZipFile(made.folder / "page.usdz") as package:
        assert package.testzip() is None
    assert {path.name for path in made.folder.iterdir()} == {*made.files, "manifest.json"}
    text = (made.folder / "page.html").read_text(encoding="utf-8")
    assert told(text)["model"]["title"] == "Small alcove"
    assert told(text)["words"]["beside"] == ["page.glb", "page.usdz"]
    assert [media for _, media, _ in _figures(text, "drawing")] == ["image/jpeg", "image/svg+xml"]
    assert "https://" not in re.sub(r"<script>.*?</script>", "", text, flags=re.DOTALL)


def test_equal_specs_make_equal_pages() -> None:
    assert html_of(_spec(), _unit()) == html_of(_spec(), _unit())


def test_photographs_of_the_unit_as_it_is_are_taken_and_no_others(tmp_path: Path) -> None:
    unit = _unit()
    other = _unit(SPEC.replace("800", "810"))
    _lay(
        tmp_path,
        a=_photograph(other, "closed"),
        b=_photograph(unit, "open", (2000, 1000)),
        c=_photograph(unit, "closed", (3200, 1600)),
        d=_photograph(other, "apart"),
        e=b"no picture",
    )
    made = write_page(_spec(), tmp_path)
    assert made.no_photograph == ""
    shown = _figures((tmp_path / "page.html").read_text(encoding="utf-8"), "photograph")
    assert [caption for caption, _, _ in shown] == ["Small alcove", "Small alcove, open"]
    for _, media, data in shown:
        assert media == "image/jpeg"
        with Image.open(BytesIO(data)) as image:
            assert image.size == (1600, 800)
            assert "comment" not in image.info


def test_a_page_whose_photograph_cant_be_made_says_why(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse() -> None:
        raise ProblemsError([Problem("Mitsuba isn't installed", "Install it.")])

    monkeypatch.setattr("rodwright.photo.tracing.refuse_without_mitsuba", refuse)
    made = write_page(_spec(), tmp_path)
    assert made.no_photograph == "Mitsuba isn't installed"
    assert not _figures((tmp_path / "page.html").read_text(encoding="utf-8"), "photograph")


def test_the_client_reads_what_it_is_and_what_the_maker_says() -> None:
    words = told(html_of(_spec(), _unit()))["words"]
    assert words["paragraphs"] == ["It takes up the oak of the stairs."]
    assert words["maker"] == "Ada Berg, Berg & Daughter"
    facts = {fact["word"]: [said for said, _ in fact["lines"]] for fact in words["facts"]}
    assert facts["Size"] == ["800\xa0mm wide, 900\xa0mm high, 300\xa0mm deep"]
    assert facts["Finish"] == ["Oiled, matt"]
    assert facts["Included"] == ["Fitting on a day that you choose"]
    assert facts["Not included"] == ["The wall behind it"]
    assert facts["Safety"][0].startswith("It is fixed to the wall: furniture that tips over")


def test_nothing_that_is_the_makers_alone_is_in_it() -> None:
    text = html_of(_spec(), _unit())
    whole = json.dumps(told(text)) + re.sub(r"<script.*?</script>", "", text, flags=re.DOTALL)
    for secret in ("74.31", "140.10", "Hidden Lane", "Anna Lind", "Half of it", "costly", ".yaml"):
        assert secret not in whole, secret
    document = told(text)
    for detail in document["sections"]["details"].values():
        said = {word for word, about in detail.items() if about}
        assert said == {"material", "weight", "finish"}
    for section in ("findings", "lists", "opening", "strength", "cutting"):
        assert document["sections"][section] is None


def test_a_page_is_drawn_in_the_makers_unit() -> None:
    text = SPEC.replace("title:", "unit: in\ntitle:").replace("thickness: 18", "thickness: 3/4")
    text = text.replace("[2440, 1220]", "[96, 48]")
    text = text.replace(
        "width: 800, height: 900, depth: 300", "width: 34, height: 40, depth: 11 1/2"
    )
    page = html_of(_spec(text), _unit(text))
    assert told(page)["model"]["size"] == "34 x 40 x 11 1/2 in"
    ((caption, media, _),) = _figures(page, "drawing")
    assert (caption, media) == ("Front and side, in inches", "image/svg+xml")


def test_a_drawing_says_whether_sizes_are_those_inside_the_face_frame() -> None:
    text = SPEC.replace(
        "finish:", "face_frame: {stock: costly, width: 40, corners: butted}\nfinish:", 1
    )
    ((caption, _, _),) = _figures(html_of(_spec(text), _unit(text)), "drawing")
    assert caption.endswith(" as seen, openings inside the face frame, in millimetres")


def test_a_unit_with_errors_is_a_draft_and_they_are_not_told(tmp_path: Path) -> None:
    made = write_page(_spec(BREAKS), tmp_path, photographs=False)
    (error, *_) = [each for each in made.findings if each.severity is Severity.ERROR]
    text = (tmp_path / "page.html").read_text(encoding="utf-8")
    assert told(text)["words"]["draft"] == "Draft: this design isn't settled yet."
    assert "<p>Draft: this design isn&#x27;t settled yet.</p>" in text
    assert error.message not in json.dumps(told(text), ensure_ascii=False)


def test_what_a_maker_put_there_stays(tmp_path: Path) -> None:
    (tmp_path / "page.html").write_text("mine", encoding="utf-8")
    with pytest.raises(ProblemsError, match="in the way"):
        write_page(_spec(), tmp_path, photographs=False)
    assert (tmp_path / "page.html").read_text(encoding="utf-8") == "mine"
    assert [path.name for path in tmp_path.iterdir()] == ["page.html"]


SCRIBED = """
title: Small alcove
opening: {width: 810, height: 907, depth: 300}
fit: {sides: 5, top: 7, overlap: 2}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
  oak: {kind: board, material: european oak, thickness: 22}
carcass: {stock: ply}
face_frame: {stock: oak, width: 45, corners: butted, overhang: {sides: 14, top: 14}}
"""


def test_what_is_scribed_has_one_size_wherever_a_client_reads_it() -> None:
    """By hand: a frame of 800 and two of 14, 900 and 14, before it is cut; from wall to wall and
    up to the top it is the opening's 810 x 907."""
    page = told(html_of(_spec(SCRIBED), _unit(SCRIBED)))
    assert page["model"]["size"] == "810 x 907 x 300 mm"
    size = page["words"]["facts"][0]["lines"]
    assert size[0][0] == "810\u00a0mm wide, 907\u00a0mm high, 300\u00a0mm deep"
    assert "828\u00a0mm wide and 914\u00a0mm high" in size[-1][0]
    figures = {each["text"] for each in page["sections"]["dimensions"]}
    assert {"810", "907", "300"} <= figures
    assert not {"828", "914"} & figures


def test_what_nobody_sees_is_shown_and_not_listed() -> None:
    text = SPEC.replace("interior:", "base: {kind: plinth, height: 80}\ninterior:")
    told_of = {
        part["name"]: part["told"]
        for part in told(html_of(_spec(text), _unit(text)))["model"]["parts"]
    }
    assert [name for name, listed in told_of.items() if not listed] == [
        "Plinth back",
        "Plinth cross member",
    ]
    assert told_of["Plinth front"] and told_of["Shelf"]
