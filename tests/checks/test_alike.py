"""Findings that are told as one say the same of each part; others are told apart."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Hashable
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings

import rodwright
from kit.panels import panel, unit_of
from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright.checks import CHECKS
from rodwright.checks.alike import alike, said_once
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import named, opened
from rodwright.checks.rules import Rule
from rodwright.jobs.new import model_names, model_path
from rodwright.problems import ProblemsError
from rodwright.unit import Unit


def _plain(unit: Unit, finding: Finding) -> str:
    """A finding's message without the names of its parts."""
    message = finding.message
    for ref in finding.parts:
        part = unit.part(ref)
        for name in (named(part), opened(part)):
            message = message.replace(name, str(part.role))
    return message


def _say_the_same(unit: Unit) -> None:
    told: dict[Hashable, set[str]] = defaultdict(set)
    for check in CHECKS:
        for finding in check(unit):
            told[alike(unit, finding)].add(_plain(unit, finding))
    assert not [texts for texts in told.values() if len(texts) > 1]


@pytest.mark.parametrize("name", model_names())
def test_nothing_is_lost_of_the_models(name: str) -> None:
    _say_the_same(rodwright.set_out(rodwright.read_spec(model_path(name))))


@settings(max_examples=60, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(wishes())
def test_nothing_is_lost_of_random_units(wish: Wish) -> None:
    try:
        unit = unit_from("unit: mm\n", **wish)
    except ProblemsError:
        return
    _say_the_same(unit)


FOUND = Finding(Severity.WARNING, Rule.THIN_TONGUE, "P1 is thin", "", ("P1",), 2.0, 3.0)
UNIT = unit_of(panel(), replace(panel(), ref="P2"))


def test_the_words_do_not_matter() -> None:
    other = replace(FOUND, message="thin is P2", parts=("P2",))
    (one,) = said_once(UNIT, [FOUND, other])
    assert one.parts == ("P1", "P2")
    assert one.message == "P1 is thin; likewise P2"


@pytest.mark.parametrize(
    "other",
    [
        replace(FOUND, rule=Rule.DEEP_HOUSING),
        replace(FOUND, severity=Severity.NOTE),
        replace(FOUND, figure=2.1),
        replace(FOUND, limit=None),
        replace(FOUND, case=("groove",)),
    ],
)
def test_another_rule_case_or_figure_is_told_apart(other: Finding) -> None:
    assert said_once(UNIT, [FOUND, other]) == (FOUND, other)


def test_the_last_digits_do_not_matter() -> None:
    (one,) = said_once(UNIT, [FOUND, replace(FOUND, figure=2.0 + 1e-9, parts=("P2",))])
    assert one.figure == 2.0


def test_what_is_said_of_the_whole_unit_is_like_nothing_else() -> None:
    whole = replace(FOUND, parts=(), message="a socket stays")
    other = replace(whole, message="a pipe stays")
    assert said_once(UNIT, [whole, other]) == (whole, other)
