"""Mitred carcass corners: both parts run to the outside, their ends bevelled."""

from __future__ import annotations

from math import hypot

from rodwright.geometry import TOUCH
from rodwright.setout.joints.layout import SpacingRule, lay_out
from rodwright.setout.joints.meet import Work, surface_towards
from rodwright.trade.connectors import BISCUITS, SLOT_WIDTH, biscuit_size, slot_depth
from rodwright.unit import Fixing, JointKind, Mitre

_RULES = {
    "biscuits": SpacingRule(60.0, 40.0, 150.0, 70.0),
    "dowels": SpacingRule(32.0, 20.0, 100.0, 24.0),
}


_ACROSS = "square to the mitre near its inner corner"


def mitred(work: Work) -> None:
    """Bevel both ends by 45 degrees, long points on the outside.

    What is let in across the mitre goes in square to it, near its inner corner where the
    wood is deepest; it is counted and not drilled in the model.
    """
    bench, m = work.bench, work.meeting
    one, other = work.first, work.second
    ways = [max(range(3), key=lambda i: abs(part.placement.length[i])) for part in (one, other)]
    faces = [max(range(3), key=lambda i: abs(part.placement.thickness[i])) for part in (one, other)]
    if ways != faces[::-1]:
        work.refuse(
            "joint",
            "only ends of two panels that stand square to each other can be mitred",
            "Choose another joint there.",
        )
        return
    if abs(one.blank.thickness - other.blank.thickness) > TOUCH:
        work.refuse(
            "joint",
            f"a corner can't be mitred at 45 degrees where {work.say(one.blank.thickness)} meets "
            f"{work.say(other.blank.thickness)}",
            "Use stock of one thickness, or choose another joint.",
        )
        return
    boxes = [one.bounds(), other.bounds()]
    depth = 3 - sum(ways)
    if any(
        abs(a - b) > TOUCH
        for a, b in (
            (boxes[0].low[depth], boxes[1].low[depth]),
            (boxes[0].high[depth], boxes[1].high[depth]),
        )
    ):
        work.refuse(
            "joint",
            "mitred corners need parts that are equally deep",
            "Lip both parts alike, or neither.",
        )
        return
    ends = [
        [abs(a - b) <= TOUCH for a, b in zip(*corners, strict=True)]
        for corners in ((boxes[0].low, boxes[1].low), (boxes[0].high, boxes[1].high))
    ]
    if not all(ends[0][i] or ends[1][i] for i in ways):
        work.refuse(
            "joint",
            "only a corner can be mitred, and one of these parts runs past the other",
            "Choose another joint there.",
        )
        return
    held = _reinforced(work)
    if held is None:
        return
    for part, way, face in zip((one, other), ways, faces, strict=True):
        end = surface_towards(part, way, 1 if ends[1][way] else -1)
        outer = surface_towards(part, face, 1 if ends[1][face] else -1)
        bench.work(part.ref, Mitre(end, 45.0, outer))
    patch = boxes[0].contact(boxes[1])
    assert patch is not None
    bench.join(JointKind.MITRE, m.first, m.second, patch.centre, *held)


def _reinforced(work: Work) -> tuple[Fixing, ...] | None:
    """What is let in across the mitre; None where there is no room for it."""
    m, kind, sizes = work.meeting, work.wish.reinforced, work.bench.sizes
    t = work.first.blank.thickness
    if kind == "nothing":
        return ()
    if kind == "loose_tongue":
        width, thick = sizes.round_down(hypot(t, t) / 2 + sizes.step / 2), sizes.usual(4.0)
        deep = width / 2 + sizes.usual(1.0) / 2
        groove = f"groove {sizes.say(thick)}, {sizes.say(deep)} deep"
        size = sizes.by(m.length, width, thick)
        tongue = Fixing(
            "loose tongue", 1, size, groove, diameter=thick, length=m.length, width=width
        )
        return (tongue,)
    least = sizes.usual(15.0)
    if t < least - TOUCH:
        work.refuse(
            "reinforced",
            f"a mitre in {work.say(t)} stock has no room for {kind}",
            f"Use a loose tongue, or {work.say(least)} stock at least.",
        )
        return None
    places = lay_out(work, _RULES[kind], kind[:-1])
    if not places:
        return None
    if kind == "biscuits":
        wide, deep = SLOT_WIDTH[sizes.unit], slot_depth("0", sizes.unit)
        text = f"slot {sizes.say(wide)} wide, {sizes.say(deep)} deep, {_ACROSS}"
        long, broad, _ = BISCUITS["0"]
        size = biscuit_size("0", sizes.unit)
        biscuits = Fixing(
            "biscuit", len(places), size, text, diameter=wide, length=long, width=broad
        )
        return (biscuits,)
    wide, deep = min(sizes.dowels), sizes.usual(10.0)
    text = f"{sizes.say(wide)}, {sizes.say(deep)} deep each side, {_ACROSS}"
    across = 3 * wide
    dowels = Fixing(
        "dowel", len(places), sizes.by(wide, across), text, diameter=wide, length=across
    )
    return (dowels,)
