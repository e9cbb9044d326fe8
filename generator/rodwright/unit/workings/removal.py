"""What every working can be asked, and what most of them answer."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from rodwright.geometry import Vector
from rodwright.geometry.halfspaces import Plane
from rodwright.unit.surfaces import Surface


@dataclass(frozen=True, slots=True)
class Figures:
    """How large a working is, as the trade tells it; what isn't told of one is left out.

    ``across`` are its sides over a surface (mm), ``drill`` the diameter that is bored; ``depth`` is
    infinite where it goes right through; ``angle`` is in degrees, ``radius`` that of a round.
    """

    across: tuple[float, ...] = ()
    drill: float | None = None
    depth: float | None = None
    angle: float | None = None
    radius: float | None = None


class Removal:
    """Something that is taken out of a blank; ``size`` is always that blank's, mm.

    Each working says of itself, beside what stands here:

    ``bounds(size) -> Box``
        The box round all that it takes, part frame.  Where a working is placed past the
        blank its box reaches past it too; a cut that runs on outside (a mitre or a bevel, a
        bore deeper than the blank, the way of a pocket hole) is bounded by the blank.
    ``turned(turn, size) -> Self``
        The same in the frame of the turned part (:class:`rodwright.unit.workings.frames.Turn`).
    ``moved(to) -> Self | None``
        The same in another blank (:class:`rodwright.unit.workings.frames.Refit`), running out
        where it ran out; None where nothing of it is left.
    ``figures(size) -> Figures``
        How large it is, as the trade tells it.
    """

    __slots__ = ()

    word: ClassVar[str]
    """What the trade calls this kind of working."""

    @property
    def called(self) -> str:
        """What the trade calls this one: its kind, or what that kind is called for its use."""
        return self.word

    @property
    def fills_bounds(self) -> bool:
        """Whether it takes all of its bounds, so that no arithmetic and no cutter of its own is
        needed."""
        return False

    def planes(self, size: Vector) -> tuple[Plane, ...]:
        """The planes, part frame, beyond which it takes everything; their normals point there."""
        return ()

    def worked_from(self, size: Vector) -> Surface | None:
        """The face from which it is cut; None where it is cut from either, or from an edge."""
        return None

    def takes_off(self, surface: Surface, size: Vector) -> bool:
        """Whether it is a slanting cut that takes a whole end or edge off."""
        return False
