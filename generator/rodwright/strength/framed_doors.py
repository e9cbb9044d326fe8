"""Do the corners of a framed door hold its weight? kg.

The stile by the hinges stands; the rest hangs on the ends of the rails, each of which bends between
two stiles that don't turn: half of the door's weight, shared by its rails, at half their clear
length on each end.  The panel floats and isn't counted on.
"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.amounts import GRAVITY
from rodwright.geometry import TOUCH
from rodwright.mass import weight
from rodwright.strength.holds import holds_of, shear_of
from rodwright.strength.joint_results import CORNERS, called
from rodwright.strength.meetings import Meeting, meeting_of
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.trade.connectors import TENON_DEPTH, TENON_SHOULDER
from rodwright.trade.glued_in import cheeks_turned
from rodwright.trade.sizes import TradeSizes, trade_sizes
from rodwright.trade.sources import Source
from rodwright.unit import Joint, JointKind, Part, Role, Swing, Unit

_HANGS = Source("statics: rails clamped in two stiles carry half of the door between them")


def framed_doors(unit: Unit) -> Iterator[Result]:
    """The corners of framed doors against the doors' weight; of one door, that with the least to
    spare.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    for motion in unit.motions:
        if not isinstance(motion, Swing):
            continue
        parts = [unit.part(ref) for ref in motion.refs]
        rails = sum(part.role is Role.DOOR_RAIL for part in parts)
        corners = [
            joint
            for joint in unit.joints
            if joint.second in motion.refs
            and unit.part(joint.first).role is Role.DOOR_STILE
            and unit.part(joint.second).role is Role.DOOR_RAIL
        ]
        found = [each for joint in corners if (each := _corner(unit, joint, parts, rails))]
        if found:
            yield min(found, key=lambda each: each.spare or 0.0)


def _corner(unit: Unit, joint: Joint, parts: list[Part], rails: int) -> Result | None:
    meeting = meeting_of(unit, joint)
    if meeting is None or meeting.axis != 0:
        return None
    held = _turned(joint, meeting)
    if held is None:
        return None
    moment, formula, source = held
    clear = meeting.second.bounds().size[0] - 2 * meeting.reach
    kg = sum(weight(part) for part in parts)
    lever = clear / (4 * rails)
    bears = moment / lever / GRAVITY
    return Result(
        Group.JOINTS,
        f"{called(meeting.second)} in {called(meeting.first)} of {parts[0].group.lower()}",
        (joint.second, joint.first),
        CORNERS,
        kg,
        bears,
        "kg",
        f"W <= M1 4 r / b, M1 = {formula}",
        _HANGS,
        (
            Input("M1", "moment that a corner bears", moment, "N mm", source),
            Input("r", "rails", rails, ""),
            Input("b", "clear length of a rail", clear, "mm"),
            Input("W", "weight of the door", kg, "kg"),
        ),
        limit_source=source,
        notes=("glued; the panel isn't counted on",),
        remedies=_tenoned(trade_sizes(unit.display_unit), joint, meeting, lever, kg)
        if bears < kg
        else (),
    )


def _turned(joint: Joint, meeting: Meeting) -> tuple[float, str, Source] | None:
    """The moment that a corner bears, N mm, how, and where that comes from."""
    shear = _weaker(meeting)
    if joint.kind is JointKind.TONGUE and shear is not None and meeting.reach > 0:
        bears = cheeks_turned(meeting.length, meeting.reach, shear)
        return bears.allowed, bears.formula, bears.source
    fixing = next((each for each in joint.fixings if each.diameter and each.length), None)
    if fixing is None or fixing.length is None:
        return None
    if fixing.name == "loose tenon" and shear is not None and fixing.width:
        bears = cheeks_turned(fixing.width, fixing.length / 2, shear)
        return fixing.count * bears.allowed, f"n x {bears.formula}", bears.source
    holds = holds_of(joint, meeting)
    if fixing.name != "dowel" or holds is None or holds.drawn is None or fixing.count < 2:
        return None
    apart = meeting.length * (fixing.count - 1) / fixing.count
    return holds.drawn.allowed * apart, f"({holds.drawn.formula}) x lever", holds.drawn.source


def _weaker(meeting: Meeting) -> float | None:
    """The shear strength of the weaker of two woods, N/mm2; None where one isn't known."""
    shears = [shear_of(part) for part in (meeting.first, meeting.second)]
    known = [each for each in shears if each is not None]
    return min(known) if len(known) == 2 else None


def _tenoned(
    sizes: TradeSizes, joint: Joint, meeting: Meeting, lever: float, kg: float
) -> tuple[Remedy, ...]:
    """Loose tenons as wide as the rails take them, in these rails or in the narrowest that do."""
    shear = _weaker(meeting)
    if shear is None:
        return ()
    step, shoulders = sizes.usual(10.0), 2 * sizes.usual(TENON_SHOULDER)
    first = 1 if joint.kind is JointKind.LOOSE_TENON else 0
    wider = (sizes.round_up(meeting.length) + step * number for number in range(first, 30))
    best: Remedy | None = None
    for wide in wider:
        tenon = sizes.round_down(wide - shoulders)
        if tenon <= 0:
            continue
        moment = cheeks_turned(tenon, sizes.usual(TENON_DEPTH), shear).allowed
        bears = moment / lever / GRAVITY
        rails = "" if wide <= meeting.length + TOUCH else f" in rails {sizes.say(wide)} wide"
        best = Remedy(
            f"loose tenons {sizes.say(tenon)} wide{rails}", bears, bears >= kg, bears=True
        )
        if best.holds:
            break
    return (best,) if best is not None else ()
