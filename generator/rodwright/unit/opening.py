"""The opening that a unit is made for, as measured: plain data; mm, unit frame."""

from __future__ import annotations

from dataclasses import dataclass

Quadrilateral = tuple[
    tuple[float, float], tuple[float, float], tuple[float, float], tuple[float, float]
]
"""Corners (x, z) in mm: bottom left, bottom right, top right, top left."""


@dataclass(frozen=True, slots=True)
class LinePoint:
    """A point on the line of a wall, a floor or a top: how far ``along`` it (z of a wall, x of a
    floor or top) and where it lies ``across`` (x of a wall, z of a floor or top); mm.

    ``error`` is the bound on the gap between it and the unit, nineteen times in twenty.
    """

    along: float
    across: float
    error: float = 0.0


EdgeLine = tuple[LinePoint, ...]
"""A wall, floor or top from below or from the left: straight from point to point."""


@dataclass(frozen=True, slots=True)
class OpeningPlane:
    """One plane of an opening: its corners, and the lines of its four edges through what was
    read between them.  The lines begin and end at the corners."""

    corners: Quadrilateral
    left: EdgeLine
    right: EdgeLine
    bottom: EdgeLine
    top: EdgeLine

    @classmethod
    def straight(cls, corners: Quadrilateral) -> OpeningPlane:
        """A plane with straight edges, known without error."""
        a, b, c, d = corners
        return cls(
            corners,
            (LinePoint(a[1], a[0]), LinePoint(d[1], d[0])),
            (LinePoint(b[1], b[0]), LinePoint(c[1], c[0])),
            (LinePoint(*a), LinePoint(*b)),
            (LinePoint(*d), LinePoint(*c)),
        )

    def line(self, side: str) -> EdgeLine:
        """The line at a unit's `left`, `right`, `bottom` or `top`."""
        return {"left": self.left, "right": self.right, "bottom": self.bottom, "top": self.top}[
            side
        ]


@dataclass(frozen=True, slots=True)
class OpeningShape:
    """The likeliest shape of an opening, round the unit that stands in it; unit frame, mm.

    ``front`` and ``rear`` are its planes (``rear`` of None: not measured apart).
    ``least_width`` and ``least_height`` are what surely goes in, the readings being as
    uncertain as they are.  ``overlap`` is how far a face frame is to reach past the gaps.
    """

    front: OpeningPlane
    rear: OpeningPlane | None
    least_width: float
    least_height: float
    overlap: float = 0.0

    @property
    def planes(self) -> dict[str, OpeningPlane]:
        """The planes that were measured, by name."""
        return {"front": self.front} | ({"rear": self.rear} if self.rear else {})


@dataclass(frozen=True, slots=True)
class Contradiction:
    """A reading of one plane that is ``off`` mm more than the others say (less than 0: less):
    more than a careful reading errs, though not so much that it can't be right."""

    plane: str
    reading: str
    off: float


@dataclass(frozen=True, slots=True)
class OpeningReadings:
    """What was read of an opening, for the checks: the tightest of each on the tape (mm; depth
    None where none was read), how many widths and heights of the front, the edges of the front
    whose plumb or level was read, and what contradicts the rest."""

    width: float
    height: float
    depth: float | None
    widths: int
    heights: int
    levelled: tuple[str, ...] = ()
    contradictions: tuple[Contradiction, ...] = ()


@dataclass(frozen=True, slots=True)
class Opening:
    """The opening a unit is made for: width and height it can use, and depth, in mm.

    ``depth`` is None where it was not measured, ``shape`` and ``readings`` where nothing but
    sizes is known.  ``front`` is the y of the plane in which the walls beside it end, unit frame.
    """

    width: float
    height: float
    depth: float | None
    shape: OpeningShape | None = None
    front: float | None = None
    readings: OpeningReadings | None = None

    @property
    def as_read(self) -> tuple[float, ...]:
        """The tightest width and height on the tape, or what it can use where only sizes are
        known, and its depth where that is known; mm."""
        read = self.readings or self
        across = (read.width, read.height)
        return across if self.depth is None else (*across, self.depth)
