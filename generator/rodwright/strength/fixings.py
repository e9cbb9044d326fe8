"""Do the joints of shelves, tops, bottoms and rails bear what they carry?

Each is held against what the level brings to it (:mod:`rodwright.strength.bearings`): across it by
its weight and what lies on it, and drawn by the turning of its end as it sags.  Pins, and what
stands on uprights, are judged with the levels and the uprights themselves.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from rodwright.amounts import GRAVITY
from rodwright.strength.bearings import Bearing, bearings
from rodwright.strength.holds import holds_of
from rodwright.strength.joint_results import EDGE, LOADED, SAGGING, STATICS, called, carries
from rodwright.strength.meetings import meeting_of
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.strength.seats import Line, Seat
from rodwright.strength.turning import pull_of
from rodwright.trade.sources import Source
from rodwright.unit import JointKind, Unit

_ELSEWHERE = (JointKind.RESTING, JointKind.STANDING, JointKind.FACE_GLUED, JointKind.EDGE_GLUED)
_LEAST = 1.0
"""Forces below this, N, are let pass."""
_SAGS = Source("the moment at the end of the level, from how stiffly its joint turns")


def level_joints(unit: Unit) -> Iterator[Result]:
    """The joints of levels against what these bring to them; of equal ones of a level, that with
    the least to spare.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    for bearing in bearings(unit).values():
        found: dict[tuple[str, JointKind], Result] = {}
        for seat in bearing.seats:
            for result in _seat(unit, seat):
                key = (result.what, seat.joint.kind if seat.joint is not None else JointKind.BUTT)
                found[key] = min(found.get(key, result), result, key=_spare)
        yield from found.values()
        for line in bearing.lines:
            yield from _edge(unit, bearing, line)


def _spare(result: Result) -> float:
    return result.spare if result.spare is not None else float("inf")


def _seat(unit: Unit, seat: Seat) -> Iterator[Result]:
    joint = seat.joint
    if joint is None or joint.kind in _ELSEWHERE:
        return
    meeting = meeting_of(unit, joint)
    if meeting is None or meeting.axis == 2:
        return
    if seat.reaction > _LEAST:
        reaction = Input("R", "what bears on it", seat.reaction / GRAVITY, "kg")
        result = carries(unit, joint, meeting, seat.reaction, LOADED, loads=(reaction,))
        if result is not None:
            yield result
    pull = pull_of(unit, joint, seat.turning)
    if pull > _LEAST:
        moment = Input("M", "moment at its end", abs(seat.turning), "N mm", _SAGS)
        result = carries(
            unit,
            joint,
            meeting,
            pull,
            SAGGING,
            pulled=True,
            loads=(moment,),
            needs=_SAGS,
            notes=("drawn too far they give, and the end then turns as on a pin",),
        )
        if result is not None:
            yield result


def _edge(unit: Unit, bearing: Bearing, line: Line) -> Iterator[Result]:
    """An edge that is held along its length: all that holds it together."""
    each = [
        (joint, meeting, holds)
        for joint in line.joints
        if (meeting := meeting_of(unit, joint)) is not None
        and meeting.axis == 1
        and (holds := holds_of(joint, meeting, unit.loading.service_class)) is not None
        and holds.aside is not None
    ]
    if not each or line.reaction <= _LEAST:
        return
    total = sum(holds.count * holds.aside.allowed for _, _, holds in each if holds.aside)
    bears = each[0][2].aside
    if bears is None:
        return
    level = unit.part(bearing.level.ref)
    on = ", ".join(line.on)
    yield Result(
        Group.JOINTS,
        f"{called(level)}, {line.edge} edge on {on}",
        (level.ref, *line.on),
        EDGE,
        line.reaction / GRAVITY,
        total / GRAVITY,
        "kg",
        f"R <= sum of n x ({bears.formula})",
        STATICS,
        (
            Input("R", "the most that may bear on it", line.reaction / GRAVITY, "kg"),
            Input("n", "fixings in all", sum(holds.count for _, _, holds in each), ""),
            Input("R1", "what each bears", bears.allowed / GRAVITY, "kg", bears.source),
        ),
        limit_source=bears.source,
        remedies=_closer(each[0][2].name, bears.allowed / GRAVITY, line.reaction / GRAVITY)
        if total < line.reaction
        else (),
    )


def _closer(name: str, bears: float, needed: float) -> tuple[Remedy, ...]:
    """As many along the edge as carry it."""
    count = ceil(needed / bears)
    return (Remedy(f"{count} {name}s along it", count * bears, holds=True, bears=True),)
