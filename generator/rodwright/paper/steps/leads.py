"""What is said of a stage before its first step, and after its last."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from rodwright.geometry import dot
from rodwright.making.glue_lines import is_glued
from rodwright.making.preferences import BACK, CARCASS, DOORS, DRAWERS, FRAME, LOOSE, SURROUND
from rodwright.making.squareness import diagonals
from rodwright.making.stages import Making, Stage
from rodwright.making.steps import Step
from rodwright.paper.steps.words import (
    clamps_said,
    diagonals_said,
    glue_said,
    lie_said,
    refs_said,
    weight_said,
)
from rodwright.unit import Joint, JointKind, Part, Role, Unit
from rodwright.unit.shop_part import shop_part

_HUNG = (DRAWERS, DOORS, LOOSE)
"""What goes into a unit that stands."""
_LOW = 100.0
"""What stands up no higher than this (mm) lies flat on a panel."""
_ALL = 999
"""More refs than any unit has."""
_TRIM, _FITTED = "trim it to ", " when it is fitted"
"""How notes of the parts list begin and end that say what a member is trimmed to."""
_AFTER = ("glue ", "trim it", "bores in")
"""How notes of the parts list begin that wait until after a glue-up."""


def lead_said(unit: Unit, stage: Stage) -> Iterator[tuple[str, str]]:
    """What is to be known before the first step of a stage."""
    measure, shown = unit.display_unit, stage.makings[0]
    if len(stage.makings) > 1:
        yield "Alike", _alike_said(unit, stage)
    steps = shown.steps
    if _stands(stage):
        yield "Stands", "Stand it up where it is to stand, fixed so that it can't fall over."
    else:
        ways = [way for step in steps for way in (step.towards, *step.drawn)]
        yield "Lies", lie_said(ways, _flat_on(unit, steps))
    yield "Slides", _slides_said(unit, stage)
    if stage.number == FRAME:
        yield "Trim", _trimmed_said(unit, stage)
    largest = max(stage.makings, key=lambda each: each.glue.metres if each.glue else 0.0)
    if largest.glue is None:
        yield "Glue", "none"
    else:
        inside = stage.number == CARCASS and stage.turn == 1 and stage.name in ("", "carcass")
        if inside and len(shown.refs) > 2:
            yield (
                "First",
                "Sand the faces that will lie inside, and finish them now (see Finishing): corners "
                "can't be got at later. Keep what is glued bare.",
            )
        yield (
            "Dry fit",
            "First all of this stage without glue, every clamp set; then take it apart, and glue.",
        )
        yield "Glue", glue_said(largest.glue, measure)
        yield "Clamps", clamps_said(largest.glue.clamps, measure)
        yield "No glue", _dry(unit, shown)
        yield from _square(unit, stage, shown)
    if stage.number == BACK and not stage.name.startswith("drawer"):
        yield "Wait", "Measure the carcass when it is dry and true; only then cut the back to size."
    if not _stands(stage) and len(shown.refs) > 1:
        yield "Weighs", f"{weight_said(unit, shown.refs)}, when this stage is done."


def begun(stage: Stage) -> bool:
    """Whether what it makes was begun in a stage before."""
    return bool(stage.makings[0].steps[0].standing)


def _stands(stage: Stage) -> bool:
    """Whether the work stands up meanwhile: on its back, shelves fall off their pins, and drawers
    and doors hang otherwise than in use."""
    if not stage.name:
        return stage.number in (SURROUND, *_HUNG)
    return stage.number in _HUNG and begun(stage) and not stage.glued


def on_slides(joint: Joint) -> bool:
    """Whether a drawer runs there on bought slides: wooden runners need no screws of their own."""
    return joint.kind is JointKind.SLIDING and bool(joint.fixings)


def _slides_said(unit: Unit, stage: Stage) -> str:
    """Where slides are screwed on while one can still reach; no sub-assembly that comes made."""
    own = {ref for step in stage.steps if not step.brings for ref in step.refs}
    carriers = [joint.first for joint in unit.joints if on_slides(joint) and joint.first in own]
    # A joint names the first of several packers, all of which carry.
    names = {unit.part(ref).name for ref in carriers if unit.part(ref).role is Role.PACKER}
    carriers += [ref for ref in own if unit.part(ref).name in names]
    if not carriers:
        return ""
    return (
        f"Screw the slides' members for the carcass to {refs_said(carriers)} before the work is "
        "closed: later a driver hardly gets in."
    )


def _trimmed_said(unit: Unit, stage: Stage) -> str:
    """What members of a frame are trimmed to: later no saw gets at their ends."""
    found = _notes(unit, (ref for making in stage.makings for ref in _own(making)))
    rows = [
        f"{refs_said(refs)} to {note.removeprefix(_TRIM).replace(_FITTED, '')}"
        for note, refs in found.items()
        if note.startswith(_TRIM)
    ]
    if not rows:
        return ""
    return (
        f"Before anything is glued, when the place is measured: {'; '.join(rows)}, mitres and all. "
        "Glued up, no saw gets at their ends."
    )


def _flat_on(unit: Unit, steps: Sequence[Step]) -> Part | None:
    """The panel that a stage begins with, if all that comes lies flat on it."""
    first, *others = steps
    if first.standing or len(first.refs) > 1:
        return None
    lead = unit.part(first.refs[0])
    for step in others:
        axis = max(range(3), key=lambda each: abs(step.towards[each]))
        high = max(unit.part(ref).bounds().size[axis] for ref in step.refs)
        if abs(dot(lead.placement.thickness, step.towards)) < 1 - 1e-6 or high > _LOW:
            return None
    return lead if others else None


def _dry(unit: Unit, making: Making) -> str:
    """What goes into grooves and rebates of a glue-up without glue."""
    joints = [joint for step in making.steps for joint in step.joints]
    fits_in = (JointKind.GROOVE, JointKind.REBATE, JointKind.FLOATING)
    dry = [joint.second for joint in joints if joint.kind in fits_in and not is_glued(unit, joint)]
    if not dry:
        return ""
    return (
        f"{refs_said(dry)}: loose in the grooves, wax along the edges, so that no glue gets there."
    )


def _square(unit: Unit, stage: Stage, making: Making) -> Iterator[tuple[str, str]]:
    found = diagonals(unit, making.refs)
    if found is not None and (found.equal or stage.turn == stage.turns):
        yield "Square", diagonals_said(found, unit.display_unit)


def _alike_said(unit: Unit, stage: Stage) -> str:
    """What is made alike: of what is equal, what may be taken for what, else each by itself."""
    if all(making.name.islower() for making in stage.makings):
        return ", ".join(making.name for making in stage.makings)
    groups: dict[object, list[Making]] = {}
    for making in stage.makings:
        blanks = tuple(unit.part(ref).shape for ref in making.refs)
        groups.setdefault(blanks, []).append(making)
    return "; ".join(
        " with ".join(refs_said(rank, _ALL) for rank in zip(*refs, strict=True))
        for refs in ([each.refs for each in makings] for makings in groups.values())
    )


def _own(making: Making) -> list[str]:
    return [ref for step in making.steps for ref in step.refs]


def after_said(unit: Unit, stage: Stage) -> list[str]:
    """What waits until the glue has set, as the parts list has it."""
    joints = [joint for step in stage.steps for joint in step.joints]
    built_up = [
        ref
        for joint in joints
        if joint.kind in (JointKind.FACE_GLUED, JointKind.EDGE_GLUED)
        for ref in (joint.first, joint.second)
        if joint.kind is JointKind.FACE_GLUED or ref == joint.second
    ]
    found = _notes(unit, built_up)
    return [f"{refs_said(refs)}: {note}." for note, refs in found.items()]


def _notes(unit: Unit, refs: Iterable[str]) -> dict[str, list[str]]:
    """What the parts list says of parts that aren't cut to size yet, and of which."""
    found: dict[str, list[str]] = {}
    for ref in dict.fromkeys(refs):
        for note in shop_part((unit.part(ref),), "cut", unit.display_unit).notes:
            if note.startswith(_AFTER):
                found.setdefault(note, []).append(ref)
    return found
