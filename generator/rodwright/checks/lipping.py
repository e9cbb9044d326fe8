"""Do lippings meet the flat of the face frame, behind its eased edge?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.wording import length_in, named
from rodwright.parts import Easing, JointKind, Part, Role, Surface, Unit

_ROUNDING = 1e-6


def lippings(unit: Unit) -> Iterator[Finding]:
    """Lippings that butt against a frame member in front of where its edge begins to round.

    Common practice, no source: a lipping that meets an eased frame edge is thinner than the
    frame by at least the easing radius, or a gap shows.
    """
    for joint in unit.joints:
        member, strip = unit.part(joint.first), unit.part(joint.second)
        if strip.role is not Role.LIPPING or joint.kind is not JointKind.BUTT:
            continue
        radius = _eased(member)
        if radius == 0:
            continue
        flat_ends = member.bounds().low[1] + radius
        reach = flat_ends - strip.bounds().low[1]
        if reach > _ROUNDING:
            most = strip.blank.thickness - reach
            yield Finding(
                Severity.WARNING,
                "lipping meets an eased edge",
                f"{named(strip)} reaches {length_in(unit, reach)} into the rounding of "
                f"{named(member)}: a gap will show",
                f"Make the lipping at most {length_in(unit, most)} thick, or ease the frame less.",
                (strip.ref, member.ref),
                reach,
                0.0,
                place=joint.at,
            )


def _eased(member: Part) -> float:
    """Largest radius to which a member's front edges are eased, mm; 0 for sharp ones."""
    return max(
        (
            working.radius
            for working in member.workings
            if isinstance(working, Easing) and Surface.FACE in (working.surface, working.edge)
        ),
        default=0.0,
    )
