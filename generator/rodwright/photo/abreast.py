"""The options of a unit side by side: one camera, one light, names below."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PIL import Image, ImageDraw

from rodwright.photo.contents import things_in
from rodwright.photo.developing import developed, jpeg
from rodwright.photo.shots import Progress, meter_of, untold
from rodwright.photo.stamp import stamp_of
from rodwright.photo.tracing import Quality, Tracer
from rodwright.photo.views import camera_of, closed
from rodwright.pictures.glyphs import font, text_width
from rodwright.unit import Unit

_PAPER, _INK = (250, 250, 248), (40, 40, 40)
_MOST_ABREAST = 4
"""More stand in rows below each other."""


@dataclass(frozen=True, slots=True)
class SideBySide:
    """JPEG files: all options in one picture, and each ``alone`` in their order."""

    picture: bytes
    alone: tuple[bytes, ...]


def side_by_side(
    options: Sequence[tuple[str, Unit]],
    quality: Quality,
    *,
    seed: int = 0,
    contents: bool = False,
    progress: Progress = untold,
) -> SideBySide:
    """Photographs of units closed, each with its name, laid as their files are.

    Raises:
        ProblemsError: Mitsuba or Open Image Denoise isn't installed.
        ValueError: there are none, or a part's workings leave no single solid.
    """
    if not options:
        raise ValueError("no options to show")
    shown = [unit.envelope for _, unit in options]
    if contents:
        shown += [thing.box for _, unit in options for thing in things_in(unit, seed)]
    camera = camera_of(options[0][1], shown, quality.size)
    tracer, pictures = Tracer(), []
    # One exposure for all, so that dark wood is darker than white paint.
    empty = closed(options[0][1], quality.size, seed=seed, camera=camera)
    meter = meter_of(empty, tracer)
    for name, unit in options:

        def told(share: float, name: str = name) -> None:
            progress(name, share)

        told(0.0)
        scene = closed(unit, quality.size, seed=seed, contents=contents, camera=camera)
        traced = tracer.trace(scene, quality, seed=seed, progress=told)
        pictures.append(developed(traced, meter))
    named = [name for name, _ in options]
    alone = tuple(
        jpeg(picture, stamp_of(unit, "closed"))
        for picture, (_, unit) in zip(pictures, options, strict=True)
    )
    together = lettered(list(zip(named, pictures, strict=True)))
    stamp = "; ".join(stamp_of(unit, "options") for _, unit in options)
    return SideBySide(jpeg(together, stamp), alone)


def lettered(pictures: Sequence[tuple[str, Image.Image]]) -> Image.Image:
    """Pictures of one size beside each other, each with its name below it."""
    width, height = pictures[0][1].size
    across = min(len(pictures), _MOST_ABREAST)
    rows = -(-len(pictures) // across)
    across = -(-len(pictures) // rows)  # rows as even as they can be
    gap, size = max(4, width // 24), max(9.0, width / 18)
    lines = [_wrapped(name, size, width) for name, _ in pictures]
    strip = round(size * (1.3 * max(map(len, lines)) + 0.9))
    sheet = Image.new(
        "RGB",
        (across * (width + gap) + gap, rows * (height + strip) + gap),
        _PAPER,
    )
    pen = ImageDraw.Draw(sheet)
    for number, ((_, picture), words) in enumerate(zip(pictures, lines, strict=True)):
        row, column = divmod(number, across)
        left, top = gap + column * (width + gap), gap + row * (height + strip)
        sheet.paste(picture, (left, top))
        for line, text in enumerate(words):
            pen.text(
                (left + width / 2, top + height + size * (0.35 + 1.3 * line)),
                text,
                _INK,
                font(text, size),
                anchor="ma",
            )
    return sheet


def _wrapped(text: str, size: float, width: float) -> list[str]:
    """A name in lines that fit; a word that doesn't is broken."""
    lines = [""]
    for word in text.split():
        longer = f"{lines[-1]} {word}".strip()
        if text_width(longer, size) <= width:
            lines[-1] = longer
            continue
        if lines[-1]:
            lines.append("")
        for letter in word:
            if lines[-1] and text_width(lines[-1] + letter, size) > width:
                lines.append("")
            lines[-1] += letter
    return lines
