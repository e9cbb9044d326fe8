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

    units = rodwright.set_out_options(rodwright.read_spec(spec))
    unit = units[0][1]
    if not json:
        show.sizes(unit)
    findings, options = rodwright.check(unit), rodwright.check_options(units)
    if solids:
        with show.progress() as step:
            step(f"building {len(unit.shapes)} solids and looking for collisions")
            findings += rodwright.check_solids(unit)
    if json:
        from rodwright.handover.verbs_json import check_json

        say_json(check_json(unit, findings, options, solids=solids))
    else:
        show.findings(findings, in_full=notes)
        if solids:
            say("Every pair of parts was looked at for collisions.")
        else:
            say("Collisions are looked for when solids are built: add --solids, or build.")
        for name, found in options.items():
            say(f"\nOption {name}, besides:")
            show.findings(found, in_full=notes)
    raise typer.Exit(max(map(show.exit_code, (findings, *options.values()))))
