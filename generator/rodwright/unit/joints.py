"""How parts meet, what holds them, and how near they may come."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

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
        return self not in (
            JointKind.RESTING, JointKind.HINGED, JointKind.SLIDING, JointKind.FLOATING,
            JointKind.CLIPPED,
        )  # fmt: skip


@dataclass(frozen=True, slots=True)
class Fixing:
    """Bought-in pieces that hold a joint: what, how many, and of what size.

    ``pilot`` says in words what is drilled for each (``pilot 2.5 mm, clearance 4.5 mm``), ``on``
    which pieces it goes on, where that isn't just the second part of its joint.
    """

    name: str
    count: int
    size: str = ""
    pilot: str = ""
    on: str = ""


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
