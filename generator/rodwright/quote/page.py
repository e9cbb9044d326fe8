"""The client's quote as pages: what is wanted, what it looks like and what it costs.

Nothing of a maker's costs, hours or margin is in it: of a costing only what is asked.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal
from io import BytesIO
from typing import Any

from PIL import Image

from rodwright.paper.typesetting import paper_name, typeset
from rodwright.pictures.svg import to_svg
from rodwright.quote.conditions import day_said, holds, included, not_included, to_know
from rodwright.quote.costing import Costing
from rodwright.quote.described import Fact, cut_on_site, facts_of
from rodwright.quote.elevation import elevation
from rodwright.quote.letter import Letter
from rodwright.quote.rates import Rates
from rodwright.trade.label_sheets import Paper
from rodwright.unit import Unit
from rodwright.way.answer import WayInAnswer

NOT_PRICED = "not priced yet"
"""What stands where a price would, while any of what it is made up of is missing."""
_DRAWING = (172.0, 118.0)
"""Room for the elevation, mm."""
_BESIDE_OPTIONS = (172.0, 112.0)
"""And where there are options on its page."""


@dataclass(frozen=True, slots=True)
class Offered:
    """One way of making the unit: ``unit`` is laid, ``picture`` a JPEG file of it; ``note`` is what
    the maker says of it."""

    unit: Unit
    costing: Costing
    picture: bytes
    note: str = ""


@dataclass(frozen=True, slots=True)
class Quotation:
    """All that the client's quote is made of: the first of ``offered`` is the unit as the spec has
    it, the others are its options.  ``errors`` is how many of its faults must be mended first;
    ``way`` is known where the way in is.  ``photograph`` says whether pictures are photographs."""

    offered: tuple[Offered, ...]
    letter: Letter
    rates: Rates
    errors: int = 0
    way: WayInAnswer | None = None
    photograph: bool = True


def quote_pdf(quotation: Quotation, paper: Paper, when: datetime | None = None) -> bytes:
    """The quote as a PDF; ``when`` is the date that it carries.

    Raises:
        ProblemsError: Typst isn't installed.
        ValueError: a part's workings leave no single solid.
    """
    first = quotation.offered[0].unit
    room = _DRAWING if len(quotation.offered) == 1 else _BESIDE_OPTIONS
    drawing = elevation(first, *room).drawing
    files = {"quote/elevation.svg": to_svg(drawing, words=True).encode()}
    files |= {_picture(at): each.picture for at, each in enumerate(quotation.offered)}
    data = page_data(quotation) | {
        "paper": paper_name(paper),
        "drawing": {
            "file": "quote/elevation.svg",
            "width": drawing.width,
            "told": " ".join((drawing.description, *(f"{each}." for each in cut_on_site(first)))),
        },
    }
    (pdf,) = typeset("quote", data, files, when=when)
    return pdf


def page_data(quotation: Quotation) -> dict[str, Any]:
    """What the template is given, but for paper and drawing."""
    letter, rates = quotation.letter, quotation.rates
    first, several = quotation.offered[0], len(quotation.offered) > 1
    unit = first.unit
    told = zip(quotation.offered, _differing(quotation.offered), strict=True)
    return {
        "title": unit.title,
        "number": letter.number,
        "date": letter.date,
        "banner": _banner(quotation),
        "head": _head(rates, unit),
        "client": [each for each in (letter.client, *letter.address) if each],
        "site": list(letter.site),
        "about": [[word, said] for word, said in _about(letter, rates) if said],
        "picture": {"file": _picture(0), "aspect": _aspect(first.picture)},
        "picture_note": _picture_note(quotation),
        "words": list(letter.words),
        "facts": [_fact(each) for each in facts_of(unit)],
        "holds": holds(letter, rates.valid),
        "prices": _prices(quotation),
        "payments": _payments(quotation),
        "options": [
            {"name": each.costing.option, "note": each.note}
            | {"picture": {"file": _picture(at), "aspect": _aspect(each.picture)}}
            | {"total": _said(each.costing, each.costing.total), "facts": facts}
            for at, (each, facts) in enumerate(told)
        ]
        if several
        else [],
        "included": list(included(unit, letter, first.costing)),
        "not_included": list(not_included(unit, letter, first.costing)),
        "to_know": _to_know(quotation),
        "terms": list(letter.terms),
        "measure": "millimetres" if unit.display_unit == "mm" else "inches",
    }


def _banner(quotation: Quotation) -> str:
    """What keeps the quote from being given to the client."""
    found = []
    if quotation.errors:
        faults = "fault" if quotation.errors == 1 else "faults"
        found.append(f"its design has {quotation.errors} {faults} to be mended first")
    if any(each.costing.missing for each in quotation.offered):
        found.append("it is not priced yet")
    return f"Draft: {', and '.join(found)}" if found else ""


def _picture_note(quotation: Quotation) -> str:
    """What the picture is."""
    if quotation.photograph:
        return "The picture is worked out from the design."
    return "Drawn from the design; colours are only near what they will be."


def _head(rates: Rates, unit: Unit) -> dict[str, Any]:
    """Who asks the price."""
    shop = rates.workshop
    tax = f"Tax number {shop.tax_number}" if shop.tax_number else ""
    lines = (", ".join(shop.address), shop.telephone, shop.email, tax)
    name = shop.name or unit.organisation or unit.author
    return {"name": name, "lines": [each for each in lines if each]}


def _about(letter: Letter, rates: Rates) -> Iterator[tuple[str, str]]:
    yield "Quote", letter.number
    yield "Date", day_said(letter.date) if letter.date else ""
    yield "Price holds", holds(letter, rates.valid)


def _fact(fact: Fact) -> dict[str, Any]:
    lines = [{"said": each.said, "colour": each.colour} for each in fact.lines]
    return {"word": fact.word, "lines": lines}


def _differing(offered: Sequence[Offered]) -> Iterator[list[dict[str, Any]]]:
    """Of each option the facts that aren't the same in all of them."""
    every = [facts_of(each.unit) for each in offered]
    for facts in every:
        yield [_fact(each) for each in facts if not all(each in others for others in every)]


