"""Cautions and findings: what to mend, what to know of this job, what to take care of."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.paper.sections import Section

_WHEN: dict[str, tuple[Rule, ...]] = {
    "Before you begin on site": (
        *(Rule.LOAD_BEARING_WALL, Rule.LEAD_AND_ASBESTOS, Rule.CABLES_AND_PIPES),
        *(Rule.SERVICES_IN_CUT_OUT, Rule.FLOOR_LOAD),
    ),
    "At the machines": (Rule.DUST, Rule.GLASS),
    "Lifting and carrying": (
        *(Rule.HEAVY_SHEET, Rule.HEAVY_PART, Rule.HEAVY_UNIT, Rule.CARRYING_IN),
    ),
    "So that it stays up": (
        *(Rule.TALL_AND_FREESTANDING, Rule.TIPS_WITH_DRAWERS_OUT, Rule.TIPS_WITH_DOORS_OPEN),
        *(Rule.TIPS_UNTIL_FIXED, Rule.HANGING),
    ),
}
"""When each danger is met; the others come last."""
_OTHERS = "Besides"
_ALWAYS = {
    "At the machines": (
        "Saws and routers maim: guards on, riving knife behind the blade, push sticks for what is "
        "narrow, hands never in line with the cutter. Unplug before a blade or cutter is changed.",
        "Wear eye and ear protection; no gloves, loose sleeves or long hair near what turns.",
    ),
    "So that it stays up": (
        "A tall piece can kill when it tips: fix it to the wall before anything is put in it, and "
        "never leave it standing unfixed where children are.",
    ),
    "Before you begin on site": (
        "Wiring, gas, pipes and anything structural are work for licensed people; local codes and "
        "rules come before anything said here.",
    ),
    "Finishing": (
        "Rags wet with oil catch fire by themselves: spread them out flat outdoors to dry, or keep "
        "them under water in a closed tin. Solvents want air, and no flame or spark near by.",
    ),
}
"""What holds for every job (common practice, no source)."""
_MENDED = (
    (Severity.ERROR, "To mend before anything is cut"),
    (Severity.WARNING, "Doubtful: decide before you cut"),
    (Severity.NOTE, "To know of this job"),
)


def cautions_section(findings: Sequence[Finding]) -> Section:
    """Every finding in full: what must be mended, what to know, then the dangers by when they are
    met."""
    data = {
        "findings": [
            {"title": title, "rows": [_told(each) for each in findings if each.severity is level]}
            for level, title in _MENDED
            if any(each.severity is level for each in findings)
        ],
        "cautions": [
            {"title": title, "rows": rows} for title, rows in _dangers(findings).items() if rows
        ],
    }
    return Section("cautions", "Before any work: take care", data)


def _dangers(findings: Sequence[Finding]) -> dict[str, list[dict[str, Any]]]:
    titles = dict.fromkeys((*_WHEN, *_ALWAYS, _OTHERS))
    rows: dict[str, list[dict[str, Any]]] = {
        title: [{"message": text, "remedy": ""} for text in _ALWAYS.get(title, ())]
        for title in titles
    }
    for each in _of_all_jobs(findings):
        where = (title for title, rules in _WHEN.items() if each.rule in rules)
        rows[next(where, _OTHERS)].append(_told(each))
    return rows


def _of_all_jobs(findings: Sequence[Finding]) -> Iterator[Finding]:
    return (each for each in findings if each.severity is Severity.CAUTION)


def _told(finding: Finding) -> dict[str, Any]:
    return {"message": _sentence(finding.message), "remedy": finding.remedy}


def _sentence(text: str) -> str:
    return f"{text[0].upper()}{text[1:]}{'' if text.endswith('.') else '.'}"
