"""Drawings as pixels, with Pillow."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace
from io import BytesIO
from itertools import pairwise
from pathlib import Path

from PIL import Image, ImageChops, ImageColor, ImageDraw

from rodwright.pictures.glyphs import font
from rodwright.pictures.ink import Drawing, Fill, Lettering, Mark, Point, Stroke

MM_PER_INCH = 25.4
FINE = 3
"""Everything is drawn this many times larger and averaged down."""


def write_png(
    drawing: Drawing, per_unit: float, path: Path, under: Image.Image | None = None
) -> None:
    """The drawing as a PNG file (see ``to_png``).

    Raises:
        OSError: the file can't be written.
    """
    path.write_bytes(to_png(drawing, per_unit, under))


def to_png(drawing: Drawing, per_unit: float, under: Image.Image | None = None) -> bytes:
    """The drawing as what a PNG file holds (see ``to_image``); one on paper says how large its
    pixels are, so that it is shown and printed at its scale."""
    image, file = to_image(drawing, per_unit, under), BytesIO()
    # Level 6, the default, takes twice the time of 4 to save a twentieth of the space.
    if drawing.physical == "mm":
        dpi = per_unit * MM_PER_INCH
        image.save(file, format="PNG", compress_level=4, dpi=(dpi, dpi))
    else:
        image.save(file, format="PNG", compress_level=4)
    return file.getvalue()


def to_image(drawing: Drawing, per_unit: float, under: Image.Image | None = None) -> Image.Image:
    """The drawing, ``per_unit`` pixels to the page's unit, on white or on a picture.

    ``under`` must have the drawing's size in pixels.
    """
    size = (round(drawing.width * per_unit), round(drawing.height * per_unit))
    colours = {mark.colour for mark in drawing.marks}
    if len(colours) == 1 and not any(
        isinstance(mark, Fill) and mark.opacity < 1.0 for mark in drawing.marks
    ):
        return _in_one_colour(drawing, per_unit, size, colours.pop(), under)
    ground = Image.new("RGB", size, "white") if under is None else under.convert("RGB")
    large = ground.resize((size[0] * FINE, size[1] * FINE), Image.Resampling.NEAREST)
    _draw(large, drawing.marks, per_unit * FINE)
    return large.reduce(FINE)


def _in_one_colour(
    drawing: Drawing, per_unit: float, size: tuple[int, int], colour: str, under: Image.Image | None
) -> Image.Image:
    """The same of marks in one colour: how much of it each pixel gets takes a third of the room.

    On white it is a picture of the shades between white and that colour alone.
    """
    large = Image.new("L", (size[0] * FINE, size[1] * FINE))
    _draw(large, [replace(mark, colour="white") for mark in drawing.marks], per_unit * FINE)
    covered = large.reduce(FINE)
    if under is not None:
        picture = under.convert("RGB")
        picture.paste(colour, mask=covered)
        return picture
    shades = Image.new("P", size)
    shades.putpalette(
        [
            round(255 + (band - 255) * share / 255)
            for share in range(256)
            for band in ImageColor.getrgb(colour)[:3]
        ]
    )
    shades.frombytes(covered.tobytes())
    return shades


def _draw(image: Image.Image, marks: Iterable[Mark], scale: float) -> None:
    pen = ImageDraw.Draw(image)
    for mark in marks:
        if isinstance(mark, Fill):
            _fill(image, pen, mark, scale)
        elif isinstance(mark, Stroke):
            _stroke(pen, mark, scale)
        else:
            _letter(image, pen, mark, scale)


def _fill(image: Image.Image, pen: ImageDraw.ImageDraw, mark: Fill, scale: float) -> None:
    rings = [[(x * scale, y * scale) for x, y in ring] for ring in mark.rings]
    if len(rings) == 1 and mark.opacity == 1.0:
        pen.polygon(rings[0], fill=mark.colour)
        return
    mask = Image.new("1", image.size, 0)
    for ring in rings:
        # Even-odd: each ring turns over what lies inside it.
        inside = Image.new("1", image.size, 0)
        ImageDraw.Draw(inside).polygon(ring, fill=1)
        mask = ImageChops.logical_xor(mask, inside)
    image.paste(mark.colour, mask=mask.convert("L").point(lambda value: value * mark.opacity))


def _stroke(pen: ImageDraw.ImageDraw, mark: Stroke, scale: float) -> None:
    width, ends = max(1, round(mark.width * scale)), set[Point]()
    for line in mark.lines:
        for points in _dashed(line, mark.dashes) if mark.dashes else [line]:
            large = [(x * scale, y * scale) for x, y in points]
            pen.line(large, fill=mark.colour, width=width, joint="curve")
            ends.update((large[0], large[-1]))
    if width > 2:
        # Lines that meet share their round ends, to a tenth of a pixel.
        r = width / 2 - 0.5
        for x, y in {(round(x, 1), round(y, 1)) for x, y in ends}:
            pen.ellipse((x - r, y - r, x + r, y + r), fill=mark.colour)


def _dashed(line: tuple[Point, ...], dashes: tuple[float, float]) -> list[tuple[Point, ...]]:
    """The pieces of a line that a dash pattern leaves, starting with a dash."""
    pieces: list[tuple[Point, ...]] = []
    at, period = 0.0, sum(dashes)
    for (x0, y0), (x1, y1) in pairwise(line):
        length = math.hypot(x1 - x0, y1 - y0)
        start = math.floor(at / period) * period
        while start < at + length:
            low, high = max(start, at) - at, min(start + dashes[0], at + length) - at
            if high > low:
                a, b = low / length, high / length
                pieces.append(
                    (
                        (x0 + a * (x1 - x0), y0 + a * (y1 - y0)),
                        (x0 + b * (x1 - x0), y0 + b * (y1 - y0)),
                    )
                )
            start += period
        at += length
    return pieces


def _letter(image: Image.Image, pen: ImageDraw.ImageDraw, mark: Lettering, scale: float) -> None:
    face = font(mark.text, mark.size * scale)
    x, y = mark.at[0] * scale, mark.at[1] * scale
    place = {"start": "ls", "middle": "ms", "end": "rs"}[mark.anchor]
    if not mark.upwards:
        pen.text((x, y), mark.text, fill=mark.colour, font=face, anchor=place)
        return
    left, top, right, bottom = (round(v) for v in face.getbbox(mark.text, anchor=place))
    mask = Image.new("L", (right - left, bottom - top), 0)
    ImageDraw.Draw(mask).text((-left, -top), mark.text, fill=255, font=face, anchor=place)
    turned = mask.transpose(Image.Transpose.ROTATE_90)
    image.paste(mark.colour, (round(x + top), round(y - right)), turned)
