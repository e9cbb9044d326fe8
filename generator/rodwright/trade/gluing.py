"""Glue and clamps: how long there is, how long it takes, how many; minutes and mm.

Times of PVA glue are those of the guide at https://www.leevalley.com, Working with PVA glues.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from rodwright.trade.sources import Figure, Source

PRACTICE = Source("common practice, no source")
_GUIDE = Source(
    "Lee Valley, Working with PVA glues: open assembly 10 to 20 minutes, clamped 30 to 90, full "
    "strength after 24 hours"
)

OPEN_TIME = Figure(10.0, "min", _GUIDE)
"""From the first glue to the last clamp with ordinary white or yellow (PVA) glue: the least of what
the guide gives; less in a warm, dry room."""
SLOW_TIME = Figure(20.0, "min", PRACTICE)
"""The same with a slow-setting glue (extended PVA, liquid hide, urea, epoxy); the tin comes first.
Common practice, no source."""
CLAMPED = (30.0, 90.0)
"""Minutes in the clamps, PVA, least and most; that guide."""
FULL_STRENGTH = Figure(24.0, "h", _GUIDE)
"""Before it is worked or loaded."""

_JOINT, _METRE, _CLAMP = 0.5, 0.5, 0.25
"""Minutes that one person takes to spread glue in a joint and close it, for each metre of glue
line, and for each clamp; common practice, no source."""

SPACING = 200.0
"""From clamp to clamp along a glued edge, mm; common practice, no source."""
ROW_SPACING = 400.0
"""From clamp to clamp along the end of a panel in its housing, a stiff caul under them, mm; common
practice, no source."""
PAD = 20.0
"""Thickness of each of the two pads or cauls under a clamp, mm; common practice, no source."""
AREA_SPACING = 150.0
"""From clamp to clamp round and over boards glued face to face, mm; common practice, no source."""


@dataclass(frozen=True, slots=True)
class GlueTime:
    """How long a glue-up takes one person, in minutes, and what that asks for."""

    minutes: float

    @classmethod
    def of(cls, joints: int, metres: float, clamps: int) -> GlueTime:
        """So many joints with so long a glue line in all, and so many clamps."""
        return cls(_JOINT * joints + _METRE * metres + _CLAMP * clamps)

    @property
    def quick(self) -> bool:
        """Whether ordinary glue gives time enough."""
        return self.minutes <= OPEN_TIME.value

    @property
    def slow(self) -> bool:
        """Whether slow-setting glue does."""
        return self.minutes <= SLOW_TIME.value


def clamps_along(length: float, spacing: float) -> int:
    """Clamps along a glue line (mm), each pressing ``spacing`` of it, and no fewer than two; one
    alone on a line shorter than half of it."""
    if length < spacing / 2:
        return 1
    return max(2, ceil(length / spacing - 1e-9))
