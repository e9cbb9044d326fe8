"""The opening as measured and how the unit goes into it, as `survey` says it."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.handover.survey_words import (
    closing_lines,
    fit_lines,
    frame_lines,
    frame_table,
    gaps_table,
)
from rodwright.opening.sheet import FitSheet, SurveySheet
from rodwright.page import document as page
from rodwright.page.telling.tables import told
from rodwright.pictures.opening import draw_opening
from rodwright.pictures.svg import to_svg

_UNITS = {"mm": "mm", "in": "inches"}


def opening_told(survey: SurveySheet) -> page.Sheet:
    """Fit, gaps and what closes them, with the survey's drawing; what is wrong with the readings,
    where they leave nothing to draw."""
    fit = survey.fit
    cautions = tuple(f"{_sentence(each.danger)} {each.remedy}" for each in survey.cautions)
    if fit is None:
        wrong = (f"{_sentence(each.message)} {each.remedy}" for each in survey.problems)
        return page.Sheet((*wrong, *cautions))
    drawings = (draw_opening(survey, plane) for plane in survey.planes)
    return page.Sheet(
        (*_words(survey, fit), *cautions),
        tuple(page.Drawing(each.description, to_svg(each)) for each in drawings),
        tuple(_tables(survey, fit)),
    )


def _words(survey: SurveySheet, fit: FitSheet) -> Iterator[str]:
    if survey.not_shown:
        yield survey.not_shown
    if fit.frame_note:
        yield fit.frame_note
    if fit.frame is not None:
        yield "A frame tight in the opening: " + "; ".join(frame_lines(fit.frame)) + "."


def _tables(survey: SurveySheet, fit: FitSheet) -> Iterator[page.Table]:
    unit = survey.unit
    yield _pairs(f"Fit, lengths in {_UNITS[unit]}", list(fit_lines(fit, unit)))
    yield _pairs("What closes the gaps", list(closing_lines(fit, unit)))
    yield told(gaps_table(fit, unit))
    if fit.frame is not None:
        yield told(frame_table(fit.frame, unit))


def _pairs(title: str, rows: list[tuple[str, str]]) -> page.Table:
    return page.Table(title, ("", ""), (False, False), tuple(rows), ((),) * len(rows))


def _sentence(text: str) -> str:
    return f"{text[0].upper()}{text[1:]}{'' if text.endswith('.') else '.'}"
