"""The files of assembly beside the book: its pages apart, and all steps as JSON."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict
from datetime import datetime
from typing import Any

from rodwright.handover.json_text import json_text
from rodwright.handover.stamp import time_stamp
from rodwright.making.glue_lines import GlueUp, is_glued
from rodwright.making.squareness import diagonals
from rodwright.making.stages import Making
from rodwright.making.steps import Order, Step
from rodwright.opening.sheet import SurveySheet
from rodwright.paper.sections import Section
from rodwright.paper.steps.finishing import finishing_section
from rodwright.paper.steps.fitting import fitting_section
from rodwright.paper.steps.plan import Move, PlannedStage, plan_of
from rodwright.paper.steps.section import steps_section, title_of
from rodwright.paper.typesetting import paper_name, typeset
from rodwright.strength.lifting import Hands
from rodwright.strength.pieces import lifted
from rodwright.trade.label_sheets import Paper
from rodwright.unit import Fixing, Unit

_PLACES = 4
_LONGEST = 60
"""Letters of a title in the line at the foot of a page."""


def assembly_sections(
    unit: Unit, order: Order, survey: SurveySheet | None = None
) -> tuple[Section, ...]:
    """Steps at the bench, fitting on site, finishing."""
    return (
        steps_section(unit, order),
        fitting_section(unit, order, survey),
        finishing_section(unit),
    )


def assembly_files(
    unit: Unit, order: Order, sections: Sequence[Section], paper: Paper
) -> dict[str, bytes]:
    """``assembly.pdf`` of some sections, and ``assembly.json``, by names below the output folder.

    Raises:
        ProblemsError: Typst isn't installed, or SOURCE_DATE_EPOCH is no time.
    """
    return {
        "book/assembly.pdf": _pdf(unit, sections, paper),
        "book/assembly.json": assembly_json(unit, order),
    }


def _pdf(unit: Unit, sections: Sequence[Section], paper: Paper) -> bytes:
    data = {
        "paper": paper_name(paper),
        "title": f"{_short(unit.title)}: assembly",
        "sections": [
            {"name": each.name, "title": each.title, "data": each.data} for each in sections
        ],
    }
    files = {name: content for each in sections for name, content in each.files.items()}
    (pdf,) = typeset("assembly", data, files, when=datetime.fromisoformat(time_stamp(unit)))
    return pdf


def _short(title: str) -> str:
    return title if len(title) <= _LONGEST else f"{title[: _LONGEST - 1]}…"


def assembly_json(unit: Unit, order: Order) -> bytes:
    """Every stage and step as JSON; lengths in mm, weights in kg, times in minutes."""
    plan = plan_of(unit, order)
    return json_text(
        {
            "title": unit.title,
            "measures": "lengths in mm, unit frame; weights in kg; times in minutes",
            "stages": [_stage(unit, each) for each in plan.stages],
            "other_hardware": [_fixing(each) for each in plan.rest],
        }
    )


def _stage(unit: Unit, planned: PlannedStage) -> dict[str, Any]:
    stage = planned.stage
    return {
        "title": title_of(stage),
        "where": stage.where,
        "turn": stage.turn,
        "turns": stage.turns,
        "made": [_making(unit, each) for each in stage.makings],
        "moves": [_move(each) for each in planned.moves],
    }


def _making(unit: Unit, making: Making) -> dict[str, Any]:
    square = diagonals(unit, making.refs) if making.glue else None
    return {
        "name": making.name,
        "refs": list(making.refs),
        "glue": _glue(making.glue) if making.glue else None,
        "diagonals": _rounded(asdict(square)) if square else None,
        "steps": [_step(unit, each) for each in making.steps],
    }


def _glue(glue: GlueUp) -> dict[str, Any]:
    return {
        "joints": len(glue.lines),
        "metres": round(glue.metres, _PLACES),
        "minutes": round(glue.time.minutes, 1),
        "clamps": [_rounded(asdict(each)) for each in glue.clamps],
    }


def _step(unit: Unit, step: Step) -> dict[str, Any]:
    hands = Hands.of(lifted([unit.part(ref) for ref in step.refs]))
    return {
        "refs": list(step.refs),
        "brings": step.brings,
        "standing": list(step.standing),
        "towards": [round(each, 6) + 0.0 for each in step.towards],
        "travel": round(step.travel, _PLACES),
        "drawn": [[round(each, _PLACES) + 0.0 for each in way] for way in step.drawn],
        "opened": list(step.opened),
        "free": step.free,
        "why": step.why,
        "weight": round(hands.piece.lot.mass, _PLACES),
        "people": hands.people,
        "joints": [
            {
                "kind": str(each.kind),
                "first": each.first,
                "second": each.second,
                "glued": is_glued(unit, each),
            }
            for each in step.joints
        ],
    }


def _move(move: Move) -> dict[str, Any]:
    return {
        "number": move.number,
        "refs": [*(ref for step in move.begun for ref in step.refs), *move.refs],
        "hardware": [_fixing(each) for each in move.fixings],
    }


def _fixing(fixing: Fixing) -> dict[str, Any]:
    return {
        "name": fixing.name,
        "size": fixing.size,
        "count": fixing.count,
        "pilot": fixing.pilot,
        "on": fixing.on,
    }


def _rounded(record: dict[str, Any]) -> dict[str, Any]:
    return {
        key: round(value, _PLACES)
        if isinstance(value, float)
        else [round(each, _PLACES) for each in value]
        if isinstance(value, tuple)
        else value
        for key, value in record.items()
    }
