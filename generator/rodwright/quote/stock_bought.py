"""What stock a unit takes: as its cutting plan cuts it, or else by area."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from rodwright.amounts import AREAS, RUNS
from rodwright.cutting.offer import Offer, lot_kind, plain_material, same_size
from rodwright.cutting.pricing import amount
from rodwright.cutting.shopping import shopping_rows
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import Lot
from rodwright.geometry import TOUCH
from rodwright.handover.cut_words import offer_title, size_said
from rodwright.handover.totals import StockTotal, stock_totals
from rodwright.lengths import LengthUnit, format_length
from rodwright.quote.counted import Material
from rodwright.quote.from_cuts import usual_size
from rodwright.quote.prices import Priced, money, price_for, stock_keys
from rodwright.quote.rates import Rates
from rodwright.quote.tally import exact
from rodwright.unit import Stock, Unit

_METRE, _M2 = 1e3, 1e6


def by_plan(unit: Unit, cutting: Cutting, rates: Rates) -> Iterator[Material]:
    """Every sheet, board and length that a plan cuts: whole, whatever it leaves of them.

    What is at hand counts at what another one would cost: it was paid for too.

    Raises:
        ValueError: the plan is of another unit.
    """
    for row in shopping_rows(cutting):
        lot, offer = cutting.lots[row.lot].lot, row.offer
        stock, supply = _stock_of(unit, lot), offer.supply
        size = size_said(lot, supply.length, supply.width, unit.display_unit)
        said = _price_in_plan(offer, lot, stock)
        keys = stock_keys(stock, rates)
        priced = (
            _by_rates(rates, keys, (supply.length, supply.width or offer.section, offer.lies))
            if said is None
            else Priced(keys[0], money(said))
        )
        yield Material(
            "stock",
            priced.key,
            f"{offer_title(lot, offer, unit.display_unit)}, {size}",
            exact(row.count),
            lot.kind,
            priced.price,
            f"cutting plan{_whence(offer)}",
        )


def _stock_of(unit: Unit, lot: Lot) -> Stock:
    """The stock whose parts a lot is of."""
    for part in unit.parts:
        stock = part.blank.stock
        if (
            lot_kind(stock) == lot.kind
            and plain_material(stock.material) == plain_material(lot.material)
            and abs(stock.thickness - lot.thickness) <= TOUCH
            and (lot.kind != "length" or abs((stock.section or 0.0) - lot.section) <= TOUCH)
        ):
            return stock
    raise ValueError(f"no part of this unit is of {lot.material}")


def _whence(offer: Offer) -> str:
    if not offer.at_hand:
        return ""
    return ", from the rack" if offer.entry else ", at hand"


def _price_in_plan(offer: Offer, lot: Lot, stock: Stock) -> float | None:
    """What one of an offer costs by spec and rack, or would if it weren't at hand: as another of
    its size, else by its area (or length) as all that are sold, else as its stock."""
    if not offer.at_hand:
        return offer.price
    sold = {id(each): each.price for each in lot.offers if not each.at_hand}
    priced = [(each, price) for each in lot.offers if (price := sold.get(id(each))) is not None]
    for each, price in priced:
        if same_size(each, offer):
            return price
    if priced:
        rate = sum(price for _, price in priced) / sum(amount(each.supply) for each, _ in priced)
        return rate * amount(offer.supply)
    if stock.price is None:
        return None
    if stock.kind == "board":
        return stock.price * offer.supply.length / _METRE
    return (
        None
        if stock.size is None
        else (stock.price * amount(offer.supply) / (stock.size[0] * stock.size[1] / _M2))
    )


def _by_rates(rates: Rates, keys: tuple[str, ...], size: tuple[float, float, float]) -> Priced:
    """The price of one piece of a size (mm) by the rates; where they have none, what to call it."""
    found = price_for(rates, keys)
    return Priced(keys[0], None) if found is None else Priced(found[0], found[1].each(*size))


def by_area(unit: Unit, rates: Rates) -> Iterator[Material]:
    """Stock by the net size of its parts as first cut: sheets by their area in sheets, boards by
    theirs, what is bought in its section by its length.  Waste is still to be added."""
    for total in stock_totals(unit):
        kind = lot_kind(total.stock)
        if kind == "sheet":
            yield _sheets(total, unit.display_unit, rates)
        elif kind == "board":
            yield _boards(total, unit.display_unit, rates)
        else:
            yield _lengths(total, unit.display_unit, rates)


def _sheets(total: StockTotal, unit: LengthUnit, rates: Rates) -> Material:
    stock = total.stock
    long, wide = usual_size(stock, unit)
    area = long * wide
    said = stock.price
    if said is None:
        rated = (
            each.price * area / (each.length * each.width)
            for each in stock.sold
            if each.price is not None
        )
        said = next(rated, None)
    keys = stock_keys(stock, rates)
    priced = (
        _by_rates(rates, keys, (long, wide, stock.thickness))
        if said is None
        else Priced(keys[0], money(said))
    )
    size = " x ".join(format_length(each, unit) for each in (long, wide))
    count = exact(total.area * _M2 / area)
    return _net(stock, unit, f", {size}", priced, count, "sheet")


def _boards(total: StockTotal, unit: LengthUnit, rates: Rates) -> Material:
    stock, area = total.stock, AREAS[rates.unit]
    keys = stock_keys(stock, rates)
    said = _board_rate(stock)
    if said is not None:
        priced = Priced(keys[0], money(said * area.one))
    else:
        side = RUNS[rates.unit].one * _METRE
        thick = stock.sawn_thickness or stock.thickness
        priced = _measured(rates, keys, (side, side, thick), least=2)
    return _net(stock, unit, "", priced, exact(area.of(total.area)), area.symbol)


def _board_rate(stock: Stock) -> float | None:
    """What a m2 of a stock's boards costs by its spec: as the first size that is sold at a price,
    else by the metre of the boards at hand."""
    for each in stock.sold:
        if each.price is not None:
            return each.price / (each.length * each.width / _M2)
    if stock.price is None or not stock.pieces:
        return None
    return stock.price / (stock.pieces[0].width / _METRE)


def _lengths(total: StockTotal, unit: LengthUnit, rates: Rates) -> Material:
    stock, run = total.stock, RUNS[rates.unit]
    keys = stock_keys(stock, rates)
    by_metre = (each.price * _METRE / each.length for each in stock.sold if each.price is not None)
    said = next(by_metre, stock.price)
    if said is not None:
        priced = Priced(keys[0], money(said * run.one))
    else:
        size = (run.one * _METRE, stock.section or 0.0, stock.thickness)
        priced = _measured(rates, keys, size, least=1)
    return _net(stock, unit, "", priced, exact(run.of(total.metres)), run.symbol)


def _measured(
    rates: Rates, keys: tuple[str, ...], size: tuple[float, float, float], *, least: int
) -> Priced:
    """The price of a measure by the rates; none where theirs is for whole pieces or for so little
    of a size that it says nothing of it."""
    found = price_for(rates, keys)
    if found is None or found[1].power < least:
        return Priced(keys[0], None)
    return Priced(found[0], found[1].each(*size))


def _net(
    stock: Stock, unit: LengthUnit, size: str, priced: Priced, count: Decimal, per: str
) -> Material:
    sides = [stock.thickness] if stock.section is None else [stock.section, stock.thickness]
    thick = " x ".join(format_length(each, unit) for each in sides)
    name = f"{stock.described}, {thick} {unit}{size}"
    return Material("stock", priced.key, name, count, per, priced.price, "by area", wasted=True)
