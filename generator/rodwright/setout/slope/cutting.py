"""A unit cut to a sloping ceiling.

The whole rectangular unit is set out first.  Then every part is cut at the plane it may reach,
joints whose meeting is cut off go, and the sloping parts are laid in
(:mod:`rodwright.setout.slope.boards`).
"""

from __future__ import annotations

from collections.abc import Mapping
from math import ceil, floor

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.geometry.halfspaces import Plane, beyond, moved, vertices
from rodwright.problems import KeyPath
from rodwright.setout.recut import Recut, Workpiece
from rodwright.setout.rod.lines import Rod
from rodwright.setout.rod.slope_lines import SlopeLines, door_plane, height_at
from rodwright.setout.setting import Setting
from rodwright.setout.slope.clipping import cut_back, planes_of
from rodwright.setout.slope.joints_left import joints_left, unlipped
from rodwright.unit import (
    BASE,
    DOORS,
    DRAWERS,
    Bevel,
    Hole,
    Joint,
    JointKind,
    Mitre,
    Part,
    Role,
)

USEFUL = 100.0
"""A shelf, top or door with less left along the slope's fall (mm) is of no use (common practice,
no source)."""
_UNCUT = {
    **dict.fromkeys(set(DOORS) - {Role.DOOR}, "a framed door isn't cut to a slope"),
    **dict.fromkeys(DRAWERS, "a drawer runs into the slope"),
    Role.WORKTOP: "a worktop isn't cut to a slope",
    Role.CORNICE: "a cornice isn't cut to a slope",
    **dict.fromkeys(BASE, "the base runs into the slope"),
}

_PIN_REACH = 9.0
"""mm: the middle of a pin's hole lies no further than this below the shelf on it."""


def cut_to_slope(setting: Setting) -> None:
    """Cut everything on the bench to a slope; what can't be cut is noted with its place."""
    bench, lines = setting.bench, setting.slope
    assert lines is not None
    mark, before = setting.problems.mark(), bench.workpieces()
    cutter = _Cutter(setting, lines, before)
    after = cutter.left()
    if setting.problems.noted_since(mark):
        return
    cutter.rests(after)
    if lines.frame_inner is not None:
        cutter.frame_fits(after)
    joints = joints_left(bench.joints, before, after)
    kept = {ref: piece for ref, piece in after.items() if piece is not before[ref]}
    bench.recut(Recut(kept | unlipped(after, joints), joints, before.keys() - after.keys()))


