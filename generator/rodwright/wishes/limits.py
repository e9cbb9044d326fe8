"""What is too large, too small or too much to be one piece of furniture.

Told as soon as a spec is read, before any work is done on it: a figure in another unit than
its writer had in mind makes a unit that nobody wants, or one that takes hours to set out.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.problems import KeyPath, Problem, Problems
from rodwright.wishes.fields import Share, SpecModel
from rodwright.wishes.models import ShelvesSpec, SpaceSpec, UnitSpec

LARGEST = {"width": 15_000.0, "height": 8_000.0, "depth": 3_000.0}
"""Overall sizes (mm) that no unit of one carcass has; far beyond what goes through a door."""
SMALLEST = 20.0
"""Sizes under this (mm) leave nothing between two boards."""
TOY = 150.0
"""A unit that is smaller than this (mm) every way was measured in another unit, and so was ..."""
SMALL, SHALLOW = 400.0, 40.0
"""... one smaller than the first of these every way and than the second some way, mm."""
THINNEST, THICKEST = 1.0, 150.0
"""Sheets and boards that a unit is made of, mm."""
MOST_PARTS = 1_000
"""Parts of one unit; five times what a wall of shelving has."""
_INCH = 25.4


@dataclass(frozen=True, slots=True)
class _Measure:
    """A size that is written in the spec: what it is of, where it stands, and its limits, mm."""

    name: str
    where: KeyPath
    value: float
    least: float
    most: float

    @property
    def kept(self) -> bool:
        return self.least <= self.value <= self.most

    def within(self, factor: float) -> bool:
        """Whether it would keep its limits, were it this many times as long."""
        return self.least <= self.value * factor <= self.most


def beyond_limits(spec: UnitSpec) -> tuple[Problem, ...]:
    """What is wrong with the overall sizes and thicknesses of a spec, and with how much is in it.

    A spec whose sizes would be right in its other unit is told so once, at the unit.
    """
    problems = Problems(spec.unit)
    measures = list(_measures(spec))
    if not _in_another_unit(spec, measures, problems):
        for measure in measures:
            if not measure.kept:
                _note(measure, problems)
    _count_parts(spec, problems)
    return problems.error().problems


def _measures(spec: UnitSpec) -> Iterator[_Measure]:
    for axis, most in LARGEST.items():
        for holder, key in ((spec.size, "size"), (spec.opening, "opening")):
            whole = getattr(holder, axis, None)
            for where, value in lengths_of(whole, (key, axis)):
                yield _Measure(f"the {axis}", where, value, SMALLEST, most)
        if spec.opening is not None and spec.opening.back is not None and axis != "depth":
            whole = getattr(spec.opening.back, axis)
            for where, value in lengths_of(whole, ("opening", "back", axis)):
                yield _Measure(f"the {axis} behind", where, value, SMALLEST, most)
    for where, value in _stacked(spec):
        yield _Measure("the height that adds up", where, value, SMALLEST, LARGEST["height"])
    for name, stock in spec.stock.items():
        where = ("stock", name, "thickness")
        yield _Measure(f"the thickness of `{name}`", where, stock.thickness, THINNEST, THICKEST)


def lengths_of(whole: object, where: KeyPath) -> Iterator[tuple[KeyPath, float]]:
    """A length, or every reading of the same length, mm, each with its place in the spec."""
    if isinstance(whole, float):
        yield where, whole
    elif isinstance(whole, SpecModel):
        for key, value in whole:
            if isinstance(value, float):
                yield (*where, key), value
            elif key == "others":
                for number, reading in enumerate(value):
                    yield (*where, key, number, where[-1]), getattr(reading, str(where[-1]))


def _stacked(spec: UnitSpec) -> Iterator[tuple[KeyPath, float]]:
    """The height that lengths one above the other add up to, where nothing else gives it."""
    if spec.size.height is not None or spec.opening is not None:
        return
    shelves, rows = spec.interior.shelves, spec.interior.rows
    if shelves is not None and shelves.openings is not None:
        where: KeyPath = ("interior", "shelves", "openings")
        wishes = shelves.openings
    elif rows is not None:
        where, wishes = ("interior", "rows"), tuple(row.height for row in rows)
    else:
        return
    if not any(isinstance(wish, Share) for wish in wishes):
        yield where, sum(wish for wish in wishes if isinstance(wish, float))


def _in_another_unit(spec: UnitSpec, measures: list[_Measure], problems: Problems) -> bool:
    """Whether the figures make sense in the other unit alone; said at the unit, or at a size."""
    overall = [each for each in measures if each.where[0] in ("size", "opening")]
    if not overall:
        return False
    small, large = (choose(each.value for each in overall) for choose in (min, max))
    if spec.unit == "in":
        # Only what is too large: figures in mm taken for inches.
        figures, factor = [each for each in measures if each.value > each.most], 1 / _INCH
        if not figures:
            return False
    elif large < TOY or (large < SMALL and small < SHALLOW):
        figures, factor = overall, _INCH
    else:
        return False
    if not all(each.within(factor) for each in figures):
        return False
    first = max(figures, key=lambda each: each.value / each.most)
    figure = problems.length(first.value).removesuffix(spec.unit).strip()
    wrong, other = ("larger", "mm") if spec.unit == "in" else ("smaller", "in")
    problems.add(
        ("unit",) if spec.unit == "in" else first.where,
        f"{first.name} comes to {_metres(first.value)}, and so the unit is {wrong} than any that "
        f"is built: is this in {'mm' if other == 'mm' else 'inches'}?",
        f"Write `unit: {other}` at the top, or give each length its own unit (`{figure} {other}`).",
    )
    return True


def _note(measure: _Measure, problems: Problems) -> None:
    say, too = problems.length, "small" if measure.value < measure.least else "large"
    limit = say(measure.least if too == "small" else measure.most)
    words = "at least" if too == "small" else "at most"
    size = _metres(measure.value) if too == "large" else f"{measure.value:g} mm"
    problems.add(
        measure.where,
        f"{measure.name} is too {too} for a unit: {size}, where {words} {limit} makes sense; is "
        f"this in {problems.unit}?",
        f"Check the figure; a bare number here is in {problems.unit}.",
    )


def _metres(mm: float) -> str:
    return f"{mm / 1000:.1f} m" if mm >= 1000 else f"{mm:.0f} mm"


def _count_parts(spec: UnitSpec, problems: Problems) -> None:
    """Note where the parts become too many, without making one of them."""
    total = 0
    for where, count in _pieces(spec.interior, ("interior",)):
        total += count
        if total > MOST_PARTS:
            problems.add(
                where,
                f"with what is wished here the unit has more than {MOST_PARTS:,} parts",
                "Make several units of it, each with a spec of its own.",
            )
            return


def _pieces(space: SpaceSpec, where: KeyPath) -> Iterator[tuple[KeyPath, int]]:
    """How many parts each wish for a space makes at least, and where it is written."""
    for key in ("columns", "rows"):
        inner: tuple[SpaceSpec, ...] = getattr(space, key) or ()
        for number, each in enumerate(inner):
            yield (*where, key, number), 1
            yield from _pieces(each, (*where, key, number))
    if space.shelves is not None:
        yield (*where, "shelves"), _shelves(space.shelves) * space.shelves.layers
    if space.drawers is not None:
        fronts = space.drawers.fronts or ()
        count = space.drawers.count or len(fronts)
        yield (*where, "drawers"), _PARTS_OF_A_DRAWER * count
    if space.doors is not None:
        yield (*where, "doors"), space.doors.count


_PARTS_OF_A_DRAWER = 6
"""A front and a box of five."""


def _shelves(wish: ShelvesSpec) -> int:
    return max(wish.count or 0, len(wish.at or ()), len(wish.openings or ()) - 1)
