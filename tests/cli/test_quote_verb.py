"""`rodwright quote` at the prompt."""

from __future__ import annotations

import json
from pathlib import Path

from typer.testing import CliRunner

from rodwright_cli.main import app

SPEC = """
title: Small shelf
size: {width: 600, height: 500, depth: 250}
stock:
  case: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220], price: 74}
carcass: {stock: case}
quote: {bought_in: [{what: Glass}]}
"""


def _quote(folder: Path, *words: str) -> tuple[int, str]:
    spec, rates = folder / "shelf.yaml", folder / "rates.yaml"
    spec.write_text(SPEC, encoding="utf-8")
    if not rates.exists():
        assert CliRunner().invoke(app, ["rates", "new", str(rates)]).exit_code == 0
    asked = ["quote", str(spec), "--rates", str(rates), "-o", str(folder / "out"), *words]
    done = CliRunner().invoke(app, [*asked, "--no-photograph"], env={"COLUMNS": "120"})
    return done.exit_code, done.stdout


def test_what_is_missing_is_told_and_leaves_with_1(tmp_path: Path) -> None:
    code, said = _quote(tmp_path)
    assert code == 1
    assert "There is no total while these are missing:" in said
    assert "Glass" in said
    assert "is for the client" in said
    assert "drawn, not photographed" not in said
    code, said = _quote(tmp_path, "--json")
    assert code == 1
    document = json.loads(said)
    assert document["options"][0]["total"] is None
    assert document["files"] == ["costing.xlsx", "quote.json", "quote.pdf"]
