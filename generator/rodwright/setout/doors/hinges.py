"""Hinges: cups or butts, how many, where, and what is cut for them."""

from __future__ import annotations

from rodwright.amounts import format_weight
from rodwright.geometry import TOUCH
from rodwright.setout.doors.butt_hinges import butts
from rodwright.setout.doors.cup_hinges import cups
from rodwright.setout.doors.hinge_places import Around, Hinge, Hung
from rodwright.setout.inside import Space
from rodwright.setout.setting import Setting
from rodwright.trade.hinges import HINGES_PER_DOOR, OPENS
from rodwright.unit import JointKind, Part, Swing
from rodwright.wishes.doors import DoorsSpec, HingeSpec


def hinge_count(height: float, weight: float) -> int | None:
    """How many hinges carry a door of this height (mm) and weight (kg); None: more than five."""
    for most_height, most_weight, count in HINGES_PER_DOOR:
        if height <= most_height + TOUCH and weight <= most_weight:
            return count
    return None


def hang(setting: Setting, wish: DoorsSpec, hung: Hung, space: Space, around: Around) -> None:
    """Cut door and carrier for the hinges, join them, and note how the door turns.

    ``around`` is what may carry the hinges or be in their way.
    """
    bench, count = setting.bench, _count(setting, wish.hinge, hung)
    if count is None:
        return
    hinge = Hinge(setting, wish, hung, space, around)
    made = cups(hinge, count) if wish.hinge.kind == "cup" else butts(hinge, count)
    if made is None:
        return
    carrier, axis, at, fixings = made
    bench.join(JointKind.HINGED, carrier, hung.near, at, *fixings)
    angle = wish.hinge.opens if wish.hinge.opens is not None else OPENS[wish.hinge.kind]
    bench.move_together(Swing(hung.refs, axis, -angle if hung.hinges == "left" else angle))


def _count(setting: Setting, hinge: HingeSpec, hung: Hung) -> int | None:
    if hinge.count is not None:
        return hinge.count
    outline = hung.outline
    height = max(map(hung.top, (outline.left, outline.right))) - outline.low
    # What a slope leaves weighs less still.
    weight = sum(_weight(setting.bench.parts[ref]) for ref in hung.refs) * height / outline.height
    count = hinge_count(height, weight)
    if count is None:
        setting.at("count").refuse(
            f"a door {setting.say(height)} high of {format_weight(weight, setting.unit)} is "
            "more than five hinges are known to carry",
            "Make it smaller or lighter, or give `count` after asking the hinges' maker.",
        )
    return count


def _weight(part: Part) -> float:
    """Of a blank, kg: what is cut out of it is on the safe side."""
    length, width, thickness = part.blank.size
    return length * width * thickness * part.blank.stock.density * 1e-9
