"""What stands in a rack, as a list and as JSON, and what taking a plan changed in it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass
from typing import Any

from rodwright.amounts import AREAS, RUNS
from rodwright.cutting.rack import Entry, Rack
from rodwright.cutting.taking import Comes
from rodwright.handover.json_text import json_text
from rodwright.lengths import LengthUnit, ware_size
from rodwright.unit import Grain

_MEASURES = {"length": "mm", "area": "m2", "run": "m"}


@dataclass(frozen=True, slots=True)
class RackRow:
    """An entry as it is listed.  ``area`` in m2 and ``run`` in m are of all that is at hand, and
    one of them is 0; ``value`` is what that would cost (None: nobody said)."""

    entry: Entry
    area: float
    run: float
    value: float | None

    def size(self, unit: LengthUnit) -> str:
        """Thickness, width and length, or those of the section and its length."""
        piece, entry = self.entry.piece, self.entry
        thick = entry.sawn_thickness or entry.thickness
        sizes = (piece.length, piece.width or entry.section, thick)
        return " x ".join(ware_size(each, unit) for each in sizes)

    def amount(self, unit: LengthUnit) -> str:
        """What is there, by area or by length; empty where there is none."""
        if self.entry.kind == "length":
            return RUNS[unit].said(self.run) if self.run else ""
        return AREAS[unit].said(self.area) if self.area else ""

    def remarks(self, unit: LengthUnit) -> str:
        """What a maker has to know of it besides."""
        entry, found = self.entry, []
        if entry.sawn_thickness is not None:
            found.append(f"sawn, planes to {ware_size(entry.thickness, unit)}")
        if entry.grain is Grain.CROSSWISE:
            found.append("grain runs across")
        if entry.piece.show_faces == 1:
            found.append("one show face")
        found += [each.why or "flaw" for each in entry.piece.flaws]
        return "; ".join([*dict.fromkeys(found), *filter(None, [entry.note])])


def rack_list(rack: Rack) -> tuple[RackRow, ...]:
    """The entries of a rack in its order."""
    return tuple(map(_row, rack.entries))


def _row(entry: Entry) -> RackRow:
    piece = entry.piece
    area = piece.length * piece.width * piece.count / 1e6
    run = piece.length * piece.count / 1e3 if entry.kind == "length" else 0.0
    value = None if entry.price is None else entry.price * piece.count
    return RackRow(entry, area, run, value)


def totals(rows: Sequence[RackRow]) -> tuple[float, float, float, list[str]]:
    """Area (m2), run (m) and value of all that is at hand, and what nobody said the price of."""
    there = [row for row in rows if row.entry.piece.count]
    unpriced = [row.entry.name for row in there if row.value is None]
    value = sum(row.value for row in there if row.value is not None)
    return sum(row.area for row in there), sum(row.run for row in there), value, unpriced


def rack_json(rack: Rack) -> bytes:
    """A rack as JSON: what is in it, lengths in mm, with area, run and value of each."""
    rows = rack_list(rack)
    area, run, value, unpriced = totals(rows)
    return json_text(
        {
            "file": rack.file,
            "measures": _MEASURES,
            "saws": [asdict(saw) for saw in rack.saws],
            "keep": {"sheets": list(rack.keep), "boards": list(rack.keep_board)},
            "first_cut": rack.first_cut,
            "spacing": rack.spacing,
            "area": _rounded(area),
            "run": _rounded(run),
            "value": _rounded(value),
            "unpriced": unpriced,
            "stock": [_entry(row) for row in rows],
            "taken": list(rack.taken),
        }
    )


def _entry(row: RackRow) -> dict[str, Any]:
    entry, piece = row.entry, row.entry.piece
    return {
        "name": entry.name,
        "kind": entry.kind,
        "material": entry.material,
        "thickness": entry.thickness,
        "sawn_thickness": entry.sawn_thickness,
        "length": piece.length,
        "width": piece.width or entry.section,
        "grain": str(entry.grain),
        "show_faces": piece.show_faces,
        "count": piece.count,
        "price": entry.price,
        "trim": asdict(piece.trim),
        "planing": entry.planing,
        "flaws": [asdict(flaw) for flaw in piece.flaws],
        "where": entry.where,
        "note": entry.note,
        "area": _rounded(row.area),
        "run": _rounded(row.run),
        "value": None if row.value is None else _rounded(row.value),
    }


def taken_json(
    file: str, plan: str, used: Mapping[str, int], left: Mapping[str, int], came: Sequence[Comes]
) -> bytes:
    """What taking a plan changed in a rack file."""
    return json_text(
        {
            "file": file,
            "plan": plan,
            "used": [
                {"name": name, "used": count, "left": left[name]} for name, count in used.items()
            ],
            "came": [asdict(each) for each in came],
        }
    )


def _rounded(value: float) -> float:
    return round(value, 4)
