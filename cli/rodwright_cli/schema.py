"""`rodwright schema`: what a maker's files and `unit.json` look like, as a JSON Schema."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

import typer

from rodwright_cli.console import say


class Document(StrEnum):
    """What there is a schema of."""

    SPEC = "spec"
    UNIT = "unit"
    RACK = "rack"
    RATES = "rates"


def schema(
    of: Annotated[
        Document, typer.Argument(help="A spec, rack or rates file, or the `unit.json` of a build.")
    ] = Document.SPEC,
) -> None:
    """Print the JSON Schema of a spec, rack or rates file, for editors that complete and check as
    you type, or of `unit.json`, for programs that read it."""
    import json

    import rodwright

    schemas = {
        Document.SPEC: rodwright.spec_schema,
        Document.UNIT: rodwright.unit_schema,
        Document.RACK: rodwright.rack_schema,
        Document.RATES: rodwright.rates_schema,
    }
    say(json.dumps(schemas[of](), indent=2, ensure_ascii=False))
