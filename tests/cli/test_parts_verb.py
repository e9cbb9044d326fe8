"""What `rodwright parts` shows, as its maker reads it."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import lru_cache
from itertools import takewhile

import pytest

import rodwright
from kit.specs import unit_from
from rodwright.jobs.new import model_names, model_path
from rodwright.unit import Unit
from rodwright_cli import show

SPEC = """
title: Alcove shelf
size: {width: 800, height: 1000, depth: 300}
carcass: {stock: ply, corners: butted}
interior: {shelves: {count: 3, fixed: false, holes: {near: 1}}}
lipping: {stock: ash, thickness: 10}
edging: {material: birch veneer, thickness: 0.6, edges: [bottom]}
"""
SHOWN = """\
Alcove shelf

part           name     no.  size (mm)        stock  edges                 kg each  kg all
──────────────────────────────────────────────────────────────────────────────────────────
SD1, SD2       Side       2  1000 x 300 x 18  ply                             3.67    7.34
BT1            Bottom     1  764 x 300 x 18   ply    edging on front edge     2.81    2.81
                             cut 764 x 299.4
TP1            Top        1  764 x 300 x 18   ply                             2.81    2.81
SH1, SH2, SH3  Shelf      3  762 x 290 x 18   ply    front lipped             2.70    8.11
LP1, LP2, LP3  Lipping    3  762 x 18 x 10    ash                             0.09    0.28

10 parts, 21.3 kg; finished sizes, length x width x thickness.

Stock
stock  material              parts             takes  kg all
────────────────────────────────────────────────────────────
ply    birch plywood, 18 mm      7           1.72 m2    21.1
ash    ash, 22 mm                3  2.3 m, 0.0005 m3     0.3

Stock as first cut, without saw cuts and offcuts; weights finished.

Hardware
hardware   size  no.  holes  for
───────────────────────────────────────────────────────────
shelf pin  5 mm   12  5 mm   resting on pins: SH1, SH2, SH3

Edges
kind     material      section (mm)  strips  net m  to get m
────────────────────────────────────────────────────────────
lipping  ash           18 x 10            3   2.29       2.6
edging   birch veneer  18 x 0.6           1   0.76       0.9

Metres to get are a tenth more, for trimming.
"""


def test_the_lists_on_the_terminal(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("COLUMNS", "120")
    show.parts(unit_from(SPEC))
    lines = [line.rstrip() for line in capsys.readouterr().out.splitlines()]
    assert lines == SHOWN.splitlines()


LONG = """
title: Long words
size: {width: 2400, height: 2300, depth: 600}
stock:
  ply-from-the-shed-behind-the-house:
    kind: sheet
    material: phenolic-faced birch plywood
    density: 700
    thickness: 18
    size: [2440, 1220]
carcass: {stock: ply-from-the-shed-behind-the-house, corners: dowelled}
interior: {shelves: {count: 5, fixed: false}}
edging: {material: melamine-impregnated paper, thickness: 0.4, edges: [sides, top, shelves]}
"""


@pytest.mark.parametrize("width", [60, 72, 80, 100])
@pytest.mark.parametrize("display", ["mm", "in"])
@pytest.mark.parametrize("name", ["long", *model_names()])
def test_nothing_is_cut_off_in_a_narrow_terminal(
    name: str,
    display: str,
    width: int,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    """Every figure stands whole in a line, and two spaces or more between any two columns."""
    unit = replace(unit_called(name), display_unit=display)
    monkeypatch.setenv("COLUMNS", "400")
    show.parts(unit)
    whole = capsys.readouterr().out.splitlines()
    monkeypatch.setenv("COLUMNS", str(width))
    show.parts(unit)
    lines = capsys.readouterr().out.splitlines()
    assert max(map(len, lines)) <= width
    assert [line for line in lines if "…" in line] == []
    assert figures(lines) == figures(whole)
    for heading, rows in tables(lines):
        # A column of blanks from the heading to the last row is two characters wide or more.
        table = [line.ljust(width) for line in (heading, *rows)]
        blank = "".join(" " if not "".join(x).strip() else "x" for x in zip(*table, strict=True))
        columns = re.split("  +", heading.strip())
        assert sum(len(gap) >= 2 for gap in re.findall("(?<=x) +(?=x)", blank)) >= len(columns) - 1


@lru_cache
def unit_called(name: str) -> Unit:
    if name == "long":
        return unit_from(LONG)
    return rodwright.set_out(rodwright.read_spec(model_path(name)))


def tables(lines: list[str]) -> list[tuple[str, list[str]]]:
    """Heading and rows of each table."""
    rules = [at for at, line in enumerate(lines) if line.startswith("─")]
    return [(lines[at - 1], list(takewhile(str.strip, lines[at + 1 :]))) for at in rules]


def figures(lines: list[str]) -> list[list[str]]:
    """Sizes and figures of tables that end in a column of figures (`to get ft` may be wrapped)."""
    return [
        [
            cell
            for row in rows
            for cell in re.split("  +", row.strip())
            if re.fullmatch(r"(?:cut )?[0-9 /.]+(?: x [0-9 /.]+)*", cell)
        ]
        for heading, rows in tables(lines)
        if re.search(r"(?:all|to get \w+|  (?:m|ft))$", heading)
    ]


def test_weights_are_of_each_and_of_all(capsys: pytest.CaptureFixture[str]) -> None:
    unit = unit_from(SPEC)
    show.parts(unit)
    said = capsys.readouterr().out
    # A side is 1000 x 300 x 18 of 680 kg/m3 less its holes, 3.67 kg; there are two.
    assert re.search(r"^part .* kg each +kg all$", said, re.MULTILINE)
    assert re.search(r"^SD1, SD2 .* 3\.67 +7\.3[345]$", said, re.MULTILINE)


def test_a_maker_in_inches_reads_pounds_and_feet(capsys: pytest.CaptureFixture[str]) -> None:
    show.parts(replace(unit_from(SPEC), display_unit="in"))
    said = capsys.readouterr().out
    # 3.67 kg are 8.1 lb, 1.72 m2 are 18.5 sq ft, 2.31 m 7.6 ft (NIST SP 811, appendix B.8).
    assert re.search(r"^SD1, .* 8\.\d\d +16\.\d\d$", said, re.MULTILINE)
    assert "18.5 sq ft" in said
    assert "7.6 ft, 0.2 board ft" in said
    assert "Feet to get are a tenth more" in said
    assert not re.search(r"\bkg\b|\bm2\b|\bm\b", said)


def test_a_unit_without_hardware_or_strips_has_no_tables_of_them(
    capsys: pytest.CaptureFixture[str],
) -> None:
    show.parts(unit_from("size: {width: 800, height: 1000, depth: 300}", title="Bare"))
    said = capsys.readouterr().out
    assert "Stock" in said
    assert "Hardware" not in said
    assert "Edges" not in said
