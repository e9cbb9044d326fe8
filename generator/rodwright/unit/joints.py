"""How parts meet, what holds them, and how near they may come."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum
from typing import Literal

from rodwright.geometry.vectors import Vector


class JointKind(StrEnum):
    """How two parts meet."""

    BUTT = "butt"
    HOUSING = "housing"
    REBATE = "rebate"
    GROOVE = "groove"
    MITRE = "mitre"
    FACE_GLUED = "glued face to face"
    EDGE_GLUED = "glued to the edge"
    RESTING = "resting on pins"
    SCREWED = "butted and screwed"
    PINNED = "butted and pinned"
    TONGUE = "tongue and groove"
    DOWEL = "dowel"
    BISCUIT = "biscuit"
    LOOSE_TENON = "loose tenon"
    POCKET_SCREW = "pocket screw"
    KNOCK_DOWN = "knock-down fitting"
    HINGED = "hinged"
    SLIDING = "on slides"
    FLOATING = "floating in a groove"
    BUTTONED = "held so that it can move"
    CLIPPED = "clipped on"
    STANDING = "standing on it"

    @property
    def meets(self) -> bool:
        """Whether parts joined so must touch."""
        return _KINDS[self][0] == "meets"

    @property
    def free(self) -> bool:
        """Whether it leaves wood play across its grain."""
        return _KINDS[self][1] == "free"


_KINDS: dict[JointKind, tuple[Literal["meets", "apart"], Literal["rigid", "free"]]] = {
    JointKind.BUTT: ("meets", "rigid"),
    JointKind.HOUSING: ("meets", "rigid"),
    JointKind.REBATE: ("meets", "rigid"),
    JointKind.GROOVE: ("meets", "rigid"),
    JointKind.MITRE: ("meets", "rigid"),
    JointKind.FACE_GLUED: ("meets", "rigid"),
    JointKind.EDGE_GLUED: ("meets", "rigid"),
    JointKind.RESTING: ("apart", "free"),
    JointKind.SCREWED: ("meets", "rigid"),
    JointKind.PINNED: ("meets", "rigid"),
    JointKind.TONGUE: ("meets", "rigid"),
    JointKind.DOWEL: ("meets", "rigid"),
    JointKind.BISCUIT: ("meets", "rigid"),
    JointKind.LOOSE_TENON: ("meets", "rigid"),
    JointKind.POCKET_SCREW: ("meets", "rigid"),
    JointKind.KNOCK_DOWN: ("meets", "rigid"),
    JointKind.HINGED: ("apart", "free"),
    JointKind.SLIDING: ("apart", "free"),
    JointKind.FLOATING: ("apart", "free"),
    JointKind.BUTTONED: ("meets", "free"),
    JointKind.CLIPPED: ("apart", "free"),
    JointKind.STANDING: ("meets", "free"),
}


@dataclass(frozen=True, slots=True)
class Fixing:
    """Bought-in pieces that hold a joint: what, how many, and of what size.

    ``pilot`` says in words what is drilled for each (``pilot 2.5 mm, clearance 4.5 mm``), ``on``
    which pieces it goes on, where that isn't just the second part of its joint.  ``diameter``,
    ``length`` and ``width`` are what ``size`` says, in mm, as far as it has them; of what isn't
    round the diameter is its thickness, of slides at a drawer's sides the width is their height.
    """

    name: str
    count: int
    size: str = ""
    pilot: str = ""
    on: str = ""
    diameter: float | None = field(default=None, compare=False)
    length: float | None = field(default=None, compare=False)
    width: float | None = field(default=None, compare=False)


@dataclass(frozen=True, slots=True)
class Joint:
    """Two parts that meet.

    ``first`` carries the joint (it is housed, rebated, grooved, or simply stays put),
    ``second`` comes to it; both are refs.  ``at`` is the middle of the meeting, unit
    frame.
    """

    kind: JointKind
    first: str
    second: str
    at: Vector
    fixings: tuple[Fixing, ...] = ()


@dataclass(frozen=True, slots=True)
class Clearance:
    """Two parts (refs) that must stay at least ``least`` mm apart."""

    first: str
    second: str
    least: float
