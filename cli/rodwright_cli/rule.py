"""`rodwright rule`: what a finding means."""

from __future__ import annotations

from typing import Annotated

import typer


def rule(
    name: Annotated[
        str | None,
        typer.Argument(help="A rule's name, or part of it; leave it out to list them all."),
    ] = None,
) -> None:
    """Say what a finding's rule means, where its figures come from, and what to do."""
    from rodwright.jobs.rule import meaning_of, rule_called, rules
    from rodwright_cli import show_rule

    if name is None:
        show_rule.listed(rules())
    else:
        found = rule_called(name)
        show_rule.whole(found, meaning_of(found))
