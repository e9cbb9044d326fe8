"""The three rods of a unit: what is marked along its height, its width and its depth.

Lengths in mm, from one end of the rod.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from rodwright.paper.rods.marks import KINDS, SAME, Kind, Mark
from rodwright.paper.rods.pieces import SECTIONS, Piece, pieces_of, refs_text
from rodwright.unit import TRAITS, Assembly, Unit
from rodwright.unit.facts import is_on_feet

RodName = Literal["height", "width", "depth"]
_AXES: dict[RodName, int] = {"height": 2, "width": 0, "depth": 1}
_ENDS: dict[RodName, tuple[str, str]] = {
    "height": ("underside", "up"),
    "width": ("left end", "to the right, seen from the front"),
    "depth": ("front", "to the rear"),
}
_WHOLES = {
    Assembly.CARCASS: "the carcass",
    Assembly.FACE_FRAME: "the face frame",
    Assembly.DOOR: "the doors",
    Assembly.DRAWER: "the drawers",
    Assembly.BASE: "the base",
}
"""What the outermost pieces belong to; of two the first is said, of doors and drawers both."""
_MOST_RUNS = 3
"""So many refs, or runs of them, are written beside a line."""


@dataclass(frozen=True, slots=True)
class Line:
    """A line across a track ``at`` mm from the end of the rod, with all that it marks."""

    at: float
    marks: tuple[Mark, ...]

    @property
    def text(self) -> str:
        """What is told of it: ``SH3 underside; housing, lower side``."""
        return self._told(None)

    @property
    def label(self) -> str:
        """The same, no longer than what is written beside a line: of many refs the first."""
        return self._told(_MOST_RUNS)

    def _told(self, most: int | None) -> str:
        boards: dict[str, dict[str, None]] = {}
        others: dict[tuple[str, str], dict[str, None]] = {}
        named = {mark.what for mark in self.marks if not mark.minor}
        for mark in self.marks:
            # A hole within one row beside the first or the last of another.
            if mark.minor and mark.what in named:
                continue
            if mark.kind in {"end", "board", "edge"}:
                boards.setdefault(mark.what, {}).update(dict.fromkeys(mark.of))
            else:
                others.setdefault((mark.what, mark.where), {}).update(dict.fromkeys(mark.of))
        there = {ref for refs in boards.values() for ref in refs}
        told = [f"{refs_text(refs, most)} {what}" for what, refs in boards.items()]
        for (what, where), refs in others.items():
            # Of a board whose side is this line it needn't be said whom it is for.
            for_whom = "" if not refs or refs.keys() & there else f" for {refs_text(refs, most)}"
            told.append(f"{what}{for_whom}{', ' if where else ''}{where}")
        return "; ".join(told)

    @property
    def detail(self) -> str:
        """What else is told of it where there is room; nothing twice."""
        told = dict.fromkeys(mark.detail for mark in self.marks if mark.detail)
        longer = (each for each in told if not any(each != one and each in one for one in told))
        return "; ".join(longer)

    @property
    def kind(self) -> Kind:
        """The weightiest of what it marks: an end or a board's side before what is cut or bored."""
        return min((mark.kind for mark in self.marks), key=KINDS.index)

    @property
    def minor(self) -> bool:
        """Whether it needs no text."""
        return all(mark.minor for mark in self.marks)


@dataclass(frozen=True, slots=True)
class Track:
    """One track of a rod: ``pieces`` lie on it one after the other, ``lines`` are all of theirs;
    ``name`` is its section, numbered where that has more than one."""

    name: str
    pieces: tuple[Piece, ...]
    lines: tuple[Line, ...]


@dataclass(frozen=True, slots=True)
class Rod:
    """A rod so ``long`` (mm), its tracks side by side; ``datum`` says where 0 is, ``way`` which way
    figures run from there."""

    name: RodName
    datum: str
    way: str
    length: float
    tracks: tuple[Track, ...]


def rods_of(unit: Unit) -> tuple[Rod, ...]:
    """The height rod, the width rod and the depth rod of a unit.

    Each begins at the outermost point of any part: the floor (of a unit that hangs, its lowest
    point), the left end, and the front of whatever stands foremost.
    """
    return tuple(_rod(unit, name) for name in _AXES)


def _rod(unit: Unit, name: RodName) -> Rod:
    axis = _AXES[name]
    boxes = {part.ref: part.bounds() for part in unit.parts}
    start = min(box.low[axis] for box in boxes.values())
    if name == "height" and not unit.hung:
        start = min(start, 0.0)
    pieces = [_from(piece, start) for piece in pieces_of(unit, axis)]
    datum = _datum(unit, name, [ref for ref, box in boxes.items() if box.low[axis] < start + SAME])
    length = max(box.high[axis] for box in boxes.values()) - start
    return Rod(name, datum, _ENDS[name][1], length, tuple(_tracks(pieces)))


def _datum(unit: Unit, name: RodName, outermost: Sequence[str]) -> str:
    """What 0 is: the floor, or the end of the outermost pieces."""
    if name == "height" and not unit.hung:
        return "the floor" + (", with the feet set to their height" if is_on_feet(unit) else "")
    roles = [unit.part(ref).role for ref in outermost]
    found = {TRAITS[role].of for role in roles}
    # What is fitted round the carcass is told by what it is.
    whole = next((said for of, said in _WHOLES.items() if of in found), f"the {roles[0]}")
    if {Assembly.DOOR, Assembly.DRAWER} <= found and whole == _WHOLES[Assembly.DOOR]:
        whole = "the doors and drawers"
    return f"the {_ENDS[name][0]} of {whole} ({refs_text(outermost)})"


def _from(piece: Piece, start: float) -> Piece:
    return replace(piece, marks=tuple(replace(mark, at=mark.at - start) for mark in piece.marks))


def _tracks(pieces: Sequence[Piece]) -> Iterator[Track]:
    """Each section's pieces on as few tracks as they go onto without lying on each other: in the
    order of where they begin, each on the first track that is free there."""
    for section in SECTIONS:
        tracks: list[list[Piece]] = []
        own = (piece for piece in pieces if piece.section == section)
        for piece in sorted(own, key=lambda each: each.low):
            for track in tracks:
                if track[-1].high <= piece.low + SAME:
                    track.append(piece)
                    break
            else:
                tracks.append([piece])
        for number, track in enumerate(tracks, 1):
            name = f"{section} {number}" if len(tracks) > 1 else section
            yield Track(name, tuple(track), tuple(_lines(track)))


def _lines(pieces: Iterable[Piece]) -> Iterator[Line]:
    """The lines of the pieces of a track, those at one place as one."""
    marks = sorted((mark for piece in pieces for mark in piece.marks), key=lambda mark: mark.at)
    together: list[list[Mark]] = []
    for mark in marks:
        if together and mark.at - together[-1][0].at <= SAME:
            together[-1].append(mark)
        else:
            together.append([mark])
    for each in together:
        yield Line(each[0].at, tuple(each))
