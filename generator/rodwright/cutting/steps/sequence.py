"""All cuts of a lot in one order, with few settings of the fence and the stop."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import replace
from heapq import heappop, heappush
from itertools import count
from math import inf

from rodwright.cutting.offcuts import Kept
from rodwright.cutting.plans import Layout
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps.bench import Bench, Run
from rodwright.cutting.steps.cuts import LotSteps, Result, SheetSteps, Step
from rodwright.cutting.steps.panels import Axis, Panel, panel_of
from rodwright.cutting.steps.routed import contours_of
from rodwright.cutting.steps.runs import sheet_run
from rodwright.cutting.steps.settings import is_opening, times_set
from rodwright.cutting.supplies import Supply
from rodwright.cutting.work import LotPlan

_Alike = list[tuple[Layout, tuple[int, ...]]]
"""Layouts with the places, in the plan, of all that are like them."""
_Cut = tuple[int, Step]
"""A step and the place of its sheet."""


def lot_steps(
    planned: LotPlan, saw: Saw, kept: Sequence[Kept] = (), first: Axis | None = None
) -> LotSteps:
    """The cuts of a lot in their order; of ``kept`` its own offcuts alone.  ``first`` is how the
    first cuts run, if that was asked.

    Heavy and large things are broken down first; then come round after round of rips and
    crosscuts, in each the cuts of one setting together, settings descending, on all sheets.

    Raises:
        ValueError: saw cuts from edge to edge don't part what lies on a sheet.
    """
    alike = gathered(planned.plan.layouts)
    benches = [_bench(planned, saw, kept, layout, places) for layout, places in alike]
    if saw.kind == "router" and planned.lot.kind == "sheet":
        return _routed(planned, saw, alike, benches)
    wholes, runs = [], []
    for (layout, places), bench in zip(alike, benches, strict=True):
        panel = _panel(planned, bench.stock, layout, first)
        run, whole = sheet_run(bench, panel, str(places[0] + 1))
        wholes.append(whole)
        runs.append(run)
    many = [len(places) for _, places in alike]
    cuts, ready = _labelled(_in_order(runs), wholes, many)
    by_sheet: dict[int, list[Step]] = defaultdict(list)
    order = []
    for sheet, step in cuts:
        order.append((sheet, len(by_sheet[sheet])))
        by_sheet[sheet].append(replace(step, number=len(by_sheet[sheet]) + 1))
    sheets = tuple(
        replace(_sheet(alike[place], bench), steps=tuple(by_sheet[place]), whole=ready[place])
        for place, bench in enumerate(benches)
    )
    steps = LotSteps(planned.lot, saw, planned.plan.kerf, sheets, tuple(order))
    return replace(steps, settings=times_set(steps))


def _routed(planned: LotPlan, saw: Saw, alike: _Alike, benches: Sequence[Bench]) -> LotSteps:
    given: dict[str, int] = defaultdict(int)
    sheets = []
    for those, bench in zip(alike, benches, strict=True):
        layout, places = those
        contours = contours_of(layout, bench.lot, len(places), given)
        sheets.append(replace(_sheet(those, bench), contours=contours))
    return LotSteps(planned.lot, saw, planned.plan.kerf, tuple(sheets))


def _sheet(alike: tuple[Layout, tuple[int, ...]], bench: Bench) -> SheetSteps:
    layout, places = alike
    numbers = tuple(place + 1 for place in places)
    return SheetSteps(
        layout,
        bench.stock,
        numbers,
        (),
        kept=tuple(bench.names.items()),
        jointed=bench.jointed,
    )


def gathered(layouts: Sequence[Layout]) -> _Alike:
    """Equal layouts together, in the order of the first of each."""
    places: dict[Layout, list[int]] = {}
    for place, layout in enumerate(layouts):
        places.setdefault(layout, []).append(place)
    return [(layout, tuple(those)) for layout, those in places.items()]


def _bench(
    planned: LotPlan, saw: Saw, kept: Sequence[Kept], layout: Layout, places: Sequence[int]
) -> Bench:
    lot = planned.lot
    stock = next(supply for supply in lot.supplies if supply.name == layout.stock)
    named = {
        offcut: tuple(
            each.name
            for place in places
            for each in kept
            if each.layout == place and each.offcut == offcut
        )
        for offcut in layout.offcuts
    }
    names = {offcut: those for offcut, those in named.items() if those}
    return Bench(lot, stock, saw, planned.plan.kerf, names)


def _panel(planned: LotPlan, stock: Supply, layout: Layout, first: Axis | None) -> Panel:
    panel = panel_of(layout, stock, planned.lot, planned.plan.kerf, first)
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
    """What is too heavy or too large first; rounds in turn; rips first; ends made square or
    slanted first, then wide settings."""
    setting = inf if is_opening(step) and not step.along else round(step.setting, 3)
    return step.how != "carried", step.stage, not step.along, -setting, sheet


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
