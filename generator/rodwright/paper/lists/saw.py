"""The cut list as the saw wants it: pieces of one stock together, and those of one width."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby

from rodwright.cutting.pieces import Piece
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import Lot
from rodwright.handover.cut_tables import labels_of
from rodwright.handover.cut_words import lot_title
from rodwright.handover.lists import PartsRow, parts_list
from rodwright.lengths import LengthUnit, format_length
from rodwright.unit import Grain, Unit


@dataclass(frozen=True, slots=True)
class SawRow:
    """Pieces that are cut alike: ``length`` along the grain and ``width`` across it, mm, as cut.

    ``then`` is what is done to them afterwards.
    """

    refs: tuple[str, ...]
    name: str
    quantity: int
    length: float
    width: float
    grain: str
    then: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class SawBlock:
    """Pieces of one stock.  ``groups`` have one width each, the widest first, so that the fence is
    set once for all of a group; within it the longest come first."""

    title: str
    groups: tuple[tuple[SawRow, ...], ...]

    @property
    def quantity(self) -> int:
        """How many pieces there are."""
        return sum(row.quantity for group in self.groups for row in group)


def saw_list(unit: Unit, cutting: Cutting | None = None) -> tuple[SawBlock, ...]:
    """What is cut, stock by stock: by a plan's pieces (layers, strips and rows of fronts as they
    are truly cut), or else by the parts list's rough sizes."""
    if cutting is not None:
        return tuple(
            SawBlock(
                lot_title(each.lot, cutting.unit),
                _by_width([_of_piece(each.lot, piece) for piece in each.lot.pieces]),
            )
            for each in cutting.lots
        )
    rows: dict[tuple[str, str, float], list[SawRow]] = {}
    for row in parts_list(unit):
        key = (row.stock, row.material, row.thickness)
        rows.setdefault(key, []).append(_of_part(row))
    return tuple(
        SawBlock(_stock_title(*key, unit.display_unit), _by_width(those))
        for key, those in rows.items()
    )


def saw_data(blocks: Sequence[SawBlock], unit: LengthUnit) -> list[dict[str, object]]:
    """The list as plain data for its template; lengths as texts in ``unit``."""
    return [
        {
            "title": block.title,
            "quantity": block.quantity,
            "groups": [list(_cells(group, unit)) for group in block.groups],
        }
        for block in blocks
    ]


def _cells(group: Sequence[SawRow], unit: LengthUnit) -> Iterator[dict[str, object]]:
    for row in group:
        yield {
            "quantity": row.quantity,
            "refs": ", ".join(row.refs),
            "name": row.name,
            "length": format_length(row.length, unit),
            "width": format_length(row.width, unit),
            "grain": row.grain,
            "then": list(row.then),
        }


def _by_width(rows: Sequence[SawRow]) -> tuple[tuple[SawRow, ...], ...]:
    ordered = sorted(rows, key=lambda row: (-round(row.width, 3), -row.length, row.refs))
    groups = groupby(ordered, key=lambda row: round(row.width, 3))
    return tuple(tuple(group) for _, group in groups)


def _of_piece(lot: Lot, piece: Piece) -> SawRow:
    labels = labels_of(lot, piece)
    notes = [note for note in labels[0].notes if all(note in each.notes for each in labels)]
    if any(len(each.notes) > len(notes) for each in labels):
        notes.append("more on each one's label")
    if piece.inner:
        notes.insert(0, f"then cut into {len(piece.inner)}, in this order")
    return SawRow(
        tuple(each.ref for each in labels),
        "; ".join(dict.fromkeys(each.part for each in labels)),
        piece.count,
        piece.length,
        piece.width or lot.section,
        "either way" if piece.turning else "along",
        tuple(notes),
    )


def _of_part(row: PartsRow) -> SawRow:
    along, across = row.rough_length, row.rough_width
    if row.grain is Grain.CROSSWISE:
        along, across = across, along
    return SawRow(
        row.refs,
        row.name,
        row.quantity,
        along,
        across,
        "either way" if row.grain is Grain.NONE else "along",
        row.notes,
    )


def _stock_title(stock: str, material: str, thickness: float, unit: LengthUnit) -> str:
    return f"{stock}: {material}, {format_length(thickness, unit)} {unit}"
