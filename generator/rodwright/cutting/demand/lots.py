"""Lots: all that some jobs want of each material of one thickness."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace

from rodwright.cutting.demand.fitting import refused
from rodwright.cutting.demand.gathering import Cut, gathered
from rodwright.cutting.demand.gluing_up import glue_up, usable
from rodwright.cutting.demand.jobs import Job, Wanted
from rodwright.cutting.demand.notes import name_of
from rodwright.cutting.demand.parts import wanted_of
from rodwright.cutting.demand.refusals import DemandError, Refusal
from rodwright.cutting.supplies import Supply
from rodwright.cutting.work import Label, Lot
from rodwright.geometry import TOUCH
from rodwright.trade.gluing_up import JOINTING
from rodwright.unit import Grain, Stock

SuppliesFor = Callable[[Sequence[Stock]], tuple[Supply, ...]]
"""What can be cut from of some stocks that are the same material of the same thickness."""


def lots_of(
    jobs: Sequence[Job], supplies_for: SuppliesFor | None = None, *, kerf: float = 0.0
) -> tuple[Lot, ...]:
    """All that has to be cut for some jobs, in the order in which stocks first occur.

    Every part is in just one lot, as one piece, or as the strips that it is glued up from.  Sizes
    are those of the parts list as cut (:attr:`rodwright.unit.Part.rough_size`): trims on, edging
    off.  ``supplies_for`` says what there is to cut from (:func:`supplies_at_hand` unless given).
    Stocks of several jobs are one where material, kind and thickness are the same, whatever they
    are called.  ``kerf`` in mm.

    Raises:
        DemandError: some parts can't be cut from what there is; all of them are named.
        ValueError: two jobs have the same mark.
    """
    if len({job.mark for job in jobs}) != len(jobs):
        raise ValueError("two jobs have the same mark")
    supplies_for = supplies_for or supplies_at_hand
    refusals: list[Refusal] = []
    lots = [_lot(jobs, wanted, supplies_for, kerf, refusals) for wanted in _by_stock(jobs)]
    if refusals:
        raise DemandError(refusals)
    return _named_apart(lots)


def supplies_at_hand(stocks: Sequence[Stock]) -> tuple[Supply, ...]:
    """Whole sheets, and the boards in the rack, as the jobs' stocks have them.

    Sheets cost what is said, or their area in m2; boards at hand cost nothing.
    """
    found: dict[tuple[float, float], Supply] = {}
    for stock in stocks:
        for piece in stock.pieces:
            name = f"{stock.name} {len(found) + 1}"
            size = (piece.length, piece.width)
            found.setdefault(size, Supply(name, *size, piece.count, 0.0))
        if stock.size is not None:
            size = stock.size[::-1] if stock.grain is Grain.CROSSWISE else stock.size
            price = stock.size[0] * stock.size[1] / 1e6 if stock.price is None else stock.price
            found.setdefault(size, Supply(stock.name, *size, None, price))
    return tuple(found.values())


def _by_stock(jobs: Sequence[Job]) -> list[list[Wanted]]:
    """What all jobs want, by material, thickness and kind."""
    found: dict[tuple[object, ...], list[Wanted]] = {}
    for job in jobs:
        for part in job.unit.parts:
            stock = part.blank.stock
            key = (
                stock.kind,
                stock.described.casefold(),
                round(stock.thickness, 3),
                stock.grain is Grain.NONE,
            )
            found.setdefault(key, []).append(wanted_of(job, part))
    return list(found.values())


def _lot(
    jobs: Sequence[Job],
    wanted: Sequence[Wanted],
    supplies_for: SuppliesFor,
    kerf: float,
    refusals: list[Refusal],
) -> Lot:
    stocks = tuple(dict.fromkeys(each.stock for each in wanted))
    stock, supplies = stocks[0], supplies_for(stocks)
    refusals += refused(jobs, wanted, supplies)
    cuts = [cut for each in wanted for cut in _cuts(each, supplies, kerf)]
    pieces, labels = gathered(cuts)
    return Lot(
        stock.name,
        stock.kind,
        stock.described,
        stock.thickness,
        stock.density,
        pieces,
        labels,
        supplies,
    )


def _cuts(wanted: Wanted, supplies: Sequence[Supply], kerf: float) -> Iterator[Cut]:
    """The piece of a part, or the strips it is glued up from where no board is wide enough."""
    if wanted.stock.kind == "board" and not any(
        _wide_enough(wanted, supply) for supply in supplies
    ):
        yield from _strips(wanted, supplies, kerf)
        return
    label = Label(
        wanted.ref,
        wanted.job.unit.title,
        name_of(wanted.part),
        wanted.part.blank.size,
        wanted.notes,
    )
    yield Cut(wanted.ref, wanted.length, wanted.width, wanted.turning, label, wanted.slants)


def _wide_enough(wanted: Wanted, supply: Supply) -> bool:
    length, width = usable(supply)
    return wanted.length <= length + TOUCH and wanted.width <= width + TOUCH


def _strips(wanted: Wanted, supplies: Sequence[Supply], kerf: float) -> Iterator[Cut]:
    """The strips of a part that is glued up."""
    panel = glue_up(wanted.length, wanted.width, supplies, kerf)
    if panel is None:
        return
    job, count = wanted.job, len(panel.strips)
    rings = ", rings alternate" if wanted.stock.sawn == "flat" else ""
    notes = (
        f"joint the edges ({job.length(JOINTING)} each) and glue up {wanted.ref}-1 to "
        f"{wanted.ref}-{count} to {job.length(panel.length, panel.width)}{rings}",
        f"then cut to {job.length(wanted.length, wanted.width)}",
        *wanted.notes,
    )
    for number, strip in enumerate(panel.strips, start=1):
        name = f"{wanted.ref}-{number}"
        size = (panel.length, strip - 2 * JOINTING, wanted.thickness)
        part = f"{name_of(wanted.part)}, strip {number} of {count}"
        label = Label(name, job.unit.title, part, size, notes)
        yield Cut(name, panel.length, strip, False, label)


def _named_apart(lots: Sequence[Lot]) -> tuple[Lot, ...]:
    """Lots no two of which are called alike."""
    taken: set[str] = set()
    found = []
    for lot in lots:
        name, number = lot.name, 1
        while name.casefold() in taken:
            number += 1
            name = f"{lot.name} {number}"
        taken.add(name.casefold())
        found.append(replace(lot, name=name))
    return tuple(found)
