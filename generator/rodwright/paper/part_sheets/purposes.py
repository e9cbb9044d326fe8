"""What goes into each working: the parts that lie there, found by joints and geometry; mm."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from rodwright.geometry import TOUCH, Box, Vector, vector
from rodwright.unit import (
    Bevel,
    Bore,
    Channel,
    Easing,
    FingerPull,
    Hole,
    JointKind,
    Mitre,
    Mortise,
    Notch,
    Part,
    PocketHole,
    Unit,
    Working,
)

_BESIDE = 0.5
"""mm: so far outside a hole is looked for what a screw or a dowel comes from or goes to."""
_NAMED = 3
"""Refs that are named before the others are only counted."""
_FOR = {
    "adjustable shelves": "row for loose shelves",
    "cam": "cam",
    "cam bolt": "cam bolt",
    "handle": "handle",
    "toe space": "toe space",
    "stopped housing": "round the end of a stopped housing",
    "loose tenon": "loose tenon",
    "dowel": "dowel",
    "screw": "screw",
    "button": "button",
    "tongue": "tongue",
}
"""What is said of a working by its use."""
_TO = ("cam", "cam bolt", "dowel", "screw", "pocket screw", "button", "loose tenon", "tongue")
"""Uses by which something is held: what comes there is named."""


@dataclass(frozen=True, slots=True)
class Neighbours:
    """A part and what it may meet."""

    unit: Unit
    part: Part
    others: tuple[tuple[Part, Box], ...]

    @classmethod
    def of(cls, unit: Unit, part: Part, boxes: Sequence[tuple[Part, Box]]) -> Neighbours:
        """Those of the unit's parts (with their bounds) that come near a part."""
        near = part.bounds().grown(2 * _BESIDE)
        others = (each for each in boxes if each[0].ref != part.ref)
        return cls(unit, part, tuple(each for each in others if each[1].penetration(near) > 0))

    def within(self, box: Box) -> tuple[str, ...]:
        """Refs of what reaches into a box of the part frame."""
        there = Box.of_points(map(self.part.placement.to_unit, box.corners()))
        return tuple(part.ref for part, bounds in self.others if bounds.intersects(there))

    def at(self, point: Vector) -> tuple[str, ...]:
        """Refs of what is at a point of the part frame."""
        return self.within(Box(point, point).grown(2 * TOUCH))


def purposes(unit: Unit, pieces: Sequence[Part]) -> dict[Working, str]:
    """What each working of equal pieces is for, as far as that is known."""
    boxes = [(part, part.bounds()) for part in unit.parts]
    near = [Neighbours.of(unit, part, boxes) for part in pieces]
    return {each: _purpose(near, each) for each in dict.fromkeys(pieces[0].workings)}


def _purpose(near: Sequence[Neighbours], working: Working) -> str:
    match working:
        case Easing():
            return ""
        case Mitre() | Bevel():
            return named(_mitred(each, working) for each in near)
        case FingerPull():
            return "for fingers"
        case Hole() | Mortise() | PocketHole():
            return _of_bore(near, working)
    return _of_channel(near, working)


def _of_channel(near: Sequence[Neighbours], working: Channel | Notch) -> str:
    """The parts that lie in it, or what it was cut for."""
    found = [each.within(working.bounds(each.part.blank.size).grown(-TOUCH)) for each in near]
    unit = near[0].unit
    meant = [[ref for ref in refs if unit.part(ref).role == working.use] for refs in found]
    if working.use == "tongue":
        return "tongue"
    return named(meant) or named(found) or _FOR.get(working.use, working.use)


def _mitred(near: Neighbours, cut: Mitre | Bevel) -> tuple[str, ...]:
    """What a piece is mitred to at the end that a cut takes."""
    part = near.part
    end = cut.end if isinstance(cut, Mitre) else min(cut.surface, cut.edge, key=lambda s: s.axis)
    found = []
    for joint in near.unit.joints:
        if joint.kind is JointKind.MITRE and part.ref in (joint.first, joint.second):
            far = part.placement.to_part(joint.at)[0] > part.blank.length / 2
            if end.axis == 0 and far is end.at_high:
                found.append(joint.second if joint.first == part.ref else joint.first)
    return tuple(found)


def _of_bore(near: Sequence[Neighbours], working: Bore) -> str:
    use = working.use
    if use in ("hinge cup", "hinge leaf", "hinge plate"):
        doors = [_doors(each, working) for each in near]
        return f"{use}, {named(doors)}" if any(doors) else use
    said = _FOR.get(use, use)
    if use not in _TO:
        return said
    refs = named([_mouths(each, working) for each in near])
    return f"{said} to {refs}" if refs else said


def _mouths(near: Neighbours, working: Bore) -> tuple[str, ...]:
    """What lies where a bore comes in or out of the piece."""
    size = near.part.blank.size
    box = working.bounds(size)
    surface = working.entered
    surfaces = [surface]
    if box.size[surface.axis] >= size[surface.axis] - TOUCH:
        surfaces.append(surface.opposite)
    refs: list[str] = []
    for each in surfaces:
        middle = list(box.centre)
        if isinstance(working, PocketHole):
            middle[working.run] = working.position
        out = size[each.axis] + _BESIDE if each.at_high else -_BESIDE
        middle[each.axis] = out
        refs += near.at(vector(middle))
    return tuple(dict.fromkeys(refs))


def _doors(near: Neighbours, working: Bore) -> tuple[str, ...]:
    """The doors that hang on a piece there; of a door's own piece, the door."""
    own = near.part.group
    hinged = [each for each in near.unit.joints if each.kind is JointKind.HINGED]
    if any(each.second == near.part.ref for each in hinged):
        return (own.lower(),)
    at = near.part.placement.to_unit(working.bounds(near.part.blank.size).centre)
    away = near.part.placement.to_unit(_outside(near.part, working))
    found = []
    for joint in hinged:
        if joint.first != near.part.ref:
            continue
        door = near.unit.part(joint.second)
        leaf = Box.of_boxes(part.bounds() for part in near.unit.parts if part.group == door.group)
        towards = (away[0] - at[0]) * (leaf.centre[0] - at[0])
        if leaf.low[2] <= at[2] <= leaf.high[2] and (towards > 0 or working.entered.axis != 2):
            found.append(door.group.lower())
    return tuple(dict.fromkeys(found))


def _outside(part: Part, working: Bore) -> Vector:
    """A point beside a bore's mouth, outside the piece, part frame."""
    middle = list(working.bounds(part.blank.size).centre)
    surface = working.entered
    middle[surface.axis] = part.blank.size[surface.axis] + 1.0 if surface.at_high else -1.0
    return vector(middle)


def named(found: Iterable[Sequence[str]]) -> str:
    """What lies somewhere in each of equal pieces: past a few, only how many more."""
    refs = list(dict.fromkeys(ref for each in found for ref in each))
    shown, more = refs[:_NAMED], len(refs) - _NAMED
    return ", ".join(shown) + (f" and {more} more" if more > 0 else "")
