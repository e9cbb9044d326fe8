"""The cuts in their order: as a page to read at the saw, and as tables."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rodwright.cutting.steps import (
    LotSteps,
    Setting,
    SheetSteps,
    lot_steps,
    rip_settings,
    stop_settings,
)
from rodwright.cutting.whole import Cutting
from rodwright.handover.cut_tables import Table
from rodwright.handover.cut_words import (
    cautions,
    counted,
    lot_summary,
    lot_title,
    noun,
    size_said,
)
from rodwright.handover.step_words import StepSaid, StepWords, all_said, numbers_said
from rodwright.handover.tables import Cell, Column, length_cell, length_column
from rodwright.lengths import LengthUnit, format_length


def steps_of(cutting: Cutting) -> tuple[LotSteps, ...]:
    """The cuts of every lot: of sheets with the router, if they are cut by one.

    Raises:
        ValueError: as :func:`rodwright.cutting.steps.lot_steps`.
    """
    rules = cutting.rules
    return tuple(
        lot_steps(
            planned,
            rules.router if rules.router is not None and planned.lot.kind == "sheet" else rules.saw,
            [each for each in cutting.kept if each.lot == at],
            rules.first_cut,
        )
        for at, planned in enumerate(cutting.lots)
    )


def sequence_text(cutting: Cutting, steps: Sequence[LotSteps]) -> str:
    """All cuts, sheet by sheet, in Markdown."""
    return "\n".join(_lines(cutting, steps)) + "\n"


def _lines(cutting: Cutting, steps: Sequence[LotSteps]) -> Iterator[str]:
    unit = cutting.unit
    yield "# The cuts in their order"
    yield ""
    yield "; ".join(f"{job.mark} {job.title}".strip() for job in cutting.jobs)
    yield ""
    yield " ".join(_cut_with(cutting))
    for line in cautions(cutting):
        yield ""
        yield line
    for planned, each in zip(cutting.lots, steps, strict=True):
        words = StepWords(planned.lot, unit)
        yield ""
        yield f"## {lot_title(planned.lot, unit)}"
        yield ""
        often = "once" if each.settings == 1 else f"{each.settings} times"
        sets = f"; fence and stop are set {often} in all" if each.settings else ""
        yield f"{lot_summary(planned, unit)}{sets}."
        for sheet in each.sheets:
            yield from _sheet_lines(words, sheet)


def _cut_with(cutting: Cutting) -> Iterator[str]:
    """The saw and the router, and what settings are."""
    unit, rules = cutting.unit, cutting.rules
    kinds = {planned.lot.kind for planned in cutting.lots}
    routed = rules.router is not None and "sheet" in kinds
    if kinds != {"sheet"} or not routed:
        kerf = format_length(rules.saw.kerf, unit)
        yield (
            f"{rules.saw.kind.capitalize()}, kerf {kerf} {unit}; measured from the edge that is "
            "named to the near side of the blade."
        )
    if rules.router is not None and routed:
        tool = format_length(rules.router.kerf, unit)
        apart = format_length(rules.between, unit)
        yield (
            f"Sheets by a router, tool {tool} {unit}, {apart} {unit} between pieces; places are "
            "those of a piece's near corner, along the length and across it."
        )
    yield f"Lengths in {unit}."


def _sheet_lines(words: StepWords, sheet: SheetSteps) -> Iterator[str]:
    lot = words.lot
    many = len(sheet.numbers)
    like = f" ({counted(lot, many)} like this)" if many > 1 else ""
    size = size_said(lot, sheet.stock.length, sheet.stock.width, words.unit)
    name = sheet.stock.name
    named = name if size in name else f"{name}, {size}"
    yield ""
    yield f"### {noun(lot).capitalize()} {numbers_said(sheet.numbers)}: {named}{like}"
    yield ""
    if sheet.whole is not None:
        yield f"No cut: it is {words.result(sheet.whole)}."
    for step in sheet.steps:
        yield _line(words.said(sheet, step), words.unit)
    for contour in sheet.contours:
        yield f"{contour.number}. {words.contour(contour)}"


def _line(said: StepSaid, unit: LengthUnit) -> str:
    setting = f"**{said.cut.capitalize()} {format_length(said.setting, unit)}**"
    gives = said.measured or "nothing"
    beyond = f"; beyond the blade {said.rest}" if said.rest else ""
    notes = "; ".join(said.notes)
    notes = f" {notes[0].upper()}{notes[1:]}." if notes else ""
    return f"{said.number}. {setting} from the {said.edge} of {said.hold}: {gives}{beyond}.{notes}"


def cuts_table(steps: Sequence[LotSteps], unit: LengthUnit) -> Table:
    """Every cut, sheet by sheet."""
    columns = (
        Column("material", widest=30),
        Column("sheet"),
        Column("step", 0),
        Column("in hand", widest=24),
        Column("cut"),
        length_column("setting", unit),
        Column("from", widest=24),
        Column("gives", widest=40),
        Column("and", widest=40),
        Column("note", widest=50),
    )
    rows = (
        (
            lot_title(each.lot, unit),
            *(said.sheets, said.number, said.hold, said.cut),
            length_cell(said.setting, unit),
            *(said.edge, said.measured, said.rest, "\n".join(said.notes)),
        )
        for each in steps
        for said in all_said(each, unit)
    )
    return Table("Cuts", columns, tuple(rows))


def rip_table(steps: Sequence[LotSteps], unit: LengthUnit) -> Table:
    """All rips, those of one setting of the fence together."""
    return _by_setting("Rip fence", [(each, rip_settings(each)) for each in steps], unit)


def crosscut_table(steps: Sequence[LotSteps], unit: LengthUnit) -> Table:
    """All crosscuts and mitres, those of one setting of the stop together."""
    return _by_setting("Chop saw", [(each, stop_settings(each)) for each in steps], unit)


def _by_setting(
    name: str, lists: Sequence[tuple[LotSteps, Sequence[Setting]]], unit: LengthUnit
) -> Table:
    columns = (
        Column("material", widest=30),
        Column("set", 0),
        length_column("setting", unit),
        Column("cut"),
        Column("from", widest=24),
        Column("sheet"),
        Column("in hand", widest=30),
        Column("gives", widest=40),
        Column("and", widest=40),
        Column("note", widest=50),
    )
    rows: list[tuple[Cell, ...]] = []
    for steps, settings in lists:
        words = StepWords(steps.lot, unit)
        for number, setting in enumerate(settings, start=1):
            for at, step in setting.steps:
                said = words.said(steps.sheets[at], steps.sheets[at].steps[step])
                rows.append((lot_title(steps.lot, unit), number, *_set_cells(said, setting, unit)))
    return Table(name, columns, tuple(rows))


def _set_cells(said: StepSaid, setting: Setting, unit: LengthUnit) -> tuple[Cell, ...]:
    notes = list(said.notes)
    if setting.opening:
        notes.insert(0, "makes the end true before it is measured")
    return (
        length_cell(said.setting, unit),
        *(said.cut, said.edge, said.sheets, said.hold, said.measured, said.rest),
        "\n".join(notes),
    )
