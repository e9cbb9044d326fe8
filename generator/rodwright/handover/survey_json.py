"""A survey sheet as JSON."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import asdict
from typing import Any

from rodwright.handover.json_text import json_text
from rodwright.opening import readings as errors
from rodwright.opening.adjustment import Plane
from rodwright.opening.frames import FittedFrame
from rodwright.opening.sheet import SurveySheet


def survey_json(sheet: SurveySheet) -> bytes:
    """The sheet as JSON; lengths in mm, angles in degrees."""
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
            "frame_note": fit.frame_note,
            "slope": _rounded(asdict(fit.sloped)) if fit.sloped else None,
            "open_sides": list(fit.open_sides),
            "worth_reading": [_rounded(asdict(gain)) for gain in fit.gains],
        }
    return json_text(document | {"cautions": [asdict(each) for each in sheet.cautions]})


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
