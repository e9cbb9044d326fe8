"""In which order parts go together: found from their solids and joints, and proven by sweeping.

A step brings one part, or one sub-assembly that stands made, straight in past what stands already.
"""

from __future__ import annotations

import sys
from types import ModuleType
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import cadquery

    from rodwright.unit import Unit


class _Room(ModuleType):
    """This room can be called, since its name is that of a step too: `rodwright.assembly(unit)`."""

    def __call__(self, unit: Unit) -> cadquery.Assembly:
        from rodwright.solids.assembled import assembly

        return assembly(unit)


sys.modules[__name__].__class__ = _Room
