"""Tables of a page, made of those that other verbs show."""

from __future__ import annotations

from rodwright.handover.told_tables import ToldTable
from rodwright.page import document as page


def told(table: ToldTable) -> page.Table:
    """The same table."""
    return page.Table(
        table.title,
        tuple(heading for heading, _ in table.columns),
        tuple(kind == "figure" for _, kind in table.columns),
        table.rows,
        table.refs,
        table.note,
    )
