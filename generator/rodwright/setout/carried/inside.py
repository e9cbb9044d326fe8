"""What the spaces inside carry: shelves, floors, drawers, and rails for clothes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from rodwright.geometry import TOUCH, Box
from rodwright.problems import KeyPath
from rodwright.setout.bench import Bench
from rodwright.setout.carried.beds import Bed, assumed_to_carry, lie_on
from rodwright.setout.inside import Space
from rodwright.setout.notes import Contents, Said
from rodwright.setout.setting import Setting
from rodwright.trade.loads import BEHIND_DOORS, IN_DRAWERS, ON_OPEN_SHELVES
from rodwright.unit import JointKind, Load, Lump, Part, Role
from rodwright.wishes.loads import LoadSpec

RAIL_BELOW = 60.0
"""From what is above a clothes rail down to it, mm: a hand over the hooks of hangers (common
practice, no source)."""
DRAWER_FREE = 3.175
"""From what a drawer holds up to what is above it, mm: the 1/8 in by which ASTM F2057-23 reckons
what drawers hold."""


@dataclass(frozen=True, slots=True)
class Pieces:
    """What things lie on inside, by the place of the spec that it was wished at; ``under`` is what
    each layer of a level (ref) is glued on."""

    shelves: Mapping[KeyPath, Mapping[str, Box]]
    drawers: Mapping[KeyPath, Mapping[str, list[Part]]]
    under: Mapping[str, str]


def pieces_of(bench: Bench) -> Pieces:
    """What things lie on inside, gathered once."""
    shelves: dict[KeyPath, dict[str, Box]] = {}
    drawers: dict[KeyPath, dict[str, list[Part]]] = {}
    for part in bench.parts_of(Role.SHELF):
        shelves.setdefault(bench.place_of(part.ref), {})[part.ref] = part.bounds()
    for part in bench.parts_of(*_BOX):
        drawers.setdefault(bench.place_of(part.ref), {}).setdefault(part.group, []).append(part)
    return Pieces(shelves, drawers, layers_under(bench))


def layers_under(bench: Bench) -> dict[str, str]:
    """For each layer of what is glued up face to face the one below it (refs)."""
    glued = (each for each in bench.joints if each.kind is JointKind.FACE_GLUED)
    return {each.second: each.first for each in glued}


def load_inside(setting: Setting, contents: Contents, pieces: Pieces) -> Iterator[Load]:
    """What lies and hangs in a space that isn't divided; what can't is noted."""
    if contents.wish.drawers is not None:
        yield from _in_drawers(setting, contents, pieces)
        return
    space, levels = contents.space, _levels(contents, pieces)
    usual = _usual(setting, space)
    said = contents.load or usual
    if said.load.of is not None and said.load.of.manner == "hangs":
        yield from _hang(setting, space, said, levels)
        beds, said = [], usual
    else:
        beds = [(bed, said) for bed in _floor(setting, space, levels)]
    wish, where = contents.wish.shelves, (*contents.where, "shelves", "load")
    own = _each(setting, where, wish.load if wish is not None else None, len(levels))
    for level, each in zip(levels, own, strict=True):
        bed = _bed_on(setting, level.ref, level.box, space, level.height)
        beds += [(bed, each or said)] if bed is not None else []
    for bed, what in beds:
        if (load := lie_on(setting, bed, what)) is not None:
            yield load


def _usual(setting: Setting, space: Space) -> Said:
    """What a space carries that nothing is said of."""
    of = setting.spec.loads.of
    if of is not None:
        return Said(LoadSpec(of=of), ("loads",))
    shut = space.closed or space.covered
    return assumed_to_carry(BEHIND_DOORS if shut else ON_OPEN_SHELVES)


def _each(
    setting: Setting, where: KeyPath, wish: LoadSpec | tuple[LoadSpec, ...] | None, count: int
) -> list[Said | None]:
    """What each of several levels is said to carry, from the top down."""
    if isinstance(wish, LoadSpec):
        return [Said(wish, where)] * count
    if wish is None:
        return [None] * count
    if len(wish) != count:
        setting.problems.add(
            where,
            f"there are {count} of them, and the list says what {len(wish)} carry",
            "Write one for each, from the top down; `nothing` where nothing lies.",
        )
        return [None] * count
    return [Said(each, (*where, number)) for number, each in enumerate(wish)]


@dataclass(frozen=True, slots=True)
class _Shelf:
    """A shelf: the part that things lie on, its bounds, and the clear height over it."""

    ref: str
    box: Box
    underside: float
    height: float


def _bed_on(setting: Setting, ref: str, box: Box, space: Space, height: float) -> Bed | None:
    """Where things can lie on a level part of a space, if anywhere."""
    left, right = space.left.right, space.right.left
    start, stop = max(left, box.low[0]), min(right, box.high[0])
    rear = min(box.high[1], setting.rod.inside.shelf_rear)
    depth = rear - max(box.low[1], space.setback)
    if stop - start <= TOUCH or depth <= TOUCH:
        return None
    return Bed(ref, left, right, start, stop, depth, height)


def _levels(contents: Contents, pieces: Pieces) -> list[_Shelf]:
    """The shelves of a space from the top down."""
    boxes = pieces.shelves.get((*contents.where, "shelves"), {})
    lower = {pieces.under[ref] for ref in boxes if ref in pieces.under}
    tops = sorted((ref for ref in boxes if ref not in lower), key=lambda ref: -boxes[ref].high[2])
    found: list[_Shelf] = []
    above = contents.space.high
    for ref in tops:
        lowest = ref
        while lowest in pieces.under:
            lowest = pieces.under[lowest]
        found.append(_Shelf(ref, boxes[ref], boxes[lowest].low[2], above - boxes[ref].high[2]))
        above = boxes[lowest].low[2]
    return found


def _floor(setting: Setting, space: Space, levels: list[_Shelf]) -> Iterator[Bed]:
    """Where things can lie on a space's floor, if it is a panel."""
    floor = space.floor
    if floor is None or not floor.panel or floor.ref not in setting.bench.parts:
        return
    above = levels[-1].underside if levels else space.high
    bed = _bed_on(setting, floor.ref, setting.bench.bounds(floor.ref), space, above - space.low)
    if bed is not None:
        yield bed


