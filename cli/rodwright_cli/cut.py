"""`rodwright cut`: what to buy and how to cut it."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.json_out import Json, say_json


class FirstCut(StrEnum):
    """The direction of a sheet's first cut."""

    ALONG = "along"
    ACROSS = "across"


def cut(  # noqa: PLR0913, PLR0917  # an option each
    specs: Annotated[
        list[Path], typer.Argument(metavar="SPEC...", help="One or more spec files, cut together.")
    ],
    rack: Annotated[
        Path | None,
        typer.Option(help="Your rack file: what is at hand, what you buy, what you cut with."),
    ] = None,
    out: Annotated[
        Path | None,
        typer.Option(
            "-o", "--out", help="Folder for plan, pictures and lists; none are written without."
        ),
    ] = None,
    saw: Annotated[
        str | None,
        typer.Option(help="`table saw`, `track saw` or `panel saw`; the rack's first unless said."),
    ] = None,
    kerf: Annotated[
        str | None,
        typer.Option(help='Width of the cut: `"3.2 mm"`, `"1/8 in"`; the saw\'s unless said.'),
    ] = None,
    first_cut: Annotated[
        FirstCut | None,
        typer.Option(
            help="First cut of a sheet along its length or across it; as it comes unless said."
        ),
    ] = None,
    stages: Annotated[
        int | None,
        typer.Option(
            min=2,
            max=9,
            help="How often the direction of cuts may change on a sheet, with a last cut to size "
            "beside: 2 or 3 suit a panel saw.",
        ),
    ] = None,
    head_cut: Annotated[
        bool,
        typer.Option("--head-cut", help="Allow one cut straight across before these stages."),
    ] = False,
    free: Annotated[
        bool, typer.Option("--free", help="Sheets are cut by a router: not only from edge to edge.")
    ] = False,
    seconds: Annotated[
        float | None,
        typer.Option(min=0, help="Stop searching then, with the best found (so does Ctrl-C)."),
    ] = None,
    seed: Annotated[
        int, typer.Option(help="Another seed may find another plan; the same gives the same.")
    ] = 0,
    json: Json = False,
) -> None:
    """Show what to buy and how to cut it, with proof of how good the plan is; -o writes it all.
    Leaves with 1 when something must be mended first, or a piece found no place."""
    import rodwright
    from rodwright.handover.cut_sequence import steps_of
    from rodwright.jobs.cut import Asked, Watch, must_be_mended, refuse_early
    from rodwright.jobs.rack import read_rack
    from rodwright_cli import show, show_cut
    from rodwright_cli.interrupts import first_stops

    files = [rodwright.read_spec(each) for each in specs]
    at_hand = None if rack is None else read_rack(rack)
    asked = Asked(saw, kerf, free, None if first_cut is None else first_cut.value, stages, head_cut)
    if out is not None:
        refuse_early(out)
    with show_cut.searching() as told:
        watch = Watch(seconds, told)
        with first_stops(watch.stop):
            plan = rodwright.cut(files, rack=at_hand, asked=asked, seed=seed, watch=watch)
    written: tuple[str, ...] = ()
    if out is not None:
        with show.progress() as step:
            written = rodwright.write_cut(plan, out, step)
    steps, errors = steps_of(plan), must_be_mended(files)
    if json:
        from rodwright.handover.cut_json import cut_json

        say_json(cut_json(plan, steps, errors))
    else:
        show_cut.cutting(plan, steps)
        if out is None:
            show_cut.not_written()
        else:
            show_cut.written(out, written)
        show.errors(errors)
    raise typer.Exit(int(bool(errors) or not plan.whole))
