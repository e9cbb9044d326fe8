"""A list as a table on the terminal, folded where the terminal is narrow, and never cut off.

Figures are never broken.  Where the columns don't fit side by side, texts go below the text to
their left, then what stands over figures is wrapped; as a last resort words are broken, and lines
run past the terminal's edge.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Literal, get_args

from rich.box import SIMPLE_HEAD
from rich.markup import escape
from rich.table import Table
from rich.text import Text

from rodwright_cli.console import PlainConsole

if TYPE_CHECKING:
    from rodwright.handover.told_tables import ToldTable

_GAP = 2
"""Columns of the terminal between those of a list."""
_LEAST = 8
"""Characters that words are broken to, where nothing else helps."""

_Squeezed = Literal["folded", "wrapped", "broken"]
"""What is done to columns that don't fit: texts below others, what stands over figures wrapped, and
words broken."""


@dataclass(slots=True)
class _Column:
    heading: str
    figures: bool
    whole: bool
    cells: list[str] = field(default_factory=list)

    @property
    def texts(self) -> list[str]:
        """The heading and all below it."""
        return [self.heading, *self.cells]

    def below(self, other: _Column) -> _Column:
        """This column with another's texts below its own."""
        both = zip(self.cells, other.cells, strict=True)
        return _Column(
            f"{self.heading}\n{other.heading}",
            figures=False,
            whole=False,
            cells=["\n".join(filter(None, pair)) for pair in both],
        )


class ShownList:
    """A list of text and figures; texts may hold rich's markup."""

    def __init__(self, title: str | None = None) -> None:
        self._title = title
        self._columns: list[_Column] = []

    def texts(self, *headings: str) -> None:
        """Columns of text, wrapped between words."""
        self._columns += [_Column(heading, figures=False, whole=False) for heading in headings]

    def sizes(self, heading: str) -> None:
        """A column of sizes, whose lines are never broken."""
        self._columns.append(_Column(heading, figures=False, whole=True))

    def figures(self, *headings: str) -> None:
        """Columns of figures: to the right, and never broken."""
        self._columns += [_Column(heading, figures=True, whole=True) for heading in headings]

    def row(self, *cells: str) -> None:
        """Add a row with a cell for each column."""
        for column, cell in zip(self._columns, cells, strict=True):
            column.cells.append(cell)

    def show(self) -> None:
        """Print the list after a blank line, if there are any rows."""
        if not self._columns or not self._columns[0].cells:
            return
        console = PlainConsole()
        columns = list(self._columns)
        while _needed(console, columns) > console.width and (at := _last_foldable(columns)):
            left = max(i for i in range(at) if not columns[i].whole)
            columns[left] = columns[left].below(columns.pop(at))
        console.width = max(console.width, _needed(console, columns, "broken"))
        console.print()
        console.print(self._table(console, columns))

    def _table(self, console: PlainConsole, columns: list[_Column]) -> Table:
        table = Table(
            box=SIMPLE_HEAD,
            padding=(0, _GAP - 1, 0, 0),
            pad_edge=False,
            show_edge=False,
            title=self._title,
            title_justify="left",
        )
        widths = _widths(console, columns)
        for column, width in zip(columns, widths, strict=True):
            heading = console.render_str(column.heading)
            table.add_column(
                Text("\n").join(heading.wrap(console, width)) if column.whole else heading,
                justify="right" if column.figures else "left",
                no_wrap=column.whole,
                overflow="fold",
                width=width,
            )
        for cells in zip(*(column.cells for column in columns), strict=True):
            table.add_row(*cells)
        return table


def show_told(told: ToldTable, *, titled: bool = True) -> None:
    """Print a list with its note, if there are any rows, under its title if ``titled``."""
    if not told.rows:
        return
    table = ShownList(told.title if titled else None)
    for heading, kind in told.columns:
        if kind == "size":
            table.sizes(heading)
        elif kind == "figure":
            table.figures(heading)
        else:
            table.texts(heading)
    for cells in told.rows:
        table.row(*map(_lighter, cells))
    table.show()
    if told.note:
        PlainConsole().print(f"\n{escape(told.note)}")


def _lighter(cell: str) -> str:
    """A cell's lines, those after the first dim."""
    first, *more = map(escape, cell.split("\n"))
    return "\n".join([first, *(f"[dim]{line}[/dim]" for line in more)])


def _last_foldable(columns: list[_Column]) -> int:
    """The last column of texts that has another to its left; 0 if there is none."""
    texts = [at for at, column in enumerate(columns) if not column.whole]
    return texts[-1] if len(texts) > 1 else 0


def _needed(console: PlainConsole, columns: list[_Column], how: _Squeezed = "folded") -> int:
    """Characters across the columns at their narrowest."""
    widths = [_least(console, column, how) for column in columns]
    return sum(widths) + _GAP * (len(widths) - 1)


def _widths(console: PlainConsole, columns: list[_Column]) -> list[int]:
    """Characters for each column: all it would take, less what the widest ones can spare."""
    fits = (how for how in get_args(_Squeezed) if _needed(console, columns, how) <= console.width)
    how: _Squeezed = next(fits, "broken")
    least = [_least(console, column, how) for column in columns]
    widths = [max(_lengths(console, column.texts)) for column in columns]
    over = sum(widths) + _GAP * (len(widths) - 1) - console.width
    for _ in range(over):
        spare = [at for at in range(len(widths)) if widths[at] > least[at]]
        widths[max(spare, key=widths.__getitem__)] -= 1
    return widths


def _least(console: PlainConsole, column: _Column, how: _Squeezed) -> int:
    """Characters that a column has to have: its lines, its words, or little where these may be
    broken; over figures its lines, or its words where these may be wrapped."""
    words = max(_lengths(console, column.texts, by_words=True))
    if not column.whole:
        return min(words, _LEAST) if how == "broken" else words
    heading = _lengths(console, [column.heading], by_words=how != "folded")
    return max(*heading, *_lengths(console, column.cells))


def _lengths(console: PlainConsole, texts: Sequence[str], *, by_words: bool = False) -> list[int]:
    """Characters of every line of some texts, or of every word."""
    lines = [
        line for text in texts for line in console.render_str(text).split("\n", allow_blank=True)
    ]
    if by_words:
        return [word.cell_len for line in lines for word in line.split(" ", allow_blank=True)]
    return [line.cell_len for line in lines]
