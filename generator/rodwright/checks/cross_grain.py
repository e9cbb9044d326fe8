"""Is solid wood held across its grain by something that doesn't move with it?"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH, Box
from rodwright.trade.movement import ACCEPTED, TABLE
from rodwright.unit import Groove, Joint, JointKind, Part, Rebate, Role, Unit
from rodwright.unit.crossing import crossing

_LET_IN = (JointKind.GROOVE, JointKind.REBATE)
_FOR_BACK = "back"


def cross_grain(unit: Unit) -> Iterator[Finding]:
    """Joints that hold solid wood across its grain against sheet goods or along another's grain.

    Where two parts meet, each swells along its width and hardly along its length; what one
    moves more than the other, over the length they meet on and between the least and most
    moisture of the unit, has to go somewhere.  Boards that meet with their widths the same
    way move together.  Joints that leave play (adjustable shelves, buttons, panels that float) are
    free, and so is a back in grooves or rebates as far as it has room in them and nothing fixes it;
    every other is rigid.
    """
    for joint in unit.joints:
        if not joint.kind.free and not _loose_back(unit, joint):
            yield from _held(unit, joint)
    for part in unit.parts:
        if part.role is Role.BACK and part.blank.stock.kind == "board":
            yield from _confined(unit, part)


def _loose_back(unit: Unit, joint: Joint) -> bool:
    """Whether a back only lies there: what is laid on is screwed all over, or butted."""
    loose = (*_LET_IN, JointKind.BUTT)
    back = unit.part(joint.second).role is Role.BACK
    return back and joint.kind in loose and not joint.fixings


def _held(unit: Unit, joint: Joint) -> Iterator[Finding]:
    worst, _, mover, holder = crossing(
        unit.part(joint.first), unit.part(joint.second), unit.moisture
    )
    if worst <= ACCEPTED:
        return
    low, high = unit.moisture
    yield Finding(
        Severity.WARNING,
        Rule.HELD_ACROSS_GRAIN,
        f"{named(mover)} moves {length_in(unit, worst)} across its grain between "
        f"{low:g} and {high:g} % moisture, and {named(holder)} holds it: it will split or bow, or "
        f"its joint will give",
        "Leave it room: buttons, screws in slots, or a groove without glue; or make both of solid "
        f"wood with the grain the same way round{_quartered(unit, mover, holder)}.",
        (mover.ref, holder.ref),
        worst,
        ACCEPTED,
        source=f"movement: {TABLE}; limit: common practice, no source",
        place=joint.at,
    )


def _quartered(unit: Unit, mover: Part, holder: Part) -> str:
    """What quarter-sawn boards would do for a part, where they move little enough."""
    stock = mover.blank.stock.quarter_sawn
    if stock is None:
        return ""
    calmer = replace(mover, blank=replace(mover.blank, stock=stock))
    worst = crossing(calmer, holder, unit.moisture)[0]
    if worst > ACCEPTED:
        return ""
    return f"; or take quarter-sawn wood (`sawn: quarter`), which moves {length_in(unit, worst)}"


def _confined(unit: Unit, panel: Part) -> Iterator[Finding]:
    """A panel of solid wood that swells by more than grooves or rebates at its edges leave it."""
    axis = max(range(3), key=lambda i: abs(panel.placement.width[i]))
    box = panel.bounds()
    low, high, what = [], [], ""
    for joint in unit.joints:
        if joint.kind not in _LET_IN or joint.second != panel.ref:
            continue
        what = f"{joint.kind.value}s"
        for groove in _let_in(unit.part(joint.first)):
            if groove.low[axis] - TOUCH <= box.low[axis] < groove.high[axis]:
                low.append(box.low[axis] - groove.low[axis])
            if groove.low[axis] < box.high[axis] <= groove.high[axis] + TOUCH:
                high.append(groove.high[axis] - box.high[axis])
    if not low or not high:
        return
    room = min(low) + min(high)
    grows = panel.blank.stock.swelling(panel.blank.width, unit.moisture)
    if grows > room + TOUCH:
        dry, wet = unit.moisture
        yield Finding(
            Severity.WARNING,
            Rule.NO_ROOM_TO_SWELL,
            f"{named(panel)} swells {length_in(unit, grows)} between {dry:g} and "
            f"{wet:g} % moisture, and its {what} leave it {length_in(unit, room)}: it "
            f"will push the unit apart",
            "Make it of sheet material, or of narrower boards that aren't glued to each other; or "
            "give `back` more `depth` and `clearance`.",
            (panel.ref,),
            grows,
            room,
            source=str(TABLE),
            case=(what,),
        )


def _let_in(part: Part) -> Iterator[Box]:
    """What is ploughed or rebated out of a part for the back, in the unit frame."""
    for working in part.workings:
        if isinstance(working, Groove | Rebate) and working.use == _FOR_BACK:
            yield part.placement.box_to_unit(working.bounds(part.blank.size))
