"""`rodwright strength`: will it hold, will it stand?"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from rodwright_cli.json_out import Json, say_json

if TYPE_CHECKING:
    import rodwright


def strength(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    of: Annotated[
        str | None,
        typer.Option(
            "--of",
            metavar="WHAT",
            help="Only this, in full: parts (`SH3`, `SH1-SH5`), or what the table calls it "
            "(`carcass`, `the unit`).",
        ),
    ] = None,
    formulas: Annotated[
        bool, typer.Option("--formulas", help="Give formula, inputs and sources of each figure.")
    ] = False,
    model: Annotated[
        bool,
        typer.Option("--model", help="The whole unit by finite elements, beside the formulas."),
    ] = False,
    json: Json = False,
) -> None:
    """Show how far shelves sag, what breaks, comes off, tips or is too heavy: figure, limit, spare.
    Leaves with 1 when something breaks, as `check` does."""
    import rodwright
    from rodwright.jobs.strength import about, breaks

    unit = rodwright.set_out(rodwright.read_spec(spec))
    if model:
        _show_model(unit, json=json)
        return
    results, refs = rodwright.strength_of(unit), None
    if of is not None:
        asked = about(unit, results, of)
        results, refs = asked.results, asked.refs
    broken = breaks(unit, refs)
    if json:
        from rodwright.handover.strength_json import strength_json

        say_json(strength_json(unit, results, breaks=broken))
    else:
        from rodwright_cli import show_strength

        show_strength.strength(unit, results, in_full=formulas or of is not None)
    raise typer.Exit(int(broken))


def _show_model(unit: rodwright.Unit, *, json: bool) -> None:
    from rodwright.jobs.strength import modelled

    found = modelled(unit)
    if json:
        from rodwright.handover.model_json import model_json

        say_json(model_json(unit, found))
    else:
        from rodwright_cli import show_model

        show_model.model(unit, found)
