"""Heights of an opening under a sloping ceiling: they are given as if there were none."""

from __future__ import annotations

import pytest

from kit.specs import problems_of, spec_from, unit_from
from rodwright.jobs.survey import survey
from rodwright.problems import ProblemsError

EAVES = """
unit: in
opening:
  width: 74
  height: {left: 50, RIGHT}
  depth: 14 3/4
slope: {falls: right, low: 30, pitch: 40}
interior: {shelves: 2}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 3/4, size: [96, 48]}
"""


@pytest.mark.parametrize(
    ("read", "where"),
    [
        ("right: 30", "opening.height.right"),
        ("middle: 43", "opening.height.middle"),
        ("others: [{at: 60, height: 41 3/4}]", "opening.height.others.0.height"),
    ],
)
def test_a_height_under_the_slope_is_told_as_one(read: str, where: str) -> None:
    """Both where the unit is set out and where the opening is surveyed, and nothing else."""
    text = EAVES.replace("RIGHT", read)
    (said,) = problems_of(text)
    assert said.startswith(f"{where}: ")
    assert "as if there were no slope" in said
    assert "`slope.low` (here 30 in)" in said
    with pytest.raises(ProblemsError, match="as if there were no slope"):
        survey(spec_from(text))


def test_heights_as_if_there_were_no_slope_are_good() -> None:
    assert problems_of(EAVES.replace("RIGHT", "right: 49 7/8")) == []
    assert unit_from(EAVES.replace("RIGHT", "right: 49 7/8")).surroundings.ceiling is not None


def test_without_a_slope_a_height_far_off_is_one_of_another_opening() -> None:
    text = EAVES.replace("RIGHT", "right: 30").replace("slope:", "unused:").split("unused:")
    plain = text[0] + text[1].split("\n", 1)[1]
    (said,) = problems_of(plain)
    assert "can't be of one opening" in said
