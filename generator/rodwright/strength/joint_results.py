"""A joint held against what it carries, as results; kg."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator

from rodwright.amounts import GRAVITY
from rodwright.strength.fixing_remedies import remedies
from rodwright.strength.holds import Holds, depths, holds_of
from rodwright.strength.meetings import Meeting
from rodwright.strength.results import Group, Input, Result
from rodwright.trade.fastenings import Bears
from rodwright.trade.sizes import trade_sizes
from rodwright.trade.sources import Source
from rodwright.unit import Joint, Part, Unit

LOADED = "load on its joint"
"""What a level brings to the joint of its end."""
EDGE = "load on what holds its edge"
"""What it brings to what holds an edge along its length."""
SAGGING = "pull on its fixings as it sags"
"""What the turning of its end draws its fixings with."""
FILLED = "load of what lies in it"
"""What lies in a drawer, on the grooves of its bottom."""
DRAWN_OUT = "load on the foremost screw, drawn out"
"""Of a drawer's slides."""
RUNS = "load on the foremost screw of a runner"
"""What a drawer that is drawn out puts on what it runs on."""
FRAMED = "weight of the frame and its doors"
"""On what holds a face frame to its carcass."""
FRONT = "pull at its front"
"""What its front is drawn off with."""
HUNG = "weight on its hinges"
"""Of a door."""
CORNERS = "weight on the corners of its frame"
"""Of a framed door."""
TOP_HINGE = "pull on the screws of its top hinge"
"""Of a door on butts."""
STATICS = Source("statics: what bears on the joint is what it carries")


def weakest(results: Iterable[Result | None]) -> Iterator[Result]:
    """Of the results of a pair, the one that has least to spare; the first where both are alike."""
    found = [each for each in results if each is not None]
    if found:
        yield min(found, key=lambda each: math.inf if each.spare is None else round(each.spare, 9))


def called(part: Part) -> str:
    """A part as a maker finds it."""
    return f"{part.name.lower()} {part.ref}"


def carries(
    unit: Unit,
    joint: Joint,
    meeting: Meeting,
    force: float,
    what: str,
    *,
    pulled: bool = False,
    loads: tuple[Input, ...] = (),
    needs: Source = STATICS,
    notes: tuple[str, ...] = (),
) -> Result | None:
    """What a joint bears across itself, or drawn apart if it is ``pulled``, held against a force of
    ``force`` N; None where nothing of a kind that is known holds it.

    ``what`` names the figure, ``loads`` are the inputs that the force was worked out from, and
    ``needs`` says where those come from.
    """
    room = unit.loading.service_class
    holds = holds_of(joint, meeting, room)
    if holds is None:
        return None
    bears = holds.drawn if pulled else holds.aside
    if bears is None and not holds.lacking:
        return None
    needed = force / GRAVITY
    capacity = holds.count * bears.allowed / GRAVITY if bears is not None else None
    subject = f"{called(meeting.second)} on {called(meeting.first)}"
    fails = capacity is not None and capacity < needed
    sizes = trade_sizes(unit.display_unit)
    return Result(
        Group.JOINTS,
        subject,
        (joint.second, joint.first),
        what,
        needed if capacity is not None else None,
        capacity,
        "kg",
        _formula(holds, bears),
        needs,
        (*loads, *_inputs(joint, meeting, holds, bears)),
        limit_source=bears.source if bears is not None else None,
        lacking=holds.lacking,
        notes=(*notes, *holds.notes),
        remedies=remedies(sizes, joint, meeting, needed, pulled=pulled, room=room) if fails else (),
    )


def _formula(holds: Holds, bears: Bears | None) -> str:
    if bears is None:
        return ""
    return f"F <= {bears.formula if holds.count == 1 else f'n x ({bears.formula})'}"


def _inputs(joint: Joint, meeting: Meeting, holds: Holds, bears: Bears | None) -> tuple[Input, ...]:
    """What the capacity was worked out from."""
    if bears is None:
        return ()
    each = Input("R1", "what each bears", bears.allowed / GRAVITY, "kg", bears.source)
    fixing = next((one for one in joint.fixings if one.name == holds.name), None)
    if fixing is None:
        reach = Input("d", "depth of the channel", meeting.reach, "mm")
        long = meeting.patch.size[1 if meeting.axis == 0 else 0]
        return (reach, Input("b", "length of the channel", long, "mm"))
    count = Input("n", f"{fixing.name}s {fixing.size}".strip(), holds.count, "")
    wide = Input("D", "diameter", fixing.diameter or 0.0, "mm")
    if "screw" in fixing.name or fixing.name == "panel pin":
        lies, deep = depths(joint, fixing, meeting)
        return (
            count,
            wide,
            Input("l", "length under the head", lies, "mm"),
            Input("L", "length that holds", deep, "mm"),
            each,
        )
    return (count, wide, each)
