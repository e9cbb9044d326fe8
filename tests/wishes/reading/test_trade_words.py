"""Words of the trade are answered with the name that the spec language has for the thing."""

from __future__ import annotations

import re
from typing import Any

import pytest
from ruamel.yaml import YAML

from rodwright.problems import ProblemsError
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.files import parse_spec
from rodwright.wishes.reading.schema import Shape, json_schema
from rodwright.wishes.reading.trade_words import CHOICES, KEYS, choice_for, key_for

SPEC = """\
title: Test
size: {width: 800, height: 900, depth: 300}
stock: {ply: {kind: sheet, material: birch plywood, thickness: 18}}
carcass: {stock: ply}
"""


def _names(node: Any, found: set[str]) -> set[str]:
    """Every key and every choice in a JSON schema, found without the language's own walk."""
    if isinstance(node, dict):
        found |= set(node.get("properties", {}))
        found |= {str(each) for each in node.get("enum", ())} | {str(node.get("const", ""))}
        for each in node.values():
            _names(each, found)
    elif isinstance(node, list):
        for each in node:
            _names(each, found)
    return found


NAMES = _names(json_schema(UnitSpec), set())


@pytest.mark.parametrize("word", KEYS)
def test_every_key_that_is_told_is_one(word: str) -> None:
    here, way = KEYS[word]
    assert here or way
    assert set(here.split()) <= NAMES
    keys, _, value = way.partition(":")
    shape: Shape | None = Shape.of(UnitSpec)
    for key in keys.split(".") if way else ():
        assert shape is not None
        assert key in shape.key_names(), way
        shape = shape.at(key)
    written = YAML(typ="safe", pure=True).load(value) if value else None
    for group in written if isinstance(written, list) else [written]:
        if isinstance(group, dict):
            assert set(group) | {str(each) for each in group.values()} <= NAMES
        elif isinstance(group, str):
            assert group in NAMES


@pytest.mark.parametrize("word", CHOICES)
def test_every_choice_that_is_told_is_one(word: str) -> None:
    assert set(CHOICES[word].split()) <= NAMES
    # A cam is one of the knock-down fittings, and stands for the joint where that is asked.
    assert word not in CHOICES[word].split() or word == "cam"


@pytest.mark.parametrize("written", ["Toe Kick", "toe-kick", "toe_kicks", "toekick"])
def test_words_in_any_dress(written: str) -> None:
    found = key_for(written, ["base", "carcass"])
    assert found is not None
    assert found.name == "base: {kind: toe_board}"


def _told(text: str) -> list[tuple[str, str]]:
    with pytest.raises(ProblemsError) as error:
        parse_spec(text, "unit.yaml")
    return [(problem.message, problem.remedy) for problem in error.value.problems]


@pytest.mark.parametrize(
    ("line", "remedy"),
    [
        ("countertop: {stock: ply}", "Write `worktop:`."),
        ("toe_kick: {height: 100}", "Write `base: {kind: toe_board}`."),
        ("interior: {stretcher: {width: 70}}", "Write `between:`."),
        ("dadoes: 6", "Write `ends: housed` under `interior.shelves`."),
        ("interior: {shelves: {adjustable: true}}", "Write `fixed: false`."),
        ("interior: {shelves: {count: 2, qty: 3}}", "Write `count:`."),
        ("interior: {countertop: {stock: ply}}", "Write `worktop:` at the top of the spec."),
        ("interior: {doors: {pull: {}}}", "Write `handle:`."),
        ("edge_banding: {material: oak}", "Write `edging:`."),
        ("interior: {shelves: {count: 2, ends: dadoed}}", "Write `housed`."),
        ("interior: {doors: {kind: shaker}}", "Write `framed`."),
        ("interior: {doors: {hinge: {kind: concealed}}}", "Write `cup`."),
        ("back: {stock: ply, fixing: rabbeted}", "Write `rebated`."),
        ("cutouts: [{kind: outlet, at: [1, 2], width: 9, height: 9}]", "Write `socket`."),
        ("unit: inches", "Write `in`."),
        ("skirting: {height: 90}", "Write `cutouts: [{kind: skirting}]`."),
        ("interior: {pull-outs: {count: 2}}", "Write `drawers:`."),
        ("interior: {adjustable shelves: 3}", "Write `fixed: false` under `interior.shelves`."),
        ("interior: {shelves: {count: 2, pegs: 5}}", "Write `holes:`."),
    ],
)
def test_a_word_of_the_trade_is_answered(line: str, remedy: str) -> None:
    ((message, said),) = _told(f"{SPEC}{line}\n")
    assert said == remedy
    assert "is called" in message
    assert re.search("`" + re.escape(said.split("`")[1]) + "` here", message)


def test_a_word_that_means_nothing_here_gets_the_usual_answer() -> None:
    ((message, _),) = _told(f"{SPEC}wibble: 3\n")
    assert "isn't a key of the spec" in message
    assert "is called" not in message
    assert choice_for("wibble", ["housed"]) is None
    assert choice_for("dadoed", ["butted"]) is None
    assert key_for("qty", ["stock"]) is None


@pytest.mark.parametrize(
    ("line", "says", "remedy"),
    [
        ("base: {kind: toe_board, height: 90, levelling: 9}", "it goes with `kind: plinth`",
         "Take it out, or write `kind: plinth`."),
        ("face_frame: {stock: ply, width: 40, overlap: 5}", "it stands under `fit`",
         "Write `overlap:` under `fit`."),
        ("fit: {slope: 5}", "it stands at the top", "Write `slope:` at the top of the spec."),
        ("fit: {side: 5}", "did you mean `sides`?", "Write `sides:`."),
        ("face_frame: {stock: ply, width: 40, overhnag: 5}", "did you mean `overhang`?",
         "Write `overhang:`."),
    ],
)  # fmt: skip
def test_a_key_that_belongs_elsewhere_is_told_where(line: str, says: str, remedy: str) -> None:
    ((message, said),) = _told(f"{SPEC}{line}\n")
    assert says in message
    assert said == remedy


def test_a_key_told_by_its_name_is_not_missed_as_well() -> None:
    ((message, said),) = _told(SPEC.replace("stock: {ply", "materials: {ply"))
    assert "it is called `stock:` here" in message
    assert said == "Write `stock:`."


@pytest.mark.parametrize(
    ("short", "whole"),
    [
        ("shelves: 3", "shelves: {count: 3}"),
        ("drawers: 2", "drawers: {count: 2}"),
        ("doors: 2", "doors: {count: 2}"),
    ],
)
def test_how_many_may_stand_alone(short: str, whole: str) -> None:
    one, other = (
        parse_spec(f"{SPEC}interior: {{{each}}}\n", "u.yaml").spec for each in (short, whole)
    )
    assert one == other


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ("shelves: 0", "`shelves` has to be at least 1; it is `0`"),
        ("shelves: 201", "`shelves` has to be at most 200; it is `201`"),
        ("doors: 3", "`doors` takes `1` or `2`; `3` is a number"),
        ("drawers: three", "`drawers` takes a whole number or the keys"),
    ],
)
def test_how_many_keeps_its_limits(line: str, says: str) -> None:
    ((message, _),) = _told(f"{SPEC}interior: {{{line}}}\n")
    assert message.startswith(says)
