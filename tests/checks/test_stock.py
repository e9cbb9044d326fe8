"""Parts against the stock they are cut from, just inside and just outside."""

from __future__ import annotations

from dataclasses import replace

from kit.panels import panel
from kit.samples import ASH, PLYWOOD
from rodwright.unit import Blank, Grain, Part, Piece, Stock


def _of(stock: Stock, length: float, width: float, thickness: float) -> Part:
    blank = Blank(length, width, thickness, stock, stock.grain)
    return replace(panel(), blank=blank)


BOARD = replace(ASH, pieces=(Piece(2000.0, 100.0, 1), Piece(1500.0, 150.0, 2)))
CROSS = replace(PLYWOOD, grain=Grain.CROSSWISE)
PLAIN = replace(PLYWOOD, grain=Grain.NONE)
