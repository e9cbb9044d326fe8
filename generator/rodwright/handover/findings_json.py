"""What the checks found, as JSON."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import asdict
from typing import Any

from rodwright.checks.findings import Finding, Severity
from rodwright.handover.json_text import json_text


def findings_json(findings: Sequence[Finding]) -> bytes:
    """Findings as JSON, the gravest first, with how many there are of each severity."""
    return json_text({"counts": findings_counts(findings), "findings": findings_records(findings)})


def findings_counts(findings: Sequence[Finding]) -> dict[str, int]:
    """How many findings there are of each severity."""
    counts = Counter(finding.severity for finding in findings)
    return {severity: counts[severity] for severity in Severity}


def findings_records(findings: Sequence[Finding]) -> list[dict[str, Any]]:
    """Findings by their fields, the gravest first."""
    order = list(Severity)
    return [
        {name: value for name, value in asdict(finding).items() if name != "case"}
        for finding in sorted(findings, key=lambda finding: order.index(finding.severity))
    ]
