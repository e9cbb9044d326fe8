"""`rodwright rates`: a file to start from, and whether one can be read."""

from __future__ import annotations

import json
from decimal import Decimal
from pathlib import Path

import pytest
from typer.testing import CliRunner

from rodwright.problems import ProblemsError
from rodwright_cli.main import app


def run(*words: str) -> str:
    said = CliRunner().invoke(app, ["rates", *words])
    if said.exception is not None and not isinstance(said.exception, SystemExit):
        raise said.exception
    return said.output


def test_a_new_one_can_be_read(tmp_path: Path) -> None:
    file = str(tmp_path / "mine.yaml")
    assert "every figure in it is invented" in run("new", file, "--currency", "USD", "--inches")
    assert run("check", file).strip().endswith("prices, in USD.")
    told = json.loads(run("check", file, "--json"))
    assert (told["currency"], told["unit"], Decimal(told["hour"]["cutting"])) == ("USD", "in", 45)
    page = (Path(__file__).parents[2] / "docs" / "json.md").read_text(encoding="utf-8")
    row = next(line for line in page.splitlines() if line.startswith("| `rates` |"))
    assert row.split("|")[2].replace("`", "").strip().split(", ") == list(told)


def test_it_is_never_written_over(tmp_path: Path) -> None:
    file = tmp_path / "mine.yaml"
    file.write_text("hour: 60\n")
    with pytest.raises(ProblemsError, match="is there already"):
        run("new", str(file))
    assert file.read_text() == "hour: 60\n"
