"""What pieces of one material and thickness can be cut from: at hand, or to be bought."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from rodwright.cutting.offer import Offer, lot_kind, same_lot, same_size
from rodwright.cutting.offers_of_racks import in_rack, other_thicknesses
from rodwright.cutting.offers_of_stocks import at_hand, to_buy
from rodwright.cutting.rack import Rack
from rodwright.cutting.supplies import Flaw, Supply
from rodwright.cutting.taking import Comes, Used
from rodwright.lengths import LengthUnit, format_length
from rodwright.unit.stock import Stock

__all__ = [
    "NoStockError",
    "Offer",
    "less",
    "lot_kind",
    "offcut_of",
    "same_lot",
    "supplies_of",
    "uses_of",
]

_M2 = 1e6
_METRE = 1000.0


def supplies_of(
    stocks: Sequence[Stock],
    rack: Rack | None = None,
    *,
    show_faces: int = 1,
    unit: LengthUnit = "mm",
) -> tuple[Offer, ...]:
    """What parts of some stocks (of one lot, see :func:`same_lot`) can be cut from.

    At hand is what the rack has, or where that has nothing of it (or there is no rack) the
    ``pieces`` of the stocks; where two stocks have equal pieces they are taken for the same ones.
    To be bought is what the rack has a price of and each stock's ``size`` and ``sold``; of two
    prices of a size the rack's counts, or the higher.  Where a stock says nothing of sizes that are
    sold, those of :mod:`rodwright.trade.stock_sizes` are assumed, unless the rack has a price of
    any.

    A rack's entry does where its material is the stock's (as
    :func:`rodwright.trade.materials.name_of` knows it) and it is as thick to within 1/64 in; boards
    may be up to 8 mm thicker and are planed.  ``show_faces`` (0 to 2) are the good faces that parts
    need: what has fewer is left out.  ``unit`` is for the names of what is bought.

    Sheets whose grain runs across are turned by a quarter, so that a supply's length always runs
    along the grain.  Empty where all have too few good faces.

    Raises:
        NoStockError: the rack has the material in other thicknesses alone, and no stock says what
            it is sold in.
    """
    bought = to_buy(stocks, unit)
    if rack is None:
        there = at_hand(stocks)
    else:
        there = in_rack(stocks[0], rack) or at_hand(stocks)
        if not there and all(each.assumed for each in bought):
            _look_for_others(stocks[0], rack, unit)
        priced = [each for each in there if not each.at_hand]
        bought = [
            each
            for each in bought
            if not any(each.assumed or same_size(each, other) for other in priced)
        ]
    found = [each for each in (*there, *bought) if each.show_faces >= show_faces]
    return tuple(_named_apart(_priced(found)))


class NoStockError(ValueError):
    """There is none of a stock in the thickness that is wanted: ``message`` says so and ``remedy``
    what to do; ``stock`` is what the spec calls it."""

    def __init__(self, stock: str, message: str, remedy: str) -> None:
        super().__init__(f"{message} {remedy}")
        self.stock, self.message, self.remedy = stock, message, remedy


def _look_for_others(stock: Stock, rack: Rack, unit: LengthUnit) -> None:
    """Refuse stock that a rack has in other thicknesses alone."""
    others = [f"{format_length(each, unit)} {unit}" for each in other_thicknesses(stock, rack)]
    if others:
        raise NoStockError(
            stock.name,
            f"there is no {stock.material} {format_length(stock.thickness, unit)} {unit} thick: "
            f"`{rack.file}` has {' and '.join(others)}",
            "Add some to the rack with its `count` or its `price`, or say under `sold` of this "
            "stock in what sizes it is bought.",
        )


def less(offers: Iterable[Offer], used: Mapping[str, int]) -> tuple[Offer, ...]:
    """What is left of some offers once a plan used so many of each (:attr:`Plan.used`): for
    the next lot that may be cut from the same wood."""
    left = []
    for offer in offers:
        count = offer.supply.count
        if count is not None and offer.at_hand:
            count -= used.get(offer.supply.name, 0)
            if count < 1:
                continue
            offer = replace(offer, supply=replace(offer.supply, count=count))
        left.append(offer)
    return tuple(left)


def uses_of(rack: Rack, offers: Iterable[Offer], used: Mapping[str, int]) -> tuple[Used, ...]:
    """What a plan takes out of the rack: of all offers those at hand in it that are ``used``."""
    found = []
    for offer in offers:
        entry, count = rack.entry(offer.entry), used.get(offer.supply.name, 0)
        if offer.at_hand and entry is not None and count:
            found.append(Used(entry.name, count, entry.fingerprint))
    return tuple(found)


def offcut_of(
    offer: Offer,
    name: str,
    length: float,
    width: float,
    cut_from: str,
    flaws: tuple[Flaw, ...] = (),
) -> Comes:
    """What goes into the rack of an offcut ``length`` x ``width`` mm, along and across the grain,
    that is left of an offer; ``flaws`` are measured from its near corner."""
    return Comes(
        name,
        offer.kind,
        offer.material,
        offer.thickness if offer.sawn_thickness is not None else offer.lies,
        length,
        width,
        offer.section,
        offer.grained,
        offer.show_faces,
        offer.sawn_thickness,
        offer.density,
        cut_from,
        flaws,
    )


def _priced(offers: Sequence[Offer]) -> list[Offer]:
    """Offers of which those without a price have one by their size: at the mean rate of those
    whose price is known, or in m2 or metres where none is."""
    known = [each for each in offers if not each.at_hand and each.price is not None]
    size = sum(_size(each.supply) for each in known)
    rate = sum(each.supply.price for each in known) / size if size and known else 1.0
    return [
        replace(each, supply=replace(each.supply, price=rate * _size(each.supply)))
        if each.price is None
        else each
        for each in offers
    ]


def _size(supply: Supply) -> float:
    """m2, or metres of what has no width."""
    return supply.length * supply.width / _M2 if supply.width else supply.length / _METRE


def _named_apart(offers: Iterable[Offer]) -> list[Offer]:
    """Offers no two of whose supplies are called alike."""
    named: dict[str, int] = {}
    found = []
    for offer in offers:
        name = offer.supply.name
        named[name] = named.get(name, 0) + 1
        if named[name] > 1:
            name = f"{name} ({named[name]})"
            offer = replace(offer, supply=replace(offer.supply, name=name))
        found.append(offer)
    return found
