"""Drawings as SVG 1.1: vectors and text only."""

from __future__ import annotations

from xml.sax.saxutils import escape, quoteattr

from rodwright.pictures.ink import Drawing, Fill, Lettering, Mark, Point, Stroke

_FONTS = "Helvetica, Arial, 'Liberation Sans', sans-serif"


def to_svg(drawing: Drawing) -> str:
    """The drawing as the text of an SVG file; equal drawings give equal text."""
    places = 2 if drawing.physical == "px" else 3
    width, height = _number(drawing.width, places), _number(drawing.height, places)
    unit = "" if drawing.physical == "px" else drawing.physical
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}{unit}" height="{height}{unit}" '
        f'viewBox="0 0 {width} {height}" role="img" aria-labelledby="title desc">'
    )
    return "\n".join(
        [
            '<?xml version="1.0" encoding="UTF-8"?>',
            head,
            f'<title id="title">{escape(drawing.title)}</title>',
            f'<desc id="desc">{escape(drawing.description)}</desc>',
            f'<rect width="{width}" height="{height}" fill="#ffffff"/>',
            *(_element(mark, places) for mark in drawing.marks),
            "</svg>",
            "",
        ]
    )


def _element(mark: Mark, places: int) -> str:
    if isinstance(mark, Fill):
        path = "".join(_path(ring, places) + "Z" for ring in mark.rings)
        if mark.opacity < 1.0:
            look = f'fill="{mark.colour}" fill-opacity="{_number(mark.opacity, 3)}"'
        else:
            # A hair of its own colour closes the seam to its neighbours.
            hair = 0.5 if places == 2 else 0.05
            look = f'fill="{mark.colour}" stroke="{mark.colour}" stroke-width="{hair}"'
        return f'<path d="{path}" fill-rule="evenodd" {look} stroke-linejoin="round"/>'
    if isinstance(mark, Stroke):
        path = "".join(_path(line, places) for line in mark.lines)
        dashes = ""
        if mark.dashes:
            on, off = (_number(length, places) for length in mark.dashes)
            dashes = f' stroke-dasharray="{on} {off}"'
        width = _number(mark.width, places)
        return (
            f'<path d="{path}" fill="none" stroke="{mark.colour}" stroke-width="{width}" '
            f'stroke-linecap="round" stroke-linejoin="round"{dashes}/>'
        )
    return _text(mark, places)


def _text(mark: Lettering, places: int) -> str:
    x, y = (_number(value, places) for value in mark.at)
    turn = f' transform="rotate(-90 {x} {y})"' if mark.upwards else ""
    return (
        f'<text x="{x}" y="{y}" font-size="{_number(mark.size, places)}" '
        f'font-family={quoteattr(_FONTS)} text-anchor="{mark.anchor}" fill="{mark.colour}"{turn}>'
        f"{escape(mark.text)}</text>"
    )


def _path(points: tuple[Point, ...], places: int) -> str:
    pairs = [f"{_number(x, places)} {_number(y, places)}" for x, y in points]
    return "M" + "L".join(pairs)


def _number(value: float, places: int) -> str:
    text = f"{value:.{places}f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text
