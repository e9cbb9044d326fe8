"""Cut-outs: parts are cut out round a skirting, a pipe or a socket that stays where it is."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace

from rodwright.geometry import TOUCH, Box, Vector, along, times
from rodwright.setout.recut import Recut, Workpiece, rejoined
from rodwright.setout.rod.lines import Rod
from rodwright.setout.setting import Setting
from rodwright.setout.slope.clipping import cut_back
from rodwright.trade.wood_left import BETWEEN
from rodwright.unit import CUT_OUT, Bore, Hole, Joint, Notch, Role, Surface
from rodwright.wishes.cutouts import CutoutSpec, PipeCutout, SkirtingCutout, SocketCutout

_FAR = 1e5
"""mm: past every unit."""
LEAST_LEFT = 20.0
"""A strip of wood narrower than this (mm) beside a cut-out is too weak (common practice, no
source)."""


def cut_out(setting: Setting) -> None:
    """Cut everything on the bench out round what stays in place.

    A part is notched, drilled, or cut off square, whichever the place of the cut-out in it
    asks for.  What would fall apart, and what mustn't be cut, is noted.
    """
    bench = setting.bench
    for number, wish in enumerate(setting.spec.cutouts):
        here = setting.at(number)
        bench.recut(_cut_one_out(here, wish, bench.workpieces(), bench.joints))


def _cut_one_out(
    setting: Setting, wish: CutoutSpec, before: Mapping[str, Workpiece], joints: Iterable[Joint]
) -> Recut:
    """What is left round one thing that stays in place."""
    room = _box(wish, setting.rod)
    hit = [piece for piece in before.values() if room.intersects(piece.part.bounds())]
    kept: dict[str, Workpiece] = {}
    if not hit:
        setting.refuse(
            f"the {wish.kind} meets no part of the unit",
            "Measure its place again, or leave it out.",
        )
    for piece in hit:
        part = piece.part
        if part.role not in CUT_OUT:
            setting.refuse(
                f"the {wish.kind} runs into {part.name} ({part.ref}), which can't be cut out",
                "Move that part clear of it.",
            )
        elif part.role is not Role.BACK and _takes_fixings(room, piece):
            setting.refuse(
                f"the {wish.kind} takes away fixings of {part.name} ({part.ref})",
                "Move that part, or choose a joint without fixings there.",
            )
        elif (left := _cut(wish, setting.rod, piece)) is None:
            setting.refuse(
                f"cut out round the {wish.kind}, {part.name} ({part.ref}) falls apart or "
                "keeps no sound strip beside it",
                "Move that part clear of it, or make the cut-out smaller.",
            )
        else:
            kept[part.ref] = left
    after = {ref: piece.part.bounds() for ref, piece in {**before, **kept}.items()}
    whole = {ref: piece.part.bounds() for ref, piece in before.items()}
    return Recut(kept, rejoined(joints, lambda joint: _left_of(joint, room, whole, after)))


def _box(wish: CutoutSpec, rod: Rod) -> Box:
    """The room that has to stay free, clearance included, unit frame."""
    if isinstance(wish, SkirtingCutout):
        # The unit stands off the wall by the gap behind it, if the opening leaves one.
        y = rod.outside.rear + (rod.outside.gap_behind or 0.0) - wish.depth - wish.clearance
        return Box((-_FAR, y, -_FAR), (_FAR, _FAR, wish.height + wish.clearance))
    gap, (first, second) = wish.clearance, wish.at
    if isinstance(wish, SocketCutout):
        return Box(
            (first - gap, rod.inside.shelf_rear, second - gap),
            (first + wish.width + gap, _FAR, second + wish.height + gap),
        )
    reach = wish.diameter / 2 + gap
    axis, middle = _axis(wish), _middle(wish, rod)
    return (
        Box(middle, middle)
        .grown(reach)
        .spanning(axis, rod.inside.shelf_rear if axis == 1 else -_FAR, _FAR)
    )


def _axis(wish: PipeCutout) -> int:
    """The axis of the unit frame that a pipe runs along."""
    return {"across": 0, "back": 1, "upright": 2}[wish.runs]


def _middle(wish: PipeCutout, rod: Rod) -> Vector:
    """A point of a pipe's middle line, unit frame."""
    first, second = wish.at
    if wish.runs == "upright":
        return (first, rod.outside.rear - second, 0.0)
    if wish.runs == "back":
        return (first, rod.outside.rear, second)
    return (0.0, rod.outside.rear - first, second)


def _takes_fixings(room: Box, piece: Workpiece) -> bool:
    """Whether a cut-out takes holes or mortises that another part's joint counts on."""
    local, size = piece.part.placement.box_to_part(room), piece.part.blank.size
    return any(
        local.penetration(working.bounds(size)) > 0
        for working in piece.workings
        if isinstance(working, Bore)
    )


