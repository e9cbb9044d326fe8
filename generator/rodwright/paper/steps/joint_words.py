"""The words of joints: which of two parts takes the other, and how."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from rodwright.paper.steps.words import refs_said
from rodwright.unit import Joint, JointKind

_IN = {
    JointKind.HOUSING: "in a housing of",
    JointKind.REBATE: "in a rebate of",
    JointKind.GROOVE: "in a groove of",
    JointKind.MITRE: "mitred to",
    JointKind.FACE_GLUED: "glued face to face with",
    JointKind.EDGE_GLUED: "glued to the edge of",
    JointKind.RESTING: "rests on pins in",
    JointKind.SCREWED: "screwed to",
    JointKind.PINNED: "pinned to",
    JointKind.TONGUE: "tongue and groove with",
    JointKind.DOWEL: "dowelled to",
    JointKind.BISCUIT: "biscuits into",
    JointKind.LOOSE_TENON: "loose tenons into",
    JointKind.POCKET_SCREW: "pocket screws into",
    JointKind.KNOCK_DOWN: "knock-down fittings into",
    JointKind.HINGED: "hinges on",
    JointKind.SLIDING: "slides on",
    JointKind.FLOATING: "floats, without glue, in",
    JointKind.BUTTONED: "held so that it can move on",
    JointKind.CLIPPED: "clipped to",
    JointKind.STANDING: "carries",
    JointKind.BUTT: "against",
}
"""Of a piece that comes to the first part of its joints."""

_TAKES = {
    JointKind.HOUSING: ("goes into its housing", "go into its housings"),
    JointKind.REBATE: ("goes into its rebate", "go into its rebates"),
    JointKind.GROOVE: ("goes into its groove", "go into its grooves"),
    JointKind.EDGE_GLUED: ("is glued to its edge", "are glued to its edges"),
    JointKind.RESTING: ("rests on pins in it", "rest on pins in it"),
    JointKind.HINGED: ("hinges on it", "hinge on it"),
    JointKind.SLIDING: ("slides on it", "slide on it"),
    JointKind.FLOATING: ("floats in it, without glue", "float in it, without glue"),
    JointKind.BUTTONED: ("is held on it so that it can move", "are held on it so that they move"),
    JointKind.STANDING: ("carries it", "carry it"),
}
"""Of what a piece takes that is the first part of its joints, where that is told otherwise: of one,
and of several."""


def joints_said(joints: Sequence[Joint], refs: Iterable[str]) -> list[str]:
    """What pieces (``refs``) meet, and how: which goes into which.

    Where both parts of a joint are among them, as in a frame that is drawn together at once, each
    is named with what it goes to.
    """
    own = set(refs)
    comes: dict[JointKind, list[str]] = {}
    takes: dict[JointKind, list[str]] = {}
    among: dict[JointKind, dict[str, list[str]]] = {}
    for joint in joints:
        if {joint.first, joint.second} <= own:
            among.setdefault(joint.kind, {}).setdefault(joint.second, []).append(joint.first)
        elif joint.second in own or joint.kind not in _TAKES:
            other = joint.first if joint.second in own else joint.second
            comes.setdefault(joint.kind, []).append(other)
        else:
            takes.setdefault(joint.kind, []).append(joint.second)
    return [
        *(f"{_IN[kind]} {refs_said(others)}" for kind, others in comes.items()),
        *(
            f"{refs_said(others)} {_TAKES[kind][len(set(others)) > 1]}"
            for kind, others in takes.items()
        ),
        *(text for kind, pairs in among.items() for text in _among(kind, pairs)),
    ]


def _among(kind: JointKind, pairs: dict[str, list[str]]) -> list[str]:
    """Pieces that meet each other, those together that go to the same."""
    rows: dict[tuple[str, ...], list[str]] = {}
    for second, firsts in pairs.items():
        rows.setdefault(tuple(sorted(set(firsts))), []).append(second)
    return [
        f"{refs_said(seconds)} {_IN[kind]} {refs_said(firsts)}" for firsts, seconds in rows.items()
    ]
