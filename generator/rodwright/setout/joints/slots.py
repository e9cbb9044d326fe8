"""Biscuits and loose tenons: slots in both parts for a piece let in between."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.geometry import TOUCH, Box
from rodwright.lengths import format_length
from rodwright.setout.joints.layout import SpacingRule, clear_of_others, lay_out
from rodwright.setout.joints.meet import Work
from rodwright.setout.rod.sizes import easily_set
from rodwright.trade.connectors import (
    BISCUITS,
    SLOT_WIDTH,
    TENON_DEPTH,
    TENON_SHOULDER,
    TENON_WIDTH,
    biscuit_size,
    slot_depth,
    slot_length,
)
from rodwright.trade.gaps import GLUE_ROOM
from rodwright.trade.wood_left import SLOT_FLOOR
from rodwright.unit import Fixing, JointKind


def biscuited(work: Work) -> None:
    """Slots for biscuits in both parts.

    They are modelled as boxes of their length at the surface and their full depth, which is
    somewhat more than the arc takes out.
    """
    m, wish, unit = work.meeting, work.wish, work.bench.sizes.unit
    room = min(m.through, m.behind) - SLOT_FLOOR
    size: str = wish.size or next(
        (each for each in BISCUITS if slot_depth(each, unit) <= room), "0"
    )
    depth, wide = slot_depth(size, unit), SLOT_WIDTH[unit]
    if m.thickness < 3 * wide - TOUCH or depth > room + TOUCH:
        work.refuse(
            "size",
            f"slots for biscuits of size {size}, {work.say(wide)} wide and "
            f"{work.say(depth)} deep, don't suit an edge {work.say(m.thickness)} thick on "
            f"{work.say(min(m.through, m.behind))}",
            "Use smaller biscuits, thicker stock, or another joint.",
        )
        return
    slot = slot_length(depth)
    rule = SpacingRule(60.0, slot / 2 + 3.0, 150.0, slot + 6.0, least=1)
    says = biscuit_size(size, unit), f"slot {work.say(wide)} wide, {work.say(depth)} deep"
    bought = BISCUITS[size][:2]
    piece = _Piece("biscuit", (slot, wide), (depth, depth), JointKind.BISCUIT, says, bought)
    _sink(work, rule, piece)


def loose_tenoned(work: Work) -> None:
    """Round-ended mortises in both parts, and a tenon of their shape for each."""
    m, wish, sizes = work.meeting, work.wish, work.bench.sizes
    allowance = sizes.usual(GLUE_ROOM)
    usual = easily_set(m.thickness / 3, work.setting.unit)
    t = wish.thickness if wish.thickness is not None else usual
    if t > m.thickness / 2 + TOUCH:
        work.refuse(
            "thickness",
            f"tenons {work.say(t)} thick are more than half of an edge "
            f"{work.say(m.thickness)} thick",
            "Make them a third of it.",
        )
        return
    half = wish.length / 2 if wish.length is not None else sizes.usual(TENON_DEPTH)
    in_first, in_second = (
        sizes.round_down(min(half, depth - allowance - SLOT_FLOOR))
        for depth in (m.through, m.behind)
    )
    if wish.length is not None:
        in_second = wish.length - in_first
    if min(in_first, in_second) < t or in_second > m.behind - allowance - SLOT_FLOOR + TOUCH:
        work.refuse(
            "length",
            f"loose tenons have no room in {work.say(m.through)} and {work.say(m.behind)}",
            "Use shorter or thinner ones, or thicker stock.",
        )
        return
    shoulder = sizes.usual(TENON_SHOULDER)
    width = min(sizes.usual(TENON_WIDTH), m.length - 2 * shoulder)
    if width < 2 * t - TOUCH:
        work.refuse(
            "joint",
            f"a meeting {work.say(m.length)} long is too short for a loose tenon",
            f"It needs {work.say(2 * t + 2 * shoulder)}; make the parts wider, or use dowels.",
        )
        return
    rule = SpacingRule(50.0, width / 2 + shoulder, 150.0, width + shoulder, least=1)
    deep = (in_first + allowance, in_second + allowance)
    text = (
        f"mortises {work.say(t)} wide, {format_length(deep[0], sizes.unit)} and "
        f"{work.say(deep[1])} deep"
    )
    # Length and width come near each other: which is which has to be said.
    length = in_first + in_second
    says = f"{work.say(length)} long, {sizes.by(width, t)}", text
    piece = _Piece("loose tenon", (width, t), deep, JointKind.LOOSE_TENON, says, (length, width))
    _sink(work, rule, piece)


@dataclass(frozen=True, slots=True)
class _Piece:
    """What is let in: its name, the length and width of its slot and how deep that is in the first
    part and in the second (mm), what the list says of its size and of the slots, and its own
    length and width (mm)."""

    name: str
    slot: tuple[float, float]
    deep: tuple[float, float]
    kind: JointKind
    says: tuple[str, str]
    bought: tuple[float, float]


def _sink(work: Work, rule: SpacingRule, piece: _Piece) -> None:
    """Cut the slots along the meeting, where other joints leave room, and join the two."""
    m, name, (in_first, in_second) = work.meeting, piece.name, piece.deep
    length, width = piece.slot
    across = (m.middle - width / 2, m.middle + width / 2)

    def taken(y: float, deep: float) -> Box:
        return m.box((y - length / 2, y + length / 2), across, (0.0, deep))

    places = lay_out(work, rule, name)
    if places:
        places = clear_of_others(work, places, rule, lambda y: taken(y, in_first), name)
    round_ends = piece.kind is JointKind.LOOSE_TENON
    for y in places:
        work.bench.mortise(m.first, taken(y, in_first), m.way(), round_ends, name)
        work.bench.mortise(m.second, taken(y, -in_second), m.way(-1), round_ends, name)
    if places:
        at = m.point((m.low + m.high) / 2, m.middle)
        long, broad = piece.bought
        fixing = Fixing(name, len(places), *piece.says, diameter=width, length=long, width=broad)
        work.bench.join(piece.kind, m.first, m.second, at, fixing)
