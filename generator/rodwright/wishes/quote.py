"""The spec language's part about the quote: for whom, where, and what it says beside the price."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from rodwright.wishes.fields import InShort, SpecModel, Text
from rodwright.wishes.made_by import Date, Name, Number
from rodwright.wishes.money import Money

Line = Annotated[Text, Field(max_length=600)]
"""A line of a quote; it runs on over as many lines of paper as it needs."""
Lines = Annotated[tuple[Line, ...], Field(max_length=30, strict=False)]
"""Lines of a quote."""
AddressLines = Annotated[tuple[Name, ...], Field(max_length=6, strict=False)]
"""An address, line by line."""


class ClientSpec(SpecModel):
    """Whom the quote is for."""

    name: Name
    """Name of the client."""
    address: AddressLines = ()
    """The client's address, line by line."""


class BoughtInSpec(SpecModel):
    """Work that others do, and what they ask for it."""

    what: Line
    """What is done, or bought, in the client's words; the quote says that it is included."""
    price: Money | None = None
    """What you pay for it, before tax, in the currency of your rates; overhead and margin come on
    top.  Without one the quote can't be added up."""


class QuoteSpec(SpecModel):
    """The quote: for whom, where, and what it says beside the price."""

    client: Annotated[ClientSpec, InShort(Name, "name")] | None = None
    """Whom it is for: a name, or keys."""
    site: AddressLines = ()
    """Where the unit is fitted, line by line, if it isn't at the client's address."""
    number: Number | None = None
    """Number of the quote; that of the design unless said."""
    date: Date | None = None
    """Day of the quote (`2026-05-31`), from which the price holds; that of the design unless
    said."""
    words: Lines = ()
    """What you say of the piece to the client, paragraph by paragraph, on the quote and on the page
    to send."""
    included: Lines = ()
    """What is included beside what the quote lists by itself, line by line."""
    not_included: Lines = ()
    """What isn't included, line by line."""
    bought_in: Annotated[tuple[BoughtInSpec, ...], Field(max_length=30, strict=False)] = ()
    """Work of others that is part of the price: glass, an electrician, a painter."""
    terms: Lines = ()
    """Your terms, line by line."""
