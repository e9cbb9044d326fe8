"""Offcuts that are worth keeping, and the names that are written on them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.cutting.flaws import clear_of, flaws_within
from rodwright.cutting.plans import Offcut
from rodwright.cutting.supplies import Flaw
from rodwright.cutting.taking import identity, offcut_name
from rodwright.cutting.work import LotPlan


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
    its sheet or board within the plan of its ``lot`` (both from 0).  ``flaws`` are those of its
    sheet or board that it holds, measured from its own near corner."""

    name: str
    lot: int
    layout: int
    offcut: Offcut
    flaws: tuple[Flaw, ...] = ()


def worth_keeping(kind: str, length: float, width: float, least: Least) -> bool:
    """Whether what is left of a lot of this kind, ``length`` x ``width`` mm along and across the
    grain, is kept."""
    if kind == "length":
        return length >= least.board_length
    if kind == "board":
        return length >= least.board_length and width >= least.board_width
    long, short = max(length, width), min(length, width)
    return long >= max(least.length, least.width) and short >= min(least.length, least.width)


def plan_identity(lots: Sequence[LotPlan], rack: str = "") -> str:
    """What tells a plan from every other, and from itself made from another ``rack`` (the text of
    its file)."""
    return identity(rack, map(repr, lots))


def kept_offcuts(lots: Sequence[LotPlan], identified: str, least: Least) -> tuple[Kept, ...]:
    """Every offcut that is worth keeping for what of it is free of flaws, named in the order of
    lots, sheets and boards."""
    worth = _worth(lots, least)
    return tuple(
        Kept(offcut_name(identified, number), *each) for number, each in enumerate(worth, start=1)
    )


def _worth(
    lots: Sequence[LotPlan], least: Least
) -> Iterator[tuple[int, int, Offcut, tuple[Flaw, ...]]]:
    for lot, planned in enumerate(lots):
        flaws = {supply.name: supply.flaws for supply in planned.lot.supplies}
        for at, layout in enumerate(planned.plan.layouts):
            for offcut in layout.offcuts:
                held = flaws_within(
                    flaws[layout.stock], offcut.x, offcut.y, offcut.length, offcut.width
                )
                if any(
                    worth_keeping(planned.lot.kind, clear.length, clear.width, least)
                    for clear in clear_of(held, offcut.length, offcut.width)
                ):
                    yield lot, at, offcut, held
