"""The pages of part sheets: one for each distinct part, its drawings and the table of its
workings."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from rodwright.paper.part_sheets.cells import cells
from rodwright.paper.part_sheets.drawing import LYING, Shown, drawings
from rodwright.paper.part_sheets.files import sheets_json
from rodwright.paper.part_sheets.sheets import PartSheet, Size, laid_sheets, part_sheets
from rodwright.paper.sections import Section
from rodwright.paper.typesetting import typeset
from rodwright.pictures.svg import to_svg
from rodwright.unit import Unit

_MEASURES = {"mm": "mm", "in": "inches"}
_GRAIN = {"lengthwise": "along the length", "crosswise": "across the width"}


def part_sheets_section(unit: Unit, page: tuple[float, float] | None = None) -> Section:
    """The part sheets as a section of the job book, on paper that is so wide and high as it lies
    (mm): unless said A4, or for a maker in inches Letter."""
    page = page or LYING[unit.display_unit]
    files: dict[str, bytes] = {}
    sheets = []
    for number, laid in enumerate(laid_sheets(unit), 1):
        views = []
        for count, shown in enumerate(drawings(laid, page), 1):
            name = f"part-sheets/{number}-{count}.svg"
            files[name] = to_svg(shown.drawing, words=True).encode()
            views.append(_shown(laid.sheet, shown, name))
        sheets.append(_page(laid.sheet, views))
    data = {"title": unit.title, "measure": _MEASURES[unit.display_unit], "sheets": sheets}
    return Section("part-sheets", "Part sheets", data, files)


def part_sheet_files(
    unit: Unit, when: datetime | None = None, page: tuple[float, float] | None = None
) -> dict[str, bytes]:
    """The part sheets as files of their own, by their names below ``book/``: pages, and the data
    behind them."""
    section = part_sheets_section(unit, page)
    width, height = page or LYING[unit.display_unit]
    data = section.data | {"width": width, "height": height}
    (pdf,) = typeset("part-sheets-alone", data, section.files, when=when)
    return {"part-sheets.pdf": pdf, "part-sheets.json": sheets_json(unit, part_sheets(unit))}


def _page(sheet: PartSheet, views: list[dict[str, Any]]) -> dict[str, Any]:
    """What the template shows of a sheet."""
    return {
        "refs": list(sheet.refs),
        "name": sheet.name,
        "quantity": sheet.quantity,
        "size": _size(sheet.finished),
        "stock": sheet.stock,
        "facts": [list(fact) for fact in _facts(sheet)],
        "lie": "; ".join(sheet.lie),
        "held_by": list(sheet.held_by),
        "work": list(sheet.work),
        "views": views,
        "axes": {
            "x": f"x from the {sheet.lies.end}",
            "y": f"y from the {sheet.lies.edge}",
            "z": f"z from the {sheet.lies.face}",
        },
    }


def _shown(sheet: PartSheet, shown: Shown, name: str) -> dict[str, Any]:
    """A drawing with the rows of its table, under what is done for them."""
    there = {group.entry.number for group in shown.groups}
    blocks = [
        {
            "heading": each.heading,
            "rows": [cells(entry) for entry in each.entries if entry.number in there],
        }
        for each in sheet.operations
    ]
    marked = [cells(entry) for entry in sheet.marks if entry.number in there]
    blocks.append({"heading": "Marked in pencil", "rows": marked})
    return {
        "file": name,
        "width": shown.drawing.width,
        "height": shown.drawing.height,
        "blocks": [block for block in blocks if block["rows"]],
    }


def _facts(sheet: PartSheet) -> list[tuple[str, str]]:
    """What a maker looks up first, each with its name; what there is none of is left out."""
    finished, cut = _size(sheet.finished), _size(sheet.cut)
    edged: dict[str, list[str]] = {}
    for surface, called, thickness in sheet.edged:
        edged.setdefault(f"{called} {thickness}", []).append(surface)
    facts = [
        ("Finished size", finished),
        ("Cut size", cut if cut != finished else "the same"),
        ("Out of", ": ".join(dict.fromkeys((sheet.stock, sheet.material)))),
        (
            "Grain",
            {"lengthwise": "along the length", "crosswise": "across the width"}.get(
                sheet.grain, "none"
            ),
        ),
        ("Shows", ", ".join(sheet.shows) or "nothing"),
        ("Lipped (L)", ", ".join(sheet.lipped)),
        ("Edged (E)", "; ".join(f"{', '.join(on)}: {what}" for what, on in edged.items())),
        ("Finish", sheet.finish),
        ("Weight", f"{sheet.weight_each} each"),
        (
            "Hand",
            f"the mirror image of {_refs(sheet.hands.mirrored)}" if sheet.hands.mirrored else "",
        ),
    ]
    return [fact for fact in facts if fact[1]]


def _size(size: Size) -> str:
    return f"{size.length} x {size.width} x {size.thickness}"


def _refs(refs: tuple[str, ...]) -> str:
    more = len(refs) - 6
    return ", ".join(refs[:6]) + (f" and {more} more" if more > 0 else "")
