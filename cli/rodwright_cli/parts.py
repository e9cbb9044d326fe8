"""`rodwright parts`: the parts list on the terminal."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.json_out import Json, say_json


def parts(spec: Annotated[Path, typer.Argument(help="The spec file.")], json: Json = False) -> None:
    """Show the parts list."""
    import rodwright
    from rodwright_cli import show

    unit = rodwright.set_out(rodwright.read_spec(spec))
    findings = rodwright.check(unit)
    if json:
        from rodwright.handover.lists_json import parts_json

        grave = [each for each in findings if each.severity is rodwright.Severity.ERROR]
        say_json(parts_json(unit, errors=grave))
        return
    show.parts(unit)
    show.errors(findings)
