"""What comes to a part and is marked on it: boards that meet it, slides and hinges; and what goes
into each of its workings.

Lengths in mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from rodwright.geometry import TOUCH
from rodwright.handover.slides import Slides, slides_of
from rodwright.paper.rods.marks import SAME, SIDES, Kind, Mark, along, ends
from rodwright.unit import (
    TRAITS,
    Fitting,
    Joint,
    JointKind,
    Part,
    Rod,
    Role,
    Surface,
    Swing,
    Unit,
    Working,
)

_NEAR = 0.5
"""mm: what is put into a hole lies no farther from its mouth."""
_FOR_NO_PART = ("adjustable shelves", "handle")
"""Uses of holes that take something bought and nothing of the unit."""
_TOLD_BY_THEMSELVES = {Role.BACK, Role.LIPPING}
"""What is made to fit the rest and marked out on nothing."""


@dataclass(frozen=True, slots=True)
class Meetings:
    """A unit's joints by each of the parts that they join, the slides of its drawer sides, and the
    knuckles of its butt hinges (lower and upper ends) by the door piece that they are on."""

    unit: Unit
    joints: dict[str, list[Joint]] = field(default_factory=dict)
    slides: dict[str, Slides] = field(default_factory=dict)
    knuckles: dict[str, list[tuple[float, float]]] = field(default_factory=dict)

    def guests(self, part: Part) -> dict[Working, tuple[str, ...]]:
        """The refs of what goes into each working of a part."""
        square = all(along(part, axis) is not None for axis in range(3))
        return {each: self._into(part, each) for each in part.workings} if square else {}

    def _into(self, part: Part, working: Working) -> tuple[str, ...]:
        joints = self.joints.get(part.ref, [])
        box = part.placement.box_to_unit(working.bounds(part.blank.size))
        use = getattr(working, "use", "")
        if use in _FOR_NO_PART:
            return ()
        if use.startswith("hinge"):
            hung = (each for each in joints if each.kind is JointKind.HINGED)
            doors = [each.second for each in hung if each.first == part.ref]
            return tuple(ref for ref in doors if _stands_at(self.unit.part(ref), box.centre[2]))
        refs = dict.fromkeys(
            _other(part, each) for each in joints if each.kind is not JointKind.RESTING
        )
        depths = {ref: self.unit.part(ref).bounds().penetration(box) for ref in refs}
        inside = tuple(ref for ref, depth in depths.items() if depth > TOUCH)
        found = inside or tuple(ref for ref, depth in depths.items() if depth > -_NEAR)
        # What it is for decides between those that come to one corner.
        meant = tuple(ref for ref in found if self.unit.part(ref).role == use)
        return meant or found

    def marks(self, part: Part, axis: int) -> Iterator[Mark]:
        """What comes to a part, along an axis, as far as it lies on it; nothing of one that lies
        askew, which can't be marked from a rod."""
        if along(part, axis) is None:
            return
        bounds = part.bounds()
        for mark in self._coming(part, axis):
            # A slide begins with its box, which may stand out before the front edge.
            low = mark.at if mark.kind == "ware" and axis == 1 else bounds.low[axis]
            if low - SAME < mark.at < bounds.high[axis] + SAME:
                yield mark

    def _coming(self, part: Part, axis: int) -> Iterator[Mark]:
        for joint in self.joints.get(part.ref, []):
            other = self.unit.part(_other(part, joint))
            alike = TRAITS[part.role].of is TRAITS[other.role].of
            bare = {part.role, other.role} & _TOLD_BY_THEMSELVES
            if alike and not bare and joint.kind not in {JointKind.SLIDING, JointKind.HINGED}:
                yield from _board(part, other, axis, joint.kind is JointKind.RESTING)
            if joint.kind is JointKind.HINGED and axis == 2:
                yield from self._knuckles(joint)
        for ref, slides in self.slides.items():
            if part.ref == ref or part.ref in slides.carriers:
                side = self.unit.part(ref)
                face = facing(part, side) or facing(part, self.unit.part(slides.carriers[0]))
                yield from (
                    replace(each, face=face)
                    for each in _slide(side, slides, axis, on_side=part.ref == ref)
                )

    def _knuckles(self, joint: Joint) -> Iterator[Mark]:
        for places in self.knuckles.get(joint.second, ()):
            for at, side in zip(places, SIDES[2], strict=True):
                yield Mark(at, (joint.second,), "hinge knuckle", f"{side} end", kind="ware")


