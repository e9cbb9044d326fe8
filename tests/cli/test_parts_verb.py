"""What `rodwright parts` shows, as its maker reads it."""

from __future__ import annotations

import pytest

from rodwright_cli import show
from specs import unit_from

SPEC = """
title: Alcove shelf
size: {width: 800, height: 1000, depth: 300}
carcass: {stock: ply}
interior: {shelves: {count: 3, fixed: false, holes: {near: 1}}}
lipping: {stock: ash, thickness: 10}
edging: {material: birch veneer, thickness: 0.6, edges: [bottom]}
"""
SHOWN = """\
Alcove shelf

 part            name      no.   size (mm)         stock   edges                  kg each
 ────────────────────────────────────────────────────────────────────────────────────────
 SD1, SD2        Side        2   1000 x 300 x 18   ply                               3.67
 BT1             Bottom      1   764 x 300 x 18    ply     edging on front edge      2.81
                                 cut 764 x 299.4
 TP1             Top         1   764 x 300 x 18    ply                               2.81
 SH1, SH2, SH3   Shelf       3   762 x 290 x 18    ply     front lipped              2.70
 LP1, LP2, LP3   Lipping     3   762 x 18 x 10     ash                               0.09

10 parts, 21.3 kg; finished sizes, length x width x thickness.
Stock

 stock   material               parts              takes     kg
 ──────────────────────────────────────────────────────────────
 ply     birch plywood, 18 mm       7            1.72 m2   21.1
 ash     ash, 22 mm                 3   2.3 m, 0.0004 m3    0.3

Stock as first cut, without saw cuts and offcuts; weights finished.
Hardware

 hardware    size   no.   holes   for
 ───────────────────────────────────────────────────────────────
 shelf pin   5 mm    12   5 mm    resting on pins: SH1, SH2, SH3

Edges

 kind      material       section (mm)   strips   net m   to get m
 ─────────────────────────────────────────────────────────────────
 lipping   ash            18 x 10             3    2.29        2.6
 edging    birch veneer   18 x 0.6            1    0.76        0.9

Metres to get are a tenth more, for trimming.
"""


def test_the_lists_on_the_terminal(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("COLUMNS", "120")
    show.parts(unit_from(SPEC))
    lines = [line.rstrip() for line in capsys.readouterr().out.splitlines()]
    assert lines == SHOWN.splitlines()


def test_a_unit_without_hardware_or_strips_has_no_tables_of_them(
    capsys: pytest.CaptureFixture[str],
) -> None:
    show.parts(unit_from("size: {width: 800, height: 1000, depth: 300}", title="Bare"))
    said = capsys.readouterr().out
    assert "Stock" in said
    assert "Hardware" not in said
    assert "Edges" not in said
