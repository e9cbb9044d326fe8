"""`--json`: what a verb says, as one JSON document on the output, and nothing beside it."""

from __future__ import annotations

import json
import re
from typing import Annotated

import typer

from rodwright_cli.console import say

Json = Annotated[
    bool, typer.Option("--json", help="Print one JSON document and nothing else, for programs.")
]
"""The option of every verb that shows a table."""

_NOT_PLAIN = re.compile(r"[^\n -~]")
"""What an output may not take, or a terminal may act on: in JSON it stands in strings alone."""


def say_json(document: bytes) -> None:
    """Show a document (UTF-8, as `handover` makes it) in ASCII, so that it reads the same whatever
    the output takes; what isn't ASCII is escaped as JSON has it."""
    text = document.decode().rstrip("\n")
    say(_NOT_PLAIN.sub(lambda found: json.dumps(found[0])[1:-1].replace("\x7f", "\\u007f"), text))
