"""What each rule means, where its figures come from, and what to do: a paragraph each."""

from __future__ import annotations

from rodwright.checks.meanings import cutting, fitting, fronts, hazards, joining
from rodwright.checks.meanings.meaning import Meaning
from rodwright.checks.rules import Rule

__all__ = ["MEANINGS", "Meaning"]

MEANINGS: dict[Rule, Meaning] = {
    **fitting.MEANINGS,
    **cutting.MEANINGS,
    **joining.MEANINGS,
    **fronts.MEANINGS,
    **hazards.MEANINGS,
}
