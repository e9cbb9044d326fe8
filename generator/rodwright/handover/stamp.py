"""The time stamp that files bear: never the time of day, so that a spec gives the same bytes."""

from __future__ import annotations

import os
import re
from datetime import UTC, datetime

from rodwright.problems import Problem, ProblemsError
from rodwright.unit import Unit

_UNDATED = datetime.fromtimestamp(0, UTC)
"""For what has no date: 1970-01-01, from which SOURCE_DATE_EPOCH counts."""


def time_stamp(unit: Unit) -> str:
    """When a unit was designed: its own date, else ``SOURCE_DATE_EPOCH``, else a fixed day.

    UTC, ISO 8601.

    Raises:
        ProblemsError: SOURCE_DATE_EPOCH is set, and is no time.
    """
    moment = source_date() or _UNDATED
    if unit.date:
        moment = datetime.fromisoformat(unit.date).replace(tzinfo=UTC)
    return moment.isoformat(timespec="seconds")


def source_date() -> datetime | None:
    """What ``SOURCE_DATE_EPOCH`` says; None where it isn't set.

    See https://reproducible-builds.org/specs/source-date-epoch/: seconds since 1970-01-01,
    decimal digits only.  One that is wrong is refused whether it is wanted or not: numpy
    reads it too, and fails.

    Raises:
        ProblemsError: it is set to something else.
    """
    epoch = os.environ.get("SOURCE_DATE_EPOCH")
    if epoch is None:
        return None
    try:
        if re.fullmatch(r"[0-9]{1,15}", epoch):
            return datetime.fromtimestamp(int(epoch), UTC)
    except (ValueError, OverflowError, OSError):  # past the year 9999
        pass
    raise ProblemsError(
        [
            Problem(
                f"the environment variable SOURCE_DATE_EPOCH is {epoch[:40]!r}, "
                "not a number of seconds since 1970-01-01",
                "Set it to a whole number such as 1767225600, or unset it; a spec has its own "
                "`date`.",
            )
        ]
    )
