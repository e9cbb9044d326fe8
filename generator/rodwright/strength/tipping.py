"""Does a unit stand: how far it may be turned, what tips it with drawers and doors open, what pull
it stands, what has to hold it.

Statics: moments about the lines of its feet (``footing``), with the weight of the wood by
arithmetic and of what the unit is to carry.  Hardware isn't weighed.  Masses and forces in kg.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from rodwright.geometry import Vector
from rodwright.strength.balance import Asked, Held, Pressed, Pulled, Stand, Turned
from rodwright.strength.footing import Way, footing
from rodwright.strength.lots import Filling, Lot, Lots, Mover, front_edges, lots_of
from rodwright.strength.restraint import anchors, restraint
from rodwright.strength.results import Input, Result
from rodwright.strength.steadying import Means, means_of
from rodwright.strength.storage import clothing, scope_of, scope_result
from rodwright.strength.tipping_rows import Row, by_filling
from rodwright.trade.stability import (
    CARPET,
    CHILD,
    CLOTHING,
    OPEN_ELEMENT,
    PULL,
    PULL_HEIGHT,
)
from rodwright.unit import Unit

BY_ITSELF = "turned over forward, every drawer out"
DOORS_OPEN = "turned over forward, every door open"
ALONE = "load on its front that tips the unit"
PULLED = "pulled over at its top"
CLIMBED = "a child on the front edge of what is open"
CLIMBED_SHELVES = "a child on the front edge of a shelf"
CLOTHED = f"{BY_ITSELF}, with clothing in it"

_TURNS = "a = atan(x / z)"
_PULLS = "P = W (x cos a - z sin a) / H"


def tipping(unit: Unit) -> Iterator[Result]:
    """How stable a unit is that stands on the floor; of one that is built in, until it is fixed.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    if unit.hung:
        return
    case = _Case.of(unit)
    tried = [*case.turned(), *case.drawers(), *case.doors(), *case.pulled(), *case.climbed()]
    yield from (each.result(case.subject, case.means, case.on_carpet) for each in tried)
    if unit.opening is None:
        alone = [each.alone or each.asked for each in tried]
        but = alone if any(each.alone for each in tried) else []
        fixing = restraint(unit, case.means, [each.asked for each in tried], but)
        yield fixing
        yield from anchors(unit, fixing.figure or 0.0)
        yield scope_result(unit)


