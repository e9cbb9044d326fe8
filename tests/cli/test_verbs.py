"""What has to know a verb of the command line: each is named here that one of them lacks."""

from __future__ import annotations

import pkgutil
import re
from importlib import import_module
from inspect import isfunction
from pathlib import Path

import pytest
from typer.testing import CliRunner

import rodwright.jobs
import rodwright_cli
from rodwright_cli.main import app

README = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")
ONE_CALL = {"check", "parts", "schema"}
"""Verbs that are no more than a call of what `rodwright` offers, and need no job."""


def _modules(package: object) -> set[str]:
    return {each.name for each in pkgutil.iter_modules(package.__path__)}  # type: ignore[attr-defined]


def _is_verb(name: str) -> bool:
    """Whether a module of the command line is a verb: it holds a function of its own name."""
    return isfunction(getattr(import_module(f"rodwright_cli.{name}"), name, None))


MODULES = sorted(name for name in _modules(rodwright_cli) - {"__main__", "main"} if _is_verb(name))
OFFERED = [each.callback.__name__ for each in app.registered_commands if each.callback]


def test_every_module_of_a_verb_is_offered() -> None:
    assert sorted(OFFERED) == MODULES, "a verb's module, or its line in main.py, is missing"


def test_every_verb_has_a_job_or_is_one_call() -> None:
    assert _modules(rodwright.jobs) == set(MODULES) - ONE_CALL


@pytest.mark.parametrize("name", MODULES)
def test_a_verb_is_told_of(name: str) -> None:
    verb = name.replace("_", "-")
    assert re.search(rf"rodwright {verb}\b", README), f"README.md doesn't tell of {verb}"
    said = CliRunner().invoke(app, [verb, "--help"], env={"COLUMNS": "200"})
    assert said.exit_code == 0
    function = getattr(import_module(f"rodwright_cli.{name}"), name)
    assert " ".join(function.__doc__.split())[:40] in " ".join(said.output.split())
