"""Which offcuts the cuts leave whole."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.cutting.offcuts import Kept
from rodwright.cutting.steps.cuts import LotSteps


def that_come_off(kept: Sequence[Kept], lots: Sequence[LotSteps]) -> tuple[Kept, ...]:
    """Those of the named offcuts that some cut leaves as they are named, or a sheet is without a
    cut; of what a router cuts out all of them.

    Behind a mitre an offcut may end in several pieces, since the pieces of a board go first: then
    it isn't one that can be put into the rack.
    """
    found: set[str] = set()
    routed: set[int] = set()
    for at, lot in enumerate(lots):
        for sheet in lot.sheets:
            if sheet.contours:
                routed.add(at)
            left = [sheet.whole, *(each for step in sheet.steps for each in step.results)]
            found.update(name for each in left if each is not None for name in each.names)
    return tuple(each for each in kept if each.lot in routed or each.name in found)
