"""What holds the members of a face frame to each other, and the frame to the carcass.

A frame is fitted last: its members are cut long, trimmed to each other and often to the walls.
So what is let into them is counted and sized here, and marked from the pieces once they lie in
place; the model has no holes for it.  Lengths in mm.
"""

from __future__ import annotations

from math import ceil, hypot

from rodwright.parts import Fixing, JointKind
from rodwright.setout.bench import TOUCH
from rodwright.setout.boards import SCREWABLE, wood_screws
from rodwright.setout.edge_biscuits import EDGE, SPACING, edge_biscuits
from rodwright.setout.joints.slots import BISCUITS, LEAST_FLOOR, slot_length
from rodwright.spec.models import FaceFrameSpec

_DOWELS = (10.0, 8.0, 6.0)
"""Diameters of dowels, mm."""
_PLUG = 10.0
"""Diameter of the plugs over screws through the face, mm (common practice, no source)."""
_SCREWED_FROM = 15.0
"""Thinnest frame, mm, whose screws can be sunk deep enough for a plug (common practice, no
source)."""
_PLACED = "marked from the pieces in place"

Held = tuple[JointKind, tuple[Fixing, ...]]
"""How two parts meet and what holds them."""


def member_joint(wish: FaceFrameSpec, width: float, thickness: float, mitred: bool) -> Held | None:
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
        fixing = _member_fixing(name, width, thickness, mitred)
        if fixing is not None:
            return (plain if mitred else kinds[name]), (fixing,)
    return None


def _member_fixing(name: str, width: float, thickness: float, mitred: bool) -> Fixing | None:
    length = hypot(width, width) if mitred else width
    if name == "dowels":
        suits = [each for each in _DOWELS if each <= thickness / 2 + TOUCH]
        # Two of them, their own diameter from the edges and two between them.
        suits = [each for each in suits if width >= 4 * each - TOUCH and each >= thickness / 4]
        if not suits:
            return None
        diameter = min(suits, key=lambda each: abs(each - thickness / 3))
        # Across a mitre they reach no further than its shorter side leaves wood.
        reach = min(2.5 * diameter, width / 2 if mitred else 2.5 * diameter)
        return Fixing(
            "dowel", 2, f"{diameter:g} x {2 * reach:g} mm",
            f"{diameter:g} mm, {reach + 1:g} mm deep in both, square to the joint, {_PLACED}",
        )  # fmt: skip
    if name == "biscuits":
        if thickness < 3 * 4.0 or length < slot_length(BISCUITS["0"][2]) + 2 * LEAST_FLOOR:
            return None
        return edge_biscuits(length, width, 1)
    if name == "loose_tenons":
        thick = round(thickness / 3)
        wide = length - 2 * max(4.0, 0.15 * length)
        if wide < 2 * thick:
            return None
        reach = min(25.0, width / 2 if mitred else 25.0)
        return Fixing(
            "loose tenon", 1, f"{2 * reach:g} x {wide:.0f} x {thick:g} mm",
            f"mortises {thick:g} mm wide, {reach + 1:g} mm deep in both, {_PLACED}",
        )  # fmt: skip
    if mitred or thickness < _SCREWED_FROM:
        return None
    count = 2 if width >= 35.0 else 1
    size = 25 if thickness <= 16 else 32 if thickness <= 20 else 38
    return Fixing(
        "pocket screw", count, f"4 x {size} mm",
        "pockets 9.5 mm at 15 degrees in the rear of the rail, or of what stands between rails",
    )  # fmt: skip


def carcass_joint(
    wish: FaceFrameSpec, length: float, narrow: float, frame: float, panel: float
) -> Held:
    """What holds a member to an edge of the carcass along so much of it.

    ``narrow`` is the width they share, ``frame`` and ``panel`` how deep the two are behind it.
    What is too narrow or too short is only glued; its neighbours hold it.
    """
    glued: Held = JointKind.BUTT, ()
    if wish.fixing == "glue" or narrow < SCREWABLE - TOUCH or length < EDGE:
        return glued
    count = 1 if length <= 2 * EDGE else max(2, ceil((length - 2 * EDGE) / SPACING - TOUCH) + 1)
    if wish.fixing == "biscuits":
        if frame < BISCUITS["0"][2] + LEAST_FLOOR:
            return glued
        return JointKind.BISCUIT, (edge_biscuits(length, min(frame, panel)),)
    if wish.fixing == "dowels":
        reach = min(20.0, frame - LEAST_FLOOR - 1)
        text = f"6 mm, {reach + 1:g} mm deep in the frame, 21 mm in the edge, {_PLACED}"
        return JointKind.DOWEL, (Fixing("dowel", count, f"6 x {reach + 20:g} mm", text),)
    if frame < _SCREWED_FROM:
        return glued
    screws = wood_screws(frame - 6.0, panel, count)
    text = f"counterbore {_PLUG:g} mm, 6 mm deep, {screws.pilot}"
    return JointKind.SCREWED, (
        Fixing(screws.name, count, screws.size, text),
        Fixing("plug", count, f"{_PLUG:g} mm, of the frame's wood"),
    )
