"""Rules asked for by name, by a part of it, and by a name that is misspelt."""

from __future__ import annotations

import pytest

from rodwright.checks.rules import Rule
from rodwright.jobs.rule import meaning_of, rule_called, rules
from rodwright.problems import ProblemsError


@pytest.mark.parametrize("rule", Rule)
def test_a_name_is_its_rule(rule: Rule) -> None:
    assert rule_called(rule) is rule
    assert rules()[rule] is meaning_of(rule)


@pytest.mark.parametrize(
    ("written", "rule"),
    [
        ("tongue", Rule.THIN_TONGUE),
        ("[thin-tongue]", Rule.THIN_TONGUE),
        ("Thin tongue", Rule.THIN_TONGUE),
        ("thin_tongue", Rule.THIN_TONGUE),
        ("glass", Rule.GLASS),
    ],
)
def test_a_name_is_completed(written: str, rule: Rule) -> None:
    assert rule_called(written) is rule


@pytest.mark.parametrize(
    ("written", "meant"),
    [
        ("thin-tonge", "Did you mean `thin-tongue`"),
        ("drawer", "Did you mean `drawer-overloaded`, `drawer-front-loose`, `drawer-strikes`"),
        ("xyzzy", "`rodwright rule` lists them all"),
        ("", "`rodwright rule` lists them all"),
    ],
)
def test_other_names_are_refused_with_what_was_meant(written: str, meant: str) -> None:
    with pytest.raises(ProblemsError) as caught:
        rule_called(written)
    (problem,) = caught.value.problems
    assert meant in f"{problem.remedy}"
    assert f"`{written}`" in problem.message
