"""Plans where some sheets have fewer good faces than some pieces show."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType

from rodwright.cutting.plans import CannotCutError, Layout, Plan
from rodwright.cutting.progress import Patience
from rodwright.cutting.work import Lot

Planning = Callable[[Lot, Patience], Plan]
"""Plans a lot, whatever its pieces show."""

_SAME = 1e-6
"""Costs that differ by no more are the same."""


def faces_differ(lot: Lot) -> bool:
    """Whether some pieces of a lot mustn't come from some of its supplies."""
    most = max(lot.faces.values(), default=0)
    return any(offer.show_faces < most for offer in lot.offers)


def plan_by_faces(lot: Lot, planning: Planning, patience: Patience) -> Plan:
    """The cheapest plan, and of as cheap ones that of fewest sheets, of those tried: all pieces
    from all supplies, if that happens to keep the good faces for those that show them; the pieces
    that show most first, and the others from what is left; or all of them from what is good enough
    for all.

    Its bound is that of all pieces from all supplies, below which nothing can be.

    Raises:
        CannotCutError: a piece goes on no stock that is good enough, or there is too little of it.
    """
    free = planning(lot, _Share(patience, 3))
    if not free.left and _keeps_faces(lot, free):
        return free
    found: list[Plan] = []
    refused: list[CannotCutError] = []
    for number, way in enumerate((_most_shown_first, _good_for_all)):
        try:
            found.append(way(lot, planning, patience, 2 - number))
        except CannotCutError as why:
            refused.append(why)
    if not found:
        raise refused[0]
    best = min(found, key=_worth)
    stopped = free.stopped or any(each.stopped for each in found)
    held = held_to(best, free.bound, stopped=stopped)
    as_few = free.fewest and len(best.layouts) <= len(free.layouts)
    return replace(held, fewest=held.proven and as_few)


def held_to(plan: Plan, bound: float, *, stopped: bool = False) -> Plan:
    """A plan with the bound of a problem that asks for less: nothing costs less is proven where it
    reaches that, and nothing of how many sheets others take."""
    proven = not plan.left and plan.cost <= bound + _SAME
    return replace(
        plan,
        bound=min(bound, plan.cost),
        proven=proven,
        stopped=plan.stopped or stopped,
        fewest=False,
    )


class _Share(Patience):
    """An even share of what is left of a patience, for one of so many searches; told to nobody,
    since none of them is the whole question."""

    def __init__(self, whole: Patience, searches: int) -> None:
        seconds = None if whole.seconds is None else whole.left / searches
        super().__init__(seconds, stopped=whole.stopped)
        self._whole = whole

    def stop(self) -> None:
        """Stop all of them."""
        super().stop()
        self._whole.stop()

    @property
    def left(self) -> float:
        """Seconds that are left to this one; 0 once any was stopped."""
        return 0.0 if self._whole.stopped else super().left


def _worth(plan: Plan) -> tuple[int, float, int]:
    """What makes one plan better than another: less of it."""
    return sum(each.count for each in plan.left), round(plan.cost, 6), len(plan.layouts)


def _faces_of(lot: Lot) -> dict[str, int]:
    return {offer.supply.name: offer.show_faces for offer in lot.offers}


def _keeps_faces(lot: Lot, plan: Plan) -> bool:
    """Whether every piece comes from what is good enough for it."""
    there = _faces_of(lot)
    return all(
        lot.faces.get(each.piece, 0) <= there.get(layout.stock, 2)
        for layout in plan.layouts
        for each in layout.placed
    )


def _part_of(
    lot: Lot, names: Collection[str], faces: int, used: Mapping[str, int] = MappingProxyType({})
) -> Lot:
    """Some pieces of a lot, and what of its supplies has so many good faces and isn't used."""
    there = _faces_of(lot)
    supplies = []
    for supply in lot.supplies:
        if there.get(supply.name, 2) < faces:
            continue
        left = None if supply.count is None else supply.count - used.get(supply.name, 0)
        if left is None or left > 0:
            supplies.append(replace(supply, count=left))
    pieces = tuple(each for each in lot.pieces if each.name in names)
    return replace(lot, pieces=pieces, supplies=tuple(supplies))


def _most_shown_first(lot: Lot, planning: Planning, patience: Patience, ways: int) -> Plan:
    by_faces: dict[int, list[str]] = {}
    for piece in lot.pieces:
        by_faces.setdefault(lot.faces.get(piece.name, 0), []).append(piece.name)
    used: Counter[str] = Counter()
    plans: list[Plan] = []
    for faces in sorted(by_faces, reverse=True):
        part = _part_of(lot, by_faces[faces], faces, used)
        plans.append(planning(part, _Share(patience, ways * len(by_faces) - len(plans))))
        used.update(plans[-1].used)
    return _joined(plans)


def _good_for_all(lot: Lot, planning: Planning, patience: Patience, ways: int) -> Plan:
    names = [piece.name for piece in lot.pieces]
    return planning(_part_of(lot, names, max(lot.faces.values())), _Share(patience, ways))


def _joined(plans: Sequence[Plan]) -> Plan:
    """Several plans as one; what each is proven to be says nothing of the whole."""
    layouts: tuple[Layout, ...] = tuple(layout for plan in plans for layout in plan.layouts)
    return Plan(
        layouts,
        sum(plan.cost for plan in plans),
        0.0,
        False,
        plans[0].kerf,
        tuple(piece for plan in plans for piece in plan.left),
        any(plan.stopped for plan in plans),
    )
