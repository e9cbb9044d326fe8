"""The survey sheet: everything that is known of an opening, and of the unit in it."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.lengths import LengthUnit
from rodwright.opening.adjustment import Plane
from rodwright.opening.cautions import CAUTIONS, Caution
from rodwright.opening.closings import Closing
from rodwright.opening.doubts import Doubt
from rodwright.opening.fit import Spare
from rodwright.opening.frames import FittedFrame
from rodwright.opening.gaps import Gap, Packing, Standing
from rodwright.opening.silhouettes import Silhouette, Sloped
from rodwright.opening.survey import Survey
from rodwright.problems import Problem
from rodwright.unit import Opening, OpeningShape


@dataclass(frozen=True, slots=True)
class Gain:
    """What another reading would settle: more width and height that surely go in, mm."""

    reading: str
    width: float
    height: float


@dataclass(frozen=True, slots=True)
class FitSheet:
    """How a unit goes into its opening: its carcass's width and height, what is left, and how
    it is packed, closed and framed.  ``stands`` is what it stands on, ``fall`` the widest gap
    under that: how far the floor falls away from its high spot.  ``sloped`` is a sloping ceiling
    over it, ``open_sides`` where it leaves more than any strip closes, ``frame_note`` why there
    are no figures of a frame.  mm, unit frame."""

    size: tuple[float, float]
    opening: Opening
    shape: OpeningShape
    survey: Survey
    spare: Spare
    gaps: tuple[Gap, ...]
    packing: tuple[Packing, ...]
    closings: tuple[Closing, ...]
    frame: FittedFrame | None
    gains: tuple[Gain, ...]
    stands: Standing
    fall: Gap
    sloped: Sloped | None = None
    open_sides: tuple[str, ...] = ()
    frame_note: str = ""

    def outline(self, plane: str) -> Silhouette:
        """The unit's outline in one plane of the opening."""
        return Silhouette(*self.size, self.sloped.planes.get(plane) if self.sloped else None)


@dataclass(frozen=True, slots=True)
class SurveySheet:
    """Everything that is known of an opening.

    ``fit`` is None where readings can't be right: they are in ``doubts``, and ``problems``
    say so with their places.  Where the wishes make no unit, ``problems`` say why, ``fit`` is of a
    plain box of its size, and ``not_shown`` says what hangs on more than that.
    """

    title: str
    unit: LengthUnit
    planes: tuple[Plane, ...]
    doubts: tuple[Doubt, ...]
    problems: tuple[Problem, ...]
    fit: FitSheet | None
    not_shown: str = ""
    cautions: tuple[Caution, ...] = CAUTIONS
