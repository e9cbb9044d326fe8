"""Where two parts meet, and what is cut into them there.

All in the unit frame, mm; parts stand square to it.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

from rodwright import geometry
from rodwright.geometry import TOUCH, Box, Vector
from rodwright.setout import cuts
from rodwright.setout.bench import Bench
from rodwright.setout.setting import Setting
from rodwright.unit import JointKind, Part, Surface
from rodwright.wishes.joints import JointSpec


@dataclass(frozen=True, slots=True)
class Meeting:
    """The patch where a part (``second``) meets a surface of another (``first``).

    ``axis`` is square to that surface and ``into`` (1 or -1) the direction along it from the
    second into the first; the surface lies at ``plane`` and the second reaches ``reach`` mm
    past it.  The patch runs ``low`` to ``high`` along ``run``, its longer way, and ``left``
    to ``right`` along ``across``.  ``through`` and ``behind`` are the depths of the first and
    of the second along ``axis``, from the plane on.
    """

    first: str
    second: str
    axis: int
    into: int
    run: int
    across: int
    plane: float
    reach: float
    low: float
    high: float
    left: float
    right: float
    through: float
    behind: float

    @property
    def length(self) -> float:
        """How long the patch is."""
        return self.high - self.low

    @property
    def thickness(self) -> float:
        """How thick the patch is: the thinner way."""
        return self.right - self.left

    @property
    def middle(self) -> float:
        """Half-way through the thickness, along ``across``."""
        return (self.left + self.right) / 2

    def point(self, along: float, across: float, deep: float = 0.0) -> Vector:
        """A point ``deep`` mm past the plane into the first (negative: in the second)."""
        place = {self.run: along, self.across: across, self.axis: self.plane + self.into * deep}
        return (place[0], place[1], place[2])

    def way(self, sign: int = 1) -> Vector:
        """The direction from the second into the first, or back (-1)."""
        return geometry.along(self.axis, float(self.into * sign))

    def box(
        self, along: tuple[float, float], across: tuple[float, float], deep: tuple[float, float]
    ) -> Box:
        """The box between two places along each of the three ways."""
        one = self.point(along[0], across[0], deep[0])
        other = self.point(along[1], across[1], deep[1])
        return Box.from_corners(one, other)


@dataclass(frozen=True, slots=True)
class Work:
    """One joint being made: the wish, and the meeting; the setting is at the wish.

    ``present`` are the refs of all parts that stand there while it is made, ``layers`` those of
    parts that lie on the second and meet the first beside it.
    """

    setting: Setting
    wish: JointSpec
    meeting: Meeting
    present: Collection[str]
    layers: tuple[str, ...]

    @property
    def bench(self) -> Bench:
        """The bench that the two lie on."""
        return self.setting.bench

    @property
    def first(self) -> Part:
        """The part that carries the joint."""
        return self.bench.parts[self.meeting.first]

    @property
    def second(self) -> Part:
        """The part that comes to it."""
        return self.bench.parts[self.meeting.second]

    def refuse(self, key: str, message: str, remedy: str) -> None:
        """Note that the joint can't be made, once for all meetings that say the same."""
        given = key != "joint" and key in self.wish.model_fields_set
        place = self.setting.at(key) if given else self.setting
        place.problems.add_once(place.where, message, remedy)

    def say(self, length: float) -> str:
        """A length (mm) as the maker says it."""
        return self.setting.say(length)

    def at_least(self, length: float) -> str:
        """A length (mm) that is enough, as the maker says it."""
        return self.setting.at_least(length)

    def at_end(self, part: Part) -> bool:
        """Whether it is an end of the part that meets, so that fixings go in along its length."""
        return abs(part.placement.length[self.meeting.axis]) > 0.5


def find_meeting(bench: Bench, first: str, second: str, clear: Box | None = None) -> Meeting:
    """How two parts on the bench meet, by their blanks, or by what is ``clear`` of the second's.

    Raises:
        ValueError: they don't touch along a face, an edge or an end.
    """
    one, other = bench.bounds(first), clear or bench.bounds(second)
    patch = one.contact(other)
    if patch is None:
        raise ValueError(f"{first} and {second} were set out apart")
    extents = patch.size

    def beyond(i: int) -> tuple[float, float]:
        """How far the second sticks out of the first at either side."""
        return one.low[i] - other.low[i], other.high[i] - one.high[i]

    axis = min(range(3), key=lambda i: (extents[i] > TOUCH, max(beyond(i)) <= TOUCH, extents[i]))
    below, above = beyond(axis)
    into = 1 if below > above else -1
    run, across = sorted((i for i in range(3) if i != axis), key=lambda i: -extents[i])
    return Meeting(
        first,
        second,
        axis,
        into,
        run,
        across,
        plane=one.low[axis] if into > 0 else one.high[axis],
        reach=max(extents[axis], 0.0),
        low=patch.low[run],
        high=patch.high[run],
        left=patch.low[across],
        right=patch.high[across],
        through=one.size[axis],
        behind=other.size[axis] - max(extents[axis], 0.0),
    )


def surface_towards(part: Part, axis: int, sign: int) -> Surface:
    """The surface of a part that looks along an axis of the unit frame."""
    return cuts.entered(part, geometry.along(axis, -sign))


def cut_channel(bench: Bench, ref: str, box: Box, axis: int, into: int, use: str) -> JointKind:
    """Cut ``box`` (unit frame) into a part from the surface that ``into`` along ``axis`` enters;
    what joint that makes."""
    working = cuts.channel(bench.parts[ref], box, geometry.along(axis, into), use)
    bench.work(ref, working)
    return {"rebate": JointKind.REBATE, "housing": JointKind.HOUSING}.get(
        working.kind, JointKind.GROOVE
    )


def cut_step(bench: Bench, ref: str, box: Box, axis: int, into: int, across: int) -> None:
    """Rebate ``box`` (unit frame) off the end or edge of a part that looks along ``axis``.

    The step is taken off the face that it reaches along ``across``.
    """
    out, over = geometry.along(axis, into), geometry.along(across, 1)
    bench.work(ref, cuts.step(bench.parts[ref], box, out, over, "tongue"))
