"""What a plan takes from the rack, as it is written down and read again."""

from __future__ import annotations

import json
from typing import Any

import pytest

from rodwright.cutting.supplies import Flaw
from rodwright.cutting.taking import (
    Comes,
    Taking,
    Used,
    identity,
    offcut_name,
    taking_of,
    taking_record,
)

PLAN = identity("stock: {}", ["SD1 600 x 300"])
TAKING = Taking(
    "../rack.yaml",
    PLAN,
    (Used("birch 18", 2, "0123456789abcdef"),),
    (
        Comes("KD7F-1", "sheet", "birch plywood", 18.0, 610.0, 402.5, cut_from="birch 18"),
        Comes(
            "KD7F-2",
            "board",
            "ash",
            22.0,
            900.0,
            70.0,
            sawn_thickness=27.0,
            flaws=(Flaw(0.0, 0.0, 40.0, 70.0, "split"), Flaw(300.5, 20.0, 30.0, 10.0)),
        ),
        Comes(
            "KD7F-3", "length", "pine", 20.0, 900.0, 0.0, 44.0, flaws=(Flaw(0.0, 0.0, 40.0, 0.0),)
        ),
    ),
)


def test_a_taking_is_read_as_it_was_written() -> None:
    assert taking_of(json.loads(json.dumps(taking_record(TAKING)))) == TAKING


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda record: record.pop("plan"), "the plan's `rack` hasn't just the keys"),
        (lambda record: record.update(more=1), "the plan's `rack` hasn't just the keys"),
        (lambda record: record.update(uses=7), "`uses` of the plan's `rack` is of the wrong kind"),
        (lambda record: record["uses"].append("birch"), "an entry of `uses` isn't a record"),
        (lambda record: record["uses"][0].update(count=0), "takes less than one"),
        (lambda record: record["uses"][0].update(count=True), "`count` of an entry of `uses`"),
        (lambda record: record["uses"][0].update(count=1.5), "`count` of an entry of `uses`"),
        (lambda record: record["comes"][0].update(kind="log"), "`kind` of an entry of `comes`"),
        (lambda record: record["comes"][0].update(length=0), "has no size"),
        (lambda record: record["comes"][0].update(width=-1.0), "has no size"),
        (lambda record: record["comes"][0].update(flaws=None), "`flaws` of an entry of `comes`"),
        (lambda record: record["comes"][0].pop("flaws"), "an entry of `comes` hasn't just the"),
        (lambda record: record["comes"][0].update(flaws=["knot"]), "a flaw of `comes` isn't a rec"),
        (lambda record: _flaw(record).update(why=3), "`why` of a flaw of `comes` is of the wrong"),
        (lambda record: _flaw(record).pop("x"), "a flaw of `comes` hasn't just the keys x, y, le"),
        (lambda record: _flaw(record).update(x=-1), "a flaw of `comes` isn't in its offcut"),
        (lambda record: _flaw(record).update(length=0), "a flaw of `comes` isn't in its offcut"),
        (lambda record: _flaw(record).update(x=860.1), "a flaw of `comes` isn't in its offcut"),
        (lambda record: _flaw(record).update(width=70.1), "a flaw of `comes` isn't in its offcut"),
    ],
)
def test_what_is_no_taking_is_refused(change, said) -> None:  # type: ignore[no-untyped-def]
    record = json.loads(json.dumps(taking_record(TAKING)))
    change(record)
    with pytest.raises(ValueError, match=said):
        taking_of(record)


def _flaw(record: Any) -> Any:
    return record["comes"][1]["flaws"][0]


def test_the_same_plan_has_the_same_identity_and_another_rack_another() -> None:
    assert identity("a", ["b", "c"]) == identity("a", ["b", "c"])
    others = [("a", ["bc"]), ("a", ["c", "b"]), ("ab", ["c"]), ("a", ["b", "c", ""])]
    found = {identity("a", ["b", "c"]), *(identity(*each) for each in others)}
    assert len(found) == 5


def test_offcuts_of_two_plans_are_called_differently() -> None:
    plans = [identity("", [str(number)]) for number in range(200)]
    names = {offcut_name(plan, 1) for plan in plans}
    assert len(names) > 195, "four of twenty-four characters: 331,776 marks"
    assert all(len(name) == 6 and name.endswith("-1") for name in names)
    assert not any(set(name) & set("BIOSZ0258") for name in names)
    assert offcut_name(PLAN, 12) == offcut_name(PLAN, 1)[:-1] + "12"
