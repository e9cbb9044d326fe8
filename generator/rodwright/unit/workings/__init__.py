"""Workings: what can be cut into a blank, in its part's frame; mm.

Each knows itself: its ``kind`` for records and its ``word`` for people, the box that it takes, its
planes, how it turns and how it moves into another blank (see
:mod:`rodwright.unit.workings.removal`).  What a kernel cuts and what arithmetic takes off are said
elsewhere, by kind: :mod:`rodwright.solids.cutters` and :mod:`rodwright.mass.pieces`.

Workings only take material away, and what is taken is the union of their removals, so their order
never changes the shape.  ``use`` is what one is cut for, in the maker's words (``adjustable
shelves``), empty where nothing says so.  It doesn't tell workings apart: pieces that are cut alike
are alike.
"""

from __future__ import annotations

from rodwright.unit.workings.bores import FingerPull, Hole, Mortise, PocketHole
from rodwright.unit.workings.channels import Groove, Housing, Notch, Rebate
from rodwright.unit.workings.frames import Refit, Turn
from rodwright.unit.workings.slants import Bevel, Easing, Mitre

__all__ = [
    "Bevel",
    "Bore",
    "Channel",
    "Easing",
    "FingerPull",
    "Groove",
    "Hole",
    "Housing",
    "Mitre",
    "Mortise",
    "Notch",
    "PocketHole",
    "Rebate",
    "Refit",
    "Slant",
    "Turn",
    "Working",
]

Channel = Rebate | Groove | Housing
"""What runs along a surface, so deep."""
Bore = Hole | Mortise | PocketHole | FingerPull
"""What goes in from a surface, for something that is put there, or for fingers.  Cut short it is
of no use."""
Slant = Mitre | Bevel | Easing
"""What takes no more than an end or an arris."""
Working = Channel | Notch | Bore | Slant
"""Anything that can be cut into a blank.  The union is closed: a ``match`` over it ends in
``assert_never``, so that the type checker names what forgets one."""
