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
        typer.Option("--of", metavar="REF", help="Only what concerns this part, in full."),
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
    from rodwright.jobs.strength import breaks, results_about

    unit = rodwright.set_out(rodwright.read_spec(spec))
    if model:
        _show_model(unit, json=json)
        return
    results = rodwright.strength_of(unit)
    if of is not None:
        results = results_about(unit, results, of)
    broken = breaks(unit, of)
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
