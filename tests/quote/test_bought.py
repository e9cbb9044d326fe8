"""Edging, hardware and finishes, priced by hand."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from kit.panels import panel, unit_of
from kit.samples import PLYWOOD
from kit.takings import each_for, rates_in
from rodwright.quote.bought import edgings, finishes, hardware
from rodwright.quote.rates import Price
from rodwright.unit import Fixing, Joint, JointKind, Surface
from rodwright.unit.finish import Finish
from rodwright.unit.stock import Edging

D = Decimal
EDGED = unit_of(
    replace(panel(length=1000.0), edged=(Edging(Surface.FACE_EDGE, "oak veneer", 0.6),))
)


def test_edging_is_got_by_the_metre_with_a_tenth_more() -> None:
    (found,) = edgings(EDGED, rates_in(prices={"oak veneer edging": each_for("1.35")}))
    assert (found.kind, found.count, found.per, found.price) == ("edging", D("1.1"), "m", D("1.35"))
    assert (found.name, found.basis) == ("oak veneer edging, 18 x 0.6 mm", "edges and a tenth")
    assert not found.wasted


def test_edging_priced_by_the_metre_costs_as_much_by_the_foot() -> None:
    """1.1 x 1 m / 0.3048 = 3.609 ft, to the next tenth 3.7; 1.00 the metre is 0.3048 the foot."""
    rates = rates_in("in", prices={"oak veneer edging": Price(D(1), D(1000), 1)})
    (found,) = edgings(EDGED, rates)
    assert (found.count, found.per, found.price) == (D("3.700"), "ft", D("0.3048"))


def test_edging_of_a_colour_may_be_priced_by_its_material() -> None:
    edged = (Edging(Surface.FACE_EDGE, "melamine", 0.4, "white"),)
    unit = unit_of(replace(panel(), edged=edged))
    (plain,) = edgings(unit, rates_in(prices={"melamine edging": each_for("0.4")}))
    (own,) = edgings(
        unit,
        rates_in(
            prices={"melamine edging": each_for("0.4"), "melamine, white edging": each_for("0.6")}
        ),
    )
    (none,) = edgings(unit, rates_in())
    assert (plain.price, own.price, none.price) == (D("0.4"), D("0.6"), None)
    assert none.key == "melamine, white edging"


SCREWED = unit_of(
    panel(),
    fixings=(Fixing("wood screw", 12, "4 x 50 mm"), Fixing("wood screw", 8, "4 x 30 mm")),
)


def test_hardware_goes_by_name_and_size_or_by_name() -> None:
    short, long = hardware(
        SCREWED,
        rates_in(prices={"wood screw": each_for("0.03"), "Wood screw 4 x 50 mm": each_for("0.05")}),
    )
    assert (short.name, short.price, short.count) == ("wood screw, 4 x 30 mm", D("0.03"), 8)
    assert (long.name, long.price, long.count) == ("wood screw, 4 x 50 mm", D("0.05"), 12)
    assert (short.per, short.basis, short.kind) == ("piece", "hardware list", "hardware")


def test_a_price_by_length_or_area_is_none_for_pieces_and_litres() -> None:
    by_area = Price(D(5), D(10) ** 6, 2)
    first, _ = hardware(SCREWED, rates_in(prices={"wood screw": by_area}))
    assert (first.price, first.name) == (None, "wood screw, 4 x 30 mm, by the piece")
    unit = unit_of(replace(panel(), finish=Finish("oil")))
    (oil,) = finishes(unit, rates_in(prices={"oil": by_area}))
    assert (oil.price, oil.name) == (None, "oil, by the l")


def test_hardware_without_a_price_is_named_once_for_all_its_sizes() -> None:
    found = [*hardware(SCREWED, rates_in())]
    assert [(each.key, each.price) for each in found] == [("wood screw", None)] * 2


def test_one_article_of_several_joints_is_one_line() -> None:
    joints = tuple(
        Joint(JointKind.PINNED, "P1", "P1", (0.0, 0.0, 0.0), (Fixing("panel pin", count, "25"),))
        for count in (7, 9)
    )
    (found,) = hardware(unit_of(panel(), joints=joints), rates_in())
    assert found.count == 16


@pytest.mark.parametrize(
    ("finish", "lines"),
    [
        # 400 x 120 x 18, on the floor and at a wall: 0.048 + 0.0072 + 2 x 0.00216 = 0.05952 m2 are
        # seen; coats / least that a litre covers: oil 2/20, lacquer 3/8, primer 1/8, paint 2/10,
        # stain 1/10.
        (Finish("oil"), [("oil", "oil", "0.006")]),
        (Finish("lacquer"), [("lacquer", "lacquer", "0.022")]),
        (
            Finish("paint", "#204060"),
            [("primer", "primer", "0.007"), ("paint", "paint #204060", "0.012")],
        ),
        (
            Finish("stain", "#503010"),
            [("stain", "stain #503010", "0.006"), ("lacquer", "lacquer", "0.022")],
        ),
    ],
)
def test_finishes_by_coats(finish: Finish, lines: list[tuple[str, str, str]]) -> None:
    unit = unit_of(replace(panel(), finish=finish))
    found = [*finishes(unit, rates_in(prices={"oil": each_for("30")}))]
    assert [(each.key, each.name, str(each.count)) for each in found] == lines
    assert {each.key: each.price for each in found}.get("oil", 30) == 30


def test_what_has_no_finish_or_takes_none_is_left_out() -> None:
    faced = replace(panel().blank, stock=replace(PLYWOOD, material="melamine-faced chipboard"))
    unit = unit_of(panel(), replace(panel(), ref="P2", blank=faced, finish=Finish("paint")))
    assert [*finishes(unit, rates_in())] == []
