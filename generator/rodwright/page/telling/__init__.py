"""What a page is told of a unit beside its picture, in the words of the other verbs."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from rodwright.checks.findings import Finding
from rodwright.cutting.whole import Cutting
from rodwright.opening.sheet import SurveySheet
from rodwright.page import document as page
from rodwright.page.telling.cutting import cutting_told
from rodwright.page.telling.details import details_of
from rodwright.page.telling.dimensions import dimensions_of
from rodwright.page.telling.findings import findings_told
from rodwright.page.telling.lists import lists_told
from rodwright.page.telling.opening import opening_told
from rodwright.page.telling.strength import strength_told
from rodwright.pictures.explode import explode
from rodwright.unit import Unit

__all__ = ["checked_sections", "cutting_sheet", "quick_sections"]

_DIGITS = 3
"""Decimals of a millimetre in what is drawn."""


def quick_sections(unit: Unit, places: Mapping[str, page.Place]) -> page.Sections:
    """What is known of a unit as soon as it is set out: how it comes apart, its parts' details and
    its dimensions.  ``places`` are where in the spec parts were wished, by their refs.

    Raises:
        ValueError: a part's workings leave nothing of it.
    """
    moves = explode(unit)
    return page.Sections(
        apart={ref: _rounded(move) for ref, move in moves.items()},
        details=details_of(unit, places),
        dimensions=dimensions_of(unit),
    )


def checked_sections(
    unit: Unit, findings: Sequence[Finding], survey: SurveySheet | None = None
) -> page.Sections:
    """What takes longer: findings, lists, strength, and how the unit goes into its opening.

    ``survey`` is that of the spec's opening; None where it has none.

    Raises:
        ValueError: a part's workings leave nothing of it.
    """
    return page.Sections(
        findings=findings_told(findings),
        lists=lists_told(unit),
        opening=None if survey is None else opening_told(survey),
        strength=strength_told(unit),
    )


def cutting_sheet(cutting: Cutting) -> page.Sheet:
    """A cutting plan.

    Raises:
        ValueError: the cuts of a sheet can't be told.
    """
    return cutting_told(cutting)


def _rounded(move: tuple[float, float, float]) -> tuple[float, float, float]:
    x, y, z = (round(each, _DIGITS) + 0.0 for each in move)
    return x, y, z
