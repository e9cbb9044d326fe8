"""Can a freestanding unit tip over, above all with its drawers drawn out?

Statics alone: weights of the wood by arithmetic, moments about the line of the front feet.
Drawers are empty; what lies in them makes it worse.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, weight_in
from rodwright.checks.rules import Rule
from rodwright.geometry import Vector
from rodwright.mass import centre_of_mass, unit_weight
from rodwright.trade.feet import FOOT_INSET
from rodwright.unit import Notch, Part, Slide, Unit
from rodwright.unit.facts import STANDS, is_on_feet

TIPPING_HEIGHT = 600.0
"""Height (mm) from which a freestanding unit is fixed to the wall (common practice; the concern of
ASTM F2057 and EN 14749, from memory)."""
TEST_LOAD = 22.7
"""Weight (kg) that a unit has to bear on the front of an open drawer without tipping: the 50 lb
of ASTM F2057 before 2023 (from memory)."""
_REMEDY = "Fix it to the wall with brackets or straps that suit the wall; follow local rules."


@dataclass(frozen=True, slots=True)
class Stability:
    """Balance of a unit with every drawer drawn right out, about its front feet; mm and kg.

    ``feet`` is the y of the line it would tip about and ``centre`` that of its centre of
    mass; ``edge`` is the y of the foremost drawer's front.  ``load`` on that edge tips it:
    none or less where it tips by its own weight.
    """

    weight: float
    centre: float
    feet: float
    edge: float

    @property
    def load(self) -> float:
        """The weight (kg) at the edge whose moment equals that of the unit's own."""
        return self.weight * (self.centre - self.feet) / (self.feet - self.edge)


def tipping(unit: Unit) -> Iterator[Finding]:
    """Cautions for a freestanding unit that is high or has drawers."""
    if unit.opening is not None or unit.hung:
        return
    balance = stability(unit)
    if balance is not None:
        yield _drawn_out(balance, unit)
        return
    height = unit.size[1]
    if height > TIPPING_HEIGHT:
        yield Finding(
            Severity.WARNING,
            Rule.TALL_AND_FREESTANDING,
            f"a freestanding unit {length_in(unit, height)} high can tip over",
            f"{_REMEDY} If it hangs on the wall, write `hung: true`.",
            figure=height,
            limit=TIPPING_HEIGHT,
            source="common practice; see ASTM F2057, EN 14749 (from memory)",
        )


def stability(unit: Unit) -> Stability | None:
    """The balance of a unit with its drawers drawn out; None where it has none, or where they
    stay behind its feet."""
    travels = {
        ref: motion.travel
        for motion in unit.motions
        if isinstance(motion, Slide)
        for ref in motion.refs
    }
    if not travels:
        return None
    drawn = replace(unit, parts=tuple(_moved(part, travels.get(part.ref)) for part in unit.parts))
    feet = _front_feet(unit, [part for part in unit.parts if part.ref not in travels])
    edge = min(part.bounds().low[1] for part in drawn.parts if part.ref in travels)
    if edge >= feet:
        return None
    return Stability(unit_weight(drawn), centre_of_mass(drawn)[1], feet, edge)


def _drawn_out(balance: Stability, unit: Unit) -> Finding:
    load = balance.load
    if load <= 0:
        said = "freestanding, it tips over by its own weight when every drawer is drawn out"
    else:
        said = (
            f"freestanding, empty and with every drawer drawn out, "
            f"{weight_in(unit, load, 1)} on the front of one tips it over"
        )
    return Finding(
        Severity.WARNING,
        Rule.TIPS_WITH_DRAWERS_OUT,
        said,
        f"{_REMEDY} Keep heavy things in the lowest drawers.",
        figure=load,
        limit=TEST_LOAD,
        measure="kg",
        source="statics; ASTM F2057 asks for 50 lb on one open drawer, see EN 14749 (from memory)",
    )


def _moved(part: Part, travel: Vector | None) -> Part:
    if travel is None:
        return part
    x, y, z = part.placement.origin
    origin = (x + travel[0], y + travel[1], z + travel[2])
    return replace(part, placement=replace(part.placement, origin=origin))


def _front_feet(unit: Unit, parts: list[Part]) -> float:
    """The y of the foremost line that the unit stands on."""
    if is_on_feet(unit):
        return FOOT_INSET
    floor = min(part.bounds().low[2] for part in parts)
    return min(_stands_at(part, floor) for part in parts if part.bounds().low[2] < floor + STANDS)


def _stands_at(part: Part, floor: float) -> float:
    """The y at which a part that stands on the floor begins: behind the notch at its toe."""
    bounds = part.bounds()
    front = bounds.low[1]
    for working in part.workings:
        if not isinstance(working, Notch):
            continue
        box = part.placement.box_to_unit(working.bounds(part.blank.size))
        if box.low[1] < bounds.low[1] + STANDS and box.low[2] < floor + STANDS:
            front = max(front, box.high[1])
    return front
