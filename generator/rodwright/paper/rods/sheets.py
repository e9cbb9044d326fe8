"""Rods on paper, full size: as one strip for a plotter, and in tiles for a printer.

Lengths in mm.  Each sheet has a line along the rod and one across it to be checked with a rule,
crosses at which it is laid on the next, and what it begins with.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.lengths import LengthUnit, format_length
from rodwright.paper.rods.rods import Rod, Track
from rodwright.paper.rods.stretch import (
    BASE,
    FULL,
    HEAVY,
    LEADING,
    THIN,
    TYPE,
    Stretch,
    hatching,
    shortened,
    stretch_marks,
    wrapped,
)
from rodwright.pictures.ink import Drawing, Lettering, Mark, Stroke
from rodwright.trade.label_sheets import Paper as PaperName

LONGEST = 4800.0
"""So much of a rod is on one page of a strip: a PDF's page is at most 14 400 points of 1/72 in long
(ISO 32000-1, annex C, from memory), which is 5 080 mm."""
WIDEST = 594.0
"""So wide is a strip at most: the short side of A1 (ISO 216), which rolls of 24 in take too."""
FLAP = 10.0
"""How far a sheet reaches under the next."""
CHECK: dict[LengthUnit, float] = {"mm": 100.0, "in": 101.6}
"""Length of the lines to be checked: 100 mm or 4 in."""
_TOP, _BOTTOM, _SIDE = 40.0, 13.0, 8.0
"""Above the flap, below the foot, and beside the rod: the header, the note, the crosses."""
_CROSS = 4.0
_LEFT = 14.0


@dataclass(frozen=True, slots=True)
class Paper:
    """A printer's paper: its size, and how much of a rod is on one sheet of it."""

    width: float
    height: float
    step: float


PAPERS = {"a4": Paper(210.0, 297.0, 230.0), "letter": Paper(215.9, 279.4, 203.2)}
"""A4 (ISO 216) and Letter (ANSI Y14.1, size A, from memory).  A sheet begins at a whole figure."""
USUAL_PAPER: dict[LengthUnit, PaperName] = {"mm": "a4", "in": "letter"}
"""What makers in mm and in inches have in their printers."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet: a stretch of a rod from ``start``, ``step`` long before the flap; ``number`` of
    ``count``, of the set with these tracks, which has a ``letter`` if there are more."""

    rod: Rod
    tracks: tuple[Track, ...]
    letter: str
    number: int
    count: int
    start: float
    step: float

    @property
    def name(self) -> str:
        """What it is called."""
        rod = f"{self.rod.name.capitalize()} rod {self.letter}".rstrip()
        return rod if self.count == 1 else f"{rod}, sheet {self.number} of {self.count}"

    @property
    def stop(self) -> float:
        """Where it ends, with its flap."""
        end = self.start + self.step
        return self.rod.length if self.number == self.count else end + FLAP


def strip(rod: Rod, title: str, unit: LengthUnit) -> tuple[Drawing, ...]:
    """A rod with its tracks side by side, in as few pages as a plotter and PDF can have."""
    sets = _sets(rod, WIDEST)
    # The line across and what is said of it need room, and so does the line along.
    width = max(200.0, _width(max(len(tracks) for _, tracks in sets)))
    least = CHECK[unit] + 20.0
    return tuple(
        sheet_drawing(each, title, unit, width, _TOP + max(each.stop - each.start, least) + _BOTTOM)
        for letter, tracks in sets
        for each in _sheets(rod, tracks, letter, LONGEST)
    )


def tiles(rod: Rod, title: str, unit: LengthUnit, name: PaperName) -> tuple[Drawing, ...]:
    """A rod on a printer's paper: sets of sheets, each with as many tracks as go onto one."""
    paper = PAPERS[name]
    return tuple(
        sheet_drawing(each, title, unit, paper.width, paper.height)
        for letter, tracks in _sets(rod, paper.width)
        for each in _sheets(rod, tracks, letter, paper.step)
    )


def _width(tracks: int) -> float:
    """Of a sheet with so many tracks."""
    return _LEFT + FULL.scale + tracks * FULL.track + _SIDE


def _sets(rod: Rod, width: float) -> list[tuple[str, tuple[Track, ...]]]:
    """A rod's tracks in sets that go side by side onto a sheet so wide, with a letter for each
    where there is more than one."""
    beside = int((width - _width(0)) / FULL.track)
    sets = [rod.tracks[at : at + beside] for at in range(0, len(rod.tracks), beside)]
    return [
        (_letters(number) if len(sets) > 1 else "", tracks) for number, tracks in enumerate(sets)
    ]


