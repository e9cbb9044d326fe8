"""What nothing holds: parts that only butt, seams over too little wood."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.trade.screws import PIN_DIAMETERS, PIN_EDGE
from rodwright.unit import FACE_FRAME, PANELS, Joint, JointKind, Part, Role, Unit

LEAST_SEAM = 4 * PIN_EDGE * min(PIN_DIAMETERS)
"""The least width of a divider, mm, that two panels can be pinned to: three diameters of a 1 mm pin
to either edge (EN 1995-1-1, table 8.2, from memory)."""


def holding(unit: Unit) -> Iterator[Finding]:
    """Findings about parts that no joint holds."""
    yield from _butted(unit)
    yield from _frames(unit)
    yield from _cornices(unit)
    yield from _seams(unit)
    yield from _backs(unit)


def _in_carcass(unit: Unit, joint: Joint) -> bool:
    return all(unit.part(ref).role in PANELS for ref in (joint.first, joint.second))


def _butted(unit: Unit) -> Iterator[Finding]:
    """Parts of the carcass that only butt against what carries them."""
    held: dict[str, bool] = {}
    for joint in unit.joints:
        if joint.kind is JointKind.FACE_GLUED:
            held[joint.second] = True
        elif joint.kind is not JointKind.RESTING and _in_carcass(unit, joint):
            holds = joint.kind is not JointKind.BUTT or bool(joint.fixings)
            held[joint.second] = held.get(joint.second, False) or holds
    loose = sorted(
        (ref for ref, holds in held.items() if not holds),
        key=lambda ref: PANELS.index(unit.part(ref).role),
    )
    if loose:
        yield Finding(
            Severity.WARNING,
            Rule.NOTHING_HOLDS_IT,
            f"{named(unit.part(loose[0]))} is butted: no screw holds it, and nothing marks its "
            f"place",
            "Choose `housed`, `screwed` or `dowelled` (`carcass.corners`, or its own `ends`); or "
            "see to it yourself with nails, cleats or brackets.",
            (loose[0],),
            measure="",
        ).likewise(loose)


def _frames(unit: Unit) -> Iterator[Finding]:
    """Members of a face frame that only glue holds together."""
    glued = [
        joint
        for joint in unit.joints
        if not joint.fixings
        and all(unit.part(ref).role in FACE_FRAME for ref in (joint.first, joint.second))
    ]
    if not glued:
        return
    first = glued[0]
    refs = (ref for joint in glued for ref in (joint.first, joint.second))
    yield Finding(
        Severity.WARNING,
        Rule.FRAME_ONLY_GLUED,
        f"only glue on end grain holds {named(unit.part(first.first))} and "
        f"{named(unit.part(first.second))} together",
        "Choose a `face_frame.joint` (dowels, biscuits, loose_tenons), with members wide "
        "enough for it: 24 mm, or 1 in, for the thinnest dowels.",
        (first.first, first.second),
        measure="",
    ).likewise(refs)


def _cornices(unit: Unit) -> Iterator[Finding]:
    """Boards of a cornice that nothing but their mitres holds."""
    boards = [part for part in unit.parts if part.role is Role.CORNICE]
    held = {
        ref
        for joint in unit.joints
        if joint.fixings and joint.kind is not JointKind.MITRE
        for ref in (joint.first, joint.second)
    }
    for part in boards:
        if part.ref not in held:
            yield Finding(
                Severity.WARNING,
                Rule.NOTHING_HOLDS_IT,
                f"{named(part)} lies on too little to be screwed or to take biscuits",
                "Give the carcass a top (`carcass.top`), make `cornice.projection` smaller, or "
                "write `place: lapped`.",
                (part.ref,),
                measure="",
            )


def _seams(unit: Unit) -> Iterator[Finding]:
    """Panels of a back that meet over a divider too thin to be pinned to."""
    behind: dict[str, list[str]] = {}
    for joint in unit.joints:
        one, other = unit.part(joint.first), unit.part(joint.second)
        if (one.role, other.role, joint.kind) == (Role.DIVIDER, Role.BACK, JointKind.BUTT):
            behind.setdefault(one.ref, []).append(other.ref)
    for ref, panels in behind.items():
        if len(panels) < 2 or not _side_by_side([unit.part(each) for each in panels]):
            continue
        divider = unit.part(ref)
        thick = divider.blank.thickness
        if thick >= LEAST_SEAM:  # solid wood that is left to move there
            continue
        yield Finding(
            Severity.WARNING,
            Rule.BACK_SEAM_UNFIXED,
            f"two panels of the back meet behind {named(divider)}, and its "
            f"{length_in(unit, thick)} are too thin to fix both to",
            f"Make the dividers of stock {length_in(unit, LEAST_SEAM)} thick at least "
            f"(`dividers.stock`), or leave `back.split` out.",
            (ref, *panels),
            thick,
            LEAST_SEAM,
            source="EN 1995-1-1, table 8.2 (from memory): 3 diameters from pin to edge",
        )


def _backs(unit: Unit) -> Iterator[Finding]:
    """Panels of a back that lie in rebates and that nothing fixes there."""
    for part in (each for each in unit.parts if each.role is Role.BACK):
        joints = [joint for joint in unit.joints if joint.second == part.ref]
        let_in = any(joint.kind is JointKind.REBATE for joint in joints)
        if let_in and not any(joint.fixings for joint in joints):
            yield Finding(
                Severity.WARNING,
                Rule.NOTHING_HOLDS_IT,
                f"{named(part)} lies in its rebates on too little wood for pins",
                "Give `back` more `depth` or a thinner `stock`, or write `fixing: applied`.",
                (part.ref,),
                measure="",
            )


def _side_by_side(panels: list[Part]) -> bool:
    boxes = sorted((part.bounds() for part in panels), key=lambda box: box.low[0])
    return boxes[0].high[0] < boxes[-1].high[0]
