"""The back: laid on, rebated or grooved in."""

from __future__ import annotations

from dataclasses import replace

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.spacing import count_along, spread
from rodwright.setout.bench import Bench
from rodwright.setout.carcass.box import blank
from rodwright.setout.fixings import screws
from rodwright.setout.joints.meet import Meeting, find_meeting
from rodwright.setout.rod.front_and_back import BackLines, screw_strip
from rodwright.setout.rod.lines import Rod
from rodwright.setout.setting import Setting
from rodwright.trade.movement import ACCEPTED
from rodwright.trade.screws import (
    BACK_EDGE,
    BACK_HOLD,
    BACK_SPACING,
    LEAST_PIN_HOLD,
    PIN_DIAMETERS,
    PIN_EDGE,
    PIN_HOLD,
    PIN_LENGTHS,
    PIN_SPACING,
    SIDE,
)
from rodwright.trade.sizes import TradeSizes
from rodwright.unit import Fixing, JointKind, Part, Placement, Role, Surface
from rodwright.unit.directions import LEFT, Y, Z


def set_out_back(setting: Setting) -> None:
    """Lay the back on the bench, and cut the rebates or grooves that take it.

    Its grain stands upright.  It ends at the top and bottom panels, or at the ends of the
    sides where there is no such panel; split, its panels meet behind the middle of each
    divider that goes all the way, and are pinned to it there.  One that is laid on is screwed
    along every line where it meets carcass, dividers and shelves: clearance holes in the back,
    none in what carries it.  Edges too thin for screws take pins.  One in a rebate is fixed so all
    round its rim; a groove holds by itself.

    A panel of solid wood that moves by more than a joint lives with is fixed in a rebate in the
    middle of its top and bottom alone.
    """
    rod, bench, carcass = setting.rod, setting.bench, setting.carcass
    wish, lines = setting.spec.back, rod.back
    assert wish is not None and lines is not None
    fixing = wish.fixing
    most = bench.sizes.screw_lengths[-1] - BACK_HOLD
    if fixing != "grooved" and lines.stock.thickness > most:
        say = setting.say
        setting.at("stock").refuse(
            f"no wood screw is long enough for a back {say(lines.stock.thickness)} thick",
            f"Use stock of {say(most)} at most, or let the back in: `fixing: grooved`.",
        )
        return
    inside = (carcass.left.right, carcass.right.left)
    held = _held(rod, lines, inside, fixing)
    gap = lines.clearance
    x = (held.low[0] + gap, held.high[0] - gap)
    z = (
        held.low[2] + (gap if carcass.bottom else 0.0),
        held.high[2] - (gap if carcass.top else 0.0),
    )
    framing = [carcass.left.ref, carcass.right.ref]
    framing += [level.ref for level in (carcass.bottom, carcass.top) if level]
    others = bench.refs_of(Role.SHELF, Role.DIVIDER)
    if fixing != "applied":
        for ref in framing:
            _let_in(bench, ref, held, fixing)
    resting = bench.resting()
    layers = {joint.second for joint in bench.joints if joint.kind is JointKind.FACE_GLUED}
    seams = _seams(setting) if wish.split else []
    behind = {ref for ref, _ in seams}
    edges = [x[0], *(at + way for _, at in seams for way in (-gap / 2, gap / 2)), x[1]]
    for left, right in zip(edges[::2], edges[1::2], strict=True):
        panel = Part(
            bench.next_ref(Role.BACK),
            "Back",
            Role.BACK,
            "Back",
            blank(z[1] - z[0], right - left, lines.stock, (Surface.FACE,)),
            Placement((right, lines.rear, z[0]), Z, LEFT),
            withdraw=Y,
        )
        bench.add(panel)
        free = lines.stock.swelling(right - left, setting.moisture) > ACCEPTED
        for ref in framing:
            if fixing == "applied":
                _screw(bench, ref, panel.ref)
            elif fixing == "rebated":
                _fix_rim(bench, ref, panel.ref, free)
            else:
                bench.meet(JointKind.GROOVE, ref, panel.ref)
        for ref in others:
            if fixing == "applied" and ref not in (*resting, *layers):
                _screw(bench, ref, panel.ref)
            elif ref in behind and not (free and fixing == "rebated"):
                _pin(bench, ref, panel.ref)
            elif ref not in resting:
                bench.meet(JointKind.BUTT, ref, panel.ref)


def _seams(setting: Setting) -> list[tuple[str, float]]:
    """Where the panels of a split back meet: behind which dividers from floor to ceiling, and the
    x of their middles."""
    found = [
        (upright.ref, (upright.left + upright.right) / 2)
        for upright, space in setting.notes.dividers
        if (space.low, space.high) == (setting.rod.inside.floor, setting.rod.inside.ceiling)
    ]
    return sorted(found, key=lambda seam: seam[1])


def _held(rod: Rod, lines: BackLines, inside: tuple[float, float], fixing: str) -> Box:
    """The box kept free for the back: its outline without clearance."""
    if fixing == "applied":
        return Box(
            (0.0, lines.front, rod.inside.bottom_underside),
            (rod.outside.width, lines.rear, rod.outside.height),
        )
    low = rod.inside.floor - lines.reach if rod.inside.has_bottom else rod.outside.base
    high = rod.inside.ceiling + lines.reach if rod.inside.has_top else rod.outside.height
    return Box(
        (inside[0] - lines.reach, lines.front, low), (inside[1] + lines.reach, lines.rear, high)
    )


def _let_in(bench: Bench, ref: str, held: Box, fixing: str) -> None:
    """Cut what the back takes up out of one part."""
    bounds = bench.bounds(ref)
    box = held.intersection(bounds)
    if fixing == "rebated":
        bench.rebate_along(ref, box, "back")
    else:
        bench.groove_along(ref, box, "back")


