"""Sheets of self-adhesive labels as stationers sell them; mm.

Common practice, no source: sizes, counts and margins are from memory, and a test print on plain
paper, held against the sheet, tells whether they are those of the sheets at hand.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.lengths import from_inches

Paper = Literal["a4", "letter"]


@dataclass(frozen=True, slots=True)
class LabelSheet:
    """A sheet of equal labels: ``across`` by ``down`` of them, each ``width`` by ``height``.

    ``left`` and ``top`` are from the paper's edges to the first label, ``pitch_across`` and
    ``pitch_down`` from one label's edge to the next one's.
    """

    name: str
    paper: Paper
    across: int
    down: int
    width: float
    height: float
    left: float
    top: float
    pitch_across: float
    pitch_down: float

    @property
    def count(self) -> int:
        """Labels to a sheet."""
        return self.across * self.down


def _inches(text: str) -> float:
    return from_inches(text)


LABEL_SHEETS: tuple[LabelSheet, ...] = (
    LabelSheet("99.1 x 57", "a4", 2, 5, 99.1, 57.0, 4.65, 6.0, 101.6, 57.0),
    LabelSheet("99.1 x 38.1", "a4", 2, 7, 99.1, 38.1, 4.65, 15.15, 101.6, 38.1),
    LabelSheet("63.5 x 38.1", "a4", 3, 7, 63.5, 38.1, 7.25, 15.15, 66.0, 38.1),
    LabelSheet("70 x 37", "a4", 3, 8, 70.0, 37.0, 0.0, 0.5, 70.0, 37.0),
    LabelSheet(
        "4 x 2", "letter", 2, 5, _inches("4"), _inches("2"),
        _inches("5/32"), _inches("1/2"), _inches("4 3/16"), _inches("2"),
    ),
    LabelSheet(
        "2 5/8 x 1", "letter", 3, 10, _inches("2 5/8"), _inches("1"),
        _inches("3/16"), _inches("1/2"), _inches("2 3/4"), _inches("1"),
    ),
)  # fmt: skip
"""Every sheet that is known, the usual one of each paper first; named by width and height of a
label, in mm for A4 and in inches for Letter (common practice, no source)."""


def label_sheet(paper: Paper, name: str | None = None) -> LabelSheet:
    """The sheet of a paper by its name, or the usual one.

    Raises:
        KeyError: there is none of that name.
    """
    those = {each.name: each for each in LABEL_SHEETS if each.paper == paper}
    return next(iter(those.values())) if name is None else those[name]
