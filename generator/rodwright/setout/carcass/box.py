"""Sides, top and bottom."""

from __future__ import annotations

from rodwright.setout.inside import Carcass, Level, Upright
from rodwright.setout.joints import make_joint
from rodwright.setout.setting import Setting
from rodwright.unit import Blank, Part, Placement, Role, Stock, Surface
from rodwright.unit.directions import DOWN, FORWARD, LEFT, X, Y, Z

BOTH_FACES = (Surface.FACE, Surface.REVERSE)


def blank(
    length: float,
    width: float,
    stock: Stock,
    shows: tuple[Surface, ...] = BOTH_FACES,
    trim: float = 0.0,
) -> Blank:
    """A panel's blank with the grain along its length, if its stock has any.

    ``shows`` are the surfaces that are seen when all is in place; ``trim`` mm are left on
    in length and width when it is first cut.
    """
    grain = stock.lengthwise
    return Blank(length, width, stock.thickness, stock, grain, shows, trim, trim)


def level_placement(x: float, y: float, z: float) -> Placement:
    """Of a part lying flat, face up, its length to the right."""
    return Placement((x, y, z), X, Y)


def upright_placement(x: float, y: float, z: float) -> Placement:
    """Of a part standing up, length upwards, face to the left; (x, y, z) is the lower
    front corner of its right face."""
    return Placement((x, y, z), Z, Y)


def set_out_carcass(setting: Setting) -> None:
    """Lay sides, top and bottom on the bench, jointed at the corners; note what can't be made."""
    spec, rod, bench = setting.spec, setting.rod, setting.bench
    t, depth = rod.thickness, rod.outside.depth
    over_top, over_bottom = spec.carcass.top == "over", spec.carcass.bottom == "over"
    reach = rod.joinery.reach(rod.joinery.corners, t)
    low = rod.outside.base + (t - reach if over_bottom else 0.0)
    high = rod.outside.height - (t - reach if over_top else 0.0)
    front = rod.front.behind_lipping("sides")
    # In an opening only the inside is seen.
    seen = BOTH_FACES if rod.opening is None else (Surface.REVERSE,)
    side_blank = blank(high - low, depth - front, rod.stock, seen)
    left = bench.add(
        Part(
            bench.next_ref(Role.SIDE),
            "Left side",
            Role.SIDE,
            "Carcass",
            side_blank,
            upright_placement(t, front, low),
            withdraw=LEFT,
        )
    )
    right = bench.add(
        Part(
            bench.next_ref(Role.SIDE),
            "Right side",
            Role.SIDE,
            "Carcass",
            side_blank,
            Placement((rod.outside.width - t, depth, low), Z, FORWARD),
            withdraw=X,
        )
    )
    bottom = top = None
    if rod.inside.has_bottom:
        bottom = _level(setting, Role.BOTTOM, rod.inside.bottom_underside, over_bottom)
    if rod.inside.has_top:
        top = _level(setting, Role.TOP, rod.outside.height - t, over_top)
    carcass = Carcass(
        Upright(left.ref, 0.0, t),
        Upright(right.ref, rod.outside.width - t, rod.outside.width),
        bottom,
        top,
    )
    for level, over in ((bottom, over_bottom), (top, over_top)):
        if level is bottom and over and rod.outside.toe:
            continue  # Sides can't run past a toe board and stand on the bottom: the base says so.
        for side in (carcass.left, carcass.right):
            if level is not None:
                _corner(setting, side, level, over)
    setting.notes.carcass = carcass


def _level(setting: Setting, role: Role, z: float, over: bool) -> Level:
    rod, bench = setting.rod, setting.bench
    t = rod.thickness
    start = 0.0 if over else t - rod.joinery.reach(rod.joinery.corners, t)
    front = rod.front.behind_lipping(role.value)
    inside = Surface.REVERSE if role is Role.TOP else Surface.FACE
    outside_seen = role is Role.TOP and rod.opening is None
    part = Part(
        bench.next_ref(role),
        role.value.capitalize(),
        role,
        "Carcass",
        blank(
            rod.outside.width - 2 * start,
            rod.outside.depth - front,
            rod.stock,
            BOTH_FACES if outside_seen else (inside,),
        ),
        level_placement(start, front, z),
        withdraw=Z if role is Role.TOP else DOWN,
    )
    bench.add(part)
    return Level(part.ref, z, z + t, over)


def _corner(setting: Setting, side: Upright, level: Level, over: bool) -> None:
    """Joint a side and a level: the one that runs through carries the other."""
    through, ending = (level.ref, side.ref) if over else (side.ref, level.ref)
    make_joint(setting.at("corners"), setting.rod.joinery.corners, through, ending)
