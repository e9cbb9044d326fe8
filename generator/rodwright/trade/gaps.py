"""Gaps and allowances: what is left free, and what is left on to be trimmed, mm.

Common practice, no source, unless said.
"""

GLUE_UP_TRIM = 6.0
"""Left on layers in length and width, trimmed after glue-up."""
USUAL_GAP = (6.0, 8.0)
"""How much smaller than its opening a unit is made, in all, mm."""
CAULK_LIMIT = 6.0
"""The widest gap that a bead of caulk bridges without sinking, about 5-6 mm; beyond it, a
cover strip or a scribe."""
BATTEN_LIMIT = 20.0
"""The most that is packed on packers (mm): beyond it a batten is fixed first."""
WIDEST_STRIP = 75.0
"""The widest gap, mm, that a strip or a scribe closes: a unit that leaves more on a side was made
smaller on purpose, and the side stays open."""
NEGLIGIBLE = 0.5
"""Less than this (mm) is left unpacked."""
ABOVE_FLOOR = 5.0
"""Left under a door or drawer, mm, for a floor that rises."""
HEAD_GAP = 3.0
"""Left between door or drawer fronts and what stands out above them, mm."""
AIR = 2.0
"""Left between an inset door and what stands behind it, mm."""
LEAST_SCRIBE = 3.0
"""A gap narrower than this (mm) takes no strip: none so thin can be ripped."""
SHEET_GAP = 1.0
"""From a sheet panel, or the ends of a solid one, to the bottom of its groove, mm."""
BOTTOM_PLAY = 1.0
"""Left between a drawer's bottom and the floor of its groove, mm."""
TRIM_LENGTH, TRIM_WIDTH = 6.0, 2.0
"""Left on a lipping in length and in width, mm, planed flush once it is glued on."""
GLUE_ROOM = 1.0
"""How much deeper than a dowel or a loose tenon reaches its hole or mortise is, for glue, mm."""
FIXING_SPACING = 600.0
"""From fixing point to fixing point to the wall, mm, where nothing else is said."""