@dataclass(frozen=True, slots=True)
class _Case:
    """A unit to be tried: empty and loaded as it is meant to be, and with clothing in its drawers,
    on the floor that it stands on and on a carpet."""

    subject: str
    free: bool
    height: float
    own: Lots
    clothed: Lots
    stand: Stand
    on_carpet: Stand
    means: Means
    shelves: tuple[Vector, ...]
    within: bool

    @classmethod
    def of(cls, unit: Unit) -> _Case:
        feet = footing(unit)
        lean, loading = unit.loading.lean, unit.loading
        # The rear stands on the carpet's edge strip, the front has sunk in.
        more = math.degrees(math.atan2(CARPET.value, feet.depth))
        soft = Stand(feet, lean + more)
        free = unit.opening is None
        said = {each.ref for each in loading.loads}
        clothes = [each for each in clothing(unit) if each.ref not in said] if free else []
        own = lots_of(unit)
        return cls(
            "the unit" if free else "the unit, until it is fixed",
            free,
            unit.size[1],
            own,
            lots_of(unit, (*loading.loads, *clothes)) if free else own,
            soft if loading.floor == "carpet" else Stand(feet, lean),
            soft,
            means_of(unit, feet),
            tuple(front_edges(unit)),
            free and scope_of(unit).within,
        )

    @property
    def out(self) -> tuple[Mover, ...]:
        return tuple(each for each in self.own.movers if each.is_drawer)

    @property
    def swung(self) -> tuple[Mover, ...]:
        return tuple(each for each in self.own.movers if not each.is_drawer)

    def states(self, opened: Sequence[Mover], *, clothed: bool = False) -> tuple[Held, ...]:
        """Empty; loaded too where it stands free, for what is built in is loaded once fixed: with
        all, and without what may not be in it.  For the tests of clothing, too, with nothing but
        what is in the drawers that are out."""
        empty = Held(self.own.state(opened))
        lots = self.clothed if clothed else self.own
        if not (self.free and lots.loaded):
            return (empty,)
        some: tuple[Filling, ...] = ("said, none on top", "said")
        fillings = (*(("what opens",) if clothed else ()), *some)
        less = [lot for lot in self._filled_so(opened, lots, fillings) if lot != empty.whole]
        loaded = dict.fromkeys([*less, *self._filled_so(opened, lots, ("all",))])
        return (empty, *(Held(each, loaded=True) for each in loaded))

    @staticmethod
    def _filled_so(opened: Sequence[Mover], lots: Lots, fillings: Sequence[Filling]) -> list[Lot]:
        same = [
            other for other in lots.movers if any(other.motion is each.motion for each in opened)
        ]
        return [lots.state(same, filling) for filling in fillings]

    def turned(self) -> Iterator[Row]:
        """How far it may be turned with all shut: to the front, to the back, sideways."""
        sides: tuple[Way, ...] = ("to the left", "to the right")
        for filled, states in by_filling(self.states(()), "loaded"):
            ways: tuple[tuple[str, tuple[Way, ...]], ...] = (
                ("forward", ("forward",)),
                ("backward", ("backward",)),
                ("sideways", sides),
            )
            for said, over in ways:
                yield self._turn(f"turned over {said}, {filled}", states, ways=over)

    def drawers(self) -> Iterator[Row]:
        """With every drawer out, and with each alone out."""
        for filled, states in by_filling(self.states(self.out), "as loaded") if self.out else ():
            alone = self._one_out(loaded=states[0].loaded)
            yield self._turn(f"{BY_ITSELF}, {filled}", states, alone=alone)
        if self.out and self.within:
            clothed, *_ = self._filled_so(self.own.movers, self.clothed, ["what opens"])
            alone = self._one_out(loaded=True, clothed=True)
            row = self._turn(CLOTHED, [Held(clothed, loaded=True)], alone=alone)
            yield replace(row, source=CLOTHING.source)
        yield from map(self._alone, self.out)

    def _one_out(self, *, loaded: bool, clothed: bool = False) -> list[Held]:
        """With each drawer alone out."""
        states = [same for each in self.out for same in self.states([each], clothed=clothed)]
        return [each for each in states if each.loaded is loaded]

    def doors(self) -> Iterator[Row]:
        """With every door open, and with each alone open."""
        states = self.states(self.swung) if self.swung else ()
        for filled, some in by_filling(states, "with what is on them"):
            yield self._turn(f"{DOORS_OPEN}, {filled}", some)
        yield from map(self._alone, self.swung)

    def pulled(self) -> Iterator[Row]:
        """A pull at its top, with every drawer and door open."""
        height = min(self.height, PULL_HEIGHT.value)

        def asked(*opened: Sequence[Mover]) -> Asked:
            states = [state for each in opened for state in self.states(each, clothed=True)]
            trials = tuple(Pulled(each, height) for each in states)
            return Asked(trials, self.stand, PULL.value)

        shut: tuple[Mover, ...] = ()
        yield Row(
            PULLED,
            asked(shut, self.own.movers),
            formula=_PULLS,
            source=PULL.source,
            given=(Input("H", "height of the pull", height, "mm", PULL_HEIGHT.source),),
            notes=self._filled(clothed=True),
            alone=asked(shut, *self.one_at_a_time) if len(self.out) > 1 else None,
        )

    def climbed(self) -> Iterator[Row]:
        """A child on the foremost edge of what is open, or of a shelf where nothing opens, the unit
        on a carpet."""
        movers = self.own.movers
        edges = tuple(each.edge for each in movers) or self.shelves
        if not edges or not self.free:
            return

        def asked(*opened: Sequence[Mover]) -> Asked:
            trials = tuple(
                Pressed(state, tuple(mover.edge for mover in each) or edges)
                for each in opened
                for state in self.states(each, clothed=True)
            )
            return Asked(trials, self.on_carpet, CHILD.value)

        yield Row(
            CLIMBED if movers else CLIMBED_SHELVES,
            asked(movers),
            edges=edges,
            source=CHILD.source,
            notes=(
                *self._filled(clothed=True),
                "how the load is put on is ASTM F2057-23, 9.2.3, from memory",
            ),
            alone=asked(*self.one_at_a_time) if len(self.out) > 1 else None,
        )

    @property
    def one_at_a_time(self) -> tuple[tuple[Mover, ...], ...]:
        """What is open where an interlock lets out one drawer at a time."""
        return tuple((each, *self.swung) for each in self.out)

    def _alone(self, mover: Mover) -> Row:
        trials = tuple(Pressed(each, (mover.edge,)) for each in self.states([mover]))
        return Row(
            f"{ALONE}, it alone {'drawn out' if mover.is_drawer else 'open'}",
            Asked(trials, self.stand, OPEN_ELEMENT.value),
            edges=(mover.edge,),
            subject=mover.subject,
            parts=mover.motion.refs[:1],
            source=OPEN_ELEMENT.source,
            notes=self._filled(),
        )

    def _turn(
        self,
        what: str,
        states: Sequence[Held],
        *,
        ways: tuple[Way, ...] = ("forward",),
        alone: Sequence[Held] = (),
    ) -> Row:
        limit = self.stand.lean if "forward" in ways else 0.0

        def asked(states: Sequence[Held]) -> Asked:
            return Asked(tuple(Turned(each, ways) for each in states), self.stand, limit)

        but = asked(alone) if len(self.out) > 1 and alone else None
        return Row(what, asked(states), measure="degrees", formula=_TURNS, alone=but)

    def _filled(self, *, clothed: bool = False) -> tuple[str, ...]:
        """Whether it is tried empty alone, or with what it is to carry too."""
        lots = self.clothed if clothed else self.own
        if not (self.free and lots.loaded):
            return ("empty",)
        said = (
            "empty and with what it is to carry, whichever is worse; what is only assumed, or lies "
            "on its top, on and off"
        )
        assumed = f"in drawers of which nothing is said, clothing ({CLOTHING.source})"
        return (said, assumed) if clothed and self.clothed != self.own else (said,)
