"""`rodwright rule`: what a finding means."""

from __future__ import annotations

from typing import Annotated

import typer

from rodwright_cli.json_out import Json, say_json


def rule(
    name: Annotated[
        str | None,
        typer.Argument(help="A rule's name, or part of it; leave it out to list them all."),
    ] = None,
    json: Json = False,
) -> None:
    """Say what a finding's rule means, where its figures come from, and what to do."""
    from rodwright.jobs.rule import meaning_of, rule_called, rules
    from rodwright_cli import show_rule

    found = None if name is None else rule_called(name)
    if json:
        from rodwright.handover.verbs_json import rules_json

        say_json(rules_json(rules() if found is None else {found: meaning_of(found)}))
    elif found is None:
        show_rule.listed(rules())
    else:
        show_rule.whole(found, meaning_of(found))
