"""Where a figure comes from."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Source:
    """A work, and whether the figure was looked up there or is remembered."""

    work: str
    seen: bool = True

    def __str__(self) -> str:
        return self.work if self.seen else f"{self.work} (from memory)"


@dataclass(frozen=True, slots=True)
class Figure:
    """A value in ``measure`` (``N/mm2``, ``kg/m``; empty for a plain number), and its source."""

    value: float
    measure: str
    source: Source
