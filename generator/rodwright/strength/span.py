"""How far one plain shelf may span, what it may carry, or how thick it has to be.

Millimetres and newtons.  The shelf is one rectangle between two ends that turn alike, bent as
:mod:`rodwright.strength.beams` has it.  Its sag grows by creep, ``1 + kdef (G + psi2 Q) / (G + Q)``
(EN 1995-1-1, 2.2.3; G its own weight, Q what lies on it), its joints' give by twice kdef.  Its
strength is judged with ends that turn freely and loads raised as for other levels.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from math import inf
from typing import Literal

from rodwright.strength.beams import Beam, Bent, Point, Segment, Stretch, Support, bend
from rodwright.strength.load_factors import PERMANENT, PSI2, VARIABLE
from rodwright.strength.sections import RECTANGLE

__all__ = [
    "LONGEST",
    "Carried",
    "Plank",
    "Trial",
    "greatest_load",
    "greatest_span",
    "least_thickness",
    "trial",
]

LONGEST = 6000.0
"""mm.  No span beyond this is looked for: boards and sheets aren't sold longer (common practice, no
source)."""
SHORTEST = 50.0
"""mm.  Nothing shorter is a shelf (common practice, no source)."""
THICKEST, _STEP = 100.0, 0.5
_EXACT = 1e-4


@dataclass(frozen=True, slots=True)
class Plank:
    """A shelf but for its span.

    ``depth`` and ``thickness`` in mm; ``modulus`` and ``shear`` (N/mm2; inf: its give to shear
    isn't counted); ``turning`` how stiffly each end is held (N mm/rad); ``weight`` its own (N/mm2
    of its face); ``creep`` kdef, 0 for the sag at once; ``strength`` the bending stress that it may
    have (N/mm2; None: not known).
    """

    depth: float
    thickness: float
    modulus: float
    shear: float = inf
    turning: float = 0.0
    weight: float = 0.0
    creep: float = 0.0
    strength: float | None = None


@dataclass(frozen=True, slots=True)
class Carried:
    """What lies on it: ``spread`` over its face (N/mm2), in a ``row`` (N/mm), so much in all spread
    over its length (``whole``, N), and standing in its middle (``standing``, N)."""

    spread: float = 0.0
    row: float = 0.0
    whole: float = 0.0
    standing: float = 0.0

    def times(self, factor: float) -> Carried:
        """So many times as much."""
        parts = (self.spread, self.row, self.whole, self.standing)
        return Carried(*(factor * each for each in parts))

    def even(self, plank: Plank, span: float) -> float:
        """All of it that is spread, N/mm."""
        return self.spread * plank.depth + self.row + self.whole / span


@dataclass(frozen=True, slots=True)
class Trial:
    """A shelf of some span under its load: sag at once and in the end, and what it may be (mm);
    bending stress, raised, and what it may be (N/mm2; None: not known); what it carries (N)."""

    span: float
    at_once: float
    sag: float
    allowed: float
    stress: float
    strength: float | None
    own: float
    carried: float

    @property
    def governs(self) -> Literal["sag", "bending strength"]:
        """Which of the two takes more of its limit."""
        return "bending strength" if self._stressed > self.sag / self.allowed else "sag"

    @property
    def share(self) -> float:
        """How much it takes of the limit that governs."""
        return max(self.sag / self.allowed, self._stressed)

    @property
    def _stressed(self) -> float:
        return self.stress / self.strength if self.strength else 0.0


def trial(plank: Plank, carried: Carried, span: float, limit: float) -> Trial:
    """A shelf under a load over a span (mm), which may sag by the span over ``limit``."""
    own = plank.weight * plank.depth * span
    contents = carried.even(plank, span) * span + carried.standing
    lasting = (own + PSI2 * contents) / (own + contents) if own + contents > 0 else 1.0
    softer = plank.creep * lasting
    crept = replace(
        plank,
        modulus=plank.modulus / (1 + softer),
        shear=plank.shear / (1 + softer),
        turning=plank.turning / (1 + 2 * softer),
    )
    raised = replace(plank, turning=0.0, weight=plank.weight * PERMANENT)
    moment = _bent(raised, carried.times(VARIABLE), span).greatest_moment().value
    return Trial(
        span,
        _bent(plank, carried, span).greatest_sag().sag,
        _bent(crept, carried, span).greatest_sag().sag,
        span / limit,
        6 * abs(moment) / plank.depth / plank.thickness**2,
        plank.strength,
        own,
        contents,
    )


def greatest_span(plank: Plank, carried: Carried, limit: float) -> float | None:
    """The greatest span (mm) over which it holds: None if it still does over :data:`LONGEST`, 0 if
    it doesn't over :data:`SHORTEST`."""

    def holds(span: float) -> bool:
        return trial(plank, carried, span, limit).share <= 1

    if holds(LONGEST):
        return None
    return _edge(holds, SHORTEST, LONGEST)[0] if holds(SHORTEST) else 0.0


def greatest_load(plank: Plank, span: float, limit: float) -> float | None:
    """The greatest row (N/mm) that it carries over a span (mm); None if it doesn't hold under its
    own weight."""

    def holds(row: float) -> bool:
        return trial(plank, Carried(row=row), span, limit).share <= 1

    if not holds(0.0):
        return None
    most = 1.0
    while holds(most):
        most *= 2
    return _edge(holds, 0.0, most)[0]


def least_thickness(
    planed: Callable[[float], Plank | None],
    carried: Carried,
    span: float,
    limit: float,
    *,
    above: float = 0.0,
) -> float | None:
    """The least thickness (mm) that holds, of those above one that doesn't; ``planed`` gives the
    shelf of a thickness, or None where it isn't known.  None if none to :data:`THICKEST` does."""

    def fails(thickness: float) -> bool:
        plank = planed(thickness)
        return plank is None or trial(plank, carried, span, limit).share > 1

    # Stiffness goes down in steps with thickness in the tables of some boards, so that what is
    # thicker needn't be better: the first step that holds is sought before anything is halved.
    low = above
    while low < THICKEST:
        if not fails(low + _STEP):
            return _edge(fails, low, low + _STEP)[1]
        low += _STEP
    return None


def _bent(plank: Plank, carried: Carried, span: float) -> Bent:
    """The shelf as a beam."""
    area = plank.depth * plank.thickness
    load = plank.weight * plank.depth + carried.even(plank, span)
    stiff = Segment(
        span, plank.modulus * area * plank.thickness**2 / 12, RECTANGLE * plank.shear * area
    )
    ends = (Support(0.0, plank.turning), Support(span, plank.turning))
    points = (Point(span / 2, carried.standing),) if carried.standing else ()
    return bend(Beam(span, (stiff,), ends, (Stretch(0.0, span, load, load),), points))


def _edge(holds: Callable[[float], bool], low: float, high: float) -> tuple[float, float]:
    """Where something stops holding between two places: a place where it holds, and one beyond
    where it doesn't, no more than a tenth of a thousandth further."""
    while high - low > _EXACT * min(1.0, high):
        middle = (low + high) / 2
        low, high = (middle, high) if holds(middle) else (low, middle)
    return low, high
