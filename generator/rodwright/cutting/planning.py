"""Plans for lots, by the engine that suits each, and the time they may take together."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from time import monotonic

from rodwright.cutting.good_faces import faces_differ, held_to, plan_by_faces
from rodwright.cutting.offcuts import Least
from rodwright.cutting.offer import Place, place_of
from rodwright.cutting.plans import CannotCutError, Plan
from rodwright.cutting.progress import Brief, Patience
from rodwright.cutting.whole import Rules
from rodwright.cutting.work import Lot, LotPlan

Told = Callable[[Lot, float, float], None]
"""Who is told of a lot's best cost so far, and of the bound."""


def _silent(_lot: Lot, _cost: float, _bound: float) -> None:
    pass


@dataclass(slots=True)
class Watch:
    """How long the searches for several lots may take together.

    ``seconds`` of the clock (None: each to its own end): a lot has an even share of what is left
    to it and to those that follow.  :meth:`stop` ends the search that is on, and all later ones
    with the first plan they find.
    """

    seconds: float | None = None
    told: Told = _silent
    stopped: bool = False
    _on: Patience | None = None
    _began: float = field(default_factory=monotonic)

    def share(self, lot: Lot, lots_left: int) -> Patience:
        """The patience for the next lot; ``lots_left`` counts it too."""
        left = self._left()
        seconds = None if left is None else left / lots_left
        self._on = Patience(seconds, lambda cost, bound: self.told(lot, cost, bound), self.stopped)
        return self._on

    def brief(self) -> Patience:
        """The patience for a short search, of which nobody is told."""
        self._on = Brief(self._left(), stopped=self.stopped)
        return self._on

    def _left(self) -> float | None:
        """Seconds that are left, if there is a limit."""
        if self.seconds is None:
            return None
        return max(0.0, self.seconds - (monotonic() - self._began))

    def over(self) -> bool:
        """Whether nothing more is to be searched for."""
        return self.stopped or self._left() == 0.0

    def stop(self) -> None:
        """Stop as soon as it can be."""
        self.stopped = True
        if self._on is not None:
            self._on.stop()


class LotError(ValueError):
    """A lot can't be cut: ``why`` says of which pieces."""

    def __init__(self, lot: Lot, why: CannotCutError) -> None:
        super().__init__(f"{lot.name}: {why}")
        self.lot = lot
        self.why = why


def plan_lots(
    lots: Sequence[Lot], rules: Rules, least: Least, seed: int, watch: Watch
) -> tuple[LotPlan, ...]:
    """Plan each lot; what one takes from an entry of the rack the next ones no longer have.

    The bound of a lot is always that with all there is for it: it holds for any way in which lots
    may share what is at hand.

    Raises:
        LotError: a piece goes on no stock, or there is proven to be too little.
    """
    planned: list[LotPlan] = []
    taken: Counter[Place] = Counter()
    for number, whole in enumerate(lots):
        lot = without(whole, taken)
        watch.told(lot, float("inf"), 0.0)
        patience = watch.share(lot, len(lots) - number)
        try:
            plan = plan_of(lot, rules, least, seed, patience)
        except CannotCutError as why:
            raise LotError(lot, why) from why
        if lot is not whole and plan.cost > 0:
            share = watch.share(lot, len(lots) - number)
            plan = held_to(plan, plan_of(whole, rules, least, seed, share).bound)
        if patience.stopped and watch.seconds is None:
            watch.stop()
        planned.append(LotPlan(lot, plan))
        for offer in lot.offers:
            if offer.at_hand:
                taken[place_of(offer)] += plan.used.get(offer.supply.name, 0)
    return tuple(planned)


def without(lot: Lot, taken: Counter[Place]) -> Lot:
    """A lot without what others have taken of what is at hand."""
    left = []
    for offer in lot.offers:
        gone = taken[place_of(offer)] if offer.at_hand else 0
        there = offer.supply.count
        if there is not None and gone:
            if there <= gone:
                continue
            offer = replace(offer, supply=replace(offer.supply, count=there - gone))
        left.append(offer)
    if left == list(lot.offers):
        return lot
    return replace(lot, supplies=tuple(each.supply for each in left), offers=tuple(left))


def plan_of(lot: Lot, rules: Rules, least: Least, seed: int, patience: Patience) -> Plan:
    """The plan of a lot: boards and lengths are ripped and cut to length, sheets are cut by the
    rules; pieces come from what has as many good faces as they show.

    Raises:
        CannotCutError: a piece goes on no stock, or there is proven to be too little.
    """

    def planning(part: Lot, share: Patience) -> Plan:
        return _by_its_engine(part, rules, least, seed, share)

    if faces_differ(lot):
        return plan_by_faces(lot, planning, patience)
    return planning(lot, patience)


def _by_its_engine(lot: Lot, rules: Rules, least: Least, seed: int, patience: Patience) -> Plan:
    if lot.kind != "sheet":
        from rodwright.cutting import plan_boards

        kerf = rules.saw.kerf
        return plan_boards(lot.pieces, lot.supplies, kerf=kerf, seed=seed, patience=patience)
    from rodwright.cutting import plan_sheets

    free = rules.router is not None
    plan: Plan = plan_sheets(
        lot.pieces,
        lot.supplies,
        kerf=rules.between,
        guillotine=not free,
        stages=None if free else rules.stages,
        first_cut=None if free else rules.first_cut,
        head_cuts=rules.head_cuts and not free,
        least_offcut=(least.length, least.width),
        seed=seed,
        patience=patience,
    )
    return plan
