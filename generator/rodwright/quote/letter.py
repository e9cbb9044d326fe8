"""What a quote says beside its price, as plain data: for whom, where, what it takes in."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal


@dataclass(frozen=True, slots=True)
class BoughtIn:
    """Work of others: ``price`` is what the maker pays for it before tax (None: nobody said)."""

    what: str
    price: Decimal | None


@dataclass(frozen=True, slots=True)
class Letter:
    """For whom a quote is and what it says beside its price; what nobody said is empty.

    ``address`` and ``site`` are lines, ``date`` the day of the quote (ISO 8601).
    """

    client: str = ""
    address: tuple[str, ...] = ()
    site: tuple[str, ...] = ()
    number: str = ""
    date: str = ""
    words: tuple[str, ...] = ()
    included: tuple[str, ...] = ()
    not_included: tuple[str, ...] = ()
    bought_in: tuple[BoughtIn, ...] = ()
    terms: tuple[str, ...] = ()
