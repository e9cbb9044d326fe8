"""What to mind at the opening itself; common practice, no source."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Caution:
    """What may hurt someone, what to do about it, and both in one short line."""

    danger: str
    remedy: str
    brief: str


STRUCTURE = Caution(
    "the wall round the opening may carry load",
    "Never widen or notch it without a structural engineer's word; local codes come first.",
    "Load-bearing walls: never widen or notch one without a structural engineer.",
)
SERVICES = Caution(
    "there may be cables and pipes in the walls",
    "Find them before drilling; leave wiring, gas and water to licensed people.",
    "Cables and pipes: find them before drilling into a wall.",
)
OLD_MATERIALS = Caution(
    "old paint may hold lead; old boards, tiles and textured coatings may hold asbestos",
    "Have them tested before sanding, cutting or drilling, and follow local rules.",
    "Old paint and boards: test for lead and asbestos before sanding or drilling.",
)
CAUTIONS = (STRUCTURE, SERVICES, OLD_MATERIALS)
