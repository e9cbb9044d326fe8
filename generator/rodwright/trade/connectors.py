"""What is let in between two parts: biscuits, loose tenons, dowels, cams and bolts.

mm.  Common practice, no source, unless said.
"""

from __future__ import annotations

from math import sqrt

from rodwright.lengths import LengthUnit, from_inches

BISCUITS = {"20": (56, 23, 12.5), "10": (53, 19, 10.5), "0": (47, 15, 8.5)}
"""Biscuits by size: length, width, and the depth of their slot, mm (from memory); the slot is
half a biscuit and 1 mm for glue.  Sizes go by the same numbers everywhere."""
SLOT_DEPTHS_IN = {"20": "1/2", "10": "7/16", "0": "11/32"}
"""The depths of biscuits' slots for a maker in inches (from memory)."""
SLOT_WIDTH: dict[LengthUnit, float] = {"mm": 4.0, "in": from_inches("5/32")}
"""Width of a biscuit's slot, mm (from memory)."""
CUTTER = 100.0
"""Diameter of the cutter that sinks a slot, mm (from memory)."""
TENON_DEPTH = 25.0
"""How far a loose tenon reaches into each part where there is room, mm."""
TENON_WIDTH = 40.0
"""Width of a loose tenon in a wide meeting, mm."""
TENON_SHOULDER = 8.0
"""Least wood beside a mortise at the edge of a part, mm."""
DOWEL_EDGE, DOWEL_APART = 1.5, 3.0
"""Least distance of a dowel's middle from the end of a meeting, and between two, in diameters."""
DOWEL_LENGTH = 5.0
"""A dowel's length in diameters, if it isn't of a size that is sold."""
CAM = 15.0
"""Diameter of a cam's boring, mm (from memory)."""
CAM_SETBACK = 34.0
"""From the end of the part to the middle of the cam, mm (from memory)."""
CAM_PAST_MIDDLE = 4.5
"""How far the cam's boring goes past the middle of the thickness, mm: 12.5 deep in 16, 14 in 19
(from memory)."""
BOLT_BORING = 8.0
"""Diameter of the boring for the bolt in the end, mm (from memory)."""
BOLT_HOLE = (5.0, 12.0)
"""Diameter and depth of the hole that the bolt is screwed into, mm (from memory)."""
NUT: dict[LengthUnit, float] = {"mm": 10.0, "in": from_inches("3/8")}
"""Diameter of a barrel nut, mm (from memory)."""
NUT_SETBACK = 35.0
"""From the end of the part to the middle of the barrel nut, mm (from memory)."""
NUT_PAST_MIDDLE = 5.0
"""How far the nut's boring goes past the middle of the thickness, mm (from memory)."""
NUT_BOLT: dict[LengthUnit, tuple[str, float]] = {
    "mm": ("M6", 7.0),
    "in": ("1/4-20", from_inches("9/32")),
}
"""Thread of the bolt for a barrel nut, and the diameter of its hole, mm (from memory)."""
BOLT_STEP: dict[LengthUnit, float] = {"mm": 5.0, "in": from_inches("1/4")}
"""Bolts come in lengths of so many mm (from memory)."""
BUTTON = 30.0
"""Width of a button, mm."""
BUTTON_SCREW = 25.0
"""Length of a button's screw, mm."""
BUTTON_SLOT = (60.0, 8.0, 10.0, 12.0)
"""Least length, height and depth of a button's slot, and its distance from the worktop, mm."""
PLUG = 10.0
"""Diameter of the plugs over screws through the face, mm."""
PLUG_DEPTH = 6.0
"""Depth of a plug, mm."""


def slot_length(depth: float) -> float:
    """How long (mm) a slot sunk straight in is at the surface: the chord of the cutter's circle."""
    return 2 * sqrt(CUTTER * depth - depth * depth)


def slot_depth(size: str, unit: LengthUnit) -> float:
    """Depth (mm) of a slot for half a biscuit of this size."""
    return BISCUITS[size][2] if unit == "mm" else from_inches(SLOT_DEPTHS_IN[size])


def biscuit_size(size: str, unit: LengthUnit) -> str:
    """What a biscuit is bought by: its number, with its length and width for a maker in mm."""
    length, width, _ = BISCUITS[size]
    return f"size {size}, {length} x {width} mm" if unit == "mm" else f"size {size}"
