"""Boards laid into boxes of the unit frame, and the screws that hold them."""

from __future__ import annotations

from dataclasses import replace
from math import ceil

from rodwright.geometry import TOUCH, Box, Vector, cross
from rodwright.lengths import LengthUnit, format_length
from rodwright.setout.bench import NOWHERE, Bench
from rodwright.setout.grip import grip
from rodwright.trade.movement import stock_swelling
from rodwright.trade.sizes import Grip, TradeSizes
from rodwright.unit import (
    Blank,
    Fixing,
    Grain,
    JointKind,
    Part,
    Placement,
    Role,
    Stock,
    Surface,
    Working,
)
from rodwright.unit.crossing import ACCEPTED, crossing

_FROM_END = 50.0
"""From the end of a meeting to its first screw, mm (common practice, no source)."""
SCREWABLE = 12.0
"""Something narrower than this (mm) can't be screwed to: a screw would split it, or miss (common
practice, no source)."""
_MOST_THROUGH = 70.0
"""The most wood, mm, that the longest of those screws goes through and still holds behind; where
there is more, its head is sunk in a counterbore (common practice, no source)."""
_COUNTERBORE = 10.0
"""Diameter of a counterbore for the head of such a screw, mm (common practice, no source)."""
_LEAST_SLOT = 10.0
"""Length of a slot, mm, where the wood's movement doesn't ask for more (common practice, no
source)."""
SCREW_SIDE = 2.0
"""Least distance from a screw's middle to the face of the edge it goes into, in diameters
(common practice, no source)."""
GLUE_UP_TRIM = 6.0
"""Left on layers in length and width (mm), trimmed after glue-up (common practice, no source)."""
SCREW_SPACING = 300.0
"""Largest distance between screws along a meeting, mm (common practice, no source)."""


def lay_board(
    bench: Bench,
    role: Role,
    name: str,
    group: str,
    box: Box,
    length: Vector,
    face: Vector,
    stock: Stock,
    *,
    ref: str | None = None,
    workings: tuple[Working, ...] = (),
    shows: tuple[Surface, ...] = (Surface.FACE,),
    trim: tuple[float, float] = (0.0, 0.0),
    trim_at: tuple[Surface, ...] = (),
    withdraw: Vector = NOWHERE,
) -> Part:
    """Lay a board that fills ``box`` (unit frame, mm) on the bench.

    Its length runs along ``length`` and its face looks along ``face``, both unit vectors
    along axes of the unit.  ``trim`` is what is left on in length and width, and
    ``trim_at`` at which ends and edges.
    """
    width = cross(face, length)
    axes = (length, width, face)
    sizes = [sum(abs(axis[i]) * box.size[i] for i in range(3)) for axis in axes]
    origin = [box.low[i] if any(axis[i] > 0 for axis in axes) else box.high[i] for i in range(3)]
    grain = Grain.NONE if stock.grain is Grain.NONE else Grain.LENGTHWISE
    part = Part(
        ref or bench.next_ref(role), name, role, group,
        Blank(sizes[0], sizes[1], sizes[2], stock, grain, shows, *trim, trim_at),
        Placement((origin[0], origin[1], origin[2]), length, width),
        workings,
        withdraw=withdraw,
    )  # fmt: skip
    return bench.add(part)


def meet(bench: Bench, kind: JointKind, first: str, second: str, *fixings: Fixing) -> bool:
    """Join two parts if they touch; whether they do."""
    patch = bench.parts[first].bounds().contact(bench.parts[second].bounds())
    if patch is not None:
        bench.join(kind, first, second, patch.centre, *fixings)
    return patch is not None


def screw_on(
    bench: Bench,
    through: str,
    into: str,
    moisture: tuple[float, float] | None = None,
    spacing: float = SCREW_SPACING,
    anchor: float | None = None,
) -> bool:
    """Screw a part to another through it, along the meeting of the two; whether that can be.

    The screw goes through the thickness or the width of ``through``, never along its grain, and
    as far again and a half into ``into``, which has to be that deep (common practice, no
    source).  Where solid wood moves across the other's grain by more than a rigid joint lives
    with, between the least and the most ``moisture`` (%), the screws go through slots, all but
    one; and all, where what is screwed is held at ``anchor`` (y) by what it moves past.
    """
    one, other = bench.parts[through], bench.parts[into]
    first, second = one.bounds(), other.bounds()
    patch = first.contact(second)
    if patch is None:
        return False
    at, extents = patch.centre, patch.size
    axis = min(range(3), key=lambda i: extents[i])
    if abs(one.placement.length[axis]) > 0.5:
        return False
    sizes, held = bench.sizes, grip(other.blank.stock)
    count = _along(max(extents), spacing)
    screws = wood_screws(sizes, first.size[axis], second.size[axis], count, held)
    moves, way = _moves(one, other, moisture, anchor) if moisture else (0.0, 0)
    if moves <= ACCEPTED:
        bench.join(JointKind.SCREWED, through, into, at, screws)
        return True
    hole = sizes.clearance(sizes.screw)
    long = max(sizes.usual(_LEAST_SLOT), sizes.round_up(hole + 2 * moves))
    slots = f"slots {sizes.by(hole, long)} {_WAYS[way]}"
    if crossing(one, other, moisture or (0.0, 0.0))[0] > ACCEPTED:
        slots = f"one {_ENDS[way]} in a round hole {sizes.say(hole)}, the others in {slots}"
    pilot = sizes.say(sizes.pilot(sizes.screw, held))
    slotted = replace(screws, pilot=f"{slots}, pilot {pilot}")
    bench.join(JointKind.BUTTONED, through, into, at, slotted, washers(sizes, screws.count))
    return True


