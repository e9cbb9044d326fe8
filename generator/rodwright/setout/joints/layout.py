"""Where fixings stand along a meeting."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from itertools import pairwise

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.spacing import count_along, spread
from rodwright.setout.joints.meet import Work
from rodwright.trade.wood_left import BETWEEN
from rodwright.unit import Slant


@dataclass(frozen=True, slots=True)
class SpacingRule:
    """How one kind of fixing is spread, mm.

    ``edge`` is the usual distance from the ends of a meeting to the first and last centre and
    ``least_edge`` the least; ``spacing`` the greatest distance between centres, ``least_apart``
    the least; ``least`` how many there are at least.
    """

    edge: float
    least_edge: float
    spacing: float
    least_apart: float
    least: int = 2


def lay_out(work: Work, rule: SpacingRule, name: str) -> tuple[float, ...]:
    """Centres of fixings along a meeting (unit frame), from its low end; none if refused.

    They are spread evenly and symmetrically, so that a left and a right piece come out alike:
    the same number from the front as from the rear, no farther apart than the greatest
    spacing, the outer ones at the edge distance, or at a quarter of a short meeting.
    """
    wish, meeting, usual = work.wish, work.meeting, work.bench.sizes.usual
    length = meeting.length
    gaps = rule.least - 1
    needed = 2 * rule.least_edge + gaps * rule.least_apart
    if length < needed - TOUCH:
        work.refuse(
            "joint",
            f"a meeting {work.say(length)} long is too short for {_several(rule.least, name)}, "
            f"which need {work.say(needed)}",
            "Make the parts wider, or choose another joint.",
        )
        return ()
    if wish.edge is not None:
        edge = wish.edge
        room = length - 2 * edge - gaps * rule.least_apart
        if edge < rule.least_edge - TOUCH:
            work.refuse(
                "edge",
                f"{name}s {work.say(edge)} from the end of a meeting are too near to it",
                f"Keep them {work.at_least(rule.least_edge)} from it at least.",
            )
            return ()
        if room < -TOUCH:
            work.refuse(
                "edge",
                f"{name}s {work.say(edge)} from both ends don't fit a meeting "
                f"{work.say(length)} long",
                "Make `edge` smaller.",
            )
            return ()
    else:
        edge = max(rule.least_edge, min(usual(rule.edge), length / 4))
        edge = min(edge, (length - gaps * rule.least_apart) / 2)
    if rule.least == 1 and length < 2 * edge + rule.least_apart:
        return ((meeting.low + meeting.high) / 2,)
    spacing = wish.spacing if wish.spacing is not None else usual(rule.spacing)
    if spacing < rule.least_apart - TOUCH:
        work.refuse(
            "spacing",
            f"{name}s {work.say(spacing)} apart leave too little wood between them",
            f"Keep them {work.at_least(rule.least_apart)} apart at least.",
        )
        return ()
    count = max(rule.least, count_along(length, edge, spacing))
    # As close as they must be, but never closer than they may.
    count = max(2, min(count, int((length - 2 * edge) / rule.least_apart + TOUCH) + 1))
    return spread(meeting.low, meeting.high, edge, count)


def clear_of_others(
    work: Work,
    places: tuple[float, ...],
    rule: SpacingRule,
    taken: Callable[[float], Box],
    name: str,
) -> tuple[float, ...]:
    """The same places, moved along the meeting where they would run into other workings.

    ``taken`` gives the box (unit frame) that a fixing at a place takes out of the first part.
    What is cut there already, such as for the neighbour on the other side of a divider, is
    kept ``BETWEEN`` mm off: the whole row moves to the rear, or to the front, by as
    little as clears it, or else stands half-way between its own places, with one fewer.
    Nothing is left of the row where neither helps, which is noted.
    """
    meeting = work.meeting
    size = taken(places[0]).size[meeting.run]
    step = work.bench.sizes.round_up(size + BETWEEN)
    room = [
        min(places) - meeting.low - rule.least_edge,
        meeting.high - max(places) - rule.least_edge,
    ]
    cut = _cut_boxes(work)
    rows = [places]
    for number in range(1, int(max(room) / step + TOUCH) + 1):
        rows += [
            tuple(place + sign * number * step for place in places)
            for sign, there in ((1, room[1]), (-1, room[0]))
            if number * step <= there + TOUCH
        ]
    if len(places) > rule.least:
        rows.append(tuple((one + other) / 2 for one, other in pairwise(places)))
    for moved in rows:
        boxes = [work.first.placement.box_to_part(taken(place)) for place in moved]
        if not any(box.penetration(other) > TOUCH - BETWEEN for box in boxes for other in cut):
            return moved
    work.refuse(
        "joint",
        f"{name}s in {work.first.name.lower()} {work.first.ref} for {work.second.ref} run into "
        f"what is cut there for its neighbour",
        "Set the two at different heights, make `spacing` greater, choose another joint for one "
        "of them, or use thicker stock.",
    )
    return ()


def _cut_boxes(work: Work) -> list[Box]:
    """What is cut into the first part already, as boxes of its frame."""
    size = work.first.blank.size
    return [
        working.bounds(size)
        for working in work.bench.workings_of(work.meeting.first)
        if not isinstance(working, Slant)
    ]


def _several(count: int, name: str) -> str:
    return f"{count} {name}s" if count > 1 else f"a {name}"
