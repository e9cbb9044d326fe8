"""Dowelled joints."""

from __future__ import annotations

from rodwright.geometry import TOUCH
from rodwright.lengths import format_length
from rodwright.setout.joints.layout import SpacingRule, clear_of_others, lay_out
from rodwright.setout.joints.meet import Work
from rodwright.trade.connectors import DOWEL_APART, DOWEL_EDGE, DOWEL_LENGTH
from rodwright.trade.gaps import GLUE_ROOM
from rodwright.trade.wood_left import SLOT_FLOOR
from rodwright.unit import Fixing, JointKind


def dowelled(work: Work) -> None:
    """Holes in both parts on one axis; the dowel's diameter a third to half of the edge.

    It reaches two thirds into the first, at most half its length, the rest into the second.
    """
    m, wish, sizes = work.meeting, work.wish, work.bench.sizes
    edge = m.thickness
    most = edge / 2 + TOUCH
    if wish.diameter is not None:
        diameter = wish.diameter
    else:
        sold = list(sizes.dowels)
        suits = [each for each in sold if edge / 3 - TOUCH <= each <= most]
        diameter = suits[0] if suits else min(sold) if edge < 18 else max(sold)
    if diameter > most:
        fit = sorted(each for each in sizes.dowels if edge / 3 - TOUCH <= each <= most)
        thinnest = min(sizes.dowels)
        work.refuse(
            "diameter",
            f"dowels of {work.say(diameter)} are more than half of an edge {work.say(edge)} thick",
            f"Use dowels of {' or '.join(map(work.say, fit))}, or thicker stock."
            if fit
            else f"Use an edge {work.at_least(2 * thinnest)} thick at least, for dowels of "
            f"{work.say(thinnest)}, or another joint.",
        )
        return
    allowance = sizes.usual(GLUE_ROOM)
    usual = sizes.dowels.get(diameter, DOWEL_LENGTH * diameter)
    length = wish.length if wish.length is not None else usual
    deepest = min(2 / 3 * m.through, m.through - allowance - SLOT_FLOOR)
    in_first = min(length / 2, sizes.round_down(deepest))
    in_second = length - in_first
    room = sizes.round_down(m.behind - allowance - SLOT_FLOOR)
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
    rule = SpacingRule(32.0, DOWEL_EDGE * diameter, 100.0, DOWEL_APART * diameter)
    places = lay_out(work, rule, "dowel")
    if not places:
        return
    half, deep = diameter / 2, in_first + allowance
    places = clear_of_others(
        work,
        places,
        rule,
        lambda y: m.box((y - half, y + half), (m.middle - half, m.middle + half), (0.0, deep)),
        "dowel",
    )
    for y in places:
        at = m.point(y, m.middle)
        work.bench.drill(m.first, at, m.way(), diameter, deep, "dowel")
        work.bench.drill(m.second, at, m.way(-1), diameter, in_second + allowance, "dowel")
    if places:
        into = sizes.say(in_second + allowance)
        text = f"{sizes.say(diameter)}, {format_length(deep, sizes.unit)} and {into} deep"
        size = sizes.by(diameter, length)
        dowels = Fixing("dowel", len(places), size, text, diameter=diameter, length=length)
        at = m.point((m.low + m.high) / 2, m.middle)
        work.bench.join(JointKind.DOWEL, m.first, m.second, at, dowels)