class _Cutter:
    """What decides how each part is cut; ``before`` is what lies on the bench."""

    def __init__(
        self, setting: Setting, lines: SlopeLines, before: Mapping[str, Workpiece]
    ) -> None:
        self.setting, self.rod, self.bench, self.lines = setting, setting.rod, setting.bench, lines
        self.before = before
        self._noted: set[tuple[KeyPath, str]] = set()

    def left(self) -> dict[str, Workpiece]:
        """What the slope leaves of every part, without what it cuts off whole."""
        after = dict(self.before)
        # Where the slope is lowest first: what is told of several alike is told of the worst.
        lowest = {
            ref: _lowest(self.lines.outer, piece.part.bounds())
            for ref, piece in self.before.items()
        }
        for ref in sorted(lowest, key=lambda ref: round(lowest[ref], 6)):
            piece, plane = self.before[ref], self.plane_for(ref)
            if plane is None or not _reaches(piece, plane):
                continue
            cut = cut_back(piece, [plane])
            if self.is_useful(ref, piece, cut, plane):
                if cut is None:
                    del after[ref]
                else:
                    after[ref] = cut
        return after

    def plane_for(self, ref: str) -> Plane | None:
        """The plane that a part may reach; None where the slope doesn't concern it."""
        rod, lines, part = self.rod, self.lines, self.bench.parts[ref]
        y = part.bounds()
        before = y.low[1] < -TOUCH
        match part.role:
            case Role.STILE | Role.RAIL:
                return lines.frame_inner
            case Role.SCRIBE:
                return lines.outer
            case Role.BACK:
                return self._back_plane()
            case Role.DOOR:
                return door_plane(lines, rod, y.high[1], self.setting.notes.slabs[ref].gap)
            case Role.SHELF:
                return moved(lines.inner, -self.gap(ref))
            case Role.LIPPING:
                first = next(j.first for j in self.bench.joints if j.second == ref)
                inner = lines.frame_inner if before and lines.frame_inner else lines.inner
                return moved(inner, -self.gap(first))
            case _:
                return lines.frame_inner if before and lines.frame_inner else lines.inner

    def gap(self, ref: str) -> float:
        """The gap that an adjustable shelf keeps, 0 for what is fixed."""
        if self.bench.parts[ref].role is not Role.SHELF:
            return 0.0
        kept = [each.least for each in self.bench.clearances if ref in (each.first, each.second)]
        return max(kept, default=0.0)

    def _back_plane(self) -> Plane:
        """An applied back covers the sloping board's edge, others are let into the board."""
        back, lines = self.rod.back, self.lines
        assert back is not None
        if back.reach == 0:
            return lines.outer
        if not (lines.sideways and self.rod.inside.has_top):
            return lines.inner
        return moved(lines.inner, back.reach - back.clearance)

    def is_useful(self, ref: str, piece: Workpiece, left: Workpiece | None, plane: Plane) -> bool:
        """Whether a part can be as the slope leaves it; what can't is noted with its limit."""
        part, say = piece.part, self.setting.say
        box = part.bounds()
        place = self.bench.place_of(ref)
        if part.role in _UNCUT:
            self._note(
                place,
                f"{_UNCUT[part.role]}: {_said(part)} is {say(box.high[2])} up at its top, and at "
                f"its low side the slope leaves {say(_lowest(plane, box))}",
                f"Keep it to where the unit has its full height, or end it at "
                f"{say(floor(_lowest(plane, box)))} up.",
            )
            return False
        if part.role in (Role.SHELF, Role.CARCASS_RAIL, Role.DIVIDER, Role.TOP, Role.DOOR):
            axis = 0 if self.lines.sideways else 1
            reach = 0.0 if left is None else left.part.bounds().size[axis]
            whole = min(USEFUL, box.size[axis] - TOUCH)
            if part.role is Role.TOP and left is None:
                return True
            if reach < whole:
                self._short(part, place, reach, self._height_leaving(whole, box, plane))
                return False
        if part.role is Role.DOOR and left is not None and _fittings(left) < _fittings(piece):
            self._note(
                place,
                f"the slope cuts off the hinges or handle of {_said(part)}: at its low side it "
                f"leaves {say(_lowest(plane, box))} up",
                f"Hang it at the high side, move `hinge.ends` or `handle.height`, or end it at "
                f"{say(floor(_lowest(plane, box)))} up.",
            )
            return False
        return True

    def _height_leaving(self, reach: float, box: Box, plane: Plane) -> float:
        """The height below which the underside of a part has to be, if the slope is to leave so
        much of it along its fall."""
        x, y = box.centre[:2]
        match self.lines.falls:
            case "left":
                x = box.high[0] - reach
            case "right":
                x = box.low[0] + reach
            case "front":
                y = box.high[1] - reach
            case "rear":
                y = box.low[1] + reach
        return height_at(plane, x, y)

    def _short(self, part: Part, place: KeyPath, reach: float, most: float) -> None:
        say = self.setting.say
        if part.role is Role.TOP:
            high = height_at(self.lines.outer, *_high_end(self.rod, self.lines))
            self._note(
                ("slope",),
                f"the slope leaves only {say(reach)} of the level top",
                f"Make the unit lower, or at least {say(ceil(high))} high (`size.height`), so "
                f"that the slope takes all of its top.",
            )
            return
        what = "lies wholly above the slope" if reach == 0 else f"has only {say(reach)} left"
        self._note(
            place,
            f"under the slope {_said(part)} {what}: its underside is "
            f"{say(part.bounds().low[2])} up, and {say(USEFUL)} are the least that is of use",
            f"Put its underside at {say(floor(most))} up at most, or leave it out.",
        )

    def rests(self, after: Mapping[str, Workpiece]) -> None:
        """Note adjustable shelves that the slope leaves without a pin at one of four corners."""
        for joint in self.bench.joints:
            if joint.kind is not JointKind.RESTING or not {joint.first, joint.second} <= {*after}:
                continue
            part, old = after[joint.second].part, self.before[joint.second].part.bounds()
            whole = _pins(joint, self.before[joint.first], old)
            now = _pins(joint, after[joint.first], part.bounds())
            if now < whole or beyond(self.lines.inner, joint.at) > -TOUCH:
                say = self.setting.say
                most = _lowest(self.lines.inner, old) - part.blank.thickness
                self._note(
                    self.bench.place_of(joint.second),
                    f"the slope cuts off the pins of {_said(part)}: its underside is "
                    f"{say(old.low[2])} up",
                    f"Make it fixed (`fixed: true`), set it back, or put its underside at "
                    f"{say(floor(most))} up.",
                )

    def frame_fits(self, after: Mapping[str, Workpiece]) -> None:
        """Note a sloping rail that would leave no opening in its corner, or no level top rail."""
        frame, inner = self.rod.front.frame, self.lines.frame_inner
        assert frame is not None and inner is not None
        say, left = self.setting.say, self.lines.falls == "left"
        near = frame.inner_left if left else frame.inner_right
        under = height_at(inner, near, 0.0)
        if under > frame.inner_top:
            self._note(
                ("slope",),
                f"the slope takes so little off the face frame that no sloping rail fits: beside "
                f"the stile it would end {say(under)} up, the top rail {say(frame.inner_top)}",
                "Make the frame's members narrower, or the unit lower so that it passes under.",
            )
        for ref, member in self.setting.notes.frame.items():
            if member.at == "high" and ref in after:
                rise = self.lines.rise
                met = near + (frame.inner_top - under) / rise * (1 if left else -1)
                free = frame.inner_right - met if left else met - frame.inner_left
                if free < frame.rail_width and _reaches(after[ref], moved(inner, -1.0)):
                    self._note(
                        ("face_frame",),
                        f"the slope leaves the face frame's top rail {say(max(0.0, free))} between "
                        f"sloping rail and stile; {say(frame.rail_width)} are the least",
                        "Make the unit lower or higher, or the frame's members narrower.",
                    )

    def _note(self, where: KeyPath, message: str, remedy: str) -> None:
        """Note one problem, the first of its kind at its place."""
        told = (where, message.split(":")[0])
        if told not in self._noted:
            self._noted.add(told)
            self.setting.moved_to(where).refuse(message, remedy)


