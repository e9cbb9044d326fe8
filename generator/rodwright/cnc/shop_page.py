"""The page for the shop: what is in the pack, how to read it, what is cut, and what isn't."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from rodwright.checks.findings import Finding, Severity
from rodwright.cnc.layers import hundredths, said
from rodwright.cnc.nested import NestedSheet
from rodwright.cnc.part_shapes import PartShapes, layers_in
from rodwright.handover.cut_words import lot_title
from rodwright.handover.tables import Cell, Column, csv_bytes
from rodwright.handover.working_names import working_names
from rodwright.paper.typesetting import paper_name
from rodwright.trade.label_sheets import Paper
from rodwright.trade.machining import TOLERANCES
from rodwright.unit import Channel, Grain, Mortise, Unit
from rodwright.unit.orientation import orientation_of

_GRAIN = {Grain.LENGTHWISE: "along x", Grain.CROSSWISE: "along y", Grain.NONE: "either way"}


@dataclass(frozen=True, slots=True)
class Contents:
    """What a pack is made of.  ``unit`` is laid as its files have it, ``drawn`` its distinct parts,
    ``sheets`` those that are nested, ``tool`` the diameter (mm) they are nested for; ``no_plan``
    says why there are none; ``findings`` are what the checks found."""

    unit: Unit
    drawn: tuple[PartShapes, ...]
    sheets: tuple[NestedSheet, ...]
    tool: float
    no_plan: tuple[str, ...]
    findings: tuple[Finding, ...]


def page_data(contents: Contents, names: Sequence[str], paper: Paper) -> dict[str, Any]:
    """The page as data for its template; ``names`` are those of the sheets' files."""
    unit = contents.unit
    layers = dict.fromkeys(
        name
        for each in contents.drawn
        for name in layers_in((*each.cut, *each.texts, *each.reverse))
    )
    layers |= dict.fromkeys(name for each in contents.sheets for name in layers_in(each.shapes))
    return {
        "paper": paper_name(paper),
        "title": unit.title,
        "about": [
            [what, text]
            for what, text in (
                ("number", unit.number),
                ("revision", unit.revision),
                ("date", unit.date),
                ("designed by", ", ".join(filter(None, (unit.author, unit.organisation)))),
                ("approved by", unit.approved_by),
            )
            if text
        ],
        "inches": unit.display_unit == "in",
        "errors": [each.message for each in contents.findings if each.severity is Severity.ERROR],
        "stocks": list(_stocks(contents)),
        "sheets": [_sheet(each, name) for each, name in zip(contents.sheets, names, strict=True)],
        "tool": f"{contents.tool:g}",
        "no_plan": list(contents.no_plan),
        "narrowest": _narrowest(contents.drawn),
        "layers": [[name, said(name)] for name in sorted(layers)],
        "tolerances": [[what, text] for what, text in TOLERANCES],
    }


def parts_csv(contents: Contents) -> bytes:
    """A row for each distinct part, sizes as cut in mm."""
    columns = (
        Column("file"),
        Column("quantity", 0),
        Column("refs"),
        Column("name"),
        Column("length mm", 2),
        Column("width mm", 2),
        Column("thickness mm", 2),
        Column("stock"),
        Column("grain"),
        Column("face up"),
        Column("second side"),
        Column("edged after"),
        Column("by hand"),
    )
    return csv_bytes(columns, [_csv_row(each) for each in contents.drawn])


def _csv_row(drawn: PartShapes) -> tuple[Cell, ...]:
    product, part = drawn.product, drawn.product.part
    length, width, thickness = (round(each, 2) for each in part.blank.size)
    return (
        f"parts/{product.file}",
        len(product.shop.pieces),
        ", ".join(each.ref for each in product.shop.pieces),
        product.name.split(" ", 1)[-1],
        length,
        width,
        thickness,
        part.blank.stock.described,
        _GRAIN[part.blank.grain],
        product.shop.up,
        "yes" if drawn.reverse else "no",
        "; ".join(_edged(drawn)),
        "; ".join(_left(drawn)),
    )


def _stocks(contents: Contents) -> Iterator[dict[str, Any]]:
    folders: dict[str, list[PartShapes]] = {}
    for each in contents.drawn:
        folders.setdefault(each.product.file.parent.as_posix(), []).append(each)
    for folder, drawn in folders.items():
        stock = drawn[0].product.part.blank.stock
        thickness = drawn[0].product.part.blank.thickness
        yield {
            "folder": f"parts/{folder}",
            "what": f"{stock.described}, {hundredths(thickness)} mm thick",
            "sawn": stock.kind == "board",
            "rows": [_row(each) for each in drawn],
        }


def _row(drawn: PartShapes) -> dict[str, Any]:
    product, part = drawn.product, drawn.product.part
    length, width, _ = part.blank.size
    return {
        "file": product.file.name,
        "quantity": len(product.shop.pieces),
        "refs": ", ".join(each.ref for each in product.shop.pieces),
        "name": product.name.split(" ", 1)[-1],
        "size": f"{hundredths(length)} x {hundredths(width)}",
        "grain": _GRAIN[part.blank.grain],
        "up": product.shop.up,
        "second": bool(drawn.reverse),
        "edged": list(_edged(drawn)),
        "left": list(_left(drawn)),
        "notes": list(product.shop.notes),
    }


def _narrowest(drawn: Sequence[PartShapes]) -> str:
    """Width (mm) of the narrowest channel from a face: no wider tool cuts it; empty if there is
    none."""
    widths = [
        min(each.figures(part.blank.size).across)
        for part in (shapes.product.part for shapes in drawn)
        for each in part.workings
        if isinstance(each, Channel | Mortise) and each.worked_from(part.blank.size) is not None
    ]
    return hundredths(min(widths)) if widths else ""


def _edged(drawn: PartShapes) -> Iterator[str]:
    shop = drawn.product.shop
    orientation = orientation_of(shop.pieces)
    for each in shop.edged:
        yield f"{orientation.name(each.surface)}: {each.called} {hundredths(each.thickness)} mm"


def _left(drawn: PartShapes) -> Iterator[str]:
    yield from drawn.by_hand
    size = drawn.product.part.blank.size
    for name in dict.fromkeys(working_names(drawn.product.shop.later, size, "mm")):
        yield f"{name}: once it is trimmed and edged"


def _sheet(sheet: NestedSheet, name: str) -> dict[str, Any]:
    return {
        "file": name,
        "what": lot_title(sheet.lot, "mm"),
        "size": f"{hundredths(sheet.length)} x {hundredths(sheet.width)}",
        "refs": list(sheet.refs),
        "turn_over": list(sheet.turn_over),
        "bare": list(sheet.bare),
    }
