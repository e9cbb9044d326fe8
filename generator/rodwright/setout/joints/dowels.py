"""Dowelled joints."""

from __future__ import annotations

from rodwright.parts import Fixing, JointKind
from rodwright.setout.bench import TOUCH
from rodwright.setout.joints.layout import Rule, clear_of_others, lay_out
from rodwright.setout.joints.meet import Work

DIAMETERS = (8.0, 6.0, 10.0, 12.0)
"""Dowels' diameters, mm, the usual one first (common practice, no source)."""
ALLOWANCE = 1.0
"""How much deeper than the dowel reaches each hole is, for glue, mm (common practice, no
source)."""
LEAST_FLOOR = 3.0
"""Wood left under a hole in a face, mm (common practice, no source)."""
LENGTH = 5.0
"""A dowel's length in diameters: 6 x 30, 8 x 40, 10 x 50 mm (common practice, no source)."""


def dowelled(work: Work) -> None:
    """Holes in both parts on one axis; the dowel's diameter a third to half of the edge.

    It reaches two thirds into the first, at most half its length, the rest into the second.
    """
    m, wish = work.meeting, work.wish
    edge = m.thickness
    if wish.diameter is not None:
        diameter = wish.diameter
    else:
        suits = [each for each in DIAMETERS if edge / 3 - TOUCH <= each <= edge / 2 + TOUCH]
        diameter = suits[0] if suits else min(DIAMETERS) if edge < 18 else max(DIAMETERS)
    if diameter > edge / 2 + TOUCH:
        work.refuse(
            "diameter",
            f"dowels of {work.say(diameter)} are more than half of an edge {work.say(edge)} thick",
            f"Use dowels of {work.say(edge / 3)} to {work.say(edge / 2)}, or thicker stock.",
        )
        return
    length = wish.length if wish.length is not None else LENGTH * diameter
    in_first = min(length / 2, 2 / 3 * m.through, m.through - ALLOWANCE - LEAST_FLOOR)
    in_second = length - in_first
    room = m.behind - ALLOWANCE - LEAST_FLOOR
    if in_second > room:
        in_second = room
        if wish.length is None:
            length = in_first + in_second
    if in_first < diameter or in_first + in_second < length - TOUCH or in_second < diameter:
        work.refuse(
            "length",
            f"dowels {work.say(length)} long have no room in {work.say(m.through)} and "
            f"{work.say(m.behind)}",
            "Use shorter or thinner dowels, or thicker stock.",
        )
        return
    rule = Rule(32.0, 1.5 * diameter, 100.0, 3 * diameter)
    places = lay_out(work, rule, "dowel")
    if not places:
        return
    half, deep = diameter / 2, in_first + ALLOWANCE
    places = clear_of_others(
        work, places, rule,
        lambda y: m.box((y - half, y + half), (m.middle - half, m.middle + half), (0.0, deep)),
        "dowel",
    )  # fmt: skip
    for y in places:
        at = m.point(y, m.middle)
        work.bench.drill(m.first, at, m.way(), diameter, deep, "dowel")
        work.bench.drill(m.second, at, m.way(-1), diameter, in_second + ALLOWANCE, "dowel")
    if places:
        text = f"{diameter:g} mm, {deep:g} and {in_second + ALLOWANCE:g} mm deep"
        dowels = Fixing("dowel", len(places), f"{diameter:g} x {length:g} mm", text)
        at = m.point((m.low + m.high) / 2, m.middle)
        work.bench.join(JointKind.DOWEL, m.first, m.second, at, dowels)