def meetings_of(unit: Unit) -> Meetings:
    """All that a unit's rods ask of its joints, clearances and fittings."""
    joints: dict[str, list[Joint]] = {}
    for joint in unit.joints:
        for ref in (joint.first, joint.second):
            joints.setdefault(ref, []).append(joint)
    knuckles: dict[str, list[tuple[float, float]]] = {}
    pins = {
        ref: each.hinge for each in unit.motions if isinstance(each, Swing) for ref in each.refs
    }
    for fitting in unit.fittings:
        if place := _knuckle(unit, fitting, pins.get(fitting.ref)):
            knuckles.setdefault(fitting.ref, []).append(place)
    return Meetings(unit, joints, slides_of(unit), knuckles)


def facing(part: Part, other: Part) -> Surface | None:
    """The face of a part that another one lies before; None where it lies beside the part."""
    across = next((axis for axis in range(3) if along(part, axis) == 2), None)
    if across is None:
        return None
    own, its = part.bounds(), other.bounds()
    below = its.low[across] < own.low[across] - TOUCH
    above = its.high[across] > own.high[across] + TOUCH
    if below is above:
        return None
    return Surface.at(2, above is (part.placement.thickness[across] > 0))


def _board(part: Part, other: Part, axis: int, resting: bool) -> Iterator[Mark]:
    """The two ends of a board that meets a part and doesn't reach past it at both."""
    if along(other, axis) is None:
        return
    bounds, its = part.bounds(), tuple(ends(other, axis))
    if its[0].at < bounds.low[axis] + SAME and its[-1].at > bounds.high[axis] - SAME:
        return
    face = facing(part, other)
    kind: Kind = "board" if along(other, axis) == 2 else "edge"
    detail = "on pins" if resting else ""
    for each in (its[0], its[-1]):
        yield replace(each, detail=detail, face=face, kind=kind)


def _slide(side: Part, slides: Slides, axis: int, *, on_side: bool) -> Iterator[Mark]:
    """The lines of a slide for a drawer's side.  It is fixed along the middle of the side, where
    the set-out has the screws of its joint."""
    bounds, of = side.bounds(), (side.ref,)
    if axis == 1 and not on_side:
        yield Mark(bounds.low[1], of, "slide", "front end", kind="ware")
        yield Mark(bounds.high[1], of, "slide", "rear end", kind="ware")
    if axis == 2 and slides.kind == "side":
        middle = bounds.centre[2]
        yield Mark(middle, of, "slide", "middle line", kind="ware")
        if slides.height is not None:
            yield Mark(middle - slides.height / 2, of, "slide", "lower edge", kind="ware")
    if axis == 2 and slides.kind == "under" and not on_side:
        yield Mark(bounds.low[2], of, "slide", "lower edge of the box over it", kind="ware")


def _knuckle(
    unit: Unit, fitting: Fitting, pin: tuple[float, float] | None
) -> tuple[float, float] | None:
    """The lower and the upper end of a butt hinge's knuckle: it stands on the pin of its door."""
    if pin is None or len(fitting.shapes) != 1 or not isinstance(fitting.shapes[0], Rod):
        return None
    shape, place = fitting.shapes[0], unit.part(fitting.ref).placement
    one, other = place.to_unit(shape.start), place.to_unit(shape.end)
    for end in (one, other):
        if max(abs(end[0] - pin[0]), abs(end[1] - pin[1])) > TOUCH:
            return None
    return min(one[2], other[2]), max(one[2], other[2])


def _other(part: Part, joint: Joint) -> str:
    return joint.second if joint.first == part.ref else joint.first


def _stands_at(part: Part, height: float) -> bool:
    bounds = part.bounds()
    return bounds.low[2] <= height <= bounds.high[2]
