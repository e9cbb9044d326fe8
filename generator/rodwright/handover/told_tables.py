"""The lists as tables of text, as a terminal and a page show them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from rodwright.amounts import AREAS, RUNS, VOLUMES, WEIGHTS
from rodwright.handover.edge_list import edge_list
from rodwright.handover.lists import PartsRow, articles, hardware_list, parts_list
from rodwright.handover.totals import StockTotal, stock_totals
from rodwright.lengths import LengthUnit, format_length
from rodwright.mass import unit_weight
from rodwright.unit import Unit

ColumnKind = Literal["text", "size", "figure"]
"""Text is wrapped between words, sizes are never broken, nor figures, which stand to the right."""


@dataclass(frozen=True, slots=True)
class ToldTable:
    """A list: its ``columns`` by their headings and kinds, its rows, and what is said below it.

    ``refs`` are the parts that each row is of, by their refs.  Lines of a cell after its first are
    of less weight.
    """

    title: str
    columns: tuple[tuple[str, ColumnKind], ...]
    rows: tuple[tuple[str, ...], ...]
    refs: tuple[tuple[str, ...], ...]
    note: str = ""


def size_said(lengths: Sequence[float], unit: LengthUnit) -> str:
    """Lengths (mm) one after the other, in ``unit`` without naming it: ``600 x 300 x 18``."""
    return " x ".join(format_length(each, unit) for each in lengths)


def edges_said(row: PartsRow) -> str:
    """Which edges of a row's pieces are lipped or edged; empty where none is."""
    names = "all four edges" if len(row.edged) == 4 else ", ".join(row.edged)
    edged = [f"edging on {names}"] if row.edged else []
    return "; ".join([*(f"{edge} lipped" for edge in row.lipped), *edged])


def parts_table(unit: Unit) -> ToldTable:
    """The parts list, with finished sizes."""
    shown = unit.display_unit
    weights, rows = WEIGHTS[shown], parts_list(unit)
    edges = [edges_said(row) for row in rows]
    edged = any(edges)
    return ToldTable(
        "Parts",
        (
            ("part", "text"),
            ("name", "text"),
            ("no.", "figure"),
            (f"size ({shown})", "size"),
            ("stock", "text"),
            *((("edges", "text"),) if edged else ()),
            (f"{weights.symbol} each", "figure"),
            (f"{weights.symbol} all", "figure"),
        ),
        tuple(
            (
                ", ".join(row.refs),
                row.name,
                str(row.quantity),
                _piece(row, shown),
                row.stock,
                *((edge,) if edged else ()),
                f"{weights.of(row.weight_each):.2f}",
                f"{weights.of(row.weight):.2f}",
            )
            for row, edge in zip(rows, edges, strict=True)
        ),
        tuple(row.refs for row in rows),
        f"{len(unit.parts)} parts, {weights.said(unit_weight(unit))}; finished sizes, "
        "length x width x thickness.",
    )


def stock_table(unit: Unit) -> ToldTable:
    """What the unit takes of each stock."""
    shown = unit.display_unit
    weights, totals = WEIGHTS[shown], stock_totals(unit)
    return ToldTable(
        "Stock",
        (
            ("stock", "text"),
            ("material", "text"),
            ("parts", "figure"),
            ("takes", "figure"),
            (f"{weights.symbol} all", "figure"),
        ),
        tuple(
            (
                each.stock.name,
                f"{each.stock.described}, {format_length(each.stock.thickness, shown)} {shown}",
                str(each.parts),
                _takes(each, shown),
                f"{weights.of(each.weight):.1f}",
            )
            for each in totals
        ),
        tuple(
            tuple(part.ref for part in unit.parts if part.blank.stock == each.stock)
            for each in totals
        ),
        "Stock as first cut, without saw cuts and offcuts; weights finished.",
    )


def finish_table(unit: Unit) -> ToldTable:
    """What parts are finished with; no rows where nothing is said of any."""
    refs: dict[str, tuple[str, ...]] = {}
    for row in parts_list(unit):
        finish = row.finish or "none"
        refs[finish] = refs.get(finish, ()) + row.refs
    told = {} if list(refs) == ["none"] else refs
    return ToldTable(
        "Finish",
        (("finish", "text"), ("parts", "text")),
        tuple((finish, ", ".join(on)) for finish, on in told.items()),
        tuple(told.values()),
    )


def hardware_table(unit: Unit) -> ToldTable:
    """What is bought to hold it together, and what it is hung and stood on."""
    needed = articles(unit).values()
    return ToldTable(
        "Hardware",
        (
            ("hardware", "text"),
            ("size", "text"),
            ("no.", "figure"),
            ("holes", "text"),
            ("for", "text"),
        ),
        tuple(
            (
                row.name,
                row.size,
                str(row.quantity),
                "; ".join(row.holes),
                "; ".join(row.uses),
            )
            for row in hardware_list(unit)
        ),
        tuple(
            tuple(
                dict.fromkeys(
                    ref
                    for _, joint in pieces
                    if joint is not None
                    for ref in (joint.first, joint.second)
                )
            )
            for pieces in needed
        ),
    )


def edges_table(unit: Unit) -> ToldTable:
    """Lippings and edging, in metres or feet."""
    shown = unit.display_unit
    runs, rows = RUNS[shown], edge_list(unit)
    name = "Metres" if shown == "mm" else "Feet"
    return ToldTable(
        "Edges",
        (
            ("kind", "text"),
            ("material", "text"),
            (f"section ({shown})", "size"),
            ("strips", "figure"),
            (f"net {runs.symbol}", "figure"),
            (f"to get {runs.symbol}", "figure"),
        ),
        tuple(
            (
                row.kind,
                row.material,
                size_said((row.width, row.thickness), shown),
                str(row.strips),
                f"{runs.of(row.net):.2f}",
                f"{row.run_to_get(runs):.1f}",
            )
            for row in rows
        ),
        tuple(row.refs for row in rows),
        f"{name} to get are a tenth more, for trimming." if rows else "",
    )


def _piece(row: PartsRow, unit: LengthUnit) -> str:
    """The finished size, and below it what to cut where edging is glued on after."""
    finished = size_said((row.length, row.width, row.thickness), unit)
    if not row.edged:
        return finished
    return f"{finished}\ncut {size_said((row.rough_length, row.rough_width), unit)}"


def _takes(total: StockTotal, unit: LengthUnit) -> str:
    """Sheets are told by their area, boards by their run and volume."""
    if total.stock.kind == "sheet":
        return AREAS[unit].said(total.area)
    return f"{RUNS[unit].said(total.metres)}, {VOLUMES[unit].said(total.volume)}"
