"""Rules have names that stay, a check that finds them, and a paragraph that explains them."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import pytest

import rodwright
from rodwright import checks
from rodwright.checks.closed_meshes import PENETRATION
from rodwright.checks.collisions import MEETING
from rodwright.checks.meanings import MEANINGS
from rodwright.checks.rules import Rule
from rodwright.jobs.new import model_names, model_path

SOURCES = sorted(Path(checks.__file__).parent.glob("*.py"))


def _names_in(tree: ast.AST) -> set[str]:
    return {
        node.attr
        for node in ast.walk(tree)
        if isinstance(node, ast.Attribute)
        and isinstance(node.value, ast.Name)
        and node.value.id == "Rule"
    }


def _named_in(tree: ast.AST) -> set[Rule]:
    return {Rule[name] for name in _names_in(tree) if name in Rule.__members__}


def _cautions() -> set[Rule]:
    """Rules of findings that are written as cautions."""
    return {
        rule
        for path in SOURCES
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call) and "Severity.CAUTION" in map(ast.unparse, node.args[:1])
        for rule in _named_in(node.args[1])
    }


FOUND_IN = {
    path.stem: _named_in(ast.parse(path.read_text(encoding="utf-8")))
    for path in SOURCES
    if path.stem != "rules"
}


def test_a_finding_goes_by_a_rule_of_the_list() -> None:
    for path in SOURCES:
        lacking = _names_in(ast.parse(path.read_text(encoding="utf-8"))) - {*Rule.__members__}
        assert not lacking, f"{lacking} in {path.name}: not in checks/rules.py"


@pytest.mark.parametrize("rule", Rule)
def test_a_rule_has_a_paragraph(rule: Rule) -> None:
    assert rule in MEANINGS, f"`{rule}` has no meaning in checks/meanings/"
    meaning = MEANINGS[rule]
    assert meaning.title[0].isupper() and not meaning.title.endswith(".")
    for text in (meaning.meaning, meaning.source, meaning.remedy):
        assert len(text) > 10
        assert text.endswith(".")
        assert "  " not in text


@pytest.mark.parametrize("rule", Rule)
def test_a_rule_is_found_by_a_check(rule: Rule) -> None:
    assert any(rule in rules for rules in FOUND_IN.values()), f"no check finds `{rule}`"


TESTS = "".join(
    path.read_text(encoding="utf-8")
    for path in Path(__file__).parents[1].rglob("test_*.py")
    if path != Path(__file__)
)


@pytest.mark.parametrize("rule", Rule)
def test_a_rule_is_tried_by_a_test(rule: Rule) -> None:
    assert re.search(rf"\bRule\.{rule.name}\b", TESTS), f"no test looks for `{rule}`"


@pytest.mark.parametrize("rule", Rule)
def test_a_name_can_be_typed_and_guessed(rule: Rule) -> None:
    assert re.fullmatch(r"[a-z]+(-[a-z]+)*", rule)
    assert rule == rule.name.lower().replace("_", "-")
    assert len(rule) <= 30


@pytest.mark.parametrize("rule", sorted(_cautions()))
def test_a_caution_says_whom_it_can_hurt(rule: Rule) -> None:
    assert MEANINGS[rule].danger


def test_texts_have_the_limits_of_the_solids_checks() -> None:
    """Those are loaded with trimesh, so that the texts have them written out."""
    assert f"({PENETRATION:g} mm)" in MEANINGS[Rule.COLLISION].meaning
    assert f"{MEETING:g} mm apart" in MEANINGS[Rule.JOINT_APART].meaning


def test_findings_of_the_models_go_by_rules() -> None:
    for name in model_names():
        unit = rodwright.set_out(rodwright.read_spec(model_path(name)))
        assert all(isinstance(finding.rule, Rule) for finding in rodwright.check(unit))
