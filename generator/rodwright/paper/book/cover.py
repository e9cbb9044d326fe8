"""The cover: what it is, for whom, how large and how heavy, of what; and whether it may be cut."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from rodwright.amounts import AREAS, RUNS, format_weight
from rodwright.checks.findings import Finding, Severity
from rodwright.handover.totals import StockTotal, stock_totals
from rodwright.lengths import format_length
from rodwright.mass import unit_weight
from rodwright.unit import Unit
from rodwright.unit.facts import size_as_fitted

_PICTURE = "cover/assembled.jpg"


def cover_data(
    unit: Unit, findings: Sequence[Finding], picture: bytes, notes: Sequence[str] = ()
) -> tuple[dict[str, Any], dict[str, bytes]]:
    """Data for the cover's template and the picture that it names.

    The facts are pairs of a word and what is to be said; those that nobody gave are left out.
    ``notes`` are what has to be known of the book itself.
    """
    data = {
        "title": unit.title,
        "banner": _banner(findings),
        "facts": [[word, said] for word, said in _facts(unit) if said],
        "stock": [list(_stock(total, unit)) for total in stock_totals(unit)],
        "picture": _PICTURE,
        "notes": list(notes),
    }
    return data, {_PICTURE: picture}


def _banner(findings: Sequence[Finding]) -> str:
    """The words across the cover of what must be mended first."""
    errors = sum(each.severity is Severity.ERROR for each in findings)
    if not errors:
        return ""
    return f"Not to be cut: {errors} {'error' if errors == 1 else 'errors'}"


def _facts(unit: Unit) -> Iterator[tuple[str, str]]:
    shown = unit.display_unit
    yield "Designed by", ", ".join(filter(None, (unit.author, unit.organisation)))
    yield "Approved by", unit.approved_by
    yield "Number", unit.number
    yield "Revision", unit.revision
    yield "Date", unit.date
    overall, made = (_size(unit, each) for each in (size_as_fitted(unit), unit.size))
    yield "Overall", f"{overall} (width x height x depth)"
    if made != overall:
        yield "Made", f"{made}, before it is scribed to the walls"
    if unit.opening is not None:
        yield "Opening", f"{_size(unit, unit.opening.as_read)}, as read at its tightest"
    yield "Weight", format_weight(unit_weight(unit), shown)
    yield "Parts", f"{len(unit.parts)}, of {len(unit.shapes)} shapes"


def _size(unit: Unit, lengths: Sequence[float]) -> str:
    shown = unit.display_unit
    return f"{' x '.join(format_length(each, shown) for each in lengths)} {shown}"


def _stock(total: StockTotal, unit: Unit) -> Iterator[str]:
    shown = unit.display_unit
    yield total.stock.name
    yield f"{total.stock.described}, {format_length(total.stock.thickness, shown)} {shown}"
    yield (
        AREAS[shown].said(total.area)
        if total.stock.kind == "sheet"
        else RUNS[shown].said(total.metres)
    )
