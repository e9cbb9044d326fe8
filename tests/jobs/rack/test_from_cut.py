"""Plans that are made from a rack, written, and taken out of it."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from rodwright.jobs.cut import cut, write_cut
from rodwright.jobs.rack import read_rack
from rodwright.jobs.rack import take_from_rack as take
from rodwright.problems import ProblemsError
from rodwright.wishes import read_spec

SPEC = """\
title: {title}
size: {{width: {width}, height: 700, depth: 250}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 18}}
carcass: {{stock: ply, corners: butted}}
"""
RACK = """\
saws: [{kind: table saw, kerf: 3}]
keep: {length: 300, width: 100}
stock:
  # left of the kitchen
  A: {kind: sheet, material: birch ply, thickness: 18, size: [1500, 600], count: 1}
  B: {kind: sheet, material: birch ply, thickness: 18.2, size: [2440, 1220], count: 2, price: 70}
"""


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    (tmp_path / "rack.yaml").write_text(RACK)
    return tmp_path


def plan(shop: Path, title: str, width: int) -> Path:
    """A plan for a small carcass, made from the rack as it is and written into its own folder."""
    spec = shop / f"{title}.yaml"
    spec.write_text(SPEC.format(title=title, width=width))
    made = cut([read_spec(spec)], rack=read_rack(shop / "rack.yaml"))
    write_cut(made, shop / title)
    return shop / title / "cut.json"


def counts(shop: Path) -> dict[str, int]:
    return {each.name: each.piece.count for each in read_rack(shop / "rack.yaml").entries}


def test_a_plan_is_taken_and_the_next_starts_from_what_is_left(shop: Path) -> None:
    first = plan(shop, "one", 600)
    document = json.loads(first.read_text())["rack"]
    assert document["rack"] == "../rack.yaml"
    done = take(first)
    left = counts(shop)
    assert {name: left.get(name, 0) for name in done.used} == done.left
    came = {each.name for each in done.came}
    assert came and came <= set(left)
    with pytest.raises(ProblemsError, match="taken out of the rack already"):
        take(first)
    second = plan(shop, "two", 600)
    used = take(second).used
    assert all(count <= left[name] for name, count in used.items())
    assert "# left of the kitchen" in (shop / "rack.yaml").read_text()


def test_two_plans_from_one_rack_of_which_the_second_needs_what_the_first_took(
    shop: Path,
) -> None:
    first, second = plan(shop, "one", 600), plan(shop, "two", 610)
    needs = [
        {each["entry"]: each["count"] for each in json.loads(path.read_text())["rack"]["uses"]}
        for path in (first, second)
    ]
    assert needs[0] == needs[1] == {"A": 1}, "the smaller sheet does for each of them"
    take(first)
    before = (shop / "rack.yaml").read_text()
    with pytest.raises(ProblemsError, match="`A`, which the plan cuts, isn't in the rack any more"):
        take(second)
    assert (shop / "rack.yaml").read_text() == before
