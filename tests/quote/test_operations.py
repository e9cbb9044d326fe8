"""The table of operations."""

from __future__ import annotations

from collections import Counter
from decimal import Decimal
from typing import get_args

from rodwright.quote.counted import Stage
from rodwright.quote.operations import BY_KEY, OPERATIONS, operations_in
from rodwright.trade.finishes import OF_KIND


def test_keys_are_said_once_and_are_plain_words() -> None:
    counted = Counter(each.key for each in OPERATIONS)
    assert not [key for key, count in counted.items() if count > 1]
    assert all(key.replace("_", "a").isalnum() and key == key.lower() for key in counted)


def test_stages_follow_each_other_in_the_order_of_the_work() -> None:
    stages = list(get_args(Stage))
    found = [stages.index(each.stage) for each in OPERATIONS]
    assert found == sorted(found)
    assert set(found) == set(range(len(stages)))


def test_every_coat_that_there_is_has_its_operation() -> None:
    coats = {coat.what for finish in OF_KIND.values() for coat in finish.coats}
    assert {BY_KEY[each].stage for each in coats} == {"finishing"}


def test_all_minutes_are_more_than_nothing() -> None:
    assert all(each.minutes > 0 for each in (*OPERATIONS, *operations_in("in")))


def test_in_inches_a_run_goes_by_the_foot() -> None:
    # 3 min a metre x 0.3048 m = 0.9144 min a foot; 9 min a m2 x 0.09290304 m2 = 0.836... a sq ft;
    # 0.3 min a kg x 0.45359237 kg = 0.136... a lb.
    said = {each.key: each for each in operations_in("in")}
    assert (said["rebate"].per, said["rebate"].minutes) == ("ft", Decimal("0.91"))
    assert (said["sanding"].per, said["sanding"].minutes) == ("sq ft", Decimal("0.84"))
    assert (said["loading"].per, said["loading"].minutes) == ("lb", Decimal("0.14"))
    assert said["screw"] == BY_KEY["screw"]


def test_in_millimetres_the_table_is_as_it_stands() -> None:
    assert operations_in("mm") == OPERATIONS
