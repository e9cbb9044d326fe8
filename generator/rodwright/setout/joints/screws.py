"""Screws: through the first part into the second, or slanting from a pocket in the second."""

from __future__ import annotations

from math import cos, radians, sin, tan

from rodwright.geometry import TOUCH
from rodwright.setout.fixings import screws
from rodwright.setout.joints.layout import SpacingRule, clear_of_others, lay_out
from rodwright.setout.joints.meet import Work, surface_towards
from rodwright.trade.screws import (
    APART,
    FROM_CORNER,
    HOLD,
    POCKET_ANGLE,
    POCKET_DIAMETER,
    POCKET_FLOOR,
    POCKET_LENGTHS,
    SIDE,
)
from rodwright.unit import JointKind, Part, PocketHole, Surface


def screwed(work: Work) -> None:
    """A clearance hole through the first, a pilot in the second, for each screw.

    The diameter is the largest that is no more than 4/18 of the edge it goes into (a bit more in
    inches, where a no. 8 goes into 45/64), the length the least that holds ``HOLD`` diameters in
    the second.  Pilots in MDF and chipboard are as deep as the screw goes (common practice, no
    source).
    """
    m, wish, sizes = work.meeting, work.wish, work.bench.sizes
    thinnest = sizes.screw_diameters[0]
    least = 2 * SIDE * thinnest
    usual = [d for d in sizes.screw_diameters if d <= m.thickness * sizes.of_edge + TOUCH]
    diameter = wish.diameter or max(usual, default=thinnest)
    if m.thickness / 2 < SIDE * diameter - TOUCH:
        work.refuse(
            "diameter",
            f"{work.say(diameter)} screws in the middle of an edge {work.say(m.thickness)} thick "
            f"are nearer to its faces than {SIDE:g} diameters",
            f"Use thinner screws, or an edge {work.at_least(2 * SIDE * diameter)} thick."
            if diameter > thinnest
            else f"Use an edge {work.at_least(least)} thick at least, or another joint.",
        )
        return
    bounds = work.first.bounds()
    beside = min(m.middle - bounds.low[m.across], bounds.high[m.across] - m.middle)
    if beside < SIDE * diameter - TOUCH:
        work.refuse(
            "diameter",
            f"{work.say(diameter)} screws would go through {work.first.name.lower()} "
            f"{work.say(beside)} from its edge",
            f"Keep them {work.at_least(SIDE * diameter)} from it: use thinner screws.",
        )
        return
    length = _length(work, diameter)
    held = work.second.blank.stock.grip
    fragile = held == "splitting"
    rule = SpacingRule(50.0, FROM_CORNER[held] * diameter, 200.0, APART * diameter)
    places = lay_out(work, rule, "screw")
    if not places or length is None or hidden_behind(work, "screw", places):
        return
    clearance = sizes.clearance(diameter)
    places = clear_of_others(
        work,
        places,
        rule,
        lambda y: m.box(
            (y - clearance / 2, y + clearance / 2),
            (m.middle - clearance / 2, m.middle + clearance / 2),
            (0.0, m.through),
        ),
        "screw",
    )
    pilot = sizes.pilot(diameter, held)
    into = length - m.through
    deep = into if fragile else 2 / 3 * into
    for y in places:
        work.bench.drill(
            m.first, m.point(y, m.middle, m.through), m.way(-1), clearance, None, "screw"
        )
        work.bench.drill(m.second, m.point(y, m.middle), m.way(-1), pilot, deep, "screw")
    if places:
        drilled = sizes.holes(diameter, held)
        fixing = screws(sizes, len(places), length, drilled, diameter=diameter)
        at = m.point((m.low + m.high) / 2, m.middle)
        work.bench.join(JointKind.SCREWED, m.first, m.second, at, fixing)


