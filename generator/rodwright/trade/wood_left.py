"""How much wood has to be left, mm.

Common practice, no source, unless said.
"""

LEAST_FLOOR = 1.5
"""Under a blind hole, a cup or a pocket, or between two from opposite surfaces."""
SLOT_FLOOR = 3.0
"""Under a slot, and under a dowel's hole in a face."""
LEAST_TONGUE = 3.0
"""The thinnest tongue; between two channels, or beside a channel at an edge."""
LEAST_BORING, LEAST_RIM = 20.0, 2.0
"""From this diameter on a hole holds a cup or the like, which needs only so much beside its rim."""
BETWEEN = 3.0
"""Between workings that have nothing to do with each other: two joints', a pin's hole and any
other, a screw's hole and a cut-out or an edge."""
