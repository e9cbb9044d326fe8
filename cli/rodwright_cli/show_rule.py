"""How rules are shown: one with its paragraph, or all in a list."""

from __future__ import annotations

from collections.abc import Mapping

from rich.markup import escape
from rich.padding import Padding
from rich.table import Table

from rodwright.checks.meanings import Meaning
from rodwright.checks.rules import Rule
from rodwright_cli.console import PlainConsole


def whole(rule: Rule, meaning: Meaning) -> None:
    """One rule: what it means, whom it can hurt, where its figures come from, what to do."""
    console = PlainConsole()
    console.print(f"[bold]{rule}[/bold]  {escape(meaning.title)}\n")
    for heading, text in meaning.paragraphs:
        said = f"[bold]{heading}[/bold]: {escape(text)}" if heading else escape(text)
        console.print(Padding(said, (0, 0, 0, 2)))


def listed(rules: Mapping[Rule, Meaning]) -> None:
    """Every rule in a line or two."""
    grid = Table.grid(padding=(0, 2, 0, 0))
    grid.add_column(no_wrap=True)
    for rule, meaning in rules.items():
        grid.add_row(rule, escape(meaning.title))
    console = PlainConsole()
    console.print(grid)
    console.print("\n`rodwright rule NAME` says more of one.")
