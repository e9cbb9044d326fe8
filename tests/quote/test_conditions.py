"""How long a price holds, and days in words."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.specs import unit_from
from rodwright.jobs.rates import parse_rates
from rodwright.quote.conditions import day_said, holds, included, not_included, to_know
from rodwright.quote.costing import cost
from rodwright.quote.letter import Letter
from rodwright.quote.starter import starter_rates
from rodwright.quote.takings import takings_of

UNIT = unit_from("size: {width: 800, height: 900, depth: 300}")


@pytest.mark.parametrize(
    ("day", "days", "said"),
    [
        ("2026-05-31", 30, "until 30 June 2026"),
        ("2028-02-01", 28, "until 29 February 2028"),
        ("", 14, "for 14 days from the day this quote is sent"),
    ],
)
def test_how_long_the_price_holds(day: str, days: int, said: str) -> None:
    assert holds(Letter(date=day), days) == said


def test_a_day_reads_the_same_everywhere() -> None:
    assert day_said("2026-03-04") == "4 March 2026"


def test_what_can_hurt_is_said() -> None:
    told = " ".join(to_know(UNIT, None))
    assert "It is fixed to the wall: furniture that tips over can kill a child." in told
    low = unit_from("size: {width: 800, height: 400, depth: 400}")
    assert "Have it fixed to the wall" in " ".join(to_know(low, None))
    assert "licensed" in told
    assert "Oiled" not in told
    assert "It hangs on the wall." in " ".join(to_know(replace(UNIT, hung=True), None))


@pytest.mark.parametrize(("height", "fixed"), [(900, True), (400, False)])
def test_fixing_what_stands_free_is_priced_or_left_out(height: int, fixed: bool) -> None:
    """What could tip is fixed; what can't has nothing counted for it."""
    unit = unit_from(f"size: {{width: 800, height: {height}, depth: 400}}")
    rates = parse_rates(starter_rates("EUR", "mm"), "rates.yaml")
    costing = cost(takings_of(unit, None, rates), rates)
    told = "Fixing it to the wall."
    assert (told in included(unit, Letter(), costing)) is fixed
    assert (told in not_included(unit, Letter(), costing)) is not fixed
    counted = {line.operation.key for line in costing.labour}
    assert ("fixing_point" in counted) is fixed


def test_oily_rags_are_told_of() -> None:
    oiled = unit_from("size: {width: 800, height: 900, depth: 300}\nfinish: oil")
    assert any("catch fire by themselves" in each for each in to_know(oiled, None))


def test_what_it_is_cut_out_round_is_told() -> None:
    assert any("a socket" in each for each in to_know(replace(UNIT, services=("a socket",)), None))
