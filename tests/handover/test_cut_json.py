"""`cut.json` holds the whole plan, and reads back."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from kit.cuttings import cutting
from rodwright.cutting.saws import Saw
from rodwright.cutting.whole import Cutting, OneMore, Rules
from rodwright.handover.cut_json import SCHEMA_VERSION, cut_json, read_cut
from rodwright.handover.cut_sequence import steps_of
from rodwright.problems import ProblemsError

DOCS = (Path(__file__).parents[2] / "docs" / "cut.md").read_text(encoding="utf-8")


def written(plan: Cutting, folder: Path) -> Path:
    path = folder / "cut.json"
    path.write_bytes(cut_json(plan, steps_of(plan)))
    return path


def test_it_reads_back_into_an_equal_plan(tmp_path: Path) -> None:
    plan = cutting(
        rules=Rules(Saw(kerf=3.0, rip=650.0), stages=3, first_cut="along", head_cuts=True),
        one_more=(OneMore(0, 3050.0, 1525.0, 115.0, True, 1, 18.0),),
        seed=7,
    )
    assert read_cut(written(plan, tmp_path)) == plan


def test_it_says_what_others_would_have_to_work_out(tmp_path: Path) -> None:
    found = json.loads(written(cutting(), tmp_path).read_bytes())
    assert found["schema_version"] == SCHEMA_VERSION
    assert (found["paid"], found["without_price"]) == (74.0, ["beech 45"])
    assert [(row["name"], row["count"], row["sum"]) for row in found["shopping"]] == [
        ("ply 2440 x 1220", 1, 74.0),
        ("KD7F-3", 1, None),
        ("beech 45", 2, None),
    ]
    sheets, lengths = found["lots"]
    assert (sheets["cost_in"], lengths["cost_in"]) == ("money", "size")
    assert (sheets["gap"], lengths["gap"]) == (0.0, pytest.approx(0.02))
    assert sheets["weights"]["ply 2440 x 1220"] == pytest.approx(36.436)
    first = sheets["sheets"][0]["steps"][0]
    assert {"kind", "setting", "edge", "held", "measured", "rest"} <= set(first)
    assert len(sheets["order"]) == sum(len(each["steps"]) for each in sheets["sheets"])


def test_every_kept_offcut_falls_off_in_some_step() -> None:
    plan = cutting()
    found = json.loads(cut_json(plan, steps_of(plan)))
    names = {
        name
        for lot in found["lots"]
        for sheet in lot["sheets"]
        for step in sheet["steps"]
        for side in (step["measured"], step["rest"])
        if side is not None
        for name in side["names"]
    }
    assert names == {each["name"] for each in found["kept"]}


def test_equal_plans_give_equal_bytes() -> None:
    one, other = cutting(), cutting()
    assert cut_json(one, steps_of(one)) == cut_json(other, steps_of(other))


def test_a_search_that_was_stopped_is_told() -> None:
    plan = cutting()
    lots = tuple(
        replace(each, plan=replace(each.plan, stopped=at == 1)) for at, each in enumerate(plan.lots)
    )
    stopped = replace(plan, lots=lots)
    assert json.loads(cut_json(stopped, steps_of(stopped)))["stopped"] is True


def _keys(value: Any) -> set[str]:
    if isinstance(value, dict):
        named = {"labels", "used", "weights"}
        own = set(value)
        return own.union(*(_keys(v) for k, v in value.items() if k not in named))
    if isinstance(value, list):
        return set().union(*map(_keys, value))
    return set()


def test_the_page_tells_of_every_key() -> None:
    plan = cutting(one_more=(OneMore(0, 3050.0, 1525.0, 115.0, True, 1, 18.0),))
    told = set(re.findall(r"`([a-z_]+)`", DOCS))
    assert _keys(json.loads(cut_json(plan, steps_of(plan)))) - told == set()


def _spoilt(change: Callable[[dict[str, Any]], object]) -> bytes:
    plan = cutting()
    document = json.loads(cut_json(plan, steps_of(plan)))
    change(document)
    return json.dumps(document).encode()


@pytest.mark.parametrize(
    ("data", "said"),
    [
        (b"not json", "it is no plan of `rodwright cut`"),
        (b"[1, 2]", "it is no plan of `rodwright cut`"),
        (_spoilt(lambda each: each.pop("schema_version")), "it is no plan of `rodwright cut`"),
        (_spoilt(lambda each: each.update(schema_version=99)), "it is of version 99"),
        (_spoilt(lambda each: each.pop("lots")), "lots: Field required"),
        (_spoilt(lambda each: each["least"].update(length="long")), "least.length: Input should"),
        (_spoilt(lambda each: each["least"].update(length=float("nan"))), "it is no plan"),
    ],
)
def test_what_is_no_plan_is_refused(data: bytes, said: str, tmp_path: Path) -> None:
    path = tmp_path / "cut.json"
    path.write_bytes(data)
    with pytest.raises(ProblemsError, match=re.escape(said)):
        read_cut(path)


def test_a_file_that_isnt_there(tmp_path: Path) -> None:
    with pytest.raises(ProblemsError, match="No such file"):
        read_cut(tmp_path / "none.json")
