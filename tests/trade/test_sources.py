"""Every figure of the trade says where it comes from, itself or by what heads its module."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

import rodwright.trade
from rodwright.trade.sources import Source

MODULES = sorted(
    path
    for path in Path(next(iter(rodwright.trade.__path__))).rglob("*.py")
    if path.stem != "__init__"
)
SOURCE = re.compile(
    r"no source|from memory|handbook|\bEN \d|\bASME\b|\bASTM\b|https?:", re.IGNORECASE
)


def figures(module: ast.Module) -> Iterator[tuple[str, str]]:
    """Names of constants that hold numbers, and what is said of each below it."""
    for statement, after in zip(module.body, [*module.body[1:], None], strict=True):
        if not isinstance(statement, ast.Assign | ast.AnnAssign) or statement.value is None:
            continue
        target = statement.targets[0] if isinstance(statement, ast.Assign) else statement.target
        numbers = [
            each.value
            for each in ast.walk(statement.value)
            if isinstance(each, ast.Constant) and isinstance(each.value, int | float)
        ]
        if numbers:
            said = after.value if isinstance(after, ast.Expr) else None
            yield ast.unparse(target), said.value if isinstance(said, ast.Constant) else ""


def carrying_one(module: ast.Module) -> set[str]:
    """Names of constants that are made with a `Source` of their own."""
    return {
        ast.unparse(statement.targets[0])
        for statement in module.body
        if isinstance(statement, ast.Assign)
        for each in ast.walk(statement.value)
        if isinstance(each, ast.Call) and ast.unparse(each.func) == "Source" and each.args
    }


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.stem)
def test_every_figure_has_a_source(path: Path) -> None:
    module = ast.parse(path.read_text())
    head = ast.get_docstring(module) or ""
    told = {name: " ".join(f"{head} {said}".split()) for name, said in figures(module)}
    carried = carrying_one(module)
    silent = [name for name, said in told.items() if not SOURCE.search(said)]
    assert [name for name in silent if name not in carried] == []


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.stem)
def test_every_public_figure_says_what_it_is(path: Path) -> None:
    module = ast.parse(path.read_text())
    assert [n for n, said in figures(module) if not n.startswith(("_", "(_")) and not said] == []


def test_a_remembered_source_says_so() -> None:
    assert str(Source("Wood Handbook")) == "Wood Handbook"
    assert str(Source("Wood Handbook", seen=False)) == "Wood Handbook (from memory)"
