"""Parts that are wider than any board: the strips they are glued up from, each with its label."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from rodwright.cutting.demand.gathering import Cut
from rodwright.cutting.demand.gluing_up import GlueUp, glue_up, usable
from rodwright.cutting.demand.jobs import Wanted
from rodwright.cutting.offers import Offer, lot_kind
from rodwright.cutting.pieces import Piece
from rodwright.cutting.supplies import Supply
from rodwright.cutting.work import Label
from rodwright.geometry import TOUCH
from rodwright.trade.gluing_up import JOINTING


def is_glued_up(wanted: Wanted, offers: Sequence[Offer]) -> bool:
    """Whether no board is large enough for a part that is ripped out of boards.

    Fronts through which the grain runs on aren't: it runs over no joint.
    """
    if lot_kind(wanted.stock) != "board" or wanted.run:
        return False
    sizes = (usable(offer.supply) for offer in offers)
    return not any(
        wanted.length <= length + TOUCH and wanted.width <= width + TOUCH for length, width in sizes
    )


def panel_of(wanted: Wanted, offers: Sequence[Offer], kerf: float, panels: int) -> GlueUp | None:
    """How a part is glued up; None where there are no boards for it.

    It is made of what is at hand, if that is enough, else of all there is; of boards that are
    counted each of so many ``panels`` has an equal share, if that is enough, else first come,
    first served.
    """
    every = [offer.supply for offer in offers]
    at_hand = [offer.supply for offer in offers if offer.at_hand]
    tried = (_shared(at_hand, panels), _shared(every, panels), every)
    unit = wanted.job.unit.display_unit
    found = (glue_up(wanted.length, wanted.width, supplies, kerf, unit) for supplies in tried)
    return next((panel for panel in found if panel is not None), None)


def _shared(supplies: Sequence[Supply], panels: int) -> list[Supply]:
    """A panel's share of supplies."""
    return [
        each if each.count is None else replace(each, count=each.count // panels)
        for each in supplies
    ]


def strips_of(wanted: Wanted, panel: GlueUp) -> Iterator[Cut]:
    """The strips of a part that is glued up."""
    job, count = wanted.job, len(panel.strips)
    jointing = JOINTING[job.unit.display_unit]
    rings = ", rings alternate" if wanted.stock.sawn == "flat" else ""
    notes = (
        f"joint the edges ({job.length(jointing)} each) and glue up {wanted.ref}-1 to "
        f"{wanted.ref}-{count} to {job.length(panel.length, panel.width)}{rings}",
        f"then cut to {job.length(wanted.length, wanted.width)}",
        *wanted.notes,
    )
    for number, strip in enumerate(panel.strips, start=1):
        name = f"{wanted.ref}-{number}"
        size = (panel.length, strip - 2 * jointing, wanted.thickness)
        part = f"{wanted.called}, strip {number} of {count}"
        label = Label(name, job.unit.title, part, size, notes)
        yield Cut(Piece(name, panel.length, strip, turning=False), label, wanted.ref)
