"""Levels of which no sag can be worked out, and what is wanted for it."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import named
from rodwright.checks.rules import Rule
from rodwright.strength.levels import UNCARRIED, levels
from rodwright.unit import Unit


def unknown_stiffness(unit: Unit) -> Iterator[Finding]:
    """A note for each level whose stiffness isn't known, and for each that nothing carries."""
    for result in levels(unit):
        if not result.lacking:
            continue
        part = named(unit.part(result.parts[0]))
        if result.lacking == UNCARRIED:
            yield Finding(
                Severity.WARNING,
                Rule.NOTHING_UNDER_ITS_END,
                f"{part} isn't carried at both its ends: how far it sags can't be worked out",
                "Let it end at uprights that it is jointed to, or stand something under it.",
                result.parts,
                measure="",
            )
        else:
            yield Finding(
                Severity.NOTE,
                Rule.STIFFNESS_UNKNOWN,
                f"how far {part} sags can't be worked out: {result.lacking}",
                "Give what is known of it, with where it comes from, or choose a material that is "
                "known (docs/materials.md).",
                result.parts,
                measure="",
                case=(result.lacking,),
            )