def _screw(bench: Bench, ref: str, back: str) -> None:
    """Screw the back on along its meeting with a part, or pin it where that is too narrow."""
    if bench.contact(ref, back) is None:
        return
    line = find_meeting(bench, ref, back)
    sizes = bench.sizes
    fits = [each for each in sizes.screw_diameters[:2] if 2 * SIDE * each <= line.thickness + TOUCH]
    if not fits or line.length < 2 * SIDE * fits[-1]:
        _pin(bench, ref, back)
        return
    places = _spread(line.low, line.high, sizes)
    fixing = _drill(bench, line, fits[-1], places, line.middle)
    middle = line.point((line.low + line.high) / 2, line.middle)
    bench.join(JointKind.SCREWED, ref, back, middle, fixing)


def _drill(
    bench: Bench, line: Meeting, diameter: float, places: tuple[float, ...], across: float
) -> Fixing:
    """Clearance holes in the back at some places of a line, and the screws for them."""
    sizes, thickness = bench.sizes, bench.parts[line.second].blank.thickness
    length = next(each for each in sizes.screw_lengths if each >= thickness + BACK_HOLD)
    for place in places:
        at = line.point(place, across, -thickness)
        bench.drill(line.second, at, line.way(), sizes.clearance(diameter), None, "screw")
    drilled = sizes.holes(diameter, bench.parts[line.first].blank.stock.grip)
    return screws(sizes, len(places), length, drilled, diameter=diameter)


def _fix_rim(bench: Bench, ref: str, back: str, free: bool) -> None:
    """Screw the back to the floor of a rebate, or pin it where too little of it lies there.

    A back that has to move (``free``) is fixed across its grain in the middle alone.
    """
    line = _rim(bench, ref, back)
    if line is None:
        return
    at = line.point((line.low + line.high) / 2, line.middle)
    if free and line.run == 2:
        bench.join(JointKind.REBATE, ref, back, at)
        return
    sizes, wide = bench.sizes, line.thickness
    fits = [d for d in sizes.screw_diameters[:2] if screw_strip(d, sizes) <= wide + TOUCH]
    places = ((line.low + line.high) / 2,) if free else _spread(line.low, line.high, sizes)
    fixings: list[Fixing] = []
    if fits:
        carrier, panel = bench.parts[ref].bounds(), bench.parts[back].bounds()
        in_from = SIDE * fits[-1]
        beyond = panel.high[line.across] > carrier.high[line.across] + TOUCH
        across = line.right - in_from if beyond else line.left + in_from
        fixings = [_drill(bench, line, fits[-1], places, across)]
    elif pins := pins_along(bench, back, line.length, wide):
        fixings = [replace(pins, count=1) if free else pins]
    kind = JointKind.BUTTONED if free and fixings else JointKind.REBATE
    bench.join(kind, ref, back, at, *fixings)


def _rim(bench: Bench, ref: str, back: str) -> Meeting | None:
    """The strip of a rebate's floor that a back lies on; None where it lies on none."""
    one, other = bench.bounds(ref), bench.bounds(back)
    strip = one.intersection(other)
    run, across = sorted((0, 2), key=lambda i: -strip.size[i])
    if strip.size[across] < TOUCH:
        return None
    return Meeting(
        ref,
        back,
        1,
        -1,
        run,
        across,
        plane=other.low[1],
        reach=0.0,
        low=strip.low[run],
        high=strip.high[run],
        left=strip.low[across],
        right=strip.high[across],
        through=other.low[1] - one.low[1],
        behind=other.size[1],
    )


def _pin(bench: Bench, ref: str, back: str) -> None:
    """Pin the back to the middle of its meeting with a part; what is too narrow is butted."""
    if bench.contact(ref, back) is None:
        return
    line = find_meeting(bench, ref, back)
    pins = pins_along(bench, back, line.length, line.thickness)
    if pins is None:
        bench.meet(JointKind.BUTT, ref, back)
        return
    middle = line.point((line.low + line.high) / 2, line.middle)
    bench.join(JointKind.PINNED, ref, back, middle, pins)


def pins_along(bench: Bench, back: str, length: float, wide: float) -> Fixing | None:
    """Pins (US: brads) for a back that lies on a strip ``wide`` mm wide; None where it is too
    narrow or short, or the back too thick for those that are sold."""
    fits = [each for each in PIN_DIAMETERS if 2 * PIN_EDGE * each <= wide + TOUCH]
    if not fits or length < 2 * BACK_EDGE:
        return None
    diameter, thickness = fits[0], bench.parts[back].blank.thickness
    sizes = bench.sizes
    sold = [sizes.usual(each) for each in PIN_LENGTHS]
    if thickness + LEAST_PIN_HOLD * diameter > sold[-1]:
        return None
    needed = thickness + PIN_HOLD * diameter
    long = next((each for each in sold if each >= needed), sold[-1])
    count = count_along(length, BACK_EDGE, PIN_SPACING)
    return Fixing(
        "panel pin",
        count,
        sizes.pin_size(diameter, long),
        f"{sizes.pin_hole(diameter)}, in the middle of the {sizes.say(wide)} it lies on",
        diameter=diameter,
        length=long,
    )


def _spread(low: float, high: float, sizes: TradeSizes) -> tuple[float, ...]:
    """Places of screws along a line, evenly; one in the middle of a short line."""
    usual = sizes.usual(BACK_EDGE)
    if high - low < 2 * usual:
        return ((low + high) / 2,)
    edge = min(usual, (high - low) / 4)
    count = count_along(high - low, edge, sizes.usual(BACK_SPACING))
    return spread(low, high, edge, count)
