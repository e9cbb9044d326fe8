"""How a cutting plan is told: sizes, costs, how good it is, and what to take care of."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import ceil

from rodwright.amounts import AREAS, RUNS, format_weight
from rodwright.cutting.offers import Offer
from rodwright.cutting.plans import Plan
from rodwright.cutting.pricing import PricedBy, offer_of, priced_by
from rodwright.cutting.shopping import ShoppingRow, paid, unused_beside, without_price
from rodwright.cutting.steps import LotSteps, Result, SheetSteps
from rodwright.cutting.steps.words import cautions as cautions_of
from rodwright.cutting.steps.words import written
from rodwright.cutting.supplies import Supply
from rodwright.cutting.whole import ONE_MORE, Cutting, OneMore
from rodwright.cutting.work import Lot, LotPlan
from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit, format_length
from rodwright.trade.lifting import people, sheet_lift, sheet_people
from rodwright.trade.stock_sizes import ALIKE

_NOUNS = {
    "sheet": ("sheet", "sheets"),
    "board": ("board", "boards"),
    "length": ("length", "lengths"),
}


def counted(lot: Lot, count: int) -> str:
    """So many sheets, boards or lengths."""
    return f"{count} {_NOUNS[lot.kind][count != 1]}"


def size_said(lot: Lot, length: float, width: float, unit: LengthUnit) -> str:
    """Length and width of something of a lot, without the unit; of bought lengths their length."""
    sizes = [length] if lot.kind == "length" else [length, width]
    return " x ".join(format_length(each, unit) for each in sizes)


def lot_title(lot: Lot, unit: LengthUnit) -> str:
    """What a lot is of: ``birch plywood, 18 mm``, or with the section of bought lengths."""
    sides = [lot.thickness] if lot.kind != "length" else [lot.section, lot.thickness]
    section = " x ".join(format_length(each, unit) for each in sides)
    return f"{lot.material}, {section} {unit}"


def offer_title(lot: Lot, offer: Offer, unit: LengthUnit) -> str:
    """What is bought or taken of a lot; boards that have still to be planed by both thicknesses:
    ``european ash, sawn 27, planed 22 mm``."""
    both = thicknesses_said(lot, offer, unit)
    return f"{lot.material}, {both} {unit}" if both else lot_title(lot, unit)


def thicknesses_said(lot: Lot, offer: Offer, unit: LengthUnit) -> str:
    """How thick a board lies there and how thick it is once it is planed, without the unit; empty
    where that is the same."""
    if lot.kind != "board" or abs(offer.lies - lot.thickness) <= ALIKE + TOUCH:
        return ""
    lies, gets = (format_length(each, unit) for each in (offer.lies, lot.thickness))
    now = f"{lies} thick" if offer.sawn_thickness is None else f"sawn {lies}"
    return f"{now}, planed {gets}"


def noun(lot: Lot) -> str:
    """What is cut of a lot: sheets, boards or lengths, one of them."""
    return _NOUNS[lot.kind][0]


def money(amount: float) -> str:
    """A price or a cost, in the maker's own money, which has no sign."""
    return f"{amount + 0.0:.2f}"


def cost_said(lot: Lot, amount: float, unit: LengthUnit) -> str:
    """A cost of a lot's plan: money, or how much is cut up where no price is known."""
    if priced_by(lot) is not PricedBy.SIZE:
        return money(amount)
    return (AREAS if any(each.width for each in lot.supplies) else RUNS)[unit].said(amount)


_LEAST = {PricedBy.MONEY: "cost", PricedBy.ESTIMATE: "cost", PricedBy.SIZE: "wood"}


def nothing_to_buy(lot: Lot, plan: Plan) -> bool:
    """Whether all that is cut is at hand."""
    return bool(plan.layouts) and all(offer_of(lot, each).at_hand for each in plan.used)


def proof_said(lot: Lot, plan: Plan, unit: LengthUnit) -> str:
    """How good a plan is known to be: never said to be nearer to the best than it is."""
    if plan.proven and nothing_to_buy(lot, plan):
        few = _NOUNS[lot.kind][1]
        if plan.fewest:
            return f"proven best (fewest {few})"
        return f"whether fewer {few} would do isn't proven"
    if plan.proven:
        return f"proven best (least {_LEAST[priced_by(lot)]})"
    bound = cost_said(lot, plan.bound, unit)
    if plan.cost <= plan.bound:
        return f"none costs less (bound {bound})"
    if plan.bound <= 0:
        return "whether that is the best isn't known"
    verb = "take" if priced_by(lot) is PricedBy.SIZE else "cost"
    saved = ceil((1 - plan.bound / plan.cost) * 1000 - 1e-6) / 10
    return f"at most {saved:g} % could be saved: none can {verb} less than {bound}"


def lot_summary(planned: LotPlan, unit: LengthUnit) -> str:
    """What a lot takes and costs, and how good that is: ``2 sheets, 148.00, proven best ...``."""
    lot, plan = planned.lot, planned.plan
    cost = cost_said(lot, plan.cost, unit)
    if nothing_to_buy(lot, plan):
        cost = "nothing to buy"
    elif priced_by(lot) is PricedBy.ESTIMATE:
        cost = f"{cost} by estimate"
    told = [counted(lot, len(plan.layouts)), cost, proof_said(lot, plan, unit)]
    if plan.stopped and not plan.proven:
        told.append("stopped before the end of the search")
    if lot.glued_up:
        told.append("by the strips that its panels are glued up of")
    return ", ".join(told)


def row_said(cutting: Cutting, row: ShoppingRow) -> str:
    """What is bought, or taken from the rack, in a line."""
    lot = cutting.lots[row.lot].lot
    size = size_said(lot, row.supply.length, row.supply.width, cutting.unit)
    title = offer_title(lot, row.offer, cutting.unit)
    return f"{counted(lot, row.count)} of {title}, {size} {cutting.unit}"


