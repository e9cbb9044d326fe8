"""Part sheets as plain data and as JSON."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import asdict
from typing import Any

from rodwright.paper.part_sheets.sheets import PartSheet
from rodwright.unit import Unit


def sheet_data(sheet: PartSheet) -> dict[str, Any]:
    """A sheet as plain dicts, lists and texts."""
    plain: dict[str, Any] = json.loads(json.dumps(asdict(sheet), ensure_ascii=False))
    return plain


def sheets_json(unit: Unit, sheets: Sequence[PartSheet]) -> bytes:
    """All sheets of a unit as a JSON document; equal sheets give equal bytes."""
    document = {
        "schema_version": 1,
        "title": unit.title,
        "lengths": unit.display_unit,
        "sheets": [asdict(each) for each in sheets],
    }
    return (json.dumps(document, ensure_ascii=False, indent=2) + "\n").encode()
