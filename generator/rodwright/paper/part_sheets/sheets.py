"""A sheet for each distinct part: all it takes to make it at the bench."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from rodwright.amounts import format_weight
from rodwright.geometry import Vector
from rodwright.handover.lists import common_name, like_parts
from rodwright.lengths import LengthUnit
from rodwright.mass import weight
from rodwright.paper.part_sheets.datum import Datum, datum_of
from rodwright.paper.part_sheets.entries import Group, groups
from rodwright.paper.part_sheets.figures import Entry, Operation
from rodwright.paper.part_sheets.fixings import held_by
from rodwright.paper.part_sheets.marks import marks
from rodwright.paper.part_sheets.order import order_of_work
from rodwright.paper.part_sheets.pairs import Hands, hands
from rodwright.paper.part_sheets.patches import Patch
from rodwright.paper.part_sheets.purposes import purposes
from rodwright.paper.part_sheets.slants import whole_end
from rodwright.paper.part_sheets.square_ends import square_ends
from rodwright.unit import (
    Bevel,
    Easing,
    FingerPull,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    Part,
    PocketHole,
    Rebate,
    Surface,
    Unit,
    Working,
)
from rodwright.unit.laid import laid
from rodwright.unit.orientation import describe_orientation, describe_shows


@dataclass(frozen=True, slots=True)
class Lies:
    """How a piece lies on the bench, and where it is measured from, all surfaces by name.

    ``up`` is the face that is up, the datum ``end`` is at the left, and the datum ``edge`` is the
    ``near`` or the ``far`` one.  ``face`` is the face side, from which places in edges and ends
    are measured.  ``opposite`` has, for each of the three, the surface across from it.
    """

    up: str
    end: str
    edge: str
    edge_lies: str
    face: str
    opposite: dict[str, str]


@dataclass(frozen=True, slots=True)
class Size:
    """Length, width and thickness as they are printed."""

    length: str
    width: str
    thickness: str


@dataclass(frozen=True, slots=True)
class PartSheet:
    """All it takes to make a part; figures as they are printed, in ``unit``.

    ``cut`` is the size to cut, ``finished`` what it is once it is trimmed and edged: all
    workings are measured on the finished piece.  ``shows`` are the surfaces that show,
    ``lipped`` the edges that carry a lipping, ``edged`` what is glued on which surface, ``finish``
    what it is finished with (empty where nothing is said of it).
    ``lie`` says how each piece goes in the unit, ``hands`` which part is its mirror image.
    ``operations`` are the workings in their order, ``marks`` what is only marked in pencil,
    ``held_by`` the fixings to other parts and what is drilled for them, and ``work`` the whole
    order of work.
    """

    refs: tuple[str, ...]
    name: str
    quantity: int
    unit: LengthUnit
    stock: str
    material: str
    grain: str
    cut: Size
    finished: Size
    lies: Lies
    shows: tuple[str, ...]
    lipped: tuple[str, ...]
    edged: tuple[tuple[str, str, str], ...]
    finish: str
    lie: tuple[str, ...]
    hands: Hands
    weight_each: str
    operations: tuple[Operation, ...]
    marks: tuple[Entry, ...]
    held_by: tuple[str, ...]
    work: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Laid:
    """A sheet with what its drawing is made of: the piece as it is laid, its datum, and the
    workings of each entry."""

    sheet: PartSheet
    piece: Part
    datum: Datum
    groups: tuple[Group, ...]


def part_sheets(unit: Unit) -> tuple[PartSheet, ...]:
    """A sheet for each row of the parts list, in its order."""
    return tuple(each.sheet for each in laid_sheets(unit))


def laid_sheets(unit: Unit) -> tuple[Laid, ...]:
    """The sheets with what their drawings are made of."""
    rows = like_parts(unit)
    pairs = hands(rows)
    return tuple(_laid(unit, parts, pairs[parts[0].ref]) for parts in rows)


def _laid(unit: Unit, parts: Sequence[Part], pair: Hands) -> Laid:
    pieces = laid(parts)
    first, datum = pieces[0], datum_of(pieces, unit.display_unit)
    say = datum.words.say
    found = tuple(groups(datum, first.workings, purposes(unit, pieces)))
    made, numbered = _operations(datum, first, found)
    marked = tuple(
        Group(replace(entry, number=number), (patch,))
        for number, (entry, patch) in enumerate(marks(unit, pieces, datum), len(numbered) + 1)
    )
    finished, rough = map(_size(say), (first.blank.size, first.rough_size))
    sheet = PartSheet(
        refs=tuple(part.ref for part in parts),
        name=common_name(tuple(part.name for part in parts)),
        quantity=len(parts),
        unit=unit.display_unit,
        stock=first.blank.stock.name,
        material=first.blank.stock.described,
        grain=str(first.blank.grain),
        cut=rough,
        finished=finished,
        lies=_lies(datum),
        shows=describe_shows(pieces),
        lipped=first.lipped,
        edged=tuple(
            (datum.words.name(each.surface), each.called, say(each.thickness))
            for each in first.edged
        ),
        finish=first.finish.described if first.finish is not None else "",
        lie=describe_orientation(pieces),
        hands=pair,
        weight_each=format_weight(weight(first), unit.display_unit, 2),
        operations=made,
        marks=tuple(each.entry for each in marked),
        held_by=held_by(unit, pieces),
        work=order_of_work(
            unit, pieces, datum, made, len(marked), square_ends(unit, pieces, numbered)
        ),
    )
    return Laid(sheet, first, datum, (*numbered, *marked))


def _size(say: Callable[[float], str]) -> Callable[[Vector], Size]:
    return lambda size: Size(*map(say, size))


def _lies(datum: Datum) -> Lies:
    name = datum.words.name
    up, under = Surface.FACE, Surface.REVERSE
    end, edge = datum.origin[0], datum.origin[1]
    return Lies(
        up=name(up),
        end=name(end),
        edge=name(edge),
        edge_lies="far" if edge.at_high else "near",
        face=datum.name(2),
        opposite={name(each): name(each.opposite) for each in (up, under, end, end.opposite, edge)}
        | {name(edge.opposite): name(edge)},
    )


_SHAPE, _UP, _UNDER, _EDGES, _ARRISES = range(5)


def _operations(
    datum: Datum, piece: Part, found: Sequence[Group]
) -> tuple[tuple[Operation, ...], tuple[Group, ...]]:
    """The workings by how the piece lies for them, numbered in that order."""
    size, name = piece.blank.size, datum.words.name
    headings = {
        _SHAPE: "Cut to shape",
        _UP: f"{_capital(name(Surface.FACE))} up",
        _UNDER: f"Turned over about its length, {name(Surface.REVERSE)} up",
        _EDGES: "In ends and edges",
        _ARRISES: "Arrises",
    }
    sides = {_UP: Surface.FACE, _UNDER: Surface.REVERSE}
    by_turn: dict[int, list[Group]] = {turn: [] for turn in headings}
    for group in found:
        (first, *_) = group.workings
        if not isinstance(first, Patch):
            by_turn[_turn(size, first)].append(group)
    numbered: list[Group] = []
    made: list[Operation] = []
    for turn, members in by_turn.items():
        start = len(numbered)
        for each in sorted(members, key=lambda group: _place(datum, group)):
            entry = replace(each.entry, number=len(numbered) + 1)
            numbered.append(replace(each, entry=entry))
        if members:
            entries = tuple(each.entry for each in numbered[start:])
            made.append(Operation(headings[turn], sides.get(turn), entries))
    return tuple(made), tuple(numbered)


def _turn(size: Vector, working: Working) -> int:
    """When a working is made, by how the piece lies for it."""
    if isinstance(working, Notch):
        return _SHAPE
    if isinstance(working, Mitre | Bevel):
        return _SHAPE if whole_end(size, working) else _ARRISES
    if isinstance(working, Easing):
        return _ARRISES
    side = working.worked_from(size)
    if side is None and working.surface.axis == 2:
        return _UP
    return _EDGES if side is None else _UP if side is Surface.FACE else _UNDER


_KINDS = (
    Mitre,
    Bevel,
    Notch,
    Rebate,
    Groove,
    Housing,
    FingerPull,
    Mortise,
    PocketHole,
    Hole,
    Easing,
)
"""In which order workings are told that are made as a piece lies."""


def _place(datum: Datum, group: Group) -> tuple[int, float, float]:
    """By kind, then from the datum end on, then from the datum edge."""
    box = group.workings[0].bounds(datum.size)
    x, y = (datum.from_datum(axis, box.low[axis], box.size[axis]) for axis in (0, 1))
    kind = next(at for at, each in enumerate(_KINDS) if isinstance(group.workings[0], each))
    return kind, round(x, 3), round(y, 3)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
