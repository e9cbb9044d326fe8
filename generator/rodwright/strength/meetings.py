"""Where two joined parts meet, as far as their strength asks; mm, unit frame."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.geometry import TOUCH, Box
from rodwright.unit import Joint, Part, Unit


@dataclass(frozen=True, slots=True)
class Meeting:
    """The patch where the second part of a joint meets the first.

    ``axis`` is square to the surface that is met, and ``into`` (1 or -1) the way along it from the
    second into the first.  ``patch`` lies on that surface, and is as deep along ``axis`` as the
    second ``reach``es into the first; ``through`` and ``behind`` are how deep the first and the
    second are behind it.  ``run`` is the longer way along the patch, ``across`` the other.
    """

    first: Part
    second: Part
    axis: int
    into: int
    patch: Box
    reach: float
    through: float
    behind: float
    run: int
    across: int

    @property
    def length(self) -> float:
        """How long the patch is."""
        return self.patch.size[self.run]

    @property
    def thickness(self) -> float:
        """How thick the patch is: the thinner way."""
        return self.patch.size[self.across]


def meeting_of(unit: Unit, joint: Joint) -> Meeting | None:
    """Where the parts of a joint meet; None where their boxes only touch at an edge, or not, or
    where one lies askew, so that its box says nothing of where it meets."""
    first, second = unit.part(joint.first), unit.part(joint.second)
    if not (_square(first) and _square(second)):
        return None
    one, other = first.bounds(), second.bounds()
    patch = one.contact(other)
    if patch is None:
        return None
    size = patch.size

    def beyond(i: int) -> tuple[float, float]:
        """How far the second sticks out of the first at either side."""
        return one.low[i] - other.low[i], other.high[i] - one.high[i]

    axis = min(range(3), key=lambda i: (size[i] > TOUCH, max(beyond(i)) <= TOUCH, size[i]))
    below, above = beyond(axis)
    run, across = sorted((i for i in range(3) if i != axis), key=lambda i: -size[i])
    if size[across] <= TOUCH:
        return None
    reach = max(size[axis], 0.0)
    return Meeting(
        first,
        second,
        axis,
        1 if below > above else -1,
        patch,
        reach,
        one.size[axis],
        other.size[axis] - reach,
        run,
        across,
    )


def grain_way(part: Part, axis: int) -> int:
    """Which way of a part lies along an axis of the unit: 0 its length, 1 its width, 2 its
    thickness."""
    return max(range(3), key=lambda way: abs(part.placement.axes[way][axis]))


def _square(part: Part) -> bool:
    return all(max(map(abs, axis)) > 1 - _ASKEW for axis in part.placement.axes)


_ASKEW = 1e-6
"""Parts whose axes are this near those of the unit lie square to it."""
