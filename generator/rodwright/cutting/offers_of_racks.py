"""What a rack has of the wood that a stock is of."""

from __future__ import annotations

from dataclasses import replace

from rodwright.cutting.offer import Offer, lot_kind, make_supply, plain_material
from rodwright.cutting.rack import Entry, Rack
from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit
from rodwright.trade.stock_sizes import ALIKE, END_TRIM, PLANED_AWAY
from rodwright.unit import Grain
from rodwright.unit.stock import Stock


def in_rack(stock: Stock, rack: Rack) -> list[Offer]:
    """Entries that do for a stock; one that is at hand and sold too is two offers."""
    found = []
    for entry in rack.entries:
        if not does(entry, stock):
            continue
        whole = _offer_of(entry, stock)
        if entry.piece.count:
            found.append(whole)
        if entry.price is not None:
            found.append(_bought(whole, entry, entry.price, rack.unit))
    return found


def _bought(whole: Offer, entry: Entry, price: float, unit: LengthUnit) -> Offer:
    """Another one from the shop: without the flaws of those at hand, with ends no worse than
    boards usually have, and it stands nowhere yet."""
    trim = whole.supply.trim
    if entry.kind != "sheet":
        most = END_TRIM[unit]
        trim = replace(trim, near=min(trim.near, most), far=min(trim.far, most))
    name = f"{entry.name}, bought"
    supply = replace(whole.supply, name=name, count=None, price=price, trim=trim, flaws=())
    return replace(whole, supply=supply, at_hand=False, price=price, where="")


def other_thicknesses(stock: Stock, rack: Rack) -> list[float]:
    """How thick what a rack has of a stock's material and kind is, in mm."""
    found = {
        entry.thickness
        for entry in rack.entries
        if entry.kind == lot_kind(stock)
        and plain_material(entry.material) == plain_material(stock.material)
    }
    return sorted(found)


def does(entry: Entry, stock: Stock) -> bool:
    """Whether parts of a stock can be cut from an entry of a rack."""
    if entry.kind != lot_kind(stock) or plain_material(entry.material) != plain_material(
        stock.material
    ):
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
    supply = make_supply(entry.name, entry.piece, entry.grain, entry.planing)
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
