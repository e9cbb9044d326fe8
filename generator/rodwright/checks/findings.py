"""What a check has to say."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from rodwright.parts import Vector


class Severity(StrEnum):
    """How much a finding matters: an error must be mended before anything is cut."""

    ERROR = "error"
    WARNING = "warning"
    NOTE = "note"


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing a check found.

    ``rule`` names the check in a word or two; ``parts`` are refs.  ``figure`` is what was
    found and ``limit`` what it is held against, both in ``measure`` (mm unless said).
    ``place`` is where, in the unit frame.  ``source`` says where the limit comes from.
    """

    severity: Severity
    rule: str
    message: str
    remedy: str
    parts: tuple[str, ...] = ()
    figure: float | None = None
    limit: float | None = None
    measure: str = "mm"
    source: str = "common practice, no source"
    place: Vector | None = None
