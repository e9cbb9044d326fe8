"""The table of strength: results told in the maker's measures, equal ones in one row."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass

from rodwright.amounts import GRAVITY, WEIGHTS
from rodwright.lengths import LengthUnit, from_inches
from rodwright.strength.ground import ON_FLOOR
from rodwright.strength.lifting import PEOPLE
from rodwright.strength.results import Group, Remedy, Result
from rodwright.trade.sources import Source

# By definition: the pound is 0.45359237 kg, its weight 4.4482216 N, the inch 25.4 mm; a kilogram
# weighs 9.80665 N (NIST Special Publication 811, appendix B.8).
_POUND, _INCH = WEIGHTS["in"].one, from_inches("1")
_MEASURES: dict[LengthUnit, dict[str, tuple[str, float]]] = {
    "mm": {"N": ("kg", GRAVITY), "N mm": ("kg m", GRAVITY * 1000)},
    "in": {
        "mm": ("in", _INCH),
        "mm2": ("in2", _INCH**2),
        "mm3": ("in3", _INCH**3),
        "mm4": ("in4", _INCH**4),
        "dm3": ("ft3", (_INCH * 0.12) ** 3),
        "kg": ("lb", _POUND),
        "kg/m": ("lb/ft", _POUND / 0.3048),
        "kg/m2": ("lb/ft2", _POUND / 0.3048**2),
        "N": ("lb", _POUND * GRAVITY),
        "N mm": ("lb in", _POUND * GRAVITY * _INCH),
        "N mm2": ("lb in2", _POUND * GRAVITY * _INCH**2),
        "N mm4": ("lb in4", _POUND * GRAVITY * _INCH**4),
        "N mm/rad": ("lb in/rad", _POUND * GRAVITY * _INCH),
        "N/mm": ("lb/in", _POUND * GRAVITY / _INCH),
        "N/mm2": ("psi", _POUND * GRAVITY / _INCH**2),
    },
}
"""What a measure of a result is shown in, and what one of that is in it."""
_SIGNIFICANT = 3
_FINEST: dict[LengthUnit, float] = {"mm": 0.01, "in": 0.001 * _INCH}
"""Lengths finer than this (mm) are told as under it."""
_ROUNDED = ("psi",)
"""What is told in whole tens, hundreds or thousands where that has three figures."""
_FINE = {"in": 3}
"""Decimals at most."""
_NEARLY = 0.999
"""What just doesn't hold holds so many times over."""
_LONGEST_RUN = 2
"""Refs that follow each other and are still told one by one."""
_REF = re.compile("([A-Z]+)([0-9]+)([a-z]?)")


@dataclass(frozen=True, slots=True)
class StrengthRow:
    """Results that are told alike: of what (one by one in ``subjects``), the first of them, and the
    refs of all their parts."""

    subject: str
    result: Result
    subjects: tuple[str, ...] = ()
    parts: tuple[str, ...] = ()

    @property
    def from_memory(self) -> bool:
        """Whether some figure in it wasn't looked up."""
        return bool(self.result.from_memory)


def strength_rows(
    results: Sequence[Result], unit: LengthUnit, *, in_full: bool = False
) -> tuple[StrengthRow, ...]:
    """Rows by group, those that don't hold first in each; what is told alike is told once, and
    what was taken for granted is told ``in_full`` alone."""
    order = list(Group)
    gathered: dict[tuple[object, ...], list[Result]] = {}
    for each in sorted(results, key=lambda each: (order.index(each.group), each.holds)):
        key = (*_told(each, unit), each.notes if in_full else bool(each.notes))
        gathered.setdefault(key, []).append(each)
    return tuple(_row(alike) for alike in gathered.values())


def _row(alike: Sequence[Result]) -> StrengthRow:
    subjects = tuple(dict.fromkeys(each.subject for each in alike))
    parts = tuple(dict.fromkeys(ref for each in alike for ref in each.parts))
    return StrengthRow(subjects_text(subjects), alike[0], subjects, parts)


