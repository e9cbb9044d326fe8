"""What a unit takes, counted by hand."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from kit.cuttings import cutting
from kit.specs import unit_from
from kit.takings import counts, material, rates_in
from kit.wishes import wishes
from rodwright.handover.lists import hardware_list
from rodwright.problems import ProblemsError
from rodwright.quote.costing import cost
from rodwright.quote.rates import Extra, Travel
from rodwright.quote.takings import takings_of
from rodwright.unit import Role, Unit


@pytest.fixture(scope="module")
def bookcase() -> Unit:
    """Two sides, a top, a bottom, a fixed shelf, a back."""
    return unit_from(
        "size: {width: 800, height: 900, depth: 300}\n"
        "carcass: {stock: ply, corners: housed}\n"
        "interior: {shelves: {count: 1, fixed: true}}\n"
        "back: {stock: thin, fixing: rebated}\n"
        "finish: oil\n"
    )


def test_a_bookcase_line_by_line(bookcase: Unit) -> None:
    """Sides 900 x 300, top and bottom 776 x 300, shelf 776 x 294, of 18 mm; back 880 x 780 of 6 mm.

    Rebates: at the back of each side 882 mm (from 9 to 891) and at both its ends 300 mm each;
    along top and bottom 776 mm: 2 x (882 + 300 + 300) + 2 x 776 = 4516 mm.

    Faces and edges, mm2.  A side: outside 270000; inside 270000 less a housing of 294 x 18 = 5292,
    end rebates of 2 x 18 x 300 = 10800 and the back's 864 x 6 = 5184 between them: 248724; front
    edge 16200 less 3 x 18 x 6 = 324: 15876; back edge 16200 less 882 x 9 = 7938 and 2 x 9 x 6 =
    108: 8154; ends 2 x 12 x 300 = 7200: together 549954.  Top or bottom: 232800 and
    776 x 294 = 228144; edges 776 x 18 = 13968 and 776 x 9 = 6984; ends 2 x (5400 - 6 x 9) = 10692:
    492588.  Shelf: 2 x 228144 + 2 x 13968 + 2 x 294 x 18 = 494808.  Back: 2 x 686400 +
    2 x 6 x (880 + 780) = 1392720.  In all 2 x 549954 + 2 x 492588 + 494808 + 1392720 = 3972612.

    Nobody sees back edges and lower ends of the sides, 2 x (8154 + 3600) = 23508; back edges and
    ends of top and bottom,
    2 x (6984 + 10692) = 35352, and the underside, 232800; back edge and ends of the shelf, 13968 +
    10584 = 24552; rear and edges of the back, 686400 + 19920 = 706320: 1022532.  Seen: 2950080.

    Volume, mm3: sides 2 x (4860000 - 294 x 18 x 6 - 2 x 18 x 300 x 6 - 882 x 6 x 9 + 2 x 9 x 6 x 6)
    = 9432936; top and bottom 2 x (4190400 - 776 x 6 x 9) = 8296992; shelf 4106592; back 4118400:
    25954920, at 680 kg/m3 17.649 kg.
    """
    found = takings_of(bookcase, None, rates_in())
    assert counts(found) == {
        "job": 1,
        # The two sides are a pair: no two parts are alike.
        "shape": 6,
        # One sheet of each thickness holds its parts; each part takes a cut along and one across.
        "sheet": 2,
        "rip": 6,
        "crosscut": 6,
        "housing": 2,
        "rebate": Decimal("4.516"),
        # Two at each side for top and bottom, and the shelf's two; the back is pinned dry.
        "glued_joint": 6,
        "carcass": 1,
        "back": 1,
        # Nine up each side of the back, eight along top and bottom.
        "pin": 2 * 9 + 2 * 8,
        "sanding": Decimal("2.95"),
        # Two coats.
        "oil": Decimal("5.9"),
        "packing": 1,
        "loading": Decimal("17.649"),
        "settling_in": 1,
        "standing": 1,
        # Plugs that keep it from tipping, one near each side at least.
        "fixing_point": 2,
        "clearing": 1,
    }


def test_what_stays_bare_isnt_sanded(bookcase: Unit) -> None:
    bare = tuple(replace(part, finish=None) for part in bookcase.parts)
    found = counts(takings_of(replace(bookcase, parts=bare), None, rates_in()))
    assert "sanding" not in found
    # Of all that is oiled 686400 mm2 are the back's face.
    parts = tuple(replace(p, finish=None) if p.role is Role.BACK else p for p in bookcase.parts)
    found = counts(takings_of(replace(bookcase, parts=parts), None, rates_in()))
    assert found["sanding"] == Decimal("2.264")


def test_its_materials_line_by_line(bookcase: Unit) -> None:
    """18 mm: 2 x 900 x 300 + 2 x 776 x 300 + 776 x 294 = 1233744 mm2 of sheets of 2440 x 1220 =
    2976800 mm2; 6 mm: 880 x 780 = 686400 mm2.  Oil: 2 x 2.950080 m2 at 20 m2 a litre, the least
    that it covers."""
    found = takings_of(bookcase, None, rates_in())
    assert [each.kind for each in found.materials] == ["stock"] * 2 + ["hardware"] * 3 + ["finish"]
    thick, thin = material(found, "birch plywood 18 mm"), material(found, "birch plywood 6 mm")
    assert (thick.count, thin.count, thick.per) == (Decimal("0.414"), Decimal("0.231"), "sheet")
    assert thick.name == "birch plywood, 18 mm, 2440 x 1220"
    assert all((each.wasted, each.basis) == (True, "by area") for each in (thick, thin))
    pins = material(found, "panel pin")
    assert (pins.count, pins.name, pins.wasted) == (34, "panel pin, 1.25 x 25 mm", False)
    # A screw and a plug for each fixing to the wall.
    assert (material(found, "wall screw").count, material(found, "wall plug").count) == (2, 2)
    oil = material(found, "oil")
    assert (oil.count, oil.per, oil.basis) == (Decimal("0.295"), "l", "2 coats")
    assert all(each.price is None for each in found.materials)


def test_what_is_counted_in_inches_goes_by_feet_and_pounds(bookcase: Unit) -> None:
    """4.516 m are 14.816 ft of 0.3048 m; 2.950080 m2 are 31.754 sq ft of 0.09290304 m2; 17.649346
    kg are 38.910 lb of 0.45359237 kg; 0.295008 l are 0.312 qt of 0.946352946 l."""
    found = takings_of(bookcase, None, rates_in("in"))
    counted = counts(found)
    assert counted["rebate"] == Decimal("14.816")
    assert counted["sanding"] == Decimal("31.754")
    assert counted["loading"] == Decimal("38.91")
    assert {each.per for each in found.operations} >= {"ft", "sq ft", "lb"}
    oil = material(found, "oil")
    assert (oil.count, oil.per) == (Decimal("0.312"), "qt")


@settings(max_examples=25, suppress_health_check=[HealthCheck.too_slow])
@given(wishes())
def test_any_unit_is_counted(wish: dict[str, Any]) -> None:
    """Whatever is asked for: nothing less than nothing, every price and count a decimal, and as
    much of everything where it is counted again."""
    try:
        unit = unit_from("title: Any\n", **wish)
    except ProblemsError:
        return
    found = takings_of(unit, None, rates_in())
    assert all(each.count > 0 for each in found.operations)
    assert all(each.count > 0 for each in found.materials if each.kind == "hardware")
    rows = [row for row in hardware_list(unit) if row.name != "handle screw"]
    screws = sum(row.quantity for row in rows if row.name.endswith("screw"))
    assert counts(found).get("screw", 0) == screws
    assert takings_of(unit, None, rates_in()) == found


def test_the_way_is_driven_by_every_fitter_for_each_day(bookcase: Unit) -> None:
    """No opening was measured, and one day does: two fitters, an hour and a half each."""
    travel = Travel(0, Decimal("1.5"), Decimal(25))
    found = takings_of(bookcase, None, rates_in(travel=travel))
    last = found.operations[-1]
    assert (last.key, last.count, last.per) == ("driving", 3, "h")
    way = material(found, "travel")
    assert (way.count, way.price, way.kind) == (1, 25, "bought in")


def test_an_opening_is_measured_on_a_visit_of_its_own() -> None:
    unit = unit_from("opening: {width: 806, height: 906, depth: 320}\n")
    found = takings_of(unit, None, rates_in(travel=Travel(0, Decimal(1), Decimal(25))))
    assert counts(found)["survey"] == 1
    # One fitter to measure, then two for a day.
    assert counts(found)["driving"] == 3
    assert material(found, "travel").count == 2


def test_visits_that_the_rates_state_are_driven_as_stated() -> None:
    unit = unit_from("opening: {width: 806, height: 906, depth: 320}\n")
    found = takings_of(unit, None, rates_in(travel=Travel(3, Decimal(1), Decimal(25))))
    assert counts(found)["driving"] == 6
    assert material(found, "travel").count == 3


def test_extras_come_with_the_job(bookcase: Unit) -> None:
    """20 minutes at 40.00 an hour are 13.33, 480 are 320.00; what is done at fitting is time on
    site, 480 min of a day of two fitters with 8 h each."""
    extras = (
        Extra("sharpening", "machining", Decimal(20)),
        Extra("carrying up", "fitting", Decimal(480), Decimal(30)),
        Extra("disposal", price=Decimal("25.00")),
    )
    plain, rates = rates_in(), rates_in(extras=extras)
    found, bare = takings_of(bookcase, None, rates), takings_of(bookcase, None, plain)
    added = found.operations[len(bare.operations) :]
    assert [(each.name, each.stage, each.count, each.per) for each in added] == [
        ("sharpening", "machining", 20, "min"),
        ("carrying up", "fitting", 480, "min"),
    ]
    costed, before = cost(found, rates), cost(bare, plain)
    assert costed.labour_cost - before.labour_cost == Decimal("333.33")
    assert costed.spent_on("bought in") == Decimal("55.00")
    assert costed.days_on_site - before.days_on_site == Decimal("0.5")


def test_what_is_packed_in_an_opening_takes_packers_and_studs_take_no_plugs() -> None:
    """1900 high: 4 points a side."""
    spec = "opening: {width: 806, height: 1906, depth: 320}\n"
    found = takings_of(unit_from(spec), None, rates_in())
    bought = {each.key: each.count for each in found.materials if each.basis == "fixing points"}
    assert bought == {"wall screw": 8, "wall plug": 8, "packer": 16}
    found = takings_of(unit_from(spec + "wall: studs\n"), None, rates_in())
    bought = {each.key: each.count for each in found.materials if each.basis == "fixing points"}
    assert bought == {"wall screw": 8, "packer": 16}


def test_pieces_of_one_shape_are_set_out_once(bookcase: Unit) -> None:
    """A shelf that shows nowhere is as one that does, whatever the parts list says of it."""
    shelf = next(part for part in bookcase.parts if part.role is Role.SHELF)
    hidden = replace(shelf, ref="SH9", name="Hidden", blank=replace(shelf.blank, show_surfaces=()))
    unit = replace(bookcase, parts=(*bookcase.parts, hidden))
    assert counts(takings_of(unit, None, rates_in()))["shape"] == len(unit.shapes) == 6


def test_a_plan_of_other_units_too_is_refused(bookcase: Unit) -> None:
    plan = cutting()
    both = replace(plan, jobs=(*plan.jobs, *plan.jobs))
    with pytest.raises(ValueError, match="whole plan of its own"):
        takings_of(bookcase, both, rates_in())


def test_a_plan_that_leaves_pieces_is_refused(bookcase: Unit) -> None:
    plan = cutting()
    first = plan.lots[0]
    left = replace(first, plan=replace(first.plan, left=first.lot.pieces[:1]))
    with pytest.raises(ValueError, match="whole plan of its own"):
        takings_of(bookcase, replace(plan, lots=(left,)), rates_in())
