"""An opening read in another unit than was meant; the limits are common practice, no source."""

from __future__ import annotations

import pytest

from kit.specs import problems_of, spec_from, unit_from
from rodwright.checks import check_parts
from rodwright.checks.rules import Rule
from rodwright.problems import ProblemsError
from rodwright.setout import set_out_unit

BOOKCASE = """
opening: {width: WIDTH, height: HEIGHT, depth: DEPTH}
interior: {shelves: {count: 4, fixed: false}}
back: {stock: thin, fixing: rebated}
base: {kind: plinth, height: 80, toe_space: 40}
"""


def bookcase(width: str = "1196", height: str = "2300", depth: str = "340") -> str:
    return BOOKCASE.replace("WIDTH", width).replace("HEIGHT", height).replace("DEPTH", depth)


@pytest.mark.parametrize(
    ("text", "where", "what", "remedy"),
    [
        (bookcase(depth="34"), "opening.depth", "depth of 34 mm", "`34 cm`"),
        (bookcase(depth="{left: 34, right: 34.5}"), "opening.depth.left", "depth of 34 mm",
         "`34 cm`"),
        (bookcase(height="230"), "opening.height", "height of 230 mm", "`230 cm`"),
        (bookcase(height="{left: 230, others: [{at: 600, height: 231}]}"), "opening.height.left",
         "height of 230 mm", "`230 cm`"),
        (bookcase(width="30"), "opening.width", "width of 30 mm",
         "`30 cm`"),
    ],
)  # fmt: skip
def test_one_problem_and_nothing_that_follows_from_it(
    text: str, where: str, what: str, remedy: str
) -> None:
    with pytest.raises(ProblemsError) as error:
        set_out_unit(spec_from(text))
    (problem,) = error.value.problems
    assert ".".join(map(str, problem.where)) == where
    assert what in problem.message
    assert "is this in mm?" in problem.message
    assert remedy in problem.remedy


def test_what_is_wrong_besides_is_told_too() -> None:
    found = problems_of(
        bookcase(depth="34"),
        edging={"material": "birch veneer", "thickness": 4, "edges": ["sides"]},
    )
    assert [each.split(":")[0] for each in found] == ["opening.depth", "edging.thickness"]


def test_a_small_niche_that_is_right_hides_nothing() -> None:
    """What is wrong in a niche would be as wrong in an opening ten times as wide."""
    edging = {"material": "birch veneer", "thickness": 4, "edges": ["sides"]}
    text = "opening: {width: 200, height: 600, depth: 100}\n"
    assert [each.split(":")[0] for each in problems_of(text, edging=edging)] == ["edging.thickness"]


@pytest.mark.parametrize(("depth", "small"), [(79.0, True), (81.0, False)])
def test_a_shallow_opening_is_doubted_in_check(depth: float, small: bool) -> None:
    unit = unit_from(f"opening: {{width: 900, height: 2000, depth: {depth}}}\n")
    found = [each for each in check_parts(unit) if each.rule is Rule.SMALL_OPENING]
    assert bool(found) is small
    for each in found:
        assert "depth of 79 mm" in each.message
        assert "`79 cm`" in each.remedy


def test_in_inches_feet_are_offered() -> None:
    stock = {"ply": {"kind": "sheet", "material": "birch plywood", "thickness": "3/4"}}
    niche = "unit: in\nopening: {width: 8, height: 80, depth: 12}\n"
    unit = unit_from(niche, stock=stock)
    (found,) = [each for each in check_parts(unit) if each.rule is Rule.SMALL_OPENING]
    assert "`8 ft`" in found.remedy
    (told,) = problems_of(niche.replace("width: 8", "width: 1 1/2"), stock=stock)
    assert (
        told == "opening.width: the opening's width of 1 1/2 in is very small: is this in inches?"
    )
