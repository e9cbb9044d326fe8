"""`rodwright survey`: the opening as measured, and how the unit fits it."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.json_out import Json, say_json


def survey(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    out: Annotated[
        Path | None,
        typer.Option(
            "-o",
            "--out",
            help="Folder in which `survey/` gets the drawing and survey.json.",
        ),
    ] = None,
    json: Json = False,
) -> None:
    """Show readings, shape, fit, gaps, packers and frame; leaves with 2 on a wrong spec."""
    import rodwright
    from rodwright_cli import show_survey

    sheet = rodwright.survey(rodwright.read_spec(spec))
    if json:
        from rodwright.handover.survey_json import survey_json

        say_json(survey_json(sheet))
    else:
        show_survey.survey(sheet)
    if out is not None:
        files = rodwright.write_survey(sheet, out)
        if not json:
            show_survey.written(files)
    if sheet.problems:
        raise rodwright.ProblemsError(sheet.problems)
