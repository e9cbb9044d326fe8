"""`rodwright new`: a commented spec to start from."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.console import say
from rodwright_cli.json_out import Json, say_json


def new(
    model: Annotated[
        str | None, typer.Argument(help="Name of a ready model; leave it out to list them.")
    ] = None,
    file: Annotated[
        Path | None, typer.Argument(help="File to write; MODEL.yaml here unless said.")
    ] = None,
    json: Json = False,
) -> None:
    """Write a commented spec to start from."""
    from rodwright.jobs.new import copy_model, model_names

    target = file if file is not None else Path(f"{model}.yaml")
    if model is not None:
        copy_model(model, target)
    if json:
        from rodwright.handover.verbs_json import models_json

        say_json(models_json(model_names()) if model is None else models_json([model], target))
    elif model is None:
        say("\n".join(model_names()))
    else:
        say(f"{target} is ready: put your own sizes in, then run  rodwright check {target}")
