"""Runs of cuts: a panel is parted cut after cut, and what falls off is cut in runs of its own.

Within a run the order is fixed; which run goes on next is left to :mod:`.sequence`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from rodwright.cutting.plans import Placed
from rodwright.cutting.steps.bars import bar_run
from rodwright.cutting.steps.bench import OPPOSITE, Bench, Edges, Hand, Run, Task, Way
from rodwright.cutting.steps.break_down import best_cut
from rodwright.cutting.steps.cuts import CutKind, Result, State
from rodwright.cutting.steps.panels import NOISE, Axis, Block, Panel, Rectangle, divided

_OTHER: dict[Axis, Axis] = {"along": "across", "across": "along"}
_KINDS: dict[Axis, CutKind] = {"along": "rip", "across": "crosscut"}
_Left = tuple[Result | None, tuple[Run, ...]]
"""What a cut leaves on one side, and the cuts that are made in it."""


def sheet_run(bench: Bench, panel: Panel, name: str) -> tuple[Run, Result | None]:
    """All cuts of a sheet; and what it is where it needs none."""
    stock = bench.stock
    axis: Axis = panel.axis or ("along" if stock.width and not panel.slanted else "across")
    stage = 1 if axis == "along" else 0
    hand = bench.whole(name, stage - 1)
    trims: list[Task] = []
    if stock.width:
        for task, after in _square_trims(bench, hand, panel, _OTHER[axis]):
            trims.append(task)
            hand = after
    parts = list(_with_trims(bench, panel, axis, hand.area))
    hand = replace(hand, stage=stage)
    if len(parts) > 1 or panel.slanted:
        return (*trims, *parts_run(bench, hand, axis, parts)), None
    whole, runs = part_left(bench, hand, parts[0])
    if trims:
        # What was measured last is what stays.
        trims[-1] = Task(replace(trims[-1].step, measured=whole), runs)
        return tuple(trims), None
    return (runs[0] if runs else ()), whole


def _square_trims(
    bench: Bench, hand: Hand, panel: Panel, axis: Axis
) -> Iterator[tuple[Task, Hand]]:
    """Trims of the edges that the first cuts run to."""
    low, high = panel.area.span(axis)
    for edge, from_high in zip(OPPOSITE[axis], (True, False), strict=True):
        start, stop = hand.area.span(axis)
        if (low - start if from_high else stop - high) < NOISE:
            continue
        at = low - bench.kerf if from_high else high
        keeps = (low, stop) if from_high else (start, high)
        falls = (start, at) if from_high else (at + bench.kerf, stop)
        after = hand.left(hand.area.spanning(axis, *keeps), edge, "trimmed")
        waste = bench.rest(hand.area.spanning(axis, *falls), axis)
        sides = (waste, bench.panel(after)) if from_high else (bench.panel(after), waste)
        yield Task(bench.step(hand, Way(axis, at, from_high, "trim"), *sides)), after
        hand = after


def _with_trims(bench: Bench, panel: Panel, axis: Axis, area: Rectangle) -> Iterator[Panel]:
    """A sheet's parts, with what is trimmed off before the first and behind the last."""
    start, stop = area.span(axis)
    low, high = panel.area.span(axis)
    parts = list(panel.parts or (panel,))
    if low - start > NOISE:
        yield Panel(area.spanning(axis, start, low - bench.kerf), trim=True)
    if stop - high > NOISE:
        last = parts[-1]
        if last.is_rest and len(parts) > 1 and not bench.offcut_names(last.area):
            # What is thrown away isn't trimmed first.
            begins = parts.pop().area.span(axis)[0]
            parts.append(Panel(area.spanning(axis, begins, stop)))
        else:
            parts.append(Panel(area.spanning(axis, high + bench.kerf, stop), trim=True))
    yield from parts


def parts_run(bench: Bench, hand: Hand, axis: Axis, parts: Sequence[Panel]) -> Run:
    """The cuts that part what is in hand this way, in their order."""
    if axis == "across" and any(part.slanted for part in parts):
        return bar_run(bench, hand, parts, part_left)
    return tuple(_tasks(bench, hand, axis, list(parts)))


def _tasks(bench: Bench, hand: Hand, axis: Axis, parts: list[Panel]) -> Iterator[Task]:
    head = _is_headed(bench, hand, axis, parts)
    low, high = OPPOSITE[axis]
    while len(parts) > 1:
        cut, from_high = _first_cut(bench, hand, axis, parts)
        start, stop = hand.area.span(axis)
        at = parts[cut].area.span(axis)[1]
        if at - parts[cut].area.span(axis)[0] < NOISE:
            at = parts[cut + 1].area.span(axis)[0] - bench.kerf
        kind: CutKind = "trim" if parts[cut].trim or parts[cut + 1].trim else _KINDS[axis]
        if head and kind == "crosscut":
            kind, head = "head cut", False
        state: State = "trimmed" if kind == "trim" else "sawn"
        sides = [
            (hand.left(hand.area.spanning(axis, start, at), high, state), parts[: cut + 1]),
            (
                hand.left(hand.area.spanning(axis, at + bench.kerf, stop), low, state),
                parts[cut + 1 :],
            ),
        ]
        order = (1, 0) if from_high else (0, 1)
        # The name stays with what isn't measured, if that is cut on this way.
        stays = next((side for side in reversed(order) if len(sides[side][1]) > 1), None)
        if stays == order[0] and _goes_on(sides[1 - stays][1]):
            # Both are cut further: what is measured off gets a name of its own.
            renamed = replace(sides[stays][0], name=bench.part_name(hand.name))
            sides[stays] = renamed, sides[stays][1]
        left: list[_Left] = [(None, ()), (None, ())]
        for side in order:
            left[side] = _side_left(bench, *sides[side], axis, side == stays)
        step = bench.step(hand, Way(axis, at, from_high, kind), left[0][0], left[1][0])
        step = replace(step, remains=_remains(axis, *(sides[side][1] for side in order)))
        yield Task(step, (*left[order[0]][1], *left[order[1]][1]))
        if stays is None:
            return
        hand, parts = sides[stays]


