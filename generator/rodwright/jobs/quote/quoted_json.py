"""What was quoted as one document, for programs."""

from __future__ import annotations

from rodwright.handover.findings_json import findings_counts, findings_records
from rodwright.handover.json_text import json_text
from rodwright.jobs.quote.quoting import Quoted
from rodwright.quote.quote_json import quote_document


def quoted_json(made: Quoted) -> bytes:
    """`quote.json`, with where the files are, what the checks found, and what the quote had to do
    without."""
    document = quote_document(made.unit.title, made.costings, made.levers, made.rates)
    return json_text(
        document
        | {
            "folder": str(made.folder),
            "files": list(made.files),
            "no_plan": list(made.no_plan),
            "no_photograph": made.no_photograph,
            "counts": findings_counts(made.findings),
            "findings": findings_records(made.findings),
        }
    )
