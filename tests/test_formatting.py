"""The formatter has its way, but at tables of data."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
SKIPS = re.compile(r"#\s*fmt: skip\s*$", re.MULTILINE)
Display = ast.List | ast.Tuple | ast.Set | ast.Dict


def rows(display: Display) -> int:
    return len(display.values if isinstance(display, ast.Dict) else display.elts)


def skipped(text: str) -> Iterator[tuple[int, list[ast.AST]]]:
    """Lines that end with the remark, each with what ends there."""
    ends: dict[int, list[ast.AST]] = {}
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.stmt | ast.expr):
            ends.setdefault(node.end_lineno or 0, []).append(node)
    for number, line in enumerate(text.splitlines(), 1):
        if SKIPS.search(line):
            yield number, ends.get(number, [])


def is_table(node: ast.AST) -> bool:
    """Whether most of its lines are those of four entries or more."""
    if not isinstance(node, ast.stmt | ast.expr):
        return False
    return any(
        rows(each) >= 4 and lines(each) >= 2 and lines(each) >= 0.6 * lines(node)
        for each in ast.walk(node)
        if isinstance(each, Display)
    )


def lines(node: ast.stmt | ast.expr) -> int:
    return (node.end_lineno or node.lineno) - node.lineno + 1


@pytest.mark.parametrize("room", ["generator", "cli", "tests"])
def test_the_formatter_is_told_off_at_tables_only(room: str) -> None:
    places = [
        f"{path.relative_to(ROOT)}:{number}"
        for path in sorted((ROOT / room).rglob("*.py"))
        if SKIPS.search(text := path.read_text(encoding="utf-8"))
        for number, nodes in skipped(text)
        if not any(map(is_table, nodes))
    ]
    assert places == []
