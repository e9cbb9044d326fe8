"""How many people lift each piece, from the sheet as bought to the whole unit.

By the revised NIOSH lifting equation, with the HSE's filter beside it.  Each is a guide for fit
people who lift now and then on a good floor, no limit of what is safe; neither knows stairs.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from rodwright.amounts import format_weight
from rodwright.strength.pieces import STRIPPED, WHOLE, Piece, pieces
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.trade.lifting import (
    HEAVY_PANE,
    HIGHEST,
    HSE,
    LOAD_CONSTANT,
    LONG,
    NIOSH,
    NIOSH_REMEMBERED,
    ROUND_IT,
    Lift,
    Who,
    filter_people,
    filter_value,
    people,
    people_lifting,
    reach_round,
    shared,
)
from rodwright.trade.sizes import trade_sizes
from rodwright.unit import Unit

LIFTED = "weight that is lifted"
PEOPLE = "n"
"""The symbol of the input that says how many people it takes (0: the equation has no answer)."""
_GUIDE = (
    "a guide for who is fit and lifts now and then on a good floor, not a limit of what is safe"
)


@dataclass(frozen=True, slots=True)
class Hands:
    """How a piece is lifted: by one person, and by several who take it at its ends."""

    piece: Piece
    alone: Lift
    shared: Lift

    @classmethod
    def of(cls, piece: Piece) -> Hands:
        """One person holds it round; of several, each stands at an end."""
        alone = Lift(
            piece.start,
            piece.stop,
            reach_round(piece.depth, min(piece.start, piece.stop)),
            piece.grip,
        )
        return cls(piece, alone, shared(alone))

    @property
    def least(self) -> int:
        """How many it takes whatever it weighs: two for what is long, and for heavy glass."""
        piece = self.piece
        return 2 if max(piece.size) > LONG.value or piece.pane > HEAVY_PANE.value else 1

    @property
    def people(self) -> int | None:
        """How many by the NIOSH equation, sharing evenly; None where it doesn't reach so high."""
        return people_lifting(self.alone, self.piece.lot.mass, self.least)

    @property
    def said(self) -> str:
        """How many, by either guide."""
        count = self.people
        men, women = self.filtered("men"), self.filtered("women")
        hse = f"HSE filter: {_counted(men, 'man', 'men')} or {_counted(women, 'woman', 'women')}"
        if count is None:
            return f"the hands go higher than the NIOSH equation; {hse}"
        more = ", more than can take hold of it" if count > ROUND_IT.value else ""
        return f"NIOSH: {people(count)}{more}; {hse}"

    def filtered(self, who: Who) -> int:
        """How many men or women by the HSE's filter."""
        mass = self.piece.lot.mass
        if self.least == 1 and mass <= filter_value(self.alone, who):
            return 1
        return max(2, filter_people(self.shared, who, mass))


def lifting(unit: Unit) -> Iterator[Result]:
    """The weight at every step of making a unit and bringing it in, and who lifts it.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    all_of_them = tuple(pieces(unit))
    stripped = next((each for each in all_of_them if each.subject == STRIPPED), None)
    for piece in all_of_them:
        yield _result(unit, Hands.of(piece), stripped if piece.subject == WHOLE else None)


def _result(unit: Unit, hands: Hands, stripped: Piece | None) -> Result:
    piece, lift = hands.piece, hands.alone
    x, y, z = piece.lot.centre
    given = (
        Input("m", "weight", piece.lot.mass, "kg"),
        Input("x", "its centre, from its left end", x, "mm"),
        Input("y", "its centre, from its front", y, "mm"),
        Input("z", "its centre, from its lower side", z, "mm"),
        Input("LC", "load constant", LOAD_CONSTANT.value, "kg", LOAD_CONSTANT.source),
        Input("H", "reach of the hands, alone", lift.reach, "mm", NIOSH_REMEMBERED),
        Input("V1", "height of the hands at first", lift.start, "mm"),
        Input("V2", "height of the hands at last", lift.stop, "mm"),
        *(Input(name, "multiplier", value, "") for name, value in _multipliers(lift)),
        Input("RWL2", "what each of several lifts", hands.shared.limit, "kg"),
        Input(PEOPLE, "people by the NIOSH equation", float(hands.people or 0), ""),
        Input("men", "HSE filter, one man", filter_value(lift, "men"), "kg", HSE),
        Input("women", "HSE filter, one woman", filter_value(lift, "women"), "kg", HSE),
    )
    return Result(
        Group.LIFTING,
        piece.subject,
        piece.parts,
        LIFTED,
        piece.lot.mass,
        lift.limit,
        "kg",
        "RWL = LC HM VM DM AM FM CM, with AM = FM = 1",
        NIOSH,
        given,
        limit_source=NIOSH,
        notes=(hands.said, *_notes(unit, hands), "hardware isn't weighed", _GUIDE),
        remedies=tuple(_remedies(unit, hands, stripped)),
    )


def _multipliers(lift: Lift) -> Iterator[tuple[str, float]]:
    yield from lift.multipliers(lift.worse).items()


def _notes(unit: Unit, hands: Hands) -> Iterator[str]:
    piece, count = hands.piece, hands.people
    if max(piece.size) > LONG.value:
        yield f"so long a piece takes two people whatever it weighs ({LONG.source})"
    if piece.pane > 0:
        heavy = format_weight(HEAVY_PANE.value, unit.display_unit, 0)
        yield f"glass: gloves and suction lifters; two people from {heavy} ({HEAVY_PANE.source})"
    if count is not None and count > ROUND_IT.value:
        yield f"more than can take hold of it: on skates or a sack truck ({ROUND_IT.source})"


def _remedies(unit: Unit, hands: Hands, stripped: Piece | None) -> Iterator[Remedy]:
    """Sharing it, and what is left without what comes off."""
    mass, limit = hands.piece.lot.mass, hands.alone.limit
    if mass <= limit:
        return
    count = hands.people
    if count is None:
        yield from _from_platform(unit, hands)
    else:
        most, each = int(ROUND_IT.value), hands.shared.limit
        hands_on = min(count, most)
        share, more = mass / hands_on, " (no more can take hold of it)" if count > most else ""
        said = format_weight(each, unit.display_unit)
        what = f"{people(hands_on)} at its ends{more}, who may lift {said} each"
        yield Remedy(what, share, share <= each)
    if stripped is not None:
        left = Hands.of(stripped)
        yield Remedy(
            f"doors, drawers, loose shelves and what is fitted round it taken off: {left.said}",
            stripped.lot.mass,
            stripped.lot.mass <= left.alone.limit,
        )


def _from_platform(unit: Unit, hands: Hands) -> Iterator[Remedy]:
    """From a platform, so that no hands go higher than the equation reaches."""
    piece, sizes = hands.piece, trade_sizes(unit.display_unit)
    high = sizes.round_up(max(piece.start, piece.stop) - HIGHEST.value)
    if high <= 0:
        return
    raised = Hands.of(
        replace(piece, start=max(piece.start - high, 0.0), stop=max(piece.stop - high, 0.0))
    )
    count = raised.people
    if count is not None:
        share, each = piece.lot.mass / count, (raised.alone if count == 1 else raised.shared).limit
        told = f"from a platform {sizes.say(high)} high, {people(count)}, who may lift"
        said = format_weight(each, unit.display_unit)
        yield Remedy(f"{told} {said}{' each' if count > 1 else ''}", share, share <= each)


def _counted(count: int, one: str, more: str) -> str:
    return f"{count} {one if count == 1 else more}"
