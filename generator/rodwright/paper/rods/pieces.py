"""Pieces on a rod: parts with their marks along one axis, equal ones as one.

Lengths in mm, unit frame.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from rodwright.handover.strength_list import subjects_text
from rodwright.paper.rods.marks import Kind, Mark, along, own_marks
from rodwright.paper.rods.meetings import Meetings, meetings_of
from rodwright.paper.rods.standing import standing_marks
from rodwright.unit import PANELS, TRAITS, Assembly, Part, Role, Surface, Unit
from rodwright.unit.orientation import orientation_of
from rodwright.unit.surfaces import HIGH, LOW

_DIGITS = 3
"""Decimals of a millimetre to which equal pieces are equal."""
SECTIONS = ("Carcass", "Back", "Face frame", "Fronts", "Drawer boxes", "Base and surround")
"""What a rod has side by side, from the left."""
_OF = {
    Assembly.CARCASS: SECTIONS[0],
    Assembly.FACE_FRAME: SECTIONS[2],
    Assembly.DOOR: SECTIONS[3],
    Assembly.DRAWER: SECTIONS[4],
    Assembly.BASE: SECTIONS[5],
    Assembly.SURROUND: SECTIONS[5],
}


@dataclass(frozen=True, slots=True)
class Piece:
    """Equal pieces along one axis: ``refs`` are the parts, ``on`` says what of them is marked
    (``SD1, DV1 right face``), ``marks`` are in their order, the ends first and last."""

    section: str
    refs: tuple[str, ...]
    on: str
    marks: tuple[Mark, ...]

    @property
    def low(self) -> float:
        """Where it begins."""
        return min(mark.at for mark in self.marks if mark.kind == "end")

    @property
    def high(self) -> float:
        """Where it ends."""
        return max(mark.at for mark in self.marks if mark.kind == "end")

    def meeting(self, *kinds: Kind) -> dict[str, tuple[float, float]]:
        """Where what meets it with both of its sides on it lies, by its ref; a ``board`` that lies
        across the rod or another ``edge``."""
        places: dict[str, list[float]] = {}
        for mark in self.marks:
            for ref in mark.of if mark.kind in kinds else ():
                places.setdefault(ref, []).append(mark.at)
        return {ref: (min(each), max(each)) for ref, each in places.items() if len(each) > 1}


def pieces_of(unit: Unit, axis: int) -> tuple[Piece, ...]:
    """Every part of a unit along an axis, equal ones as one.

    A part with no marks but its ends is left out where both are marked on another piece.
    """
    meetings = meetings_of(unit)
    alone = [each for part in unit.parts for each in _pieces(part, axis, meetings)]
    shown = {ref for piece in alone for ref in piece.meeting("board", "edge")}
    wanted = (each for each in alone if not _needless(each, shown))
    return _gathered(wanted)


def refs_text(refs: Iterable[str], most: int | None = None) -> str:
    """Refs in their order, those that follow each other as runs; no more than ``most`` of these,
    with how many pieces there are besides."""
    ordered = sorted(dict.fromkeys(refs), key=_order)
    if not ordered:
        return ""
    told = subjects_text(ordered)
    runs = told.split(", ")
    if most is None or len(runs) <= most:
        return told
    return f"{runs[0]} and others, {len(ordered)} pieces"


def _order(ref: str) -> tuple[str, str, int, str]:
    found = re.fullmatch(r"([A-Z]+)([0-9]+)(.*)", ref)
    return (found[1], found[3], int(found[2]), ref) if found else (ref, "", 0, ref)


def _pieces(part: Part, axis: int, meetings: Meetings) -> Iterator[Piece]:
    """A part as one piece, or one for each face of a panel that is marked on both."""
    unit = meetings.unit
    marks = [
        *own_marks(part, axis, meetings.guests(part), unit.display_unit),
        *meetings.marks(part, axis),
        *standing_marks(unit, part, axis),
    ]
    faces = [face for face in (HIGH[2], LOW[2]) if any(mark.face is face for mark in marks)]
    if part.role in PANELS and along(part, axis) != 2 and len(faces) == 2:
        yield _piece(part, [mark for mark in marks if mark.face is not faces[1]], faces[0])
        other = [mark for mark in marks if mark.face is faces[1] or mark.kind == "end"]
        yield _piece(part, other, faces[1])
    else:
        on = {mark.face for mark in marks} - {None}
        yield _piece(part, marks, on.pop() if len(on) == 1 else None)


def _piece(part: Part, marks: Iterable[Mark], face: Surface | None) -> Piece:
    """A part with what is marked on a face of it; what is on another says so itself."""
    names = orientation_of((part,))
    section = SECTIONS[1] if part.role is Role.BACK else _OF[TRAITS[part.role].of]
    if part.role is Role.DRAWER_FRONT:
        section = _OF[Assembly.DOOR]

    def told(mark: Mark) -> Mark:
        if mark.face in {None, face}:
            return mark
        assert mark.face is not None
        return replace(mark, detail=f"{mark.detail}, {names.name(mark.face)}".removeprefix(", "))

    own = sorted(map(told, marks), key=lambda mark: (round(mark.at, _DIGITS), mark.kind != "end"))
    on = part.ref if face is None else f"{part.ref} {names.name(face)}"
    return Piece(section, (part.ref,), on, tuple(own))


def _needless(piece: Piece, shown: set[str]) -> bool:
    """Whether a piece tells nothing that another doesn't."""
    bare = all(mark.kind in {"end", "board", "edge"} for mark in piece.marks)
    return bare and piece.refs[0] in shown


def _gathered(pieces: Iterable[Piece]) -> tuple[Piece, ...]:
    """Pieces with the same marks at the same places as one, in the order of the first of them."""
    alike: dict[object, list[Piece]] = {}
    for piece in pieces:
        marks = tuple(
            (round(each.at, _DIGITS), each.what, each.where, each.detail, each.kind)
            for each in piece.marks
        )
        alike.setdefault((piece.section, marks), []).append(piece)
    return tuple(_one(each) for each in alike.values())


def _one(pieces: list[Piece]) -> Piece:
    """Equal pieces as one: what goes to each is told together."""
    first = pieces[0]
    marks = tuple(
        replace(
            mark, of=tuple(dict.fromkeys(ref for piece in pieces for ref in piece.marks[at].of))
        )
        for at, mark in enumerate(first.marks)
    )
    refs = tuple(dict.fromkeys(ref for piece in pieces for ref in piece.refs))
    faces: dict[str, list[str]] = {}
    for piece in pieces:
        ref, _, face = piece.on.partition(" ")
        faces.setdefault(face, []).append(ref)
    on = ", ".join(f"{refs_text(each)} {face}".rstrip() for face, each in faces.items())
    return Piece(first.section, refs, on, marks)