_WAYS = ("from side to side", "from front to rear", "up and down")
_ENDS = ("at the left", "at the front", "at the foot")


def _moves(
    first: Part, second: Part, moisture: tuple[float, float], anchor: float | None
) -> tuple[float, int]:
    """What two parts move past each other, and along which axis: where they meet, or from where
    they are held (y) to there."""
    moves, way, *_ = crossing(first, second, moisture)
    if anchor is None or abs(first.placement.width[1]) < 0.5:
        return moves, way
    box = second.bounds()
    far = stock_swelling(first.blank.stock, abs(box.low[1] - anchor), moisture)
    return max((moves, way), (far, 1))


def carry(
    bench: Bench,
    ref: str,
    moisture: tuple[float, float],
    screwed: bool = True,
    anchor: float | None = None,
) -> None:
    """Join a part of the base to the carcass that stands on it.

    To the bottom, by screws down through it or not, where it covers enough of the part for
    them and no divider stands where their heads would be; else to the sides, of which a joint
    with the bottom leaves at least the outer half, or where there is no bottom to all that
    stands there.  Parts of a frame that is rigid in itself are held at its front, ``anchor``
    (y), and leave a bottom of solid wood room from there.
    """
    box = bench.parts[ref].bounds()
    bottoms = refs_of(bench, Role.BOTTOM)
    for bottom in bottoms:
        lowest = bench.parts[bottom].bounds()
        if min(lowest.overlap(box)[:2]) < SCREWABLE:
            continue
        if screwed and not _under_a_divider(bench, lowest, box):
            screw_on(bench, bottom, ref, moisture, anchor=anchor)
        else:
            meet(bench, JointKind.STANDING, bottom, ref)
        return
    for upright in refs_of(bench, Role.SIDE, *([] if bottoms else [Role.DIVIDER])):
        other = bench.parts[upright].bounds()
        half = other.size[0] / 2 if bottoms else 0.0
        if other.low[0] < TOUCH:
            other = other.spanning(0, high=other.high[0] - half)
        else:
            other = other.spanning(0, low=other.low[0] + half)
        if other.contact(box) is not None:
            meet(bench, JointKind.STANDING, upright, ref)


def _under_a_divider(bench: Bench, bottom: Box, board: Box) -> bool:
    """Whether a divider stands on the bottom along the middle of a board that runs to the rear."""
    if board.size[0] > board.size[1]:
        return False
    middle, room = board.centre[0], SCREWABLE / 2
    return any(
        box.low[2] < bottom.high[2] + TOUCH
        and box.low[0] - room < middle < box.high[0] + room
        and box.overlap(board)[1] > board.size[1] / 2
        for box in (bench.parts[ref].bounds() for ref in refs_of(bench, Role.DIVIDER))
    )


def wood_screws(
    sizes: TradeSizes, through: float, into: float, count: int, held: Grip = "sheet"
) -> Fixing:
    """Screws through one thickness (mm) into another, whose far side they don't break.

    4 mm or no. 8 screws with a clearance hole and a pilot hole for them, and a counterbore where
    they are too short for all of it (common practice, no source).
    """
    sunk = max(0.0, sizes.round_up(through - _MOST_THROUGH))
    left = through - sunk
    length = sizes.longest_screw(min(2.5 * left, left + 0.75 * into))
    wide = sizes.usual(_COUNTERBORE)
    bored = f"counterbore {sizes.say(wide)}, {sizes.say(sunk)} deep, " if sunk else ""
    size = sizes.screw_size(sizes.screw, length)
    return Fixing("wood screw", count, size, f"{bored}{sizes.holes(sizes.screw, held)}")


def washers(sizes: TradeSizes, count: int) -> Fixing:
    """Washers under the heads of such screws, where they go through slots."""
    return Fixing("washer", count, f"for {sizes.screw_name(sizes.screw)} screws")


def bumpers(thick: float, on: str, unit: LengthUnit) -> Fixing:
    """What an overlay front of this ref closes against: one near each corner that opens first, so
    that it doesn't strike what it covers (common practice, no source)."""
    return Fixing("bumper", 2, f"{format_length(thick, unit)} {unit} thick, stuck on", on=on)


def _along(length: float, spacing: float) -> int:
    """How many screws hold a meeting of this length (mm): one near each end, and between."""
    return max(2, ceil((length - 2 * _FROM_END) / spacing - TOUCH) + 1)


def spread(low: float, high: float, width: float, most: float) -> tuple[float, ...]:
    """Where pieces of ``width`` mm begin that leave equal clear distances between two others.

    They stand between ``low`` and ``high``, as few as leave no more than ``most`` mm clear.
    """
    bays = max(1, ceil((high - low + width) / (most + width) - TOUCH))
    clear = (high - low - (bays - 1) * width) / bays
    return tuple(low + number * (clear + width) - width for number in range(1, bays))


def refs_of(bench: Bench, *roles: Role) -> list[str]:
    """Refs of the parts of some roles, in the order laid down."""
    return [ref for ref, part in bench.parts.items() if part.role in roles]
