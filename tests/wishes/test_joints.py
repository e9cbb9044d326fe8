"""Joints as they are written: a bare word, or keys where a figure is wished."""

from __future__ import annotations

from typing import get_args

import jsonschema
import pytest

from rodwright.problems import ProblemsError
from rodwright.setout.rod.reach import joint_of, reach
from rodwright.wishes import spec_schema
from rodwright.wishes.joints import JointSpec, JointWord
from rodwright.wishes.reading.files import parse_spec

SPEC = """\
title: Test
size: {width: 600, height: 800, depth: 300}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18}
carcass:
  stock: ply
  corners: %s
"""


def corners_of(written: str) -> JointSpec:
    return parse_spec(SPEC % written, "unit.yaml").spec.carcass.corners


@pytest.mark.parametrize("word", get_args(JointWord))
def test_a_bare_word_is_the_joint_with_its_usual_figures(word: JointWord) -> None:
    assert corners_of(word) == corners_of(f"{{joint: {word}}}") == joint_of(word)


def test_figures_are_lengths_like_any_other() -> None:
    wish = corners_of("{joint: housed, depth: 1/4 in, stopped: 0.5 in}")
    assert (wish.depth, wish.stopped) == pytest.approx((6.35, 12.7))


@pytest.mark.parametrize(
    ("written", "place", "message"),
    [
        ("glued", (7, 12), "`corners` takes `butted`, `screwed`, `housed`, `rebated`, `tongued`, "
         "`dowelled`, `biscuited`, `loose-tenoned`, `pocket-screwed`, `knock-down` or `mitred`; "
         "`glued` isn't one of them"),
        ("{joint: screwed, depth: 6}", (7, 36), "`depth`: it says nothing about a screwed "
         "joint"),
        ("{joint: dowelled, stopped: 0}", (7, 39), "`stopped`: it says nothing about a "
         "dowelled joint"),
        ("{depth: 6}", (7, 3), "`corners` needs `joint`"),
    ],
)  # fmt: skip
def test_what_is_no_joint_is_told_at_its_place(
    written: str, place: tuple[int, int], message: str
) -> None:
    with pytest.raises(ProblemsError) as told:
        corners_of(written)
    (problem,) = told.value.problems
    assert problem.message == message
    assert (problem.line, problem.column) == place


@pytest.mark.parametrize(
    ("written", "good"),
    [
        ("dowelled", True),
        ({"joint": "dowelled", "diameter": 8}, True),
        ("glued", False),
        ({"diameter": 8}, False),
    ],
)
def test_the_schema_takes_both_ways_of_writing(written: object, good: bool) -> None:
    spec = {
        "title": "Test",
        "stock": {"ply": {"kind": "sheet", "material": "mdf", "thickness": 18}},
        "carcass": {"stock": "ply", "corners": written},
    }
    validator = jsonschema.Draft202012Validator(spec_schema())
    assert validator.is_valid(spec) is good


@pytest.mark.parametrize(
    ("word", "far"),
    [
        ("butted", 0.0),
        ("dowelled", 0.0),
        ("housed", 6.0),
        ("tongued", 6.0),
        ("rebated", 9.0),
        ("mitred", 18.0),
    ],
)
def test_how_far_a_part_reaches_into_18_mm(word: JointWord, far: float) -> None:
    assert reach(joint_of(word), 18.0, "mm") == far


def test_reach_is_rounded_to_sixteenths_of_an_inch() -> None:
    """A third of 3/4 in is 1/4 in; of 23/32 in, 0.2396 in, it is 4/16."""
    assert reach(joint_of("housed"), 0.75 * 25.4, "in") == pytest.approx(25.4 / 4)
    assert reach(joint_of("housed"), 23 / 32 * 25.4, "in") == pytest.approx(25.4 / 4)
