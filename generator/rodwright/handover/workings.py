"""Workings in words, as a maker would pencil them on a cutting list.

Surfaces are named by where they lie in the unit, as far as the pieces of a row agree (see
:mod:`rodwright.unit.orientation`).  Every place is measured in the frame of the part's file
(see :mod:`rodwright.unit.shop_part`), never stepped off from the one before, so that errors
don't add up; of a long even row, as a drilling guide makes it, the first, the last and the pitch,
where that is true in the last hole as well.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import assert_never

from rodwright.geometry import TOUCH
from rodwright.handover.bores import bores
from rodwright.handover.slants import slants
from rodwright.handover.words import Words
from rodwright.lengths import LengthUnit
from rodwright.unit import (
    Bevel,
    Bore,
    Channel,
    Easing,
    Groove,
    Housing,
    Mitre,
    Notch,
    Rebate,
    Surface,
    Working,
)
from rodwright.unit.orientation import orientation_of
from rodwright.unit.shop_part import ShopPart
from rodwright.unit.surfaces import HIGH, LOW


def describe_workings(shop: ShopPart, unit: LengthUnit) -> tuple[str, ...]:
    """The workings of equal pieces, one short text each, lengths in ``unit`` without naming it.

    Equal holes in a line are gathered into one text; mitres and bevels over whole ends are
    followed by the lengths over their long and short points.  What waits until the piece is
    trimmed or edged comes last and says so.
    """
    words = Words(orientation_of(shop.pieces), shop.part.blank.size, unit)
    last = "once edged" if shop.edged else "once trimmed"
    return (
        *_told(words, shop.part.workings),
        *(f"{last}: {text}" for text in _told(words, shop.later)),
    )


def _told(words: Words, workings: Sequence[Working]) -> Iterator[str]:
    yield from slants(words, [each for each in workings if isinstance(each, Mitre | Bevel)])
    for each in workings:
        if isinstance(each, Channel | Notch | Easing):
            yield _one(words, each) + _tongue(words, each, workings)
        elif not isinstance(each, Mitre | Bevel | Bore):
            assert_never(each)
    yield from bores(words, [each for each in workings if isinstance(each, Bore)])


def _one(words: Words, working: Channel | Notch | Easing) -> str:
    name, say, stopped = words.name, words.say, words.stopped
    match working:
        case Rebate(surface, edge, width, depth, start, stop):
            text = (
                f"rebate {say(width)} x {say(depth)} deep along the {name(edge)}, "
                f"on the {name(surface)}"
            )
            return text + stopped(start, stop, working.run)
        case Groove(surface, position, width, depth, start, stop):
            text = (
                f"groove {say(width)} x {say(depth)} deep at {say(position)} "
                f"from the {words.low(working.across)}, {words.on(surface)}"
            )
            return text + stopped(start, stop, 0)
        case Housing(surface, position, width, depth, start, stop):
            text = (
                f"housing {say(width)} x {say(depth)} deep at {say(position)} "
                f"from the {words.low(0)}, on the {name(surface)}"
            )
            return text + stopped(start, stop, 1)
        case Notch():
            return _notch(words, working)
        case Easing(surface, edge, radius, start, stop):
            text = f"eased {say(radius)} radius where the {name(surface)} meets the "
            return f"{text}{name(edge)}" + stopped(start, stop, working.run)
        case _:
            assert_never(working)


def _tongue(words: Words, working: Working, workings: Sequence[Working]) -> str:
    """How thick a tongue is that two rebates of opposite faces leave: the sum of their depths as
    told may be a step out."""
    if not isinstance(working, Rebate) or working.surface.axis != 2:
        return ""
    depths = [
        each.depth
        for each in workings
        if isinstance(each, Rebate)
        and (each.surface, each.edge) == (working.surface.opposite, working.edge)
    ]
    left = words.size[2] - working.depth - max(depths, default=0.0)
    return f", leaving a tongue {words.say(left)} thick" if depths and left > TOUCH else ""


def _notch(words: Words, notch: Notch) -> str:
    say = words.say
    sides: list[Surface] = []
    for axis, (low, extent) in enumerate(((notch.x, notch.length), (notch.y, notch.width))):
        if low <= TOUCH:
            sides.append(LOW[axis])
        elif low + extent >= words.size[axis] - TOUCH:
            sides.append(HIGH[axis])
    names = [words.name(side) for side in sides]
    text = f"notch {say(notch.length)} along x {say(notch.width)} across, right through, "
    if len(sides) == 2:
        return f"{text}at the corner of the {names[0]} and the {names[1]}"
    along = f"{say(notch.x)} from the {words.low(0)}"
    across = f"{say(notch.y)} from the {words.low(1)}"
    if not sides:
        return f"{text}at {along} and {across}"
    return f"{text}out of the {names[0]}, at {across if sides[0].axis == 0 else along}"
