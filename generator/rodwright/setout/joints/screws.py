"""Screws: through the first part into the second, or slanting from a pocket in the second."""

from __future__ import annotations

from math import cos, radians, sin, tan

from rodwright.parts import Fixing, JointKind, Part, PocketHole, Surface
from rodwright.setout.bench import TOUCH
from rodwright.setout.joints.layout import Rule, clear_of_others, lay_out
from rodwright.setout.joints.meet import Work, surface_towards

DIAMETERS = (3.0, 3.5, 4.0, 4.5, 5.0, 6.0)
"""Wood screws' diameters, mm (common practice, no source)."""
LENGTHS = (16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 120)
"""Wood screws' lengths, mm (common practice, no source)."""
HOLD = 7.0
"""How far a screw goes into the second part, in diameters (common practice, no source)."""
SIDE = 2.0
"""Least distance from a screw's middle to the face of the edge it goes into, in diameters
(common practice, no source)."""
POCKET_ANGLE = 15.0
"""Between a pocket and the face, degrees (common practice, no source)."""
POCKET_DIAMETER = 9.5
"""Diameter of a pocket, mm (common practice, no source)."""
POCKET_SCREWS = ((0.0, 25.0), (16.0, 32.0), (20.0, 38.0), (26.0, 51.0), (33.0, 64.0))
"""Pocket screws: what a part has to be thicker than, and the screw's length, mm (from memory)."""
POCKET_FLOOR = 1.0
"""Wood left before the tip of a pocket screw, mm (common practice, no source)."""
POCKET_SCREW_DIAMETER = 4.0
"""Diameter of a pocket screw, mm (common practice, no source)."""

_SPLITTING = ("mdf", "chipboard", "particle", "fibreboard", "fiberboard")


def splits(material: str) -> bool:
    """Whether a material's edges split easily: MDF and chipboard."""
    return any(name in material.lower() for name in _SPLITTING)


def pilot_for(diameter: float, material: str) -> float:
    """The pilot hole's diameter (mm) for a screw: larger where edges split."""
    return round(2 * (0.75 if splits(material) else 0.6) * diameter) / 2


