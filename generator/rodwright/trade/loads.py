"""What shelves carry: weights of books, files, crockery and the like, as they were published.

Each figure is in the measure of its source, which stands with it and says where it is from memory.
A row of things is a weight per length of shelf, what is stacked or spread a weight per area, what
fills a space a density.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Literal

from rodwright.amounts import AREA_WEIGHTS, RUN_WEIGHTS, Amount, AmountError, Kind, parse_amount
from rodwright.lengths import LengthUnit
from rodwright.trade.sources import Figure, Source

Manner = Literal["lies", "stands", "hangs"]
"""How it is carried: spread on a level, on one spot of it, or on a rail between two uprights."""


@dataclass(frozen=True, slots=True)
class Use:
    """Something that shelves carry: its name, what else makers call it, what it weighs (None: no
    weight is published) and how it is carried."""

    name: str
    weight: Figure | None
    others: tuple[str, ...] = ()
    manner: Manner = "lies"


_STACKS = Source("M. Krakower, SEAINT list of structural engineers (2000), on weighed book stacks")
_ALGEBRA = Source("Kime, Clark & Michael, Explorations in College Algebra, 4th ed., ch. 7, no. 16")
_PAGES = Source("A. Kaw, numerical methods notes, chapter 03.00C, from pages per inch")
_DISCS = Source("Warren, ARSC Journal (1993), on the weight of discs", seen=False)
_OFFICES = Source("common office planning figure", seen=False)
_CARTONS = Source("RECMGMT-L list of records managers (2005), full carton of 1 ft3")
_CABINETS = Source("ANSI/KCMA A161.1, load of the cabinet shelf test, as a supplier gives it")
_JOINERY = Source("Architectural Woodwork Standards, 1st ed. (2009), section 10, 1.2.21")
_DRAWERS = Source("ASTM F2057-23, section 9.2, clothing load of drawers", seen=False)
_RAILS = Source("EN 16122, test load of a clothes rail", seen=False)
_STORED = Source("EN 1991-1-1:2002, table A.12, piled paper", seen=False)
_COMPACT = Source("ARLIS-L list of art librarians (2009), after Metcalf (1986), p. 327")

USES = (
    Use("books", Figure(25, "lb/ft", _STACKS), ("mixed books", "library books")),
    Use("paperbacks", Figure(10, "lb/ft", _ALGEBRA), ("paperback books", "novels")),
    Use("hardbacks", Figure(20, "lb/ft", _ALGEBRA), ("hardback books", "hardbound books")),
    Use("large books", Figure(36, "lb/ft", _ALGEBRA),
        ("oversize books", "art books", "atlases", "dictionaries")),
    Use("textbooks", Figure(4, "lb/in", _PAGES), ("large textbooks",)),
    Use("records", Figure(45, "lb/ft", _DISCS), ("lps", "lp records", "vinyl", "vinyl records")),
    Use("files", Figure(45, "kg/m", _OFFICES),
        ("lever-arch files", "lever arch files", "box files", "binders", "ring binders")),
    Use("archive boxes", Figure(37, "lb/ft", _CARTONS), ("archive cartons", "record cartons")),
    Use("paper", Figure(11, "kN/m3", _STORED), ("stacked paper", "reams")),
    Use("crockery", Figure(15, "lb/ft2", _CABINETS),
        ("china", "dishes", "plates", "pots and pans", "kitchenware", "tins", "groceries")),
    Use("household goods", Figure(15, "lb/ft2", _CABINETS), ("household things",)),
    Use("storage", Figure(40, "lb/ft2", _JOINERY), ("general storage",)),
    Use("school storage", Figure(50, "lb/ft2", _JOINERY), ("hospital storage", "library storage")),
    Use("folded clothes", Figure(8.5, "lb/ft3", _DRAWERS), ("linen", "towels", "bedding")),
    Use("clothes on a rail", Figure(40, "kg/m", _RAILS),
        ("hung clothes", "hanging clothes", "clothes on hangers", "coats"), "hangs"),
    Use("television", None, ("tv", "television set"), "stands"),
)  # fmt: skip
"""A row a thing.  Of a range the heavier end is taken; files and boxes stand in one row, one high;
nothing was found that gives the weight of crockery, so it takes the load of the cabinet test."""

MOST_PER_LENGTH = Figure(40, "lb/in", Source(f"ten times a row of large textbooks: {_PAGES.work}"))
"""No shelf carries more than this; a figure beyond it is a slip."""
MOST_PER_AREA = Figure(300, "lb/ft2", _COMPACT)
"""What whole stacks of moving shelves weigh on a floor: no shelf carries that."""

ON_OPEN_SHELVES, BEHIND_DOORS, IN_DRAWERS = "books", "household goods", "folded clothes"
"""What is assumed where nothing is said (common practice, no source; their weights have theirs)."""
ON_WORKTOPS = "storage"
"""What is assumed on a worktop (common practice, no source; its weight has one)."""

NOTHING = "nothing"
_NOTHINGS = (NOTHING, "none", "empty")
_CLOTHES = re.compile(r"\b(?:cloth(?:es|ing)?|garments?|apparel)\b")
_LIES = (Kind.RUN_WEIGHT, Kind.AREA_WEIGHT, Kind.WEIGHT)
_KINDS: dict[Manner, tuple[Kind, ...]] = {
    "lies": _LIES,
    "stands": (Kind.WEIGHT,),
    "hangs": (Kind.RUN_WEIGHT, Kind.WEIGHT),
}
_NAMES = {name: use for use in USES for name in (use.name, *use.others)}
_AMOUNT = re.compile(r"(?:^|\s)(?=[-+−.]?[0-9]|[-+.]*(?:nan|inf)\b)", re.IGNORECASE)
_LONGEST_SHOWN = 40


@dataclass(frozen=True, slots=True)
class Burden:
    """What something carries, in its maker's words, what that weighs and how it is carried.

    ``source`` is where its weight comes from: None if the maker gave it.
    """

    said: str
    amount: Amount
    source: Source | None = None
    manner: Manner = "lies"

    def per_metre(self, length: float, depth: float, height: float) -> float:
        """Its weight, kg/m, on a shelf so long and deep (mm) and under a clear height of so many
        mm, which only what fills a space goes by."""
        match self.amount.kind:
            case Kind.RUN_WEIGHT:
                return self.amount.value
            case Kind.AREA_WEIGHT:
                return self.amount.value * depth / 1000
            case Kind.DENSITY:
                return self.amount.value * depth * height / 1e6
            case _:
                return self.amount.value / length * 1000


def burden_of(name: str) -> Burden:
    """What something of :data:`USES` weighs, by one of its names.

    Raises:
        AmountError: there is none of this name, or no weight of it is published.
    """
    plain = " ".join(name.replace("&", " and ").split()).casefold()
    if plain in _NOTHINGS:
        return Burden(NOTHING, Amount(0.0, Kind.RUN_WEIGHT))
    use = _NAMES.get(plain)
    if use is None:
        raise _unknown(name, plain)
    if use.weight is None:
        raise AmountError(
            f"no weight of a {use.name} is published",
            f"Take it from its data plate and write it: `{use.name} 18 kg`.",
        )
    amount = parse_amount(f"{use.weight.value!r} {use.weight.measure}", tuple(Kind))
    return Burden(" ".join(name.split()), amount, use.weight.source, use.manner)


def read_burden(text: object, unit: LengthUnit = "mm") -> Burden:
    """What a maker says that a shelf carries: the name of a use (``books``), an amount
    (``25 kg/m``, ``50 lb/ft2``, ``30 kg``), or an amount with a name of any kind before it
    (``television 18 kg``).  ``unit`` is the maker's, for what is told.

    Raises:
        AmountError: it is neither, has no unit, or is more than any shelf carries.
    """
    if not isinstance(text, str):
        return Burden(str(text), _within_reason(str(text), parse_amount(text, _LIES), unit))
    said = " ".join(text.split())
    if not said:
        raise AmountError(
            "this is empty", "Write what lies there: `books`, `25 kg/m` or `nothing`."
        )
    found = _AMOUNT.search(said)
    if found is None:
        return burden_of(said)
    use = _NAMES.get(said[: found.start()].casefold())
    manner = use.manner if use else "lies"
    written = said[found.end() :]
    amount = _within_reason(written, parse_amount(written, _KINDS[manner]), unit)
    return Burden(said, amount, None, manner)


def most_per_metre() -> float:
    """The most that a shelf carries, kg/m."""
    return parse_amount(
        f"{MOST_PER_LENGTH.value!r} {MOST_PER_LENGTH.measure}", (Kind.RUN_WEIGHT,)
    ).value


def _within_reason(written: str, amount: Amount, unit: LengthUnit) -> Amount:
    """The same amount, if a shelf can carry so much; of a weight in all the shelf's length says.

    Raises:
        AmountError: none can.
    """
    if amount.kind is Kind.RUN_WEIGHT:
        limit, source, measures = most_per_metre(), MOST_PER_LENGTH.source, RUN_WEIGHTS
    elif amount.kind is Kind.AREA_WEIGHT:
        most = MOST_PER_AREA
        limit = parse_amount(f"{most.value!r} {most.measure}", (amount.kind,)).value
        source, measures = most.source, AREA_WEIGHTS
    else:
        return amount
    if amount.value <= limit:
        return amount
    raise AmountError(
        f"`{written}` is more than a shelf carries: at most {measures[unit].said(limit)} makes "
        f"sense ({source})",
        "Check the figure and its unit.",
    )


def _unknown(name: str, plain: str) -> AmountError:
    """What to say of a name that isn't known."""
    shown = name if len(name) <= _LONGEST_SHOWN else f"{name[: _LONGEST_SHOWN - 1]}…"
    if _CLOTHES.search(plain):
        return AmountError(
            "clothes hang on a rail or lie on shelves",
            "Write `clothes on a rail` or `folded clothes`.",
        )
    # Never `nothing`: whoever takes that for what they meant has an empty shelf worked out.
    near = get_close_matches(plain, list(_NAMES), n=1, cutoff=0.7)
    message = f"`{shown}` isn't among what is known to lie on shelves"
    if near:
        return AmountError(f"{message}; did you mean `{near[0]}`?", f"Write `{near[0]}`.")
    if shown != name:
        return AmountError(message, "Write what it weighs, like `25 kg/m`.")
    names = ", ".join(f"`{use.name}`" for use in USES)
    return AmountError(message, f"Write what it weighs, like `{shown} 25 kg/m`, or one of {names}.")
