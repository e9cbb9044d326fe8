"""`rodwright check`: sizes and findings."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.console import say
from rodwright_cli.json_out import Json, say_json


def check(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    solids: Annotated[
        bool, typer.Option("--solids", help="Build the solids too, and look for collisions.")
    ] = False,
    notes: Annotated[
        bool, typer.Option("--notes", help="Give the usual cautions in full.")
    ] = False,
    json: Json = False,
) -> None:
    """Show sizes and findings; write nothing.  Leaves with 1 when something must be mended."""
    import rodwright
    from rodwright_cli import show

    (_, unit), *_ = rodwright.set_out_options(rodwright.read_spec(spec))
    if not json:
        show.sizes(unit)
    findings = rodwright.check(unit)
    if solids:
        with show.progress() as step:
            step(f"building {len(unit.shapes)} solids and looking for collisions")
            findings += rodwright.check_solids(unit)
    if json:
        from rodwright.handover.verbs_json import check_json

        say_json(check_json(unit, findings, solids=solids))
    else:
        show.findings(findings, in_full=notes)
        if solids:
            say("Every pair of parts was looked at for collisions.")
        else:
            say("Collisions are looked for when solids are built: add --solids, or build.")
    raise typer.Exit(show.exit_code(findings))
