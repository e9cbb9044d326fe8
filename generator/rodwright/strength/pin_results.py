"""Whether shelf pins, their holes and the shelf above them hold."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from rodwright.strength.level_states import LevelState
from rodwright.strength.load_factors import FACTORS
from rodwright.strength.results import Group, Input, Result
from rodwright.strength.shelf_pins import PIN_REACH, Pins, pins_of
from rodwright.strength.stresses import raised_by
from rodwright.trade.creep import Duration
from rodwright.trade.design_strength import design_strength
from rodwright.trade.fastenings import Into, bearing_strength
from rodwright.trade.sources import Figure, Source
from rodwright.trade.yield_equations import reduction
from rodwright.unit import Part, Unit

HOLES, TEARS, PRESSED = "pressure on pin holes", "tear-out of pin holes", "pressure on the pins"
_BAR = Source("Johansen's theory, a rigid dowel, as in NDS 2018, table 12.3.1A", seen=False)
_PLANES = Source("two planes shear below the hole: common practice, no source")
_CONTACT = Source("force over the pin's diameter and length: common practice, no source")


def pin_results(
    unit: Unit, state: LevelState, change: Callable[[Pins], Pins] = lambda pins: pins
) -> Iterator[Result]:
    """The results of the end whose pins press hardest in their holes; with these pins changed, if
    that is asked for."""
    pins = max(pins_of(unit, state.now), key=lambda each: each.in_hole, default=None)
    if pins is None or pins.force <= 0:
        return
    pins = change(pins)
    yield from _in_hole(state, pins)
    raised = raised_by(state.now)
    torn = _design(unit, pins.upright, "shear_strength")
    if torn is not None:
        yield _result(
            state,
            TEARS,
            pins,
            pins.tearing * raised,
            torn,
            "tau = f F/(2 a h)",
            _PLANES,
            Input("a", "wood below the hole", pins.below, "mm"),
        )
    reach = PIN_REACH - 2 * (pins.arm - PIN_REACH / 2)
    pressed = _design(unit, state.level.main, "bearing")
    if pressed is not None:
        yield _result(
            state,
            PRESSED,
            pins,
            pins.on_shelf(reach) * raised,
            pressed,
            "sigma = f F/(d l)",
            _CONTACT,
            Input("l", "length of the pin below the shelf", reach, "mm"),
        )


def _in_hole(state: LevelState, pins: Pins) -> Iterator[Result]:
    mechanics = pins.upright.blank.stock.mechanics
    if mechanics is None or mechanics.gravity is None:
        return
    into = Into(mechanics.family, mechanics.gravity.value, pins.upright.blank.thickness, "face")
    strength, source = bearing_strength(into, pins.diameter)
    allowed = Figure(strength / reduction(pins.diameter), "N/mm2", source)
    yield _result(
        state,
        HOLES,
        pins,
        pins.in_hole,
        allowed,
        "q = F/(d (sqrt((2 e + h)^2 + h^2) - 2 e - h))",
        _BAR,
        Input("e", "from the upright to the force", pins.arm, "mm"),
    )


def _design(unit: Unit, part: Part, which: str) -> Figure | None:
    mechanics = part.blank.stock.mechanics
    if mechanics is None:
        return None
    return design_strength(mechanics, which, Duration.LONG, unit.loading.service_class)  # type: ignore[arg-type]


def _result(
    state: LevelState,
    what: str,
    pins: Pins,
    figure: float,
    limit: Figure,
    formula: str,
    source: Source,
    *more: Input,
) -> Result:
    main = state.level.main
    return Result(
        Group.LEVELS,
        f"{main.role.value} {main.ref}",
        (*state.level.refs, pins.upright.ref),
        what,
        figure,
        limit.value,
        "N/mm2",
        formula,
        source,
        (
            Input("F", f"on each of {pins.count} pins in {pins.upright.ref}", pins.force, "N"),
            Input("d", "pin", pins.diameter, "mm"),
            Input("h", "depth of its hole", pins.depth, "mm"),
            Input("f", "loads count for so much", raised_by(state.now), "", FACTORS),
            *more,
        ),
        limit_source=limit.source,
    )
