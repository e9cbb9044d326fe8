"""`cut.json`: a whole cutting plan as one document, and its reader.

The document is the record of a :class:`rodwright.cutting.whole.Cutting`, so that reading it gives
back an equal plan, and beside it what others would otherwise have to work out: what is bought,
what is wasted, how good each plan is.  The reader takes no notice of those.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Any

from pydantic import TypeAdapter, ValidationError

from rodwright.checks.findings import Finding
from rodwright.cutting.pricing import priced_by
from rodwright.cutting.shopping import (
    Balance,
    ShoppingRow,
    balance_of,
    paid,
    shopping_rows,
    without_price,
)
from rodwright.cutting.steps import LotSteps, SheetSteps
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import LotPlan
from rodwright.handover.findings_json import findings_records
from rodwright.handover.json_text import json_text
from rodwright.problems import Problem, ProblemsError

SCHEMA_VERSION = 1
"""Goes up when a document written before can no longer be read."""

_MEASURES = {
    "length": "mm",
    "area": "m2",
    "density": "kg/m3",
    "money": "the maker's own, without tax",
    "share": "0 to 1",
    "x": "along the length of a sheet or board, from its near end as bought",
    "y": "across its width, from its face edge",
}
_CUTTING = TypeAdapter(Cutting)


def cut_json(
    cutting: Cutting, steps: Sequence[LotSteps], errors: Sequence[Finding] | None = None
) -> bytes:
    """The document, UTF-8, the same bytes for the same plan; ``steps`` are the cuts of its lots,
    ``errors`` what must be mended before anything is cut, where that is given."""
    record = _CUTTING.dump_python(cutting, warnings=False)
    record["lots"] = [
        {**_of_lot(cutting, at, steps[at]), **each} for at, each in enumerate(record["lots"])
    ]
    about = {"schema_version": SCHEMA_VERSION, "measures": _MEASURES}
    rows = shopping_rows(cutting)
    more = {
        "stopped": cutting.stopped,
        "whole": cutting.whole,
        "shopping": [_shopping_record(cutting, each) for each in rows],
        "paid": _money(paid(rows)),
        "without_price": [each.supply.name for each in without_price(rows)],
    }
    found = {} if errors is None else {"errors": findings_records(errors)}
    return json_text(about | more | record | found)


def _of_lot(cutting: Cutting, at: int, steps: LotSteps) -> dict[str, Any]:
    planned = cutting.lots[at]
    return {
        "name": planned.lot.name,
        "cost_in": priced_by(planned.lot).value,
        "gap": round(planned.plan.gap, 6),
        "used": planned.plan.used,
        "balance": _balance_record(balance_of(cutting, at)),
        "weights": _weights(planned),
        "settings": steps.settings,
        "sheets": [_sheet_record(each) for each in steps.sheets],
        "order": [
            {"sheets": steps.sheets[sheet].numbers, "step": steps.sheets[sheet].steps[step].number}
            for sheet, step in steps.order
        ],
    }


def _sheet_record(sheet: SheetSteps) -> dict[str, Any]:
    """How a sheet is cut, and all that are cut like it: ``numbers`` are those of ``layouts``, from
    1."""
    return {
        "numbers": sheet.numbers,
        "stock": sheet.stock.name,
        "steps": [asdict(each) for each in sheet.steps],
        "whole": None if sheet.whole is None else asdict(sheet.whole),
        "contours": [asdict(each) for each in sheet.contours],
        "kept": [{"names": names, "offcut": asdict(offcut)} for offcut, names in sheet.kept],
    }


def _weights(planned: LotPlan) -> dict[str, float]:
    """kg, of a whole sheet, board or length by its name: what is carried to the saw."""
    lot = planned.lot
    return {
        each.name: round(
            each.length * (each.width or lot.section) * lot.thickness * lot.density / 1e9, 3
        )
        for each in lot.supplies
    }


def _balance_record(balance: Balance) -> dict[str, float]:
    return {
        "taken": round(balance.taken, 4),
        "in_pieces": round(balance.in_pieces, 4),
        "kept": round(balance.kept, 4),
        "lost": round(balance.lost, 4),
        "waste": round(balance.waste, 4),
    }


def _shopping_record(cutting: Cutting, row: ShoppingRow) -> dict[str, Any]:
    lot = cutting.lots[row.lot].lot
    return {
        "lot": row.lot,
        "material": lot.material,
        "thickness": lot.thickness,
        "name": row.supply.name,
        "length": row.supply.length,
        "width": row.supply.width or lot.section,
        "count": row.count,
        "at_hand": row.offer.at_hand,
        "entry": row.offer.entry,
        "each": row.each,
        "sum": None if row.sum is None else _money(row.sum),
        "assumed": row.offer.assumed,
    }


def _money(amount: float) -> float:
    return round(amount, 2) + 0.0


def read_cut(path: str | Path) -> Cutting:
    """The plan that a ``cut.json`` holds.

    Raises:
        ProblemsError: it can't be opened, or is no plan of this version.
    """
    try:
        data = Path(path).read_bytes()
    except OSError as error:
        raise _unread(path, error.strerror or str(error), "Check its name.") from None
    try:
        document = json.loads(data)
        version = document["schema_version"]
        if version != SCHEMA_VERSION:
            raise _unread(path, f"it is of version {version!r}", "Make it anew: `rodwright cut`.")
        return _CUTTING.validate_json(json.dumps(document, allow_nan=False), strict=True)
    except ValidationError as error:
        first = error.errors(include_url=False, include_context=False)[0]
        place = ".".join(map(str, first["loc"]))
        raise _unread(path, f"{place}: {first['msg']}", _AS_WRITTEN) from None
    except (ValueError, TypeError, LookupError, RecursionError) as error:
        if isinstance(error, ProblemsError):
            raise
        raise _unread(path, "it is no plan of `rodwright cut`", _AS_WRITTEN) from None


_AS_WRITTEN = "Take a `cut.json` as `rodwright cut -o` writes it."


def _unread(path: str | Path, why: str, remedy: str) -> ProblemsError:
    return ProblemsError([Problem(f"`{path}` can't be read as a cutting plan: {why}", remedy)])
