"""A long unit's front in stretches of whole columns, each large enough to be read; mm, unit frame.

Neighbouring stretches both show the upright between them.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from rodwright.paper.drawings.clipping import cuts_within, lines_within
from rodwright.paper.drawings.lines import only
from rodwright.pictures.drafting.bands import Interval
from rodwright.pictures.drafting.seen import between_columns
from rodwright.pictures.drafting.views import View
from rodwright.unit import Unit

PAST = 30.0
"""What runs on is drawn so far past a stretch, mm."""


@dataclass(frozen=True, slots=True)
class Bay:
    """A stretch of a unit: from where to where across it, and which of how many."""

    ends: Interval
    number: int
    count: int

    @property
    def called(self) -> str:
        """``, part 1 of 2``; nothing of a whole unit."""
        return "" if self.count == 1 else f", part {self.number} of {self.count}"


def bays(unit: Unit, count: int) -> tuple[Bay, ...]:
    """The unit in at most ``count`` stretches of whole columns, as equal as the columns allow."""
    low, high = unit.envelope.low[0], unit.envelope.high[0]
    uprights = sorted(_through(unit))
    wanted = [low + (high - low) * number / count for number in range(1, count)]
    cuts: list[Interval] = []
    for at in wanted:
        nearest = min(uprights, key=lambda each: abs(sum(each) / 2 - at), default=None)
        if nearest is not None and nearest not in cuts:
            cuts.append(nearest)
    starts = [low, *(a for a, _ in cuts)]
    stops = [*(b for _, b in cuts), high]
    pairs = list(zip(starts, stops, strict=True))
    return tuple(Bay(ends, number, len(pairs)) for number, ends in enumerate(pairs, 1))


def in_bay(unit: Unit, bay: Bay) -> Unit:
    """The parts of a stretch: what runs on through it, whole, and what for the greater part lies in
    it; the envelope ends with it."""
    low, high = bay.ends
    kept = []
    for part in unit.parts:
        a, b = part.bounds().low[0], part.bounds().high[0]
        if min(b, high) - max(a, low) > min(b - a, high - low) / 2:
            kept.append(part)
    refs = {part.ref for part in kept}
    motions = tuple(each for each in unit.motions if set(each.refs) <= refs)
    ends = unit.envelope.spanning(0, low, high)
    return replace(only(unit, kept), envelope=ends, motions=motions)


def clipped(view: View, bay: Bay) -> View:
    """The view with what runs on broken off a little past the stretch."""
    if bay.count == 1:
        return view
    low, high = bay.ends
    left, right = max(view.low[0], low - PAST), min(view.high[0], high + PAST)
    window = ((left, view.low[1] - PAST), (right, view.high[1] + PAST))
    upright = [each for each in view.planes if left < each[1][0][0] == each[1][1][0] < right]
    level = [
        (letter, ((left, a[1]), (right, b[1]))) for letter, (a, b) in view.planes if a[1] == b[1]
    ]
    return replace(
        view,
        name=f"{view.name}{bay.called}",
        low=(left, view.low[1]),
        high=(right, view.high[1]),
        visible=lines_within(view.visible, window),
        hidden=lines_within(view.hidden, window),
        cuts=cuts_within(view.cuts, window),
        planes=(*upright, *level),
    )


def _through(unit: Unit) -> Iterator[Interval]:
    """Uprights inside the unit that reach at least half its height."""
    low, high = unit.envelope.low[0], unit.envelope.high[0]
    for a, b in between_columns(unit):
        if low + PAST < a and b < high - PAST:
            yield (a, b)
