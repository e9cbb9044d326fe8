"""Where the output goes, and what it can't take, is no fault of the program's."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from rodwright.problems import Problem, printable
from rodwright_cli.console import OUTPUT_LOST, PlainConsole

SPEC = """\
title: "{title}"
size: {{width: 800, height: 900, depth: 250}}
stock:
  case: {{kind: sheet, material: birch plywood, thickness: 18}}
carcass: {{stock: case}}
interior: {{shelves: {{count: 2}}}}
opening: {{width: 810, height: 910, depth: 260}}
"""
COMMANDS = ("check", "parts", "survey")


def run(folder: Path, *words: str, **streams: object) -> subprocess.CompletedProcess[bytes]:
    options: dict[str, object] = {"stdout": subprocess.PIPE, "stderr": subprocess.PIPE} | streams
    return subprocess.run(
        [sys.executable, "-m", "rodwright_cli", *words], cwd=folder, check=False, **options
    )  # type: ignore[call-overload]


def spec(folder: Path, title: str = "Niche") -> str:
    (folder / "a.yaml").write_text(SPEC.format(title=title), encoding="utf-8")
    return "a.yaml"


@pytest.mark.parametrize("command", COMMANDS)
@pytest.mark.parametrize("encoding", ["cp1252", "ascii"])
def test_an_output_that_knows_few_characters(tmp_path: Path, command: str, encoding: str) -> None:
    name = spec(tmp_path, "Полка 棚")
    said = run(tmp_path, command, name, env=os.environ | {"PYTHONIOENCODING": encoding})
    assert (said.returncode, said.stderr) == (0, b"")
    assert "????? ?" in said.stdout.decode(encoding)


def test_a_refusal_on_an_output_that_knows_few_characters(tmp_path: Path) -> None:
    (tmp_path / "a.yaml").write_text("Полка: 1\n", encoding="utf-8")
    said = run(tmp_path, "check", "a.yaml", env=os.environ | {"PYTHONIOENCODING": "ascii"})
    assert said.returncode == 2
    assert b"a.yaml:1:1: `?????` isn't a key" in said.stderr


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="there is no such device here")
@pytest.mark.parametrize("words", [*COMMANDS, "schema", "new", "--help"])
def test_an_output_that_is_full(tmp_path: Path, words: str) -> None:
    names = [spec(tmp_path)] if words in COMMANDS else []
    with Path("/dev/full").open("wb") as full:
        said = run(tmp_path, words, *names, stdout=full)
    assert said.returncode == OUTPUT_LOST
    told = "The output can't be written: No space left on device\n  Send it somewhere else.\n"
    assert said.stderr.decode() == told


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="there is no such device here")
def test_nothing_can_be_said_at_all(tmp_path: Path) -> None:
    with Path("/dev/full").open("wb") as full:
        assert run(tmp_path, "check", spec(tmp_path), stdout=full, stderr=full).returncode == 74
        assert run(tmp_path, "check", "none.yaml", stdout=full, stderr=full).returncode == 2


@pytest.mark.parametrize("words", [*COMMANDS, "schema"])
def test_an_output_that_nobody_reads(tmp_path: Path, words: str) -> None:
    names = [spec(tmp_path)] if words in COMMANDS else []
    reading, writing = os.pipe()
    os.close(reading)
    said = run(tmp_path, words, *names, stdout=writing)
    os.close(writing)
    assert (said.returncode, said.stderr) == (OUTPUT_LOST, b"")


def test_an_output_that_is_closed(tmp_path: Path) -> None:
    name = spec(tmp_path)
    said = subprocess.run(
        f"{sys.executable} -m rodwright_cli check {name} >&-",
        shell=True,
        cwd=tmp_path,
        capture_output=True,
        check=False,
    )
    assert (said.returncode, said.stderr) == (0, b"")


def test_no_control_character_reaches_the_terminal(tmp_path: Path) -> None:
    (tmp_path / "a.yaml").write_text(
        SPEC.format(title="x").replace("case:", '"\\e[31mc\\u202e\\a":')
        + '"\\e]0;t\\a": 1\n"a\\nb": 2\n',
        encoding="utf-8",
    )
    said = run(tmp_path, "check", "a.yaml")
    assert said.returncode == 2
    shown = said.stdout.decode() + said.stderr.decode()
    assert all(printable(line) == line for line in shown.splitlines())
    assert "`\\x1b]0;t\\x07` isn't a key" in shown
    assert "b` isn't a key" in shown


def test_a_file_and_a_folder_named_to_fool_the_terminal(tmp_path: Path) -> None:
    name = "\x1b[31ma[bold]:smile:.yaml"
    (tmp_path / name).write_text(SPEC.format(title="x :smile: [red]"), encoding="utf-8")
    said = run(tmp_path, "check", name)
    assert b"x :smile: [red]" in said.stdout
    said = run(tmp_path, "check", f"no{name}")
    assert (b"there is no file `no\\x1b[31ma[bold]:smile:.yaml`") in said.stderr


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("plain é 棚 𝛑", "plain é 棚 𝛑"),
        ("\x1b[0m", "\\x1b[0m"),
        ("a\tb\nc\rd", "a\\tb\\nc\\rd"),
        ("\x85\u2028\u202e", "\\x85\\u2028\\u202e"),
        ("\ud800", "\\ud800"),
        ("\x7f", "\\x7f"),
    ],
)
def test_printable(text: str, shown: str) -> None:
    assert printable(text) == shown
    assert str(Problem(text, text)) == f"{shown}\n  {shown}"


def test_the_console_shows_what_is_meant() -> None:
    console = PlainConsole(force_terminal=True, color_system="truecolor")
    with console.capture() as capture:
        console.print("[bold]a[/bold] \x1b[31m :smile:\n\x07")
    assert capture.get() == "\x1b[1ma\x1b[0m \\x1b[31m :smile:\n\\x07\n"
