"""Formulas and model beside each other as JSON."""

from __future__ import annotations

from typing import Any

from rodwright.handover.json_text import json_text
from rodwright.handover.model_list import cause_text
from rodwright.handover.strength_json import MEASURES
from rodwright.strength.model.beside import Beside, Row
from rodwright.unit import Unit


def model_json(unit: Unit, found: Beside) -> bytes:
    """Every figure by formula and by model with the bound, and why they differ."""
    joint = found.joint
    document = {
        "title": unit.title,
        "measures": MEASURES,
        "agrees": all(row.agrees for row in found.rows),
        "rows": [_row(row) for row in found.rows],
        "weight": found.weight,
        "reaction": found.reaction,
        "greatest_moment": None
        if joint is None
        else {"first": joint.first, "second": joint.second, "moment": found.moment},
        "sway": None
        if found.sway is None
        else {"mean": found.sway.mean, "front": found.sway.front, "back": found.sway.back},
        "push": found.push,
        "nodes": found.nodes,
        "weights_only": list(found.weights_only),
    }
    return json_text(document)


def _row(row: Row) -> dict[str, Any]:
    return {
        "subject": row.subject,
        "parts": list(row.parts),
        "what": row.what,
        "formula": row.formula,
        "model": row.model,
        "measure": row.measure,
        "ratio": row.ratio,
        "within": row.within,
        "agrees": row.agrees,
        "causes": [
            {
                "does": cause.does.value,
                "part": cause.ref,
                "effect": cause.effect,
                "said": cause_text(cause, row.measure, "mm"),
            }
            for cause in row.causes
        ],
    }
