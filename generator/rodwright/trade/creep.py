"""What time does to boards under load: creep, and how much of their strength is left.

kdef and kmod are those of EN 1995-1-1:2004 + A1:2008, tables 3.2 and 3.1, partial factors those
of its table 2.3.  Read in transcriptions where ``seen``.  Lines are called as the tables call
them: `solid timber`, `plywood`, `OSB/3`, `P5`, `MDF.LA` ...
"""

from __future__ import annotations

from enum import StrEnum
from typing import Literal

from rodwright.trade.sources import Figure, Source

ServiceClass = Literal[1, 2, 3]
"""The room (EN 1995-1-1, 2.3.1.3): 1 heated, 2 under cover, 3 outside."""


class Duration(StrEnum):
    """How long a load lies (EN 1995-1-1, tables 2.1 and 2.2)."""

    PERMANENT = "permanent"
    """Over ten years: the piece's own weight."""
    LONG = "long-term"
    """Six months to ten years: what is stored on shelves."""
    MEDIUM = "medium-term"
    """A week to six months."""
    SHORT = "short-term"
    """Less than a week."""
    INSTANT = "instantaneous"
    """A knock, someone who leans on it."""


_CREEP = "EN 1995-1-1:2004 + A1:2008, table 3.2"
_DURATION = "EN 1995-1-1:2004 + A1:2008, table 3.1"
_PARTIAL = "EN 1995-1-1:2004 + A1:2008, table 2.3"
_GLASS = "EN 16612:2019"

# A figure by service class and whether it was seen; a class that isn't here isn't in the table.
# fmt: off
_KDEF: dict[str, dict[ServiceClass, tuple[float, bool]]] = {
    "solid timber": {1: (0.60, True), 2: (0.80, True), 3: (2.00, True)},
    "plywood": {1: (0.80, True), 2: (1.00, True), 3: (2.50, True)},
    "OSB/2": {1: (2.25, True)},
    "OSB/3": {1: (1.50, True), 2: (2.25, True)},
    "P4": {1: (2.25, True)},
    "P5": {1: (2.25, False), 2: (3.00, True)},
    "P6": {1: (1.50, True)},
    "P7": {1: (1.50, False), 2: (2.25, False)},
    "HB.LA": {1: (2.25, True)},
    "HB.HLA2": {1: (2.25, False), 2: (3.00, True)},
    "MDF.LA": {1: (2.25, True)},
    "MDF.HLS": {1: (2.25, False), 2: (3.00, True)},
}
_TIMBER = ((0.60, 0.70, 0.80, 0.90, 1.10), True)
_TIMBER_OUTSIDE = ((0.50, 0.55, 0.65, 0.70, 0.90), True)
_BOARD = ((0.30, 0.45, 0.65, 0.85, 1.10), False)
_DAMP_BOARD = ((0.20, 0.30, 0.45, 0.60, 0.80), False)
_STRONG_BOARD = ((0.40, 0.50, 0.70, 0.90, 1.10), False)
_STRONG_DAMP_BOARD = ((0.30, 0.40, 0.55, 0.70, 0.90), False)
_FIBRES = ((0.20, 0.40, 0.60, 0.80, 1.10), False)
_KMOD: dict[str, dict[ServiceClass, tuple[tuple[float, ...], bool]]] = {
    "solid timber": {1: _TIMBER, 2: _TIMBER, 3: _TIMBER_OUTSIDE},
    "plywood": {1: _TIMBER, 2: _TIMBER, 3: _TIMBER_OUTSIDE},
    "OSB/2": {1: ((0.30, 0.45, 0.65, 0.85, 1.10), True)},
    "OSB/3": {1: ((0.40, 0.50, 0.70, 0.90, 1.10), True), 2: _STRONG_DAMP_BOARD},
    "P4": {1: _BOARD},
    "P5": {1: _BOARD, 2: _DAMP_BOARD},
    "P6": {1: _STRONG_BOARD},
    "P7": {1: _STRONG_BOARD, 2: _STRONG_DAMP_BOARD},
    "HB.LA": {1: _BOARD},
    "HB.HLA2": {1: _BOARD, 2: _DAMP_BOARD},
    "MDF.LA": {1: _FIBRES},
    "MDF.HLS": {1: _FIBRES},
}
# fmt: on
_KMOD_GLASS = (0.29, 0.33, 0.39, 0.48, 1.00)
_PARTIALS: dict[str, tuple[float, bool]] = {
    "solid timber": (1.3, True),
    "plywood": (1.2, True),
    "OSB/2": (1.2, True),
    "OSB/3": (1.2, True),
}
_PARTIAL_OF_BOARDS = (1.3, True)
_PARTIAL_OF_GLASS = 1.8

TABLES = (*_KDEF, "glass")
"""The lines that there are, as :attr:`Mechanics.table` names them (EN 1995-1-1 table 3.2)."""


def kdef(table: str, service_class: ServiceClass, borrower: str = "") -> Figure | None:
    """By how much of itself a sag grows under a load that stays: final = at once x (1 + kdef).

    ``borrower`` is a material that has no line of its own and takes this one's figure.  None where
    the table has none, since such a board isn't meant for that service class.  Glass has 0: it
    doesn't creep in a room.

    Raises:
        KeyError: no line is called ``table``.
    """
    if table == "glass":
        return Figure(0.0, "", Source("glass does not creep in a room", seen=False))
    found = _KDEF[table].get(service_class)
    if found is None:
        return None
    return Figure(found[0], "", _line(_CREEP, table, found[1], borrower))


def kmod(
    table: str, duration: Duration, service_class: ServiceClass, borrower: str = ""
) -> Figure | None:
    """The share of its strength that a board has left under a load of this duration.

    Arguments and raises as :func:`kdef`.  That of glass is ``0.663 t^(-1/16)``, t in hours, at the
    end of each duration (50 years, 10 years, six months, a week).
    """
    place = list(Duration).index(duration)
    if table == "glass":
        return Figure(_KMOD_GLASS[place], "", Source(_GLASS, seen=False))
    found = _KMOD[table].get(service_class)
    if found is None:
        return None
    return Figure(found[0][place], "", _line(_DURATION, table, found[1], borrower))


def partial_factor(table: str) -> Figure:
    """What a characteristic strength is divided by, for what isn't known of the piece at hand.

    Raises:
        KeyError: no line is called ``table``.
    """
    if table == "glass":
        return Figure(_PARTIAL_OF_GLASS, "", Source(_GLASS, seen=False))
    value, seen = _PARTIALS.get(table, _PARTIAL_OF_BOARDS if table in _KDEF else (0.0, False))
    if not value:
        raise KeyError(table)
    return Figure(value, "", Source(f"{_PARTIAL}, {table}", seen))


def _line(work: str, table: str, seen: bool, borrower: str) -> Source:
    said = f"{work}, {table}"
    # That it may be borrowed is common practice, which nothing published was seen to say.
    return Source(f"{said}, for want of {borrower}", seen=False) if borrower else Source(said, seen)
