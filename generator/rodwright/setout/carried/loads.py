"""All that a unit carries, once its parts are settled."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.geometry import TOUCH
from rodwright.setout.carried.beds import Bed, assumed_to_carry, lie_on
from rodwright.setout.carried.inside import layers_under, load_inside, pieces_of
from rodwright.setout.notes import Said
from rodwright.setout.setting import Setting
from rodwright.trade.loads import ON_OPEN_SHELVES, ON_WORKTOPS
from rodwright.unit import Load, Loading, Part, Role

TOP_IN_REACH = 1800.0
"""Nothing but dust is put on tops higher than this, mm, unless it is said (common practice, no
source)."""
ROOM_ABOVE = 150.0
"""Nor where a ceiling leaves less than this over them, mm (common practice, no source)."""


def set_out_loads(setting: Setting) -> Loading:
    """What the unit carries and is held against; what can't lie where it is wished is noted."""
    pieces = pieces_of(setting.bench)
    loads = [load for each in setting.notes.contents for load in load_inside(setting, each, pieces)]
    loads += _on_top(setting)
    loads += _on_worktop(setting)
    order = {ref: number for number, ref in enumerate(setting.bench.parts)}
    loads.sort(key=lambda load: order[load.ref])
    spec = setting.spec
    return Loading(
        tuple(_gathered(loads)),
        spec.loads.limit,
        spec.loads.years,
        spec.loads.service_class,
        spec.wall,
        spec.floor.covering,
        spec.floor.lean,
    )


def _gathered(loads: list[Load]) -> Iterator[Load]:
    """The same loads, with what is alike on one part told as one."""
    found: dict[object, list[Load]] = {}
    for load in loads:
        found.setdefault((load.ref, load.said, load.assumed, load.source), []).append(load)
    for alike in found.values():
        first = alike[0]
        yield Load(
            first.ref,
            first.said,
            tuple(stretch for load in alike for stretch in load.stretches),
            tuple(lump for load in alike for lump in load.lumps),
            first.assumed,
            first.source,
        )


def _on_top(setting: Setting) -> Iterator[Load]:
    """What lies on the carcass's top."""
    wish, here = setting.spec.carcass.top_load, setting.moved_to(("carcass", "top_load"))
    (tops, spec) = (
        [part for part in setting.bench.parts_of(Role.TOP) if _level(part)],
        setting.spec,
    )
    if wish is not None and (spec.worktop is not None or not tops):
        why = "a worktop lies there" if spec.worktop is not None else "it has no level top"
        here.refuse(
            f"nothing lies on the carcass's top: {why}",
            "Say what stands on the worktop there (`worktop.load`), or leave this out.",
        )
        return
    said = Said(wish, here.where) if wish is not None else _on_top_unless_said(setting)
    if said is None:
        return
    carcass = setting.carcass
    over = carcass.top is not None and carcass.top.over
    for top in tops:
        box = top.bounds()
        start = box.low[0] if over else max(box.low[0], carcass.left.right)
        stop = box.high[0] if over else min(box.high[0], carcass.right.left)
        bed = _bed(top, start, stop)
        if (load := lie_on(setting, bed, said)) is not None:
            yield load


def _on_top_unless_said(setting: Setting) -> Said | None:
    """What is assumed to lie on the carcass's top, if anything does."""
    spec, rod = setting.spec, setting.rod
    top = rod.outside.height
    high = rod.opening.height - top if rod.opening is not None else ROOM_ABOVE
    free = spec.worktop is None and spec.slope is None and not spec.hung
    if not free or top >= TOP_IN_REACH or high < ROOM_ABOVE:
        return None
    return assumed_to_carry(ON_OPEN_SHELVES)


def _on_worktop(setting: Setting) -> Iterator[Load]:
    """What stands on the worktop."""
    wish = setting.spec.worktop
    if wish is None:
        return
    said = assumed_to_carry(ON_WORKTOPS)
    if wish.load is not None:
        said = Said(wish.load, ("worktop", "load"))
    bench = setting.bench
    lower = set(layers_under(bench).values())
    for part in bench.parts_of(Role.WORKTOP):
        box = part.bounds()
        if part.ref not in lower:
            load = lie_on(setting, _bed(part, box.low[0], box.high[0]), said)
            if load is not None:
                yield load


def _bed(part: Part, start: float, stop: float) -> Bed:
    """Where things can lie on a top with nothing above it."""
    box = part.bounds()
    return Bed(part.ref, start, stop, start, stop, box.size[1], 0.0)


def _level(part: Part) -> bool:
    return abs(part.bounds().size[2] - part.blank.thickness) < TOUCH
