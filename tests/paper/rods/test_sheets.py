"""Rods on paper: full size in the PDF's own units, texts clear of each other, tiles that join."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from io import BytesIO
from xml.etree import ElementTree

import pytest
from pypdf import PdfReader

from kit.overlaps import overlaps
from kit.pdf_lines import POINT, Segment, page_lines, page_sizes
from kit.samples import ASH, bookcase
from rodwright.geometry import Box
from rodwright.jobs.new import model_names, model_path
from rodwright.paper.rods.files import rod_files
from rodwright.paper.rods.rods import rods_of
from rodwright.paper.rods.sheets import FLAP, LONGEST, PAPERS, USUAL_PAPER, strip, tiles
from rodwright.pictures.ink import Lettering
from rodwright.setout import set_out
from rodwright.unit import Blank, Grain, Hole, Part, Placement, Role, Surface, Unit
from rodwright.wishes import read_spec

TRACK, BOARD, FIRST = 56.0, 9.0, 32.5
"""Width of a track and of the board on it, and where the first board begins on a sheet, mm."""


@cache
def model(name: str) -> Unit:
    return set_out(read_spec(model_path(name)))


def long_board() -> Unit:
    part = Part(
        "SH1",
        "Long board",
        Role.SHELF,
        "Shelves",
        Blank(12000.0, 200.0, 22.0, ASH, Grain.LENGTHWISE),
        Placement((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0)),
    )
    return Unit("One board", Box((0.0, 0.0, 0.0), (12000.0, 200.0, 22.0)), (part,))


@pytest.mark.parametrize("name", model_names())
def test_no_text_lies_on_another_or_on_a_line(name: str) -> None:
    unit = model(name)
    for rod in rods_of(unit):
        for page in (
            *strip(rod, unit.title, unit.display_unit),
            *tiles(rod, unit.title, unit.display_unit, USUAL_PAPER[unit.display_unit]),
        ):
            assert list(overlaps(page)) == [], page.title


def rod_lines(lines: list[Segment], foot: float, start: float) -> set[tuple[int, float]]:
    """Lines across the tracks of a sheet: the number of the track and the place on the rod, by the
    place of the foot on the sheet and on the rod."""
    found = set()
    for (x, y), (right, low) in lines:
        across = abs(abs(right - x) - BOARD) < 0.005 and abs(low - y) < 1e-6
        if across:
            found.add((round((min(x, right) - FIRST) / TRACK), start + foot - y))
    return found


def same(lines: set[tuple[int, float]], wanted: set[tuple[int, float]]) -> bool:
    """Whether lines are where they are wanted, to a hundredth of a millimetre, and no others."""

    def near(one: tuple[int, float], others: set[tuple[int, float]]) -> bool:
        return any(one[0] == track and abs(one[1] - at) < 0.01 for track, at in others)

    return all(near(each, wanted) for each in lines) and all(near(each, lines) for each in wanted)


def joints(lines: list[Segment]) -> list[float]:
    """The lines on which sheets are laid on each other, from the top of the sheet."""
    level = [y for (x, y), (right, low) in lines if abs(right - x) > 150.0 and abs(low - y) < 1e-6]
    return sorted(level)


@pytest.mark.parametrize("name", ["reading-alcove", "hallway-bookcase", "tape-drawers"])
def test_tiles_joined_at_their_lines_have_every_line_of_the_rod_and_so_has_the_strip(
    name: str,
) -> None:
    unit = model(name)
    files = rod_files(unit)
    tiled = iter(page_lines(files["book/rods.pdf"]))
    step = PAPERS[USUAL_PAPER[unit.display_unit]].step
    for rod in rods_of(unit):
        count = max(1, -int(-(rod.length - FLAP) // step))
        wanted = {
            (number, line.at) for number, track in enumerate(rod.tracks) for line in track.lines
        }
        got = set()
        for first in range(0, len(rod.tracks), 3):
            start, foot = 0.0, 0.0
            for number in range(count):
                lines = next(tiled)
                at = joints(lines)
                # The foot of the first sheet is where the rod's own end is drawn.
                if number == 0:
                    foot = at[0] + step if at else max(max(y, low) for (_, y), (_, low) in lines)
                else:
                    start, foot = start + step, at[-1]
                got |= {(first + each, y) for each, y in rod_lines(lines, foot, start)}
        assert same(got, wanted)
        pdf, got = files[f"book/rods/rod-{rod.name}.pdf"], set()
        for number, (lines, (_, height)) in enumerate(
            zip(page_lines(pdf), page_sizes(pdf), strict=True)
        ):
            got |= {(9 * number + each, at) for each, at in rod_lines(lines, height - 13.0, 0.0)}
        assert same(got, wanted)
    assert next(tiled, None) is None


@pytest.mark.parametrize(
    ("name", "length"), [("reading-alcove", 100.0), ("hallway-bookcase", 101.6)]
)
def test_every_sheet_has_a_line_along_and_one_across_of_just_that_length(
    name: str, length: float
) -> None:
    for content in (each for key, each in rod_files(model(name)).items() if key.endswith("pdf")):
        for lines in page_lines(content):
            along = [
                1
                for (x, y), (right, low) in lines
                if abs(abs(low - y) - length) < 0.01 and x == right
            ]
            across = [
                1
                for (x, y), (right, low) in lines
                if abs(abs(right - x) - length) < 0.01 and y == low
            ]
            assert (len(along), len(across)) == (1, 1)


def test_what_is_told_is_found_in_the_text_and_the_page_is_the_printers() -> None:
    unit = model("hallway-bookcase")
    pdf = rod_files(unit)["book/rods.pdf"]
    assert {(round(width, 1), round(height, 1)) for width, height in page_sizes(pdf)} == {
        (215.9, 279.4)
    }
    text = " ".join(page.extract_text() for page in PdfReader(BytesIO(pdf)).pages)
    assert "Print at 100 %, not fitted to the page." in text
    assert "4 in long, as is the line along the rod: measure both" in text
    assert "Cut along the line above; lay it on the line of sheet 1, cross on cross" in text
    assert "Height rod, sheet 2 of 7, full size, from 8 to 16 in; 0 is the floor" in text


def test_a_rod_of_twelve_metres_is_split_into_pages_that_a_pdf_can_have() -> None:
    unit = long_board()
    files = rod_files(unit)
    sizes = page_sizes(files["book/rods/rod-width.pdf"])
    assert [height < 14400 * POINT for _, height in sizes] == [True, True, True]
    assert [name for name in files if "width" in name] == [
        "book/rods/rod-width-1.svg", "book/rods/rod-width-2.svg", "book/rods/rod-width-3.svg",
        "book/rods/rod-width.pdf",
    ]  # fmt: skip
    last = page_lines(files["book/rods/rod-width.pdf"])[2]
    assert same(rod_lines(last, joints(last)[-1], 2 * LONGEST), {(0, 12000.0)})
    for rod in rods_of(unit):
        for page in (*strip(rod, "", "mm"), *tiles(rod, "", "mm", "a4")):
            assert list(overlaps(page)) == [], page.title


def test_lines_a_millimetre_apart_keep_their_texts_apart() -> None:
    unit = bookcase()
    side = unit.part("SD1")
    holes = tuple(
        Hole(Surface.FACE, (500.0 + at, 100.0), 3.0, 5.0, use="peg") for at in (0, 1, 2.5, 3)
    )
    holes += tuple(Hole(Surface.REVERSE, (700.0 + at, 100.0), 0.5, 5.0) for at in range(40))
    worked = replace(side, workings=side.workings + holes)
    rod = rods_of(replace(unit, parts=(worked, *unit.parts[1:])))[0]
    for page in (*strip(rod, "Pegs", "mm"), *tiles(rod, "Pegs", "mm", "letter")):
        assert list(overlaps(page)) == []
    told = {
        mark.text
        for page in strip(rod, "Pegs", "mm")
        for mark in page.marks
        if isinstance(mark, Lettering)
    }
    assert {"500  peg hole", "501  peg hole", "502.5  peg hole", "503  peg hole"} <= told


def test_a_title_of_four_hundred_letters_and_one_in_another_alphabet_stay_on_the_page() -> None:
    rod = rods_of(bookcase())[1]
    for title in ("Very long " * 40, "棚" * 400, "Ωμέγα ράφι"):
        for page in (*strip(rod, title, "mm"), *tiles(rod, title, "mm", "a4")):
            assert list(overlaps(page)) == []


def test_equal_units_give_equal_bytes() -> None:
    assert rod_files(bookcase()) == rod_files(bookcase())


def test_the_strip_as_svg_is_as_long_as_it_says() -> None:
    rod = rods_of(bookcase())[0]
    (page,) = strip(rod, "Bookcase", "mm")
    root = ElementTree.fromstring(rod_files(bookcase())["book/rods/rod-height.svg"])
    assert root.get("height") == f"{page.height:g}mm"
    assert root.get("viewBox") == f"0 0 {page.width:g} {page.height:g}"
