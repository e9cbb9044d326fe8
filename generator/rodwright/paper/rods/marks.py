"""What is marked across a rod, and the marks of one part: its ends, and what is cut into it.

Lengths in mm, unit frame; an axis is 0 for width (x), 1 for depth (y), 2 for height (z).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from rodwright.geometry import Box, Vector
from rodwright.geometry.halfspaces import box_planes, vertices
from rodwright.lengths import LengthUnit, format_length
from rodwright.paper.rods.sizes import size_of
from rodwright.unit import Bevel, Easing, Hole, Mitre, Part, PocketHole, Surface, Working
from rodwright.unit.orientation import orientation_of
from rodwright.unit.surfaces import HIGH, LOW

SAME = 0.05
"""mm: lines that are no farther apart are one."""
LEAST_ROW = 5
"""So many holes in equal steps are a row, as the lists have it."""
_STEP = 0.01
"""mm: steps that differ by no more are equal."""
_SQUARE = 1 - 1e-9
"""A component of a unit vector that is no smaller is one."""
SIDES = (("left", "right"), ("front", "rear"), ("lower", "upper"))
"""What the sides of a thing towards low and high are called, by the axis."""
_FARTHEST = (
    ("leftmost point", "rightmost point"),
    ("foremost point", "rearmost point"),
    ("lowest point", "highest point"),
)


Kind = Literal["end", "board", "edge", "cut", "hole", "ware"]
KINDS: tuple[Kind, ...] = ("end", "board", "edge", "cut", "hole", "ware")
"""The weightiest first."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A line across a rod, ``at`` mm along the axis.

    ``of`` are the refs of what lies or goes there, ``what`` it is of them (``underside``,
    ``housing``), ``where`` in what is cut or bought the line lies (``lower side``), ``detail`` what
    a table has room for besides.  ``face`` is the surface of its part
    that it is marked on, None for the part's own ends and what is marked on no face.  ``kind`` says
    what the line is: an end of the part itself; a face of a board that meets it, or another edge of
    one; a side or the bottom of what is cut; the middle of a hole; or something bought.  ``minor``
    ones stand in a row of holes between the first and the last: they need no text.
    """

    at: float
    of: tuple[str, ...]
    what: str
    where: str = ""
    detail: str = ""
    face: Surface | None = None
    kind: Kind = "end"
    minor: bool = False


def along(part: Part, axis: int) -> int | None:
    """The axis of a part that runs along one of the unit; None where it lies askew to it."""
    for own, direction in enumerate(part.placement.axes):
        if abs(direction[axis]) >= _SQUARE:
            return own
    return None


def own_marks(
    part: Part, axis: int, guests: Mapping[Working, tuple[str, ...]], unit: LengthUnit
) -> Iterator[Mark]:
    """A part's ends along an axis of the unit, and the places of its workings; ``guests`` are the
    refs of what goes into each.

    Easings aren't set out, slanting cuts are told by their long and short points, and how deep a
    hole is, by its detail alone.  What is cut into a part that lies askew to the axis can't be
    marked from it either.
    """
    placed = tuple(ends(part, axis))
    yield from placed
    local, low, high = along(part, axis), placed[0].at, placed[-1].at
    rows: dict[tuple[Hole, str, tuple[str, ...]], list[Hole]] = {}
    for each in part.workings if local is not None else ():
        of = guests.get(each, ())
        match each:
            case Mitre() | Bevel() | Easing():
                continue
            case Hole() if each.surface.axis != local:
                kind = (replace(each, position=(0.0, 0.0)), each.use, of)
                rows.setdefault(kind, []).append(each)
            case Hole():
                continue
            case PocketHole():
                if each.run == local:
                    at = _mouth(part, each)[axis]
                    yield Mark(at, of, each.called, "", size_of(each, part, unit), each.end, "hole")
            case _:
                for mark in _sides(part, axis, each, of, unit):
                    if low + SAME < mark.at < high - SAME:
                        yield mark
    for (hole, use, of), alike in rows.items():
        named = Mark(0.0, of, _hole_name(use), face=hole.surface, kind="hole")
        for which, places in _by_rows(part, axis, alike, unit):
            yield from _holes(named, places, size_of(hole, part, unit), unit, which)


def corners(part: Part) -> Sequence[Vector]:
    """The corners that slanting cuts leave of a part's blank, unit frame."""
    size = part.blank.size
    slants = [plane for each in part.workings for plane in each.planes(size)]
    box = Box.of_size(size)
    points = vertices([*box_planes(box), *slants]) if slants else box.corners()
    return [part.placement.to_unit(each) for each in points]


def ends(part: Part, axis: int) -> Iterator[Mark]:
    """Where a part ends along an axis, with the long and short points of slanting cuts."""
    places = distinct(point[axis] for point in corners(part))
    local, of = along(part, axis), (part.ref,)
    names, inner = _FARTHEST[axis], "corner"
    if local is not None:
        orientation, inner = orientation_of((part,)), "short point"
        turned = part.placement.axes[local][axis] < 0
        low, high = (HIGH, LOW) if turned else (LOW, HIGH)
        names = orientation.name(low[local]), orientation.name(high[local])
    middle = (places[0] + places[-1]) / 2
    slant_low = local is not None and any(at <= middle for at in places[1:-1])
    slant_high = local is not None and any(at > middle for at in places[1:-1])
    yield Mark(places[0], of, names[0] + ", long point" * slant_low)
    for at in places[1:-1]:
        yield Mark(at, of, inner)
    yield Mark(places[-1], of, names[1] + ", long point" * slant_high)


