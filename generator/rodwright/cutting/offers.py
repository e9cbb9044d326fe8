"""What pieces of one material and thickness can be cut from: at hand, or to be bought."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from rodwright.cutting.rack import Entry, Rack, RackKind
from rodwright.cutting.supplies import Flaw, Supply, Trim
from rodwright.cutting.taking import Comes, Used
from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit, format_length
from rodwright.trade.materials import name_of
from rodwright.trade.stock_sizes import (
    ALIKE,
    BOARD_LENGTHS,
    BOARD_WIDTHS,
    PLANED_AWAY,
    SHEET_SIZES,
)
from rodwright.unit import Grain
from rodwright.unit.stock import Piece, Sold, Stock

_M2 = 1e6
_METRE = 1000.0


@dataclass(frozen=True, slots=True)
class Offer:
    """A supply, and where it comes from.

    ``kind`` is as of a lot.  ``at_hand`` tells what is there from what is bought.  ``entry`` is
    its name in the rack file (empty: it is in none), ``stock`` the spec's name for it (empty: it is
    in the rack alone).  ``price`` is what one costs, 0 at hand; None where that isn't known, and
    ``supply.price`` is then by area (or length) what the others cost, or in m2 (or metres) where
    no price is known at all.  ``assumed`` says that nobody said it is sold in this size.

    ``turned`` says that its grain runs across its first size, so that the supply's length is the
    second one: its near end is then the face edge of what lies in the rack, its face edge the far
    end.  ``thickness`` is what parts get, ``lies`` what it is as it lies there (sawn, or
    thicker than is wanted: it is planed).  ``where`` is where it stands.  ``density`` is in kg/m3.
    """

    supply: Supply
    kind: RackKind
    material: str
    thickness: float
    lies: float
    at_hand: bool
    price: float | None
    entry: str = ""
    stock: str = ""
    section: float = 0.0
    grained: bool = True
    show_faces: int = 2
    sawn_thickness: float | None = None
    turned: bool = False
    assumed: bool = False
    where: str = ""
    density: float = 0.0


def lot_kind(stock: Stock) -> RackKind:
    """As which kind of lot a stock's parts are cut: a board bought in its section is a length."""
    if stock.kind == "sheet":
        return "sheet"
    return "board" if stock.section is None else "length"


def same_lot(one: Stock, other: Stock) -> bool:
    """Whether parts of two stocks are cut from the same wood: kind, material, thickness, section,
    grain, and how it is sawn."""
    return (
        lot_kind(one) == lot_kind(other)
        and _material(one.material) == _material(other.material)
        and abs(one.thickness - other.thickness) <= TOUCH
        and abs((one.section or 0.0) - (other.section or 0.0)) <= TOUCH
        and (one.grain is Grain.NONE) == (other.grain is Grain.NONE)
        and one.sawn == other.sawn
    )


def supplies_of(
    stocks: Sequence[Stock],
    rack: Rack | None = None,
    *,
    show_faces: int = 1,
    unit: LengthUnit = "mm",
) -> tuple[Offer, ...]:
    """What parts of some stocks (of one lot, see :func:`same_lot`) can be cut from.

    At hand is what the rack has, or without one the ``pieces`` of the stocks; where two
    stocks have equal pieces they are taken for the same ones.  To be bought is what the rack has a
    price of and each stock's ``size`` and ``sold``; of two prices of a size the rack's counts, or
    the higher.  Where a stock says nothing of sizes that are sold, those of
    :mod:`rodwright.trade.stock_sizes` are assumed, unless the rack has a price of any.

    A rack's entry does where its material is the stock's (as
    :func:`rodwright.trade.materials.name_of` knows it) and it is as thick to within 1/64 in; boards
    may be up to 8 mm thicker and are planed.  ``show_faces`` (0 to 2) are the good faces that parts
    need: what has fewer is left out.  ``unit`` is for the names of what is bought.

    Sheets whose grain runs across are turned by a quarter, so that a supply's length always runs
    along the grain.  Empty where there is nothing.
    """
    first = stocks[0]
    there = _in_rack(first, rack) if rack is not None else _at_hand(stocks)
    to_buy = _to_buy(stocks, unit)
    if rack is not None:
        priced = [each for each in there if not each.at_hand]
        to_buy = [
            each
            for each in to_buy
            if not any(each.assumed or _same_size(each, other) for other in priced)
        ]
    found = [each for each in (*there, *to_buy) if each.show_faces >= show_faces]
    return tuple(_named_apart(_priced(found)))


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


def offcut_of(offer: Offer, name: str, length: float, width: float, cut_from: str) -> Comes:
    """What goes into the rack of an offcut ``length`` x ``width`` mm, along and across the grain,
    that is left of an offer."""
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
    )


# --- at hand ---------------------------------------------------------------------------


def _in_rack(stock: Stock, rack: Rack) -> list[Offer]:
    """Entries that do for a stock; one that is at hand and sold too is two offers."""
    found = []
    for entry in rack.entries:
        if not _does(entry, stock):
            continue
        whole = _offer_of(entry, stock)
        if entry.piece.count:
            found.append(whole)
        if entry.price is not None:
            supply = replace(
                whole.supply, name=f"{entry.name}, bought", count=None, price=entry.price
            )
            found.append(replace(whole, supply=supply, at_hand=False, price=entry.price))
    return found


