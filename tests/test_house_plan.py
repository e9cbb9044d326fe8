"""The plan in DEVELOPERS.md, the import contracts and the imports are one and the same."""

from __future__ import annotations

import re
from itertools import pairwise

from click.testing import CliRunner
from importlinter.cli import lint_imports_command

from kit.house_plan import ROOT, floors, imports, rooms, with_imports

PLAN = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


def test_imports_keep_the_contracts() -> None:
    """An exception that is no longer needed breaks them too."""
    done = CliRunner().invoke(
        lint_imports_command, ["--config", str(ROOT / "pyproject.toml"), "--no-cache"]
    )
    assert done.exit_code == 0, done.output


def test_the_tables_imports_are_current() -> None:
    """If not: python tests/kit/house_plan.py DEVELOPERS.md."""
    assert with_imports(PLAN) == PLAN


def test_the_table_runs_down_as_the_contract_goes_up() -> None:
    down = [room for row in rooms(PLAN) for room in row]
    up = floors("rooms")
    assert sorted(down) == sorted(room for floor in up for room in floor)
    for lower, upper in pairwise(up):
        for room in upper:
            below = [each for each in lower if down.index(each) > down.index(room)]
            assert not below, f"{room} stands above {below} in the table, and may import them"


def test_the_tables_wings_are_the_contracts() -> None:
    row = next(line for line in PLAN.splitlines() if "rodwright/setout/`" in line)
    folders = {path.parent.name for path in ROOT.glob("generator/rodwright/setout/*/__init__.py")}
    named = re.findall(r"`(\w+)/`", row)
    assert named == [wing for floor in floors("wings") for wing in floor if wing in folders]


def test_only_the_face_and_the_command_line_lean_on_the_face() -> None:
    users = imports().find_modules_that_directly_import("rodwright")
    assert {user for user in users if not user.startswith("rodwright_cli")} == set()
