"""Lots: all that some jobs want of each material of one thickness."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from rodwright.cutting.demand.fitting import refused
from rodwright.cutting.demand.gathering import Cut, gathered
from rodwright.cutting.demand.gluing_up import GlueUp
from rodwright.cutting.demand.grain_runs import in_runs
from rodwright.cutting.demand.jobs import Job, Wanted
from rodwright.cutting.demand.panels import is_glued_up, panel_of, strips_of
from rodwright.cutting.demand.parts import edged_of, wanted_of
from rodwright.cutting.demand.refusals import DemandError, Refusal
from rodwright.cutting.offers import NoStockError, Offer, lot_kind, same_lot, supplies_of
from rodwright.cutting.pieces import Piece
from rodwright.cutting.rack import Rack
from rodwright.cutting.work import Label, Lot


def lots_of(jobs: Sequence[Job], rack: Rack | None = None, *, kerf: float = 0.0) -> tuple[Lot, ...]:
    """All that has to be cut for some jobs, in the order in which stocks first occur.

    Every part is in just one lot, as one piece, or as the strips that it is glued up from.  Sizes
    are those of the parts list as cut (:attr:`rodwright.unit.Part.rough_size`): trims on, edging
    off; to the tenth of a millimetre, or the 64th of an inch, that they are read in.

    What there is to cut from is in the ``rack``, or without one in the jobs' stocks, and what is
    sold.  Stocks of several jobs are one where they are the same wood, whatever they are called
    (:func:`rodwright.cutting.offers.same_lot`).  ``kerf`` in mm.

    Lots may be cut from the same supplies at hand: each has to be planned with what those before it
    have left (:func:`rodwright.cutting.offers.less`).

    Raises:
        DemandError: some parts can't be cut from what there is; all of them are named.
        ValueError: two jobs have the same mark.
    """
    if len({job.mark for job in jobs}) != len(jobs):
        raise ValueError("two jobs have the same mark")
    refusals: list[Refusal] = []
    lots = []
    for wanted in _by_stock(jobs):
        try:
            lot, wrong = _lot(jobs, in_runs(wanted, kerf), rack, kerf)
        except NoStockError as error:
            refusals.append(_none_there(jobs, wanted, error))
            continue
        lots.append(lot)
        refusals += wrong
    if refusals:
        raise DemandError(refusals)
    return _named_apart(lots)


def _none_there(jobs: Sequence[Job], wanted: Sequence[Wanted], error: NoStockError) -> Refusal:
    job = jobs.index(wanted[0].job)
    refs = tuple(ref for each in wanted for ref in each.refs if each.job is wanted[0].job)
    return Refusal(job, refs, error.stock, error.message, error.remedy)


def _by_stock(jobs: Sequence[Job]) -> list[list[Wanted]]:
    """What all jobs want, by the wood that it is cut from."""
    found: list[list[Wanted]] = []
    for job in jobs:
        for part in job.unit.parts:
            stock = part.blank.stock
            same = next((each for each in found if same_lot(each[0].stock, stock)), None)
            if same is None:
                found.append([])
                same = found[-1]
            same.append(wanted_of(job, part))
    return found


def _lot(
    jobs: Sequence[Job], wanted: Sequence[Wanted], rack: Rack | None, kerf: float
) -> tuple[Lot, tuple[Refusal, ...]]:
    """All that is cut from the same wood, and what can't be."""
    stock = wanted[0].stock
    stocks = tuple(dict.fromkeys(each.stock for each in wanted))
    least = min(each.faces_shown for each in wanted)
    most = max(each.faces_shown for each in wanted)
    unit = wanted[0].job.unit.display_unit
    offers = supplies_of(stocks, rack, show_faces=least, unit=unit)
    # Where every sheet is good enough for every part, nothing hangs on it.
    differ = any(offer.show_faces < most for offer in offers)
    cuts: list[Cut] = []
    refusals: list[Refusal] = []
    glued_up = False
    for faces in range(most, least - 1, -1):
        alike = [each for each in wanted if each.faces_shown == faces]
        good = tuple(offer for offer in offers if offer.show_faces >= faces)
        panels = _panels(alike, good, kerf)
        glued_up = glued_up or bool(panels)
        shown = faces if differ else 0
        cuts += (replace(cut, faces=shown) for each in alike for cut in _cuts(each, panels))
        without = {ref for ref, panel in panels.items() if panel is None}
        refusals += refused(jobs, alike, [offer.supply for offer in good], without)
    order = {each.ref: number for number, each in enumerate(wanted)}
    pieces, labels, shows = gathered(sorted(cuts, key=lambda cut: order[cut.of]))
    lot = Lot(
        stock.name,
        lot_kind(stock),
        stock.described,
        stock.thickness,
        stock.density,
        pieces,
        labels,
        tuple(offer.supply for offer in offers),
        stock.section or 0.0,
        offers,
        shows,
        glued_up,
    )
    return lot, tuple(refusals)


def _panels(
    wanted: Sequence[Wanted], offers: Sequence[Offer], kerf: float
) -> dict[str, GlueUp | None]:
    """How those parts are glued up that no board is wide enough for, by their refs."""
    glued_up = [each for each in wanted if is_glued_up(each, offers)]
    return {each.ref: panel_of(each, offers, kerf, len(glued_up)) for each in glued_up}


def _cuts(wanted: Wanted, panels: Mapping[str, GlueUp | None]) -> Iterator[Cut]:
    """The piece of a part, or the strips it is glued up from where no board is wide enough."""
    if wanted.ref in panels:
        panel = panels[wanted.ref]
        yield from strips_of(wanted, panel) if panel is not None else ()
        return
    piece = Piece(
        wanted.ref,
        wanted.length,
        wanted.width,
        turning=wanted.turning,
        slants=wanted.slants,
        inner=wanted.inner,
        section=wanted.stock.section or 0.0,
    )
    yield Cut(piece, _label(wanted), wanted.ref, tuple(map(_label, wanted.run)))


def _label(wanted: Wanted) -> Label:
    edged = () if wanted.run else edged_of(wanted.part)
    title = wanted.job.unit.title
    return Label(wanted.ref, title, wanted.called, wanted.finished, wanted.notes, edged)


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