def _does(entry: Entry, stock: Stock) -> bool:
    """Whether parts of a stock can be cut from an entry of a rack."""
    if entry.kind != lot_kind(stock) or _material(entry.material) != _material(stock.material):
        return False
    if (entry.grain is Grain.NONE) != (stock.grain is Grain.NONE):
        return False
    if stock.sawn == "quarter" and "quarter" not in entry.material.lower():
        return False
    over = entry.thickness - stock.thickness
    if entry.kind == "board":
        return -ALIKE - TOUCH <= over <= PLANED_AWAY + TOUCH
    same_section = abs(entry.section - (stock.section or 0.0)) <= ALIKE + TOUCH
    return abs(over) <= ALIKE + TOUCH and same_section


def _offer_of(entry: Entry, stock: Stock) -> Offer:
    supply = _supply(entry.name, entry.piece, entry.grain, entry.planing)
    return Offer(
        supply,
        entry.kind,
        entry.material,
        stock.thickness,
        entry.sawn_thickness or entry.thickness,
        True,
        0.0,
        entry=entry.name,
        section=entry.section,
        grained=entry.grain is not Grain.NONE,
        show_faces=entry.piece.show_faces,
        sawn_thickness=entry.sawn_thickness,
        turned=entry.grain is Grain.CROSSWISE,
        where=entry.where,
        density=stock.density,
    )


def _at_hand(stocks: Sequence[Stock]) -> list[Offer]:
    """The pieces of some stocks, equal ones of several stocks once."""
    found: dict[tuple[object, ...], Offer] = {}
    for stock in stocks:
        for number, piece in enumerate(stock.pieces, start=1):
            key = (
                piece.length,
                piece.width,
                piece.trim,
                piece.flaws,
                piece.show_faces,
                stock.grain,
            )
            known = found.get(key)
            if known is not None and (known.supply.count or 0) >= piece.count:
                continue
            name = f"{stock.name} {number}" if len(stock.pieces) > 1 else f"{stock.name} at hand"
            found[key] = _of_stock(stock, name, piece, at_hand=True, price=0.0)
    return list(found.values())


# --- to be bought ----------------------------------------------------------------------


def _to_buy(stocks: Sequence[Stock], unit: LengthUnit) -> list[Offer]:
    found: list[Offer] = []
    for stock in stocks:
        sizes = list(stock.sold)
        if stock.size is not None:
            sizes.insert(0, Sold(*stock.size, stock.price))
        assumed = not sizes
        for size in sizes or _assumed(stock, unit):
            across = size.width if stock.section is None else 0.0
            size_said = " x ".join(
                format_length(each, unit) for each in (size.length, across) if each
            )
            whole = Piece(size.length, across, 0, stock.trim, (), stock.show_faces)
            offer = _of_stock(
                stock, f"{stock.name} {size_said}", whole, at_hand=False, price=size.price
            )
            offer = replace(offer, assumed=assumed)
            same = next((each for each in found if _same_size(each, offer)), None)
            if same is None:
                found.append(offer)
            elif offer.price is not None and (same.price is None or offer.price > same.price):
                found[found.index(same)] = offer
    if any(not each.assumed for each in found):
        return [each for each in found if not each.assumed]
    return found


def _assumed(stock: Stock, unit: LengthUnit) -> list[Sold]:
    """Sizes that a stock is taken to be sold in; boards at its price by the metre."""
    if stock.kind == "sheet":
        return [Sold(*SHEET_SIZES[unit][0], stock.price)]
    widths = BOARD_WIDTHS[unit] if stock.section is None else (stock.section,)
    # A price by the metre can't be one of every width.
    by_metre = stock.price if len(widths) == 1 else None
    return [
        Sold(length, width, None if by_metre is None else by_metre * length / _METRE)
        for length in BOARD_LENGTHS[unit]
        for width in widths
    ]


def _of_stock(stock: Stock, name: str, size: Piece, *, at_hand: bool, price: float | None) -> Offer:
    supply = _supply(name, size, stock.grain, stock.planing)
    if stock.section is not None:
        supply = replace(supply, width=0.0)
    supply = replace(supply, count=size.count if at_hand else None, price=price or 0.0)
    return Offer(
        supply,
        lot_kind(stock),
        stock.material,
        stock.thickness,
        stock.sawn_thickness or stock.thickness,
        at_hand,
        price,
        stock=stock.name,
        section=stock.section or 0.0,
        grained=stock.grain is not Grain.NONE,
        show_faces=size.show_faces,
        sawn_thickness=stock.sawn_thickness,
        turned=stock.grain is Grain.CROSSWISE,
        density=stock.density,
    )


# --- what both are made of --------------------------------------------------------------


def _supply(name: str, size: Piece, grain: Grain, planing: float) -> Supply:
    """A supply at hand whose length runs along the grain."""
    length, width, trim = size.length, size.width, size.trim
    if grain is not Grain.CROSSWISE:
        half = planing / 2
        edges = Trim(trim.near, trim.far, trim.face + half, trim.back + half)
        flaws = tuple(
            Flaw(each.x, each.y, each.length, each.width, each.why) for each in size.flaws
        )
        return Supply(name, length, width, size.count, 0.0, edges, flaws)
    # A quarter turn, and no mirror image: what was measured along the first size is now measured
    # across, from the other end.
    turned = tuple(
        Flaw(each.y, length - each.x - each.length, each.width, each.length, each.why)
        for each in size.flaws
    )
    edges = Trim(trim.face, trim.back, trim.far, trim.near)
    return Supply(name, width, length, size.count, 0.0, edges, turned)


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


def _same_size(one: Offer, other: Offer) -> bool:
    return (
        abs(one.supply.length - other.supply.length) <= TOUCH
        and abs(one.supply.width - other.supply.width) <= TOUCH
        and one.turned == other.turned
    )


def _material(name: str) -> str:
    """What a material is called, however it is written."""
    plain = " ".join(name.lower().replace(",", " ").split())
    return name_of(plain) or plain.replace("-", " ")
