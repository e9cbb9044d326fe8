"""The one datum of a part: the end, the edge and the face that all its figures run from.

The face edge is the one that lies at the front of the unit, at the bottom or at the left, and the
datum end likewise: so both sides of a carcass are measured from their front edges and bottom ends,
and what faces each other has the same figures.  Where equal pieces go different ways in the unit,
it is the piece's own face edge.  The face side is the face that shows, or if both or neither do,
the one that is worked (common practice, no source: face side and face edge are those that show).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from rodwright.geometry import TOUCH, Vector
from rodwright.handover.words import Words
from rodwright.lengths import LengthUnit
from rodwright.paper.part_sheets.figures import Stretch
from rodwright.unit import Part, Surface
from rodwright.unit.orientation import orientation_of
from rodwright.unit.surfaces import HIGH, LOW

AXES = ("x", "y", "z")
"""What the sheet calls distances from the datum end, the datum edge and the datum face."""


@dataclass(frozen=True, slots=True)
class Datum:
    """Where figures run from: ``origin`` are the surfaces where x, y and z are nought.

    Lengths in and out are mm of the part frame and of the datum; ``words`` are the piece's, in the
    unit's measure.
    """

    size: Vector
    origin: tuple[Surface, Surface, Surface]
    words: Words

    def from_datum(self, axis: int, at: float, extent: float = 0.0) -> float:
        """How far from the datum something begins that begins at ``at`` in the part frame and is
        ``extent`` long."""
        return self.size[axis] - at - extent if self.origin[axis].at_high else at

    def name(self, axis: int, *, far: bool = False) -> str:
        """What the datum surface across an axis is called, or the one opposite."""
        surface = self.origin[axis]
        return self.words.name(surface.opposite if far else surface)

    def stretch(self, axis: int, low: float, high: float) -> Stretch:
        """What reaches from ``low`` to ``high`` in the part frame, from the datum on."""
        start = self.from_datum(axis, low, high - low)
        stop = start + high - low
        return Stretch(
            self.name(axis) if start <= TOUCH else self.words.say(start),
            self.name(axis, far=True) if stop >= self.size[axis] - TOUCH else self.words.say(stop),
        )


def datum_of(pieces: Sequence[Part], unit: LengthUnit) -> Datum:
    """The datum of equal pieces, all in the frame in which they are laid to be worked."""
    blank = pieces[0].blank
    orientation = orientation_of(pieces)
    edge = HIGH[1] if orientation.along[1] is not None and orientation.turned[1] else LOW[1]
    faces = [each for each in blank.show_surfaces if each.axis == 2]
    face = faces[0] if len(faces) == 1 else Surface.FACE
    return Datum(blank.size, (LOW[0], edge, face), Words(orientation, blank.size, unit))
