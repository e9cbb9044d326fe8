"""What to mind at the opening itself; common practice, no source."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Caution:
    """What may hurt someone, and what to do about it."""

    danger: str
    remedy: str


STRUCTURE = Caution(
    "the wall round the opening may carry load",
    "Never widen or notch it without a structural engineer's word; local codes come first.",
)
SERVICES = Caution(
    "there may be cables and pipes in the walls",
    "Find them before drilling; leave wiring, gas and water to licensed people.",
)
OLD_MATERIALS = Caution(
    "old paint may hold lead; old boards, tiles and textured coatings may hold asbestos",
    "Have them tested before sanding, cutting or drilling, and follow local rules.",
)
CAUTIONS = (STRUCTURE, SERVICES, OLD_MATERIALS)
