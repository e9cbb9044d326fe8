"""All cuts of a lot in one order, with few settings of the fence and the stop."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import replace
from heapq import heappop, heappush
from itertools import count

from rodwright.cutting.offcuts import Kept
from rodwright.cutting.plans import Layout
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps.bench import Bench, Run
from rodwright.cutting.steps.cuts import LotSteps, Result, SheetSteps, Step
from rodwright.cutting.steps.panels import Panel, panel_of
from rodwright.cutting.steps.runs import sheet_run
from rodwright.cutting.supplies import Supply
from rodwright.cutting.work import LotPlan

_Alike = list[tuple[Layout, tuple[int, ...]]]
"""Layouts with the places, in the plan, of all that are like them."""
_Cut = tuple[int, Step]
"""A step and the place of its sheet."""


def lot_steps(planned: LotPlan, saw: Saw, kept: Sequence[Kept] = ()) -> LotSteps:
    """The cuts of a lot in their order; of ``kept`` its own offcuts alone.

    Heavy and large things are broken down first; then come round after round of rips and
    crosscuts, in each the cuts of one setting together, settings descending, on all sheets.

    Raises:
        ValueError: saw cuts from edge to edge don't part what lies on a sheet.
    """
    alike = gathered(planned.plan.layouts)
    benches, wholes, runs = [], [], []
    for layout, places in alike:
        bench = _bench(planned, saw, kept, layout, places)
        run, whole = sheet_run(bench, _panel(planned, bench.stock, layout), str(places[0] + 1))
        benches.append(bench)
        wholes.append(whole)
        runs.append(run)
    order = _in_order(runs)
    cuts, ready = _labelled(order, wholes, [len(places) for _, places in alike])
    by_sheet: dict[int, list[Step]] = defaultdict(list)
    places_of = []
    for sheet, step in cuts:
        places_of.append((sheet, len(by_sheet[sheet])))
        by_sheet[sheet].append(replace(step, number=len(by_sheet[sheet]) + 1))
    sheets = tuple(
        SheetSteps(layout, bench.stock, tuple(place + 1 for place in places),
                   tuple(by_sheet[number]), ready[number])
        for number, ((layout, places), bench) in enumerate(zip(alike, benches, strict=True))
    )  # fmt: skip
    return LotSteps(
        planned.lot, saw, planned.plan.kerf, sheets, tuple(places_of),
        settings([step for _, step in cuts]),
    )  # fmt: skip


def gathered(layouts: Sequence[Layout]) -> _Alike:
    """Equal layouts together, in the order of the first of each."""
    places: dict[Layout, list[int]] = {}
    for place, layout in enumerate(layouts):
        places.setdefault(layout, []).append(place)
    return [(layout, tuple(those)) for layout, those in places.items()]


def settings(steps: Sequence[Step]) -> int:
    """How often the fence and the stop are set, or a line's measure changes, if cuts are made in
    this order; not counted are those that are made with a saw carried to them."""
    last: dict[bool, tuple[float, float]] = {}
    changes = 0
    for step in steps:
        if step.how == "carried":
            continue
        now = round(step.setting, 3), round(step.angle, 2)
        changes += last.get(step.along) != now
        last[step.along] = now
    return changes


def _bench(
    planned: LotPlan, saw: Saw, kept: Sequence[Kept], layout: Layout, places: Sequence[int]
) -> Bench:
    lot = planned.lot
    stock = next(supply for supply in lot.supplies if supply.name == layout.stock)
    named = {
        offcut: tuple(
            each.name for place in places for each in kept
            if each.layout == place and each.offcut == offcut
        )
        for offcut in layout.offcuts
    }  # fmt: skip
    names = {offcut: those for offcut, those in named.items() if those}
    return Bench(lot, stock, saw, planned.plan.kerf, names)


def _panel(planned: LotPlan, stock: Supply, layout: Layout) -> Panel:
    panel = panel_of(layout, stock, planned.lot.pieces, planned.plan.kerf)
    if panel is None:
        raise ValueError(f"saw cuts from edge to edge don't part what lies on a {stock.name}")
    return panel


def _in_order(runs: Sequence[Run]) -> list[_Cut]:
    """One order of all cuts, each after those that it needs."""
    ready: list[tuple[tuple[bool, int, bool, float, int], int, int, Run, int]] = []
    numbers = count()

    def put(run: Run, at: int, sheet: int) -> None:
        if at < len(run):
            heappush(ready, (_urgency(run[at].step, sheet), next(numbers), at, run, sheet))

    for sheet, run in enumerate(runs):
        put(run, 0, sheet)
    order = []
    while ready:
        _, _, at, run, sheet = heappop(ready)
        order.append((sheet, run[at].step))
        put(run, at + 1, sheet)
        for child in run[at].then:
            put(child, 0, sheet)
    return order


def _urgency(step: Step, sheet: int) -> tuple[bool, int, bool, float, int]:
    """What is too heavy or too large first; rounds in turn; rips first; wide settings first."""
    return step.how != "carried", step.stage, not step.along, -round(step.setting, 3), sheet


def _labelled(
    order: Sequence[_Cut], wholes: Sequence[Result | None], many: Sequence[int]
) -> tuple[list[_Cut], list[Result | None]]:
    """The same cuts, with pieces' labels given out in their order: one for each equal sheet."""
    given: dict[str, int] = defaultdict(int)

    def label(result: Result | None, sheet: int) -> Result | None:
        if result is None or result.what not in ("piece", "outer"):
            return result
        first = given[result.name]
        given[result.name] += many[sheet]
        return replace(result, copies=tuple(range(first, first + many[sheet])))

    ready = [label(whole, sheet) for sheet, whole in enumerate(wholes)]
    cuts = [
        (sheet, replace(step, measured=label(step.measured, sheet), rest=label(step.rest, sheet)))
        for sheet, step in order
    ]
    return cuts, ready
