"""How the pieces of a row lie in the unit, and what their surfaces are called for it.

Where every piece of a row runs the same way along an axis of the part frame, the two
surfaces across that axis are named by where they lie in the unit (``bottom end``, ``front
edge``, ``left face``).  Where the pieces don't agree, or lie askew, the part frame's own names
stay.  Figures are always the part frame's own.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from rodwright.geometry import Vector
from rodwright.unit import Part, Placement, Surface
from rodwright.unit.surfaces import HIGH, LOW

OWN_WORDS = (
    "Pieces are worked with the face that is named as up on top; x runs along the length, y across "
    "the width and z up from the lower face, in the lists as in the parts' files. Near end, face "
    "edge and face (opposite: far end, back edge and reverse) are a piece's own words, for rows "
    "whose pieces lie different ways: the face is up, x is measured from the near end, y from the "
    "face edge; how it lies says where they go."
)
"""What the lists' frame and the part frame's names mean, for readers of a list."""

_SQUARE = 1e-9
"""Components of a unit vector smaller than this are none."""
_RUNS = ("length", "width", "thickness")
_TOWARDS = (("left", "right"), ("front", "rear"), ("bottom", "top"))
_PLACED = (
    (("left end", "right end"), ("front end", "rear end"), ("bottom end", "top end")),
    (("left edge", "right edge"), ("front edge", "rear edge"), ("lower edge", "upper edge")),
    (("left face", "right face"), ("front face", "rear face"), ("underside", "upper face")),
)
"""Names of the low and high surfaces across each part axis, by the unit axis it runs along."""


@dataclass(frozen=True, slots=True)
class Orientation:
    """How equal pieces lie: for each part axis, what they agree on.

    ``along`` is the unit axis that a part axis runs along in every piece, None where they
    differ; ``turned`` is true where it runs against that unit axis.
    """

    along: tuple[int | None, int | None, int | None]
    turned: tuple[bool, bool, bool]

    def name(self, surface: Surface) -> str:
        """What a surface of the pieces is called."""
        axis = surface.axis
        along = self.along[axis]
        if along is None:
            return str(surface)
        return _PLACED[axis][along][surface.at_high is not self.turned[axis]]


def orientation_of(parts: Sequence[Part]) -> Orientation:
    """What equal pieces have in common in how they lie in the unit."""
    ways = [[_run(direction) for direction in part.placement.axes] for part in parts]
    common = [run[0] if len(set(run)) == 1 else None for run in zip(*ways, strict=True)]
    length, width, thickness = ((None, False) if run is None else run for run in common)
    return Orientation((length[0], width[0], thickness[0]), (length[1], width[1], thickness[1]))


def describe_orientation(parts: Sequence[Part]) -> tuple[str, ...]:
    """Which way equal pieces lie in the unit.

    First what all of them share, each from 0 on (``length bottom to top, width rear to front``),
    then for each piece that isn't square to the unit as the others are where its own near end, face
    edge and face point; of a direction askew, the nearest way first (``near end left and top``).
    """
    orientation = orientation_of(parts)
    shared = ", ".join(
        f"{_RUNS[axis]} {' to '.join(reversed(_TOWARDS[along]) if turned else _TOWARDS[along])}"
        for axis, (along, turned) in enumerate(
            zip(orientation.along, orientation.turned, strict=True)
        )
        if along is not None
    )
    ways: dict[str, list[str]] = {}
    for part in parts:
        if way := _own_way(part.placement, orientation):
            ways.setdefault(way, []).append(part.ref)
    said = [f"{', '.join(refs)}: {way}" for way, refs in ways.items()]
    return tuple(filter(None, (shared, *said)))


def describe_shows(parts: Sequence[Part]) -> tuple[str, ...]:
    """The surfaces of equal pieces that show."""
    orientation = orientation_of(parts)
    return tuple(orientation.name(surface) for surface in parts[0].blank.show_surfaces)


def _own_way(placement: Placement, orientation: Orientation) -> str:
    said = []
    for axis, direction in enumerate(placement.axes):
        if orientation.along[axis] is None:
            # The near end and the face edge look back along their axes, the face forward.
            surface, forward = (HIGH[2], True) if axis == 2 else (LOW[axis], False)
            ways = sorted(enumerate(direction), key=lambda way: -round(abs(way[1]), 6))
            towards = (
                _TOWARDS[along][forward is (component > 0)]
                for along, component in ways
                if abs(component) > _SQUARE
            )
            said.append(f"{surface} {' and '.join(towards)}")
    return ", ".join(said)


def _run(direction: Vector) -> tuple[int, bool] | None:
    """The unit axis that a direction is parallel to, and whether it runs against it."""
    for axis, component in enumerate(direction):
        if math.isclose(abs(component), 1.0, abs_tol=_SQUARE):
            return axis, component < 0
    return None
