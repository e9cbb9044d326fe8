"""Sizes of an opening that are hardly of one: as a rule figures in another unit than was meant."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.lengths import LengthUnit
from rodwright.problems import Problem, Problems
from rodwright.wishes.fields import SpecModel
from rodwright.wishes.limits import lengths_of
from rodwright.wishes.models import UnitSpec

SMALL_OPENING = {"width": 250.0, "height": 250.0, "depth": 80.0}
"""An opening less wide, high or deep than this, mm, was more likely read in another unit: 80 cm is
deeper than most, and niches between studs are deeper than 80 mm (common practice, no source)."""
_READ_IN: dict[LengthUnit, tuple[str, float]] = {"mm": ("cm", 10.0), "in": ("ft", 12.0)}
"""What figures that are too small were read in, and how many times as long that is."""
_CALLED = {"mm": "mm", "in": "inches"}


@dataclass(frozen=True, slots=True)
class Slips:
    """What is hardly right, a problem for each size, and the spec were it in the other unit."""

    problems: tuple[Problem, ...]
    mended: UnitSpec


def other_unit(figure: str, unit: LengthUnit) -> str:
    """What to do about a size that is too small, said in a spec's unit."""
    other, _ = _READ_IN[unit]
    bare = figure.removesuffix(unit).strip()
    return f"If it was read in {other}, write that after it: `{bare} {other}`."


def small_sizes(spec: UnitSpec) -> Slips | None:
    """The sizes of a spec's opening that are hardly right; None where there is none."""
    opening = spec.opening
    if opening is None:
        return None
    problems = Problems(spec.unit)
    _, factor = _READ_IN[spec.unit]
    mended = {}
    for axis, least in SMALL_OPENING.items():
        whole = getattr(opening, axis)
        read = list(lengths_of(whole, ("opening", axis)))
        if not read or max(value for _, value in read) >= least:
            continue
        where, value = read[0]
        figure = problems.length(value)
        problems.add(
            where,
            f"the opening's {axis} of {figure} is very small: is this in {_CALLED[spec.unit]}?",
            other_unit(figure, spec.unit),
        )
        mended[axis] = _longer(whole, axis, factor)
    if not mended:
        return None
    whole_opening = opening.model_copy(update=mended)
    return Slips(problems.error().problems, spec.model_copy(update={"opening": whole_opening}))


def _longer(whole: SpecModel | float, axis: str, factor: float) -> SpecModel | float:
    """A length, or every reading of it, so many times as long."""
    if isinstance(whole, float):
        return factor * whole
    return whole.model_copy(update=dict(_readings_longer(whole, axis, factor)))


def _readings_longer(whole: SpecModel, axis: str, factor: float) -> Iterator[tuple[str, object]]:
    for key, value in whole:
        if isinstance(value, float):
            yield key, factor * value
        elif isinstance(value, tuple):
            yield (
                key,
                tuple(
                    each.model_copy(update={axis: factor * getattr(each, axis)}) for each in value
                ),
            )