def _mouth(part: Part, working: Hole | PocketHole) -> Vector:
    """Where a hole's axis enters its part, unit frame; of a pocket hole, where it is placed along
    its arris."""
    size, point = part.blank.size, [0.0, 0.0, 0.0]
    surface = working.entered
    point[surface.axis] = size[surface.axis] if surface.at_high else 0.0
    if isinstance(working, PocketHole):
        point[working.run] = working.position
    else:
        for axis, at in zip(surface.across, working.position, strict=True):
            point[axis] = at
    return part.placement.to_unit((point[0], point[1], point[2]))


def _sides(
    part: Part, axis: int, working: Working, of: tuple[str, ...], unit: LengthUnit
) -> Iterator[Mark]:
    """Where a working begins and ends along an axis, or how deep it goes in along it."""
    box = working.bounds(part.blank.size)
    places = [part.placement.to_unit(corner)[axis] for corner in box.corners()]
    face: Surface | None = getattr(working, "surface", None)
    bottom = face is not None and face.axis == along(part, axis)
    detail = size_of(working, part, unit)
    for at, side in zip((min(places), max(places)), SIDES[axis], strict=True):
        where = "bottom" if bottom else f"{side} side"
        yield Mark(at, of, working.called, where, detail, face, "cut")


def _by_rows(
    part: Part, axis: int, holes: Sequence[Hole], unit: LengthUnit
) -> Iterator[tuple[str, list[float]]]:
    """The places of equal holes along an axis; where rows beside each other differ, those of each
    row by themselves, with which it is."""
    (side,) = (own for own in holes[0].surface.across if own != along(part, axis))
    across = next((way for way in range(3) if along(part, way) == side), None)
    mouths = [_mouth(part, each) for each in holes]
    if across is None:
        yield "", [mouth[axis] for mouth in mouths]
        return
    beside: dict[float, list[float]] = {}
    for mouth in mouths:
        beside.setdefault(round(mouth[across], 2), []).append(mouth[axis])
    alike: dict[tuple[float, ...], list[float]] = {}
    for aside, places in sorted(beside.items()):
        alike.setdefault(tuple(round(at, 2) for at in sorted(places)), []).append(aside)
    if len(alike) == 1 or not any(rows_of(places)[0] for places in alike):
        yield "", [mouth[axis] for mouth in mouths]
        return
    low = part.bounds().low[across]
    turned = part.placement.axes[side][across] < 0
    edge = orientation_of((part,)).name((HIGH if turned else LOW)[side])
    for asides in alike.values():
        told = " and ".join(format_length(aside - low, unit) for aside in asides)
        yield f"{told} from the {edge}", [at for aside in asides for at in beside[aside]]


def _holes(
    named: Mark, places: Sequence[float], size: str, unit: LengthUnit, which: str
) -> Iterator[Mark]:
    """Equal holes by their middles, those in equal steps as rows; ``which`` row it is, if others
    beside it differ."""
    there = distinct(places)
    count = Counter(min(there, key=lambda each, at=at: abs(each - at)) for at in places)  # type: ignore[misc]
    rows, others = rows_of(there)

    def mark(at: float, *, place: str = "", pitch: str = "", minor: bool = False) -> Mark:
        abreast = f"{count[at]} abreast" if count[at] > 1 else ""
        detail = ", ".join(filter(None, (size, pitch, abreast)))
        return replace(named, at=at, where=place, detail=detail, minor=minor)

    for row in rows:
        last = len(row) - 1
        pitch = f"{format_length((row[-1] - row[0]) / last, unit)} apart"
        for number, at in enumerate(row):
            place = {0: f"first of {last + 1}", last: f"last of {last + 1}"}.get(number, "")
            told = ", ".join(filter(None, (place, which))) if place else ""
            yield mark(at, place=told, pitch=pitch, minor=not place)
    for at in others:
        yield mark(at, place=which)


def _hole_name(use: str) -> str:
    """``dowel hole``, ``hole for adjustable shelves``."""
    if use.endswith("shelves"):
        return f"hole for {use}"
    return f"{use} hole".lstrip()


def distinct(places: Iterable[float]) -> list[float]:
    """Places in their order, those that are the same but once."""
    found: list[float] = []
    for at in sorted(places):
        if not found or at - found[-1] > SAME:
            found.append(at)
    return found


def rows_of(places: Sequence[float]) -> tuple[list[list[float]], list[float]]:
    """Runs of at least ``LEAST_ROW`` places in equal steps, and the places that are in none."""
    rows: list[list[float]] = []
    others: list[float] = []
    start = 0
    while start < len(places):
        end = start + 1
        while end < len(places) and (
            abs(places[end] - places[end - 1] - (places[start + 1] - places[start])) <= _STEP
        ):
            end += 1
        if end - start >= LEAST_ROW:
            rows.append(list(places[start:end]))
            start = end
        else:
            others.append(places[start])
            start += 1
    return rows, others
