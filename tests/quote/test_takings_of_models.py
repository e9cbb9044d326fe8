"""What the ready models take agrees with their lists."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from decimal import Decimal
from functools import cache
from pathlib import Path

import pytest

from kit.takings import counts, rates_in
from rodwright import read_spec
from rodwright.handover.edge_list import edge_list
from rodwright.handover.lists import hardware_list, parts_list
from rodwright.handover.totals import stock_totals
from rodwright.jobs.cut import cut
from rodwright.making.finishing import finish_areas
from rodwright.mass import unit_weight
from rodwright.quote.counted import Takings
from rodwright.quote.takings import takings_of
from rodwright.setout import set_out
from rodwright.unit import Hole, JointKind, Mortise, Slide, Swing, Unit

MODELS = sorted(Path(__file__).parents[2].joinpath("models").glob("*.yaml"))


@cache
def unit_of(path: Path) -> Unit:
    return set_out(read_spec(path))


@cache
def taken(path: Path) -> Takings:
    return takings_of(unit_of(path), None, rates_in())


@pytest.fixture(params=MODELS, ids=lambda path: path.stem)
def path(request: pytest.FixtureRequest) -> Path:
    return request.param  # type: ignore[no-any-return]


def holes(unit: Unit) -> Iterator[str]:
    for part in unit.parts:
        yield from (each.use for each in part.workings if isinstance(each, Hole))


def test_every_hole_is_bored_once(path: Path) -> None:
    """Those of dowels by the dowel, two each, as far as they aren't marked from a frame; those of
    screws by the screw."""
    unit, found = unit_of(path), counts(taken(path))
    bored = sum(found.get(key, 0) for key in ("shelf_hole", "hinge_cup", "hole"))
    uses = Counter(holes(unit))
    of_screws = uses["screw"] + uses["hinge plate"]
    assert bored == uses.total() - uses["dowel"] - of_screws
    assert of_screws <= found.get("screw", 0)
    assert uses["dowel"] <= 2 * found.get("dowel", 0)


def test_every_mortise_is_cut_once(path: Path) -> None:
    unit, found = unit_of(path), counts(taken(path))
    uses = Counter(
        each.use for part in unit.parts for each in part.workings if isinstance(each, Mortise)
    )
    let_in = uses["biscuit"] + uses["loose tenon"]
    assert found.get("mortise", 0) == uses.total() - let_in
    assert let_in <= 2 * (found.get("biscuit", 0) + found.get("loose_tenon", 0))


def test_every_article_of_the_hardware_list_is_bought(path: Path) -> None:
    bought = {
        each.name: each.count for each in taken(path).materials if each.basis == "hardware list"
    }
    assert bought == {
        f"{row.name}, {row.size}": row.quantity for row in hardware_list(unit_of(path))
    }


def test_every_screw_and_pin_is_driven(path: Path) -> None:
    found, rows = counts(taken(path)), hardware_list(unit_of(path))
    for word in ("screw", "pin"):
        driven = sum(row.quantity for row in rows if row.name.endswith(word))
        shelf = sum(row.quantity for row in rows if row.name.endswith("shelf pin"))
        of_handles = sum(row.quantity for row in rows if row.name == "handle screw")
        # Shelf pins are put in, and the screws of handles go with those.
        apart = shelf if word == "pin" else of_handles
        assert found.get(word, 0) == driven - apart


def test_stock_is_that_of_the_totals(path: Path) -> None:
    """Sheets by their area, boards by theirs; both as first cut."""
    unit = unit_of(path)
    stock = [each for each in taken(path).materials if each.kind == "stock"]
    totals = stock_totals(unit)
    assert len(stock) == len(totals)
    for each, total in zip(stock, totals, strict=True):
        if each.per == "m2":
            assert float(each.count) == pytest.approx(total.area, abs=5e-4)
        else:
            size = total.stock.size
            assert size is not None
            sheets = total.area * 1e6 / (size[0] * size[1])
            assert float(each.count) == pytest.approx(sheets, abs=5e-4)


def test_parts_edges_weights_areas_and_motions_are_those_of_the_lists(path: Path) -> None:
    unit, found = unit_of(path), counts(taken(path))
    assert found["shape"] == len(unit.shapes) <= len(parts_list(unit))
    assert float(found["loading"]) == pytest.approx(unit_weight(unit), abs=5e-4)
    areas = sum(each.whole for each in finish_areas(unit) if each.finish is not None)
    assert float(found.get("sanding", 0)) == pytest.approx(areas, abs=5e-4)
    for kind in ("lipping", "edging"):
        net = sum(row.net for row in edge_list(unit) if row.kind == kind)
        assert float(found.get(kind, 0)) == pytest.approx(net, abs=5e-4)
    assert found.get("adjusting", 0) == len(unit.motions)
    on_pins = {each.second for each in unit.joints if each.kind is JointKind.RESTING}
    assert found.get("loose_shelf", 0) == len(on_pins)
    drawers = sum(isinstance(each, Slide) for each in unit.motions)
    assert found.get("drawer", 0) == drawers
    doors = sum(isinstance(each, Swing) for each in unit.motions)
    assert found.get("door", 0) in (0, doors)


def test_no_count_is_less_than_nothing_and_each_is_said_once(path: Path) -> None:
    found = taken(path).operations
    assert all(each.count > 0 for each in found)
    assert len({each.key for each in found}) == len(found)


def test_counts_are_alike_in_either_measure(path: Path) -> None:
    """Things are as many in inches; a metre is 3.2808 ft, a m2 10.7639 sq ft, a kg 2.2046 lb
    (NIST Special Publication 811, appendix B.8)."""
    per = {"m": 3.280839895, "m2": 10.76391042, "kg": 2.204622622}
    inches = {
        each.key: each.count for each in takings_of(unit_of(path), None, rates_in("in")).operations
    }
    for each in taken(path).operations:
        wanted = float(each.count) * per.get(each.per, 1.0)
        assert float(inches[each.key]) == pytest.approx(wanted, abs=6e-3 if each.per in per else 0)


def test_a_plan_gives_the_sheets_that_it_cuts() -> None:
    """The sides and the shelves of the niche come off one sheet; the rest is as without a plan."""
    path = next(each for each in MODELS if each.stem == "niche-shelf")
    plan = cut([read_spec(path)])
    found = takings_of(unit_of(path), plan, rates_in())
    (sheets,) = (each for each in found.materials if each.kind == "stock")
    (lot,) = plan.lots
    assert sheets.count == len(lot.plan.layouts) == counts(found)["sheet"] == 1
    # No piece is freed by less than a cut, nor by more than four.
    pieces = len(unit_of(path).parts)
    cuts = counts(found)["rip"] + counts(found)["crosscut"]
    assert pieces <= cuts <= 4 * pieces
    saw = {"sheet", "rip", "crosscut"}
    same = [each for each in found.operations if each.key not in saw]
    assert same == [each for each in taken(path).operations if each.key not in saw]


def test_costs_of_all_that_is_bought_are_decimals() -> None:
    for each in taken(MODELS[-3]).materials:
        assert isinstance(each.count, Decimal)
        assert each.price is None or isinstance(each.price, Decimal)