def _hang(setting: Setting, space: Space, said: Said, levels: list[_Shelf]) -> Iterator[Load]:
    """Clothes on a rail in the highest of a space's clear openings, half at each end."""
    burden = said.load.of
    assert burden is not None
    bounds = [space.high, *(z for each in levels for z in (each.box.high[2], each.underside))]
    bounds = sorted([*bounds, space.low], reverse=True)
    openings = [*zip(bounds[::2], bounds[1::2], strict=True)]
    high = max(openings, key=lambda each: each[0] - each[1])[0]
    up = high - setting.sizes.usual(RAIL_BELOW)
    half = burden.per_metre(space.width, 0.0, 0.0) * space.width / 1000 / 2
    for upright, x in ((space.left, space.left.right), (space.right, space.right.left)):
        if upright.ref in setting.bench.parts and half:
            top = setting.bench.bounds(upright.ref).high[2]
            yield Load(
                upright.ref,
                burden.said,
                lumps=(Lump(x, half, min(up, top)),),
                assumed=said.where is None,
                source=burden.source,
            )


def _in_drawers(setting: Setting, contents: Contents, pieces: Pieces) -> Iterator[Load]:
    """What the drawers of a space hold, from the top down."""
    wish, where = contents.wish, (*contents.where, "drawers")
    assert wish.drawers is not None
    own = Said(wish.load, (*contents.where, "load")) if wish.load is not None else None
    if own is not None and own.load.of is not None and own.load.of.manner == "hangs":
        setting.moved_to((*contents.where, "load")).refuse(
            "clothes hang on no rail in a space full of drawers",
            "Write `folded clothes`, or take the drawers out.",
        )
        return
    beds = _drawer_beds(contents, pieces.drawers.get(where, {}))
    assumed = assumed_to_carry(IN_DRAWERS)
    for bed, each in zip(
        beds, _each(setting, (*where, "load"), wish.drawers.load, len(beds)), strict=True
    ):
        if (load := lie_on(setting, bed, each or own or assumed)) is not None:
            yield load


def _drawer_beds(contents: Contents, boxes: Mapping[str, list[Part]]) -> list[Bed]:
    """The bottoms of a space's drawers from the top down, each within its box."""
    whole = [parts for parts in boxes.values() if len(parts) == _PARTS_OF_A_BOX]
    whole.sort(key=lambda parts: -_lowest(parts))
    ceilings = [contents.space.high, *(_lowest(parts) for parts in whole)]
    return [_within_box(parts, above) for parts, above in zip(whole, ceilings, strict=False)]


_BOX = (Role.DRAWER_SIDE, Role.DRAWER_END, Role.DRAWER_BOTTOM)
_PARTS_OF_A_BOX = 5
"""Two sides, two ends and a bottom."""


def _lowest(parts: list[Part]) -> float:
    return min(part.bounds().low[2] for part in parts)


def _within_box(parts: list[Part], above: float) -> Bed:
    """What a drawer holds lies between its sides and its ends, and reaches up to what is above."""
    (left, right), (front, rear) = (
        sorted(
            (part.bounds() for part in parts if part.role is role), key=lambda box: box.low[axis]
        )
        for role, axis in ((Role.DRAWER_SIDE, 0), (Role.DRAWER_END, 1))
    )
    (bottom,) = (part for part in parts if part.role is Role.DRAWER_BOTTOM)
    start, stop = left.high[0], right.low[0]
    width, depth = stop - start, rear.low[1] - front.high[1]
    height = above - DRAWER_FREE - bottom.bounds().high[2]
    return Bed(
        bottom.ref, start, stop, start, stop, depth, max(height, 0.0), max(width, depth) / width
    )
