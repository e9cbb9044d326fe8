"""Drilling the rows for adjustable shelves, where other workings leave wood for them.

Done last, when everything else has been cut into the uprights.  Lengths in mm.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot, inf

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.halfspaces import Plane, beyond
from rodwright.lengths import LengthUnit
from rodwright.problems import KeyPath
from rodwright.setout import looks
from rodwright.setout.bench import Bench
from rodwright.setout.carcass.shelf_rows import PIN_USE, PLATE_USE, hole_diameter
from rodwright.setout.inside import Upright
from rodwright.setout.notes import ShelfRows
from rodwright.setout.setting import Setting
from rodwright.trade.hinges import PLATE_CLEAR
from rodwright.trade.wood_left import BETWEEN
from rodwright.unit import (
    Fixing,
    Hole,
    Part,
    Surface,
    Working,
)

DEPTH = 10.0
"""Depth of a pin's hole, mm, where the upright is thick enough (common practice, no source)."""
LEAST_DEPTH = 6.0
"""The shallowest hole that holds a pin, mm (common practice, no source)."""
SHIFT = 1.0
"""Steps (mm) in which a row is moved inwards to keep clear of what is in its way."""


@dataclass(frozen=True, slots=True)
class _Taken:
    """What a working takes of an upright, in its part frame: it fills the box, but a hole in a face
    is round."""

    working: Working
    box: Box


@dataclass(frozen=True, slots=True)
class _Face:
    """One upright of some rows: its part, the surface drilled, what is cut already, and which of
    it are holes for hinge plates in the same surface."""

    part: Part
    surface: Surface
    taken: tuple[_Taken, ...]
    plates: tuple[_Taken, ...]
    planes: tuple[Plane, ...]

    def room(self, centre: tuple[float, float], radius: float) -> tuple[float, Working | None]:
        """How deep a hole may be here, and what keeps it from being deeper."""
        length, width, thickness = self.part.blank.size
        x, y = centre
        if min(x, y, length - x, width - y) < 2 * radius - TOUCH:
            return -inf, None
        if any(_beside(plate, centre) < radius + PLATE_CLEAR - TOUCH for plate in self.plates):
            return -inf, None
        deep, blocking = thickness - BETWEEN, None
        clear = radius + BETWEEN - TOUCH
        for each in self.taken:
            low, high = each.box.low, each.box.high
            if low[0] - clear < x < high[0] + clear and _beside(each, centre) < clear:
                until = (thickness - high[2] if self.surface is Surface.FACE else low[2]) - BETWEEN
                if until < deep:
                    deep, blocking = until, each.working
        for plane in self.planes:
            near = max(beyond(plane, (x, y, z)) for z in (0.0, thickness))
            if near > -radius - BETWEEN:
                return -inf, None
        return deep, blocking


@dataclass(frozen=True, slots=True)
class _Row:
    """A row on one face: the holes that can be drilled (x and y, part frame), how deep they may
    be."""

    face: _Face
    holes: tuple[tuple[float, float], ...]
    deep: float


def drill_shelf_rows(setting: Setting) -> None:
    """Drill the holes of every row, and note the sleeves that they take.

    Holes keep 3 mm of wood to every other working, those on the far face too: an upright that
    is drilled from both sides at one height gets shallower ones, and only it.  Those that fall
    together with a hinge plate's, or come near it, are left out.  A row moves
    inwards where it must so that its shelves can rest on it; other holes that have no place
    are left out.  What can't be drilled at all is noted, and so are holes in the way of
    another working where the maker said how far the row goes.
    """
    rows = setting.notes.rows
    shared = _drilled_from_both_sides(rows, setting.unit)
    for each in rows:
        _drill(setting.moved_to(each.where), each, shared)


def _drilled_from_both_sides(
    rows: Sequence[ShelfRows], unit: LengthUnit
) -> frozenset[tuple[str, KeyPath]]:
    """Refs of uprights that have rows on both faces at one height, with the way to either row."""
    found = set()
    right_of: dict[str, list[ShelfRows]] = {}
    for each in rows:
        right_of.setdefault(each.space.left.ref, []).append(each)
    for one in rows:
        upright = one.space.right.ref
        for other in right_of.get(upright, ()):
            if _side_by_side(one, other, unit):
                found |= {(upright, one.where), (upright, other.where)}
    return frozenset(found)


def _side_by_side(one: ShelfRows, other: ShelfRows, unit: LengthUnit) -> bool:
    """Whether two rows reach past the same height."""
    near = (hole_diameter(one.wish, unit) + hole_diameter(other.wish, unit)) / 2 + BETWEEN
    return one.heights[0] < other.heights[-1] + near and other.heights[0] < one.heights[-1] + near


