"""What hangs on the wall: how heavy it is, and whether there is anything to hang it by."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named, stress_in, weight_in
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH
from rodwright.mass import unit_weight
from rodwright.strength.hanging import RAIL, measured, rail
from rodwright.trade.screws import WOOD_SCREW
from rodwright.trade.wall_fixings import LEAST_BACK
from rodwright.unit import CASE, JointKind, Part, Role, Unit

LEAST_SCREWS = 4
"""The fewest screws that tie a back to the carcass it carries, one near each corner (common
practice, no source)."""
_CASE_STOCK = 18.0
"""A carcass of this thickness, mm, has room for such a rebate."""
_HOLDS = ("holds", "hold")


def hanging(unit: Unit) -> Iterator[Finding]:
    """The caution for a unit that hangs, and a finding where no back is thick enough to hold it,
    or nothing ties the back to the case."""
    if not unit.hung:
        return
    weighs = weight_in(unit, unit_weight(unit))
    yield Finding(
        Severity.CAUTION,
        Rule.HANGING,
        f"it hangs on the wall with {weighs} of its own, and with all that is put into it",
        "Screw it into studs or masonry, with fixings for that wall whose makers give several "
        "times that load; have it held while it is fixed, and follow local codes.",
        figure=unit_weight(unit),
        measure="kg",
        brief=f"Hanging: {weighs} and its contents; fix it into studs or masonry, with help.",
    )
    backs = [part for part in unit.parts if part.role is Role.BACK]
    thickest = max((part.blank.thickness for part in backs), default=0.0)
    if thickest < LEAST_BACK - TOUCH:
        has = f"a back {length_in(unit, thickest)} thick" if backs else "no back"
        yield Finding(
            Severity.ERROR,
            Rule.NOTHING_TO_HANG_BY,
            f"it hangs on the wall, and {has} holds no screws that carry it",
            f"Give it a `back` {length_in(unit, LEAST_BACK)} thick at least, or {_rail(unit)}.",
            tuple(part.ref for part in backs),
            thickest,
            LEAST_BACK,
        )
        return
    for back in backs:
        if back.blank.thickness >= LEAST_BACK - TOUCH:
            yield from _tied(unit, back)


def _rail(unit: Unit) -> str:
    """A rail that it could hang by, and how far that would be used."""
    high, thick, wood = RAIL
    result = rail(unit, measured(unit))
    size = f"{length_in(unit, high)} x {length_in(unit, thick)}"
    said = (
        f"screw a rail of {wood}, {size}, to its top and sides, behind or under the top, and hang "
        f"it by that: it is bent by {stress_in(unit, result.figure or 0.0)}"
    )
    return f"{said}, and {stress_in(unit, result.limit)} is allowed" if result.limit else said


def _tied(unit: Unit, back: Part) -> Iterator[Finding]:
    """What ties a back to the case that hangs by it: screws, or the glue of its grooves."""
    joints = [
        joint
        for joint in unit.joints
        if joint.second == back.ref and unit.part(joint.first).role in CASE
    ]
    screws = sum(
        fixing.count for joint in joints for fixing in joint.fixings if fixing.name == WOOD_SCREW
    )
    glued = back.blank.stock.kind == "sheet" and all(
        joint.kind is JointKind.GROOVE for joint in joints
    )
    if joints and glued:
        yield Finding(
            Severity.NOTE,
            Rule.BACK_TO_BE_GLUED,
            f"it hangs by {named(back)}, which only its grooves hold",
            "Glue it into them all round.",
            (back.ref,),
            measure="",
        )
    elif screws < LEAST_SCREWS:
        has = "no screw" if not screws else "1 screw" if screws == 1 else f"only {screws} screws"
        yield Finding(
            Severity.WARNING,
            Rule.NOTHING_TO_HANG_BY,
            f"it hangs by {named(back)}, and {has} {_HOLDS[screws > 1]} that to the carcass",
            "Screw a rail to its top and sides, behind or under the top, and hang it by that; or "
            "give `back` a sheet as `stock`, and a rebate that takes screws: `depth` as it is "
            f"without being said, in a carcass {length_in(unit, _CASE_STOCK)} thick at least.",
            (back.ref,),
            float(screws),
            float(LEAST_SCREWS),
            "screws",
        )
