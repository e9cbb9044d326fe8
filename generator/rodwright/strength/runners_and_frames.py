"""What holds wooden runners to their uprights, and a face frame to its carcass; kg."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.amounts import GRAVITY
from rodwright.mass import weight
from rodwright.strength.holds import Holds, holds_of
from rodwright.strength.joint_results import FRAMED, RUNS, called, weakest
from rodwright.strength.meetings import Meeting, meeting_of
from rodwright.strength.moving_parts import contents, foremost
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.trade.screws import FROM_END
from rodwright.trade.slides import DRAWN
from rodwright.trade.sources import Source
from rodwright.unit import FACE_FRAME, Joint, JointKind, Part, Role, Slide, Unit

_LEVER = Source(
    "statics: the drawer's weight beyond the front of its runners, held down by what lies above "
    "its rear"
)
_WEIGHT = Source("statics: the weight of the frame's parts and of the doors that hang on it")
_SCREWED = (JointKind.SCREWED, JointKind.BUTTONED)
"""On solid wood all screws but the first are in slots, which run along the runner: what bears down
on it bears on them all."""


def runner_joints(unit: Unit) -> Iterator[Result]:
    """The foremost screws of the runners that drawers run on, drawn out as far as they go; of two
    runners that of the weaker hold.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    for motion in unit.motions:
        if not isinstance(motion, Slide):
            continue
        parts = [unit.part(ref) for ref in motion.refs]
        on = [
            joint
            for joint in unit.joints
            if joint.kind is JointKind.SLIDING
            and joint.second in motion.refs
            and unit.part(joint.first).role is Role.RUNNER
        ]
        yield from weakest(_runner(unit, joint, parts) for joint in on)


def _runner(unit: Unit, joint: Joint, parts: list[Part]) -> Result | None:
    runner, side = unit.part(joint.first), unit.part(joint.second)
    held = next(
        (each for each in unit.joints if each.kind in _SCREWED and each.first == runner.ref),
        None,
    )
    meeting = meeting_of(unit, held) if held is not None else None
    room = unit.loading.service_class
    holds = holds_of(held, meeting, room) if held is not None and meeting is not None else None
    if holds is None or holds.aside is None or holds.count < 2:
        return None
    load = sum(weight(part) for part in parts) + contents(unit, parts).value
    drawn = DRAWN["runners"]
    at_front = load / 2 * (1 + (drawn - 0.5) / (1 - drawn))
    long = runner.bounds().size[1]
    spread = long - 2 * FROM_END
    if spread <= 0:
        return None
    each = holds.aside.allowed / GRAVITY
    on_one = foremost(at_front, long / 2, spread, holds.count)
    most = range(holds.count, 13)
    needed = next((n for n in most if foremost(at_front, long / 2, spread, n) <= each), 12)
    eased = foremost(at_front, long / 2, spread, needed)
    return Result(
        Group.JOINTS,
        f"{called(runner)} under {side.group.lower()}",
        (runner.ref, side.ref),
        RUNS,
        on_one,
        each,
        "kg",
        "R (1/n + a (l/2) / sum x^2), R = W/2 (1 + (s - 1/2) / (1 - s))",
        _LEVER,
        (
            Input("W", "drawer and what lies in it", load, "kg"),
            Input("s", "share of its length that it is drawn out", drawn, ""),
            Input("n", "screws of the runner", holds.count, ""),
            Input("a", "from their middle to the front", long / 2, "mm"),
            Input("l", "from the first to the last", spread, "mm"),
            Input("R1", "what each bears", each, "kg", holds.aside.source),
        ),
        limit_source=holds.aside.source,
        remedies=(Remedy(f"{needed} screws in each runner", eased, eased <= each),)
        if on_one > each
        else (),
    )


def frame_joints(unit: Unit) -> Iterator[Result]:
    """All that holds a face frame to its carcass, against its weight and that of its doors.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    frame = [part for part in unit.parts if part.role in FACE_FRAME]
    refs = {part.ref for part in frame}
    held = list(_holding(unit, refs))
    if not frame or not held:
        return
    carried = sum(weight(part) for part in frame) + _doors(unit, refs)
    total = sum(holds.count * holds.aside.allowed for _, _, holds in held if holds.aside)
    joint, _, holds = held[0]
    if holds.aside is None:
        return
    yield Result(
        Group.JOINTS,
        "face frame on its carcass",
        tuple(dict.fromkeys((joint.second, *(part.ref for part in frame)))),
        FRAMED,
        carried,
        total / GRAVITY,
        "kg",
        f"W <= sum of n x ({holds.aside.formula})",
        _WEIGHT,
        (
            Input("n", f"{holds.name}s in all", sum(each.count for _, _, each in held), ""),
            Input("R1", "what each bears", holds.aside.allowed / GRAVITY, "kg", holds.aside.source),
        ),
        limit_source=holds.aside.source,
        notes=holds.notes,
        remedies=_more(holds, sum(each.count for _, _, each in held), carried, total),
    )


def _more(holds: Holds, count: int, carried: float, total: float) -> tuple[Remedy, ...]:
    if total / GRAVITY >= carried or not total:
        return ()
    needed = -(-carried * GRAVITY * count // total)
    return (
        Remedy(
            f"{needed:.0f} {holds.name}s", needed * total / count / GRAVITY, holds=True, bears=True
        ),
    )


def _holding(unit: Unit, frame: set[str]) -> Iterator[tuple[Joint, Meeting, Holds]]:
    """The joints that hold a frame's members to what isn't of the frame."""
    for joint in unit.joints:
        if (joint.first in frame) == (joint.second in frame):
            continue
        meeting = meeting_of(unit, joint) if joint.fixings else None
        if meeting is None or meeting.axis != 1:
            continue
        holds = holds_of(joint, meeting, unit.loading.service_class)
        if holds is not None and holds.aside is not None:
            yield joint, meeting, holds


def _doors(unit: Unit, frame: set[str]) -> float:
    """The weight of the doors that hang on a frame, kg."""
    hung = {
        joint.second
        for joint in unit.joints
        if joint.kind is JointKind.HINGED and joint.first in frame
    }
    return sum(
        weight(unit.part(ref))
        for motion in unit.motions
        if hung & set(motion.refs)
        for ref in motion.refs
    )
