"""From a part to the piece it is made of: which way it is cut from its sheet or board."""

from __future__ import annotations

from typing import Literal

from rodwright.cutting.demand.jobs import Job, Wanted
from rodwright.cutting.demand.mitres import angle_of, slants_of
from rodwright.cutting.demand.notes import notes_of, planed, ripped
from rodwright.cutting.offers import lot_kind
from rodwright.geometry import TOUCH
from rodwright.unit import Grain, Part, Surface
from rodwright.unit.shop_part import shop_part

_EXACT = 6
"""Decimals of a millimetre; what quotients leave beyond them is noise."""
_Side = Literal["near", "far", "face", "back"]
_LENGTHWISE: dict[Surface, _Side] = {
    Surface.NEAR_END: "near", Surface.FAR_END: "far",
    Surface.FACE_EDGE: "face", Surface.BACK_EDGE: "back",
}  # fmt: skip
_CROSSWISE: dict[Surface, _Side] = {
    Surface.FACE_EDGE: "near", Surface.BACK_EDGE: "far",
    Surface.FAR_END: "face", Surface.NEAR_END: "back",
}  # fmt: skip


def wanted_of(job: Job, part: Part) -> Wanted:
    """The piece that a part is made of, as its stock is cut: sheets to length and width, boards
    ripped to width and cut to length, lengths of a section just to length."""
    return _WAYS[lot_kind(part.blank.stock)](job, part)


def edged_of(part: Part) -> tuple[_Side, ...]:
    """The ends and edges that get edging, of a piece whose length runs along the grain."""
    blank = part.blank
    crosswise = blank.grain is Grain.CROSSWISE and blank.stock.grain is not Grain.NONE
    sides = _CROSSWISE if crosswise else _LENGTHWISE
    return tuple(sides[each.surface] for each in part.edged)


def _of_sheet(job: Job, part: Part) -> Wanted:
    """Length along the grain of the sheet; either way where that or the part has none."""
    length, width = map(job.as_read, part.rough_size[:2])
    blank = part.blank
    free = Grain.NONE in (blank.grain, blank.stock.grain)
    notes = notes_of(job, part)
    if blank.grain is Grain.CROSSWISE and not free:
        return Wanted(job, part, width, length, False, notes=("the grain runs across it", *notes))
    return Wanted(job, part, length, width, free, notes=notes)


def _of_board(job: Job, part: Part) -> Wanted:
    """The narrower of two ways to rip it: flat out of the board, or off its edge and turned on its
    side, if its width comes out of the board's thickness."""
    _, wide, thick = part.rough_size
    length, width, thickness = map(job.as_read, part.rough_size)
    there = part.blank.stock.thickness + TOUCH
    notes = notes_of(job, part)
    on_edge = wide <= there and (thick > there or thick < wide - TOUCH)
    notes = (*planed(job, part, on_edge), *notes)
    if on_edge:
        return Wanted(job, part, length, thickness, False, notes=notes)
    slants = slants_of(shop_part([part]).part)
    return Wanted(
        job, part, length, width, False, slants, (*_points(job, length, width, slants), *notes)
    )


def _of_section(job: Job, part: Part) -> Wanted:
    """Just a length of what is bought in its section; mitres are cut right across that."""
    length, width = map(job.as_read, part.rough_size[:2])
    section = part.blank.stock.section or width
    near, far = (
        round(each * section / width, _EXACT) for each in slants_of(shop_part([part]).part)
    )
    if near + far > length:
        near = far = 0.0
    slants = (near, far)
    notes = (
        *_points(job, length, section, slants),
        *ripped(job, part, any(slants)),
        *notes_of(job, part),
    )
    return Wanted(job, part, length, 0.0, False, slants, notes)


_WAYS = {"sheet": _of_sheet, "board": _of_board, "length": _of_section}


def _points(job: Job, length: float, width: float, slants: tuple[float, float]) -> tuple[str, ...]:
    """The mitres that a member is cut with, and its lengths over long and short points."""
    cut = [each for each in slants if each]
    if not cut:
        return ()
    angles = " and ".join(dict.fromkeys(f"{round(angle_of(each, width), 1):g}°" for each in cut))
    at = "both ends" if len(cut) == 2 else "one end"
    return (
        f"mitre {angles} at {at}: {job.length(length)} over the long points, "
        f"{job.size(length - sum(slants))} over the short",
    )
