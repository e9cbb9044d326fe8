"""What the package offers: names that stand once, in `__init__.pyi`, and are what it says."""

from __future__ import annotations

import re
import subprocess
import sys
from importlib.metadata import version
from pathlib import Path

import pytest

import rodwright


@pytest.mark.parametrize("name", rodwright.__all__)
def test_every_name_is_there_and_says_what_it_is(name: str) -> None:
    found = getattr(rodwright, name)
    assert found.__doc__, name
    assert found.__module__.startswith("rodwright."), name


def test_all_names_can_be_had_at_once() -> None:
    """In a fresh process: here some are loaded already."""
    code = "from rodwright import *\nprint(*sorted(n for n in globals() if n[0] != '_'))"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.split() == rodwright.__all__


def test_a_reader_of_the_module_sees_them() -> None:
    assert dir(rodwright) == sorted([*rodwright.__all__, "__version__"])


def test_what_is_called_otherwise_where_it_is_made() -> None:
    from rodwright.checks import check_parts

    assert rodwright.check is check_parts
    assert "check_parts" not in rodwright.__all__


def test_other_names_are_none() -> None:
    with pytest.raises(AttributeError, match="no attribute 'chek'"):
        rodwright.chek  # type: ignore[attr-defined]  # noqa: B018


def test_version() -> None:
    assert rodwright.__version__ == version("rodwright")


def test_the_changelog_tells_of_this_version() -> None:
    text = (Path(__file__).parents[1] / "CHANGELOG.md").read_text(encoding="utf-8")
    heads = re.findall(r"^## \[(.+?)\]", text, flags=re.MULTILINE)
    assert heads[0] == "Unreleased"
    assert heads[1] == rodwright.__version__
