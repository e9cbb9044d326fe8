"""What is said of a base that isn't written as the spec language has it."""

from __future__ import annotations

import pytest

from rodwright.problems import ProblemsError
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.files import parse_spec
from rodwright.wishes.reading.reference import reference_table

START = "title: A\ncarcass: {stock: a}\nstock: {a: {kind: sheet, material: mdf, thickness: 18}}\n"


@pytest.mark.parametrize(
    ("base", "said"),
    [
        ("{kind: plinth}", "`base` needs `height`"),
        ("{height: 100}", "`base` needs `kind`"),
        ("{kind: feet, height: 100}", "`feet` isn't one of them"),
        ("{kind: legs, height: 100, toe_space: 3}", "`toe_space` isn't a key of `base`"),
        ("plinth", "`plinth` is text"),
    ],
)
def test_one_problem_in_the_base_s_own_words(base: str, said: str) -> None:
    with pytest.raises(ProblemsError) as caught:
        parse_spec(f"{START}base: {base}\n", "unit.yaml")
    (problem,) = caught.value.problems
    assert said in problem.message
    assert problem.line == 4


def test_the_table_says_which_kind_a_key_goes_with() -> None:
    rows = {row.split("`")[1]: row for row in reference_table(UnitSpec).splitlines()[2:]}
    assert "With `kind: plinth`." in rows["base.levelling"]
    assert "With `kind: levellers`." in rows["base.range"]
    assert "With" not in rows["base.height"]
