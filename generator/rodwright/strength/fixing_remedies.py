"""What would make a joint hold, each worked out; kg."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from math import ceil, floor

from rodwright.amounts import GRAVITY
from rodwright.geometry import TOUCH
from rodwright.strength.channels import housing_bears
from rodwright.strength.holds import Holds, headed, holds_of
from rodwright.strength.meetings import Meeting
from rodwright.strength.results import Remedy
from rodwright.trade.connectors import DOWEL_APART, DOWEL_EDGE
from rodwright.trade.creep import ServiceClass
from rodwright.trade.glued_in import dowel_sheared
from rodwright.trade.screws import APART, FROM_CORNER, HOLD, SIDE
from rodwright.trade.sizes import TradeSizes
from rodwright.unit import Fixing, Joint, JointKind

_CHANNELS = (JointKind.HOUSING, JointKind.GROOVE, JointKind.TONGUE, JointKind.REBATE)


def remedies(
    sizes: TradeSizes,
    joint: Joint,
    meeting: Meeting,
    needed: float,
    *,
    pulled: bool = False,
    room: ServiceClass = 1,
) -> tuple[Remedy, ...]:
    """What would carry ``needed`` kg across a joint, or along its fixings if it is ``pulled``:
    more of what holds it, thicker or longer ones, or another joint.

    Of each kind the least that does, or the most that there is room for.
    """
    holds = holds_of(joint, meeting, room)
    fixing = _main(joint, holds)
    found: list[Remedy] = []
    if holds is not None and fixing is not None:
        found += _more(holds, fixing, meeting, needed, pulled)
        if "screw" in fixing.name:
            found += _other_screws(sizes, joint, fixing, meeting, needed, pulled)
    if not pulled:
        found += _other_joints(sizes, joint, meeting, needed, room)
    return tuple(sorted(found, key=lambda each: not each.holds))


def most_along(fixing: Fixing, meeting: Meeting) -> int:
    """How many of a fixing there is room for along a meeting, by the rules for its kind."""
    if fixing.diameter is None:
        return fixing.count
    grip = meeting.second.blank.stock.grip
    edge, apart = (
        (DOWEL_EDGE, DOWEL_APART) if fixing.name == "dowel" else (FROM_CORNER[grip], APART)
    )
    size = fixing.diameter
    if fixing.name in ("biscuit", "loose tenon"):
        size = (fixing.length if fixing.name == "biscuit" else fixing.width) or fixing.diameter
        edge, apart = 0.75, 1.25
    left = meeting.length - 2 * edge * size
    return max(1, floor(left / (apart * size) + TOUCH) + 1) if left >= 0 else 1


def _main(joint: Joint, holds: Holds | None) -> Fixing | None:
    name = holds.name if holds is not None else ""
    return next((each for each in joint.fixings if each.name == name), None)


def _each(holds: Holds | None, pulled: bool) -> float:
    """What one of them bears, kg."""
    bears = None if holds is None else holds.drawn if pulled else holds.aside
    return bears.allowed / GRAVITY if bears is not None else 0.0


def _more(
    holds: Holds, fixing: Fixing, meeting: Meeting, needed: float, pulled: bool
) -> Iterator[Remedy]:
    each = _each(holds, pulled)
    if not each:
        return
    count = min(ceil(needed / each - TOUCH), most_along(fixing, meeting))
    if count > fixing.count:
        what = f"{count} {fixing.name}s {fixing.size} instead of {fixing.count}"
        yield Remedy(what, count * each, count * each >= needed, bears=True)


def _other_screws(
    sizes: TradeSizes,
    joint: Joint,
    fixing: Fixing,
    meeting: Meeting,
    needed: float,
    pulled: bool,
) -> Iterator[Remedy]:
    """As many thicker ones, or longer ones."""
    diameter, length = fixing.diameter or 0.0, fixing.length or 0.0
    into = meeting.thickness if headed(joint, meeting)[1] is meeting.second else meeting.through
    thicker = [d for d in sizes.screw_diameters if d > diameter and 2 * SIDE * d <= into + TOUCH]
    _, _, through, behind = headed(joint, meeting)
    longer = [each for each in sizes.screw_lengths if length < each <= through + behind - 2.0]
    if joint.kind is JointKind.POCKET_SCREW:
        longer = []
    choices = (
        [(each, length) for each in thicker],
        [(diameter, each) for each in longer],
    )
    for sizes_left in choices:
        best: Remedy | None = None
        for wide, long in sizes_left:
            other = replace(fixing, diameter=wide, length=long)
            again = replace(joint, fixings=(other,))
            bears = fixing.count * _each(holds_of(again, meeting), pulled)
            name = sizes.screw_size(wide, long)
            best = Remedy(f"{fixing.name}s {name}, as many", bears, bears >= needed, bears=True)
            if best.holds:
                break
        if best is not None:
            yield best


def _screwed(sizes: TradeSizes, joint: Joint, meeting: Meeting, needed: float) -> Iterator[Remedy]:
    """Screws through the first into the second, of the sizes that such a joint is made with."""
    fit = [d for d in sizes.screw_diameters if d <= meeting.thickness * sizes.of_edge + TOUCH]
    if not fit:
        return
    wide = fit[-1]
    through = meeting.through - meeting.reach
    deep = [each for each in sizes.screw_lengths if each >= through + HOLD * wide]
    if not deep:
        return
    screw = Fixing("wood screw", 1, sizes.screw_size(wide, deep[0]), diameter=wide, length=deep[0])
    other = replace(joint, kind=JointKind.SCREWED, fixings=(screw,))
    each = _each(holds_of(other, replace(meeting, through=through)), pulled=False)
    if each:
        count = max(2, min(ceil(needed / each - TOUCH), most_along(screw, meeting)))
        what = f"{count} wood screws {screw.size} through {meeting.first.ref}"
        yield Remedy(what, count * each, count * each >= needed, bears=True)


def _other_joints(
    sizes: TradeSizes, joint: Joint, meeting: Meeting, needed: float, room: ServiceClass
) -> Iterator[Remedy]:
    """Let in a third of the thickness, or dowelled as closely as may be."""
    if meeting.axis == 2 or joint.kind is JointKind.RESTING:
        return
    deep = sizes.round_down(meeting.through / 3)
    deeper = joint.kind not in _CHANNELS or deep > meeting.reach + TOUCH
    if deep > TOUCH and deeper and meeting.axis == 0:
        bears = housing_bears(meeting, deep, room)
        if bears is not None:
            kg = bears.allowed / GRAVITY
            yield Remedy(f"a housing {sizes.say(deep)} deep", kg, kg >= needed, bears=True)
    if joint.kind not in (JointKind.SCREWED, JointKind.POCKET_SCREW):
        yield from _screwed(sizes, joint, meeting, needed)
    if joint.kind is JointKind.DOWEL:
        return
    for wide, long in sizes.dowels.items():
        if not meeting.thickness / 3 - TOUCH <= wide <= meeting.thickness / 2 + TOUCH:
            continue
        dowel = Fixing("dowel", 1, sizes.by(wide, long), diameter=wide, length=long)
        each = dowel_sheared(wide).allowed / GRAVITY
        count = min(ceil(needed / each - TOUCH), most_along(dowel, meeting))
        what = f"{max(count, 2)} dowels {dowel.size} instead"
        yield Remedy(what, max(count, 2) * each, max(count, 2) * each >= needed, bears=True)
        return
