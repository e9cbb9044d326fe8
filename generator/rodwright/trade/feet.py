"""Adjustable feet as they are sold and set; lengths in mm.

Common practice, no source, unless said.
"""

FOOT = "adjustable foot"
"""What lists call it."""
FOOT_INSET = 60.0
"""From the carcass's edges to the middle of a foot."""
FOOT_RANGE = 15.0
"""How far a foot goes up and down, where it isn't said."""
FOOT_SCREW = 16.0
"""Length of a foot's screws."""
FOOT_SCREWS = 4
"""Screws that hold one foot."""
CLIPPED_BOARD_ROOM = 3.0
"""Left over a board that is clipped to feet, so that it goes in under the carcass on a floor that
isn't quite flat."""
