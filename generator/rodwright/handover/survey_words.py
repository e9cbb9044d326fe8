"""How a unit goes into its opening, in words and tables, as a terminal and a page show them."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial

from rodwright.handover.told_tables import ColumnKind, ToldTable
from rodwright.lengths import LengthUnit, format_length
from rodwright.opening.closings import closing_text
from rodwright.opening.frames import FittedFrame
from rodwright.opening.gaps import Gap, Packing, is_bent
from rodwright.opening.sheet import FitSheet
from rodwright.opening.silhouettes import slope_text

_INSTEAD = {
    "packers": "none",
    "batten": "a batten",
    "foot": "foot turned out",
    "nothing": "more than its base follows",
}
"""What fills a gap without packers."""
_Say = Callable[[float], str]


def _say(value: float, unit: LengthUnit) -> str:
    text = format_length(abs(value), unit)
    return f"-{text}" if value < 0 and text != "0" else text


def fit_lines(fit: FitSheet, unit: LengthUnit) -> Iterator[tuple[str, str]]:
    """What goes in and what is left, in pairs of a word and what is to be said."""
    say = partial(_say, unit=unit)
    rectangle, least, spare = fit.survey.rectangle, fit.survey.least, fit.spare
    bare = " (without the slope)" if fit.sloped else ""
    yield "largest rectangle", f"{say(rectangle.width)} x {say(rectangle.height)}{bare}"
    yield "surely goes in", f"{say(least[0])} wide, {say(least[1])} high{bare}"
    yield "unit", f"{say(fit.size[0])} x {say(fit.size[1])}"
    if fit.sloped is not None:
        yield "slope", slope_text(fit.sloped, fit.size, say)
    yield "to spare in width", f"{say(spare.width)}, tight: {spare.tight_width}"
    if fit.outline("front").run("top") is not None:
        yield "to spare in height", f"{say(spare.height)}, tight: {spare.tight_height}{bare}"
    for gain in fit.gains:
        yield (
            "worth reading",
            f"{gain.reading}: may settle {say(gain.width)} of the width, "
            f"{say(gain.height)} of the height",
        )


def closing_lines(fit: FitSheet, unit: LengthUnit) -> Iterator[tuple[str, str]]:
    """What closes the gap at each side, and how the floor falls, by sides."""
    say = partial(_say, unit=unit)
    for closing in fit.closings:
        yield closing.side, closing_text(closing, say)
    for side in fit.open_sides:
        yield side, "left open: the unit is meant to be smaller there"
    yield "floor", _floor(fit, say)


def gaps_table(fit: FitSheet, unit: LengthUnit) -> ToldTable:
    """Gaps where the unit is fixed, with their packers, and where they are widest."""
    rows = [_gap_row(each.gap, _packed(each, unit), each.left_over, unit) for each in fit.packing]
    rows += [
        _gap_row(gap, "none", gap.gap, unit)
        for gap in fit.gaps
        if gap.side in ("top", "slope") or is_bent(fit.shape.planes[gap.plane], fit.size, gap)
    ]
    headings = ("side", "plane", "at", "gap", "up to", "packers", "left over")
    return ToldTable(
        "gaps and packers",
        tuple((each, _kind(each in ("side", "plane"))) for each in headings),
        tuple(rows),
        ((),) * len(rows),
    )


def frame_table(frame: FittedFrame, unit: LengthUnit) -> ToldTable:
    """The members of a frame that is tight in the opening."""
    rows = tuple(
        (
            member.name,
            format_length(member.long_points, unit),
            format_length(member.short_points, unit),
            f"{member.start_cut:z.1f}° and {member.end_cut:z.1f}°",
        )
        for member in frame.members
    )
    headings = ("member", "long points", "short points", "cuts off square")
    return ToldTable(
        "a frame tight in the opening",
        tuple((each, _kind(each == "member")) for each in headings),
        rows,
        ((),) * len(rows),
    )


def frame_lines(frame: FittedFrame) -> Iterator[str]:
    """The angles of a frame's corners, and the order in which it is fitted."""
    angles = ", ".join(f"{name} {angle:.2f}°" for name, angle in frame.angles.items())
    yield f"corners: {angles}"
    for number, step in enumerate(frame.order, start=1):
        yield f"{number}. {step}"


def _kind(words: bool) -> ColumnKind:
    return "text" if words else "figure"


def _packed(packing: Packing, unit: LengthUnit) -> str:
    return " + ".join(_say(each, unit) for each in packing.packers) or _INSTEAD[packing.by]


def _gap_row(gap: Gap, packers: str, left: float, unit: LengthUnit) -> tuple[str, ...]:
    lengths = (gap.at, gap.gap, gap.most)
    return (gap.side, gap.plane, *(_say(each, unit) for each in lengths), packers, _say(left, unit))


def _floor(fit: FitSheet, say: _Say) -> str:
    fall = f"falls by {say(fit.fall.gap)} from its high spot, up to {say(fit.fall.most)}"
    if fit.stands.levelling is None:
        return fall
    turned = "be turned out" if fit.stands.feet else "be packed up"
    return f"{fall}; the base may {turned} by {say(fit.stands.levelling)}"
