"""A unit's strength as JSON."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from rodwright.handover.json_text import json_text
from rodwright.strength.results import Result
from rodwright.trade.sources import Source
from rodwright.unit import Unit

MEASURES = {"length": "mm", "mass": "kg", "force": "N", "stress": "N/mm2", "angle": "degree"}
"""What figures are in, where they don't say it themselves."""


def strength_json(unit: Unit, results: Sequence[Result], *, breaks: bool) -> bytes:
    """Every result with its formula, inputs, limits, sources and remedies; each figure beside the
    ``measure`` it is in.  ``breaks`` says whether the checks found an error among them."""
    document = {
        "title": unit.title,
        "measures": MEASURES,
        "holds": all(each.holds for each in results),
        "breaks": breaks,
        "results": [result_record(each) for each in results],
    }
    return json_text(document)


def result_record(result: Result) -> dict[str, Any]:
    """One result by its fields, with ``holds`` and ``spare``."""
    return {
        "group": result.group.value,
        "subject": result.subject,
        "parts": list(result.parts),
        "what": result.what,
        "figure": _finite(result.figure),
        "limit": _finite(result.limit),
        "measure": result.measure,
        "at_least": result.at_least,
        "holds": result.holds,
        "spare": _finite(result.spare),
        "formula": result.formula,
        "source": source_record(result.source),
        "limit_source": source_record(result.limit_source),
        "inputs": [
            {
                "symbol": each.symbol,
                "what": each.what,
                "value": _finite(each.value),
                "measure": each.measure,
                "source": source_record(each.source),
            }
            for each in result.inputs
        ],
        "lacking": result.lacking,
        "notes": list(result.notes),
        "remedies": [
            {
                "what": each.what,
                "figure": _finite(each.figure),
                "holds": each.holds,
                "cost": each.cost,
                "bears": each.bears,
                "limit": _finite(each.limit),
                "beyond": [
                    {
                        "what": other.what,
                        "figure": _finite(other.figure),
                        "limit": _finite(other.limit),
                        "measure": other.measure,
                    }
                    for other in each.beyond
                ],
            }
            for each in result.remedies
        ],
    }


def source_record(source: Source | None) -> dict[str, Any] | None:
    """A source: the work, and whether it was seen there."""
    return None if source is None else {"work": source.work, "seen": source.seen}


def _finite(value: float | None) -> float | None:
    """A number to six significant figures; null for none, and for one without end, which JSON
    hasn't."""
    if value is None or value in (float("inf"), float("-inf")) or value != value:
        return None
    return float(f"{value:.6g}")
