"""The rods' pages in the job book: every figure in the tables, drawings that keep texts apart."""

from __future__ import annotations

from functools import cache
from io import BytesIO

import pytest
from pypdf import PdfReader

from kit.overlaps import overlaps
from kit.samples import bookcase
from rodwright.jobs.new import model_names, model_path
from rodwright.lengths import format_length
from rodwright.paper.rods.rods import rods_of
from rodwright.paper.rods.section import reduced, rods_section
from rodwright.paper.typesetting import typeset
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.wishes import read_spec


@cache
def model(name: str) -> Unit:
    return set_out(read_spec(model_path(name)))


@pytest.mark.parametrize("name", model_names())
def test_every_line_of_every_rod_has_its_figure_in_a_table(name: str) -> None:
    unit = model(name)
    for rod, told in zip(rods_of(unit), rods_section(unit).data["rods"], strict=True):
        for track, table in zip(rod.tracks, told["tracks"], strict=True):
            figures = []
            for row in table["rows"]:
                figures += [row["at"]] if row["at"] else row["what"].split(": ")[1].split(", ")
            assert figures == [format_length(line.at, unit.display_unit) for line in track.lines]


@pytest.mark.parametrize("name", model_names())
def test_no_text_of_a_reduced_rod_lies_on_another_or_on_a_line(name: str) -> None:
    unit = model(name)
    for rod in rods_of(unit):
        for page in reduced(rod, unit.display_unit):
            assert list(overlaps(page)) == [], (name, page.title)
            assert page.width <= 170.0
            assert page.height <= 205.001


def test_the_pages_tell_from_where_and_which_way_figures_run() -> None:
    (pdf,) = typeset("rods-alone", rods_section(bookcase()).data, {})
    text = " ".join(" ".join(page.extract_text().split()) for page in PdfReader(BytesIO(pdf)).pages)
    assert "0 is the floor; figures run up, to 1000 mm." in text
    assert "482 SH1 underside; housing, lower side 18 wide, 6 deep" in text
    assert "0 is the front of the face frame (RL1, RL2, ST1, ST2); figures run to the rear" in text


def test_a_row_of_holes_is_told_whole_between_its_first_and_its_last() -> None:
    tracks = rods_section(model("reading-alcove")).data["rods"][0]["tracks"]
    rows = next(track["rows"] for track in tracks if track["on"].startswith("SD2"))
    at = next(number for number, row in enumerate(rows) if row["at"] == "741.5")
    assert rows[at] == {
        "at": "741.5",
        "what": "hole for adjustable shelves, first of 38",
        "detail": "5 dia., 10 deep, 32 apart, 2 abreast",
    }
    assert rows[at + 1]["what"].startswith("the row goes on: 773.5, 805.5, 837.5")
