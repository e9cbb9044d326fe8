"""What the terminal shows of a survey."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from rich.box import SIMPLE_HEAD
from rich.markup import escape
from rich.table import Table

from rodwright.lengths import LengthUnit, format_difference, format_length
from rodwright.opening.adjustment import Plane
from rodwright.opening.closings import closing_text
from rodwright.opening.frames import FittedFrame
from rodwright.opening.gaps import is_bent
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
    def say(value: float) -> str:
        text = format_length(abs(value), unit)
        return f"-{text}" if value < 0 and text != "0" else text

    rectangle, least, spare = fit.survey.rectangle, fit.survey.least, fit.spare
    console.print("[bold]Fit[/bold]")
    console.print(f"  largest rectangle  {say(rectangle.width)} x {say(rectangle.height)}")
    console.print(f"  surely goes in     {say(least[0])} wide, {say(least[1])} high")
    console.print(f"  unit               {say(fit.size[0])} x {say(fit.size[1])}")
    console.print(f"  to spare in width  {say(spare.width)}, tight: {spare.tight_width}")
    console.print(f"  to spare in height {say(spare.height)}, tight: {spare.tight_height}")
    for gain in fit.gains:
        console.print(
            f"  worth reading      {gain.reading}: may settle {say(gain.width)} of the width, "
            f"{say(gain.height)} of the height"
        )
    table = Table(box=SIMPLE_HEAD, pad_edge=False, title="gaps and packers", title_justify="left")
    for heading in ("side", "plane", "at", "gap", "up to", "packers", "left over"):
        table.add_column(heading, justify="left" if heading in ("side", "plane") else "right")
    for packing in fit.packing:
        gap = packing.gap
        packers = " + ".join(say(each) for each in packing.packers) or _INSTEAD[packing.by]
        table.add_row(
            gap.side,
            gap.plane,
            say(gap.at),
            say(gap.gap),
            say(gap.most),
            packers,
            say(packing.left_over),
        )
    for gap in fit.gaps:
        if gap.side == "top" or is_bent(fit.shape.planes[gap.plane], fit.size, gap):
            table.add_row(
                gap.side, gap.plane, say(gap.at), say(gap.gap), say(gap.most), "none", say(gap.gap)
            )
    console.print(table)
    for closing in fit.closings:
        console.print(f"  {closing.side:6} {closing_text(closing, say)}")
    console.print(f"  floor  {_floor(fit, say)}")


_INSTEAD = {
    "packers": "none",
    "batten": "a batten",
    "foot": "foot turned out",
    "nothing": "more than its base follows",
}
"""What fills a gap without packers."""


def _floor(fit: FitSheet, say: Callable[[float], str]) -> str:
    fall = f"falls by {say(fit.fall.gap)} from its high spot, up to {say(fit.fall.most)}"
    if fit.stands.levelling is None:
        return fall
    turned = "be turned out" if fit.stands.feet else "be packed up"
    return f"{fall}; the base may {turned} by {say(fit.stands.levelling)}"


def _frame(console: PlainConsole, frame: FittedFrame, unit: LengthUnit) -> None:
    table = Table(
        box=SIMPLE_HEAD, pad_edge=False, title="a frame tight in the opening", title_justify="left"
    )
    for heading in ("member", "long points", "short points", "cuts off square"):
        table.add_column(heading, justify="left" if heading == "member" else "right")
    for member in frame.members:
        table.add_row(
            member.name,
            format_length(member.long_points, unit),
            format_length(member.short_points, unit),
            f"{member.start_cut:z.1f}° and {member.end_cut:z.1f}°",
        )
    console.print(table)
    angles = ", ".join(f"{name} {angle:.2f}°" for name, angle in frame.angles.items())
    console.print(f"  corners: {angles}")
    for number, step in enumerate(frame.order, start=1):
        console.print(f"  {number}. {step}")
