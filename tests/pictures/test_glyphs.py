"""Lettering as outlines: the same letters, of the same width, whatever fonts a reader has."""

import re
from io import BytesIO

import pytest
from fontTools.pens.boundsPen import BoundsPen
from fontTools.pens.svgPathPen import SVGPathPen
from fontTools.svgLib.path import parse_path
from fontTools.ttLib import TTFont
from PIL import Image, ImageDraw

from rodwright.pictures.glyphs import font, outline, text_width


def _bounds(path: str) -> tuple[float, float, float, float]:
    """Read by fontTools' own reader of SVG paths: left, top, right, bottom (y down)."""
    pen = BoundsPen(None)
    parse_path(path, pen)
    assert pen.bounds is not None
    return pen.bounds


@pytest.mark.parametrize("text", ["SH12b", "1201.5", "WE7 WE13", "AVAVA"])
def test_outlines_lie_where_the_painted_letters_do(text: str) -> None:
    size, left, base = 100.0, 20.0, 150.0
    page = Image.new("L", (700, 200))
    ImageDraw.Draw(page).text((left, base), text, fill=255, font=font(text, size), anchor="ls")
    painted = page.getbbox()
    assert painted is not None
    assert _bounds(outline(text, left, base, size, 2)) == pytest.approx(
        painted, abs=2.0
    )  # whole, hinted pixels


def test_outlines_grow_with_the_size() -> None:
    small, large = (_bounds(outline("SD1", 0.0, 0.0, size, 4)) for size in (10.0, 30.0))
    assert [3 * each for each in small] == pytest.approx(list(large), abs=0.01)
    assert text_width("SD1", 30.0) == pytest.approx(3 * text_width("SD1", 10.0))


@pytest.mark.parametrize("text", ["Étagère d'alcôve", "Bücherschrank", "Стеллаж", "3 ½ × 2"])
def test_titles_in_other_alphabets_have_letters_and_no_empty_boxes(text: str) -> None:
    face = font(text, 40.0)
    missing = bytes(face.getmask("\uffff"))
    for letter in set(text) - {" "}:
        assert bytes(face.getmask(letter)) != missing, letter
        assert outline(letter, 0.0, 0.0, 40.0, 2)


def test_an_outline_is_a_path_of_numbers_only() -> None:
    assert re.fullmatch(r"[MLQCHVZ0-9.,\s-]+", outline("SD1 & <b>", 3.0, 4.0, 12.0, 2))


def test_letters_are_those_of_the_font() -> None:
    # fontTools' own SVG pen draws the same letter, at the font's own size and y up.
    face = TTFont(BytesIO(font("R", 20.0).path.getvalue()))
    em = face["head"].unitsPerEm
    own = SVGPathPen(face.getGlyphSet())
    face.getGlyphSet()[face.getBestCmap()[ord("R")]].draw(own)
    left, top, right, bottom = _bounds(own.getCommands())
    assert _bounds(outline("R", 0.0, 0.0, em, 3)) == pytest.approx((left, -bottom, right, -top))
