"""Letters: which font draws a text, how wide it is, and its outlines.

Files carry outlines and no text set in the reader's fonts, so that what was measured is what is
seen.  The fonts come with libraries: Aileron (dedicated to the public domain) with Pillow, and
for what it lacks DejaVu Sans (a free licence, its makers' own) with matplotlib.
"""

from __future__ import annotations

import unicodedata
from functools import lru_cache
from importlib.util import find_spec
from io import BytesIO
from pathlib import Path

import numpy as np
from fontTools.pens.basePen import BasePen
from fontTools.ttLib import TTFont
from numpy.typing import NDArray
from PIL import ImageFont

_MEASURED = 100.0
"""Text is measured at this size, at which rounding to pixels matters little."""


def font(text: str, size: float) -> ImageFont.FreeTypeFont:
    """The font that a text is drawn and measured with, at a size in pixels."""
    return _font(_face(text), size)


def text_width(text: str, size: float) -> float:
    """How wide text of this size is."""
    return font(text, _MEASURED).getlength(text) * size / _MEASURED


def face(text: str) -> str:
    """The name of the font that a text is drawn with."""
    return _face(text)


def font_files() -> dict[str, bytes]:
    """The fonts' files, by names for them, for those who set text with them; DejaVu Sans is bold
    too."""
    found = ((name, _path(name)) for name in ("Aileron", "DejaVu Sans", "DejaVu Sans Bold"))
    return {
        f"{name.replace(' ', '')}.ttf": path.read_bytes()
        if isinstance(path, Path)
        else path.getvalue()
        for name, path in found
        if path is not None
    }


def outline(text: str, left: float, base: float, size: float, places: int) -> str:
    """A text's outlines as SVG path data: from ``left`` on the baseline at ``base``, y down,
    ``size`` being the height of a line of type and ``places`` the decimals written.

    Each letter stands where the font that measures it puts it, kerning included.
    """
    name = _face(text)
    face, measured, scale = _outlines(name), _font(name, _MEASURED), size / _MEASURED
    em = size / face["head"].unitsPerEm
    letters, shapes = _letters(name), list[str]()
    for number, letter in enumerate(text, 1):
        at = measured.getlength(text[:number]) - measured.getlength(letter)
        commands, points = _shape(name, letters.get(ord(letter), ".notdef"))
        placed = np.round(points * (em, -em) + (left + at * scale, base), places) + 0.0
        shapes.append(commands % tuple(placed.ravel().tolist()))
    return "".join(shapes)


def _face(text: str) -> str:
    """The name of the font that a text is drawn and measured with: the first that has every
    letter of it, or else the widest one."""
    for name in ("Aileron", "DejaVu Sans"):
        if _path(name) is not None and {ord(each) for each in text} <= _covered(name):
            return name
    return "DejaVu Sans" if _path("DejaVu Sans") else "Aileron"


@lru_cache(maxsize=4)
def _path(name: str) -> Path | BytesIO | None:
    if name == "Aileron":
        found = ImageFont.load_default(_MEASURED)
        if not isinstance(found, ImageFont.FreeTypeFont):
            raise RuntimeError("this Pillow was built without FreeType, which lettering needs")
        assert isinstance(found.path, BytesIO)
        return found.path
    # Found without importing matplotlib, which would take longer than all the lettering.
    package = find_spec("matplotlib")
    places = (package.submodule_search_locations if package else None) or ()
    file = {"DejaVu Sans": "DejaVuSans.ttf", "DejaVu Sans Bold": "DejaVuSans-Bold.ttf"}[name]
    fonts = (Path(each) / "mpl-data" / "fonts" / "ttf" / file for each in places)
    return next((each for each in fonts if each.is_file()), None)


@lru_cache(maxsize=64)
def _font(name: str, size: float) -> ImageFont.FreeTypeFont:
    path = _path(name)
    assert path is not None
    return ImageFont.truetype(BytesIO(path.getvalue()) if isinstance(path, BytesIO) else path, size)


@lru_cache(maxsize=2)
def _outlines(name: str) -> TTFont:
    path = _path(name)
    assert path is not None
    return TTFont(BytesIO(path.getvalue()) if isinstance(path, BytesIO) else path)


def lacking(text: str) -> frozenset[str]:
    """The letters of a text that none of the fonts has; what has no shape of its own (spaces,
    line ends, marks of direction) isn't lacked."""
    fonts = (name for name in ("Aileron", "DejaVu Sans") if _path(name) is not None)
    had = frozenset().union(*map(_covered, fonts))
    return frozenset(
        each
        for each in frozenset(text)
        if ord(each) not in had and unicodedata.category(each) not in ("Cc", "Cf", "Zs", "Zl", "Zp")
    )


@lru_cache(maxsize=2)
def _covered(name: str) -> frozenset[int]:
    return frozenset(_outlines(name).getBestCmap())


@lru_cache(maxsize=2)
def _letters(name: str) -> dict[int, str]:
    return dict(_outlines(name).getBestCmap())


@lru_cache(maxsize=1024)
def _shape(name: str, glyph: str) -> tuple[str, NDArray[np.float64]]:
    """A glyph as path data with gaps for its numbers, and its points (n, 2) in font units."""
    shapes = _outlines(name).getGlyphSet()
    pen = _Path(shapes)
    shapes[glyph].draw(pen)
    return "".join(pen.commands), np.array(pen.points, dtype=np.float64).reshape(-1, 2)


class _Path(BasePen):  # type: ignore[misc]
    """Path data with gaps for numbers, and the points that go there."""

    def __init__(self, shapes: object) -> None:
        super().__init__(shapes)
        self.commands: list[str] = []
        self.points: list[tuple[float, float]] = []

    def _add(self, letter: str, *points: tuple[float, float]) -> None:
        self.commands.append(letter + " ".join(["%.7g %.7g"] * len(points)))
        self.points += points

    def _moveTo(self, pt: tuple[float, float]) -> None:  # noqa: N802
        self._add("M", pt)

    def _lineTo(self, pt: tuple[float, float]) -> None:  # noqa: N802
        self._add("L", pt)

    def _qCurveToOne(self, pt1: tuple[float, float], pt2: tuple[float, float]) -> None:  # noqa: N802
        self._add("Q", pt1, pt2)

    def _curveToOne(  # noqa: N802
        self, pt1: tuple[float, float], pt2: tuple[float, float], pt3: tuple[float, float]
    ) -> None:
        self._add("C", pt1, pt2, pt3)

    def _closePath(self) -> None:  # noqa: N802
        self._add("Z")
