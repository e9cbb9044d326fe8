"""What is bought, what comes from the rack, and what becomes of it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from rodwright.cutting.offer import Place, place_of
from rodwright.cutting.offers import Offer
from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import Layout
from rodwright.cutting.pricing import amount, offer_of
from rodwright.cutting.supplies import Supply
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import Lot, LotPlan


@dataclass(frozen=True, slots=True)
class ShoppingRow:
    """Some equal sheets, boards or lengths that are cut: ``lot`` is the number of their lot, from
    0.  ``each`` is the price of one, None where it isn't known or nothing is paid."""

    lot: int
    offer: Offer
    count: int

    @property
    def supply(self) -> Supply:
        """One of them."""
        return self.offer.supply

    @property
    def each(self) -> float | None:
        """The price of one."""
        return None if self.offer.at_hand else self.offer.price

    @property
    def sum(self) -> float | None:
        """The price of all."""
        return None if self.each is None else self.each * self.count


@dataclass(frozen=True, slots=True)
class Balance:
    """What becomes of what is cut for a lot, in m2 (in m, where it has no width).

    ``taken`` is all of the sheets or boards that are cut, of which ``in_pieces`` ends up in pieces
    and ``kept`` in offcuts worth keeping.
    """

    taken: float
    in_pieces: float
    kept: float

    @property
    def lost(self) -> float:
        """What is thrown away: small offcuts, trims and sawdust."""
        return max(0.0, self.taken - self.in_pieces - self.kept)

    @property
    def waste(self) -> float:
        """The share that is thrown away, 0 to 1."""
        return self.lost / self.taken if self.taken else 0.0


def shopping_rows(cutting: Cutting) -> tuple[ShoppingRow, ...]:
    """What is cut, by lots, what is bought before what is at hand."""
    return tuple(
        row
        for at, planned in enumerate(cutting.lots)
        for row in sorted(_rows(at, planned), key=lambda each: each.offer.at_hand)
    )


def _rows(lot: int, planned: LotPlan) -> Iterator[ShoppingRow]:
    used = planned.plan.used
    for supply in planned.lot.supplies:
        if count := used.get(supply.name, 0):
            yield ShoppingRow(lot, offer_of(planned.lot, supply.name), count)


@dataclass(frozen=True, slots=True)
class Unused:
    """What is at hand for a lot and isn't cut by any: how many of an offer."""

    offer: Offer
    count: int


def unused_beside(cutting: Cutting, lot: int) -> tuple[Unused, ...]:
    """What stays where it is though something is bought for a lot; empty where nothing is."""
    planned = cutting.lots[lot]
    if all(offer_of(planned.lot, each).at_hand for each in planned.plan.used):
        return ()
    used = Counter[Place]()
    # What earlier lots have taken isn't in the counts of this one's supplies any more.
    for each in cutting.lots[lot:]:
        for offer in each.lot.offers:
            if offer.at_hand:
                used[place_of(offer)] += each.plan.used.get(offer.supply.name, 0)
    found = (
        Unused(offer, (offer.supply.count or 0) - used[place_of(offer)])
        for offer in planned.lot.offers
        if offer.at_hand
    )
    return tuple(each for each in found if each.count > 0)


def paid(rows: Iterable[ShoppingRow]) -> float:
    """What all that is bought costs, as far as its price is known, without tax."""
    return sum(each.sum or 0.0 for each in rows)


def without_price(rows: Iterable[ShoppingRow]) -> tuple[ShoppingRow, ...]:
    """What is bought at a price that isn't known."""
    return tuple(each for each in rows if not each.offer.at_hand and each.each is None)


def balance_of(cutting: Cutting, lot: int) -> Balance:
    """What becomes of what is cut for a lot."""
    planned = cutting.lots[lot]
    supplies = {each.name: each for each in planned.lot.supplies}
    taken = sum(amount(supplies[each.stock]) for each in planned.plan.layouts)
    in_pieces = sum(_in_pieces(planned.lot, each) for each in planned.plan.layouts)
    kept = sum(
        _size(each.offcut.length, each.offcut.width) for each in cutting.kept if each.lot == lot
    )
    return Balance(taken, in_pieces, kept)


def _in_pieces(lot: Lot, layout: Layout) -> float:
    """What ends up in pieces: without slanted ends, and without cuts within a row of fronts."""
    net = {each.name: _net(each) for each in lot.pieces}
    return sum(net[each.piece] for each in layout.placed)


def _net(piece: Piece) -> float:
    if piece.inner:
        return sum(_size(each.length, each.width) for each in piece.inner)
    return _size(piece.length - sum(piece.slants) / 2, piece.width)


def _size(length: float, width: float) -> float:
    return length * width / 1e6 if width else length / 1e3
