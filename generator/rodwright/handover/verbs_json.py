"""What `check`, `build`, `page`, `rule` and `new` show, as JSON."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Any

from rodwright.checks.findings import Finding
from rodwright.checks.meanings import Meaning
from rodwright.checks.rules import Rule
from rodwright.handover.findings_json import findings_counts, findings_records
from rodwright.handover.json_text import json_text
from rodwright.mass import unit_weight
from rodwright.unit import Unit
from rodwright.unit.facts import is_scribed, left_over, size_as_fitted

MEASURES = {"length": "mm", "mass": "kg"}
"""What the figures are in; those of a finding say it themselves."""


def check_json(
    unit: Unit,
    findings: Sequence[Finding],
    options: Mapping[str, Sequence[Finding]],
    *,
    solids: bool,
) -> bytes:
    """Overall size (width, height, depth), weight, opening and findings, whether collisions were
    looked for (``solids``), and what is found besides in each of its options."""
    besides = [{"name": name} | _found(found) for name, found in options.items()]
    return json_text(_sizes(unit) | {"solids": solids} | _found(findings) | {"options": besides})


def build_json(
    unit: Unit, folder: Path, files: Sequence[str], findings: Sequence[Finding]
) -> bytes:
    """The same of a build, and its files as their folder has them."""
    made = {"folder": str(folder), "files": list(files)}
    return json_text(_sizes(unit) | made | _found(findings))


def page_json(
    unit: Unit,
    folder: Path,
    files: Sequence[str],
    findings: Sequence[Finding],
    no_photograph: str,
) -> bytes:
    """The same of a page, and why it has no photograph although one is wanted."""
    made = {"folder": str(folder), "files": list(files), "no_photograph": no_photograph}
    return json_text(_sizes(unit) | made | _found(findings))


def rules_json(rules: Mapping[Rule, Meaning]) -> bytes:
    """Rules with what each means, its source and its remedy; ``danger`` is empty where it hurts
    nobody."""
    return json_text(
        {"rules": [{"rule": rule, **asdict(meaning)} for rule, meaning in rules.items()]}
    )


def models_json(names: Iterable[str], written: Path | None = None) -> bytes:
    """Names of ready specs, or the one that was copied and the file that was written."""
    document: dict[str, Any] = {"models": list(names)}
    return json_text(document if written is None else document | {"file": str(written)})


def _sizes(unit: Unit) -> dict[str, Any]:
    opening = unit.opening
    return {
        "title": unit.title,
        "measures": MEASURES,
        "size": list(map(_rounded, unit.size)),
        "size_as_fitted": list(map(_rounded, size_as_fitted(unit))),
        "opening": None
        if opening is None
        else {
            "as_read": list(map(_rounded, opening.as_read)),
            "to_spare": list(map(_rounded, left_over(unit, opening))),
            "scribed": is_scribed(unit),
        },
        "parts": len(unit.parts),
        "shapes": len(unit.shapes),
        "weight": _rounded(unit_weight(unit)),
    }


def _found(findings: Sequence[Finding]) -> dict[str, Any]:
    return {"counts": findings_counts(findings), "findings": findings_records(findings)}


def _rounded(value: float) -> float:
    return round(value, 3) + 0.0
