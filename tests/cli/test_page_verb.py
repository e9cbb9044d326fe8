"""`rodwright page` at the prompt."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from typer.testing import CliRunner

from rodwright_cli.main import app, main

SPEC = """
title: Small shelf
size: {width: 600, height: 500, depth: 250}
stock:
  case: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
carcass: {stock: case}
"""


def _page(folder: Path, text: str, *words: str) -> tuple[int, str]:
    spec = folder / "shelf.yaml"
    spec.write_text(text, encoding="utf-8")
    asked = ["page", str(spec), "-o", str(folder / "out"), "--no-photograph", *words]
    done = CliRunner().invoke(app, asked, env={"COLUMNS": "200"})
    return done.exit_code, done.stdout


def test_it_says_where_the_page_is(tmp_path: Path) -> None:
    code, said = _page(tmp_path, SPEC)
    assert code == 0
    assert f"{tmp_path / 'out' / 'page.html'} is for the client" in " ".join(said.split())
    assert "no photograph" not in said
    code, said = _page(tmp_path, SPEC, "--json")
    assert code == 0
    document = json.loads(said)
    assert (document["files"], document["no_photograph"]) == (
        ["page.glb", "page.html", "page.usdz"],
        "",
    )


def test_a_draft_leaves_with_1_and_is_written(tmp_path: Path) -> None:
    faulty = SPEC.replace("width: 600", "width: 2300") + "interior: {shelves: 2}\nloads: 600 kg/m\n"
    code, said = _page(tmp_path, faulty)
    assert code == 1
    assert "error" in said
    assert (tmp_path / "out" / "page.html").is_file()


def test_a_spec_that_makes_no_unit_leaves_with_2_and_nothing_is_written(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "shelf.yaml").write_text(SPEC.replace("600", "10"), encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr("sys.argv", ["rodwright", "page", "shelf.yaml", "-o", "out"])
    with pytest.raises(SystemExit) as left:
        main()
    assert left.value.code == 2
    assert "shelf.yaml:3" in capsys.readouterr().err
    assert not (tmp_path / "out").exists()
