"""`rodwright schema`: the spec language as a JSON Schema."""

from __future__ import annotations

import typer


def schema() -> None:
    """Print the JSON Schema of a spec file, for editors that complete and check as you type."""
    import json

    import rodwright

    typer.echo(json.dumps(rodwright.spec_schema(), indent=2, ensure_ascii=False))
