"""Butt hinges: leaves let into the edge of an inset door and what faces it."""

from __future__ import annotations

from rodwright.geometry import TOUCH, Box
from rodwright.setout import looks
from rodwright.setout.doors.hinge_places import Hinge, Made
from rodwright.setout.fixings import screws
from rodwright.trade.hinges import BUTT, BUTT_SCREW, SCREWS_PER_BUTT
from rodwright.trade.wood_left import LEAST_RIM
from rodwright.unit import CARRIES_HINGES, Fixing
from rodwright.unit.directions import LEFT, X


def butts(hinge: Hinge, count: int) -> Made | None:
    """Let the leaves into the door's edge and what faces it.

    The pin stands in front of the faces by half a knuckle, in the middle of the gap.
    Each leaf is let in by what half of the gap doesn't take, or packed out to fill it.
    """
    wish, outline, say = hinge.wish.hinge, hinge.hung.outline, hinge.setting.say
    if hinge.wish.hung != "inset":
        hinge.setting.at("kind").refuse(
            "butt hinges are for inset doors",
            "Write `hung: inset`, or `kind: cup`.",
        )
        return None
    thickness = outline.rear - outline.front
    if wish.leaf > thickness - LEAST_RIM + TOUCH:
        hinge.setting.at("leaf").refuse(
            f"leaves that reach {say(wish.leaf)} onto the edge leave less than "
            f"{say(LEAST_RIM)} of a door {say(thickness)} thick",
            "Take narrower leaves, or a thicker door.",
        )
        return None
    heights = hinge.heights(count, None)
    if heights is None:
        return None
    gap = hinge.inwards * (hinge.edge - hinge.surround)
    depth = wish.leaf_thickness - gap / 2
    carriers = _facing(hinge, heights)
    if carriers is None:
        return None
    if depth > TOUCH:
        for z in heights:
            _let_in(hinge, (hinge.hung.near,), hinge.edge, hinge.inwards * depth, z)
            _let_in(hinge, carriers, hinge.surround, -hinge.inwards * depth, z)
    name = f"{BUTT}, {say(wish.length)}"
    let_in = f"each leaf {'let in' if depth >= 0 else 'packed out'} {say(abs(depth))}"
    sizes = hinge.bench.sizes
    held = hinge.bench.parts[hinge.hung.near].blank.stock.grip
    fixings = (
        Fixing(name, count, f"leaf {say(wish.leaf)}, knuckle {say(wish.knuckle)}", let_in),
        screws(
            sizes,
            SCREWS_PER_BUTT * count,
            sizes.longest_screw(BUTT_SCREW),
            sizes.pilot_hole(sizes.small_screw, held),
            kind="countersunk screw",
            diameter=sizes.small_screw,
        ),
    )
    x = (hinge.edge + hinge.surround) / 2
    for z in heights:
        pin = looks.knuckle(x, outline.front - wish.knuckle / 2, z, wish.length, wish.knuckle)
        hinge.bench.show(hinge.hung.near, pin, ware="brass")
        _show_leaves(hinge, carriers, x, z)
    at = (hinge.surround, outline.front + wish.leaf / 2, (outline.low + outline.high) / 2)
    return carriers[0], (x, outline.front - wish.knuckle / 2), at, fixings


def _show_leaves(hinge: Hinge, carriers: tuple[str, ...], x: float, z: float) -> None:
    """Show the leaves of one hinge, which meet in the middle of the gap at ``x``, and what closes
    its knuckle."""
    wish, front, bench = hinge.wish.hinge, hinge.hung.outline.front, hinge.bench
    pin = front - wish.knuckle / 2
    ends = looks.finials(x, pin, z, wish.length, wish.knuckle)
    bench.show(hinge.hung.near, *ends, fine=True, ware="brass")
    bounds = {ref: bench.bounds(ref) for ref in carriers}
    beside = next((ref for ref, box in bounds.items() if box.low[2] <= z <= box.high[2]), None)
    for ref, way in ((hinge.hung.near, 1.0), (beside, -1.0)):
        if ref is not None:
            reach = way * hinge.inwards * wish.leaf_thickness
            leaf = looks.leaf(x, reach, (pin, front + wish.leaf), z, wish.length)
            bench.show(ref, leaf, inner=True, fine=True, ware="brass")


def _leaf(hinge: Hinge, x: float, reach: float, z: float) -> Box:
    """What is cut for a leaf, from the face at ``x`` so far along x."""
    wish, front = hinge.wish.hinge, hinge.hung.outline.front
    low, high = sorted((x, x + reach))
    half = wish.length / 2
    return Box((low, front, z - half), (high, front + wish.leaf, z + half))


def _facing(hinge: Hinge, heights: list[float]) -> tuple[str, ...] | None:
    """Refs of the pieces that carry the leaves; None where they don't cover them."""
    x, away = hinge.surround, -hinge.inwards * TOUCH * 10
    found: dict[str, None] = {}
    for z in heights:
        leaf = _leaf(hinge, x, away, z)
        there = {
            ref: part.bounds().intersection(leaf)
            for ref in hinge.around.parts.within(leaf)
            if (part := hinge.bench.parts[ref]).role in CARRIES_HINGES
            and part.bounds().intersects(leaf)
        }
        area = sum(box.size[1] * box.size[2] for box in there.values())
        if area < leaf.size[1] * leaf.size[2] - TOUCH:
            say = hinge.setting.say
            hinge.setting.at("kind").refuse(
                f"beside the door, {say(z)} up, there is no wood for a hinge's leaf of "
                f"{say(leaf.size[1])} x {say(leaf.size[2])}",
                "Bring the upright forward, put a mid stile before it, or take cup hinges.",
            )
            return None
        found |= dict.fromkeys(there)
    return tuple(found)


def _let_in(hinge: Hinge, refs: tuple[str, ...], x: float, reach: float, z: float) -> None:
    for ref in refs:
        box = hinge.bench.bounds(ref).intersection(_leaf(hinge, x, reach, z))
        if not box.is_empty:
            hinge.bench.mortise(ref, box, X if reach > 0 else LEFT, use="hinge leaf")
