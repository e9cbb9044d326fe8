"""What moves a price most."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from hypothesis import given

from kit.quotes import STAGES, material, operation, rates_of, some_rates, takings
from rodwright.quote.costing import cost
from rodwright.quote.counted import Takings
from rodwright.quote.levers import levers_of
from rodwright.quote.rates import Rates

JOB = Takings(
    (
        material("stock", "birch plywood 18 mm", "2", "100.00"),
        material("stock", "oak 22 mm", "1", "40.00", wasted=True),
        material("hardware", "hinge", "4", "5.00"),
    ),
    (operation("rip", "cutting", "80"), operation("standing", "fitting", "2")),
)
PLAIN = rates_of(
    overhead=Decimal("0.5"), margin=Decimal("0.5"), tax=Decimal(0), hour=dict.fromkeys(STAGES, 60)
)


def test_each_figure_changed_by_a_tenth() -> None:
    # Materials 200 + 46 + 20 = 266, labour 120 + 70 = 190 at 1.00 a minute: cost 456, overhead
    # 228, net 684 / 0.5 = 1368.  So a cost that is 1 more asks for 1.5 / 0.5 = 3 more.
    assert cost(JOB, PLAIN).total == 1368
    assert [(each.what, each.said, str(each.change)) for each in levers_of(JOB, PLAIN)] == [
        # 684 / 0.45 = 1520
        ("margin", "55 % instead of 50 %", "152.00"),
        # a tenth of 200 and of 190, each times 3
        ("birch plywood 18 mm", "10 % dearer", "60.00"),
        ("an hour of labour", "10 % dearer", "57.00"),
        # overhead 250.80: 706.80 / 0.5 = 1413.60
        ("overhead", "55 % instead of 50 %", "45.60"),
        # a tenth of 120, of 70, of 46 and of 20, each times 3; 40 x 0.015 x 3
        ("cutting", "10 % more minutes", "36.00"),
        ("fitting", "10 % more minutes", "21.00"),
        ("oak 22 mm", "10 % dearer", "13.80"),
        ("all hardware", "10 % dearer", "6.00"),
        ("waste", "16.5 % instead of 15 %", "1.80"),
    ]


def test_there_are_none_without_a_total() -> None:
    lacking = replace(JOB, materials=(*JOB.materials, material("stock", "ash", "1", None)))
    assert levers_of(lacking, PLAIN) == ()


def test_rounding_up_hides_nothing() -> None:
    assert levers_of(JOB, replace(PLAIN, round_up_to=Decimal(1000))) == levers_of(JOB, PLAIN)


@given(takings(), some_rates())
def test_the_strongest_come_first_and_all_make_it_dearer(job: Takings, rates: Rates) -> None:
    changes = [each.change for each in levers_of(job, rates)]
    assert changes == sorted(changes, reverse=True)
    assert all(each > 0 for each in changes)
