"""What is left on when boards are ripped, glued up and planed, mm.

Common practice, no source, unless said.
"""

from rodwright.lengths import LengthUnit, from_inches

JOINTING: dict[LengthUnit, float] = {"mm": 1.5, "in": from_inches("1/16")}
"""Taken off a sawn edge until it is straight and square enough to be glued."""
OVER_WIDTH: dict[LengthUnit, float] = {"mm": 6.0, "in": from_inches("1/4")}
"""What a panel is glued up wider than the part that is made of it, as is left on width for a first
rough sawing to size: "Setting and laying out",
https://www.furnituremaking.us/making-3/settinglaying-out.html.
"""
OVER_LENGTH: dict[LengthUnit, float] = {"mm": 12.0, "in": from_inches("1/2")}
"""What it is glued up longer (the same)."""
NARROWEST_STRIP = 60.0
"""Of a panel."""
JOINT_WORTH = 25.0
"""Of the width of boards: one more joint is made only to save more wood than that."""
LESS_WOOD = 0.1
"""Part of the wood that strips of several widths have to save, before they are worth the trouble;
equal ones look better and are set once at the fence."""
RESAWN = 5.0
"""What a bandsaw takes between two boards out of one, and planing off both sawn faces."""
