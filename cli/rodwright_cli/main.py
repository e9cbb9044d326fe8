"""The `rodwright` command: one thin module for each verb, and one place for what goes wrong."""

from __future__ import annotations

import os
import sys

import typer

from rodwright_cli import build, check, gallery, new, parts, schema, survey, way_in

app = typer.Typer(
    help="From one spec file to checked solids, pictures, lists and files for a fitted unit.",
    no_args_is_help=True,
    pretty_exceptions_enable=False,
    add_completion=False,
)
for verb in (
    new.new,
    check.check,
    build.build,
    parts.parts,
    schema.schema,
    survey.survey,
    way_in.way_in,
    gallery.gallery,
):
    app.command()(verb)

_WRONG_INPUT = 2
_OWN_FAULT = 70


def main() -> None:
    """Run the command; say what is wrong in the maker's words and leave with its exit code.

    Exit codes: 0 done, 1 an error finding, 2 something wrong with what was given, 70 a
    fault of Rodwright's own (set RODWRIGHT_DEBUG to see where).
    """
    from rodwright.problems import ProblemsError

    try:
        app()
    except ProblemsError as error:
        for problem in error.problems:
            print(problem, file=sys.stderr)
        sys.exit(_WRONG_INPUT)
    except Exception as error:
        if os.environ.get("RODWRIGHT_DEBUG"):
            raise
        if isinstance(error, ImportError) and ".so" in str(error):
            print(
                f"A system library is missing: {error}\n"
                "  On Debian or Ubuntu: apt-get install libgl1 libegl1",
                file=sys.stderr,
            )
            sys.exit(_WRONG_INPUT)
        print(
            f"Rodwright itself failed: {type(error).__name__}: {error}\n"
            "  Please report it with your spec file; RODWRIGHT_DEBUG=1 shows where it happened.",
            file=sys.stderr,
        )
        sys.exit(_OWN_FAULT)