def screwed(work: Work) -> None:
    """A clearance hole through the first, a pilot in the second, for each screw.

    The diameter is the largest that is no more than 4/18 of the edge it goes into, the length
    the least that holds ``HOLD`` diameters in the second.  Pilots are about 0.6 of the
    diameter, in MDF and chipboard 0.75 and as deep as the screw goes (common practice, no
    source).
    """
    m, wish = work.meeting, work.wish
    least = 2 * SIDE * DIAMETERS[0]
    usual = [each for each in DIAMETERS if each <= m.thickness * 4 / 18 + TOUCH]
    diameter = wish.diameter or max(usual, default=DIAMETERS[0])
    if m.thickness / 2 < SIDE * diameter - TOUCH:
        work.refuse(
            "diameter",
            f"{work.say(diameter)} screws in the middle of an edge {work.say(m.thickness)} thick "
            f"are nearer to its faces than {SIDE:g} diameters",
            f"Use thinner screws, or an edge {work.say(2 * SIDE * diameter)} thick."
            if diameter > DIAMETERS[0]
            else f"Use an edge {work.say(least)} thick at least, or another joint.",
        )
        return
    bounds = work.first.bounds()
    beside = min(m.middle - bounds.low[m.across], bounds.high[m.across] - m.middle)
    if beside < SIDE * diameter - TOUCH:
        work.refuse(
            "diameter",
            f"{work.say(diameter)} screws would go through {work.first.name.lower()} "
            f"{work.say(beside)} from its edge",
            f"Keep them {work.say(SIDE * diameter)} from it: use thinner screws.",
        )
        return
    length = _length(work, diameter)
    fragile = splits(work.second.blank.stock.material)
    rule = Rule(50.0, (6.0 if fragile else 5.0) * diameter, 200.0, 5 * diameter)
    places = lay_out(work, rule, "screw")
    if not places or length is None or hidden_behind(work, "screw", places):
        return
    clearance = diameter + 0.5
    places = clear_of_others(
        work, places, rule,
        lambda y: m.box((y - clearance / 2, y + clearance / 2),
                        (m.middle - clearance / 2, m.middle + clearance / 2), (0.0, m.through)),
        "screw",
    )  # fmt: skip
    pilot = pilot_for(diameter, work.second.blank.stock.material)
    into = length - m.through
    deep = into if fragile else 2 / 3 * into
    for y in places:
        work.bench.drill(
            m.first, m.point(y, m.middle, m.through), m.way(-1), clearance, None, "screw"
        )
        work.bench.drill(m.second, m.point(y, m.middle), m.way(-1), pilot, deep, "screw")
    if places:
        text = f"clearance {clearance:g} mm, pilot {pilot:g} mm"
        screws = Fixing("wood screw", len(places), f"{diameter:g} x {length:g} mm", text)
        at = m.point((m.low + m.high) / 2, m.middle)
        work.bench.join(JointKind.SCREWED, m.first, m.second, at, screws)


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
                f"Let them go {work.say(4 * diameter)} in at least, and not through.",
            )
            return None
        return wish.length
    fit = [each for each in LENGTHS if m.through + 4 * diameter <= each <= most]
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
    for ref, part in work.bench.parts.items():
        if ref in (m.first, m.second):
            continue
        box = part.bounds()
        for y in places:
            at = m.point(y, m.middle, m.through + 1.0)
            if all(box.low[i] - TOUCH < at[i] < box.high[i] + TOUCH for i in range(3)):
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
    m, wish, second = work.meeting, work.wish, work.second
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
    most = int(2 * (t / 2 - POCKET_DIAMETER / 2 * cos(slope)) / sin(slope)) / 2
    fits = [
        (length, stop)
        for thick, length in POCKET_SCREWS
        if wish.length in (None, length)
        for stop in (min(most, length / 2),)
        if stop > 0 and (length - stop) * cos(slope) <= m.through - POCKET_FLOOR
        and (wish.length is not None or t > thick)
    ]  # fmt: skip
    if not fits:
        lengths = ", ".join(f"{each:g}" for _, each in POCKET_SCREWS)
        work.refuse(
            "length",
            f"no pocket screw out of a part {work.say(t)} thick holds in {work.say(m.through)} "
            f"without coming out, of those that come in {lengths} mm",
            "Use parts 15 mm thick at least, or choose another joint.",
        )
        return
    length, stop = fits[-1]
    rule = Rule(50.0, 15.0, 175.0, 20.0)
    places = lay_out(work, rule, "pocket screw")
    face = hidden_face(second)
    end = surface_towards(second, m.axis, m.into)
    placed = second.placement
    for y in places:
        at = m.point(y, m.middle)
        across = sum((at[i] - placed.origin[i]) * placed.width[i] for i in range(3))
        work.bench.work(
            m.second,
            PocketHole(
                face, end, across, t / 2, stop, POCKET_DIAMETER, POCKET_SCREW_DIAMETER,
                POCKET_ANGLE, "pocket screw",
            ),
        )  # fmt: skip
    if places:
        from_end = (t / 2) / tan(slope)
        screws = Fixing(
            "pocket screw", len(places), f"{POCKET_SCREW_DIAMETER:g} x {length:g} mm",
            f"pocket {POCKET_DIAMETER:g} mm at {POCKET_ANGLE:g} degrees, "
            f"{from_end:.0f} mm from the end",
        )  # fmt: skip
        at = m.point((m.low + m.high) / 2, m.middle)
        work.bench.join(JointKind.POCKET_SCREW, m.first, m.second, at, screws)


def hidden_face(part: Part) -> Surface:
    """The face that isn't seen; the reverse where both are, or none."""
    shows = part.blank.show_surfaces
    turned = Surface.FACE not in shows and Surface.REVERSE in shows
    return Surface.FACE if turned else Surface.REVERSE
