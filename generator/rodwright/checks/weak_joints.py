"""Joints that can be made but are doubtful: deep housings, thin dowels, screws in end grain."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH
from rodwright.trade.fastenings import END_GRAIN_PULL, END_GRAIN_SCREW
from rodwright.unit import Hole, Housing, Joint, JointKind, Part, Surface, Unit

ROUNDING = 1.0
"""How far housings of a third of the thickness may be rounded up to a handy depth, mm."""


def weak_joints(unit: Unit) -> Iterator[Finding]:
    """Findings about joints and what holds them; limits are common practice, no source."""
    for part in unit.parts:
        yield from _deep_housings(unit, part)
    for joint in unit.joints:
        if joint.kind is JointKind.DOWEL:
            yield from _thin_dowels(unit, joint)
        elif joint.kind is JointKind.SCREWED:
            yield from _end_grain(unit, joint)


def _deep_housings(unit: Unit, part: Part) -> Iterator[Finding]:
    """From a third of the thickness a housing is doubtful; from a half on others speak of it."""
    through = part.blank.thickness
    depths = {each.depth for each in part.workings if isinstance(each, Housing)}
    for depth in sorted(depths):
        if through / 3 + ROUNDING < depth <= through / 2 + TOUCH:
            yield Finding(
                Severity.WARNING,
                Rule.DEEP_HOUSING,
                f"housings in {named(part)} are {length_in(unit, depth)} deep, more than a third "
                f"of {length_in(unit, through)}",
                "Keep them to a third of the thickness, which leaves the part stiff.",
                (part.ref,),
                depth,
                through / 3,
            )


def _bored_ends(part: Part) -> list[Hole]:
    """The blind holes in a part's ends and edges."""
    faces = (Surface.FACE, Surface.REVERSE)
    return [
        each
        for each in part.workings
        if isinstance(each, Hole) and each.surface not in faces and each.depth is not None
    ]


def _thin_dowels(unit: Unit, joint: Joint) -> Iterator[Finding]:
    part = unit.part(joint.second)
    through = part.blank.thickness
    thin = min((hole.diameter for hole in _bored_ends(part)), default=through)
    if thin < through / 3 - TOUCH:
        yield Finding(
            Severity.WARNING,
            Rule.THIN_DOWELS,
            f"dowels of {length_in(unit, thin)} in {named(part)} are thinner than a third of its "
            f"{length_in(unit, through)}",
            "Use dowels of a third to half of the edge.",
            (part.ref,),
            thin,
            through / 3,
        )


def _end_grain(unit: Unit, joint: Joint) -> Iterator[Finding]:
    part = unit.part(joint.second)
    ends = [hole for hole in _bored_ends(part) if hole.surface.axis == 0]
    if part.blank.stock.kind == "board" and ends:
        yield Finding(
            Severity.WARNING,
            Rule.SCREWS_IN_END_GRAIN,
            f"screws hold badly in the end grain of {named(part)}",
            "House the end as well, or choose dowels, loose tenons or pocket screws.",
            (part.ref,),
            END_GRAIN_PULL,
            1.0,
            "",
            f"share of what side grain holds: {END_GRAIN_SCREW}",
        )
