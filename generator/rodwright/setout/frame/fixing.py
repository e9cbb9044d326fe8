"""What holds the members of a face frame to each other, and the frame to the carcass.

A frame is fitted last: its members are cut long, trimmed to each other and often to the walls.
So what is let into them is counted and sized here, and marked from the pieces once they lie in
place; the model has no holes for it.  Lengths in mm.
"""

from __future__ import annotations

from dataclasses import replace
from math import hypot

from rodwright.geometry import TOUCH
from rodwright.setout.edges.biscuits import EDGE, edge_biscuits, places_on
from rodwright.setout.fixings import screws, screws_through
from rodwright.setout.rod.sizes import easily_set
from rodwright.trade.connectors import (
    PLUG,
    PLUG_DEPTH,
    SLOT_WIDTH,
    TENON_DEPTH,
    slot_depth,
    slot_length,
)
from rodwright.trade.gaps import GLUE_ROOM
from rodwright.trade.screws import POCKET_ANGLE, POCKET_DIAMETER, SCREWABLE, Grip, pocket_length
from rodwright.trade.sizes import TradeSizes
from rodwright.trade.wood_left import SLOT_FLOOR
from rodwright.unit import Fixing, JointKind
from rodwright.wishes.models import FaceFrameSpec

_SCREWED_FROM = 15.0
"""Thinnest frame, mm, whose screws can be sunk deep enough for a plug (common practice, no
source)."""
_SHOULDER = 4.0
"""Least wood beside the mortise of a narrow member, mm (common practice, no source)."""
_TWO_POCKETS = 35.0
"""Members as wide as this (mm) take two pocket screws (common practice, no source)."""
_PLACED = "marked from the pieces in place"

Held = tuple[JointKind, tuple[Fixing, ...]]
"""How two parts meet and what holds them."""


def member_joint(
    wish: FaceFrameSpec, sizes: TradeSizes, width: float, thickness: float, mitred: bool
) -> Held | None:
    """What holds two members of a frame where one, so wide, meets the other; None where the joint
    that is wished has no room.

    A mitre is longer than the member is wide, but what is let in has to stay clear of its points.
    """
    plain = JointKind.MITRE if mitred else JointKind.BUTT
    kinds = {
        "dowels": JointKind.DOWEL, "biscuits": JointKind.BISCUIT,
        "loose_tenons": JointKind.LOOSE_TENON, "pocket_screws": JointKind.POCKET_SCREW,
    }  # fmt: skip
    wished = [wish.joint] if wish.joint else ["dowels", "loose_tenons"]
    for name in wished:
        if name == "glue":
            return plain, ()
        fixing = _MAKERS[name](sizes, width, thickness, mitred)
        if fixing is not None:
            return (plain if mitred else kinds[name]), (fixing,)
    return None


def _dowels(sizes: TradeSizes, width: float, thickness: float, mitred: bool) -> Fixing | None:
    """Two, their own diameter from the edges and two between them, a third of the thickness."""
    suits = [
        each
        for each in sizes.dowels
        if thickness / 4 - TOUCH <= each <= thickness / 2 + TOUCH and 4 * each <= width + TOUCH
    ]
    if not suits:
        return None
    diameter = min(suits, key=lambda each: abs(each - thickness / 3))
    # Across a mitre they reach no further than its shorter side leaves wood.
    half = sizes.dowels[diameter] / 2
    reach = sizes.round_down(min(half, width / 2)) if mitred else half
    deep = reach + sizes.usual(GLUE_ROOM)
    return Fixing(
        "dowel",
        2,
        sizes.by(diameter, 2 * reach),
        f"{sizes.say(diameter)}, {sizes.say(deep)} deep in both, square to the joint, {_PLACED}",
        diameter=diameter,
        length=2 * reach,
    )


def _biscuits(sizes: TradeSizes, width: float, thickness: float, mitred: bool) -> Fixing | None:
    length = hypot(width, width) if mitred else width
    least = slot_length(slot_depth("0", sizes.unit)) + 2 * SLOT_FLOOR
    if thickness < 3 * SLOT_WIDTH[sizes.unit] - TOUCH or length < least:
        return None
    return edge_biscuits(sizes, length, width, 1)


