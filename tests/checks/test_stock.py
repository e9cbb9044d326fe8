"""Parts against the stock they are cut from, just inside and just outside."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.panels import panel, unit_of
from kit.samples import ASH, PLYWOOD
from rodwright.checks.rules import Rule
from rodwright.checks.stock import stock_sizes
from rodwright.unit import Blank, Grain, Part, Piece, Stock
from rodwright.unit.stock import Edges, Sold


def _of(stock: Stock, length: float, width: float, thickness: float) -> Part:
    blank = Blank(length, width, thickness, stock, stock.grain)
    return replace(panel(), blank=blank)


BOARD = replace(ASH, pieces=(Piece(2000.0, 100.0, 1), Piece(1500.0, 150.0, 2)))
CROSS = replace(PLYWOOD, grain=Grain.CROSSWISE)
PLAIN = replace(PLYWOOD, grain=Grain.NONE)

TRIMMED = replace(PLYWOOD, trim=Edges(10.0, 10.0, 5.0, 5.0))
LARGER = replace(TRIMMED, sold=(Sold(3050.0, 1525.0), Sold(1220.0, 610.0)))
CROSS_LARGER = replace(LARGER, grain=Grain.CROSSWISE)
SOLD = replace(ASH, sold=(Sold(3000.0, 150.0),), trim=Edges(40.0, 40.0), planing=6.0)
SECTION = replace(ASH, section=45.0)


@pytest.mark.parametrize(
    ("part", "rules"),
    [
        (_of(PLYWOOD, 2440.0, 1220.0, 18.0), []),
        (_of(PLYWOOD, 2441.0, 300.0, 18.0), [Rule.LARGER_THAN_SHEET]),
        (_of(PLYWOOD, 300.0, 1221.0, 18.0), [Rule.LARGER_THAN_SHEET]),
        (_of(PLAIN, 300.0, 1300.0, 18.0), []),
        (_of(CROSS, 1300.0, 300.0, 18.0), [Rule.LARGER_THAN_SHEET]),
        (_of(CROSS, 300.0, 2400.0, 18.0), []),
        (_of(PLYWOOD, 300.0, 300.0, 17.0), [Rule.STOCK_THICKNESS]),
        (_of(BOARD, 2000.0, 150.0, 22.0), []),
        (_of(BOARD, 2001.0, 50.0, 22.0), [Rule.LONGER_THAN_BOARDS]),
        (_of(BOARD, 1000.0, 151.0, 22.0), [Rule.WIDER_THAN_BOARDS]),
        (_of(BOARD, 1000.0, 50.0, 23.0), [Rule.STOCK_THICKNESS]),
        (_of(BOARD, 1000.0, 18.0, 40.0), []),  # a strip ripped off and turned on its side
        (_of(TRIMMED, 2420.0, 1210.0, 18.0), []),
        (_of(TRIMMED, 2421.0, 300.0, 18.0), [Rule.LARGER_THAN_SHEET]),
        (_of(TRIMMED, 300.0, 1211.0, 18.0), [Rule.LARGER_THAN_SHEET]),
        (_of(LARGER, 3030.0, 1515.0, 18.0), []),
        (_of(LARGER, 3031.0, 300.0, 18.0), [Rule.LARGER_THAN_SHEET]),
        (_of(CROSS_LARGER, 1515.0, 3030.0, 18.0), []),
        (_of(CROSS_LARGER, 1516.0, 300.0, 18.0), [Rule.LARGER_THAN_SHEET]),
        (_of(SOLD, 2920.0, 144.0, 22.0), []),
        (_of(SOLD, 2921.0, 100.0, 22.0), [Rule.LONGER_THAN_BOARDS]),
        (_of(SOLD, 1000.0, 145.0, 22.0), [Rule.WIDER_THAN_BOARDS]),
        (_of(SECTION, 1000.0, 45.0, 22.0), []),
        (_of(SECTION, 1000.0, 30.0, 20.0), []),
        (_of(SECTION, 1000.0, 46.0, 22.0), [Rule.WIDER_THAN_SECTION]),
        (_of(SECTION, 1000.0, 18.0, 40.0), [Rule.STOCK_THICKNESS]),
    ],
)
def test_stock(part: Part, rules: list[Rule]) -> None:
    assert [finding.rule for finding in stock_sizes(unit_of(part))] == rules


@pytest.mark.parametrize(
    ("part", "turning"),
    [
        (_of(PLYWOOD, 300.0, 2440.0, 18.0), True),
        (_of(PLYWOOD, 300.0, 2441.0, 18.0), False),
        (_of(PLYWOOD, 1221.0, 2000.0, 18.0), False),
        (_of(CROSS, 2440.0, 300.0, 18.0), True),
        (_of(PLAIN, 2441.0, 300.0, 18.0), False),
        (_of(TRIMMED, 300.0, 2420.0, 18.0), True),
        (_of(TRIMMED, 300.0, 2421.0, 18.0), False),
    ],
)
def test_turning_is_offered_where_it_makes_a_part_fit(part: Part, turning: bool) -> None:
    """On a sheet of 2440 x 1220 mm, or 2420 x 1210 less its edges; and nowhere else."""
    (finding,) = stock_sizes(unit_of(part))
    assert finding.rule == Rule.LARGER_THAN_SHEET
    offer = f"rite `grain: none` for `{part.blank.stock.name}`, so that it may lie across"
    assert (offer in finding.remedy) is turning
    assert "se larger sheets" in finding.remedy
