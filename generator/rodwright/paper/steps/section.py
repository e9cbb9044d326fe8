"""The pages of the steps at the bench."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from rodwright.handover.lists import common_name
from rodwright.making.depths import depth_of
from rodwright.making.preferences import (
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
from rodwright.making.stages import Stage
from rodwright.making.steps import Order, Step
from rodwright.mass import weight
from rodwright.paper.sections import Section
from rodwright.paper.steps.joint_words import joints_said
from rodwright.paper.steps.leads import after_said, begun, lead_said, on_slides
from rodwright.paper.steps.pictures import draw_move, scene_of
from rodwright.paper.steps.plan import Move, PlannedStage, plan_of
from rodwright.paper.steps.words import (
    fixings_said,
    general_said,
    refs_said,
    way_said,
    weight_said,
)
from rodwright.pictures.svg import to_svg
from rodwright.unit import Unit

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


def steps_section(unit: Unit, order: Order) -> Section:
    """Every step at the bench in its stage, with a picture each."""
    plan = plan_of(unit, order)
    stages = [(each, stage_data(unit, each)) for each in plan.bench]
    files = {name: content for each in plan.bench for name, content in pictures(unit, each)}
    alone = len(unit.parts) == 1 and not plan.rest
    glued = any(each.stage.glued for each in plan.bench)
    data = {
        "one_board": _one_board(unit) if alone else "",
        "stages": [] if alone else [data for _, data in stages],
        "general": general_said(unit.display_unit) if glued else [],
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
        "lead": [{"label": label, "text": text} for label, text in lead_said(unit, stage) if text],
        "moves": [move_data(unit, move, stage) for move in planned.moves],
        "after": after_said(unit, stage),
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
    if stage.name and stage.number in _PART and not stage.glued and begun(stage):
        drawer = stage.number == BACK and stage.name.startswith("drawer")
        name = f"{name}: {'bottom' if drawer else _PART[stage.number]}"
    if len(stage.makings) > 1:
        name = f"{name}, and {len(stage.makings) - 1} more alike"
    if stage.turns > 1:
        return f"{name}, glue-up {stage.turn} of {stage.turns}"
    return f"{name}, glued up" if stage.glued else name


def move_data(unit: Unit, move: Move, stage: Stage) -> dict[str, Any]:
    """A move for its template."""
    first = move.steps[0]
    joints = joints_said([j for step in move.steps for j in step.joints], move.refs)
    if any(on_slides(joint) for step in move.steps for joint in step.joints):
        joints.append("the slides' members are screwed to carcass and box before it is hung")
    hardware = fixings_said(move.fixings)
    off = len(stage.makings)
    heaviest = max(move.steps, key=lambda step: sum(weight(unit.part(r)) for r in step.refs))
    heavy = weight_said(unit, heaviest.refs)
    return {
        "number": move.number,
        "pieces": _pieces(unit, move.steps),
        "begin": f"Begin with {_pieces(unit, move.begun)}." if move.begun else "",
        "way": _way(unit, move),
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


def _way(unit: Unit, move: Move) -> str:
    """Which way it comes, all at once or with which doors open."""
    first = move.steps[0]
    if first.drawn:
        return "Draw all of it together at once, a little at each joint in turn"
    travel = max(step.travel for step in move.steps)
    depth = max(depth_of(unit, step) for step in move.steps)
    said = way_said(first.towards, travel, depth, unit.display_unit)
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
