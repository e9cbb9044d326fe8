"""What a check has to say."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from enum import StrEnum

from rodwright.checks.rules import Rule
from rodwright.geometry import Vector


class Severity(StrEnum):
    """How much a finding matters: an error must be mended before anything is cut.

    A caution stands for every job of its kind, however well it is set out; notes are about this
    one.
    """

    ERROR = "error"
    WARNING = "warning"
    NOTE = "note"
    CAUTION = "caution"


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing a check found.

    ``parts`` are refs.  ``figure`` is what was found and ``limit`` what it is held against, both in
    ``measure`` (mm unless said).
    ``place`` is where, in the unit frame.  ``source`` says where the limit comes from.
    ``brief`` is a caution in one short line, for where there is no room for the whole.  ``case``
    is what else the message tells, beside parts, figure and limit: the workings that meet, the
    wall that is struck.  Findings that share it too are told as one.
    """

    severity: Severity
    rule: Rule
    message: str
    remedy: str
    parts: tuple[str, ...] = ()
    figure: float | None = None
    limit: float | None = None
    measure: str = "mm"
    source: str = "common practice, no source"
    place: Vector | None = None
    brief: str = ""
    case: tuple[str | float, ...] = ()

    def likewise(self, refs: Iterable[str]) -> Finding:
        """The same of other parts too, told after it by their refs."""
        others = tuple(dict.fromkeys(ref for ref in refs if ref not in self.parts))
        if not others:
            return self
        message = f"{self.message}; likewise {', '.join(others)}"
        return replace(self, message=message, parts=self.parts + others)
