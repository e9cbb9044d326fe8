"""`rodwright span`: how far does a board span, what does it carry, how thick must it be?"""

from __future__ import annotations

from typing import Annotated

import typer

from rodwright_cli.json_out import Json, say_json


def span(  # noqa: PLR0913, PLR0917  # an option each
    material: Annotated[str, typer.Argument(help="What it is made of: `birch plywood`, `oak`.")],
    thickness: Annotated[
        str | None,
        typer.Argument(help='`18`, `"3/4 in"`; leave it out to be told the least.'),
    ] = None,
    load: Annotated[
        str | None,
        typer.Option(
            help='What it carries: `books`, `"25 kg/m"`, `"50 lb/ft2"`, `"30 kg"`; leave it out to '
            "be told the most."
        ),
    ] = None,
    length: Annotated[
        str | None,
        typer.Option("--span", help="Clear span; leave it out to be told the greatest."),
    ] = None,
    depth: Annotated[
        str | None, typer.Option(help="Front to back; 300 mm or 12 in unless said.")
    ] = None,
    limit: Annotated[
        float | None, typer.Option(help="It may sag by its span over this; 200 unless said.")
    ] = None,
    years: Annotated[
        float | None, typer.Option(help="After so many years; 0: at once. 10 unless said.")
    ] = None,
    ends: Annotated[
        str | None,
        typer.Option(
            help="`pinned`, `fixed`, or a joint: `screwed`, `housed`, `dowelled` ...; pinned "
            "unless said."
        ),
    ] = None,
    e: Annotated[
        str | None,
        typer.Option(
            "--e", help='A modulus of elasticity of your own: `"9300 N/mm2"`, `"1820000 psi"`.'
        ),
    ] = None,
    formulas: Annotated[
        bool, typer.Option("--formulas", help="Give formula, inputs and sources of each figure.")
    ] = False,
    json: Json = False,
) -> None:
    """Say how far a shelf may span, what it may carry or how thick it must be; no spec needed.
    Leaves with 1 when all three are given and it doesn't hold."""
    from rodwright.jobs.span import span as answered

    answer = answered(
        material,
        thickness,
        load=load,
        length=length,
        depth=depth,
        limit=limit,
        years=years,
        ends=ends,
        e=e,
    )
    if json:
        from rodwright.handover.span_json import span_json

        say_json(span_json(answer))
    else:
        from rodwright_cli import show_span

        show_span.span(answer, formulas=formulas)
    raise typer.Exit(int(not answer.holds))
