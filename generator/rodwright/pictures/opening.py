"""The opening on one sheet: the readings in it, and the unit with its gaps ten times too large.

A3 lying (ISO 5457), made smaller on Letter for a maker in inches; lengths of the paper in mm.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path

from rodwright.lengths import format_length
from rodwright.opening.adjustment import Plane
from rodwright.opening.closings import closing_text
from rodwright.opening.readings import FLOOR_ASSUMED, PLUMB_ASSUMED, TAPE_ERROR
from rodwright.opening.sheet import FitSheet, SurveySheet
from rodwright.opening.silhouettes import slope_text
from rodwright.pictures.files import write_drawing
from rodwright.pictures.ink import Drawing, Lettering, Mark, Stroke
from rodwright.pictures.opening_gaps import EXAGGERATION, with_gaps
from rodwright.pictures.opening_readings import as_measured
from rodwright.pictures.paper import (
    SMALL,
    THIN,
    Block,
    note_marks,
    on_paper,
)

WIDTH, HEIGHT = 420.0, 297.0
LETTER = (279.4, 215.9)
"""A sheet of Letter (ASME Y14.1, size A, from memory), lying."""
_PIXELS_PER_MM = 7.0
_FOOT = 231.0
_COLUMNS = ((14.0, 124.0), (148.0, 124.0), (282.0, 123.0))
_UNITS = {"mm": "mm", "in": "inches"}


def write_opening(sheet: SurveySheet, folder: Path) -> tuple[Path, ...]:
    """Write ``opening.svg`` and ``.png``, and ``opening-rear`` where the rear was read too.

    Equal sheets give equal SVG files, byte for byte.

    Raises:
        ValueError: the sheet has no fit to draw.
        OSError: the folder can't be written.
    """
    written: list[Path] = []
    for plane in sheet.planes:
        name = "opening" if plane.name == "front" else f"opening-{plane.name}"
        drawing = draw_opening(sheet, plane)
        written += write_drawing(drawing, folder, name, per_unit=_PIXELS_PER_MM)
    return tuple(written)


def draw_opening(sheet: SurveySheet, plane: Plane) -> Drawing:
    """The sheet of one plane of the opening.

    Raises:
        ValueError: the sheet has no fit to draw.
    """
    fit = sheet.fit
    if fit is None:
        raise ValueError("readings that can't be right leave nothing to draw")
    say = partial(format_length, unit=sheet.unit)
    whose = "" if len(sheet.planes) == 1 else f", {plane.name} plane"
    marks = [
        Lettering((14.0, 18.0), f"{sheet.title}: the opening{whose}", 7.0, "start"),
        Lettering((WIDTH - 14.0, 18.0), f"Lengths in {_UNITS[sheet.unit]}", SMALL, "end"),
        *as_measured(
            plane, fit.shape.planes[plane.name], sheet.unit, fit.outline(plane.name).slope
        ),
        *with_gaps(fit, plane.name, say),
        Stroke((((14.0, _FOOT - 8.0), (WIDTH - 14.0, _FOOT - 8.0)),), THIN),
        *_notes(sheet, fit, plane, say),
    ]
    drawing = Drawing(
        WIDTH,
        HEIGHT,
        f"{sheet.title}: the opening{whose}",
        f"Left, the readings with what each differs from the drawn shape. Right, a unit of "
        f"{say(fit.size[0])} x {say(fit.size[1])} {sheet.unit} in it, gaps drawn "
        f"{EXAGGERATION:g} times too large.",
        tuple(marks),
        "mm",
    )
    return on_paper(drawing, *LETTER) if sheet.unit == "in" else drawing


def _floor_text(fit: FitSheet, say: Callable[[float], str]) -> str:
    fall = fit.fall
    text = (
        f"Stands on the floor's high spot; under it the floor falls by {say(fall.gap)} (up to "
        f"{say(fall.most)})"
    )
    if fit.stands.levelling is not None:
        turned = "turned out" if fit.stands.feet else "packed up"
        text += f", and it may be {turned} {say(fit.stands.levelling)}"
    return f"{text}."


def _contradiction_texts(fit: FitSheet, plane: Plane) -> Iterator[str]:
    names = [each.reading for each in fit.survey.read.contradictions if each.plane == plane.name]
    if names:
        yield f"Readings contradict each other; measure again: {', or '.join(names)}."


def _notes(
    sheet: SurveySheet, fit: FitSheet, plane: Plane, say: Callable[[float], str]
) -> Iterator[Mark]:
    survey, spare = fit.survey, fit.spare
    likely = survey.rectangle
    bare = ", heights without the slope" if fit.sloped else ""
    errors = max(max(each) for each in plane.corner_errors)
    fits = Block(
        f"What goes in{bare}",
        (
            f"Largest level and plumb rectangle: {say(likely.width)} x {say(likely.height)}.",
            f"Goes in even if the readings err as assumed: {say(survey.least[0])} wide, "
            f"{say(survey.least[1])} high.",
            f"To spare in width: {say(spare.width)} (tight: {spare.tight_width}).",
            *_height_texts(fit, say),
            *_slope_texts(fit, say),
            _floor_text(fit, say),
            *_contradiction_texts(fit, plane),
            f"Corners are known to within {say(errors)}. Assumed: tape right to "
            f"{say(TAPE_ERROR)}, walls plumb to {PLUMB_ASSUMED:g} and floor level to "
            f"{FLOOR_ASSUMED:g} in a thousand where not read.",
        ),
    )
    closing = Block(
        "What closes the gaps at the front",
        (
            *(f"{each.side.capitalize()}: {closing_text(each, say)}." for each in fit.closings),
            *(f"{side.capitalize()}: left open, as it is meant." for side in fit.open_sides),
            *_frame_texts(fit, say),
            *([f"Not shown: {sheet.not_shown}"] if sheet.not_shown else []),
        ),
    )
    cautions = Block(
        "Mind",
        (
            *([fit.frame_note] if fit.frame_note else []),
            *(f"{each.danger.capitalize()}. {each.remedy}" for each in sheet.cautions),
        ),
    )
    for block, (left, width) in zip((fits, closing, cautions), _COLUMNS, strict=True):
        yield from note_marks(block, (left, _FOOT), width)


def _height_texts(fit: FitSheet, say: Callable[[float], str]) -> Iterator[str]:
    """What is left over a level top; nothing where all of it lies under a slope."""
    if fit.outline("front").run("top") is not None:
        left = f"{say(fit.spare.height)} (tight: {fit.spare.tight_height})"
        yield f"To spare in height: {left}."


def _slope_texts(fit: FitSheet, say: Callable[[float], str]) -> Iterator[str]:
    if fit.sloped is not None:
        text = slope_text(fit.sloped, fit.size, say)
        yield f"The slope {text}. Hold a template to it before anything is cut to it."


def _frame_texts(fit: FitSheet, say: Callable[[float], str]) -> Iterator[str]:
    if fit.frame is None:
        return
    members = "; ".join(
        f"{each.name.lower()} {say(each.long_points)} / {say(each.short_points)}, "
        f"{each.start_cut:z.1f}° and {each.end_cut:z.1f}°"
        for each in fit.frame.members
    )
    yield f"A frame scribed to the opening (long / short points, saw off square): {members}."
