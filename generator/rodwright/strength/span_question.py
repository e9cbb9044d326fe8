"""A question about one plain shelf, as it is worked with."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import inf
from typing import Literal

from rodwright.amounts import GRAVITY, Kind
from rodwright.lengths import LengthUnit
from rodwright.strength.span import Carried, Plank
from rodwright.trade.creep import Duration
from rodwright.trade.design_strength import design_strength
from rodwright.trade.loads import Burden
from rodwright.trade.mechanics import Mechanics
from rodwright.trade.sources import Figure, Source

__all__ = ["HEIGHT", "Question", "carried_by"]

Wanted = Literal["span", "load", "thickness", "check"]
HEIGHT = 300.0
"""mm.  Clear height above a shelf that is filled (common practice, no source)."""
_ASKED = Source("as asked")


@dataclass(frozen=True)
class Question:
    """What is known of a shelf; of thickness, span (mm) and burden one may be None, which is asked.

    ``known`` gives what is known of the board by thickness (mm), ``turning`` how its ends are held
    by thickness (N mm/rad), ``density`` is in kg/m3 (0: its own weight isn't counted); it may sag
    by its span over ``limit`` after ``years`` (0: at once).  ``notes`` say what was taken for
    granted, ``unit`` is the maker's.
    """

    board: str
    known: Callable[[float], Mechanics | None]
    turning: Callable[[float], Figure]
    density: Figure
    depth: float
    thickness: float | None
    span: float | None
    burden: Burden | None
    limit: float
    years: float
    ends: str
    limit_source: Source = _ASKED
    notes: tuple[str, ...] = ()
    unit: LengthUnit = "mm"

    @property
    def wanted(self) -> Wanted:
        """What is asked for."""
        if self.span is None:
            return "span"
        if self.burden is None:
            return "load"
        return "thickness" if self.thickness is None else "check"

    def plank(self, thickness: float) -> Plank | None:
        """The shelf of a thickness (mm), as far as is known."""
        known = self.known(thickness)
        if known is None:
            return None
        strength = design_strength(known, "bending", Duration.LONG)
        creep = known.creep.value if known.creep and self.years > 0 else 0.0
        return Plank(
            self.depth,
            thickness,
            known.along.value,
            known.shear.value if known.shear else inf,
            self.turning(thickness).value,
            self.density.value * GRAVITY * 1e-9 * thickness,
            creep,
            strength.value if strength else None,
        )


def carried_by(burden: Burden) -> Carried:
    """What lies on a shelf in newtons and millimetres; what fills a space does so :data:`HEIGHT`
    high."""
    weight = burden.amount.value * GRAVITY
    match burden.amount.kind:
        case Kind.RUN_WEIGHT:
            return Carried(row=weight / 1e3)
        case Kind.AREA_WEIGHT:
            return Carried(spread=weight / 1e6)
        case Kind.DENSITY:
            return Carried(spread=weight * HEIGHT / 1e9)
        case _ if burden.manner == "stands":
            return Carried(standing=weight)
        case _:
            return Carried(whole=weight)
