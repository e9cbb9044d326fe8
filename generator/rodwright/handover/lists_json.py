"""The lists as JSON, in mm, metres and kg whatever the unit."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict
from typing import Any

from rodwright.checks.findings import Finding
from rodwright.handover.edge_list import EdgeRow, edge_list
from rodwright.handover.findings_json import findings_records
from rodwright.handover.json_text import json_text
from rodwright.handover.lists import PartsRow, hardware_list, parts_list
from rodwright.handover.totals import StockTotal, stock_totals
from rodwright.mass import unit_weight
from rodwright.unit import Unit
from rodwright.unit.orientation import OWN_WORDS
from rodwright.unit.shop_part import PartsKind

_FIGURES_IN = {
    **dict.fromkeys(("length", "width", "thickness", "rough_length", "rough_width"), "mm"),
    **dict.fromkeys(("weight_each", "weight"), "kg"),
    **dict.fromkeys(("net", "to_get", "run"), "m"),
    "area": "m2",
    "volume": "m3",
}
"""What the figures of the JSON are in, by their keys."""


def parts_json(
    unit: Unit, kind: PartsKind = "cut", errors: Sequence[Finding] | None = None
) -> bytes:
    """The lists as JSON: title, rows, hardware, edges, stock and totals, and what must be mended
    before anything is cut, where that is given.

    Its figures are in mm, m, m2, m3 and kg in every unit; ``figures_in`` says which is in what.
    """
    document: dict[str, Any] = {
        "title": unit.title,
        "lengths": "mm",
        "weights": "kg",
        "figures_in": _FIGURES_IN,
        "workings_in": unit.display_unit,
        "words": OWN_WORDS,
        "parts": [_parts_record(row) for row in parts_list(unit, kind)],
        "hardware": [asdict(row) for row in hardware_list(unit)],
        "edges": [_edge_record(row) for row in edge_list(unit)],
        "stock": [_stock_record(total) for total in stock_totals(unit)],
        "totals": {"parts": len(unit.parts), "weight": round(unit_weight(unit), 3)},
    }
    if errors is not None:
        document["errors"] = findings_records(errors)
    return json_text(document)


def _stock_record(total: StockTotal) -> dict[str, Any]:
    return {
        "name": total.stock.name,
        "material": total.stock.described,
        "kind": total.stock.kind,
        "thickness": total.stock.thickness,
        "parts": total.parts,
        "area": round(total.area, 4),
        "run": round(total.metres, 3),
        "volume": round(total.volume, 6),
        "weight": round(total.weight, 3),
    }


def _parts_record(row: PartsRow) -> dict[str, Any]:
    return {
        **asdict(row),
        "quantity": row.quantity,
        "weight_each": round(row.weight_each, 3),
        "weight": round(row.weight, 3),
    }


def _edge_record(row: EdgeRow) -> dict[str, Any]:
    return {**asdict(row), "net": round(row.net, 3), "to_get": row.to_get}
