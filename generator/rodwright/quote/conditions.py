"""What is in the price and what isn't, and what a client should know, in a client's words."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

from rodwright.quote.costing import Costing
from rodwright.quote.described import is_finished, solid_wood
from rodwright.quote.from_site import wall_fixings
from rodwright.quote.letter import Letter
from rodwright.unit import Unit
from rodwright.way.answer import WayInAnswer

_MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip


def included(unit: Unit, letter: Letter, costing: Costing) -> Iterator[str]:
    """What the price takes in, line by line."""
    yield "Making it as described and drawn, hardware included."
    if is_finished(unit):
        yield "Finishing it as described here; what nobody sees once it is in its place stays bare."
    if is_fitted(costing):
        yield "Bringing it and fitting it on site."
        if unit.opening is None and wall_fixings(unit):
            yield "Fixing it to the wall."
    yield from (each.what for each in letter.bought_in)
    yield from letter.included


def not_included(unit: Unit, letter: Letter, costing: Costing) -> Iterator[str]:
    """What the price doesn't take in, line by line."""
    if not is_finished(unit):
        yield "Finishing: the wood is left bare."
    if not is_fitted(costing):
        yield "Bringing it and fitting it on site."
    if unit.opening is None and not (is_fitted(costing) and wall_fixings(unit)):
        yield "Fixing it to the wall."
    beyond = ", beyond what is named as included" if letter.bought_in else ""
    yield f"Work on wiring, gas and water, and mending walls, floors and ceilings{beyond}."
    yield from letter.not_included


def to_know(unit: Unit, way: WayInAnswer | None) -> Iterator[str]:
    """What a client should know of such a piece, and what can hurt."""
    if unit.opening is not None:
        yield "It is made to the opening as measured, which is measured again before wood is cut."
    yield from at_the_wall(unit)
    if unit.services:
        yield f"It is cut out round: {', '.join(unit.services)}."
    if solid_wood(unit):
        yield (
            "Solid wood swells and shrinks a little with the air through the year. No two boards "
            "are alike: grain and colour will differ from the picture, and change with light."
        )
    if any(part.finish is not None and part.finish.kind == "oil" for part in unit.parts):
        yield (
            "Oiled surfaces are oiled again when they look dry. Rags with oil on them can catch "
            "fire by themselves: spread them out flat outdoors to dry, or keep them in water."
        )
    if way is not None and way.goes:
        yield "By the sizes of doors, passages and stairs that were given, it goes in finished."


def at_the_wall(unit: Unit) -> Iterator[str]:
    """How it is held by its wall, why, and what is in the wall; the same on a quote and a page."""
    if unit.hung:
        yield (
            "It hangs on the wall. The wall has to bear it and what it carries, and is looked at "
            "before anything is fixed."
        )
    else:
        fixed = "It is fixed" if wall_fixings(unit) else "Have it fixed"
        yield (
            f"{fixed} to the wall: furniture that tips over can kill a child. Leave the fixings "
            "in, and let nobody climb on it. Local rules come first; what holds in your wall is "
            "for who fits it to judge."
        )
    yield (
        "Tell us of wires and pipes in the walls before fitting. Work on wiring, gas and water is "
        "for those who are licensed to do it where you are."
    )


def is_fitted(costing: Costing) -> bool:
    """Whether fitting on site is part of what is costed."""
    return any(
        line.operation.stage == "fitting" and line.operation.count > 0 for line in costing.labour
    )


def holds(letter: Letter, days: int) -> str:
    """How long the price holds."""
    if letter.date:
        last = date.fromisoformat(letter.date) + timedelta(days=days)
        return f"until {day_said(last.isoformat())}"
    return f"for {days} days from the day this quote is sent"


def day_said(day: str) -> str:
    """A day (ISO 8601) in words that read the same everywhere: `31 May 2026`."""
    on = date.fromisoformat(day)
    return f"{on.day} {_MONTHS[on.month - 1]} {on.year}"
