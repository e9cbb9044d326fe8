"""What is found in the options of a unit."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.checks import check_parts
from rodwright.checks.findings import Finding
from rodwright.unit import Unit


def check_options(units: Sequence[tuple[str, Unit]]) -> dict[str, list[Finding]]:
    """By each option's name what the checks of parts find in it that they don't find in the unit
    itself, which comes first."""
    (_, unit), *options = units
    known = check_parts(unit) if options else []
    return {
        name: [each for each in check_parts(other) if each not in known] for name, other in options
    }
