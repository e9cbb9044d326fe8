"""From a spec to its survey sheet: the readings, the shape, the fit, and what closes the gaps."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

from rodwright.handover.output import whole_or_nothing
from rodwright.handover.survey_json import survey_json
from rodwright.opening.closings import closings_round
from rodwright.opening.fit import spare
from rodwright.opening.floor import floor_fall
from rodwright.opening.frames import FittedFrame, fit_frame
from rodwright.opening.gaps import (
    Standing,
    fixing_points,
    gap_map,
    open_sides,
    packing,
)
from rodwright.opening.heights import heights_without_slope
from rodwright.opening.readings import EDGES, LEVEL_ERROR
from rodwright.opening.sheet import FitSheet, Gain, SurveySheet
from rodwright.opening.silhouettes import sloped
from rodwright.opening.survey import Survey, least_with, measure, solved_planes
from rodwright.problems import Problems, ProblemsError
from rodwright.setout import set_out_unit
from rodwright.setout.rod.reach import joint_of
from rodwright.setout.rod.sizes import feet_places, standing_inset
from rodwright.unit import OpeningShape, Role, Unit
from rodwright.unit.facts import carcass_size
from rodwright.wishes import SpecFile, UnitSpec
from rodwright.wishes.base import LevellersSpec
from rodwright.wishes.models import CarcassSpec, SpaceSpec
from rodwright.wishes.stock import SheetSpec

_PLAIN, _PLAIN_DEPTH = 18.0, 300.0
"""Thickness of the boards of a plain box, and its depth where none is given, mm."""
_WORTH_READING = 0.5
"""Another reading is worth taking where it settles more than this, mm."""


def survey(spec: SpecFile | UnitSpec) -> SurveySheet:
    """Survey the opening of a spec, and fit its unit into it.

    Raises:
        ProblemsError: there is no opening, its readings make no shape, or the wishes don't
            even give a size.
    """
    if isinstance(spec, UnitSpec):
        return _survey(spec)
    with spec.located():
        sheet = _survey(spec.spec)
    try:
        with spec.located():
            if sheet.problems:
                raise ProblemsError(sheet.problems)
    except ProblemsError as error:
        return replace(sheet, problems=error.problems)
    return sheet


def _survey(spec: UnitSpec) -> SurveySheet:
    problems = Problems(spec.unit)
    if spec.opening is None:
        problems.add((), "there is no opening to survey", "Add `opening:` with your readings.")
        raise problems.error()
    heights_without_slope(spec, problems)
    problems.raise_if_any()
    found = solved_planes(spec.opening, problems)
    if found is None:
        raise problems.error()
    planes, doubts, _ = found
    measured = measure(spec.opening, problems, found)
    if not doubts:
        problems.raise_if_any()
    if measured is None:
        told = problems.error().problems
        return SurveySheet(spec.title, spec.unit, planes, doubts, told, None)
    try:
        unit = set_out_unit(spec, measured)
    except ProblemsError as error:
        found_box = _plain_box(spec, measured)
        if found_box is None:
            raise
        fit = replace(_fit_sheet(*found_box, measured), closings=())
        return SurveySheet(spec.title, spec.unit, planes, (), error.problems, fit, _NOT_SHOWN)
    return SurveySheet(spec.title, spec.unit, planes, (), (), _fit_sheet(spec, unit, measured))


_NOT_SHOWN = (
    "What closes the gaps, and the face frame: something else in the spec makes no unit yet. The "
    "gaps and packers are those of a plain box of its size."
)


def _plain_box(spec: UnitSpec, measured: Survey) -> tuple[UnitSpec, Unit] | None:
    """A carcass of the unit's overall size with nothing in or on it, on its base if that will do:
    the survey comes first on a job, when little else is settled.  None where there is no size."""
    depth = spec.size.depth
    if depth is None and (spec.opening is None or spec.opening.depth is None):
        depth = _PLAIN_DEPTH
    bare = spec.model_copy(
        update={
            "size": spec.size.model_copy(update={"depth": depth}),
            "stock": {"plain": SheetSpec(kind="sheet", material="birch plywood", thickness=_PLAIN)},
            "carcass": CarcassSpec(stock="plain", corners=joint_of("butted")),
            "interior": SpaceSpec(),
            "cutouts": (),
            **dict.fromkeys(_LEFT_OFF),
        }
    )
    for base in (spec.base, None):
        plain = bare.model_copy(update={"base": base})
        try:
            return plain, set_out_unit(plain, measured)
        except ProblemsError:
            continue
    return None


_LEFT_OFF = (
    "back", "face_frame", "lipping", "edging", "worktop", "cornice", "scribes", "way_in",
)  # fmt: skip
"""Keys of a spec that a plain box has nothing of."""


def _fit_sheet(spec: UnitSpec, unit: Unit, measured: Survey) -> FitSheet:
    assert unit.opening is not None and unit.opening.shape is not None
    shape = unit.opening.shape
    size = carcass_size(unit)
    stands = _standing(spec, unit, size[0])
    over = sloped(unit)
    under = over.planes if over else {}
    frame, frame_note = _fitted_frame(spec, shape), ""
    if frame is not None and "front" in under:
        frame, frame_note = None, _CUT_TO_SLOPE
    return FitSheet(
        size,
        unit.opening,
        shape,
        measured,
        spare(measured.shapes, measured.limits, *size),
        gap_map(shape, size, under),
        packing(shape, size, spec.fit.packers, spec.fit.fixing_spacing, stands, under),
        closings_round(unit),
        frame,
        _gains(measured),
        stands,
        floor_fall(unit),
        over,
        open_sides(shape, size, under),
        frame_note,
    )


_CUT_TO_SLOPE = (
    "No figures of a frame tight in the opening: under a slope its members end at the slope. The "
    "parts list has them as they are cut for the gap left under it; hold each up and mark it."
)


def _fitted_frame(spec: UnitSpec, shape: OpeningShape) -> FittedFrame | None:
    """The face frame tight in the opening's four corners; None where it doesn't fill them."""
    wish = spec.face_frame
    # A frame that stands on a base or ends under a worktop isn't cut to floor and top.
    if wish is None or wish.rails != "both" or spec.base or spec.worktop:
        return None
    rail_width = wish.width if wish.rail_width is None else wish.rail_width
    return fit_frame(
        shape.front.corners,
        wish.width,
        rail_width,
        wish.corners == "mitred",
        wish.trim,
        spec.unit,
    )


def _standing(spec: UnitSpec, unit: Unit, width: float) -> Standing:
    """Where the unit stands on the floor."""
    if isinstance(spec.base, LevellersSpec):
        return Standing(feet_places(spec.base, width), True, unit.levelling)
    legs = {
        (box.low[0] + box.high[0]) / 2
        for part in unit.parts
        if part.role is Role.LEG
        for box in (part.bounds(),)
    }
    if legs:
        return Standing(tuple(sorted(legs)), False, unit.levelling)
    inset = standing_inset(spec)
    places = fixing_points(width - 2 * inset, spec.fit.fixing_spacing)
    return Standing(tuple(inset + place for place in places), False, unit.levelling)


def _gains(measured: Survey) -> tuple[Gain, ...]:
    """What each plumb or level reading of the front not taken yet would settle, best first.

    As if it said what the shape says, with a level's own error over a metre.
    """
    front = measured.planes[0]
    names = {edge: name for name, edge in EDGES.items()}
    gains = []
    for assumed, value in zip(front.readings, front.modelled, strict=True):
        if not assumed.is_assumption:
            continue
        width, height = least_with(measured, replace(assumed, value=value, error=LEVEL_ERROR))
        reading = f"{assumed.kind} of the {names[assumed.first[:2]]}"
        gain = Gain(reading, width - measured.least[0], height - measured.least[1])
        if max(gain.width, gain.height) > _WORTH_READING:
            gains.append(gain)
    return tuple(sorted(gains, key=lambda each: -max(each.width, each.height)))


_FILES = re.compile(r"survey\.json|opening(?:-rear)?\.(?:svg|png)")


def write_survey(sheet: SurveySheet, folder: Path) -> tuple[Path, ...]:
    """Write ``survey/survey.json`` and the drawing ``survey/opening.svg`` and ``.png``.

    Whole or not at all; the drawing only where there is a fit to draw.  They have a folder of
    their own inside ``folder``, which may hold a build.

    Raises:
        ProblemsError: the folder can't be written, or something that isn't ours is in the way.
    """
    target = folder / "survey"
    with whole_or_nothing(target, ours=_FILES, again=_FILES.fullmatch) as staging:
        (staging / "survey.json").write_bytes(survey_json(sheet))
        if sheet.fit is not None:
            # Pillow and the picture modules are needed for nothing else here.
            from rodwright.pictures.opening import write_opening

            write_opening(sheet, staging)
        names = sorted(path.name for path in staging.iterdir())
    return tuple(target / name for name in names)
