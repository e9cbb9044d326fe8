"""What each verb of the command is to Typer."""

from __future__ import annotations

from typing import Any

import typer
from typer.core import TyperCommand

_PREFIX = "Value error, "
"""What Typer's reader of values puts before the reason."""


class Verb(TyperCommand):
    """A verb that says in plain words what is wrong with an option's value."""

    def parse_args(self, ctx: Any, args: list[str]) -> list[str]:
        """Read the verb's options.

        Raises:
            typer.BadParameter: one of them can't be taken.
        """
        try:
            return super().parse_args(ctx, args)
        except typer.BadParameter as error:
            error.message = error.message.removeprefix(_PREFIX)
            raise
