"""`rodwright schema`: the spec language as a JSON Schema."""

from __future__ import annotations

from rodwright_cli.console import say


def schema() -> None:
    """Print the JSON Schema of a spec file, for editors that complete and check as you type."""
    import json

    import rodwright

    say(json.dumps(rodwright.spec_schema(), indent=2, ensure_ascii=False))
