"""Where supplies come from, and what they cost whoever buys them."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Origin:
    """What a supply is to the maker: ``at_hand`` (in the rack, or among a spec's own pieces) or
    to be bought.

    ``price`` is for one of them in the maker's own money; None where it isn't known.  ``entry``
    is what the rack file calls it (None: it is no entry of a rack), ``stands`` where it stands.
    ``assumed`` says that its size is nowhere said: it is one that is usually sold.  ``notes`` are
    what to know when it is cut, such as that its grain runs across it.
    """

    at_hand: bool = False
    price: float | None = None
    entry: str | None = None
    stands: str = ""
    assumed: bool = False
    notes: tuple[str, ...] = ()
