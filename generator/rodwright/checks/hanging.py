"""What hangs on the wall: how heavy it is, and whether there is anything to hang it by."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.wording import length_in, weight_in
from rodwright.mass import unit_weight
from rodwright.parts import Role, Unit

LEAST_BACK = 9.0
"""The thinnest back, mm, that is screwed through to hang a unit by (common practice, no source)."""


def hanging(unit: Unit) -> Iterator[Finding]:
    """The caution for a unit that hangs, and a finding where no back is thick enough to hold it."""
    if not unit.hung:
        return
    weighs = weight_in(unit, unit_weight(unit))
    yield Finding(
        Severity.CAUTION,
        "hanging",
        f"it hangs on the wall with {weighs} of its own, and with all that is put into it",
        "Screw it into studs or masonry, with fixings for that wall whose makers give several "
        "times that load; have it held while it is fixed, and follow local codes.",
        figure=unit_weight(unit),
        measure="kg",
        brief=f"Hanging: {weighs} and its contents; fix it into studs or masonry, with help.",
    )
    backs = [part for part in unit.parts if part.role is Role.BACK]
    thickest = max((part.blank.thickness for part in backs), default=0.0)
    if thickest < LEAST_BACK - 1e-6:
        has = f"a back {length_in(unit, thickest)} thick" if backs else "no back"
        yield Finding(
            Severity.WARNING,
            "nothing to hang it by",
            f"it hangs on the wall, and {has} holds no screws that carry it",
            f"Give it a `back` {length_in(unit, LEAST_BACK)} thick at least, or screw a rail to "
            "its top and sides, behind or under the top, and hang it by that.",
            tuple(part.ref for part in backs),
            thickest,
            LEAST_BACK,
        )
