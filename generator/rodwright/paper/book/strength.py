"""What holds least: a summary of the unit's strength."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import Any

from rodwright.handover.strength_list import (
    StrengthRow,
    limit_text,
    remedy_text,
    spare_text,
    strength_rows,
    subjects_text,
    told_figure,
)
from rodwright.lengths import LengthUnit
from rodwright.paper.sections import Section
from rodwright.strength import strength_of
from rodwright.strength.ground import ON_FLOOR
from rodwright.strength.results import Group
from rodwright.unit import Unit

_MOST = 6
"""Rows of each group that are told, the least to spare first; what doesn't hold always is."""
_SHOWN, _LONGEST = 6, 160
"""So many of what is told alike are named, if naming all took more letters."""


def strength_section(unit: Unit) -> Section | None:
    """The figures with the least to spare of each group but lifting, which cautions tell; None
    where there are none."""
    measure = unit.display_unit
    rows = [row for row in strength_rows(strength_of(unit), measure) if _judged(row)]
    groups = [
        {"title": str(group.capitalize()), "rows": _told(list(those), measure)}
        for group, those in groupby(rows, key=lambda row: row.result.group)
    ]
    return Section("strength", "Will it hold?", {"groups": groups}) if groups else None


def _judged(row: StrengthRow) -> bool:
    result = row.result
    return result.group is not Group.LIFTING and (result.limit is not None or bool(result.lacking))


def _subject(row: StrengthRow) -> str:
    """Of what a row is; of very many alike the first, and how many more."""
    more = len(row.subjects) - _SHOWN
    if more <= 0 or len(row.subject) <= _LONGEST:
        return row.subject
    return f"{subjects_text(row.subjects[:_SHOWN])} and {more} more"


def _word(row: StrengthRow) -> str:
    """What is said of a figure beyond its limit; a floor only asks for somebody who knows it."""
    if row.result.holds:
        return ""
    return "Ask who knows the floor" if row.result.what == ON_FLOOR else "Doesn't hold"


def _remedies(row: StrengthRow, unit: LengthUnit) -> Iterator[str]:
    """What would help where something doesn't hold, and what wouldn't do."""
    if not row.result.holds:
        for each in row.result.remedies:
            word = "Would do" if each.holds else "Not enough"
            yield f"{word}: {remedy_text(each, row.result.measure, unit)}"


def _told(rows: Sequence[StrengthRow], unit: LengthUnit) -> list[dict[str, Any]]:
    ordered = sorted(rows, key=lambda row: (row.result.holds, row.result.spare or 0.0))
    failing = sum(not row.result.holds for row in ordered)
    return [
        {
            "subject": _subject(row),
            "what": row.result.what,
            "figure": told_figure(row.result, unit),
            "limit": limit_text(row.result, unit),
            "spare": spare_text(row.result),
            "word": _word(row),
            "lacking": row.result.lacking,
            "remedies": list(_remedies(row, unit)),
            "memory": row.from_memory,
        }
        for row in ordered[: max(_MOST, failing)]
    ]
