"""Parts of a large unit that are pictured on their own: a column of it, and a drawer."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, replace
from itertools import pairwise

from rodwright.geometry import Box
from rodwright.pictures.labels import rows
from rodwright.unit import UPRIGHTS, Part, Role, Slide, Unit

FOLLOWED = 60
"""An exploded view of more parts than this is hard to follow on one page."""
_PAST = 25.0
"""A door or lipping reaches so far (mm) past the uprights of its column."""

Rows = tuple[tuple[str, tuple[int, ...]], ...]
"""Tags' texts, and the parts (by number) that each names."""


@dataclass(frozen=True, slots=True)
class Detail:
    """Some parts of a unit, as a unit of their own, by a short ``name`` for files."""

    name: str
    about: str
    unit: Unit
    named: Rows


def details(unit: Unit) -> tuple[Detail, ...]:
    """What is shown enlarged of a unit of many parts; nothing of a smaller one.

    Of several columns, the one with the most parts that differ; of several drawers, the one with
    the most parts.  A column leaves its drawers' boxes to the drawer's picture.
    """
    if len(unit.parts) <= FOLLOWED:
        return ()
    slides = [motion for motion in unit.motions if isinstance(motion, Slide)]
    boxes = {
        ref
        for slide in slides
        for ref in slide.refs
        if unit.part(ref).role is not Role.DRAWER_FRONT
    }
    columns = _columns(unit, [part for part in unit.parts if part.ref not in boxes])
    found = []
    if len(columns) > 1:
        refs = max(columns, key=lambda each: len({unit.part(ref).shape for ref in each}))
        about = f"the column between {refs[0]} and {refs[-1]}"
        found.append(_detail("column", about, unit, set(refs)))
    if slides:
        refs = max((slide.refs for slide in slides), key=len)
        front = next((r for r in refs if unit.part(r).role is Role.DRAWER_FRONT), refs[0])
        found.append(_detail("drawer", f"the drawer of {front}", unit, set(refs)))
    return tuple(found)


def _columns(unit: Unit, parts: list[Part]) -> list[tuple[str, ...]]:
    """Refs of each column's parts, its left upright first and its right one last."""
    uprights = sorted(
        (part for part in unit.parts if part.role in UPRIGHTS),
        key=lambda part: part.bounds().centre[0],
    )
    found = []
    for left, right in pairwise(uprights):
        low, high = left.bounds().low[0], right.bounds().high[0]
        inside = [
            part.ref
            for part in parts
            if part.ref not in (left.ref, right.ref)
            and low < part.bounds().centre[0] < high
            and low - _PAST <= part.bounds().low[0]
            and part.bounds().high[0] <= high + _PAST
        ]
        found.append((left.ref, *inside, right.ref))
    return found


def _detail(name: str, about: str, unit: Unit, refs: Collection[str]) -> Detail:
    parts = tuple(part for part in unit.parts if part.ref in refs)
    some = replace(
        unit,
        parts=parts,
        envelope=Box.of_boxes(part.bounds() for part in parts),
        joints=tuple(each for each in unit.joints if {each.first, each.second} <= set(refs)),
        clearances=(),
        motions=(),
        fittings=tuple(each for each in unit.fittings if each.ref in refs),
    )
    alike: dict[tuple[object, ...], int] = {}
    for part in unit.parts:
        alike[_kind(part)] = alike.get(_kind(part), 0) + 1
    named = tuple(
        (
            text
            if len(row) > 1 or alike[_kind(parts[row[0]])] == 1
            else f"{text}, 1 of {alike[_kind(parts[row[0]])]}",
            row,
        )
        for text, row in rows(parts)
    )
    return Detail(name, about, some, named)


def _kind(part: Part) -> tuple[object, ...]:
    return part.shape, part.role, part.blank.stock.name