def _letters(number: int) -> str:
    """A, B ... Z, AA, AB ..."""
    return (_letters(number // 26 - 1) if number >= 26 else "") + chr(ord("A") + number % 26)


def _sheets(rod: Rod, tracks: Sequence[Track], letter: str, step: float) -> list[Sheet]:
    """Sheets over the whole of a rod; what is no more than a flap past one goes onto it."""
    count = max(1, -int(-(rod.length - FLAP) // step))
    return [
        Sheet(rod, tuple(tracks), letter, number + 1, count, number * step, step)
        for number in range(count)
    ]


def sheet_drawing(
    sheet: Sheet, title: str, unit: LengthUnit, width: float, height: float
) -> Drawing:
    """One sheet as it is printed."""
    foot = min(height - _BOTTOM, _TOP + sheet.step + FLAP)
    last = sheet.number == sheet.count
    told = sheet.stop if last else sheet.start + sheet.step
    stretch = Stretch(sheet.rod, sheet.tracks, sheet.start, sheet.stop, told, _LEFT, foot, unit)
    marks = (
        *_header(sheet, title, unit, width),
        *_checks(unit, foot),
        *stretch_marks(stretch),
        *_ends(sheet, width, foot),
    )
    return Drawing(width, height, f"{title}: {sheet.name}", _about(sheet, unit), marks, "mm")


def _about(sheet: Sheet, unit: LengthUnit) -> str:
    end = sheet.stop if sheet.number == sheet.count else sheet.start + sheet.step
    start, stop = (format_length(at, unit) for at in (sheet.start, end))
    return (
        f"{sheet.name}, full size, from {start} to {stop} {unit}; "
        f"0 is {sheet.rod.datum}, and figures run {sheet.rod.way}."
    )


def _header(sheet: Sheet, title: str, unit: LengthUnit, width: float) -> Iterator[Mark]:
    room = width - _LEFT - _SIDE
    lines = [
        shortened(title, room, TYPE),
        *wrapped(f"{_about(sheet, unit)} Print at 100 %, not fitted to the page.", room, TYPE)[:3],
    ]
    for number, line in enumerate(lines):
        yield Lettering((_LEFT, 9.0 + number * 4.0), line, TYPE, "start")
    for number, track in enumerate(sheet.tracks):
        left = _LEFT + FULL.scale + number * FULL.track
        yield Lettering((left + FULL.names, _TOP - 5.0), track.name, TYPE, "start")


def _checks(unit: LengthUnit, foot: float) -> Iterator[Mark]:
    """A line across and one along, each as long as it says."""
    length, text = CHECK[unit], f"{format_length(CHECK[unit], unit)} {unit}"
    y = _TOP - 12.0
    across = ((_LEFT, y), (_LEFT + length, y))
    low = foot - 10.0
    along = ((10.5, low), (10.5, low - length))
    ticks = [((x, y - 1.5), (x, y + 1.5)) for x, _ in across]
    ticks += [((9.0, at), (12.0, at)) for _, at in along]
    yield Stroke((across, along, *ticks), HEAVY)
    said = f"{text} long, as is the line along the rod: measure both"
    yield Lettering((_LEFT + length + 2.0, y + BASE * TYPE), said, TYPE, "start")
    yield Lettering((8.4, low - length / 2), text, TYPE, "middle", upwards=True)


def _ends(sheet: Sheet, width: float, foot: float) -> Iterator[Mark]:
    """Where a sheet is laid on the one before it, and where the next is laid on it."""
    right = width - 9.0
    joints = [foot] if sheet.number > 1 else []
    if sheet.number < sheet.count:
        joints.append(foot - sheet.step)
        flap = hatching(_LEFT - 4.0, foot - sheet.step - FLAP, 3.0, FLAP)
        yield Stroke(tuple(flap), THIN)
        said = f"Flap: sheet {sheet.number + 1} is glued on it"
        left = _LEFT + FULL.scale + FULL.names + FULL.board + FULL.leader + 0.5
        yield Lettering((left, foot - sheet.step - 3.5), said, TYPE, "start")
    for y in joints:
        crosses = [
            (start, end)
            for x in (9.0, right)
            for start, end in (
                ((x - _CROSS, y), (x + _CROSS, y)),
                ((x, y - _CROSS), (x, y + _CROSS)),
            )
        ]
        yield Stroke((((_LEFT, y), (right - _CROSS, y)), *crosses), THIN)
    said = f"0: {sheet.rod.datum}"
    if sheet.number > 1:
        before = f"sheet {sheet.number - 1}"
        said = f"Cut along the line above; lay it on the line of {before}, cross on cross"
    yield Lettering(
        (_LEFT, foot + LEADING + 2.5), shortened(said, width - _LEFT - _SIDE, TYPE), TYPE, "start"
    )
