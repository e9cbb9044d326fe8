"""A span, a load or a thickness that was asked for, as JSON."""

from __future__ import annotations

from rodwright.handover.json_text import json_text
from rodwright.handover.strength_json import MEASURES, result_record
from rodwright.strength.span_answer import SpanAnswer


def span_json(answer: SpanAnswer) -> bytes:
    """What was asked (``wanted``: span, load, thickness, or check), the shelf with the answer in
    it, and every figure with formula, inputs and sources.

    Lengths in mm, ``row`` in kg/m, ``total`` in kg; ``endless`` says that it still holds over
    the longest span that is looked for.
    """
    question = answer.question
    return json_text(
        {
            "wanted": question.wanted,
            "measures": {**MEASURES, "row": "kg/m"},
            "material": question.board,
            "load": question.burden.said if question.burden else None,
            "ends": question.ends,
            "thickness": round(answer.thickness, 3),
            "depth": round(question.depth, 3),
            "span": round(answer.span, 3),
            "endless": answer.endless,
            "row": round(answer.row, 3),
            "total": round(answer.total, 3),
            "governs": answer.governs,
            "holds": answer.holds,
            "notes": [note for each in answer.results for note in each.notes],
            "from_memory": [each.work for each in answer.from_memory],
            "results": [result_record(each) for each in answer.results],
        }
    )