def unused_said(cutting: Cutting, at: int) -> str:
    """What stays in the rack though something is bought for a lot; empty where nothing does."""
    unused = unused_beside(cutting, at)
    if not unused:
        return ""
    where = "in the rack" if all(each.offer.entry for each in unused) else "at hand"
    names = (
        each.offer.supply.name if each.count == 1 else f"{each.count} of {each.offer.supply.name}"
        for each in unused
    )
    return f"left {where}: {', '.join(names)}"


def supply_weight(lot: Lot, supply: Supply) -> float:
    """kg of one sheet, board or length."""
    side = supply.width or lot.section
    return supply.length * side * lot.thickness * lot.density / 1e9


def one_more_lines(cutting: Cutting) -> tuple[str, ...]:
    """What one more size would change: of each lot the one that saves most, and in one line the
    lots for which none saves anything."""
    told, useless = [], []
    for at, planned in enumerate(cutting.lots):
        changes = [each for each in cutting.one_more if each.lot == at]
        best = max(changes, key=lambda each: each.saved, default=None)
        if best is not None and best.saved:
            told.append(_saving(cutting, best))
        elif best is not None:
            useless.append(lot_title(planned.lot, cutting.unit))
    if useless:
        told.append(f"nothing would be saved with another usual size of {'; '.join(useless)}")
    return tuple(told)


def _saving(cutting: Cutting, change: OneMore) -> str:
    planned, unit = cutting.lots[change.lot], cutting.unit
    lot = planned.lot
    new = f"{change.used.get(ONE_MORE, 0)} of {_sizes_said(cutting, change)}"
    if priced_by(lot) is not PricedBy.SIZE:
        by = ", by its area as nobody said a price" if change.in_proportion else ""
        new += f" (at {money(change.price)} each{by})"
    others = {name: many for name, many in change.used.items() if name != ONE_MORE}
    then = _all_said([new, *_bought_said(lot, others, unit)], _own_said(lot, others))
    now = _all_said(_bought_said(lot, planned.plan.used, unit), _own_said(lot, planned.plan.used))
    less = cost_said(lot, change.saved, unit)
    return f"{lot_title(lot, unit)}: {then} instead of {now}: {less} less"


def _bought_said(lot: Lot, used: Mapping[str, int], unit: LengthUnit) -> list[str]:
    """How many of each size are bought."""
    offers = [(offer_of(lot, name), many) for name, many in used.items()]
    return [
        f"{many} of {size_said(lot, each.supply.length, each.supply.width, unit)} {unit}"
        for each, many in offers
        if not each.at_hand
    ]


def _own_said(lot: Lot, used: Mapping[str, int]) -> list[str]:
    """What is taken of the maker's own."""
    return [
        name if many == 1 else f"{many} of {name}"
        for name, many in used.items()
        if offer_of(lot, name).at_hand
    ]


def _all_said(bought: Sequence[str], own: Sequence[str]) -> str:
    *most, last = [*bought, *([f"your {_listed(own)}"] if own else [])]
    return f"{', '.join(most)} and {last}" if most else last


def _listed(names: Sequence[str]) -> str:
    *most, last = names
    return f"{', '.join(most)} and {last}" if most else last


def _sizes_said(cutting: Cutting, change: OneMore) -> str:
    lot = cutting.lots[change.lot].lot
    return f"{size_said(lot, change.length, change.width, cutting.unit)} {cutting.unit}"


def to_pay_said(rows: Sequence[ShoppingRow]) -> str:
    """What all that is bought costs; what has no price is never counted as nothing."""
    lacking, known = without_price(rows), paid(rows)
    if not lacking:
        return money(known)
    return f"{money(known)} and what has no price" if known else "not known, as no price is given"


NO_HARDWARE = (
    "Screws, hinges, edging and the like aren't in it: `rodwright parts` lists them. Without tax."
)


def cautions(cutting: Cutting, steps: Sequence[LotSteps]) -> tuple[str, ...]:
    """What to take care of, in a few lines for the whole plan."""
    told = list(dict.fromkeys(line for each in steps for line in cautions_of(each)))
    used = [
        (supply_weight(planned.lot, supply), planned.lot, supply)
        for planned in cutting.lots
        for supply in planned.lot.supplies
        if supply.name in planned.plan.used
    ]
    if used:
        mass, lot, supply = max(used, key=lambda each: each[0])
        if mass > sheet_lift(lot.thickness).limit:
            count = sheet_people(supply.length, lot.thickness, mass)
            weight = format_weight(mass, cutting.unit, 0)
            told.append(f"The heaviest weighs {weight} before it is cut: {people(count)} lift it.")
    return tuple(told)


def numbers_said(numbers: Sequence[int]) -> str:
    """``1``, ``2-4`` or ``1, 5``."""
    runs: list[list[int]] = []
    for number in numbers:
        if runs and runs[-1][-1] == number - 1:
            runs[-1][-1] = number
        else:
            runs.append([number, number])
    return ", ".join(f"{first}-{last}" if first != last else f"{first}" for first, last in runs)


def refs_said(steps: LotSteps, sheet: SheetSteps) -> str:
    """The refs of all pieces that come out of a sheet, and of those that are cut like it."""
    results = [result for step in sheet.steps for result in step.results]
    done = [each for each in (sheet.whole, *results) if each is not None]
    done += [
        Result("piece", each.name, each.length, each.width, each.copies)
        for each in sheet.contours
        if not each.inner
    ]
    pieces = (each for each in done if each.what in ("piece", "outer"))
    return ", ".join(ref for each in pieces for ref in dict.fromkeys(written(steps, each)))
