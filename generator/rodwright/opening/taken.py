"""What was read of an opening, for the checks."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.opening.adjustment import SNOOPING_LIMIT, Plane, spans
from rodwright.opening.fit import Limits
from rodwright.opening.readings import EDGES
from rodwright.unit import Contradiction, OpeningReadings

_AS_MUCH = 0.5
"""Readings whose residuals, over their standard deviations, differ by less differ as much."""


def readings_taken(planes: Sequence[Plane], limits: Limits, depth: float | None) -> OpeningReadings:
    """What was read: the tightest of each, how much of it, and what contradicts the rest."""
    front = [each for each in planes[0].readings if not each.is_assumption]
    names = {edge: name for name, edge in EDGES.items()}
    kinds = [spans(each) for each in front if each.kind == "distance"]
    return OpeningReadings(
        limits.width,
        limits.height,
        depth,
        kinds.count((True, False)),
        kinds.count((False, True)),
        tuple(names[each.first[:2]] for each in front if each.kind != "distance"),
        tuple(found for plane in planes for found in _contradictions(plane)),
    )


def _contradictions(plane: Plane) -> list[Contradiction]:
    """The reading that differs most from the rest, where a careful one differs so much only once
    in a thousand (Baarda's test); with its rivals, which differ as much."""
    rows = [
        (abs(w), residual / share, reading)
        for w, residual, share, reading in zip(
            plane.normalised, plane.residuals, plane.redundancy, plane.readings, strict=True
        )
        if w and not reading.is_assumption and not reading.bow
    ]
    worst = max((w for w, _, _ in rows), default=0.0)
    if worst <= SNOOPING_LIMIT:
        return []
    return [
        Contradiction(plane.name, reading.name, round(off, 3))
        for w, off, reading in sorted(rows, key=lambda row: -row[0])
        if w > worst - _AS_MUCH
    ]
