"""`rodwright survey`: the opening as measured, and how the unit fits it."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer


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
) -> None:
    """Show readings, shape, fit, gaps, packers and frame; leaves with 2 on a wrong spec."""
    import rodwright
    from rodwright_cli import show_survey

    sheet = rodwright.survey(rodwright.read_spec(spec))
    show_survey.survey(sheet)
    if out is not None:
        show_survey.written(rodwright.write_survey(sheet, out))
    if sheet.problems:
        raise rodwright.ProblemsError(sheet.problems)
