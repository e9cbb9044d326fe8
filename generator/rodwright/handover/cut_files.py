"""The files of a cutting plan: a row for each, in the order in which they are written."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from rodwright.cutting.steps import LotSteps
from rodwright.cutting.whole import Cutting
from rodwright.handover.cut_json import cut_json
from rodwright.handover.cut_sequence import (
    crosscut_table,
    cuts_table,
    rip_table,
    sequence_text,
    steps_of,
)
from rodwright.handover.cut_tables import (
    Table,
    label_rows,
    labels_table,
    offcuts_table,
    pieces_table,
    shopping_table,
)
from rodwright.handover.names import slug
from rodwright.handover.tables import csv_bytes, fill_sheet, new_workbook, workbook_bytes

FOLDER = "cut"
"""Where all files but ``cut.json`` lie."""
CUT_FILES = re.compile(rf"cut\.json|{FOLDER}/[a-z0-9-]+\.(?:csv|xlsx|md|svg|png)")
"""The names that files of a plan have."""
_PIXELS_PER_MM = 6.0
_LONGEST = 40
"""Letters of a lot's name in those of its files."""


@dataclass(frozen=True, slots=True)
class CutContent:
    """What the files are made from: a plan, and its cuts in their order."""

    cutting: Cutting
    steps: tuple[LotSteps, ...]


def write_cut_files(cutting: Cutting, folder: Path, progress: Callable[[str], object]) -> None:
    """Write every file of a plan into a folder; ``progress`` is told what takes long.

    Raises:
        OSError: a file can't be written.
        ValueError: the cuts of a sheet can't be told.
    """
    content = CutContent(cutting, steps_of(cutting))
    (folder / FOLDER).mkdir()
    (folder / "cut.json").write_bytes(cut_json(cutting, content.steps))
    for name, table in _LISTS.items():
        found = table(content)
        if found.rows:
            (folder / FOLDER / f"{name}.csv").write_bytes(csv_bytes(found.columns, found.rows))
    text = sequence_text(cutting, content.steps)
    (folder / FOLDER / "sequence.md").write_text(text, encoding="utf-8", newline="\n")
    (folder / FOLDER / "cutting.xlsx").write_bytes(_workbook(content))
    progress("drawing sheets and boards")
    _write_pictures(content, folder / FOLDER)
    progress("drawing labels")
    _write_labels(content, folder / FOLDER)


def _write_pictures(content: CutContent, folder: Path) -> None:
    """Pages of sheets and boards, those of each lot by its number and name."""
    from rodwright.pictures.cutting import cutting_pictures

    for number, steps in enumerate(content.steps, start=1):
        name = "-".join(filter(None, (f"plan-{number}", slug(steps.lot.name, _LONGEST).lower())))
        for file, data in cutting_pictures(steps, content.cutting.unit, name).items():
            (folder / file).write_bytes(data)


_LISTS: dict[str, Callable[[CutContent], Table]] = {
    "pieces": lambda content: pieces_table(content.cutting),
    "cuts": lambda content: cuts_table(content.steps, content.cutting.unit),
    "rip-fence": lambda content: rip_table(content.steps, content.cutting.unit),
    "chop-saw": lambda content: crosscut_table(content.steps, content.cutting.unit),
    "offcuts": lambda content: offcuts_table(content.cutting),
    "shopping": lambda content: shopping_table(content.cutting),
    "labels": lambda content: labels_table(list(label_rows(content.cutting))),
}
"""The lists by the names of their files; one without rows isn't written."""


def _workbook(content: CutContent) -> bytes:
    """All lists but the labels, a sheet each."""
    unit = content.cutting.unit
    book = new_workbook("; ".join(job.title for job in content.cutting.jobs))
    sheets: list[Any] = []
    for name, table in _LISTS.items():
        found = table(content)
        if name != "labels" and found.rows:
            sheets.append(book.create_sheet() if sheets else book.active)
            fill_sheet(sheets[-1], found.name, found.columns, found.rows, unit)
    return workbook_bytes(book)


def _write_labels(content: CutContent, folder: Path) -> None:
    # Pictures bring much along that lists have no use for.
    from rodwright.pictures.cut_labels import LabelText, label_pages
    from rodwright.pictures.files import write_drawing

    cutting = content.cutting
    labels: Sequence[LabelText] = [LabelText(*each) for each in label_rows(cutting)]
    title = "; ".join(job.title for job in cutting.jobs)
    for number, page in enumerate(label_pages(labels, cutting.unit, title), start=1):
        write_drawing(page, folder, f"labels-{number}", per_unit=_PIXELS_PER_MM)
