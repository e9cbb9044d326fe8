"""What cuts through a whole unit leave of its parts and joints, worked out apart from the bench."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Set
from dataclasses import dataclass, replace

from rodwright.unit import Joint, Part, Working


@dataclass(frozen=True, slots=True)
class Workpiece:
    """A part and what is cut into it so far."""

    part: Part
    workings: tuple[Working, ...] = ()

    def worked(self, *workings: Working) -> Workpiece:
        """The same with more cut into it."""
        return replace(self, workings=(*self.workings, *workings))


@dataclass(frozen=True, slots=True)
class Recut:
    """What is left after a cut: the parts that it changed, by their refs, all joints, and the refs
    of the parts that are gone."""

    kept: Mapping[str, Workpiece]
    joints: tuple[Joint, ...]
    gone: Set[str] = frozenset()


def rejoined(
    joints: Iterable[Joint], left_of: Callable[[Joint], Joint | None]
) -> tuple[Joint, ...]:
    """What a cut leaves of joints; ``left_of`` says of each what that is, None where it goes."""
    return tuple(left for joint in joints if (left := left_of(joint)) is not None)
