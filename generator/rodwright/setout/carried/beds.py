"""What lies on one level: stretches and lumps of what its maker says, or of what is assumed.

Lengths in mm, unit frame; weights in kg.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from rodwright.amounts import RUN_WEIGHTS, Kind, format_weight
from rodwright.geometry import TOUCH
from rodwright.problems import KeyPath
from rodwright.setout.notes import Said
from rodwright.setout.setting import Setting
from rodwright.trade.loads import MOST_PER_LENGTH, Burden, burden_of, most_per_metre
from rodwright.unit import Load, Lump, Stretch
from rodwright.wishes.loads import LoadSpec


@dataclass(frozen=True, slots=True)
class Bed:
    """Where things can lie on a part: from ``start`` to ``stop`` (x), ``depth`` deep and ``height``
    high.

    Places are counted from ``left``, and may be up to ``right``.  ``rows`` is how many metres of a
    row lie on each metre of its width.
    """

    ref: str
    left: float
    right: float
    start: float
    stop: float
    depth: float
    height: float
    rows: float = 1.0

    def per_metre(self, burden: Burden, length: float) -> float:
        """What something weighs here, kg/m, that lies over a length of so many mm."""
        rows = self.rows if burden.amount.kind is Kind.RUN_WEIGHT else 1.0
        return rows * burden.per_metre(length, self.depth, self.height)


@lru_cache
def assumed_to_carry(name: str) -> Said:
    """A use that nobody said, by its name."""
    return Said(LoadSpec(of=burden_of(name)))


def lie_on(setting: Setting, bed: Bed, said: Said) -> Load | None:
    """What something comes to on a bed; None where it comes to nothing, or can't lie there, which
    is noted where it is said."""
    load = said.load
    burden = load.of
    stretches: list[Stretch] = []
    lumps: list[Lump] = []
    if not _within(setting, bed, said):
        return None
    if burden is not None:
        start, stop = _clipped(bed, load)
        if burden.manner == "stands":
            lumps.append(Lump((start + stop) / 2, burden.amount.value))
        else:
            first = bed.per_metre(burden, stop - start)
            last = bed.per_metre(load.growing_to, stop - start) if load.growing_to else first
            if first or last:
                stretches.append(Stretch(start, stop, first, last))
    if load.television is not None:
        lumps.append(Lump((bed.start + bed.stop) / 2, load.television))
    lumps += [Lump(_inside(bed, bed.left + each.at), each.weight) for each in load.points]
    if not stretches and not any(lump.mass for lump in lumps):
        return None
    laid = Load(
        bed.ref,
        ", ".join(_words(setting, load)),
        tuple(stretches),
        tuple(lump for lump in lumps if lump.mass),
        said.where is None,
        burden.source if burden is not None else None,
    )
    return laid if _bearable(setting, bed, laid, said.where) else None


def _clipped(bed: Bed, load: LoadSpec) -> tuple[float, float]:
    """Where what is spread begins and ends."""
    stop = bed.stop if load.stop is None else _inside(bed, bed.left + load.stop)
    return _inside(bed, bed.left + load.start), stop


def _inside(bed: Bed, x: float) -> float:
    return min(max(x, bed.start), bed.stop)


def _within(setting: Setting, bed: Bed, said: Said) -> bool:
    """Whether all that has a place lies within the bed; what doesn't is noted."""
    load, width = said.load, bed.right - bed.left
    wrong: list[tuple[KeyPath, float]] = []
    if load.start > width - TOUCH:
        wrong.append((("from",), load.start))
    if load.stop is not None and load.stop > width + TOUCH:
        wrong.append((("to",), load.stop))
    wrong += [
        (("points", number, "at"), each.at)
        for number, each in enumerate(load.points)
        if each.at > width + TOUCH
    ]
    for keys, value in wrong:
        setting.problems.add_once(
            (*(said.where or ()), *keys),
            f"{setting.say(value)} from the left is past the end: the clear width is "
            f"{setting.say(width)}",
            f"Give at most {setting.at_most(width)}.",
        )
    return not wrong


def _bearable(setting: Setting, bed: Bed, load: Load, where: KeyPath | None) -> bool:
    """Whether a level may carry so much at all; what is a slip is noted."""
    long = (bed.stop - bed.start) * max(1.0, bed.rows)
    most = most_per_metre() * long / 1000
    if load.mass <= most * (1 + 1e-9) or where is None:
        return True
    limit = RUN_WEIGHTS[setting.unit].said(most_per_metre())
    setting.problems.add_once(
        where,
        f"{format_weight(load.mass, setting.unit)} on {setting.say(long)} is more than a shelf "
        f"carries: at most {limit} makes sense ({MOST_PER_LENGTH.source})",
        "Check the figure and its unit.",
    )
    return False


def _words(setting: Setting, load: LoadSpec) -> Iterator[str]:
    """What is carried, in the maker's words, piece by piece."""
    if load.of is not None:
        words = load.of.said
        if load.growing_to is not None:
            words += f" growing to {load.growing_to.said}"
        if load.start:
            words += f" from {setting.say(load.start)}"
        if load.stop is not None:
            words += f" up to {setting.say(load.stop)}"
        yield words
    if load.television is not None:
        yield f"television {format_weight(load.television, setting.unit)}"
    for each in load.points:
        yield f"{format_weight(each.weight, setting.unit)} at {setting.say(each.at)}"
