"""The pictures on a quote: photographs that lie there or are made, else drawings."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from io import BytesIO
from pathlib import Path
from typing import Literal

import numpy as np
from PIL import Image

from rodwright.problems import ProblemsError
from rodwright.unit import Grain, Part, Unit

Pictures = Literal["photographs", "drawings"]
"""What a quote shows the unit by."""
_PAPER, _ROUND, _QUALITY = 244, 30, 88
"""From what brightness (0 to 255) on a drawing's paper is bare, how many pixels of it are left
round the unit, and the quality (%) it is kept in."""
_LARGE, _SMALL = (1000, 20), (560, 12)
"""Longer side in pixels and samples of the photograph of the unit, and of each of its options."""


def photographs_of(
    units: Sequence[Unit], folder: Path, progress: Callable[[str], object]
) -> tuple[bytes, ...]:
    """A photograph of each unit (as it is laid), closed: one in ``folder``'s ``photographs`` that
    shows it as it is now, else one that is made.

    Raises:
        ProblemsError: one has to be made, and Mitsuba or Open Image Denoise isn't installed.
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.photo.shots import photographs
    from rodwright.photo.stamp import bears, stamp_of
    from rodwright.photo.tracing import Quality, refuse_without_mitsuba

    there = photographs_in(folder)
    found = []
    for number, unit in enumerate(units):
        stamp = stamp_of(unit, "closed")
        taken = next((data for data in there if bears(data, stamp)), None)
        if taken is None:
            refuse_without_mitsuba()
            what = f"photographing option {number}" if number else "photographing it"

            def told(_: str, share: float, what: str = what) -> None:
                progress(f"{what}: {share:.0%}")

            quality = Quality(*(_SMALL if number else _LARGE))
            taken = photographs(unit, ["closed"], quality, progress=told)["closed"]
        found.append(taken)
    return tuple(found)


def drawings_of(units: Sequence[Unit], progress: Callable[[str], object]) -> tuple[bytes, ...]:
    """Each unit drawn as it stands, in the colours of its finishes, without the paper round it.

    Raises:
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.pictures.all_views import assembled
    from rodwright.pictures.raster import Raster

    progress("drawing it assembled")
    with Raster() as raster:
        return tuple(_trimmed(assembled(as_finished(unit), raster).jpeg()) for unit in units)


def as_finished(unit: Unit) -> Unit:
    """The unit for a drawing of it: its stocks have the colours that photographs and pages show
    them in, under the finishes that are on them, and paint hides the grain."""
    return replace(unit, parts=tuple(_as_finished(part) for part in unit.parts))


def _as_finished(part: Part) -> Part:
    from rodwright.photo.finished import finished_colour
    from rodwright.photo.srgb import code_of
    from rodwright.photo.woods.colours import colour_of

    blank = part.blank
    if part.finish is not None and part.finish.kind == "paint":
        stock = replace(blank.stock, colour=part.finish.colour)
        return replace(part, blank=replace(blank, stock=stock, grain=Grain.NONE))
    bare = np.array(colour_of(blank.stock.material, blank.stock.colour))
    colour = code_of(finished_colour(bare, part.finish))
    return replace(part, blank=replace(blank, stock=replace(blank.stock, colour=colour)))


def _trimmed(picture: bytes) -> bytes:
    """A drawing (a JPEG file) cut to what is drawn, shadows but their last breath included."""
    image = Image.open(BytesIO(picture)).convert("RGB")
    inked = image.convert("L").point(lambda value: 255 if value < _PAPER else 0).getbbox()
    if inked is None:
        return picture
    left, top, right, bottom = inked
    box = (
        max(0, left - _ROUND),
        max(0, top - _ROUND),
        min(image.width, right + _ROUND),
        min(image.height, bottom + _ROUND),
    )
    file = BytesIO()
    image.crop(box).save(file, format="JPEG", quality=_QUALITY)
    return file.getvalue()


def shown(
    units: Sequence[Unit],
    folder: Path,
    pictures: Pictures,
    progress: Callable[[str], object],
) -> tuple[tuple[bytes, ...], str]:
    """A picture of each unit, and why there are no photographs although they are wanted.

    Raises:
        ValueError: the workings of a part leave no single solid.
    """
    if pictures == "drawings":
        return drawings_of(units, progress), ""
    try:
        return photographs_of(units, folder, progress), ""
    except ProblemsError as error:
        return drawings_of(units, progress), error.problems[0].message


def photographs_in(folder: Path) -> list[bytes]:
    """The photographs that lie in a folder's ``photographs``, by their names."""
    place = folder / "photographs"
    files = sorted(place.glob("*.jpg")) if place.is_dir() else []
    return [data for each in files if (data := _read(each))]


def _read(file: Path) -> bytes:
    """What is in a file; nothing where it can't be read, since another picture does as well."""
    try:
        return file.read_bytes()
    except OSError:
        return b""