def _remains(axis: Axis, measured: Sequence[Panel], rest: Sequence[Panel]) -> bool:
    """Whether what lies beyond a cut is wanted just as wide, or long, as it is left."""
    if len(rest) > 1 or all(leaf.is_rest for leaf in rest[0].leaves()):
        return False
    if all(part.is_rest for part in measured):
        return False
    within = [part for part in rest[0].parts if not part.is_rest]
    return not within or any(part.axis != axis or not part.parts[-1].is_rest for part in within)


def _is_headed(bench: Bench, hand: Hand, axis: Axis, parts: Sequence[Panel]) -> bool:
    """Whether a sheet is cut straight across once, before it is ripped."""
    wanted = [part for part in parts if not part.is_rest]
    begins = axis == "across" and hand.stage == 0 and bench.lot.kind == "sheet"
    return begins and len(wanted) <= 2 and any(part.axis == "along" for part in wanted)


def _goes_on(parts: Sequence[Panel]) -> bool:
    """Whether what lies beyond a cut is cut further."""
    return any(part.axis is not None or part.slanted for part in parts)


def _first_cut(bench: Bench, hand: Hand, axis: Axis, parts: Sequence[Panel]) -> tuple[int, bool]:
    """The place of the last part before the first cut; whether it is measured from behind."""
    if parts[0].is_rest:
        return 0, _measured_behind(bench, axis, parts)
    if bench.saw.kind == "track saw":
        return 0, False
    spans = [part.area.span(axis) for part in parts]
    return best_cut(
        spans,
        lambda low, high: bench.broken_down(hand.area.spanning(axis, low, high)),
        lambda setting: bench.reaches(axis, setting, hand.area),
        not parts[-1].is_rest,
    )


def _measured_behind(bench: Bench, axis: Axis, parts: Sequence[Panel]) -> bool:
    """Whether what stays is measured when a rest is cut off: but where only waste lies behind an
    offcut, or where nothing would be left to measure."""
    low, high = parts[0].area.span(axis)
    if any(not part.is_rest or bench.offcut_names(part.area) for part in parts[1:]):
        return True
    return high - low < NOISE


def _side_left(bench: Bench, hand: Hand, parts: Sequence[Panel], axis: Axis, stays: bool) -> _Left:
    """What a cut leaves on one side of it."""
    if len(parts) == 1:
        return part_left(bench, hand, parts[0])
    if stays:
        return bench.panel(hand), ()
    hand = replace(hand, name=bench.part_name(hand.name))
    return bench.panel(hand), (parts_run(bench, hand, axis, parts),)


def part_left(bench: Bench, hand: Hand, part: Panel) -> _Left:
    """What a part that lies alone is, and the cuts that are made in it."""
    if part.is_rest:
        # Its narrow side is the one it was just cut to; the other can't be nothing.
        axis: Axis = "across" if part.area.length < NOISE else "along"
        if not bench.stock.width:
            axis = "across"
        return bench.rest(part.area, axis), ()
    if part.axis is None and not part.slanted:
        (placed,) = part.placed
        return bench.piece(placed), _division(bench, placed, hand.stage)
    hand = replace(hand, name=bench.part_name(hand.name), stage=hand.stage + 1)
    axis = part.axis or "across"
    return bench.panel(hand), (parts_run(bench, hand, axis, part.parts or (part,)),)


def _division(bench: Bench, placed: Placed, stage: int) -> tuple[Run, ...]:
    """The cuts that part a piece into those inside it, in its own frame.

    Raises:
        ValueError: straight cuts from edge to edge don't part these.
    """
    piece = bench.pieces[placed.piece]
    if not piece.inner:
        return ()
    within = [
        Block(
            Rectangle(each.x, each.y, each.length, each.width),
            (Placed(each.name, each.x, each.y, each.length, each.width),),
        )
        for each in piece.inner
    ]
    area = Rectangle(0.0, 0.0, piece.length, piece.width)
    panel = divided(within, area, bench.kerf)
    if panel is None:
        raise ValueError(f"straight cuts don't part what is inside {piece.name}")
    if panel.axis is None:
        return ()
    odd = panel.axis == "along"
    after = stage + 1 + ((stage + 1) % 2 != odd)
    hand = Hand(piece.name, area, Edges("sawn", "sawn", "sawn", "sawn"), after, within=True)
    return (parts_run(bench, hand, panel.axis, panel.parts),)
