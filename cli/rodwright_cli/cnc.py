"""`rodwright cnc`: the pack for a CNC shop, as one zip."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.json_out import Json, say_json


def cnc(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    out: Annotated[
        Path, typer.Option("-o", "--out", help="Folder for cnc.zip; made if it isn't there.")
    ],
    rack: Annotated[
        Path | None,
        typer.Option(help="Your rack file: what is at hand, what you buy, what you cut with."),
    ] = None,
    tool: Annotated[
        str | None,
        typer.Option(
            help='Diameter of the cutter that sheets are nested for: `"6 mm"`, `"1/4 in"`; the '
            "rack's router unless said."
        ),
    ] = None,
    json: Json = False,
) -> None:
    """Write the pack for a CNC shop: parts as DXF and STEP, nested sheets, a page that tells it
    all.  Leaves with 1 on an error finding or where no sheets can be nested."""
    import rodwright
    from rodwright.jobs.rack import read_rack
    from rodwright_cli import show

    at_hand = None if rack is None else read_rack(rack)
    with show.progress() as step:
        made = rodwright.cnc_pack(
            rodwright.read_spec(spec), out, rack=at_hand, tool=tool, progress=step
        )
    if json:
        from rodwright.handover.verbs_json import build_json

        say_json(build_json(made.unit, made.folder, made.files, made.findings))
    else:
        show.sizes(made.unit)
        show.packed(made)
        show.errors(made.findings)
    raise typer.Exit(int(bool(show.exit_code(made.findings) or made.no_plan)))
