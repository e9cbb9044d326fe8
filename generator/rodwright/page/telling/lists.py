"""The lists of a unit: the same rows as `parts` and the CSV files have."""

from __future__ import annotations

from rodwright.handover.told_tables import (
    edges_table,
    finish_table,
    hardware_table,
    parts_table,
    stock_table,
)
from rodwright.page import document as page
from rodwright.page.telling.tables import told
from rodwright.unit import Unit


def lists_told(unit: Unit) -> page.Sheet:
    """Parts, stock, finish, hardware and edges, as far as there are any."""
    tables = (
        of(unit) for of in (parts_table, stock_table, finish_table, hardware_table, edges_table)
    )
    return page.Sheet(tables=tuple(told(each) for each in tables if each.rows))
