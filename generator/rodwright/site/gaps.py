"""The gap round a unit that stands in its opening: packers, scribes, and what bridges the rest.

Lengths in mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import ceil

from rodwright.parts import OpeningShape, Quadrilateral
from rodwright.site.fit import edge_at

CAULK_LIMIT = 6.0
"""The widest gap that a bead of caulk bridges without sinking (common practice, no source:
about 5-6 mm); beyond it, a cover strip or a scribe."""
_FROM_END = 100.0
"""From a corner to the first fixing point (common practice, no source)."""
_NEGLIGIBLE = 0.5
"""Less than this is left unpacked."""

SIDES = ("left", "right", "top", "bottom")


@dataclass(frozen=True, slots=True)
class Gap:
    """The gap at one place: along ``side`` of the unit, ``at`` from its lower or left end."""

    side: str
    plane: str
    at: float
    gap: float


@dataclass(frozen=True, slots=True)
class Packing:
    """The packers at one fixing point, thickest first; ``left_over`` is what they don't fill
    (negative where they are thicker than the gap)."""

    gap: Gap
    packers: tuple[float, ...]

    @property
    def left_over(self) -> float:
        """The gap less the packers."""
        return self.gap.gap - sum(self.packers)


@dataclass(frozen=True, slots=True)
class Closing:
    """How the gap along one side is closed at the front.

    ``start`` and ``end`` are the gap at the side's lower or left end and at the other,
    ``reach`` how far the face frame reaches past the carcass there.  ``rest`` is the widest
    gap that the frame leaves, ``overlap`` the least by which it reaches past the gap (one of
    the two is 0).  A scribe is ripped to ``strip`` and planed to the taper, ``cut`` at most.
    """

    side: str
    start: float
    end: float
    reach: float

    @property
    def rest(self) -> float:
        """The widest gap that is left beside the face frame."""
        return max(0.0, max(self.start, self.end) - self.reach)

    @property
    def overlap(self) -> float:
        """How far the face frame reaches past the gap where it does so least."""
        return max(0.0, self.reach - max(self.start, self.end))

    @property
    def strip(self) -> float:
        """Width to rip a scribe to: the gap at its widest."""
        return max(self.start, self.end)

    @property
    def cut(self) -> float:
        """The most that is planed off that strip."""
        return abs(self.start - self.end)

    @property
    def trim(self) -> float:
        """The most to be scribed off a face frame that reaches past the gap."""
        return max(0.0, self.reach - min(self.start, self.end))

    @property
    def remedy(self) -> str:
        """What closes the gap: `frame`, `caulk` or `scribe`."""
        if self.rest <= _NEGLIGIBLE:
            return "frame"
        return "caulk" if self.rest <= CAULK_LIMIT + 1e-6 else "scribe"


def gap_at(corners: Quadrilateral, size: tuple[float, float], side: str, at: float) -> float:
    """The gap between a plane and a unit of this width and height, ``at`` along its side.

    Measured level at the sides, plumb above and below; negative where they cross.
    """
    width, height = size
    if side == "left":
        return -edge_at(corners, "left wall", at)
    if side == "right":
        return edge_at(corners, "right wall", at) - width
    if side == "top":
        return edge_at(corners, "top", at) - height
    return -edge_at(corners, "floor", at)


def gap_map(shape: OpeningShape, size: tuple[float, float]) -> tuple[Gap, ...]:
    """The gap at both ends and the middle of every side, in every plane that was measured."""
    return tuple(
        Gap(side, plane, at, gap_at(corners, size, side, at))
        for plane, corners in shape.planes.items()
        for side in SIDES
        for at in _ends_and_middle(_length(side, size))
    )


def packing(
    shape: OpeningShape, size: tuple[float, float], stocked: Sequence[float], spacing: float
) -> tuple[Packing, ...]:
    """The packers at every fixing point of both sides and under the unit.

    ``spacing`` is the largest distance between fixing points.  The top is not packed: it
    must be free to come out.
    """
    return tuple(
        Packing(gap, packers(gap.gap, stocked))
        for plane, corners in shape.planes.items()
        for side in ("left", "right", "bottom")
        for at in fixing_points(_length(side, size), spacing)
        for gap in (Gap(side, plane, at, gap_at(corners, size, side, at)),)
    )


def fixing_points(length: float, spacing: float) -> tuple[float, ...]:
    """Places along a side: near both ends, and between them at most ``spacing`` apart."""
    start = min(_FROM_END, length / 4)
    steps = max(1, ceil((length - 2 * start) / spacing - 1e-9))
    step = (length - 2 * start) / steps
    return tuple(start + number * step for number in range(steps + 1))


def packers(gap: float, stocked: Sequence[float]) -> tuple[float, ...]:
    """Packers for a gap: the one nearest it, on top of thickest ones where one isn't enough.

    None for a gap that half the thinnest packer is nearer to.
    """
    ordered = sorted(stocked)
    chosen: list[float] = []
    while gap > ordered[-1] + ordered[0] / 2:
        chosen.append(ordered[-1])
        gap -= ordered[-1]
    nearest = min((0.0, *ordered), key=lambda each: (abs(each - gap), each))
    return (*chosen, nearest) if nearest else tuple(chosen)


def closings(
    corners: Quadrilateral, size: tuple[float, float], reach: dict[str, float]
) -> Iterator[Closing]:
    """How the front's gaps at the sides and the top are closed; ``reach`` is how far the face
    frame reaches past the carcass at each."""
    for side in ("left", "right", "top"):
        ends = (0.0, _length(side, size))
        start, end = (gap_at(corners, size, side, at) for at in ends)
        yield Closing(side, start, end, reach.get(side, 0.0))


def _length(side: str, size: tuple[float, float]) -> float:
    return size[1] if side in ("left", "right") else size[0]


def _ends_and_middle(length: float) -> tuple[float, float, float]:
    return (0.0, length / 2, length)
