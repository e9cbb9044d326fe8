"""Biscuits and loose tenons: slots in both parts for a piece let in between."""

from __future__ import annotations

from math import sqrt

from rodwright.parts import Fixing, JointKind
from rodwright.setout.bench import TOUCH
from rodwright.setout.joints.layout import Rule, clear_of_others, lay_out
from rodwright.setout.joints.meet import Work
from rodwright.setout.sizes import handy

BISCUITS = {"20": (56, 23, 12.5), "10": (53, 19, 10.5), "0": (47, 15, 8.5)}
"""Biscuits by size: length, width, and the depth of their slot, mm (from memory); the slot is
half a biscuit and 1 mm for glue."""
SLOT_WIDTH = 4.0
"""Width of a biscuit's slot, mm (from memory)."""
CUTTER = 100.0
"""Diameter of the cutter that sinks a slot, mm (from memory)."""
LEAST_FLOOR = 3.0
"""Wood left under a slot, mm (common practice, no source)."""
TENON_DEPTH = 25.0
"""How far a loose tenon reaches into each part where there is room, mm (common practice, no
source)."""
TENON_WIDTH = 40.0
"""Width of a loose tenon in a wide meeting, mm (common practice, no source)."""
ALLOWANCE = 1.0
"""How much deeper than the tenon reaches each mortise is, mm (common practice, no source)."""
SHOULDER = 8.0
"""Least wood beside a mortise at the edge of a part, mm (common practice, no source)."""


def slot_length(depth: float) -> float:
    """How long (mm) a slot sunk straight in is at the surface: the chord of the cutter's circle."""
    return 2 * sqrt(CUTTER * depth - depth * depth)


def biscuited(work: Work) -> None:
    """Slots for biscuits in both parts.

    They are modelled as boxes of their length at the surface and their full depth, which is
    somewhat more than the arc takes out.
    """
    m, wish = work.meeting, work.wish
    room = min(m.through, m.behind) - LEAST_FLOOR
    size: str = wish.size or next((each for each, b in BISCUITS.items() if b[2] <= room), "0")
    length, width, depth = BISCUITS[size]
    if m.thickness < 3 * SLOT_WIDTH - TOUCH or depth > room + TOUCH:
        work.refuse(
            "size",
            f"slots for biscuits of size {size}, {work.say(SLOT_WIDTH)} wide and "
            f"{work.say(depth)} deep, don't suit an edge {work.say(m.thickness)} thick on "
            f"{work.say(min(m.through, m.behind))}",
            "Use smaller biscuits, thicker stock, or another joint.",
        )
        return
    slot = slot_length(depth)
    rule = Rule(60.0, slot / 2 + 3.0, 150.0, slot + 6.0, least=1)
    places = lay_out(work, rule, "biscuit")
    text = f"slot {SLOT_WIDTH:g} mm wide, {depth:g} mm deep"
    pieces = (f"size {size}, {length} x {width} mm", text)
    _sink(work, places, rule, (slot, SLOT_WIDTH), (depth, depth), False, "biscuit", pieces)


def loose_tenoned(work: Work, unit: str) -> None:
    """Round-ended mortises in both parts, and a tenon of their shape for each."""
    m, wish = work.meeting, work.wish
    usual = handy(m.thickness / 3, "in" if unit == "in" else "mm")
    t = wish.thickness if wish.thickness is not None else usual
    if t > m.thickness / 2 + TOUCH:
        work.refuse(
            "thickness",
            f"tenons {work.say(t)} thick are more than half of an edge "
            f"{work.say(m.thickness)} thick",
            "Make them a third of it.",
        )
        return
    half = wish.length / 2 if wish.length is not None else TENON_DEPTH
    in_first, in_second = (
        min(half, depth - ALLOWANCE - LEAST_FLOOR) for depth in (m.through, m.behind)
    )
    if wish.length is not None:
        in_second = wish.length - in_first
    if min(in_first, in_second) < t or in_second > m.behind - ALLOWANCE - LEAST_FLOOR + TOUCH:
        work.refuse(
            "length",
            f"loose tenons have no room in {work.say(m.through)} and {work.say(m.behind)}",
            "Use shorter or thinner ones, or thicker stock.",
        )
        return
    width = min(TENON_WIDTH, m.length - 2 * SHOULDER)
    if width < 2 * t - TOUCH:
        work.refuse(
            "joint",
            f"a meeting {work.say(m.length)} long is too short for a loose tenon",
            f"It needs {work.say(2 * t + 2 * SHOULDER)}; make the parts wider, or use dowels.",
        )
        return
    rule = Rule(50.0, width / 2 + SHOULDER, 150.0, width + SHOULDER, least=1)
    places = lay_out(work, rule, "loose tenon")
    deep = (in_first + ALLOWANCE, in_second + ALLOWANCE)
    text = f"mortises {t:g} mm wide, {deep[0]:g} and {deep[1]:g} mm deep"
    pieces = (f"{in_first + in_second:g} x {width:g} x {t:g} mm", text)
    _sink(work, places, rule, (width, t), deep, True, "loose tenon", pieces)


def _sink(
    work: Work,
    places: tuple[float, ...],
    rule: Rule,
    slot: tuple[float, float],
    deep: tuple[float, float],
    round_ends: bool,
    name: str,
    pieces: tuple[str, str],
) -> None:
    m = work.meeting
    across = (m.middle - slot[1] / 2, m.middle + slot[1] / 2)

    def along(y: float) -> tuple[float, float]:
        return y - slot[0] / 2, y + slot[0] / 2

    if places:
        places = clear_of_others(
            work, places, rule, lambda y: m.box(along(y), across, (0.0, deep[0])), name
        )
    for y in places:
        work.bench.mortise(
            m.first, m.box(along(y), across, (0.0, deep[0])), m.way(), round_ends, name
        )
        work.bench.mortise(
            m.second, m.box(along(y), across, (0.0, -deep[1])), m.way(-1), round_ends, name
        )
    if places:
        kind = JointKind.LOOSE_TENON if round_ends else JointKind.BISCUIT
        at = m.point((m.low + m.high) / 2, m.middle)
        work.bench.join(kind, m.first, m.second, at, Fixing(name, len(places), *pieces))
