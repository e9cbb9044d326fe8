"""Can every part be cut from its stock?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH
from rodwright.unit import Grain, Part, Role, Stock, Unit
from rodwright.unit.facts import through_dividers
from rodwright.unit.stock import Sold

_SOURCE = "size of the stock, given in the spec"


def stock_sizes(unit: Unit) -> Iterator[Finding]:
    """Parts larger than what they are cut from, in length, width or thickness."""
    for part in unit.parts:
        stock = part.blank.stock
        yield from _thickness(unit, part, stock)
        if stock.kind == "sheet" and (stock.size is not None or stock.sold):
            yield from _sheet(unit, part, stock)
        elif stock.kind == "board" and (stock.pieces or stock.sold):
            yield from _boards(unit, part, stock)


def _usable(stock: Stock) -> list[tuple[float, float]]:
    """Length and width (mm) of what is at hand and what is sold, less what comes off its edges."""
    whole = () if stock.size is None else (Sold(*stock.size),)
    sizes = [
        *((each, stock.trim) for each in (*whole, *stock.sold)),
        *((each, each.trim) for each in stock.pieces),
    ]
    return [
        (
            size.length - trim.near - trim.far,
            size.width - trim.face - trim.back - stock.planing,
        )
        for size, trim in sizes
    ]


def _thickness(unit: Unit, part: Part, stock: Stock) -> Iterator[Finding]:
    thick = part.blank.thickness
    if stock.section is not None:
        yield from _section(unit, part, stock.section)
        wrong = thick > stock.thickness + TOUCH
    elif stock.kind == "board":
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


def _section(unit: Unit, part: Part, section: float) -> Iterator[Finding]:
    """A part of what is bought in its section can't be wider than that, and isn't glued up."""
    stock, width = part.blank.stock, part.rough_size[1]
    if width > section + TOUCH:
        yield Finding(
            Severity.ERROR,
            Rule.WIDER_THAN_SECTION,
            f"{named(part)} is {length_in(unit, width)} wide as cut; `{stock.name}` is bought "
            f"{length_in(unit, section)} wide",
            "Name stock of that width, or leave its `section` out and rip boards.",
            (part.ref,),
            width,
            section,
            source=_SOURCE,
            case=(stock.name, width),
        )


def _sheet(unit: Unit, part: Part, stock: Stock) -> Iterator[Finding]:
    """A part on the sheets there are; where there is grain, its length lies along the sheet's."""
    length, width, _ = part.rough_size
    over = _beyond_sheets(part, stock.grain)
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


def _beyond_sheets(part: Part, grain: Grain) -> float:
    """By how much (mm) a part is larger than the sheet that it is nearest to fit on, lying as a
    grain lets it; below 0 where it fits."""
    length, width, _ = part.rough_size
    ways = []
    for sheet in _usable(part.blank.stock):
        if grain is not Grain.CROSSWISE:
            ways.append((length - sheet[0], width - sheet[1]))
        if grain is not Grain.LENGTHWISE:
            ways.append((length - sheet[1], width - sheet[0]))
    return min(max(way) for way in ways)


def _remedy(unit: Unit, part: Part) -> str:
    """What to do about a part that is larger than its sheet: a back can be split on a divider, and
    what would fit across the sheet can lie so where the grain is of no matter."""
    backs = [each for each in unit.parts if each.role is Role.BACK]
    behind = through_dividers(unit)
    turned = ""
    grained = part.blank.stock.grain is not Grain.NONE
    if grained and _beyond_sheets(part, Grain.NONE) <= TOUCH:
        turned = (
            f"write `grain: none` for `{part.blank.stock.name}`, so that it may lie across; or "
        )
    if part.role is Role.BACK and len(backs) == 1 and behind:
        return (
            f"Write `back.split: true`, so that its panels meet behind {' and '.join(behind)}; or "
            f"{turned}use larger sheets."
        )
    said = f"{turned}use larger sheets, make the part in two, or divide the unit."
    return f"{said[0].upper()}{said[1:]}"


def _boards(unit: Unit, part: Part, stock: Stock) -> Iterator[Finding]:
    length, width, thickness = part.rough_size
    section = width if thickness <= stock.thickness + TOUCH else thickness
    longest = max(length for length, _ in _usable(stock))
    widest = max(width for _, width in _usable(stock))
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
    if stock.section is None and section > widest + TOUCH:
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