def _told(result: Result, unit: LengthUnit) -> tuple[object, ...]:
    """All that a row tells of a result, beside what it is of."""
    remedies = tuple(remedy_text(each, result.measure, unit) for each in result.remedies)
    return (
        result.group,
        result.what,
        told_figure(result, unit),
        limit_text(result, unit),
        spare_text(result),
        result.holds,
        result.lacking,
        remedies,
        sources_of(result),
    )


def subjects_text(subjects: Sequence[str]) -> str:
    """Subjects in one phrase: what they have in common is said once."""
    first, *others = (each.split(" ") for each in dict.fromkeys(subjects))
    for at in range(len(first)):
        head, tail = first[:at], first[at + 1 :]
        if all((other[:at], other[at + 1 :]) == (head, tail) for other in others):
            told = ", ".join(_in_runs([each[at] for each in (first, *others)]))
            return " ".join([*head, told, *tail]) if others else " ".join(first)
    return ", ".join(" ".join(each) for each in (first, *others))


def _in_runs(words: Sequence[str]) -> list[str]:
    """Words with refs that follow each other, three or more, as one: `SH3-SH7`."""
    runs: list[list[str]] = []
    for word in words:
        if runs and _follows(runs[-1][-1], word):
            runs[-1].append(word)
        else:
            runs.append([word])
    return [
        each
        for run in runs
        for each in ([f"{run[0]}-{run[-1]}"] if len(run) > _LONGEST_RUN else run)
    ]


def _follows(one: str, other: str) -> bool:
    first, second = _REF.fullmatch(one), _REF.fullmatch(other)
    if first is None or second is None:
        return False
    return (first[1], first[3]) == (second[1], second[3]) and int(second[2]) == int(first[2]) + 1


def figure_text(value: float | None, measure: str, unit: LengthUnit) -> str:
    """A figure with its measure, in those of a maker who works in ``unit``; weights stand for the
    forces that they exert."""
    if value is None:
        return "not known"
    finest = _FINEST[unit]
    if measure == "mm" and 0 < abs(value) < finest * (1 - 1e-9):
        return f"under {figure_text(finest, measure, unit)}"
    symbol, one = _MEASURES[unit].get(measure, (measure, 1.0))
    number = value / one
    if symbol in _ROUNDED and math.isfinite(number):
        number = float(f"{number:.{_SIGNIFICANT}g}")
    return f"{number_text(number, _FINE.get(symbol, 6))} {symbol}".strip()


def told_figure(result: Result, unit: LengthUnit) -> str:
    """The figure of a result; one past its limit, or within it, never reads like the limit."""
    text = figure_text(result.figure, result.measure, unit)
    if result.figure is None or result.limit is None or result.figure == result.limit:
        return text
    if text != figure_text(result.limit, result.measure, unit):
        return text
    return f"just {'over' if result.figure > result.limit else 'under'} {text}"


def number_text(value: float, most: int = 6) -> str:
    """A number to three significant figures, whole from a hundred on, with ``most`` decimals."""
    if not math.isfinite(value):
        return "no end" if value > 0 else "-"
    if value == 0:
        return "0"
    decimals = _SIGNIFICANT - 1 - math.floor(math.log10(abs(value)))
    text = f"{value:.{max(0, min(decimals, most))}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def limit_text(result: Result, unit: LengthUnit) -> str:
    """What limits a result: at most, or at least; empty where nothing does, or it only has to be
    more than nothing and is."""
    if result.limit is None or (result.at_least and result.limit == 0 and result.holds):
        return ""
    word = "at least" if result.at_least else "at most"
    return f"{word} {figure_text(result.limit, result.measure, unit)}"


