"""The pages of the steps at the bench."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from rodwright.assembly.glue_lines import is_glued
from rodwright.assembly.preferences import (
    APPLIED,
    BACK,
    BASE,
    CARCASS,
    DOORS,
    DRAWERS,
    FRAME,
    FRONT,
    LOOSE,
    SURROUND,
    UNDER,
)
from rodwright.assembly.squareness import diagonals
from rodwright.assembly.stages import Making, Stage
from rodwright.assembly.steps import Order, Step
from rodwright.geometry import dot
from rodwright.handover.lists import common_name
from rodwright.mass import weight
from rodwright.paper.sections import Section
from rodwright.paper.steps.pictures import draw_move, scene_of
from rodwright.paper.steps.plan import Move, PlannedStage, plan_of
from rodwright.paper.steps.words import (
    clamps_said,
    diagonals_said,
    fixings_said,
    general_said,
    glue_said,
    joints_said,
    lie_said,
    refs_said,
    way_said,
    weight_said,
)
from rodwright.pictures.svg import to_svg
from rodwright.unit import JointKind, Part, Unit
from rodwright.unit.shop_part import shop_part

_OF_UNIT = {
    BASE: "Base",
    CARCASS: "Carcass",
    APPLIED: "What is fixed to the carcass",
    BACK: "Back",
    UNDER: "What it stands on",
    FRAME: "Face frame",
    FRONT: "Fronts",
    SURROUND: "What is fitted round it",
    DRAWERS: "Drawers",
    DOORS: "Doors",
    LOOSE: "Loose shelves",
}
_PART = {APPLIED: "what is fixed to it", BACK: "back", FRONT: "front"}
_STANDING = (SURROUND, DRAWERS, DOORS, LOOSE)
"""What goes on or into a unit that stands."""
_LOW = 100.0
"""What stands up no higher than this (mm) lies flat on a panel."""
_ALL = 999
"""More refs than any unit has."""
_AFTER = ("glue ", "trim it", "bores in")
"""How notes of the parts list begin that wait until after a glue-up."""


def steps_section(unit: Unit, order: Order) -> Section:
    """Every step at the bench in its stage, with a picture each."""
    plan = plan_of(unit, order)
    stages = [(each, stage_data(unit, each)) for each in plan.bench]
    files = {name: content for each in plan.bench for name, content in pictures(unit, each)}
    alone = len(unit.parts) == 1 and not plan.rest
    data = {
        "one_board": _one_board(unit) if alone else "",
        "stages": [] if alone else [data for _, data in stages],
        "general": general_said() if any(each.stage.glued for each in plan.bench) else [],
        "rest": fixings_said(plan.rest),
        "on_site": bool(plan.site),
    }
    return Section("steps", "Putting it together", data, {} if alone else files)


def _one_board(unit: Unit) -> str:
    part = unit.parts[0]
    return (
        f"The unit is one board, {part.ref} {part.name}: there is nothing to put together. Make it "
        "by its sheet, sand it, finish it."
    )


def stage_data(unit: Unit, planned: PlannedStage) -> dict[str, Any]:
    """A stage for its template."""
    stage = planned.stage
    return {
        "title": title_of(stage),
        "lead": [{"label": label, "text": text} for label, text in _lead(unit, stage) if text],
        "moves": [move_data(unit, move, stage) for move in planned.moves],
        "after": _after(unit, stage),
    }


def pictures(unit: Unit, planned: PlannedStage) -> Iterator[tuple[str, bytes]]:
    """A picture for every move, by its file's name."""
    scene = scene_of(unit, [(*move.begun, *move.steps) for move in planned.moves])
    for move in planned.moves:
        title = f"Step {move.number}: {refs_said(move.refs)}"
        drawing = draw_move(scene, move.steps, move.begun, title)
        yield picture_name(move), to_svg(drawing).encode()


def picture_name(move: Move) -> str:
    """The name of the file with a move's picture."""
    return f"steps/step-{move.number:03d}.svg"


def title_of(stage: Stage) -> str:
    """What a stage makes, and in which of how many glue-ups."""
    name = stage.name[:1].upper() + stage.name[1:] if stage.name else _OF_UNIT[stage.number]
    if stage.name and stage.number in _PART and not stage.glued and _begun(stage):
        drawer = stage.number == BACK and stage.name.startswith("drawer")
        name = f"{name}: {'bottom' if drawer else _PART[stage.number]}"
    if len(stage.makings) > 1:
        name = f"{name}, and {len(stage.makings) - 1} more alike"
    if stage.turns > 1:
        return f"{name}, glue-up {stage.turn} of {stage.turns}"
    return f"{name}, glued up" if stage.glued else name


