"""Operations at the saw, counted by hand."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest

from kit.cuttings import cutting, length_plan, sheet_plan
from kit.panels import panel, unit_of
from kit.samples import PLYWOOD
from rodwright.cutting.demand import Job, lots_of
from rodwright.cutting.planning import Watch, plan_lots
from rodwright.cutting.saws import Saw
from rodwright.cutting.whole import Rules
from rodwright.quote.from_cuts import cut_by_pieces, cut_by_plan, usual_size
from rodwright.quote.tally import Count
from rodwright.unit import Grain, Part
from rodwright.unit.stock import Blank, Piece, Sold, Stock

PINE = Stock("pine", "board", "scots pine", 21.0, Grain.LENGTHWISE, 520.0, "", "#ddccaa")


def summed(counts: list[Count]) -> dict[str, float]:
    found: Counter[str] = Counter()
    for key, amount in counts:
        found[key] += amount  # type: ignore[assignment]
    return {key: amount for key, amount in found.items() if amount}


def board(length: float, width: float, stock: Stock = PINE) -> Part:
    blank = Blank(length, width, stock.thickness, stock, Grain.LENGTHWISE)
    return replace(panel(), blank=blank)


def test_two_sheets_cut_by_plan() -> None:
    """Two sides: two strips of 300 ripped off the sheet, each cut to 2000; a shelf: a strip of 279
    ripped off the offcut, cut to 800."""
    assert summed([*cut_by_plan(cutting(sheet_plan()))]) == {"sheet": 2, "rip": 3, "crosscut": 3}


def test_lengths_cut_by_plan_count_each() -> None:
    """Two legs off each of two lengths: two cuts a length."""
    assert summed([*cut_by_plan(cutting(length_plan()))]) == {"board": 2, "crosscut": 4}


def test_a_router_cuts_pieces_and_makes_no_cuts() -> None:
    rules = Rules(Saw(kerf=3.0), router=Saw(kind="router", kerf=8.0))
    plan = cutting(sheet_plan(), rules=rules)
    assert summed([*cut_by_plan(plan)]) == {"sheet": 2, "routed": 3}


def test_boards_bought_sawn_are_planed_whole_and_panels_glued_up() -> None:
    """A panel 400 wide of boards 150 wide takes three strips: two glue lines of its length, over
    which the strips are cut; the boards that it comes of are planed from end to end."""
    sawn = replace(
        PINE, sold=(Sold(2400.0, 150.0, 20.0),), sawn_thickness=27.0, planing=6.0, thickness=22.0
    )
    unit = unit_of(board(700.0, 400.0, sawn))
    lots = lots_of([Job(unit)], kerf=3.0)
    assert lots[0].glued_up
    rules = Rules(Saw(kerf=3.0))
    least = cutting().least
    planned = tuple(plan_lots(lots, rules, least, 0, Watch()))
    found = summed([*cut_by_plan(cutting(*planned))])
    strips = sum(piece.count for piece in lots[0].pieces)
    long = lots[0].pieces[0].length
    assert found["gluing_up"] == pytest.approx((strips - 1) * long / 1000)
    assert found["planing"] == pytest.approx(2.4 * found["board"])


def test_without_a_plan_each_piece_is_freed_by_two_cuts() -> None:
    """Four pieces of 1200 x 600 are 2.88 m2 of a sheet of 2.9768 m2; five don't go in one."""
    part = replace(panel(), blank=replace(panel().blank, length=1200.0, width=600.0))
    four = unit_of(*(replace(part, ref=f"P{at}") for at in range(4)))
    five = unit_of(*(replace(part, ref=f"P{at}") for at in range(5)))
    assert summed([*cut_by_pieces(four)]) == {"sheet": 1, "rip": 4, "crosscut": 4}
    assert summed([*cut_by_pieces(five)])["sheet"] == 2


def test_without_a_plan_wide_boards_are_glued_up_and_sawn_ones_planed() -> None:
    """500 wide of boards 200 wide: three strips, two glue lines of 1 m; as much wood as 2.5 m of
    such a board."""
    stock = replace(PINE, sold=(Sold(3000.0, 200.0),), sawn_thickness=27.0)
    found = summed([*cut_by_pieces(unit_of(board(1000.0, 500.0, stock)))])
    assert found == {"board": 1, "rip": 1, "crosscut": 1, "planing": 2.5, "gluing_up": 2.0}


def test_what_is_bought_in_its_section_is_only_cut_across() -> None:
    stock = replace(PINE, section=45.0)
    found = summed([*cut_by_pieces(unit_of(board(1000.0, 45.0, stock)))])
    assert found == {"board": 1, "crosscut": 1}


@pytest.mark.parametrize(
    ("stock", "size"),
    [
        (replace(PLYWOOD, size=(3050.0, 1525.0)), (3050.0, 1525.0)),
        (replace(PLYWOOD, size=None), (2440.0, 1220.0)),
        (PINE, (2400.0, 200.0)),
        (replace(PINE, pieces=(Piece(1800.0, 95.0, 4), Piece(1500.0, 120.0, 1))), (1500.0, 120.0)),
        (replace(PINE, section=45.0), (2400.0, 45.0)),
    ],
)
def test_the_size_that_a_stock_is_taken_to_come_in(stock: Stock, size: tuple[float, float]) -> None:
    assert usual_size(stock, "mm") == size
