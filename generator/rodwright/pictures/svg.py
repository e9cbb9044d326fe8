"""Drawings as SVG 1.1: of paths only, lettering too, so that no reader's fonts matter; or, for
those who set it with our fonts, with words that can be found."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from xml.sax.saxutils import escape, quoteattr

import numpy as np

from rodwright.pictures.glyphs import face, outline, text_width
from rodwright.pictures.ink import Drawing, Fill, Lettering, Mark, Point, Stroke


def to_svg(drawing: Drawing, *, words: bool = False) -> str:
    """The drawing as the text of an SVG file; equal drawings give equal text.

    With ``words``, lettering is text and no outlines: whoever shows it needs the fonts of
    :func:`rodwright.pictures.glyphs.font_files`.
    """
    places = 2 if drawing.physical == "px" else 3
    width, height = _number(drawing.width, places), _number(drawing.height, places)
    unit = "" if drawing.physical == "px" else drawing.physical
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}{unit}" height="{height}{unit}" '
        f'viewBox="0 0 {width} {height}" role="graphics-document" aria-labelledby="title desc">'
    )
    return "\n".join(
        [
            '<?xml version="1.0" encoding="UTF-8"?>',
            head,
            f'<title id="title">{escape(drawing.title)}</title>',
            f'<desc id="desc">{escape(drawing.description)}</desc>',
            f'<rect width="{width}" height="{height}" fill="#ffffff"/>',
            *(_element(mark, places, words) for mark in drawing.marks),
            "</svg>",
            "",
        ]
    )


def _element(mark: Mark, places: int, words: bool) -> str:
    if isinstance(mark, Fill):
        path = "".join(each + "Z" for each in _paths(mark.rings, places))
        if mark.opacity < 1.0:
            look = f'fill="{mark.colour}" fill-opacity="{_number(mark.opacity, 3)}"'
        else:
            # A hair of its own colour closes the seam to its neighbours.
            hair = 0.5 if places == 2 else 0.05
            look = f'fill="{mark.colour}" stroke="{mark.colour}" stroke-width="{hair}"'
        return f'<path d="{path}" fill-rule="evenodd" {look} stroke-linejoin="round"/>'
    if isinstance(mark, Stroke):
        path = "".join(_paths(mark.lines, places))
        dashes = ""
        if mark.dashes:
            on, off = (_number(length, places) for length in mark.dashes)
            dashes = f' stroke-dasharray="{on} {off}"'
        width = _number(mark.width, places)
        return (
            f'<path d="{path}" fill="none" stroke="{mark.colour}" stroke-width="{width}" '
            f'stroke-linecap="round" stroke-linejoin="round"{dashes}/>'
        )
    return (_words if words else _text)(mark, places)


def _words(mark: Lettering, places: int) -> str:
    """A text that can be found."""
    x, y = (_number(value, places) for value in mark.at)
    turn = f' transform="rotate(-90 {x} {y})"' if mark.upwards else ""
    return (
        f'<text x="{x}" y="{y}" font-family={quoteattr(face(mark.text))} '
        f'font-size="{_number(mark.size, places)}" text-anchor="{mark.anchor}" '
        f'fill="{mark.colour}"{turn} xml:space="preserve">{escape(mark.text)}</text>'
    )


def _text(mark: Lettering, places: int) -> str:
    """A text's outlines, named by the text for those who have it read to them or search for it."""
    x, y = mark.at
    share = {"start": 0.0, "middle": 0.5, "end": 1.0}[mark.anchor]
    path = outline(mark.text, x - share * text_width(mark.text, mark.size), y, mark.size, places)
    at = f"{_number(x, places)} {_number(y, places)}"
    turn = f' transform="rotate(-90 {at})"' if mark.upwards else ""
    name = f'role="img" aria-label={quoteattr(mark.text)}'
    return f'<path {name} d="{path}" fill="{mark.colour}"{turn}/>'


def _paths(lines: Sequence[tuple[Point, ...]], places: int) -> Iterator[str]:
    """Path data through the points of each line."""
    # All are rounded at once; adding nothing takes the sign off a zero.
    rounded = np.round([value for line in lines for point in line for value in point], places) + 0.0
    values, at = rounded.tolist(), 0
    for line in lines:
        pairs, count = "L".join(["%.7g %.7g"] * len(line)), 2 * len(line)
        yield f"M{pairs}" % tuple(values[at : at + count])
        at += count


def _number(value: float, places: int) -> str:
    return f"{round(value, places) + 0.0:.7g}"