def spare_text(result: Result) -> str:
    """How many times over a result holds, never 1 where it doesn't; empty where nothing limits
    it."""
    if result.spare is None:
        return ""
    if result.spare <= 0:
        return "none"
    return f"x {number_text(result.spare if result.holds else min(result.spare, _NEARLY))}"


def people_text(result: Result) -> str:
    """How many people lift a thing, by the NIOSH equation; empty where it reaches no answer."""
    count = next((each.value for each in result.inputs if each.symbol == PEOPLE), 0.0)
    return f"{count:.0f}" if count else ""


def remedy_text(remedy: Remedy, measure: str, unit: LengthUnit) -> str:
    """What would help, and how far: `25 mm thick: 2.1 mm`."""
    bears = "bears " if remedy.bears else ""
    told = f"{remedy.what}: {bears}{figure_text(remedy.figure, measure, unit)}"
    if remedy.limit is not None:
        told += f", at most {figure_text(remedy.limit, measure, unit)}"
    if remedy.cost is not None:
        told += f", {remedy.cost:+.2f} each, net"
    for each in remedy.beyond:
        told += (
            f"; but its {each.what} is {figure_text(each.figure, each.measure, unit)}, at most "
            f"{figure_text(each.limit, each.measure, unit)}"
        )
    return told


NO_ENGINEER = (
    "This is no structural engineer's work: walls, ceilings, balustrades and whatever people climb "
    "or sit on go by local codes."
)
"""What stands below all figures."""


_MEANINGS = {
    "?": "rests on a usual value that wasn't looked up",
    "~": "something was taken for granted",
}


def marks_of(row: StrengthRow) -> str:
    """The marks of what a row rests on."""
    memory, granted = _MEANINGS
    return (memory if row.from_memory else "") + (granted if row.result.notes else "")


def marks_said(rows: Sequence[StrengthRow]) -> str:
    """What the marks of some rows mean; empty where there are none."""
    marks = "".join(map(marks_of, rows))
    return "; ".join(f"{mark} {said}" for mark, said in _MEANINGS.items() if mark in marks)


def counted_text(rows: Sequence[StrengthRow]) -> str:
    """How many figures there are, and how many of them don't hold or can't be worked out; apart
    from those, how many weights ask for more hands, or for somebody who knows the floor."""
    judged = [judged_text(row.result) for row in rows]
    failing, heavy = judged.count("fails"), judged.count("heavy")
    lifts = sum(not row.result.holds for row in rows if row.result.group is Group.LIFTING)
    unknown = sum(row.result.figure is None for row in rows)
    lacking = f" {unknown} can't be worked out." if unknown else ""
    hands = f" {lifts} {'lift takes' if lifts == 1 else 'lifts take'} more hands." if lifts else ""
    floor = " What weighs on the floor is for somebody who knows it." if heavy > lifts else ""
    return f"{len(rows)} figures, {failing} beyond their limits.{lacking}{hands}{floor}"


def judged_text(result: Result) -> str:
    """What is said of a result beyond its limit; a weight only asks for more hands, or for somebody
    who knows the floor.  Empty where it holds."""
    if result.holds:
        return "" if result.figure is not None else "not known"
    return "heavy" if result.group is Group.LIFTING or result.what == ON_FLOOR else "fails"


def sources_of(result: Result) -> tuple[Source, ...]:
    """Every source in a result, each once."""
    found = (result.source, result.limit_source, *(each.source for each in result.inputs))
    return tuple(dict.fromkeys(each for each in found if each is not None))


def works_of(rows: Sequence[StrengthRow]) -> dict[str, str]:
    """The works that rows rest on, in the order in which they come, each with how it is told: from
    memory, or in part so."""
    seen: dict[str, set[bool]] = {}
    for row in rows:
        for source in sources_of(row.result):
            seen.setdefault(source.work, set()).add(source.seen)
    ways = {(True,): "", (False,): " (from memory)", (False, True): " (in part from memory)"}
    return {work: work + ways[tuple(sorted(each))] for work, each in seen.items()}
