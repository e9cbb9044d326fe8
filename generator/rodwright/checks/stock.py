"""Can every part be cut from its stock?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH
from rodwright.unit import Grain, Part, Role, Stock, Unit
from rodwright.unit.facts import through_dividers

_SOURCE = "size of the stock, given in the spec"


def stock_sizes(unit: Unit) -> Iterator[Finding]:
    """Parts larger than what they are cut from, in length, width or thickness."""
    for part in unit.parts:
        stock = part.blank.stock
        yield from _thickness(unit, part, stock)
        if stock.size is not None:
            yield from _sheet(unit, part, stock.size)
        elif stock.pieces:
            yield from _boards(unit, part, stock)


def _thickness(unit: Unit, part: Part, stock: Stock) -> Iterator[Finding]:
    thick = part.blank.thickness
    if stock.kind == "board":
        # A narrow strip may be ripped from a board's edge and turned on its side.
        thick = min(thick, part.blank.width)
        wrong = thick > stock.thickness + TOUCH
    else:
        wrong = abs(thick - stock.thickness) > TOUCH
    if wrong:
        yield Finding(
            Severity.ERROR,
            Rule.STOCK_THICKNESS,
            f"{named(part)} is {length_in(unit, thick)} thick; `{stock.name}` is "
            f"{length_in(unit, stock.thickness)}",
            "Name stock of that thickness, or change the part's.",
            (part.ref,),
            thick,
            stock.thickness,
            source=_SOURCE,
            case=(stock.name,),
        )


def _sheet(unit: Unit, part: Part, sheet: tuple[float, float]) -> Iterator[Finding]:
    """A part on its sheet; where there is grain, its length lies along the sheet's grain."""
    length, width, _ = part.rough_size
    stock = part.blank.stock
    along, across = sheet if stock.grain is not Grain.CROSSWISE else sheet[::-1]
    ways = [(length - along, width - across)]
    if stock.grain is Grain.NONE:
        ways.append((length - across, width - along))
    over = min(max(way) for way in ways)
    if over > TOUCH:
        grain = "" if stock.grain is Grain.NONE else " with its grain lengthwise"
        yield Finding(
            Severity.ERROR,
            Rule.LARGER_THAN_SHEET,
            f"{named(part)} needs a blank {length_in(unit, length)} x {length_in(unit, width)}"
            f"{grain}; that is {length_in(unit, over)} more than a sheet of `{stock.name}`",
            _remedy(unit, part),
            (part.ref,),
            over,
            0.0,
            source=_SOURCE,
            case=(stock.name, length, width),
        )


def _remedy(unit: Unit, part: Part) -> str:
    """What to do about a part that is larger than its sheet: a back can be split on a divider."""
    backs = [each for each in unit.parts if each.role is Role.BACK]
    behind = through_dividers(unit)
    if part.role is Role.BACK and len(backs) == 1 and behind:
        return (
            f"Write `back.split: true`, so that its panels meet behind {' and '.join(behind)}; or "
            "use larger sheets."
        )
    return "Use larger sheets, make the part in two, or divide the unit."


def _boards(unit: Unit, part: Part, stock: Stock) -> Iterator[Finding]:
    length, width, thickness = part.rough_size
    section = width if thickness <= stock.thickness + TOUCH else thickness
    longest = max(piece.length for piece in stock.pieces)
    widest = max(piece.width for piece in stock.pieces)
    if length > longest + TOUCH:
        yield Finding(
            Severity.ERROR,
            Rule.LONGER_THAN_BOARDS,
            f"{named(part)} needs a blank {length_in(unit, length)} long; the longest board of "
            f"`{stock.name}` is {length_in(unit, longest)}",
            "Get longer boards, or make the part in two.",
            (part.ref,),
            length - longest,
            0.0,
            source=_SOURCE,
            case=(stock.name, length),
        )
    if section > widest + TOUCH:
        yield Finding(
            Severity.WARNING,
            Rule.WIDER_THAN_BOARDS,
            f"{named(part)} needs a blank {length_in(unit, section)} wide; the widest board of "
            f"`{stock.name}` is {length_in(unit, widest)}",
            "Glue boards up edge to edge, or get wider ones.",
            (part.ref,),
            section - widest,
            0.0,
            source=_SOURCE,
            case=(stock.name, section),
        )
