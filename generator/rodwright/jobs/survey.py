"""From a spec to its survey sheet: the readings, the shape, the fit, and what closes the gaps."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from pathlib import Path
from typing import Any

from rodwright.handover.json_text import json_text
from rodwright.handover.output import whole_or_nothing
from rodwright.lengths import LengthUnit
from rodwright.opening import readings as errors
from rodwright.opening.adjustment import Plane
from rodwright.opening.cautions import CAUTIONS, Caution
from rodwright.opening.doubts import Doubt
from rodwright.opening.fit import Spare, spare
from rodwright.opening.floor import floor_fall
from rodwright.opening.frames import FittedFrame, fit_frame
from rodwright.opening.gaps import (
    Closing,
    Gap,
    Packing,
    Standing,
    closings,
    fixing_points,
    gap_map,
    packing,
)
from rodwright.opening.readings import EDGES, LEVEL_ERROR
from rodwright.opening.survey import Survey, least_with, measure, solved_planes
from rodwright.problems import Problem, Problems, ProblemsError
from rodwright.setout import set_out_unit
from rodwright.setout.rod.reach import joint_of
from rodwright.setout.rod.sizes import feet_places, standing_inset
from rodwright.unit import Opening, OpeningShape, Role, Unit
from rodwright.unit.facts import carcass_size, frame_reach
from rodwright.wishes import SpecFile, UnitSpec
from rodwright.wishes.base import LevellersSpec
from rodwright.wishes.models import CarcassSpec, SheetSpec, SpaceSpec

_PLAIN, _PLAIN_DEPTH = 18.0, 300.0
"""Thickness of the boards of a plain box, and its depth where none is given, mm."""
_WORTH_READING = 0.5
"""Another reading is worth taking where it settles more than this, mm."""


@dataclass(frozen=True, slots=True)
class Gain:
    """What another reading would settle: more width and height that surely go in, mm."""

    reading: str
    width: float
    height: float


@dataclass(frozen=True, slots=True)
class FitSheet:
    """How a unit goes into its opening: its carcass's width and height, what is left, and how
    it is packed, closed and framed.  ``stands`` is what it stands on, ``fall`` the widest gap
    under that: how far the floor falls away from its high spot.  mm, unit frame."""

    size: tuple[float, float]
    opening: Opening
    shape: OpeningShape
    survey: Survey
    spare: Spare
    gaps: tuple[Gap, ...]
    packing: tuple[Packing, ...]
    closings: tuple[Closing, ...]
    frame: FittedFrame | None
    gains: tuple[Gain, ...]
    stands: Standing
    fall: Gap


@dataclass(frozen=True, slots=True)
class SurveySheet:
    """Everything that is known of an opening.

    ``fit`` is None where readings can't be right: they are in ``doubts``, and ``problems``
    say so with their places.  Where the wishes make no unit, ``problems`` say why, ``fit`` is of a
    plain box of its size, and ``not_shown`` says what hangs on more than that.
    """

    title: str
    unit: LengthUnit
    planes: tuple[Plane, ...]
    doubts: tuple[Doubt, ...]
    problems: tuple[Problem, ...]
    fit: FitSheet | None
    not_shown: str = ""
    cautions: tuple[Caution, ...] = CAUTIONS


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
    found = solved_planes(spec.opening, problems)
    if found is None:
        raise problems.error()
    planes, doubts, _ = found
    measured = measure(spec.opening, problems)
    if not doubts:
        problems.raise_if_any()
    if measured is None:
        told = problems.error().problems
        return SurveySheet(spec.title, spec.unit, planes, doubts, told, None)
    try:
        unit = set_out_unit(spec)
    except ProblemsError as error:
        found_box = _plain_box(spec)
        if found_box is None:
            raise
        fit = replace(_fit_sheet(*found_box, measured), closings=())
        return SurveySheet(spec.title, spec.unit, planes, (), error.problems, fit, _NOT_SHOWN)
    return SurveySheet(spec.title, spec.unit, planes, (), (), _fit_sheet(spec, unit, measured))


_NOT_SHOWN = (
    "What closes the gaps, and the face frame: something else in the spec makes no unit yet. The "
    "gaps and packers are those of a plain box of its size."
)


def _plain_box(spec: UnitSpec) -> tuple[UnitSpec, Unit] | None:
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
            return plain, set_out_unit(plain)
        except ProblemsError:
            continue
    return None


_LEFT_OFF = (
    "back", "face_frame", "lipping", "edging", "worktop", "cornice", "scribes", "slope", "way_in",
)  # fmt: skip
"""Keys of a spec that a plain box has nothing of."""


def _fit_sheet(spec: UnitSpec, unit: Unit, measured: Survey) -> FitSheet:
    assert unit.opening is not None and unit.opening.shape is not None
    shape = unit.opening.shape
    size = carcass_size(unit)
    stands = _standing(spec, unit, size[0])
    frame = None
    wish = spec.face_frame
    # A frame that stands on a base or ends under a worktop isn't cut to floor and top.
    fills = spec.base is None and spec.worktop is None
    if wish is not None and wish.rails == "both" and fills:
        rail_width = wish.width if wish.rail_width is None else wish.rail_width
        frame = fit_frame(
            shape.front.corners,
            wish.width,
            rail_width,
            wish.corners == "mitred",
            wish.trim,
            spec.unit,
        )
    return FitSheet(
        size,
        unit.opening,
        shape,
        measured,
        spare(measured.shapes, measured.limits, *size),
        gap_map(shape, size),
        packing(shape, size, spec.fit.packers, spec.fit.fixing_spacing, stands),
        tuple(closings(shape, size, frame_reach(unit))),
        frame,
        _gains(measured),
        stands,
        floor_fall(unit),
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


# --- on file ---------------------------------------------------------------------------

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
        (staging / "survey.json").write_bytes(json_text(record(sheet)))
        if sheet.fit is not None:
            # Pillow and the picture modules are needed for nothing else here.
            from rodwright.pictures.opening import write_opening

            write_opening(sheet, staging)
        names = sorted(path.name for path in staging.iterdir())
    return tuple(target / name for name in names)


def record(sheet: SurveySheet) -> Mapping[str, Any]:
    """The sheet as plain data; lengths in mm, angles in degrees."""
    fit = sheet.fit
    document: dict[str, Any] = {
        "title": sheet.title,
        "measures": "lengths in mm, angles in degrees; errors hold nineteen times in twenty",
        "assumed_errors": {
            "tape": errors.TAPE_ERROR,
            "bow_away_from_corners": errors.BOW_ERROR,
            "level_over_its_length": errors.LEVEL_ERROR,
            "wall_out_of_plumb_per_metre": errors.PLUMB_ASSUMED,
            "floor_out_of_level_per_metre": errors.FLOOR_ASSUMED,
            "top_out_of_level_per_metre": errors.TOP_ASSUMED,
        },
        "planes": [_plane_record(plane) for plane in sheet.planes],
        "problems": [
            {"message": each.message, "remedy": each.remedy, "where": list(each.where)}
            for each in sheet.problems
        ],
    }
    if sheet.not_shown:
        document["not_shown"] = sheet.not_shown
    if fit is not None:
        document |= {
            "unit": {"width": fit.size[0], "height": fit.size[1]},
            "opening": _rounded(asdict(fit.opening)),
            "spare": _rounded(asdict(fit.spare)),
            "gaps": [_rounded(asdict(gap)) for gap in fit.gaps],
            "packing": [
                _rounded(asdict(each.gap) | {"by": each.by, "packers": list(each.packers)})
                for each in fit.packing
            ],
            "closings": [
                _rounded(
                    asdict(each)
                    | {
                        "rest": each.rest,
                        "most": each.most,
                        "by": each.remedy,
                        "strip": each.strip,
                        "cut": each.cut,
                    }
                )
                for each in fit.closings
            ],
            "floor": _rounded(asdict(fit.fall) | {"levelling": fit.stands.levelling}),
            "frame": _frame_record(fit.frame) if fit.frame else None,
            "worth_reading": [_rounded(asdict(gain)) for gain in fit.gains],
        }
    return document | {"cautions": [asdict(each) for each in sheet.cautions]}


def _plane_record(plane: Plane) -> Mapping[str, Any]:
    rows = zip(plane.readings, plane.residuals, plane.normalised, strict=True)
    return _rounded(
        {
            "name": plane.name,
            "looseness": plane.looseness,
            "corners": [list(corner) for corner in plane.corners],
            "corner_errors": [list(error) for error in plane.corner_errors],
            "readings": [
                {
                    "name": reading.name,
                    "assumed": reading.is_assumption,
                    "value": reading.value,
                    "error": reading.error,
                    "residual": residual,
                    "normalised_residual": normalised,
                }
                for reading, residual, normalised in rows
            ],
        }
    )


def _frame_record(frame: FittedFrame) -> Mapping[str, Any]:
    members = [
        asdict(each) | {"long_points": each.long_points, "short_points": each.short_points}
        for each in frame.members
    ]
    return _rounded(
        {"angles": frame.angles, "members": members, "trim": frame.trim, "order": frame.order}
    )


def _rounded(record: Mapping[str, Any]) -> dict[str, Any]:
    return {key: _rounded_value(value) for key, value in record.items()}


def _rounded_value(value: Any) -> Any:
    if isinstance(value, float):
        return round(value, 3) + 0.0
    if isinstance(value, Mapping):
        return _rounded(value)
    if isinstance(value, list | tuple):
        return [_rounded_value(each) for each in value]
    return value


__all__ = ["FitSheet", "Gain", "SurveySheet", "survey", "write_survey"]