def _length(work: Work, diameter: float) -> float | None:
    m, wish = work.meeting, work.wish
    most = m.through + m.behind - 2.0
    if wish.length is not None:
        into = wish.length - m.through
        if into < 4 * diameter - TOUCH or wish.length > most + TOUCH:
            work.refuse(
                "length",
                f"screws {work.say(wish.length)} long through {work.say(m.through)} go "
                f"{work.say(max(into, 0.0))} into {work.say(m.behind)}",
                f"Let them go {work.at_least(4 * diameter)} in at least, and not through.",
            )
            return None
        return wish.length
    lengths = work.bench.sizes.screw_lengths
    fit = [each for each in lengths if m.through + 4 * diameter <= each <= most]
    holding = [each for each in fit if each >= m.through + HOLD * diameter]
    if not fit:
        work.refuse(
            "joint",
            f"no screw through {work.say(m.through)} holds in {work.say(m.behind)} without coming "
            f"out at the far side",
            "Use thinner screws, or choose another joint.",
        )
        return None
    return float(holding[0] if holding else fit[-1])


def hidden_behind(work: Work, name: str, places: tuple[float, ...]) -> bool:
    """Whether another part stands where screws go in, so that no screwdriver gets there."""
    m = work.meeting
    heads = [m.point(y, m.middle, m.through + 1.0) for y in places]
    for ref in work.present:
        if ref in (m.first, m.second):
            continue
        box = work.bench.bounds(ref)
        for at in heads:
            if box.contains_point(at):
                work.refuse(
                    "joint",
                    f"{name}s through {work.first.name.lower()} {work.first.ref} into "
                    f"{work.second.ref} would go in where {ref} stands on its other side",
                    "Set the two at different heights, or choose `housed`, `dowelled` or "
                    "`pocket-screwed` there.",
                )
                return True
    return False


def pocket_screwed(work: Work) -> None:
    """Pockets in the second's hidden face, from which screws slant through its end."""
    m, wish, second, sizes = work.meeting, work.wish, work.second, work.bench.sizes
    pocket, screws_sold = POCKET_DIAMETER[sizes.unit], POCKET_LENGTHS[sizes.unit]
    if not work.at_end(second):
        work.refuse(
            "joint",
            "pocket screws go through the end of a part, and here its edge or face meets",
            "Choose `screwed` or `dowelled` there.",
        )
        return
    t = second.blank.thickness
    slope = radians(POCKET_ANGLE)
    # The pocket's floor has to lie in the wood: its upper rim comes to the face at most.
    most = int(2 * (t / 2 - pocket / 2 * cos(slope)) / sin(slope)) / 2
    fits = [
        (length, stop)
        for thick, length in screws_sold
        if wish.length is None or abs(wish.length - length) < TOUCH
        for stop in (min(most, length / 2),)
        if stop > 0
        and (length - stop) * cos(slope) <= m.through - POCKET_FLOOR
        and (wish.length is not None or t > thick)
    ]
    if not fits:
        lengths = ", ".join(work.say(each) for _, each in screws_sold)
        work.refuse(
            "length",
            f"no pocket screw out of a part {work.say(t)} thick holds in {work.say(m.through)} "
            f"without coming out, of those that come in {lengths}",
            f"Use parts {work.say(sizes.usual(15.0))} thick at least, or choose another joint.",
        )
        return
    length, stop = fits[-1]
    rule = SpacingRule(50.0, 15.0, 175.0, 20.0)
    places = lay_out(work, rule, "pocket screw")
    face = hidden_face(second)
    end = surface_towards(second, m.axis, m.into)
    placed = second.placement
    for y in places:
        at = m.point(y, m.middle)
        across = placed.to_part(at)[1]
        work.bench.work(
            m.second,
            PocketHole(
                face, end, across, t / 2, stop, pocket, sizes.screw, POCKET_ANGLE, "pocket screw"
            ),
        )
    if places:
        from_end = (t / 2) / tan(slope)
        fixing = screws(
            sizes,
            len(places),
            length,
            f"pocket {work.say(pocket)} at {POCKET_ANGLE:g} degrees, {work.say(from_end)} from "
            f"the end",
            kind="pocket screw",
        )
        at = m.point((m.low + m.high) / 2, m.middle)
        work.bench.join(JointKind.POCKET_SCREW, m.first, m.second, at, fixing)


def hidden_face(part: Part) -> Surface:
    """The face that isn't seen; the reverse where both are, or none."""
    shows = part.blank.show_surfaces
    turned = Surface.FACE not in shows and Surface.REVERSE in shows
    return Surface.FACE if turned else Surface.REVERSE
