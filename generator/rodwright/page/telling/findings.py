"""Findings as `check` words them."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.meanings import MEANINGS
from rodwright.checks.rules import Rule
from rodwright.page import document as page


def findings_told(findings: Sequence[Finding]) -> tuple[page.Told, ...]:
    """The gravest first, cautions last."""
    order = list(Severity)
    return tuple(
        page.Told(
            each.severity.value,
            each.rule.value,
            each.message,
            each.remedy,
            each.parts,
            each.source,
            () if each.place is None else tuple(round(at, 3) + 0.0 for at in each.place),
            _meaning(each.rule),
        )
        for each in sorted(findings, key=lambda each: order.index(each.severity))
    )


def _meaning(rule: Rule) -> tuple[tuple[str, str], ...]:
    meaning = MEANINGS[rule]
    return (("", f"{meaning.title}."), *meaning.paragraphs)
