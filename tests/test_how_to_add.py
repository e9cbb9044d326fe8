"""What must know a new check or joint does, as "How to add" in DEVELOPERS.md has it.

Each test names what was forgotten.
"""

from __future__ import annotations

import ast
import re
from typing import get_args

import pytest

from kit.house_plan import ROOT
from rodwright.checks import CHECKS
from rodwright.setout.joints import MAKERS
from rodwright.setout.rod.reach import REACHES
from rodwright.unit import JointKind
from rodwright.wishes import UnitSpec
from rodwright.wishes.joints import FIGURES, JointWord
from rodwright.wishes.reading.schema import json_schema


def test_a_check_of_parts_is_gathered() -> None:
    """A check is what makes findings of a whole unit, and begins with no underscore."""
    found = {}
    for path in (ROOT / "generator/rodwright/checks").glob("[a-z]*.py"):
        for node in ast.parse(path.read_text("utf-8")).body:
            if isinstance(node, ast.FunctionDef) and not node.name.startswith("_"):
                takes = [ast.unparse(each.annotation or each) for each in node.args.args]
                gives = ast.unparse(node.returns) if node.returns else ""
                if (takes, gives) == (["Unit"], "Iterator[Finding]"):
                    found[f"rodwright.checks.{path.stem}"] = node.name
    assert found == {check.__module__: check.__name__ for check in CHECKS}


@pytest.mark.parametrize("kind", JointKind)
def test_a_kind_of_joint_says_whether_parts_touch_and_whether_it_leaves_play(
    kind: JointKind,
) -> None:
    try:
        told = (kind.meets, kind.free)
    except KeyError:
        pytest.fail(f"{kind.name} has no row in unit/joints.py")
    assert {*told} <= {True, False}


@pytest.mark.parametrize("word", get_args(JointWord))
def test_a_word_for_a_joint_is_known_to_the_spec_the_set_out_and_the_readme(
    word: JointWord,
) -> None:
    assert word in FIGURES, f"{word} has no row in wishes/joints.py"
    assert word in REACHES, f"{word} has no row in setout/rod/reach.py"
    assert word in MAKERS, f"{word} has no row in setout/joints/__init__.py"
    row = re.search(r"^\| joints \|.*$", (ROOT / "README.md").read_text("utf-8"), re.MULTILINE)
    assert row and f"`{word}`" in row[0], f"{word} is missing from the README's row of joints"


def test_each_figure_of_a_joint_says_which_joints_it_goes_with() -> None:
    said = json_schema(UnitSpec)["$defs"]["JointSpec"]["properties"]
    for figure in dict.fromkeys(each for figures in FIGURES.values() for each in figures):
        words, colon, _ = said[figure]["description"].partition(": ")
        owners = {word for word, figures in FIGURES.items() if figure in figures}
        told = set(words.lower().split(", ")) if colon else owners
        assert told == owners, f"the docstring of {figure} has to begin with {sorted(owners)}"
