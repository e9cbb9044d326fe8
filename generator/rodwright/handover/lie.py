"""How the pieces of a row lie in the unit, and what their surfaces are called for it.

Where every piece of a row runs the same way along an axis of the part frame, the two
surfaces across that axis are named by where they lie in the unit (``bottom end``, ``front
edge``, ``left face``), and figures run from its left, front or bottom.  Where the pieces
don't agree, or lie askew, the part frame's own names and figures stay.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from rodwright.parts import (
    Bevel,
    Easing,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    Part,
    Placement,
    PocketHole,
    Rebate,
    Surface,
    Vector,
    Working,
)

OWN_WORDS = (
    "near end, face edge and reverse (opposite: far end, back edge and face) are a piece's own "
    "words, for rows whose pieces lie different ways: its length is measured from the near end, "
    "its width from the face edge, its thickness from the reverse; how it lies says where they go."
)
"""What the part frame's names mean, for readers of a list."""

LOW = (Surface.NEAR_END, Surface.FACE_EDGE, Surface.REVERSE)
HIGH = (Surface.FAR_END, Surface.BACK_EDGE, Surface.FACE)
_RUNS = ("length", "width", "thickness")
_TOWARDS = (("left", "right"), ("front", "rear"), ("bottom", "top"))
_PLACED = (
    (("left end", "right end"), ("front end", "rear end"), ("bottom end", "top end")),
    (("left edge", "right edge"), ("front edge", "rear edge"), ("lower edge", "upper edge")),
    (("left face", "right face"), ("front face", "rear face"), ("underside", "upper face")),
)
"""Names of the low and high surfaces across each part axis, by the unit axis it runs along."""


@dataclass(frozen=True, slots=True)
class Lie:
    """How equal pieces lie: for each part axis, what they agree on.

    ``along`` is the unit axis that a part axis runs along in every piece, None where they
    differ; ``turned`` is true where it runs against that unit axis.
    """

    along: tuple[int | None, int | None, int | None]
    turned: tuple[bool, bool, bool]

    def name(self, surface: Surface) -> str:
        """What a surface of a part is called, its figures as the part has them."""
        return self.low_or_high(surface.axis, surface.at_high is not self.turned[surface.axis])

    def low_or_high(self, axis: int, high: bool) -> str:
        """What the surface is called that figures across a part axis run from, or run to."""
        along = self.along[axis]
        return str((HIGH if high else LOW)[axis]) if along is None else _PLACED[axis][along][high]

    def turn(self, working: Working, size: Vector) -> Working:
        """A working with its figures run from the unit's left, front and bottom.

        For words only: along a turned axis both figures and surfaces change ends, so the
        result is true of the piece as it lies, not of the part frame.
        """

        def low(axis: int, at: float, extent: float = 0.0) -> float:
            return size[axis] - at - extent if self.turned[axis] else at

        def span(axis: int, start: float, stop: float | None) -> tuple[float, float | None]:
            if not self.turned[axis]:
                return start, stop
            return (
                0.0 if stop is None else size[axis] - stop,
                None if start <= 0 else size[axis] - start,
            )

        def other(surface: Surface) -> Surface:
            axis = surface.axis
            return (LOW if surface.at_high else HIGH)[axis] if self.turned[axis] else surface

        match working:
            case Rebate(surface, edge, _, _, start, stop) | Easing(surface, edge, _, start, stop):
                start, stop = span(3 - surface.axis - edge.axis, start, stop)
                return replace(
                    working, surface=other(surface), edge=other(edge), start=start, stop=stop
                )
            case Groove(surface, at, width, _, start, stop):
                at, (start, stop) = low(3 - surface.axis, at, width), span(0, start, stop)
                return replace(working, surface=other(surface), position=at, start=start, stop=stop)
            case Housing(surface, at, width, _, start, stop):
                at, (start, stop) = low(0, at, width), span(1, start, stop)
                return replace(working, surface=other(surface), position=at, start=start, stop=stop)
            case Notch(x, y, length, width):
                return replace(working, x=low(0, x, length), y=low(1, y, width))
            case Mitre(end, _, long):
                return replace(working, end=other(end), long=other(long))
            case Hole(surface, (along, across)):
                first, second = (axis for axis in range(3) if axis != surface.axis)
                place = (low(first, along), low(second, across))
                return replace(working, surface=other(surface), position=place)
            case Mortise(surface, (along, across), (length, width)):
                first, second = (axis for axis in range(3) if axis != surface.axis)
                place = (low(first, along, length), low(second, across, width))
                return replace(working, surface=other(surface), position=place)
            case Bevel(surface, edge):
                return replace(working, surface=other(surface), edge=other(edge))
            case PocketHole(surface, end, at):
                at = low(3 - surface.axis - end.axis, at)
                return replace(working, surface=other(surface), end=other(end), position=at)


def lie_of(parts: Sequence[Part]) -> Lie:
    """What equal pieces have in common in how they lie in the unit."""
    ways = [[_run(direction) for direction in _directions(part.placement)] for part in parts]
    common = [run[0] if len(set(run)) == 1 else None for run in zip(*ways, strict=True)]
    length, width, thickness = ((None, False) if run is None else run for run in common)
    return Lie((length[0], width[0], thickness[0]), (length[1], width[1], thickness[1]))


def describe_lie(parts: Sequence[Part]) -> tuple[str, ...]:
    """Which way equal pieces lie in the unit.

    First what all of them share (``length bottom to top, width front to rear``), then for
    each piece that isn't square to the unit as the others are where its own near end, face
    edge and face point.  A direction square to nothing is left out.
    """
    lie = lie_of(parts)
    shared = ", ".join(
        f"{_RUNS[axis]} {' to '.join(_TOWARDS[along])}"
        for axis, along in enumerate(lie.along)
        if along is not None
    )
    ways: dict[str, list[str]] = {}
    for part in parts:
        if way := _own_way(part.placement, lie):
            ways.setdefault(way, []).append(part.ref)
    said = [f"{', '.join(refs)}: {way}" for way, refs in ways.items()]
    return tuple(filter(None, (shared, *said)))


def describe_shows(parts: Sequence[Part]) -> tuple[str, ...]:
    """The surfaces of equal pieces that show."""
    lie = lie_of(parts)
    return tuple(lie.name(surface) for surface in parts[0].blank.show_surfaces)


def _own_way(placement: Placement, lie: Lie) -> str:
    said = []
    for axis, direction in enumerate(_directions(placement)):
        run = _run(direction)
        if lie.along[axis] is None and run is not None:
            along, turned = run
            # The near end and the face edge look back along their axes, the face forward.
            surface, forward = (HIGH[2], True) if axis == 2 else (LOW[axis], False)
            said.append(f"{surface} {_TOWARDS[along][forward is not turned]}")
    return ", ".join(said)


def _directions(placement: Placement) -> tuple[Vector, Vector, Vector]:
    return (placement.length, placement.width, placement.thickness)


def _run(direction: Vector) -> tuple[int, bool] | None:
    """The unit axis that a direction is parallel to, and whether it runs against it."""
    for axis, component in enumerate(direction):
        if math.isclose(abs(component), 1.0, abs_tol=1e-9):
            return axis, component < 0
    return None
