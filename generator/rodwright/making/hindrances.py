"""What stands in a part's way out, by its shape and by what its joints allow."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator, Set

from rodwright.geometry import Box, Vector, dot, times
from rodwright.making.bodies import body_of, turned
from rodwright.making.closing import Axes, closes_along
from rodwright.making.sweeping import Sweeps
from rodwright.unit import Joint, JointKind, Slide, Swing, Unit
from rodwright.unit.directions import DOWN

LONG_SLIDE = 50.0
"""mm.  A glued tongue isn't driven farther than this along its channel where there is another way:
it wipes the glue off (common practice, no source)."""

_ALONG = 1 - 1e-6
_DRY = (
    JointKind.GROOVE,
    JointKind.FLOATING,
    JointKind.BUTTONED,
    JointKind.STANDING,
    JointKind.RESTING,
    JointKind.SLIDING,
    JointKind.HINGED,
    JointKind.CLIPPED,
)
_CHANNELS = (JointKind.HOUSING, JointKind.TONGUE)


class Hindrances:
    """All that keeps a unit's parts from leaving each other; asked again and again."""

    def __init__(self, unit: Unit) -> None:
        self.unit = unit
        bodies = {part.ref: body_of(part) for part in unit.parts}
        swings = [motion for motion in unit.motions if isinstance(motion, Swing)]
        self._doors = [frozenset(swing.refs) for swing in swings]
        for swing in swings:
            for ref in swing.refs:
                bodies[_open(ref)] = turned(bodies[ref], swing.hinge, swing.angle)
        self.sweeps = Sweeps(bodies)
        self.joints: dict[str, list[Joint]] = defaultdict(list)
        """Those of each part, in the unit's order."""
        self._locks: dict[str, list[tuple[str, Axes]]] = defaultdict(list)
        """Of each part the others that it leaves along certain directions only."""
        for joint in unit.joints:
            for ref in (joint.first, joint.second):
                self.joints[ref].append(joint)
            for ref, other, axes in self._locked(joint):
                self._locks[ref].append((other, axes))

    @property
    def axes(self) -> list[Vector]:
        """The directions in which joints close, each once."""
        return list(
            dict.fromkeys(
                axis for locks in self._locks.values() for _, axes in locks for axis in axes
            )
        )

    def of(self, refs: Collection[str], standing: Iterable[str], away: Vector) -> set[str]:
        """Which of the parts ``standing`` keep others from leaving together along ``away``.

        A door that is hung is opened where that clears the way.
        """
        others = set(standing)
        locked = {
            other
            for ref in refs
            for other, axes in self._locks[ref]
            if other in others and not any(dot(axis, away) > _ALONG for axis in axes)
        }
        found = self._in_the_way(refs, others - locked, away)
        for door in self._to_open(refs, others, away, found):
            found -= door
        return found | locked

    def opened(self, refs: Collection[str], standing: Iterable[str], away: Vector) -> list[str]:
        """The parts of those doors that have to stand open as others leave."""
        others = set(standing)
        found = self._in_the_way(refs, others, away)
        return [ref for door in self._to_open(refs, others, away, found) for ref in sorted(door)]

    def _in_the_way(self, refs: Collection[str], others: Set[str], away: Vector) -> set[str]:
        left = sorted(others)
        return {each for ref in refs for each in self.sweeps.in_the_way(ref, left, away)}

    def _to_open(
        self, refs: Collection[str], others: Set[str], away: Vector, found: Set[str]
    ) -> list[frozenset[str]]:
        """Doors in the way, shut, that are out of it when they are opened."""
        return [
            door
            for door in self._doors
            if door & found
            and door <= others
            and not self._in_the_way(refs, {_open(ref) for ref in door}, away)
        ]

    def slide(self, joint: Joint, away: Vector) -> float:
        """How far (mm) two parts slide in or along each other as one leaves along ``away``.

        Nothing is minded of what isn't glued: panels and backs are slid into their grooves dry.
        """
        if joint.kind in _DRY:
            return 0.0
        spans = [self.sweeps.span(ref, away) for ref in (joint.first, joint.second)]
        return max(0.0, min(high for _, high in spans) - max(low for low, _ in spans))

    def centre(self, refs: Iterable[str]) -> Vector:
        """The middle of the box round some parts."""
        return Box.of_boxes(self.unit.part(ref).bounds() for ref in refs).centre

    def drags(self, joint: Joint, away: Vector) -> bool:
        """Whether that is farther along a glued channel than a maker would drive it."""
        return joint.kind in _CHANNELS and self.slide(joint, away) > LONG_SLIDE

    def _locked(self, joint: Joint) -> Iterator[tuple[str, str, Axes]]:
        """A part of a joint, the other, and the directions in which the first can leave it."""
        first, second = joint.first, joint.second
        if joint.kind is JointKind.RESTING:
            level = tuple(way for way in _SIX if dot(way, DOWN) < _ALONG)
            yield second, first, level
            yield first, second, tuple(times(way, -1.0) for way in level)
            return
        axes = closes_along(self.unit, joint, self.sweeps)
        if axes is None:
            return
        if joint.kind is JointKind.SLIDING:
            drawer = next(
                motion.refs
                for motion in self.unit.motions
                if isinstance(motion, Slide) and {first, second} & set(motion.refs)
            )
            out, stays = (first, second) if first in drawer else (second, first)
            yield out, stays, axes
            yield stays, out, tuple(times(axis, -1.0) for axis in axes)
            return
        both = (*axes, *(times(axis, -1.0) for axis in axes))
        yield first, second, both
        yield second, first, both


def _open(ref: str) -> str:
    """What a part of a door is called where it stands open."""
    return f"{ref} (open)"


_SIX: Axes = tuple(
    (x, y, z) for x, y, z in ((-1, 0, 0), (1, 0, 0), (0, -1, 0), (0, 1, 0), (0, 0, -1), (0, 0, 1))
)
