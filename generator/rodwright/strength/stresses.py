"""How levels are stressed, and what they may be stressed with; N/mm2."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.strength.bearings import Bearing
from rodwright.strength.level_sections import Section, with_grain
from rodwright.strength.level_states import LevelState, front_to_back
from rodwright.strength.load_factors import PERMANENT, VARIABLE
from rodwright.trade.creep import Duration
from rodwright.trade.design_strength import Strength, design_strength
from rodwright.trade.sources import Figure
from rodwright.unit import Part, Unit

BENDS, SHEARS = "bending stress", "shear stress"
"""What the results are of."""
_SHEAR_IN = 1e-6


@dataclass(frozen=True, slots=True)
class Stressed:
    """The greatest stress of one kind in one part (N/mm2), the loads being raised as ``raised``
    says, and what the part may be stressed with (None: not known)."""

    part: Part
    kind: Strength
    stress: float
    strength: Figure | None
    raised: float

    @property
    def share(self) -> float:
        """How much of its strength it takes; of what isn't known the stress itself, far below."""
        return self.stress / self.strength.value if self.strength else self.stress * _SHEAR_IN


def bending_of(unit: Unit, state: LevelState) -> Stressed | None:
    """The worst bending stress of a level, its ends turning freely."""
    found = list(_bending(unit, state))
    return max(found, key=lambda each: each.share, default=None)


def shear_of(unit: Unit, state: LevelState) -> Stressed | None:
    """The worst shear stress of a level in its main panel."""
    bearing, raised = state.pinned, raised_by(state.now)
    part = bearing.level.main
    force = 0.0
    for section, _, shear in _forces(bearing):
        force = max(force, shear * section.per_shear)
    return _stressed(unit, part, "shear_strength", force, raised) if force else None


def raised_by(bearing: Bearing) -> float:
    """What the load on a level counts for where strength is judged."""
    stored = bearing.contents + sum(each.force for each in bearing.standing)
    total = bearing.weight + stored
    return (PERMANENT * bearing.weight + VARIABLE * stored) / total if total > 0 else PERMANENT


def _bending(unit: Unit, state: LevelState) -> Iterator[Stressed]:
    raised, bearing = raised_by(state.now), state.pinned
    axis = 1 if bearing.across else 0
    worst: dict[str, float] = {}
    for section, moment, _ in _forces(bearing):
        for fibre in section.fibres:
            worst[fibre.ref] = max(worst.get(fibre.ref, 0.0), moment * fibre.per_moment)
    for part in bearing.level.parts:
        if worst.get(part.ref):
            kind: Strength = "bending" if with_grain(part, axis) else "bending_across"
            yield _stressed(unit, part, kind, worst[part.ref], raised)


def _forces(bearing: Bearing) -> Iterator[tuple[Section, float, float]]:
    """Each section with the greatest moment (N mm) and shear force (N) in it, by size."""
    strip = front_to_back(bearing, {})
    if strip is not None:
        bent, weakest = strip
        yield weakest, abs(bent.greatest_moment().value), abs(bent.greatest_shear().value)
        return
    if bearing.bent is None:
        return
    low = bearing.level.box.low[0]
    for section in bearing.sections:
        ends = section.start - low, section.stop - low
        moment = bearing.bent.greatest_moment(*ends).value
        yield section, abs(moment), abs(bearing.bent.greatest_shear(*ends).value)


def _stressed(unit: Unit, part: Part, kind: Strength, stress: float, raised: float) -> Stressed:
    mechanics = part.blank.stock.mechanics
    strength = (
        design_strength(mechanics, kind, Duration.LONG, unit.loading.service_class)
        if mechanics
        else None
    )
    return Stressed(part, kind, stress * raised, strength, raised)
