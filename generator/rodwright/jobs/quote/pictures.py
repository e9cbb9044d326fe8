"""The pictures on a quote: photographs that lie there or are made, else drawings."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Literal

from rodwright.problems import ProblemsError
from rodwright.unit import Unit

Pictures = Literal["photographs", "drawings"]
"""What a quote shows the unit by."""
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

    there = [data for each in _there(folder) if (data := _read(each))]
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
    """Each unit drawn as it stands.

    Raises:
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.pictures.all_views import assembled
    from rodwright.pictures.raster import Raster

    progress("drawing it assembled")
    with Raster() as raster:
        return tuple(assembled(unit, raster).jpeg() for unit in units)


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


def _there(folder: Path) -> list[Path]:
    """The photographs in a folder."""
    place = folder / "photographs"
    return sorted(place.glob("*.jpg")) if place.is_dir() else []


def _read(file: Path) -> bytes:
    """What is in a file; nothing where it can't be read, since another picture does as well."""
    try:
        return file.read_bytes()
    except OSError:
        return b""