def _cut(wish: CutoutSpec, rod: Rod, piece: Workpiece) -> Workpiece | None:
    """One part cut out; None where it doesn't stay whole."""
    part = piece.part
    size, local = part.blank.size, part.placement.box_to_part(_box(wish, rod))
    through = [local.low[i] <= TOUCH and local.high[i] >= size[i] - TOUCH for i in range(3)]
    if not through[2]:
        # A cut-out that doesn't run right through a panel's thickness leaves too little of it.
        return None
    if isinstance(wish, PipeCutout) and abs(part.placement.thickness[_axis(wish)]) > 0.5:
        return _cut_round(wish, local, rod, piece)
    if through[0] and through[1]:
        return None
    for axis in range(2):
        if through[1 - axis]:
            return _cut_off(local, axis, piece)
    return _notched(local, piece, wish.kind)


def _cut_off(local: Box, axis: int, piece: Workpiece) -> Workpiece | None:
    """A part cut off square where the cut-out takes all of an end or an edge."""
    size, placed = piece.part.blank.size, piece.part.placement
    at_low, at_high = local.low[axis] <= TOUCH, local.high[axis] >= size[axis] - TOUCH
    if at_low is at_high:
        return None
    place = along(axis, local.high[axis] if at_low else local.low[axis])
    plane = (placed.to_unit(place), times(placed.axes[axis], -1.0 if at_low else 1.0))
    left = cut_back(piece, [plane])
    return left if left is not None and left.part.blank.size[axis] >= LEAST_LEFT else None


def _notched(local: Box, piece: Workpiece, kind: str) -> Workpiece | None:
    """A part notched; what is left beside the notch must hold."""
    size = piece.part.blank.size
    low = [max(0.0, local.low[i]) for i in range(2)]
    high = [min(size[i], local.high[i]) for i in range(2)]
    beside = [each for i in range(2) for each in (low[i], size[i] - high[i])]
    if any(TOUCH < strip < LEAST_LEFT for strip in beside):
        return None
    notch = Notch(low[0], low[1], high[0] - low[0], high[1] - low[1], kind)
    return _without_taken(piece, local).worked(notch)


def _cut_round(wish: PipeCutout, local: Box, rod: Rod, piece: Workpiece) -> Workpiece | None:
    """A part drilled for a pipe, or notched from the edge that the pipe is near."""
    size = piece.part.blank.size
    middle = piece.part.placement.to_part(_middle(wish, rod))
    reach = wish.diameter / 2 + wish.clearance
    rims = {
        (i, high): (size[i] - middle[i] if high else middle[i]) - reach
        for i in range(2)
        for high in (False, True)
    }
    (axis, at_high), rim = min(rims.items(), key=lambda each: each[1])
    if rim >= wish.least_rim:
        hole = Hole(Surface.FACE, (middle[0], middle[1]), 2 * reach, use=wish.kind)
        return _without_taken(piece, local).worked(hole)
    open_to = local.spanning(axis, high=_FAR) if at_high else local.spanning(axis, low=-_FAR)
    return _notched(open_to, piece, wish.kind)


def _without_taken(piece: Workpiece, local: Box) -> Workpiece:
    """A part without the screw holes that a cut-out takes, wholly or in part."""
    size = piece.part.blank.size
    kept = tuple(
        working
        for working in piece.workings
        if not isinstance(working, Hole) or local.penetration(working.bounds(size)) < -BETWEEN
    )
    return replace(piece, workings=kept)


def _left_of(
    joint: Joint, room: Box, before: Mapping[str, Box], after: Mapping[str, Box]
) -> Joint | None:
    """A joint after a cut-out: None where the parts no longer meet, ``at`` in what is left."""
    first, second = before[joint.first], before[joint.second]
    patch = first.intersection(second)
    taken = patch.intersection(room)
    if min(taken.size) < -TOUCH:
        return joint
    left = [
        (gap, axis, centre)
        for axis in range(3)
        for gap, centre in (
            (taken.low[axis] - patch.low[axis], (taken.low[axis] + patch.low[axis]) / 2),
            (patch.high[axis] - taken.high[axis], (patch.high[axis] + taken.high[axis]) / 2),
        )
    ]
    gap, axis, centre = max(left)
    meet = after[joint.first].contact(after[joint.second])
    if gap < TOUCH or (joint.kind.meets and meet is None):
        return None
    at = list(joint.at)
    if taken.contains_point(joint.at):
        at[axis] = centre
    return replace(joint, at=(at[0], at[1], at[2]))
