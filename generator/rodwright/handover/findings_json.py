"""What the checks found, as JSON."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import asdict

from rodwright.checks.findings import Finding, Severity
from rodwright.handover.json_text import json_text


def findings_json(findings: Sequence[Finding]) -> bytes:
    """Findings as JSON, the gravest first, with how many there are of each severity."""
    order = list(Severity)
    counts = Counter(finding.severity for finding in findings)
    document = {
        "counts": {severity: counts[severity] for severity in order},
        "findings": [
            {name: value for name, value in asdict(finding).items() if name != "case"}
            for finding in sorted(findings, key=lambda finding: order.index(finding.severity))
        ],
    }
    return json_text(document)
