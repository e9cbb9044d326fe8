"""Operations at the bench: from joints, from what holds them, and from what is made as one."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.geometry import TOUCH
from rodwright.handover.lists import articles
from rodwright.making.glue_lines import is_glued
from rodwright.making.sub_assemblies import Piece, pieces_of
from rodwright.quote.tally import Count
from rodwright.trade.feet import FOOT
from rodwright.unit import TRAITS, Fixing, Joint, JointKind, Part, Role, Unit
from rodwright.unit.roles import DRAWERS, Assembly

_M2 = 1e6
_BY_NAME = {
    "panel pin": "pin", "plug": "plug", "dowel": "dowel", "biscuit": "biscuit",
    "loose tenon": "loose_tenon", "cam": "knock_down", "barrel nut": "knock_down", FOOT: "foot",
    "shelf pin": "small_part", "sleeve for a shelf pin": "small_part", "bumper": "small_part",
    "plinth clip": "small_part", "worktop button": "small_part", "washer": "small_part",
    "loose tongue": "small_part",
}  # fmt: skip
"""What is done with bought-in pieces, by what the hardware list calls them."""
_WITH_ANOTHER = ("cam bolt", "connecting bolt", "hinge plate", "handle screw")
"""What goes in with the cam, the nut, the hinge and the handle."""


def put_together(unit: Unit) -> Iterator[Count]:
    """Gluing, what is made as one, and all that holds or moves it."""
    yield from _glued(unit)
    yield from _made(unit)
    yield "back", sum(part.role is Role.BACK for part in unit.parts)
    for pieces in articles(unit).values():
        for fixing, joint in pieces:
            if key := _fitted(fixing, joint):
                yield key, fixing.count


def _glued(unit: Unit) -> Iterator[Count]:
    """Glued joints one by one, but layers by their area; lippings are in the edge list."""
    for joint in unit.joints:
        if joint.kind is JointKind.FACE_GLUED:
            yield "layers", _shared(unit, joint) / _M2
        elif is_glued(unit, joint) and not _lips(unit, joint):
            yield "glued_joint", 1


def _lips(unit: Unit, joint: Joint) -> bool:
    return joint.kind is JointKind.EDGE_GLUED and Role.LIPPING in (
        unit.part(joint.first).role,
        unit.part(joint.second).role,
    )


def _shared(unit: Unit, joint: Joint) -> float:
    """The area (mm2) where two layers lie on each other."""
    one, other = (unit.part(ref).bounds().grown(TOUCH) for ref in (joint.first, joint.second))
    _, wide, long = sorted(one.intersection(other).size)
    return (wide - 2 * TOUCH) * (long - 2 * TOUCH)


def _made(unit: Unit) -> Iterator[Count]:
    """Framed doors, drawers, face frames and bases that are made apart, and carcasses."""
    yield "carcass", carcasses(unit)
    for piece in pieces_of(unit):
        parts = [unit.part(ref) for ref in piece.refs]
        if len(parts) > 1 and (key := _kind_of(parts)):
            yield key, 1


def _kind_of(parts: list[Part]) -> str:
    """The operation that makes some parts one; empty where that is told by their joints alone."""
    roles = {part.role for part in parts}
    if Role.DOOR_STILE in roles:
        return "door"
    if roles & {*DRAWERS} - {Role.DRAWER_FRONT}:
        return "drawer"
    of = {TRAITS[role].of for role in roles}
    if of == {Assembly.FACE_FRAME}:
        return "face_frame"
    return "base" if of == {Assembly.BASE} else ""


def carcasses(unit: Unit) -> int:
    """How many carcasses a unit has; one made where it stands counts as one."""
    made = [piece for piece in pieces_of(unit) if _is_carcass(unit, piece)]
    return max(len(made), int(any(TRAITS[part.role].outer for part in unit.parts)))


def _is_carcass(unit: Unit, piece: Piece) -> bool:
    """Whether a piece has several sides, tops or bottoms of a carcass in it."""
    return sum(TRAITS[unit.part(ref).role].outer for ref in piece.refs) > 1


def _fitted(fixing: Fixing, joint: Joint | None) -> str:
    """What is done with a bought-in piece; empty where it goes in with another.

    Handles have any name that a maker gives them, so what is in no joint and isn't known is one.
    """
    name = fixing.name.casefold()
    if name in _WITH_ANOTHER:
        return ""
    if name.endswith("screw"):
        return "screw"
    if name in _BY_NAME:
        return _BY_NAME[name]
    if joint is None:
        return "handle"
    return {JointKind.HINGED: "hinge", JointKind.SLIDING: "slides"}.get(joint.kind, "small_part")
