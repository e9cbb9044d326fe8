"""The answer about the way in, as JSON."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from rodwright.handover.json_text import json_text
from rodwright.way.answer import WayInAnswer
from rodwright.way.carry import Step


def way_in_json(answer: WayInAnswer) -> bytes:
    """Whether the unit goes in, every step, its paths and the remedies; lengths in mm, angles in
    radians."""
    document = {
        "title": answer.unit.title,
        "measures": {"length": "mm", "angle": "radian"},
        "goes": answer.goes,
        "steps": [_step(step) for step in answer.steps],
        "paths": [
            {
                "place": path.step.place,
                "view": path.view,
                "poses": [asdict(pose) for pose in path.poses],
                "hits": path.hits,
            }
            for path in answer.paths
        ],
        "remedies": [
            {
                "what": remedy.what,
                "works": remedy.works,
                "still": [_step(step) for step in remedy.still],
            }
            for remedy in answer.remedies
        ],
    }
    return json_text(document)


def _step(step: Step) -> dict[str, Any]:
    return {
        "place": step.place,
        "passes": step.passes,
        "held": step.held,
        "spare": round(step.spare, 3),
        "tight": step.tight,
    }
