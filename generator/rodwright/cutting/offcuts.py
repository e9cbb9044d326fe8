"""Offcuts that are worth keeping, and the names that are written on them."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from hashlib import sha256
from itertools import count

from rodwright.cutting.plans import Offcut
from rodwright.cutting.work import LotPlan

_LETTERS = "BCDFGHJKLMNPQRSTVWXZ"
_MARKS = "BCDFGHJKLMNPQRSTVWXZ2345679"
"""What marks are made of: no vowels, so that none is a word, and nothing that is taken for
something else when it is written on wood."""


@dataclass(frozen=True, slots=True)
class Least:
    """The smallest offcut worth keeping, mm: either way round of a sheet; of a board, or of a
    bought length, its length (and width) along the grain."""

    length: float = 400.0
    width: float = 150.0
    board_length: float = 400.0
    board_width: float = 40.0


@dataclass(frozen=True, slots=True)
class Kept:
    """An offcut that goes into the rack: ``name`` is written on it, ``layout`` is the number of
    its sheet or board within the plan of its ``lot`` (both from 0)."""

    name: str
    lot: int
    layout: int
    offcut: Offcut


def worth_keeping(kind: str, offcut: Offcut, least: Least) -> bool:
    """Whether an offcut of a lot of this kind is kept."""
    length, width = offcut.length, offcut.width
    if kind == "length":
        return length >= least.board_length
    if kind == "board":
        return length >= least.board_length and width >= least.board_width
    long, short = max(length, width), min(length, width)
    return long >= max(least.length, least.width) and short >= min(least.length, least.width)


def identity(lots: Sequence[LotPlan], salt: str = "") -> str:
    """What tells a plan from every other: 64 hexadecimal digits.  ``salt`` is whatever else it
    hangs on, such as what the rack held."""
    return sha256(repr((tuple(lots), salt)).encode()).hexdigest()


def plan_mark(identified: str, taken: Collection[str] = ()) -> str:
    """Three characters that stand for a plan, from its :func:`identity`: with them the names of
    its offcuts begin.  None of the names that are ``taken`` does so too."""
    taken_marks = {each.split("-")[0].upper() for each in taken}
    for again in count():
        digits = int(sha256(f"{identified} {again}".encode()).hexdigest(), 16)
        digits, first = divmod(digits, len(_LETTERS))
        digits, second = divmod(digits, len(_MARKS))
        mark = _LETTERS[first] + _MARKS[second] + _MARKS[digits % len(_MARKS)]
        if mark not in taken_marks:
            return mark
    raise AssertionError("counting has no end")


def kept_offcuts(lots: Sequence[LotPlan], mark: str, least: Least) -> tuple[Kept, ...]:
    """Every offcut worth keeping, named in the order of lots, sheets and boards: ``K7Q-1``."""
    worth = _worth(lots, least)
    return tuple(
        Kept(f"{mark}-{number}", lot, layout, offcut)
        for number, (lot, layout, offcut) in enumerate(worth, start=1)
    )


def _worth(lots: Sequence[LotPlan], least: Least) -> Iterator[tuple[int, int, Offcut]]:
    for lot, planned in enumerate(lots):
        for at, layout in enumerate(planned.plan.layouts):
            for offcut in layout.offcuts:
                if worth_keeping(planned.lot.kind, offcut, least):
                    yield lot, at, offcut
