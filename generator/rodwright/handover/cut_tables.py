"""The lists of a cutting plan as tables: pieces, offcuts, what to buy, and what labels say."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.cutting.flaws import flaws_said
from rodwright.cutting.offcuts import Kept
from rodwright.cutting.pieces import Piece
from rodwright.cutting.pricing import offer_of
from rodwright.cutting.shopping import ShoppingRow, paid, shopping_rows, without_price
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import Label, Lot
from rodwright.handover.cut_words import lot_title, noun, thicknesses_said
from rodwright.handover.tables import Cell, Column, length_cell, length_column
from rodwright.lengths import LengthUnit


@dataclass(frozen=True, slots=True)
class Table:
    """A list: what it is called, its columns, and a row of cells for each record."""

    name: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[Cell, ...], ...]


def pieces_table(cutting: Cutting) -> Table:
    """What is cut, by lots: pieces that are cut alike in a row."""
    unit = cutting.unit
    columns = (
        Column("material", widest=30),
        Column("pieces", widest=30),
        Column("part", widest=30),
        Column("quantity", 0),
        length_column("cut length", unit),
        length_column("cut width", unit),
        length_column("thickness", unit),
        Column("grain"),
        length_column("finished length", unit),
        length_column("finished width", unit),
        Column("then", widest=50),
    )
    rows = (
        _piece_cells(planned.lot, piece, unit)
        for planned in cutting.lots
        for piece in planned.lot.pieces
    )
    return Table("Pieces", columns, tuple(rows))


def _piece_cells(lot: Lot, piece: Piece, unit: LengthUnit) -> tuple[Cell, ...]:
    labels = labels_of(lot, piece)
    first = labels[0]
    finished = first.finished if len({each.finished for each in labels}) == 1 else None
    return (
        lot_title(lot, unit),
        ", ".join(each.ref for each in labels),
        "; ".join(dict.fromkeys(each.part for each in labels)),
        piece.count,
        length_cell(piece.length, unit),
        length_cell(piece.width or lot.section, unit),
        length_cell(lot.thickness, unit),
        "either way" if piece.turning else "along its length",
        "" if finished is None else length_cell(finished[0], unit),
        "" if finished is None else length_cell(finished[1], unit),
        "\n".join(dict.fromkeys(note for each in labels for note in each.notes)),
    )


def labels_of(lot: Lot, piece: Piece) -> tuple[Label, ...]:
    """The labels of all pieces that are cut alike: of what is inside, where one is divided."""
    if piece.inner:
        return tuple(label for each in piece.inner for label in lot.labels[each.name])
    return lot.labels[piece.name]


def offcuts_table(cutting: Cutting) -> Table:
    """The offcuts that are kept, by the names that are written on them."""
    unit = cutting.unit
    columns = (
        Column("name"),
        Column("material", widest=30),
        length_column("length", unit),
        length_column("width", unit),
        length_column("thickness", unit),
        Column("left of", widest=30),
        Column("note", widest=40),
    )
    rows = []
    for kept in cutting.kept:
        planned = cutting.lots[kept.lot]
        lot, layout = planned.lot, planned.plan.layouts[kept.layout]
        rows.append(
            (
                kept.name,
                lot.material,
                length_cell(kept.offcut.length, unit),
                length_cell(kept.offcut.width or lot.section, unit),
                length_cell(lot.thickness, unit),
                f"{noun(lot)} {kept.layout + 1}, {layout.stock}",
                flaws_said(kept.flaws),
            )
        )
    return Table("Offcuts", columns, tuple(rows))


def shopping_table(cutting: Cutting) -> Table:
    """What is bought and what is taken from what is at hand, and the sum as far as it is known."""
    unit, rows = cutting.unit, shopping_rows(cutting)
    columns = (
        Column("from"),
        Column("material", widest=30),
        length_column("thickness", unit),
        Column("name", widest=30),
        length_column("length", unit),
        length_column("width", unit),
        Column("quantity", 0),
        Column("each", 2),
        Column("sum", 2),
        Column("note", widest=40),
    )
    cells = [_shopping_cells(cutting, each) for each in rows]
    known = "" if without_price(rows) and not paid(rows) else round(paid(rows), 2)
    notes = ["hardware isn't in it", *(["nor what has no price"] if without_price(rows) else [])]
    total: tuple[Cell, ...] = (
        *("total", "", "", "without tax", "", "", "", "", known, ", ".join(notes)),
    )
    return Table("Shopping", columns, (*cells, total))


def _shopping_cells(cutting: Cutting, row: ShoppingRow) -> tuple[Cell, ...]:
    lot, offer, unit = cutting.lots[row.lot].lot, row.offer, cutting.unit
    return (
        "at hand" if offer.at_hand else "to buy",
        lot.material,
        length_cell(lot.thickness if lot.kind == "length" else offer.lies, unit),
        offer.supply.name,
        length_cell(offer.supply.length, unit),
        length_cell(offer.supply.width or lot.section, unit),
        row.count,
        "" if row.each is None else round(row.each, 2),
        "" if row.sum is None else round(row.sum, 2),
        "; ".join(_shopping_notes(lot, row, unit)),
    )


def _shopping_notes(lot: Lot, row: ShoppingRow, unit: LengthUnit) -> Iterator[str]:
    offer = row.offer
    if both := thicknesses_said(lot, offer, unit):
        yield both
    if not offer.at_hand and row.each is None:
        yield "no price is known: not in the sum"
    if offer.assumed:
        yield "a usual size, assumed"
    if offer.where:
        yield offer.where
    if offer.turned:
        yield "its grain runs across its first size: the length here is along the grain"


def labels_table(rows: Sequence[tuple[str, Sequence[str]]]) -> Table:
    """What each label says: the name that is written large, and the lines below it."""
    columns = (Column("name"), Column("label", widest=60))
    return Table("Labels", columns, tuple((name, "\n".join(lines)) for name, lines in rows))


def label_rows(cutting: Cutting) -> Iterator[tuple[str, tuple[str, ...]]]:
    """A label for each piece and each offcut that is kept: its name, and the lines below it."""
    for planned in cutting.lots:
        for piece in planned.lot.pieces:
            for label in labels_of(planned.lot, piece):
                yield label.ref, tuple(_label_lines(cutting, planned.lot, label))
    for kept in cutting.kept:
        lot = cutting.lots[kept.lot].lot
        layout = cutting.lots[kept.lot].plan.layouts[kept.layout]
        offer = offer_of(lot, layout.stock)
        size = (kept.offcut.length, kept.offcut.width or lot.section, offer.lies)
        yield kept.name, tuple(_offcut_lines(cutting, lot, kept, size))


def _offcut_lines(cutting: Cutting, lot: Lot, kept: Kept, size: Sequence[float]) -> Iterator[str]:
    yield _said(size, cutting.unit)
    yield lot.material
    yield "offcut: length along the grain"
    if kept.flaws:
        yield flaws_said(kept.flaws)


def _label_lines(cutting: Cutting, lot: Lot, label: Label) -> Iterator[str]:
    yield f"{label.part}, {label.job}"
    yield f"{_said(label.finished, cutting.unit)} finished, {lot.material}"
    yield from label.notes


def _said(size: Sequence[float], unit: LengthUnit) -> str:
    from rodwright.lengths import format_length

    return f"{' x '.join(format_length(each, unit) for each in size)} {unit}"
