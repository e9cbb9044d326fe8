"""Drawings on file: SVG, and PNG beside it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PIL import Image

from rodwright.pictures.ink import Drawing, Mark
from rodwright.pictures.paint import write_png
from rodwright.pictures.svg import to_svg


def write_drawing(
    drawing: Drawing,
    folder: Path,
    name: str,
    *,
    per_unit: float = 1.0,
    over: tuple[Mark, ...] | None = None,
    under: Image.Image | None = None,
) -> tuple[Path, Path]:
    """Write ``name.png``, with ``per_unit`` pixels to the page's unit, and ``name.svg``.

    The PNG has every mark on white, or only those ``over`` on a photograph ``under`` them.

    Raises:
        OSError: a file can't be written.
    """
    svg, png = folder / f"{name}.svg", folder / f"{name}.png"
    svg.write_text(to_svg(drawing), encoding="utf-8", newline="\n")
    write_png(drawing if over is None else replace(drawing, marks=over), per_unit, png, under)
    return png, svg
