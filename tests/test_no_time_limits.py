"""No test depends on how fast the machine is."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

from hypothesis import HealthCheck, settings

TESTS = Path(__file__).parent
CLOCKS = ("perf_counter", "monotonic", "process_time", "thread_time", "time_ns")
SLOW_ON_PURPOSE = ("benchmarks", "campaigns")
"""Run by hand: they measure, and pytest doesn't collect them."""


def modules() -> Iterator[tuple[str, ast.Module]]:
    for path in sorted(TESTS.rglob("*.py")):
        name = path.relative_to(TESTS).as_posix()
        if not name.startswith(SLOW_ON_PURPOSE):
            yield name, ast.parse(path.read_text(encoding="utf-8"))


def calls(tree: ast.Module) -> Iterator[tuple[str, ast.Call]]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            yield ast.unparse(node.func).rsplit(".", 1)[-1], node


def test_no_property_test_has_a_deadline() -> None:
    assert settings.default is not None
    assert settings.default.deadline is None
    assert HealthCheck.too_slow in settings.default.suppress_health_check


def test_no_test_sets_a_limit_of_its_own() -> None:
    found = []
    for name, tree in modules():
        for called, node in calls(tree):
            given = {each.arg: ast.unparse(each.value) for each in node.keywords if each.arg}
            if called == "settings":
                # What a test suppresses stands instead of what the suite does.
                kept = given.get("suppress_health_check")
                if "deadline" in given or (kept is not None and "too_slow" not in kept):
                    found.append(f"{name}:{node.lineno}")
            elif "timeout" in given or called in ("timeout", "alarm", *CLOCKS):
                found.append(f"{name}:{node.lineno}")
    assert found == []
