"""Hours and days, worked by hand."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from kit.takings import rates_in
from rodwright.quote.counted import Operation, Takings
from rodwright.quote.hours import days_on_site, minutes_of, stage_hours

D = Decimal
TAKINGS = Takings(
    (),
    (
        Operation("job", "job", "setting out", D(1), "job"),
        Operation("rebate", "rebate", "machining", D("4.516"), "m"),
        Operation("housing", "housing", "machining", D(2), "housing"),
        Operation("packing", "packing", "fitting", D(3), "piece"),
        Operation("standing", "standing", "fitting", D(1), "carcass"),
        Operation("fixing_point", "fixing", "fitting", D(10), "fixing"),
        Operation("driving", "driving", "fitting", D("2.5"), "h"),
    ),
)
RATES = replace(
    rates_in(),
    minutes={
        "job": D(100),
        "rebate": D(3),
        "housing": D("4.5"),
        "packing": D(8),
        "standing": D(60),
        "fixing_point": D("12.5"),
    },
)


def test_hours_of_every_stage() -> None:
    """100 min = 1.6667 h; 4.516 x 3 + 2 x 4.5 = 22.548 min = 0.3758 h;
    3 x 8 + 60 + 10 x 12.5 + 2.5 x 60 = 359 min = 5.9833 h."""
    assert dict(stage_hours(TAKINGS, RATES)) == {
        "setting out": D("1.67"),
        "cutting": 0,
        "machining": D("0.38"),
        "assembly": 0,
        "finishing": 0,
        "fitting": D("5.98"),
    }


def test_days_are_those_of_all_fitters_on_site() -> None:
    """60 + 125 = 185 min on site, without wrapping and the road; two fitters of 8 hours:
    185 / 960 = 0.1927."""
    assert days_on_site(TAKINGS, RATES) == D("0.19")
    assert days_on_site(TAKINGS, replace(RATES, fitters=1, hours_a_day=D(4))) == D("0.77")


def test_minutes_that_nobody_said_are_none() -> None:
    lacking = replace(RATES, minutes={})
    assert [minutes_of(each, lacking.minutes) for each in TAKINGS.operations[-2:]] == [None, 60]
    assert dict(stage_hours(TAKINGS, lacking))["fitting"] == D("2.5")
