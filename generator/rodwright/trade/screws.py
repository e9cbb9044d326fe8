"""Screws and panel pins: how they are sold, how they hold, and what is drilled for them.

Lengths in mm unless they are in diameters.  Common practice, no source, unless said.
"""

from __future__ import annotations

from typing import Literal

from rodwright.lengths import LengthUnit, from_inches
from rodwright.trade.timber_classes import TIMBER_CLASSES

WOOD_SCREW = "wood screw"
"""What lists call the screws that are meant where nothing else is said."""
Grip = Literal["softwood", "hardwood", "sheet", "splitting"]
"""What a screw goes into, as far as its pilot hole asks."""
PILOTS: dict[Grip, float] = {
    "softwood": 0.7 * 2 / 3, "hardwood": 0.9 * 2 / 3, "sheet": 0.6, "splitting": 0.75,
}  # fmt: skip
"""A pilot hole's share of its screw's diameter: of the root, two thirds of it, 0.7 in softwood and
0.9 in hardwood (Wood Handbook, ch. 8, from memory); in sheets, and where edges split, common
practice, no source."""
_SPLITTING = ("mdf", "chipboard", "particle", "fibreboard", "fiberboard")
_SOFTWOODS = frozenset(
    {
        "pine", "spruce", "fir", "larch", "hemlock", "cedar", "redwood", "whitewood", "deal",
        "cypress",
    }
)  # fmt: skip
"""Woods of conifers, by a word of their names."""


def grip_of(kind: Literal["sheet", "board"], material: str) -> Grip:
    """How a material takes screws; a wood that isn't known for a softwood counts as hard."""
    material = material.lower()
    if any(name in material for name in _SPLITTING):
        return "splitting"
    if kind == "sheet":
        return "sheet"
    words = set(material.replace("-", " ").split())
    graded = material.upper() in TIMBER_CLASSES and material.startswith("c")
    return "softwood" if graded or words & _SOFTWOODS else "hardwood"


def gauge_diameter(gauge: int) -> float:
    """Diameter of the shank of a wood screw of this gauge: 0.060 in and 0.013 in for each number
    (ASME B18.6.1, from memory)."""
    return (0.060 + 0.013 * gauge) * from_inches("1")


GAUGES = {gauge_diameter(gauge): gauge for gauge in (4, 6, 8, 10, 12, 14)}
"""The gauges that are sold, by their diameters."""
DIAMETERS: dict[LengthUnit, tuple[float, ...]] = {
    "mm": (3.0, 3.5, 4.0, 4.5, 5.0, 6.0),
    "in": tuple(GAUGES),
}
"""Diameters of wood screws, from the least up."""
LENGTHS: dict[LengthUnit, tuple[float, ...]] = {
    "mm": (10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 120),
    "in": tuple(
        from_inches(each)
        for each in (
            "3/8",
            "1/2",
            "5/8",
            "3/4",
            "7/8",
            "1",
            "1 1/4",
            "1 1/2",
            "1 3/4",
            "2",
            "2 1/4",
            "2 1/2",
            "2 3/4",
            "3",
            "3 1/2",
            "4",
        )
    ),
}
"""Lengths of wood screws, from the least up."""
LEAST_THROUGH: dict[LengthUnit, float] = {"mm": 16.0, "in": from_inches("1/2")}
"""Shorter ones hold slides and the like alone, and go through no wood."""
HOLD = 7.0
"""How far a screw goes into the second part, in diameters."""
SIDE = 2.0
"""Least distance from a screw's middle to the face of the edge it goes into, in diameters."""
FROM_CORNER: dict[Grip, float] = {
    "softwood": 5.0, "hardwood": 5.0, "sheet": 5.0, "splitting": 6.0,
}  # fmt: skip
"""Least distance along an edge from a screw's middle to the corner, in diameters."""
WIDEST_PILOT: dict[Grip, float] = {
    "softwood": 2 / 3, "hardwood": 2 / 3, "sheet": 2 / 3, "splitting": 0.8,
}  # fmt: skip
"""The widest a pilot hole may be, in diameters: its root's, or where edges split a little more, or
the thread finds too little to cut."""
APART = 5.0
"""Least distance between screws along an edge, in diameters."""
FROM_END = 50.0
"""From the end of a meeting to its first screw."""
SPACING = 300.0
"""Largest distance between screws along a meeting."""
SCREWABLE = 12.0
"""Something narrower than this can't be screwed to: a screw would split it, or miss."""
MOST_THROUGH = 70.0
"""The most wood that the longest screw of the usual diameter goes through and still holds behind;
where there is more, its head is sunk in a counterbore."""
COUNTERBORE = 10.0
"""Diameter of a counterbore for the head of such a screw."""
LEAST_SLOT = 10.0
"""Length of a slot for a screw, where the wood's movement doesn't ask for more."""
STILL = 0.5
"""Movement that the play of a screw in its hole takes up."""

HANDLE_BITE = 5.0
"""How far a screw goes into a knob or handle at least."""

BACK_SPACING = 175.0
"""Greatest distance between the screws of a back."""
BACK_EDGE = 40.0
"""From the end of a line to the first screw or pin of a back."""
BACK_HOLD = 16.0
"""How far the screws of a back go into what is behind it."""

POCKET_ANGLE = 15.0
"""Between a pocket and the face, degrees."""
POCKET_DIAMETER: dict[LengthUnit, float] = {"mm": 9.5, "in": from_inches("3/8")}
"""Diameter of a pocket."""
POCKET_LENGTHS: dict[LengthUnit, tuple[tuple[float, float], ...]] = {
    "mm": ((0.0, 25.0), (16.0, 32.0), (20.0, 38.0), (26.0, 51.0), (33.0, 64.0)),
    "in": (
        (0.0, from_inches("1")),
        (16.0, from_inches("1 1/4")),
        (20.0, from_inches("1 1/2")),
        (26.0, from_inches("2")),
        (33.0, from_inches("2 1/2")),
    ),
}
"""Pocket screws: what a part has to be thicker than, and the screw's length (from memory)."""
POCKET_FLOOR = 1.0
"""Wood left before the tip of a pocket screw."""

PIN_DIAMETERS = (1.6, 1.4, 1.25, 1.0)
"""Diameters of panel pins."""
PIN_LENGTHS = (15, 20, 25, 30, 40)
"""Lengths of panel pins."""
PIN_EDGE = 3.0
"""Least distance of a pin from an edge, in diameters, where it is predrilled (EN 1995-1-1, table
8.2, from memory)."""
PIN_HOLD = 12.0
"""How far a pin goes into what is behind a back, in diameters (EN 1995-1-1, 8.3.2, from memory)."""
LEAST_PIN_HOLD = 8.0
"""How far it goes in at least, in diameters (EN 1995-1-1, 8.3.2, from memory)."""
PIN_SPACING = 100.0
"""Greatest distance between pins."""


def pocket_length(thickness: float, unit: LengthUnit) -> float:
    """Length of the pocket screw for the end of a part so thick."""
    return max(length for thicker, length in POCKET_LENGTHS[unit] if thickness > thicker)
