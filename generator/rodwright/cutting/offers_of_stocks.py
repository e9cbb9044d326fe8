"""What specs have at hand of their stocks, and what is sold of them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from rodwright.cutting.offer import Offer, lot_kind, make_supply, same_size
from rodwright.lengths import LengthUnit, format_length
from rodwright.trade.stock_sizes import BOARD_LENGTHS, BOARD_WIDTHS, END_TRIM, SHEET_SIZES
from rodwright.unit import Grain
from rodwright.unit.stock import Edges, Piece, Sold, Stock

_METRE = 1000.0


def at_hand(stocks: Sequence[Stock]) -> list[Offer]:
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


def to_buy(stocks: Sequence[Stock], unit: LengthUnit) -> list[Offer]:
    """The sizes that some stocks are sold in, or assumed ones where none of them says."""
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
            trim = (
                _with_ends(stock.trim, unit)
                if assumed and lot_kind(stock) == "board"
                else stock.trim
            )
            whole = Piece(size.length, across, 0, trim, (), stock.show_faces)
            offer = _of_stock(
                stock, f"{stock.name} {size_said}", whole, at_hand=False, price=size.price
            )
            offer = replace(offer, assumed=assumed)
            same = next((each for each in found if same_size(each, offer)), None)
            if same is None:
                found.append(offer)
            elif offer.price is not None and (same.price is None or offer.price > same.price):
                found[found.index(same)] = offer
    if any(not each.assumed for each in found):
        return [each for each in found if not each.assumed]
    return found


def _with_ends(trim: Edges, unit: LengthUnit) -> Edges:
    """The trim of boards of which nothing is known, with usual ends unless others are said."""
    return trim if trim.near or trim.far else replace(trim, near=END_TRIM[unit], far=END_TRIM[unit])


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
    supply = make_supply(name, size, stock.grain, stock.planing)
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
