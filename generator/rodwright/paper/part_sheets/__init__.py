"""A sheet for each distinct part: sizes, datum, every working with its figures, order of work."""

from rodwright.paper.part_sheets.files import sheets_json
from rodwright.paper.part_sheets.sheets import PartSheet, part_sheets

__all__ = ["PartSheet", "part_sheets", "sheets_json"]
