"""What stock a unit takes: as its cutting plan cuts it, or else by area."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal

from rodwright.amounts import AREAS, RUNS, VOLUMES, Measure
from rodwright.cutting.offer import Offer, lot_kind, plain_material, same_size
from rodwright.cutting.pricing import amount
from rodwright.cutting.rack import RackKind
from rodwright.cutting.shopping import shopping_rows
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import Lot
from rodwright.geometry import TOUCH
from rodwright.handover.cut_words import offer_title, size_said
from rodwright.handover.totals import StockTotal, stock_totals
from rodwright.lengths import LengthUnit, format_length
from rodwright.quote.counted import Material
from rodwright.quote.from_cuts import usual_size
from rodwright.quote.prices import money, price_for, sized_keys, stock_keys
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
        said = _price_in_plan(offer, lot, stock)
        size = (supply.length, supply.width or offer.section, offer.lies)
        priced = _priced(rates, unit.display_unit, stock, said, size, _PIECES[lot.kind])
        shown = size_said(lot, supply.length, supply.width, unit.display_unit)
        yield Material(
            "stock",
            priced.key,
            f"{offer_title(lot, offer, unit.display_unit)}, {shown}{priced.lacks}",
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


_Size = tuple[float, float, float]
_PIECES: dict[RackKind, tuple[int, ...]] = {
    "sheet": (0, 2, 3),
    "board": (2, 3),
    "length": (0, 1, 2, 3),
}
"""Powers of a length that a price may be for where whole pieces are bought: by the piece or by the
metre says nothing of boards, which are sold in widths and lengths as they come."""
_BY_MEASURE: dict[int, Mapping[LengthUnit, Measure]] = {1: RUNS, 2: AREAS, 3: VOLUMES}


@dataclass(frozen=True, slots=True)
class _Priced:
    """What the rates call a stock, and the price of one of what it is counted in; where there is
    none ``lacks`` says by what it is to be said, unless that is plain."""

    key: str
    price: Decimal | None
    lacks: str = ""


def _priced(
    rates: Rates,
    unit: LengthUnit,
    stock: Stock,
    said: float | None,
    size: _Size,
    powers: tuple[int, ...],
) -> _Priced:
    """The price of a piece of a size (mm): what spec or rack have ``said``, else by the rates, as
    far as theirs is for what ``powers`` allow; one for that very size may be by the piece."""
    keys = stock_keys(stock, unit)
    if said is not None:
        return _Priced(keys[0], money(said))
    own = price_for(rates, sized_keys(stock, size[:2], unit))
    if own is not None:
        return _Priced(own[0], own[1].each(*size))
    found = price_for(rates, keys)
    if found is not None and found[1].power in powers:
        return _Priced(found[0], found[1].each(*size))
    measures = [_BY_MEASURE[power][rates.unit].symbol for power in powers if power]
    lacks = "" if 0 in powers else f", by the {' or '.join(measures)}"
    return _Priced(keys[0] if found is None else found[0], None, lacks)


def by_area(unit: Unit, rates: Rates) -> Iterator[Material]:
    """Stock by the net size of its parts as first cut: sheets by their area in sheets, boards by
    theirs, what is bought in its section by its length.  Waste is still to be added."""
    count_of = {"sheet": _sheets, "board": _boards, "length": _lengths}
    for total in stock_totals(unit):
        yield count_of[lot_kind(total.stock)](total, unit.display_unit, rates)


def _sheets(total: StockTotal, unit: LengthUnit, rates: Rates) -> Material:
    stock = total.stock
    long, wide = usual_size(stock, unit)
    rated = (
        each.price * (long * wide) / (each.length * each.width)
        for each in stock.sold
        if each.price is not None
    )
    said = next(rated, None) if stock.price is None else stock.price
    priced = _priced(rates, unit, stock, said, (long, wide, stock.thickness), _PIECES["sheet"])
    size = " x ".join(format_length(each, unit) for each in (long, wide))
    count = exact(total.area * _M2 / (long * wide))
    return _net(stock, unit, f", {size}", priced, count, "sheet")


def _boards(total: StockTotal, unit: LengthUnit, rates: Rates) -> Material:
    stock, area = total.stock, AREAS[rates.unit]
    rate, side = _board_rate(stock), RUNS[rates.unit].one * _METRE
    size = (side, side, stock.sawn_thickness or stock.thickness)
    said = None if rate is None else rate * area.one
    priced = _priced(rates, unit, stock, said, size, _PIECES["board"])
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
    by_metre = (each.price * _METRE / each.length for each in stock.sold if each.price is not None)
    rate = next(by_metre, stock.price)
    size = (run.one * _METRE, stock.section or 0.0, stock.thickness)
    said = None if rate is None else rate * run.one
    priced = _priced(rates, unit, stock, said, size, (1, 2, 3))
    return _net(stock, unit, "", priced, exact(run.of(total.metres)), run.symbol)


def _net(
    stock: Stock, unit: LengthUnit, size: str, priced: _Priced, count: Decimal, per: str
) -> Material:
    sides = [stock.thickness] if stock.section is None else [stock.section, stock.thickness]
    thick = " x ".join(format_length(each, unit) for each in sides)
    name = f"{stock.described}, {thick} {unit}{size}{priced.lacks}"
    return Material("stock", priced.key, name, count, per, priced.price, "by area", wasted=True)
