"""Tables of a page, made of those that other verbs show."""

from __future__ import annotations

from rodwright.handover.told_tables import ToldTable
from rodwright.page import document as page


def told(table: ToldTable) -> page.Table:
    """The same table; sizes and figures are never broken between their words."""
    kinds = [kind for _, kind in table.columns]
    return page.Table(
        table.title,
        tuple(heading for heading, _ in table.columns),
        tuple(kind == "figure" for kind in kinds),
        tuple(
            tuple(
                cell if kind == "text" else unbroken(cell)
                for cell, kind in zip(row, kinds, strict=True)
            )
            for row in table.rows
        ),
        table.refs,
        table.note,
    )


def unbroken(text: str) -> str:
    """A text whose lines are never broken between words."""
    return text.replace(" ", "\u00a0")
