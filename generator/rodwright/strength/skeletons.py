"""A carcass or a face frame as a plane frame: its parts as lines, its joints as springs.

Millimetres, newtons; seen from the front, x to the right and z up.  Each part runs along its
middle; parts meet at one point for each joint, which turns as ``turning_of`` has it.  Parts that
carry at a single joint, or that rest loose, are left out.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import pairwise
from math import inf

from rodwright.strength.carriers import GROUNDS, carriers
from rodwright.strength.frames import Bar, Frame, Spring, sway
from rodwright.strength.turning import turning_of
from rodwright.unit import FACE_FRAME, PANELS, UPRIGHTS, Joint, JointKind, Part, Role, Unit

NEAR = 40.0
"""Points of a part that lie nearer than this count as one, mm."""
FEATHER = 1e3
"""What keeps the sums from failing where nothing resists turning, N mm/rad: a frame held by this
alone folds under any load."""
_LOOSE = (JointKind.RESTING, JointKind.FLOATING)
_STANDING_UP = (*UPRIGHTS, Role.STILE, Role.LEG)


@dataclass(frozen=True, slots=True)
class Knot:
    """Where an upright line and a level one are joined, and how stiffly they turn there."""

    upright: str
    level: str
    at: tuple[float, float]
    turning: float


@dataclass(frozen=True, slots=True)
class Member:
    """A part as a line: upright or level, at ``place`` (x, or z of a level), with its modulus
    (N/mm2), the moment of inertia (mm4) of its section in the plane, and its area (mm2)."""

    ref: str
    upright: bool
    place: float
    low: float
    high: float
    modulus: float
    inertia: float
    area: float


@dataclass(frozen=True, slots=True)
class Skeleton:
    """Members and their knots, and where they stand: the members (refs) that the ground holds."""

    members: tuple[Member, ...]
    knots: tuple[Knot, ...]
    grounded: frozenset[str]

    @property
    def tops(self) -> tuple[Member, ...]:
        """The outermost uprights, that a push at the top goes into."""
        uprights = sorted((each for each in self.members if each.upright), key=lambda m: m.place)
        return (uprights[0], uprights[-1]) if len(uprights) > 1 else tuple(uprights)


def carcass_skeleton(unit: Unit) -> Skeleton:
    """The panels of a carcass, without its back."""
    parts = [part for part in unit.parts if part.role in PANELS and _square(part)]
    return _skeleton(unit, parts)


def frame_skeleton(unit: Unit) -> Skeleton:
    """Its face frame."""
    return _skeleton(
        unit, [part for part in unit.parts if part.role in FACE_FRAME and _square(part)]
    )


def stiffness(skeleton: Skeleton) -> float:
    """How stiffly it stands against a push at the top of its outermost uprights, N per mm that
    they sway; 0 where nothing ties them together."""
    skeleton = _pruned(skeleton)
    tops = skeleton.tops
    if len(tops) < 2:
        return 0.0
    frame, ends = _frame(skeleton)
    moved = sway(frame, {ends[top.ref]: (0.5, 0.0) for top in tops})
    if moved is None:
        return 0.0
    furthest = max(moved.moves[ends[top.ref]][0] for top in tops)
    return 1 / furthest if furthest > 0 else 0.0


def _square(part: Part) -> bool:
    """Whether a part stands or lies straight in the plane."""
    return max(map(abs, part.placement.length)) > 1 - 1e-6


def _skeleton(unit: Unit, parts: Iterable[Part]) -> Skeleton:
    members = {part.ref: _member(part) for part in parts}
    knots = [
        knot
        for joint in unit.joints
        if joint.first in members
        and joint.second in members
        and (knot := _knot(unit, members, joint)) is not None
    ]
    held = carriers(unit)
    grounded = {ref for ref in members if any(hold.on in GROUNDS for hold in held[ref])}
    if not grounded:
        # A face frame that the carcass carries stands where it ends.
        low = min((each.low for each in members.values() if each.upright), default=0.0)
        grounded = {each.ref for each in members.values() if each.upright and each.low < low + NEAR}
    return Skeleton(tuple(members.values()), tuple(knots), frozenset(grounded))


def _member(part: Part) -> Member:
    box = part.bounds()
    across, deep, up = box.size
    upright = part.role in _STANDING_UP
    thick = across if upright else up
    axis = 2 if upright else 0
    low, high = (box.low[axis], box.high[axis])
    place = box.centre[0 if upright else 2]
    inertia, area = deep * thick**3 / 12, deep * thick
    return Member(part.ref, upright, place, low, high, _modulus(part, axis), inertia, area)


def _modulus(part: Part, axis: int) -> float:
    """Modulus along a part's line, N/mm2; 0 where it isn't known."""
    mechanics = part.blank.stock.mechanics
    if mechanics is None:
        return 0.0
    if abs(part.placement.length[axis]) > 0.5:
        return mechanics.along.value
    return mechanics.across.value if mechanics.across is not None else mechanics.along.value / 20


def _knot(unit: Unit, members: Mapping[str, Member], joint: Joint) -> Knot | None:
    one, other = members[joint.first], members[joint.second]
    if one.upright == other.upright or joint.kind in _LOOSE:
        return None
    if joint.kind is JointKind.BUTT and not joint.fixings:
        return None
    upright, level = (one, other) if one.upright else (other, one)
    turning = turning_of(unit, joint).value
    return Knot(upright.ref, level.ref, (upright.place, level.place), turning)


def _pruned(skeleton: Skeleton) -> Skeleton:
    """Without members that bear on one point alone, which brace nothing."""
    while True:
        points: dict[str, set[float]] = {each.ref: set() for each in skeleton.members}
        for knot in skeleton.knots:
            points[knot.upright].add(round(knot.at[1], 3))
            points[knot.level].add(round(knot.at[0], 3))
        for ref in skeleton.grounded:
            points[ref].add(-inf)
        kept = tuple(
            each for each in skeleton.members if each.modulus > 0 and len(points[each.ref]) > 1
        )
        if len(kept) == len(skeleton.members):
            return skeleton
        refs = {each.ref for each in kept}
        skeleton = Skeleton(
            kept,
            tuple(each for each in skeleton.knots if {each.upright, each.level} <= refs),
            skeleton.grounded & refs,
        )


class _Places:
    """Points of the frame, and those of each member in their order along it."""

    def __init__(self) -> None:
        self.points: list[tuple[float, float]] = []
        self._known: dict[tuple[float, float], int] = {}
        self._of_member: dict[str, set[int]] = {}

    def add(self, at: tuple[float, float], *refs: str) -> int:
        """The point there, which is also one of these members."""
        key = (round(at[0], 3), round(at[1], 3))
        number = self._known.setdefault(key, len(self.points))
        if number == len(self.points):
            self.points.append(at)
        for ref in refs:
            self._of_member.setdefault(ref, set()).add(number)
        return number

    def along(self, member: Member) -> list[int]:
        """The points of a member, in their order."""
        axis = 1 if member.upright else 0
        return sorted(self._of_member.get(member.ref, ()), key=lambda i: self.points[i][axis])


def _frame(skeleton: Skeleton) -> tuple[Frame, dict[str, int]]:
    """The frame, and the highest point of each upright."""
    places = _Places()
    knotted = [(places.add(knot.at, knot.upright, knot.level), knot) for knot in skeleton.knots]
    held: set[int] = set()
    tops: dict[str, int] = {}
    for member in skeleton.members:
        if member.upright:
            held |= _ends(places, member, member.ref in skeleton.grounded)
            tops[member.ref] = places.along(member)[-1]
        elif member.ref in skeleton.grounded:
            held |= set(places.along(member))
    turns: dict[tuple[str, int], int] = {}
    bars: list[Bar] = []
    for member in skeleton.members:
        for start, stop in pairwise(places.along(member)):
            one, other = (turns.setdefault((member.ref, i), len(turns)) for i in (start, stop))
            bending, axial = member.modulus * member.inertia, member.modulus * member.area
            bars.append(Bar(start, stop, one, other, bending, axial))
    springs = [
        Spring(turns[knot.upright, i], turns[knot.level, i], max(knot.turning, FEATHER))
        for i, knot in knotted
        if (knot.upright, i) in turns and (knot.level, i) in turns
    ]
    frozen = frozenset(held)
    return Frame(
        tuple(places.points), len(turns), tuple(bars), tuple(springs), frozen, frozen
    ), tops


def _ends(places: _Places, member: Member, grounded: bool) -> set[int]:
    """Adds an upright's ends where no level lies near; what the ground holds of it."""
    near = min(NEAR, (member.high - member.low) / 3)
    heights = [places.points[i][1] for i in places.along(member)]
    if not heights or max(heights) < member.high - near:
        places.add((member.place, member.high), member.ref)
    if not heights or min(heights) > member.low + near:
        places.add((member.place, member.low), member.ref)
    return {places.along(member)[0]} if grounded else set()