def _lowest(plane: Plane, box: Box) -> float:
    """The height of a plane where it is lowest over a box."""
    (x0, y0, _), (x1, y1, _) = box.low, box.high
    return min(height_at(plane, x, y) for x in (x0, x1) for y in (y0, y1))


def _said(part: Part) -> str:
    return f"the {part.name.lower()} {part.ref}"


def _high_end(rod: Rod, lines: SlopeLines) -> tuple[float, float]:
    return {
        "left": (rod.outside.width, 0.0), "right": (0.0, 0.0),
        "front": (0.0, rod.outside.depth), "rear": (0.0, 0.0),
    }[lines.falls]  # fmt: skip


def _fittings(piece: Workpiece) -> int:
    """How many workings a part has beside slanting cuts."""
    return sum(not isinstance(working, Mitre | Bevel) for working in piece.workings)


def _pins(joint: Joint, upright: Workpiece, shelf: Box) -> int:
    """How many pin holes of an upright lie just under a shelf that rests on it there."""
    places = [
        upright.part.placement.to_unit(_mouth(hole, upright.part.blank.size))
        for hole in upright.workings
        if isinstance(hole, Hole)
    ]
    x, _, z = joint.at
    return sum(
        z - _PIN_REACH < at[2] < z
        and shelf.low[1] <= at[1] <= shelf.high[1]
        and abs(at[0] - x) < TOUCH
        for at in places
    )


def _mouth(hole: Hole, size: Vector) -> Vector:
    """The middle of a hole's mouth, part frame."""
    axis, at_high = hole.surface.axis, hole.surface.at_high
    at = size[axis] if at_high else 0.0
    return hole.bounds(size).spanning(axis, at, at).centre


def _reaches(piece: Workpiece, plane: Plane) -> bool:
    return any(beyond(plane, corner) > TOUCH for corner in vertices(planes_of(piece)))
