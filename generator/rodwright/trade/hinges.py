"""Hinges as they are sold and hung: cup hinges with their plates and packers, and butts.

mm and degrees.  Common practice, no source, unless said.
"""

ENDS = 100.0
"""From a door's ends to its outer hinges, mm."""
PLATE_PITCH, PLATE_HOLE, PLATE_DEPTH = 32.0, 5.0, 10.0
"""Distance, diameter and depth of a plate's two holes, mm."""
HALF_HINGE, HINGE_DEPTH = 32.0, 60.0
"""What a concealed hinge takes up above and below its middle, and into the unit beside its
upright, mm (from memory)."""
HALF_PACKER = 56.0
"""Half the height of a packer under a hinge's plate, mm: room for a screw at either end, clear of
the plate and of the packer's ends."""
FLUSH = 0.5
"""An upright this near the edge of the opening needs no packers, mm."""
PLATE_CLEAR = 8.0
"""Wood left between a hole and one for a hinge's plate that it doesn't fall together with, mm."""
BUTT = "butt hinge"
"""What the name of a butt hinge begins with in lists; its length follows."""
BUTT_SCREW = 16.0
"""Length of a butt hinge's screws, mm."""
SCREWS_PER_BUTT = 6
"""Screws of one butt hinge: three a leaf."""
HINGE_REACH = 13.0
"""How far a concealed hinge lets a door cover its upright, less the distance from the door's edge
to the cup's rim, mm (the tables that makers of hinges print, from memory)."""
HINGES_PER_DOOR = ((900.0, 6.0, 2), (1600.0, 12.0, 3), (2000.0, 17.0, 4), (2400.0, 22.0, 5))
"""Greatest height (mm) and weight (kg) of a door on so many hinges; from the tables that
makers of hinges print for doors up to 600 mm wide (from memory)."""
OPENS = {"cup": 110.0, "butt": 180.0}
"""How far hinges of each kind open unless said, degrees."""
BEHIND_FRAME = 1.0
"""Least gap between a packer and the frame, mm."""
PAST_HINGE = 55.0
"""From the rear of a door to where nothing stands in the way of its hinges: their plates' holes are
37 behind it (from memory)."""