def _prices(quotation: Quotation) -> dict[str, Any]:
    """Price before tax, tax and total of each option, all of it as text."""
    rates = quotation.rates
    taxed = rates.tax > 0
    tax = f"{rates.tax_name[:1].upper()}{rates.tax_name[1:]} {_percent(rates.tax)}"
    heads = ["Price before tax", tax, "Total"] if taxed else ["Total"]
    rows = []
    for each in quotation.offered:
        asked = each.costing
        sums = (asked.net, asked.tax, asked.total) if taxed else (asked.total,)
        rows.append({"name": asked.option, "sums": [_said(asked, amount) for amount in sums]})
    return {"heads": heads, "rows": rows}


def _to_know(quotation: Quotation) -> list[str]:
    """What is to be known of any of the options, each thing once."""
    units = (each.unit for each in quotation.offered)
    return list(dict.fromkeys(said for unit in units for said in to_know(unit, quotation.way)))


def _payments(quotation: Quotation) -> dict[str, Any]:
    """What is paid when: a row a payment, or with options a row an option and a column a payment;
    nothing where there is but one payment, or no price."""
    costings = [each.costing for each in quotation.offered]
    names = [when for when, _ in costings[0].payments]
    if len(names) < 2 or any(each.total is None for each in costings):
        return {"heads": [], "rows": []}
    if len(costings) == 1:
        (only,) = costings
        return {"heads": [], "rows": [[when, _said(only, part)] for when, part in only.payments]}
    rows = [[one.option, *(_said(one, part) for _, part in one.payments)] for one in costings]
    return {"heads": names, "rows": rows}


def _said(costing: Costing, amount: Decimal | None) -> str:
    return NOT_PRICED if amount is None else f"{costing.currency} {amount:,}"


def _percent(share: Decimal) -> str:
    return f"{(share * 100).normalize():f} %"


def _picture(at: int) -> str:
    return f"quote/picture-{at}.jpg"


def _aspect(picture: bytes) -> float:
    """How many times as wide as high it is."""
    with Image.open(BytesIO(picture)) as image:
        width, height = image.size
    return float(width / height)
