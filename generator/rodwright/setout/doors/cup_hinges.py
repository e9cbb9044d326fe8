"""Concealed hinges: a cup bored into the door, a plate screwed to an upright."""

from __future__ import annotations

from rodwright.geometry import TOUCH
from rodwright.setout import looks
from rodwright.setout.carcass.shelf_rows import PLATE_USE
from rodwright.setout.doors.hinge_packers import holds_plates, lay_hinge_packer
from rodwright.setout.doors.hinge_places import Hinge, Made
from rodwright.trade.hinges import PLATE_DEPTH, PLATE_HOLE, PLATE_PITCH
from rodwright.trade.wood_left import LEAST_FLOOR, LEAST_RIM
from rodwright.unit import Fixing
from rodwright.unit.directions import FORWARD, LEFT, X


def cups(hinge: Hinge, count: int) -> Made | None:
    """Bore the door for cups and drill the upright for plates.

    A concealed hinge moves the door on links.  What it sweeps is taken as if it turned
    about its front corner, which keeps an overlay door within what it covers and an
    inset one within its opening, as such hinges do (common practice, no source).
    """
    wish, outline, say = hinge.wish.hinge, hinge.hung.outline, hinge.setting.say
    plate = _plate(hinge)
    if plate is None or not _can_be_bored(hinge):
        return None
    heights = hinge.heights(count, plate)
    if heights is None:
        return None
    inward = hinge.inwards
    x = hinge.edge + inward * (wish.edge + wish.cup / 2)
    packing = hinge.packing
    alone = packing > 0 and holds_plates(hinge)
    deep = PLATE_DEPTH if alone else hinge.plate_depth
    depth = deep if alone else deep + packing
    for z in heights:
        under = lay_hinge_packer(hinge, plate, z) if packing else hinge.upright.ref
        face = hinge.surround if packing else hinge.face
        hinge.bench.drill(
            hinge.hung.near, (x, outline.rear, z), FORWARD, wish.cup, wish.cup_depth, "hinge cup"
        )
        hinge.bench.show(hinge.hung.near, looks.cup(x, outline.rear, z, wish.cup), inner=True)
        hinge.bench.show(hinge.hung.near, looks.wings(x, outline.rear, z), inner=True, fine=True)
        hinge.bench.show(under, *looks.arm(face, inward, outline.rear, plate, z), inner=True)
        for half in (-PLATE_PITCH / 2, PLATE_PITCH / 2):
            into = LEFT if inward > 0 else X
            at = (face, plate, z + half)
            if not packing or alone:
                hinge.bench.drill(under, at, into, PLATE_HOLE, deep, PLATE_USE)
                continue
            hinge.bench.drill(under, at, into, PLATE_HOLE, None, PLATE_USE)
            behind = (hinge.face, plate, z + half)
            hinge.bench.drill(hinge.upright.ref, behind, into, PLATE_HOLE, deep, PLATE_USE)
    cover = inward * (hinge.surround - hinge.edge)
    ware = hinge.bench.sizes.ware
    where = f"covering {say(cover)}" if cover > 0 else "for inset doors"
    fixings = [
        Fixing(
            f"concealed hinge, {ware(wish.cup)} cup",
            count,
            f"{where}, rim {say(wish.edge)} from the edge",
            f"boring {ware(wish.cup)}, {say(wish.cup_depth)} deep",
        ),
        Fixing("hinge plate", count, f"holes {ware(PLATE_PITCH)} apart"),
        Fixing(
            "plate screw",
            2 * count,
            f"for {ware(PLATE_HOLE)} holes",
            f"{ware(PLATE_HOLE)}, {say(depth)} deep",
            diameter=PLATE_HOLE,
            length=depth,
        ),
    ]
    at = (hinge.face, plate, (outline.low + outline.high) / 2)
    return hinge.upright.ref, (hinge.edge, outline.front), at, tuple(fixings)


def _plate(hinge: Hinge) -> float | None:
    """The y of a plate's holes; None where the upright has no room for them."""
    bumper = hinge.wish.bumper if hinge.wish.hung == "overlay" else 0.0
    y = hinge.hung.outline.rear + bumper + hinge.wish.hinge.plate
    bounds = hinge.bench.bounds(hinge.upright.ref)
    say = hinge.setting.say
    if not bounds.low[1] + PLATE_HOLE < y < bounds.high[1] - PLATE_HOLE:
        hinge.setting.at("plate").refuse(
            f"plate holes {say(y)} behind the carcass's front miss the upright "
            f"{hinge.upright.ref}, which reaches from {say(bounds.low[1])} to "
            f"{say(bounds.high[1])}",
            "Change `plate`, or let the upright come further forward.",
        )
        return None
    return y


def _can_be_bored(hinge: Hinge) -> bool:
    """Whether the door takes its cups."""
    setting, wish, say = hinge.setting, hinge.wish.hinge, hinge.setting.say
    before = setting.problems.mark()
    outline = hinge.hung.outline
    thickness = outline.rear - outline.front
    if wish.cup_depth > thickness - LEAST_FLOOR + TOUCH:
        setting.at("cup_depth").refuse(
            f"borings {say(wish.cup_depth)} deep leave less than {say(LEAST_FLOOR)} of a door "
            f"{say(thickness)} thick",
            "Take shallower cups, butt hinges, or a thicker door.",
        )
    if wish.edge < LEAST_RIM - TOUCH:
        setting.at("edge").refuse(
            f"borings {say(wish.edge)} from the door's edge break out",
            f"Leave at least {setting.at_least(LEAST_RIM)}.",
        )
    beside = hinge.hung.clear - wish.edge - wish.cup
    if beside < LEAST_RIM - TOUCH:
        what = "the panel's groove" if hinge.wish.kind == "framed" else "the door's other edge"
        short = "meet" if beside <= 0 else f"come within {say(beside)} of"
        setting.at("cup").refuse(
            f"borings of {say(wish.cup)}, {say(wish.edge)} from the edge, {short} {what}",
            "Take wider stiles or smaller cups, or bring the borings nearer to the edge.",
        )
    return not setting.problems.noted_since(before)
