"""Overall sizes: as wished, as fitted to the opening, or as the interior adds up."""

from __future__ import annotations

from typing import Literal

from rodwright.geometry.spacing import count_along
from rodwright.problems import Problems
from rodwright.trade.feet import FOOT_INSET
from rodwright.unit import Opening
from rodwright.wishes.base import LegsSpec, LevellersSpec, PlinthSpec
from rodwright.wishes.fields import Share
from rodwright.wishes.models import SpaceSpec, UnitSpec


def easily_set(length: float, unit: Literal["mm", "in"]) -> float:
    """A length (mm) of our own choosing, rounded to what is easily set on a machine.

    To whole millimetres or sixteenths of an inch, and not to nothing.
    """
    step = 1.0 if unit == "mm" else 25.4 / 16
    return max(1, round(length / step)) * step


def overall_width(spec: UnitSpec, opening: Opening | None, problems: Problems) -> float:
    """Width (mm) of the carcass: as given, or the opening's less the gaps at its sides."""
    if spec.size.width is not None:
        return spec.size.width
    if opening is None:
        problems.add(
            ("size",),
            "the unit has no width: there is neither an opening nor `size.width`",
            "Add `opening`, or `size: {width: ..., height: ..., depth: ...}`.",
        )
        return 0.0
    return _fitted(opening.width, 2 * spec.fit.sides, "width", ("fit", "sides"), problems)


def base_height(spec: UnitSpec) -> float:
    """Height (mm) at which the carcass's bottom lies above the floor line because of its base."""
    return spec.base.height if spec.base is not None else 0.0


def feet_across(size: float, spacing: float) -> int:
    """How many adjustable feet there are in a row along ``size`` (mm), no more than ``spacing``
    apart."""
    return count_along(size, FOOT_INSET, spacing)


def standing_inset(spec: UnitSpec) -> float:
    """How far (mm) what touches the floor begins from the carcass's sides; adjustable feet are
    taken to stand anywhere under it."""
    base = spec.base
    if isinstance(base, PlinthSpec):
        return base.sides
    return base.inset if isinstance(base, LegsSpec) else 0.0


def feet_places(base: LevellersSpec, width: float) -> tuple[float, ...]:
    """The x (mm) of the adjustable feet under a carcass of this width."""
    count = feet_across(width, base.spacing)
    step = (width - 2 * FOOT_INSET) / (count - 1)
    return tuple(FOOT_INSET + number * step for number in range(count))


def head_height(spec: UnitSpec) -> float:
    """Height (mm) of what rises above the carcass: a worktop, or a cornice's upper part."""
    worktop, cornice = spec.worktop, spec.cornice
    above = 0.0
    if worktop is not None and worktop.stock in spec.stock:
        above = spec.stock[worktop.stock].thickness * worktop.layers
    if cornice is not None:
        above += cornice.height if cornice.place == "standing" else cornice.rise
    return above


def overall_height(spec: UnitSpec, opening: Opening | None, t: float, problems: Problems) -> float:
    """Height (mm) of the whole piece: as given, the opening's less the gap over it, or the sum
    of openings given as lengths with what stands between, around, under and over them; ``t``
    is the carcass thickness."""
    if spec.size.height is not None:
        return spec.size.height
    added = _stacked(spec, spec.interior, t)
    if opening is None and added is None:
        problems.add(
            ("size",),
            "the unit has no height: there is neither an opening nor `size.height`, and the "
            "interior's openings aren't all given as lengths",
            "Add `size.height`, or give every clear opening as a length.",
        )
        return 0.0
    if opening is None:
        assert added is not None
        ends = (t if spec.carcass.top != "none" else 0.0) + (
            spec.carcass.bottom_height + t if spec.carcass.bottom != "none" else 0.0
        )
        return added + ends + base_height(spec) + head_height(spec)
    return _fitted(opening.height, spec.fit.top, "height", ("fit", "top"), problems)


def _stacked(spec: UnitSpec, space: SpaceSpec, t: float) -> float | None:
    """Clear height that openings or rows given wholly as lengths add up to, shelves included."""
    lengths: tuple[float | Share, ...]
    if space.shelves is not None and space.shelves.openings is not None:
        lengths, between = space.shelves.openings, t * space.shelves.layers
        if space.shelves.stock in spec.stock:
            between = spec.stock[space.shelves.stock].thickness * space.shelves.layers
    elif space.rows is not None:
        lengths, between = tuple(row.height for row in space.rows), t
    else:
        return None
    if any(isinstance(length, Share) for length in lengths):
        return None
    return sum(length for length in lengths if isinstance(length, float)) + between * (
        len(lengths) - 1
    )


def overall_depth(spec: UnitSpec, opening: Opening | None, problems: Problems) -> float:
    """Depth (mm) from the front of the face frame to the rear of the back."""
    setback = spec.face_frame.setback if spec.face_frame else 0.0
    if setback and opening is None:
        problems.add(
            ("face_frame", "setback"),
            "`setback` is measured from the front of an opening, and there is none",
            "Leave it out, or add `opening`.",
        )
    if spec.size.depth is not None:
        return spec.size.depth
    if opening is None or opening.depth is None:
        problems.add(
            ("opening",) if spec.opening else ("size",),
            "the unit has no depth: there is neither `opening.depth` nor `size.depth`",
            "Add one of them.",
        )
        return 0.0
    return _fitted(opening.depth, spec.fit.back + setback, "depth", ("fit", "back"), problems)


def _fitted(
    measured: float, gaps: float, what: str, where: tuple[str, str], problems: Problems
) -> float:
    say = problems.length
    if measured and measured - gaps <= 0:
        problems.add(
            where,
            f"gaps of {say(gaps)} leave nothing of a {what} of {say(measured)}",
            "Make the gaps smaller or measure again.",
        )
    return measured - gaps
