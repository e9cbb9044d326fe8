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
from rodwright.cutting.steps.words import (
    StepWords,
    contour_words,
    preparation,
    setting_words,
    step_words,
    written,
)
from rodwright.cutting.whole import Cutting
from rodwright.handover.cut_tables import Table
from rodwright.handover.cut_words import (
    cautions,
    counted,
    lot_summary,
    lot_title,
    noun,
    numbers_said,
    size_said,
)
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
            rules.begins,
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
    yield " ".join(cut_with(cutting))
    for line in cautions(cutting, steps):
        yield ""
        yield line
    for planned, each in zip(cutting.lots, steps, strict=True):
        yield ""
        yield f"## {lot_title(planned.lot, unit)}"
        yield ""
        often = "once" if each.settings == 1 else f"{each.settings} times"
        sets = f"; fence and stop are set {often} in all" if each.settings else ""
        yield f"{lot_summary(planned, unit)}{sets}."
        for sheet in each.sheets:
            yield from _sheet_lines(each, sheet, unit)


_MEASURES: dict[LengthUnit, str] = {"mm": "mm", "in": "inches"}


def cut_with(cutting: Cutting) -> Iterator[str]:
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
    yield f"Lengths in {_MEASURES[unit]}."


def _sheet_lines(steps: LotSteps, sheet: SheetSteps, unit: LengthUnit) -> Iterator[str]:
    lot = steps.lot
    many = len(sheet.numbers)
    like = f" ({counted(lot, many)} like this)" if many > 1 else ""
    size = size_said(lot, sheet.stock.length, sheet.stock.width, unit)
    name = sheet.stock.name
    named = name if size in name else f"{name}, {size}"
    yield ""
    yield f"### {noun(lot).capitalize()} {numbers_said(sheet.numbers)}: {named}{like}"
    yield ""
    if (prepared := preparation(steps, sheet, unit)) is not None:
        yield prepared
        yield ""
    if sheet.whole is not None:
        yield f"No cut: it is {', '.join(written(steps, sheet.whole))} as it stands."
    for words in _sheet_words(steps, sheet, unit):
        yield _line(words)
    if sheet.contours and sheet.kept:
        names = ", ".join(name for _, names in sheet.kept for name in names)
        yield ""
        yield f"Kept of what is left: {names}; `offcuts.csv` has their sizes."


def _sheet_words(steps: LotSteps, sheet: SheetSteps, unit: LengthUnit) -> Iterator[StepWords]:
    for step in sheet.steps:
        yield step_words(steps, sheet, step, unit)
    for contour in sheet.contours:
        yield contour_words(steps, contour, unit)


def _line(words: StepWords) -> str:
    setting = f" **{words.setting}**" if words.setting else ""
    against = f" ({words.against})" if words.against else ""
    mind = f" {_sentence('; '.join(words.mind))}" if words.mind else ""
    return (
        f"{words.number}. {words.hand}, {words.size}: {words.cut}{setting}{against}. "
        f"{_sentence('; '.join(words.leaves))}{mind}"
    )


def _sentence(text: str) -> str:
    return f"{text[0].upper()}{text[1:]}."


def cuts_table(steps: Sequence[LotSteps], unit: LengthUnit) -> Table:
    """Every cut, sheet by sheet."""
    columns = (
        Column("material", widest=30),
        Column("sheet"),
        Column("step", 0),
        Column("in hand", widest=24),
        Column("size", widest=24),
        Column("cut", widest=30),
        Column(f"setting {unit}"),
        Column("against", widest=30),
        Column("leaves", widest=50),
        Column("mind", widest=60),
    )
    rows = (
        (
            lot_title(each.lot, unit),
            numbers_said(sheet.numbers),
            *(words.number, words.hand, words.size, words.cut, words.setting, words.against),
            *("\n".join(words.leaves), "\n".join(words.mind)),
        )
        for each in steps
        for sheet in each.sheets
        for words in _sheet_words(each, sheet, unit)
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
        length_column("setting", unit),
        Column("cut", widest=30),
        Column("times", 0),
        Column("what is cut", widest=80),
    )
    rows: list[tuple[Cell, ...]] = []
    for steps, settings in lists:
        for setting in settings:
            words = setting_words(steps, setting, unit)
            title = lot_title(steps.lot, unit)
            number = length_cell(setting.setting, unit) if words.setting else ""
            rows.append((title, number, words.cut, words.times, words.cuts))
    return Table(name, columns, tuple(rows))