def _begun(stage: Stage) -> bool:
    """Whether what it makes was begun in a stage before."""
    return bool(stage.makings[0].steps[0].standing)


def _lead(unit: Unit, stage: Stage) -> Iterator[tuple[str, str]]:
    """What is to be known before the first step of a stage."""
    measure, shown = unit.display_unit, stage.makings[0]
    if len(stage.makings) > 1:
        yield "Alike", _alike_said(unit, stage)
    steps = shown.steps
    if stage.number in _STANDING and not stage.name:
        yield "Lies", "It stands as it stands in use, and can't fall over."
    else:
        yield "Lies", lie_said([step.towards for step in steps], _flat_on(unit, steps))
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
    if stage.number in _STANDING and not stage.name:
        return
    if len(shown.refs) > 1:
        yield "Weighs", f"{weight_said(unit, shown.refs)}, when this stage is done."


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


def move_data(unit: Unit, move: Move, stage: Stage) -> dict[str, Any]:
    """A move for its template."""
    first = move.steps[0]
    joints = joints_said([j for step in move.steps for j in step.joints], move.refs)
    hardware = fixings_said(move.fixings)
    off = len(stage.makings)
    travel = max(step.travel for step in move.steps)
    heaviest = max(move.steps, key=lambda step: sum(weight(unit.part(r)) for r in step.refs))
    heavy = weight_said(unit, heaviest.refs)
    return {
        "number": move.number,
        "pieces": _pieces(unit, move.steps),
        "begin": f"Begin with {_pieces(unit, move.begun)}." if move.begun else "",
        "way": _way(unit, move, travel),
        "joints": joints,
        "hardware": hardware,
        "hardware_for": f"for all {off}" if off > 1 and hardware else "",
        "weight": heavy if len(move.steps) == 1 else f"Each up to {heavy}",
        "trouble": ""
        if first.free
        else f"No straight way in was found: {first.why}. Try it dry; it may have to be sprung in, "
        "or go in together with those.",
        "picture": picture_name(move),
    }


def _way(unit: Unit, move: Move, travel: float) -> str:
    """Which way it comes, all at once or with which doors open."""
    first = move.steps[0]
    if first.drawn:
        return "Draw all of it together at once, a little at each joint in turn"
    said = way_said(first.towards, travel, unit.display_unit)
    opened = dict.fromkeys(ref for step in move.steps for ref in step.opened)
    return f"{said}; {refs_said(opened)} open meanwhile" if opened else said


def _pieces(unit: Unit, steps: Sequence[Step]) -> str:
    """What comes: refs, and what they are called."""
    if len(steps) == 1 and steps[0].brings:
        return f"{steps[0].brings} ({refs_said(steps[0].refs, 5)})"
    if all(step.brings.islower() for step in steps):
        return f"{', '.join(step.brings for step in steps)}: {len(steps)} alike"
    if len(steps) == 1 and len(steps[0].refs) > 1:
        return f"{refs_said(steps[0].refs)}, all together"
    name = common_name([unit.part(step.refs[0]).name for step in steps])
    refs = refs_said(step.refs[0] for step in steps)
    more = f", {len(steps)} alike" if len(steps) > 1 else ""
    return f"{refs} {name}".rstrip() + more


def _after(unit: Unit, stage: Stage) -> list[str]:
    """What waits until the glue has set, as the parts list has it."""
    found: dict[str, list[str]] = {}
    joints = [joint for step in stage.steps for joint in step.joints]
    own = {ref for making in stage.makings for ref in _own(making)}
    built_up = [
        ref
        for joint in joints
        if joint.kind in (JointKind.FACE_GLUED, JointKind.EDGE_GLUED)
        for ref in (joint.first, joint.second)
        if joint.kind is JointKind.FACE_GLUED or ref == joint.second
    ]
    framed = list(own) if stage.number == FRAME else []
    for ref in dict.fromkeys([*built_up, *framed]):
        for note in shop_part((unit.part(ref),), "cut", unit.display_unit).notes:
            if note.startswith(_AFTER):
                found.setdefault(note, []).append(ref)
    return [f"{refs_said(refs)}: {note}." for note, refs in found.items()]
