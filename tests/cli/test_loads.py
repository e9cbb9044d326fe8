"""What is wrong with loads, as every verb tells it: whole, in its place, and nothing is written."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from rodwright_cli.main import main

SPEC = """\
title: Shelves
{top}
size: {{width: 836, height: 1000, depth: 300}}
stock:
  case: {{kind: sheet, material: birch plywood, thickness: 18}}
carcass: {{stock: case}}
interior:
  load: {inside}
  shelves: {{count: 2, load: {shelves}}}
"""
ONE = "Write it like `25 kg/m`, `50 lb/ft2` or `30 kg`."
MOST = (
    "at most 714.3 kg/m makes sense (ten times a row of large textbooks: A. Kaw, numerical methods "
    "notes, chapter 03.00C, from pages per inch)"
)


@pytest.mark.parametrize(
    ("places", "told"),
    [
        ({"top": "loads: 40"}, f"2:8: `loads`: `40` has no unit\n  {ONE}"),
        ({"inside": "-5 kg"}, f"8:9: `load`: `-5 kg` is less than zero\n  {ONE}"),
        (
            {"inside": "10 t/m"},
            f"8:9: `load`: `10 t/m` is more than a shelf carries: {MOST}\n"
            "  Check the figure and its unit.",
        ),
        (
            {"inside": "10 t"},
            f"8:9: 10000.0 kg on 800 mm is more than a shelf carries: {MOST}\n"
            "  Check the figure and its unit.",
        ),
        (
            {"shelves": "television"},
            "9:29: `load`: no weight of a television is published\n"
            "  Take it from its data plate and write it: `television 18 kg`.",
        ),
        (
            {"shelves": "magazins"},
            "9:29: `load`: `magazins` isn't among what is known to lie on shelves\n"
            "  Write what it weighs, like `magazins 25 kg/m`, or one of `books`, `paperbacks`, "
            "`hardbacks`, `large books`, `textbooks`, `records`, `files`, `archive boxes`, "
            "`paper`, `crockery`, `household goods`, `storage`, `school storage`, "
            "`folded clothes`, `clothes on a rail`, `television`.",
        ),
        (
            {"shelves": "[books, files, books]"},
            "9:23: there are 2 of them, and the list says what 3 carry\n"
            "  Write one for each, from the top down; `nothing` where nothing lies.",
        ),
        (
            {"shelves": "{of: books, to: 900}"},
            "9:45: 900 mm from the left is past the end: the clear width is 800 mm\n"
            "  Give at most 800 mm.",
        ),
    ],
    ids=str,
)
@pytest.mark.parametrize("words", [("check",), ("parts",), ("strength",), ("build", "-o", "out")])
def test_a_wrong_load_is_told_in_its_place(
    words: tuple[str, ...],
    places: dict[str, str],
    told: str,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("COLUMNS", "1000")
    usual = {"top": "unit: mm", "inside": "books", "shelves": "books"}
    Path("x.yaml").write_text(SPEC.format(**usual | places), encoding="utf-8")
    monkeypatch.setattr(sys, "argv", ["rodwright", words[0], "x.yaml", *words[1:]])
    with pytest.raises(SystemExit) as left:
        main()
    said = capsys.readouterr()
    assert (left.value.code, said.out) == (2, "")
    assert said.err.strip() == f"x.yaml:{told}"
    assert [path.name for path in tmp_path.iterdir()] == ["x.yaml"]
