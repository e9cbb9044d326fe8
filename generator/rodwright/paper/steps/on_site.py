"""What the survey, the way in and the strength say for the work on site, in a maker's words."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rodwright.amounts import format_weight
from rodwright.lengths import format_length
from rodwright.mass import unit_weight
from rodwright.opening.floor import floor_fall
from rodwright.opening.gaps import Packing
from rodwright.opening.sheet import FitSheet
from rodwright.paper.steps.words import length_said, weight_said
from rodwright.strength.hanging import PULL as PULLED_OFF
from rodwright.strength.hanging import hanging
from rodwright.strength.hanging_fixings import IN_MASONRY as HANGS_IN_MASONRY
from rodwright.strength.hanging_fixings import IN_STUDS as HANGS_IN_STUDS
from rodwright.strength.paths import GRAVITY
from rodwright.strength.pieces import comes_off
from rodwright.strength.restraint import FIXING, IN_MASONRY, IN_STUDS, IN_UNIT
from rodwright.strength.results import Result
from rodwright.strength.tipping import tipping
from rodwright.trade.gaps import FIXING_SPACING
from rodwright.trade.sizes import trade_sizes
from rodwright.unit import TRAITS, JointKind, Slide, Swing, Unit
from rodwright.unit.facts import is_on_feet, plinth_boards
from rodwright.unit.roles import Assembly
from rodwright.way.remedies import remedies, steps_for

_INSTEAD = {
    "packers": "none",
    "batten": "a batten first, then packers on it",
    "foot": "turn the foot out",
    "nothing": "more than the base follows: plane or build up the floor first",
}


def safety(unit: Unit) -> Iterator[str]:
    """What stays in the room where the unit is cut out round it."""
    for service, who in (("socket", "electrician"), ("pipe", "plumber")):
        if service in unit.services:
            yield (
                f"A {service} stays inside a cut-out: leave it in reach; its supply off before you "
                f"work near it; work on it is for a licensed {who}."
            )


def carrying(unit: Unit) -> Iterator[str]:
    """How heavy it is, whether it passes the way in, and what helps."""
    off = comes_off(unit)
    kept = [part.ref for part in unit.parts if part.ref not in off]
    if off and kept:
        whole = format_weight(unit_weight(unit), unit.display_unit)
        yield (
            f"Take off first, and mark where each goes: {_what_comes_off(unit)}. With all of it "
            f"the unit weighs {whole}, without {weight_said(unit, kept)}."
        )
    else:
        yield f"It weighs {weight_said(unit, [part.ref for part in unit.parts])}."
    yield (
        "Walk the way empty first. Nobody below the load on stairs. Blankets on floor and corners."
    )
    if unit.way_in is None:
        return
    steps = steps_for(unit, unit.way_in)
    stuck = [step for step in steps if not step.passes]
    for step in steps:
        spare = length_said(abs(step.spare), unit.display_unit)
        place = step.place[:1].upper() + step.place[1:]
        if step.passes:
            yield f"{place}: it passes {step.held}, {spare} to spare."
        else:
            yield f"{place}: it is {spare} short ({step.tight}), at its best {step.held}."
    if stuck:
        works = [each.what for each in remedies(unit, unit.way_in) if each.works]
        yield (
            f"What does: {'; or '.join(works)}."
            if works
            else ("None of the remedies that were tried is enough by itself: carry it in as parts.")
        )


def _what_comes_off(unit: Unit) -> str:
    kinds = (
        ("doors", any(isinstance(each, Swing) for each in unit.motions)),
        ("drawers", any(isinstance(each, Slide) for each in unit.motions)),
        ("loose shelves", any(each.kind is JointKind.RESTING for each in unit.joints)),
        (
            "what is fitted round it",
            any(TRAITS[part.role].of is Assembly.SURROUND for part in unit.parts),
        ),
    )
    return ", ".join(said for said, there in kinds if there)


def floor(unit: Unit, fit: FitSheet | None) -> Iterator[str]:
    """How it is levelled on its floor."""
    if unit.hung:
        return
    if unit.opening is not None and unit.opening.shape is not None:
        fall = floor_fall(unit)
        yield (
            "Find the floor's high spot with a straight edge and a level; it stands on that. Under "
            f"it the floor falls by {length_said(fall.gap, unit.display_unit)} from there, up to "
            f"{length_said(fall.most, unit.display_unit)} as far as is known."
        )
    else:
        yield "Find the floor's high spot with a straight edge and a level, and begin there."
    if is_on_feet(unit):
        yield "Turn the feet out until it is level; none may hang free."
    elif plinth_boards(unit):
        yield "Pack the base level under each corner and each cross-piece; saw packers off flush."
    elif fit is None:
        yield "Pack it level under its sides and dividers, where the weight comes down."
    if unit.levelling:
        yield f"It can be levelled by {length_said(unit.levelling, unit.display_unit)} at most."


def packing_rows(
    unit: Unit, fit: FitSheet | None, sides: Sequence[str]
) -> Iterator[dict[str, str]]:
    """The packers at each fixing point of some sides, as the survey has them."""
    if fit is None:
        return
    for each in fit.packing:
        if each.gap.side in sides:
            yield _row(unit, each)


def _row(unit: Unit, packing: Packing) -> dict[str, str]:
    def say(mm: float) -> str:
        return format_length(mm, unit.display_unit)

    gap = packing.gap
    end = "left end" if gap.side == "bottom" else "foot"
    return {
        "side": {"bottom": "under it"}.get(gap.side, gap.side),
        "plane": gap.plane,
        "at": f"{say(gap.at)} {unit.display_unit} from its {end}",
        "gap": f"{say(gap.gap)} {unit.display_unit}",
        "packers": " + ".join(say(each) for each in packing.packers) or _INSTEAD[packing.by],
    }


def fixing(unit: Unit, packed: bool) -> Iterator[str]:
    """How it is held to the wall, and what that has to hold."""
    if unit.hung:
        yield from _hung(unit)
    elif unit.opening is not None:
        yield (
            "Pack tight at each fixing point, in pairs of wedges or flat packers, and never force "
            "it: try the sides with a straight edge after every screw."
        )
        if not packed:
            sizes = trade_sizes(unit.display_unit)
            spacing = length_said(sizes.usual(FIXING_SPACING), unit.display_unit)
            yield f"Points near both ends, and between them no more than {spacing} apart."
        yield (
            "Screw through the packers into studs or plugs, where shelves or frame hide the heads. "
            "Until it is fixed it can tip: one person holds it."
        )
    else:
        yield from _free(unit)


def _free(unit: Unit) -> Iterator[str]:
    results = {each.what: each for each in tipping(unit)}
    held = results.get(FIXING)
    if held is None or not held.figure:
        yield "It stands by itself; near children fix it to the wall all the same."
        return
    yield (
        f"Fix it to the wall so that it can't tip: {_as_weight(unit, held.figure)} of pull, "
        f"{length_said(_input(held, 'z'), unit.display_unit)} above the floor. Do it before "
        "anything goes in, and before a drawer is opened."
    )
    for what, where in ((IN_MASONRY, "plugs in masonry"), (IN_STUDS, "screws in studs")):
        if what in results:
            yield f"At least {results[what].figure:.0f} {where}, never in plasterboard alone."
    if IN_UNIT in results:
        found = results[IN_UNIT]
        yield f"At least {found.figure:.0f} screws of the brackets in its {found.subject}."
    yield "The wall is its builder's to judge; local codes come first."


def _hung(unit: Unit) -> Iterator[str]:
    results = {each.what: each for each in hanging(unit)}
    pull = results[PULLED_OFF]
    yield (
        f"It hangs: its top fixings are pulled by {_as_weight(unit, pull.figure or 0.0)}, and "
        "carry its weight besides. Two people hold it, a third drives the screws; or a batten "
        "fixed level under it first."
    )
    for what, where in (
        (HANGS_IN_MASONRY, "fixings in masonry"),
        (HANGS_IN_STUDS, "screws in studs"),
    ):
        if what in results and results[what].figure:
            yield f"At its top at least {results[what].figure:.0f} {where}."
    yield "Never in plasterboard alone. The wall is its builder's to judge; local codes come first."


def _as_weight(unit: Unit, newtons: float) -> str:
    return format_weight(newtons / GRAVITY, unit.display_unit, 0)


def _input(result: Result, symbol: str) -> float:
    return next(each.value for each in result.inputs if each.symbol == symbol)
