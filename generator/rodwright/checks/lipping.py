"""Do lippings meet the flat of the face frame, behind its eased edge?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH, Vector
from rodwright.unit import FACE_FRAME, Easing, JointKind, Part, Role, Surface, Unit

_EDGES = tuple(edge for edge in Surface if edge.axis != Surface.FACE.axis)


def lippings(unit: Unit) -> Iterator[Finding]:
    """Lippings that butt against a frame member in front of where its edge begins to round.

    Common practice, no source: a lipping that meets an eased frame edge is thinner than the
    frame by at least the easing radius, or a gap shows.
    """
    for joint in unit.joints:
        if joint.kind not in (JointKind.BUTT, JointKind.EDGE_GLUED):
            continue
        member, strip = unit.part(joint.first), unit.part(joint.second)
        if strip.role is not Role.LIPPING:
            member, strip = strip, member
        if strip.role is not Role.LIPPING or member.role not in FACE_FRAME:
            continue
        radius = _eased(member, strip)
        if radius == 0:
            continue
        flat_ends = member.bounds().low[1] + radius
        reach = flat_ends - strip.bounds().low[1]
        if reach > TOUCH:
            most = strip.blank.thickness - reach
            yield Finding(
                Severity.WARNING,
                Rule.LIPPING_AT_EASED_EDGE,
                f"{named(strip)} reaches {length_in(unit, reach)} into the rounding of "
                f"{named(member)}: a gap will show",
                f"Make the lipping at most {length_in(unit, most)} thick, or ease the frame less.",
                (strip.ref, member.ref),
                reach,
                0.0,
                place=joint.at,
            )


def _eased(member: Part, strip: Part) -> float:
    """Largest radius to which the member's front arris beside the strip is eased, mm; 0 for a
    sharp one."""
    edges = [edge for edge in _EDGES if _beside(member, edge, strip.bounds().centre)]
    front = Surface.FACE if member.placement.thickness[1] < 0 else Surface.REVERSE
    return max(
        (
            working.radius
            for working in member.workings
            if isinstance(working, Easing)
            and front in (working.surface, working.edge)
            and any(edge in (working.surface, working.edge) for edge in edges)
        ),
        default=0.0,
    )


def _beside(member: Part, edge: Surface, point: Vector) -> bool:
    """Whether a point (unit frame) lies beyond one of a part's edges."""
    at = member.placement.to_part(point)[edge.axis]
    return at > member.blank.size[edge.axis] if edge.at_high else at < 0
