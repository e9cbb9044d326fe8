"""The rules that findings go by, by name."""

from __future__ import annotations

from difflib import get_close_matches

from rodwright.checks.meanings import MEANINGS, Meaning
from rodwright.checks.rules import Rule
from rodwright.problems import Problem, ProblemsError

__all__ = ["meaning_of", "rule_called", "rules"]


def rules() -> dict[Rule, Meaning]:
    """Every rule with its meaning, by subject: the opening, cutting, joining, fronts, dangers."""
    return MEANINGS


def meaning_of(rule: Rule) -> Meaning:
    """What a rule means, its source and its remedy."""
    return MEANINGS[rule]


def rule_called(name: str) -> Rule:
    """The rule of a name, or the only one whose name has that in it.

    Raises:
        ProblemsError: there is none, or several.
    """
    wanted = "-".join(name.strip().strip("[]").lower().replace("_", " ").split())
    if wanted in list(Rule):
        return Rule(wanted)
    having = [rule for rule in Rule if wanted and wanted in rule]
    if len(having) == 1:
        return having[0]
    near = having or get_close_matches(wanted, list(Rule), n=3)
    *others, last = (f"`{rule}`" for rule in near) if near else ("",)
    meant = f"Did you mean {', '.join(others)}{' or ' if others else ''}{last}? " if near else ""
    raise ProblemsError(
        [Problem(f"there is no rule called `{name}`", f"{meant}`rodwright rule` lists them all.")]
    )
