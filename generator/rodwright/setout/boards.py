"""Boards laid into boxes of the unit frame, and the screws that hold them."""

from __future__ import annotations

from dataclasses import dataclass, replace

from rodwright.geometry import TOUCH, Box, Vector, cross
from rodwright.geometry.spacing import count_along
from rodwright.setout.bench import Bench
from rodwright.setout.fixings import screws_through, slot_for, washers
from rodwright.trade.movement import ACCEPTED
from rodwright.trade.screws import FROM_END, SCREWABLE, SPACING
from rodwright.unit import (
    Blank,
    JointKind,
    Part,
    Placement,
    Role,
    Stock,
    Surface,
    Working,
)
from rodwright.unit.crossing import crossing
from rodwright.unit.directions import NOWHERE


@dataclass(frozen=True, slots=True)
class Board:
    """What a board is, wherever it lies.

    ``trim`` is what is left on in length and width (mm), and ``trim_at`` at which ends and edges.
    """

    role: Role
    name: str
    group: str
    stock: Stock
    shows: tuple[Surface, ...] = (Surface.FACE,)
    workings: tuple[Working, ...] = ()
    trim: tuple[float, float] = (0.0, 0.0)
    trim_at: tuple[Surface, ...] = ()
    withdraw: Vector = NOWHERE


def lay_board(
    bench: Bench, board: Board, box: Box, length: Vector, face: Vector, ref: str | None = None
) -> Part:
    """Lay a board that fills ``box`` (unit frame, mm) on the bench.

    Its length runs along ``length`` and its face looks along ``face``, both unit vectors
    along axes of the unit.
    """
    width = cross(face, length)
    axes = (length, width, face)
    sizes = [sum(abs(axis[i]) * box.size[i] for i in range(3)) for axis in axes]
    origin = [box.low[i] if any(axis[i] > 0 for axis in axes) else box.high[i] for i in range(3)]
    stock, trim = board.stock, board.trim
    part = Part(
        ref or bench.next_ref(board.role),
        board.name,
        board.role,
        board.group,
        Blank(
            sizes[0], sizes[1], sizes[2], stock, stock.lengthwise, board.shows, *trim, board.trim_at
        ),
        Placement((origin[0], origin[1], origin[2]), length, width),
        board.workings,
        withdraw=board.withdraw,
    )
    return bench.add(part)


def screw_on(
    bench: Bench,
    through: str,
    into: str,
    moisture: tuple[float, float] | None = None,
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
    sizes, held = bench.sizes, other.blank.stock.grip
    count = count_along(max(extents), FROM_END, SPACING)
    screws = screws_through(sizes, first.size[axis], second.size[axis], count, held)
    moves, way = _moves(one, other, moisture, anchor) if moisture else (0.0, 0)
    if moves <= ACCEPTED:
        bench.join(JointKind.SCREWED, through, into, at, screws)
        return True
    hole = sizes.clearance(sizes.screw)
    long = slot_for(sizes, hole, moves)
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
    far = first.blank.stock.swelling(abs(box.low[1] - anchor), moisture)
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
    box = bench.bounds(ref)
    bottoms = bench.refs_of(Role.BOTTOM)
    for bottom in bottoms:
        lowest = bench.bounds(bottom)
        if min(lowest.overlap(box)[:2]) < SCREWABLE:
            continue
        if screwed and not _under_a_divider(bench, lowest, box):
            screw_on(bench, bottom, ref, moisture, anchor=anchor)
        else:
            bench.meet(JointKind.STANDING, bottom, ref)
        return
    for upright in bench.refs_of(Role.SIDE, *([] if bottoms else [Role.DIVIDER])):
        other = bench.bounds(upright)
        half = other.size[0] / 2 if bottoms else 0.0
        if other.low[0] < TOUCH:
            other = other.spanning(0, high=other.high[0] - half)
        else:
            other = other.spanning(0, low=other.low[0] + half)
        if other.contact(box) is not None:
            bench.meet(JointKind.STANDING, upright, ref)


def _under_a_divider(bench: Bench, bottom: Box, board: Box) -> bool:
    """Whether a divider stands on the bottom along the middle of a board that runs to the rear."""
    if board.size[0] > board.size[1]:
        return False
    middle, room = board.centre[0], SCREWABLE / 2
    return any(
        box.low[2] < bottom.high[2] + TOUCH
        and box.low[0] - room < middle < box.high[0] + room
        and box.overlap(board)[1] > board.size[1] / 2
        for box in (bench.bounds(ref) for ref in bench.refs_of(Role.DIVIDER))
    )
