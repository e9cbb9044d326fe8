"""What would keep a carcass from swaying, each worked out: a back, a face frame, stiffer joints,
a rail under the top, the wall."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from math import log, pi

from rodwright.amounts import GRAVITY, format_weight
from rodwright.strength import bracing
from rodwright.strength.backs import Panel
from rodwright.strength.bracing import Racking
from rodwright.strength.glued_in import low_shear
from rodwright.strength.legs import legs_sway, standing
from rodwright.strength.results import Remedy
from rodwright.strength.skeletons import (
    Knot,
    Member,
    Skeleton,
    carcass_skeleton,
    stiffness,
)
from rodwright.strength.told_support import said
from rodwright.strength.turning import THROUGH_THICKNESS, couple
from rodwright.trade.mechanics import Mechanics, mechanics_of
from rodwright.trade.screws import BACK_SPACING
from rodwright.trade.sizes import SHEET_THICKNESSES, TradeSizes, trade_sizes
from rodwright.unit import PANELS, Role, Unit

BACK = ("birch plywood", 6.0, 680.0)
"""The back that is tried: material, thickness (mm) and density (kg/m3)."""
_STILE = (60.0, 22.0)
"""The face frame that is tried: width and thickness of its members, mm."""
_DOWEL = 8.0
"""Dowels of the remedies, mm; in inches the nearest that are sold."""
_DOWELS_APART = 75.0
"""How far from each other dowels in the end of a panel stand, mm."""
_RAIL = (100.0, 22.0)
"""The rail that is tried: height and thickness, mm."""
_WOOD = "pine"
"""What face frame and rail are of."""


def remedies(unit: Unit, found: Racking, limit: float) -> tuple[Remedy, ...]:
    """What would keep a unit from swaying by more than ``limit`` mm, and by how much it would then
    sway, mm."""
    return tuple(
        Remedy(what, mended.figure, mended.figure <= limit)
        for what, mended in (
            *_glued(found),
            *_with_back(unit, found),
            *_with_face_frame(unit, found),
            *_with_dowels(unit, found),
            *_with_rail(unit, found),
            _at_wall(unit, found),
        )
    )


_Mended = Iterator[tuple[str, Racking]]


def _glued(found: Racking) -> _Mended:
    """A back that lies in grooves, glued into them."""
    if found.play:
        yield "the back glued into its grooves all round", replace(found, play=0.0)


def _with_back(unit: Unit, found: Racking) -> _Mended:
    """A back of 6 mm screwed all round, where there is none yet that bears at once."""
    sizes = trade_sizes(unit.display_unit)
    material, thickness, density = BACK[0], sizes.usual(BACK[1]), BACK[2]
    screw, apart = sizes.small_screw, sizes.usual(BACK_SPACING)
    mechanics = mechanics_of(material, thickness)
    if found.back or mechanics is None or mechanics.panel_shear is None:
        return
    box = [part.bounds() for part in unit.parts if part.role in PANELS]
    width = max(each.high[0] for each in box) - min(each.low[0] for each in box)
    upright = next(part for part in unit.parts if part.role is Role.SIDE)
    even = (density * upright.blank.stock.density) ** 0.5
    slip = bracing.slip_modulus(screw, even, drilled=True)
    shear = mechanics.panel_shear.value
    give = bracing.shear_sway(1.0, width, found.height, thickness, shear)
    give += bracing.slip_sway(1.0, width, found.height, apart, slip)
    what = (
        f"a back of {sizes.say(thickness)} {material}, screwed on all round with "
        f"{sizes.screw_name(screw)} screws {sizes.say(apart)} apart"
    )
    yield what, replace(found, back=1 / give, play=0.0)


def _with_face_frame(unit: Unit, found: Racking) -> _Mended:
    """A face frame, dowelled at its corners."""
    sizes = trade_sizes(unit.display_unit)
    wide, thick = map(sizes.usual, _STILE)
    mechanics = mechanics_of(_WOOD, thick)
    if found.face or mechanics is None:
        return
    box = [part.bounds() for part in unit.parts if part.role in PANELS]
    left, right = min(each.low[0] for each in box), max(each.high[0] for each in box)
    modulus, inertia, area = mechanics.along.value, thick * wide**3 / 12, thick * wide
    stiles = [
        Member(ref, True, x, 0.0, found.height, modulus, inertia, area)
        for ref, x in (("left", left + wide / 2), ("right", right - wide / 2))
    ]
    rails = [
        Member(ref, False, z, left + wide, right - wide, modulus, inertia, area)
        for ref, z in (("low", wide / 2), ("high", found.height - wide / 2))
    ]
    turning = _dowelled(sizes, mechanics, (wide, thick), 2, spread=True)
    knots = tuple(
        Knot(stile.ref, rail.ref, (stile.place, rail.place), turning)
        for stile in stiles
        for rail in rails
    )
    frame = Skeleton((*stiles, *rails), knots, frozenset({"left", "right"}))
    what = f"a face frame of {_WOOD}, {sizes.by(wide, thick)}, two dowels in each corner"
    yield what, replace(found, face=stiffness(frame))


def _with_dowels(unit: Unit, found: Racking) -> _Mended:
    """Dowels in all joints of the carcass that turn more easily."""
    skeleton, mechanics = carcass_skeleton(unit), _mechanics(unit)
    if mechanics is None:
        return
    sizes = trade_sizes(unit.display_unit)
    dowel, apart = _dowel(sizes), sizes.usual(_DOWELS_APART)
    depths = {part.ref: min(part.bounds().size[1], 2000.0) for part in unit.parts}
    knots = []
    for knot in skeleton.knots:
        deep, thick = depths[knot.level], unit.part(knot.level).blank.thickness
        count = max(2, int((deep - apart) // apart) + 1)
        turning = _dowelled(sizes, mechanics, (thick, deep), count, spread=False)
        knots.append(replace(knot, turning=max(knot.turning, turning)))
    stiffer = stiffness(replace(skeleton, knots=tuple(knots)))
    if stiffer > found.frame:
        what = (
            f"{sizes.say(dowel)} dowels {sizes.say(apart)} apart, glued, in all joints of the "
            "carcass"
        )
        yield what, replace(found, frame=stiffer)


def _with_rail(unit: Unit, found: Racking) -> _Mended:
    """A rail on edge between the sides, under the top."""
    sizes = trade_sizes(unit.display_unit)
    high, thick = map(sizes.usual, _RAIL)
    skeleton, mechanics = carcass_skeleton(unit), mechanics_of(_WOOD, thick)
    if mechanics is None or len(skeleton.tops) < 2:
        return
    left, right = skeleton.tops
    modulus, inertia, area = mechanics.along.value, thick * high**3 / 12, thick * high
    place = min(left.high, right.high) - 60.0 - high / 2
    rail = Member("rail", False, place, left.place, right.place, modulus, inertia, area)
    turning = _dowelled(sizes, mechanics, (high, thick), 3, spread=True)
    knots = tuple(Knot(each.ref, rail.ref, (each.place, place), turning) for each in (left, right))
    railed = replace(skeleton, members=(*skeleton.members, rail), knots=(*skeleton.knots, *knots))
    what = (
        f"a rail of {_WOOD}, {sizes.by(high, thick)} on edge between the sides under the top, "
        "three dowels at each end"
    )
    yield what, replace(found, frame=stiffness(railed))


def _at_wall(unit: Unit, found: Racking) -> tuple[str, Racking]:
    """The wall: nothing sways that is fixed to it near its top."""
    weight = format_weight(found.push / GRAVITY, unit.display_unit, 0)
    what = f"fix it to the wall near the top, for {weight} sideways"
    return what, replace(found, frame=float("inf"), legs=0.0)


def _mechanics(unit: Unit) -> Mechanics | None:
    sides = [part for part in unit.parts if part.role is Role.SIDE]
    return sides[0].blank.stock.mechanics


def _dowel(sizes: TradeSizes) -> float:
    return min(sizes.dowels, key=lambda each: abs(each - _DOWEL))


def _dowelled(
    sizes: TradeSizes, mechanics: Mechanics, end: tuple[float, float], count: int, *, spread: bool
) -> float:
    """How stiffly an ``end`` turns on dowels, N mm/rad: as :mod:`rodwright.strength.turning` has it
    of joints that are there.  It is so deep in the plane that turns, and so wide across it, mm."""
    (deep, wide), dowel = end, _dowel(sizes)
    shear = low_shear(mechanics)
    if shear is None:
        return 0.0
    thin = min(deep, wide)
    sleeve = 2 * pi * shear.value * sizes.dowels[dowel] / 2 / log(max(thin / dowel, 1.5))
    along = mechanics.along.value
    bed = wide * along / (min(deep, 60.0) * (1 + 1 / THROUGH_THICKNESS))
    places = [(i + 0.5) * deep / count for i in range(count)] if spread else [deep / 2] * count
    return couple(bed, [(place, sleeve / 2) for place in places])


def flatter_back(unit: Unit, panel: Panel, stress: float, limit: float) -> Iterator[Remedy]:
    """A thicker back, the least that stays flat: its stress goes down as it grows, and what buckles
    it up by the square; N/mm2, as if the limit were still the same."""
    for thick in SHEET_THICKNESSES[unit.display_unit]:
        figure = stress * (panel.thickness / thick) ** 3
        if thick > panel.thickness and figure <= limit:
            yield Remedy(f"a back {said(unit, thick)} thick", figure, holds=True)
            return


def shorter_legs(unit: Unit, found: Racking, bare: float, limit: float) -> Iterator[Remedy]:
    """Its legs cut off to the height at which it sways no more than it may, found by halving."""
    high = max((part.bounds().size[2] for part in standing(unit)), default=0.0)

    def sways(length: float) -> float:
        return bare + (legs_sway(unit, found.push, 0, length) or 0.0)

    low, top = 0.0, high
    for _ in range(30):
        middle = (low + top) / 2
        low, top = (middle, top) if sways(middle) <= limit else (low, middle)
    length = trade_sizes(unit.display_unit).round_down(low)
    if length > 0:
        yield Remedy(f"legs {said(unit, length)} long", sways(length), holds=True)


def at_wall(unit: Unit, push: float) -> Remedy:
    """The wall, drawn on by a push (N) to the front: nothing sways that is fixed to it."""
    weight = format_weight(push / GRAVITY, unit.display_unit, 0)
    return Remedy(f"fix it to the wall near the top, for {weight} drawn out", 0.0, holds=True)
