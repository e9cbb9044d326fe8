"""The pages of part sheets: one for each distinct part, its drawings and the table of its
workings."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from rodwright.paper.part_sheets.cells import cells
from rodwright.paper.part_sheets.drawing import Shown, drawings
from rodwright.paper.part_sheets.files import sheets_json
from rodwright.paper.part_sheets.sheets import PartSheet, laid_sheets
from rodwright.paper.sections import Section
from rodwright.paper.typesetting import typeset
from rodwright.pictures.svg import to_svg
from rodwright.unit import Unit

_MEASURES = {"mm": "mm", "in": "inches"}
_GRAIN = {"lengthwise": "along the length", "crosswise": "across the width"}
_PAPERS = {"mm": "a4", "in": "us-letter"}


def part_sheets_section(unit: Unit) -> Section:
    """The part sheets as a section of the job book."""
    laid = laid_sheets(unit)
    files: dict[str, bytes] = {}
    pages = []
    for number, each in enumerate(laid, 1):
        views = []
        for count, shown in enumerate(drawings(each), 1):
            name = f"part-sheets/{number}-{count}.svg"
            files[name] = to_svg(shown.drawing, words=True).encode()
            views.append(_shown(each.sheet, shown, name))
        pages.append(_page(each.sheet, views))
    data = {
        "title": unit.title,
        "paper": _PAPERS[unit.display_unit],
        "measure": _MEASURES[unit.display_unit],
        "sheets": pages,
    }
    return Section("part-sheets", "Part sheets", data, files)


def part_sheet_files(unit: Unit, when: datetime | None = None) -> dict[str, bytes]:
    """The part sheets as files of their own, a PDF and the data behind it, by their names."""
    section = part_sheets_section(unit)
    (pdf,) = typeset("part-sheets-alone", section.data, section.files, when=when)
    sheets = tuple(each.sheet for each in laid_sheets(unit))
    return {"book/part-sheets.pdf": pdf, "book/part-sheets.json": sheets_json(sheets)}


def _page(sheet: PartSheet, views: list[dict[str, Any]]) -> dict[str, Any]:
    """What the template shows of a sheet."""
    return {
        "refs": list(sheet.refs),
        "name": sheet.name,
        "quantity": sheet.quantity,
        "facts": [list(fact) for fact in _facts(sheet)],
        "lie": "; ".join(sheet.lie),
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
    finished, cut = (
        f"{each.length} x {each.width} x {each.thickness}" for each in (sheet.finished, sheet.cut)
    )
    edged: dict[str, list[str]] = {}
    for surface, called, thickness in sheet.edged:
        edged.setdefault(f"{called} {thickness}", []).append(surface)
    facts = [
        ("Finished size", finished),
        ("Cut size", cut if cut != finished else "the same"),
        ("Out of", f"{sheet.stock}: {sheet.material}"),
        (
            "Grain",
            {"lengthwise": "along the length", "crosswise": "across the width"}.get(
                sheet.grain, "none"
            ),
        ),
        ("Shows", ", ".join(sheet.shows) or "nothing"),
        ("Lipped (L)", ", ".join(sheet.lipped)),
        ("Edged (E)", "; ".join(f"{', '.join(on)}: {what}" for what, on in edged.items())),
        ("Weight", f"{sheet.weight_each} each"),
        (
            "Hand",
            f"the mirror image of {_refs(sheet.hands.mirrored)}" if sheet.hands.mirrored else "",
        ),
    ]
    return [fact for fact in facts if fact[1]]


def _refs(refs: tuple[str, ...]) -> str:
    more = len(refs) - 6
    return ", ".join(refs[:6]) + (f" and {more} more" if more > 0 else "")