def _drill(setting: Setting, each: ShelfRows, shared: frozenset[tuple[str, KeyPath]]) -> None:
    bench, wish, sizes = setting.bench, each.wish, setting.sizes
    needed = wish.depth if wish.depth is not None else sizes.usual(LEAST_DEPTH)
    faces: list[tuple[list[_Row], float]] = []
    for upright in each.uprights:
        deep = wish.depth if wish.depth is not None else sizes.usual(DEPTH)
        face = _face(bench, each, upright)
        thickness = face.part.blank.thickness
        if thickness - BETWEEN < needed:
            say = setting.say
            setting.at("depth").refuse(
                f"holes {say(needed)} deep don't go into {upright.ref}, which is {say(thickness)} "
                f"thick: {say(BETWEEN)} of wood must be left",
                "Use thicker stock, or make the holes shallower."
                if wish.depth is not None
                else "Use thicker stock.",
            )
            return
        half = (thickness - BETWEEN) / 2
        if wish.depth is None and (upright.ref, each.where) in shared and half >= LEAST_DEPTH:
            deep = min(deep, half)
        laid: list[_Row] = []
        for y, inward in ((each.front, 1), (each.rear, -1)):
            row = _lay(setting, each, face, y, inward, needed)
            if row is None:
                return
            laid.append(row)
        faces.append((laid, min(deep, *(row.deep for row in laid))))
    wide = hole_diameter(wish, setting.unit)
    drilled: dict[float, int] = {}
    bored: dict[float, dict[str, None]] = {}
    for laid, deep in faces:
        for row in laid:
            drilled[deep] = drilled.get(deep, 0) + len(row.holes)
            bored.setdefault(deep, {})[row.face.part.ref] = None
            for hole in row.holes:
                pin_hole = Hole(row.face.surface, hole, wide, deep, PIN_USE)
                bench.work(row.face.part.ref, pin_hole)
            _show_pins(bench, each, row, deep)
    if wish.sleeves:
        for deep, count in drilled.items():
            across = f"{sizes.say(wish.diameter)} inside, {sizes.say(wide)} outside"
            drill = f"{sizes.say(wide)}, {sizes.say(deep)} deep"
            on = " and ".join(bored[deep])
            bench.buy(Fixing("sleeve for a shelf pin", count, across, drill, on))


def _show_pins(bench: Bench, each: ShelfRows, row: _Row, deep: float) -> None:
    """Show the pins that shelves rest on."""
    part = row.face.part
    depth = part.blank.thickness if row.face.surface is Surface.FACE else 0.0
    inward = 1.0 if part.ref == each.space.left.ref else -1.0
    for hole in row.holes:
        x, y, z = part.placement.to_unit((*hole, depth))
        if any(abs(z - bearing) < TOUCH for bearing in each.bearing):
            pin = looks.pin(x, inward, y, z, (each.wish.diameter, deep))
            bench.show(part.ref, pin, fine=True)


def _face(bench: Bench, each: ShelfRows, upright: Upright) -> _Face:
    part = bench.parts[upright.ref]
    at = (upright.right if upright is each.space.left else upright.left, 0.0, 0.0)
    local = part.placement.to_part(at)
    surface = Surface.REVERSE if local[2] < part.blank.thickness / 2 else Surface.FACE
    size, workings = part.blank.size, bench.workings_of(upright.ref)
    taken = tuple(
        _Taken(working, working.bounds(size)) for working in workings if not working.planes(size)
    )
    plates = tuple(
        each
        for each in taken
        if isinstance(each.working, Hole)
        and each.working.use == PLATE_USE
        and each.working.surface is surface
    )
    return _Face(
        part,
        surface,
        taken,
        plates,
        tuple(plane for working in workings for plane in working.planes(size)),
    )


def _lay(
    setting: Setting, each: ShelfRows, face: _Face, y: float, inward: int, needed: float
) -> _Row | None:
    """One row on a face, moved inwards until every shelf has its hole; None where none does."""
    middle = (each.front + each.rear) / 2
    radius = hole_diameter(each.wish, setting.unit) / 2
    while (middle - y) * inward > radius + BETWEEN / 2 - TOUCH:
        if all(face.room(_centre(face, y, z), radius)[0] >= needed - TOUCH for z in each.bearing):
            return _row(setting, each, face, y, needed)
        y += inward * SHIFT
    say = setting.say
    start = each.front if inward > 0 else each.rear
    blocked = [
        (z, working)
        for z in each.bearing
        for room, working in [face.room(_centre(face, start, z), radius)]
        if room < needed
    ]
    z, working = blocked[0]
    what = "the end of it" if working is None else f"a {working.word}"
    setting.refuse(
        f"the holes for the shelf at {say(z + each.wish.diameter / 2 - each.space.low)} in "
        f"{face.part.ref} meet {what}, which leaves no depth of {say(needed)}",
        "Move the shelf, or what is in its way; or make the holes shallower.",
    )
    return None


def _row(setting: Setting, each: ShelfRows, face: _Face, y: float, needed: float) -> _Row | None:
    radius = hole_diameter(each.wish, setting.unit) / 2
    kept: list[tuple[float, float]] = []
    deep = inf
    for z in each.heights:
        centre = _centre(face, y, z)
        room, working = face.room(centre, radius)
        if room >= needed - TOUCH:
            kept.append(centre)
            deep = min(deep, room)
        elif (key := _said(each, z)) and working is not None and room < 0:
            say = setting.say
            setting.at(key).refuse(
                f"the hole at {say(z - each.space.low)} above the floor of the space meets a "
                f"{working.word} in {face.part.ref}",
                "Let the row begin higher or end lower, or leave it to be laid by itself.",
            )
            return None
    return _Row(face, tuple(kept), deep)


def _said(each: ShelfRows, z: float) -> str:
    """The key by which the maker wanted a hole here; empty if the row was left to be laid."""
    keys = {"from": each.wish.start, "to": each.wish.stop}
    given = [key for key, end in keys.items() if end is not None]
    return given[0 if z < each.bearing[0] else -1] if given else ""


def _centre(face: _Face, y: float, z: float) -> tuple[float, float]:
    at = (face.part.placement.origin[0], y, z)
    local = face.part.placement.to_part(at)
    return local[0], local[1]


def _beside(taken: _Taken, centre: tuple[float, float]) -> float:
    """How far a point of a face is from what a working takes of it; 0 inside."""
    low, high = taken.box.low, taken.box.high
    if isinstance(taken.working, Hole) and taken.working.surface.axis == 2:
        radius = taken.working.diameter / 2
        return hypot(*(centre[i] - (low[i] + high[i]) / 2 for i in (0, 1))) - radius
    return hypot(*(max(low[i] - centre[i], centre[i] - high[i], 0.0) for i in (0, 1)))
