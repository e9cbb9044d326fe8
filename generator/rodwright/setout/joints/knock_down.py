"""Knock-down fittings: a bolt held by a cam, or by a barrel nut."""

from __future__ import annotations

from math import ceil

from rodwright.geometry import TOUCH
from rodwright.setout.joints.layout import SpacingRule, clear_of_others, lay_out
from rodwright.setout.joints.meet import Work, surface_towards
from rodwright.setout.joints.screws import hidden_behind, hidden_face
from rodwright.trade.connectors import (
    BOLT_BORING,
    BOLT_HOLE,
    BOLT_STEP,
    CAM,
    CAM_PAST_MIDDLE,
    CAM_SETBACK,
    NUT,
    NUT_BOLT,
    NUT_PAST_MIDDLE,
    NUT_SETBACK,
)
from rodwright.trade.wood_left import LEAST_FLOOR
from rodwright.unit import Fixing, JointKind

_RULE = SpacingRule(50.0, 20.0, 350.0, 64.0)


def knock_down(work: Work) -> None:
    """A boring in the second's hidden face, one into its end to meet it, a hole in the first."""
    second = work.second
    t = second.blank.thickness
    cam = work.wish.fitting == "cam"
    past = CAM_PAST_MIDDLE if cam else NUT_PAST_MIDDLE
    setback = CAM_SETBACK if cam else work.bench.sizes.usual(NUT_SETBACK)
    if abs(second.placement.thickness[work.meeting.across]) < 0.5:
        work.refuse(
            "joint",
            "knock-down fittings go into the end or edge of a part, and here its face meets",
            "Choose `screwed` there.",
        )
        return
    deep = t / 2 + past
    if deep > t - LEAST_FLOOR + TOUCH:
        work.refuse(
            "fitting",
            f"a boring {work.say(deep)} deep for a {'cam' if cam else 'barrel nut'} goes through "
            f"a part {work.say(t)} thick, or nearly",
            f"Use {work.at_least(2 * (past + LEAST_FLOOR))} stock at least, or another joint.",
        )
        return
    if work.meeting.behind < setback + 2 * CAM:
        work.refuse(
            "fitting",
            f"a part {work.say(work.meeting.behind)} long has no room for a fitting "
            f"{work.say(setback)} from its end",
            "Choose another joint.",
        )
        return
    (_cams if cam else _nuts)(work, deep)


def _cams(work: Work, deep: float) -> None:
    m = work.meeting
    diameter, depth = BOLT_HOLE
    if m.through < depth + LEAST_FLOOR - TOUCH:
        work.refuse(
            "fitting",
            f"a bolt {work.say(depth)} deep goes through a part {work.say(m.through)} thick, or "
            f"nearly",
            "Use thicker stock, or choose `fitting: barrel_nut`.",
        )
        return
    places = lay_out(work, _RULE, "knock-down fitting")
    if not places:
        return
    half = diameter / 2
    places = clear_of_others(
        work,
        places,
        _RULE,
        lambda y: m.box((y - half, y + half), (m.middle - half, m.middle + half), (0.0, depth)),
        "bolt",
    )
    for y in places:
        work.bench.drill(m.first, m.point(y, m.middle), m.way(), diameter, depth, "cam bolt")
    _bore(
        work,
        places,
        (CAM, CAM_SETBACK, deep),
        (BOLT_BORING, CAM_SETBACK),
        ("cam", "cam bolt"),
    )
    count, ware = len(places), work.bench.sizes.ware
    text = f"boring {ware(CAM)}, {work.say(deep)} deep"
    hole = f"{ware(diameter)}, {work.say(depth)} deep"
    _note(
        work,
        Fixing("cam", count, ware(CAM), text, diameter=CAM),
        Fixing(
            "cam bolt", count, f"for {ware(CAM_SETBACK)}", hole, diameter=diameter, length=depth
        ),
    )


def _nuts(work: Work, deep: float) -> None:
    m = work.meeting
    sizes = work.bench.sizes
    nut, (bolt, hole) = NUT[sizes.unit], NUT_BOLT[sizes.unit]
    setback = sizes.usual(NUT_SETBACK)
    places = lay_out(work, _RULE, "knock-down fitting")
    if not places or hidden_behind(work, "bolt", places):
        return
    half = hole / 2
    places = clear_of_others(
        work,
        places,
        _RULE,
        lambda y: m.box((y - half, y + half), (m.middle - half, m.middle + half), (0.0, m.through)),
        "bolt",
    )
    for y in places:
        work.bench.drill(
            m.first, m.point(y, m.middle, m.through), m.way(-1), hole, None, "connecting bolt"
        )
    _bore(
        work,
        places,
        (nut, setback, deep),
        (hole, setback + nut),
        ("barrel nut", "connecting bolt"),
    )
    step = BOLT_STEP[sizes.unit]
    length = step * ceil((m.through + setback + nut / 2) / step - TOUCH)
    text = f"boring {sizes.say(nut)}, {sizes.say(deep)} deep"
    _note(
        work,
        Fixing(
            "connecting bolt",
            len(places),
            f"{bolt} x {sizes.say(length)}",
            sizes.say(hole),
            diameter=hole,
            length=length,
        ),
        Fixing("barrel nut", len(places), f"{bolt}, {sizes.say(nut)}", text, diameter=nut),
    )


def _bore(
    work: Work,
    places: tuple[float, ...],
    face: tuple[float, float, float],
    end: tuple[float, float],
    uses: tuple[str, str],
) -> None:
    """Bore the second: into its hidden face (diameter, setback, depth) and its end."""
    m, second = work.meeting, work.second
    hidden = hidden_face(second)
    up = 1 if surface_towards(second, m.across, 1) is hidden else -1
    bounds = second.bounds()
    at = bounds.high[m.across] if up > 0 else bounds.low[m.across]
    inward = [0.0, 0.0, 0.0]
    inward[m.across] = float(-up)
    diameter, setback, depth = face
    for y in places:
        work.bench.drill(
            m.second,
            m.point(y, at, -setback),
            (inward[0], inward[1], inward[2]),
            diameter,
            depth,
            uses[0],
        )
        work.bench.drill(m.second, m.point(y, m.middle), m.way(-1), *end, uses[1])


def _note(work: Work, *fixings: Fixing) -> None:
    m = work.meeting
    if fixings[0].count:
        at = m.point((m.low + m.high) / 2, m.middle)
        work.bench.join(JointKind.KNOCK_DOWN, m.first, m.second, at, *fixings)
