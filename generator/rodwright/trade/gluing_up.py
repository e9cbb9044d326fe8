"""What is left on when boards are ripped, glued up and planed, mm.

Common practice, no source, unless said.
"""

JOINTING = 1.5
"""Taken off a sawn edge until it is straight and square enough to be glued."""
OVER_WIDTH, OVER_LENGTH = 6.0, 12.0
"""What a panel is glued up wider and longer than the part that is made of it.

Allowances of 6 mm (1/4 in) on width and 12 mm (1/2 in) on length for a first rough sawing to size:
"Setting and laying out", https://www.furnituremaking.us/making-3/settinglaying-out.html.
"""
NARROWEST_STRIP = 60.0
"""Of a panel."""
JOINT_WORTH = 25.0
"""Of the width of boards: one more joint is made only to save more wood than that."""
LESS_WOOD = 0.1
"""Part of the wood that strips of several widths have to save, before they are worth the trouble;
equal ones look better and are set once at the fence."""
RESAWN = 5.0
"""What a bandsaw takes between two boards out of one, and planing off both sawn faces."""
