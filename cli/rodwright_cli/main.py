"""The `rodwright` command: one thin module for each verb, and one place for what goes wrong."""

from __future__ import annotations

import errno
import gc
import os
import sys
from contextlib import suppress
from typing import Annotated

import typer

from rodwright_cli import (
    book,
    build,
    check,
    cnc,
    cut,
    gallery,
    look,
    new,
    page,
    parts,
    quote,
    rack,
    rates,
    render,
    rule,
    schema,
    span,
    strength,
    survey,
    way_in,
)
from rodwright_cli.console import (
    OUTPUT_LOST,
    give_up_lost_words,
    give_up_output,
    say,
    take_any_text,
)
from rodwright_cli.verb import Verb

app = typer.Typer(
    no_args_is_help=True,
    pretty_exceptions_enable=False,
    add_completion=False,
)
for verb in (
    new.new,
    check.check,
    build.build,
    cut.cut,
    book.book,
    cnc.cnc,
    render.render,
    quote.quote,
    look.look,
    page.page,
    parts.parts,
    strength.strength,
    span.span,
    rule.rule,
    schema.schema,
    survey.survey,
    way_in.way_in,
    rack.rack,
    rates.rates,
    gallery.gallery,
):
    app.command(cls=Verb)(verb)


def _say_version(wanted: bool) -> None:
    if wanted:
        import rodwright

        say(f"rodwright {rodwright.__version__}")
        raise typer.Exit


@app.callback()
def rodwright_command(
    version: Annotated[
        bool,
        typer.Option(
            "--version", callback=_say_version, is_eager=True, help="Show the version and exit."
        ),
    ] = False,
) -> None:
    """From one spec file to checked solids, pictures, lists and files for a fitted unit."""


_WRONG_INPUT = 2
_OWN_FAULT = 70
_OF_STREAMS = (errno.ENOSPC, errno.EDQUOT, errno.EIO, errno.EPIPE, errno.EBADF, errno.EAGAIN)


def main() -> None:
    """Run the command; say what is wrong in the maker's words and leave with its exit code.

    Exit codes: 0 done, 1 an error finding, 2 something wrong with what was given, 70 a
    fault of Rodwright's own (set RODWRIGHT_DEBUG to see where), 74 the output can't be written.
    """
    take_any_text()
    # No matrix here is large enough to be worth waking the other processors for.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    # What a short command loads stays to its end: looking for garbage finds none and takes a tenth
    # of the time.  Long ones (`show.progress`) look for it.
    gc.disable()
    try:
        code = _run()
    finally:
        gc.enable()
    try:
        if sys.stdout is not None:
            sys.stdout.flush()
    except OSError as error:
        code = _lost(error)
    give_up_lost_words()  # else Python itself fails at its end, and the code is lost
    sys.exit(code)


def _run() -> int | str | None:
    """Run the command; returns its exit code."""
    from rodwright.problems import ProblemsError, missing_library, printable

    try:
        if "SOURCE_DATE_EPOCH" in os.environ:
            from rodwright.handover.stamp import source_date

            source_date()  # refused here: libraries fail on a wrong one when they are loaded
        app()
    except SystemExit as leaving:
        return leaving.code
    except ProblemsError as error:
        _tell(*map(str, error.problems))
        return _WRONG_INPUT
    except Exception as error:
        if isinstance(error, OSError) and error.errno in _OF_STREAMS and error.filename is None:
            # Files have names: this one comes from the output.
            return _lost(error)
        if os.environ.get("RODWRIGHT_DEBUG"):
            raise
        if missing := missing_library(error):
            _tell(str(missing))
            return _WRONG_INPUT
        _tell(
            printable(f"Rodwright itself failed: {type(error).__name__}: {error}"),
            "  Please report it with your spec file; RODWRIGHT_DEBUG=1 shows where it happened.",
        )
        return _OWN_FAULT
    return 0


def _lost(error: OSError) -> int:
    """Say that the output can't be written, unless nobody reads it any more."""
    give_up_output()
    if not isinstance(error, BrokenPipeError):
        reason = error.strerror or str(error)
        _tell(f"The output can't be written: {reason}", "  Send it somewhere else.")
    return OUTPUT_LOST


def _tell(*lines: str) -> None:
    with suppress(OSError):
        print("\n".join(lines), file=sys.stderr, flush=True)
