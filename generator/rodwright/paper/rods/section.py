"""The rods in the job book: each reduced on a page, and its figures to be marked with a tape."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import Any

from rodwright.lengths import LengthUnit, format_length
from rodwright.paper.rods.files import drawing_data
from rodwright.paper.rods.rods import Line, Rod, Track, rods_of
from rodwright.paper.rods.stretch import LEADING, REDUCED, TYPE, Stretch, stretch_marks
from rodwright.paper.sections import Section
from rodwright.pictures.ink import Drawing, Lettering, Mark
from rodwright.unit import Unit

_WIDTH, _HEIGHT = 170.0, 205.0
"""The most that a reduced rod takes of a page, mm: both A4 and Letter have as much."""
_LARGEST = 0.5
"""A short rod isn't drawn larger than this."""
_HEAD = 8.0
_HOLES = 12
"""So many holes of a row stand in one line of a table."""


def rods_section(unit: Unit) -> Section:
    """The pages of a unit's rods in the job book."""
    measure = unit.display_unit
    return Section(
        "rods",
        "Rods",
        {
            "unit": measure,
            "rods": [
                {
                    "name": f"{rod.name.capitalize()} rod",
                    "datum": rod.datum,
                    "way": rod.way,
                    "length": format_length(rod.length, measure),
                    "drawings": [drawing_data(each) for each in reduced(rod, measure)],
                    "tracks": [_table(track, measure) for track in rod.tracks],
                }
                for rod in rods_of(unit)
            ],
        },
    )


def reduced(rod: Rod, unit: LengthUnit) -> Iterator[Drawing]:
    """A rod as it is drawn on a page of the book, on more than one where it has many tracks."""
    scale = min(_LARGEST, (_HEIGHT - _HEAD - LEADING) / rod.length)
    foot = _HEAD + rod.length * scale
    beside = int((_WIDTH - REDUCED.scale) / REDUCED.track)
    for first in range(0, len(rod.tracks), beside):
        tracks = rod.tracks[first : first + beside]
        stretch = Stretch(rod, tracks, 0.0, rod.length, rod.length, 0.0, foot, unit, REDUCED, scale)
        marks = (*_headings(tracks), *stretch_marks(stretch))
        yield Drawing(_WIDTH, foot + LEADING, f"{rod.name} rod", "reduced", marks, "mm")


def _headings(tracks: Sequence[Track]) -> Iterator[Mark]:
    """What each track is called, in two lines where it has a number."""
    for number, track in enumerate(tracks):
        left = REDUCED.scale + number * REDUCED.track + REDUCED.names
        for line, text in enumerate(_broken(track.name)):
            yield Lettering((left, 2.6 + line * LEADING), text, TYPE, "start")


def _broken(name: str) -> list[str]:
    """A heading in two lines at most: ``Drawer`` and ``boxes 2``."""
    words = name.split(" ")
    return [words[0], " ".join(words[1:])] if len(name) > 10 else [name]


def _table(track: Track, unit: LengthUnit) -> dict[str, Any]:
    """A track's lines from the end on; the holes of a row between its first and its last
    together."""
    rows = []
    for minor, group in groupby(track.lines, key=lambda line: line.minor):
        lines = list(group)
        if minor:
            rows += [_between(lines[at : at + _HOLES], unit) for at in range(0, len(lines), _HOLES)]
        else:
            rows += [
                {"at": format_length(each.at, unit), "what": each.text, "detail": each.detail}
                for each in lines
            ]
    return {"name": track.name, "on": ", ".join(each.on for each in track.pieces), "rows": rows}


def _between(lines: Sequence[Line], unit: LengthUnit) -> dict[str, str]:
    figures = ", ".join(format_length(each.at, unit) for each in lines)
    return {"at": "", "what": f"the row goes on: {figures}", "detail": ""}
