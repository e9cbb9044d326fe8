"""The sizes in which sheets and boards are sold, and what planing takes off them; all in mm."""

from __future__ import annotations

from math import floor

from rodwright.lengths import LengthUnit, from_inches

SHEET_SIZES: dict[LengthUnit, tuple[tuple[float, float], ...]] = {
    "mm": ((2440.0, 1220.0), (3050.0, 1525.0), (2500.0, 1250.0), (1220.0, 1220.0), (1220.0, 610.0)),
    "in": tuple(
        (from_inches(length), from_inches(width))
        for length, width in (("96", "48"), ("120", "60"), ("48", "48"), ("48", "24"))
    ),
}
"""Length and width of sheets as they are sold, the usual size first, and half and quarter sheets
last (common practice, no source)."""

BOARD_LENGTHS: dict[LengthUnit, tuple[float, ...]] = {
    "mm": (2400.0, 3000.0, 4200.0),
    "in": (from_inches("96"), from_inches("120"), from_inches("168")),
}
"""Lengths of boards that are taken to be sold where nothing is said of them (common practice, no
source)."""
BOARD_WIDTHS: dict[LengthUnit, tuple[float, ...]] = {
    "mm": (150.0, 200.0),
    "in": (from_inches("6"), from_inches("8")),
}
"""Widths of boards that are taken to be sold where nothing is said of them (common practice, no
source)."""
END_TRIM: dict[LengthUnit, float] = {"mm": 25.0, "in": from_inches("1")}
"""mm.  What is cut off each end of a board that is bought, where it is out of square, checked or
painted (common practice, no source)."""

ALIKE = from_inches("1/64")
"""mm.  Sheets and sections whose thickness differs by no more do for each other: the play that a
housing has anyway (common practice, no source)."""
PLANED_AWAY = 8.0
"""mm.  The most that is planed off a thicker board; beyond it is resawn (common practice, no
source)."""
PLANED_OFF_WIDTH: dict[LengthUnit, float] = {"mm": 6.0, "in": from_inches("1/4")}
"""mm.  What straightening and planing takes off the two edges of a sawn board in all (common
practice, no source)."""
_THIN = from_inches("1 1/2")


def planing_of(sawn: float) -> float:
    """What planing takes off two opposite faces of a sawn board ``sawn`` mm thick, in mm.

    3/16 in up to 1 1/2 in, 1/4 in beyond: the hardwood thicknesses rough and surfaced on two sides
    of the Wood Handbook, FPL-GTR-190 (2010), chapter 6 (from memory; the same figures were seen on
    two timber tables).
    """
    return from_inches("3/16") if sawn <= _THIN + 1e-6 else from_inches("1/4")


def planed(sawn: float, unit: LengthUnit) -> float:
    """The thickness (mm) to which a sawn board is planed, down to the next round figure: whole
    millimetres, or sixteenths of an inch."""
    step = 1.0 if unit == "mm" else from_inches("1/16")
    return floor((sawn - planing_of(sawn)) / step + 1e-6) * step