def _loose_tenon(sizes: TradeSizes, width: float, thickness: float, mitred: bool) -> Fixing | None:
    length = hypot(width, width) if mitred else width
    thick = easily_set(thickness / 3, sizes.unit)
    wide = sizes.round_down(length - 2 * max(_SHOULDER, 0.15 * length))
    if wide < 2 * thick - TOUCH:
        return None
    reach = sizes.usual(TENON_DEPTH)
    if mitred:
        reach = sizes.round_down(min(reach, width / 2))
    deep = reach + sizes.usual(GLUE_ROOM)
    return Fixing(
        "loose tenon",
        1,
        sizes.by(2 * reach, wide, thick),
        f"mortises {sizes.say(thick)} wide, {sizes.say(deep)} deep in both, {_PLACED}",
        diameter=thick,
        length=2 * reach,
        width=wide,
    )


def _pocket_screws(
    sizes: TradeSizes, width: float, thickness: float, mitred: bool
) -> Fixing | None:
    if mitred or thickness < _SCREWED_FROM:
        return None
    return screws(
        sizes,
        2 if width >= _TWO_POCKETS else 1,
        pocket_length(thickness, sizes.unit),
        f"pockets {sizes.say(POCKET_DIAMETER[sizes.unit])} at {POCKET_ANGLE:g} degrees in the "
        f"rear of the piece that ends there",
        kind="pocket screw",
    )


_MAKERS = {
    "dowels": _dowels, "biscuits": _biscuits, "loose_tenons": _loose_tenon,
    "pocket_screws": _pocket_screws,
}  # fmt: skip


def carcass_joint(
    wish: FaceFrameSpec,
    sizes: TradeSizes,
    length: float,
    narrow: float,
    frame: float,
    panel: float,
    held: Grip,
) -> Held:
    """What holds a member to an edge of the carcass along so much of it.

    ``narrow`` is the width they share, ``frame`` and ``panel`` how deep the two are behind it;
    ``held`` is how the panel takes screws.
    What is too narrow or too short is only glued; its neighbours hold it.
    """
    glued: Held = JointKind.BUTT, ()
    if wish.fixing == "glue" or narrow < SCREWABLE - TOUCH or length < EDGE:
        return glued
    count = places_on(length)
    if wish.fixing == "biscuits":
        if frame < slot_depth("0", sizes.unit) + SLOT_FLOOR:
            return glued
        return JointKind.BISCUIT, (edge_biscuits(sizes, length, min(frame, panel)),)
    if wish.fixing == "dowels":
        return _carcass_dowels(sizes, count, frame)
    if frame < _SCREWED_FROM:
        return glued
    sunk, plug = sizes.usual(PLUG_DEPTH), sizes.usual(PLUG)
    plain = screws_through(sizes, frame - sunk, panel, count, held)
    bored = f"counterbore {sizes.say(plug)}, {sizes.say(sunk)} deep, {plain.pilot}"
    return JointKind.SCREWED, (
        replace(plain, pilot=bored),
        Fixing("plug", count, f"{sizes.say(plug)}, of the frame's wood"),
    )


def _carcass_dowels(sizes: TradeSizes, count: int, frame: float) -> Held:
    diameter = min(sizes.dowels)
    allowance = sizes.usual(GLUE_ROOM)
    reach = sizes.round_down(min(sizes.dowels[diameter] / 2, frame - SLOT_FLOOR - allowance))
    into = sizes.dowels[diameter] - reach
    text = (
        f"{sizes.say(diameter)}, {sizes.say(reach + allowance)} deep in the frame, "
        f"{sizes.say(into + allowance)} in the edge, {_PLACED}"
    )
    long = sizes.dowels[diameter]
    dowels = Fixing("dowel", count, sizes.by(diameter, long), text, diameter=diameter, length=long)
    return JointKind.DOWEL, (dowels,)
