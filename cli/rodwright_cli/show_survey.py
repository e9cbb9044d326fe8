"""What the terminal shows of a survey."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from rich.box import SIMPLE_HEAD
from rich.markup import escape
from rich.table import Table

from rodwright.handover.survey_words import (
    closing_lines,
    fit_lines,
    frame_lines,
    frame_table,
    gaps_table,
)
from rodwright.handover.told_tables import ToldTable
from rodwright.lengths import LengthUnit, format_difference, format_length
from rodwright.opening.adjustment import Plane
from rodwright.opening.frames import FittedFrame
from rodwright.opening.readings import BOW_ERROR, Reading
from rodwright.opening.sheet import FitSheet, SurveySheet
from rodwright_cli.console import PlainConsole

_CORNERS = ("bottom left", "bottom right", "top right", "top left")


def survey(sheet: SurveySheet) -> None:
    """The whole sheet: what is wrong with the readings goes to the error stream later."""
    console = PlainConsole(soft_wrap=True)
    console.print(f"[bold]{escape(sheet.title)}[/bold], lengths in {sheet.unit}")
    for plane in sheet.planes:
        _readings(console, plane, sheet.unit)
    if sheet.fit is not None:
        _fit(console, sheet.fit, sheet.unit)
        if sheet.fit.frame is not None:
            _frame(console, sheet.fit.frame, sheet.unit)
        if sheet.fit.frame_note:
            console.print(f"  {escape(sheet.fit.frame_note)}")
    if sheet.not_shown:
        console.print(f"[bold]Not shown[/bold]\n  {escape(sheet.not_shown)}")
    console.print("[bold]Mind[/bold]")
    for caution in sheet.cautions:
        console.print(f"  {escape(caution.danger)}\n  [dim]{escape(caution.remedy)}[/dim]")


def written(files: Sequence[Path]) -> None:
    """Where the files are."""
    names = ", ".join(path.name for path in files)
    PlainConsole(soft_wrap=True).print(escape(f"{names} in {files[0].parent}"))


def _readings(console: PlainConsole, plane: Plane, unit: LengthUnit) -> None:
    table = Table(
        box=SIMPLE_HEAD, pad_edge=False, title=f"{plane.name} plane", title_justify="left"
    )
    for heading in ("reading", "read", "off by", "right to"):
        table.add_column(heading, justify="left" if heading == "reading" else "right")
    for reading, residual in zip(plane.readings, plane.residuals, strict=True):
        name = f"[dim]{escape(reading.name)} (assumed)[/dim]" if reading.is_assumption else ""
        table.add_row(
            name or escape(reading.name),
            _said(reading, unit),
            format_difference(residual, unit),
            format_length(reading.error, unit),
        )
    console.print(table)
    if plane.looseness > 1.0:
        console.print(
            f"  These readings disagree by {plane.looseness:.1f} times what careful ones would; "
            "the corners' errors allow for it."
        )
    bent = max((-off for off in plane.residuals_of_bows), default=0.0)
    if bent > BOW_ERROR:
        console.print(
            f"  The edges bow in by up to {format_length(bent, unit)} {unit} together, and are "
            "taken as lines through these readings."
        )
    corners = zip(_CORNERS, plane.corners, plane.corner_errors, strict=True)
    for name, (x, z), (across, up) in corners:
        console.print(
            f"  {name:13} {format_length(x, unit):>10} {format_length(z, unit):>10} {unit}  "
            f"right to {format_length(across, unit)} across, {format_length(up, unit)} up"
        )


def _said(reading: Reading, unit: LengthUnit) -> str:
    if reading.kind == "distance":
        return format_length(reading.value, unit)
    to = "right" if reading.kind == "plumb" else "up to the right"
    back = "left" if reading.kind == "plumb" else "down to the right"
    out = f"{format_length(abs(reading.value), unit)} {to if reading.value >= 0 else back}"
    return f"{out if reading.value else '0'} over {format_length(reading.over, unit)}"


def _fit(console: PlainConsole, fit: FitSheet, unit: LengthUnit) -> None:
    console.print("[bold]Fit[/bold]")
    for word, said in fit_lines(fit, unit):
        console.print(f"  {word:18} {escape(said)}")
    _show(console, gaps_table(fit, unit))
    for side, said in closing_lines(fit, unit):
        console.print(f"  {side:6} {escape(said)}")


def _frame(console: PlainConsole, frame: FittedFrame, unit: LengthUnit) -> None:
    _show(console, frame_table(frame, unit))
    for line in frame_lines(frame):
        console.print(f"  {escape(line)}")


def _show(console: PlainConsole, told: ToldTable) -> None:
    table = Table(box=SIMPLE_HEAD, pad_edge=False, title=told.title, title_justify="left")
    for heading, kind in told.columns:
        table.add_column(heading, justify="left" if kind == "text" else "right")
    for cells in told.rows:
        table.add_row(*map(escape, cells))
    console.print(table)
