"""Builds without checks and pictures, which take longest."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from rodwright.checks.findings import Finding
from rodwright.handover.exports import EXPORTS, Content, Export, Kind
from rodwright.jobs.build import write_exports
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit
from rodwright.unit.shop_part import PartsKind

PLAIN = tuple(export for export in EXPORTS if export.kind is not Kind.PICTURES)
"""Every export but the pictures."""


def write_build(
    unit: Unit,
    folder: Path,
    *more: Export,
    parts: PartsKind = "cut",
    findings: tuple[Finding, ...] = (),
    progress: Callable[[str], None] = lambda _: None,
) -> tuple[str, ...]:
    """Write a unit's files but its pictures, and ``more``; returns their names."""
    content = Content(laid_unit(unit), parts, findings, progress)
    return write_exports([*PLAIN, *more], content, folder)
