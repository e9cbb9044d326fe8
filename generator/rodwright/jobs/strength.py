"""A unit's strength, whole or of one part."""

from __future__ import annotations

from collections.abc import Sequence
from difflib import get_close_matches

from rodwright.checks import check_strength
from rodwright.checks.findings import Severity
from rodwright.problems import Problem, ProblemsError
from rodwright.strength import strength_of
from rodwright.strength.results import Result
from rodwright.unit import Unit

__all__ = ["breaks", "results_about", "strength_of"]


def breaks(unit: Unit, ref: str | None = None) -> bool:
    """Whether the checks find an error of strength, such as something that breaks, falls or may
    not be: in the whole unit, or about one part by its ref."""
    wanted = ref and ref.strip().upper()
    return any(
        finding.severity is Severity.ERROR and (not wanted or wanted in finding.parts)
        for finding in check_strength(unit)
    )


def results_about(unit: Unit, results: Sequence[Result], ref: str) -> tuple[Result, ...]:
    """Those results that are about one part of a unit, by its ref in any case.

    Raises:
        ProblemsError: the unit has no such part.
    """
    refs = [part.ref for part in unit.parts]
    wanted = ref.strip().upper()
    if wanted not in refs:
        near = get_close_matches(wanted, refs, n=3)
        meant = f"Did you mean {' or '.join(f'`{each}`' for each in near)}? " if near else ""
        raise ProblemsError(
            [
                Problem(
                    f"the unit has no part `{ref}`",
                    f"{meant}`rodwright parts` lists them all.",
                )
            ]
        )
    return tuple(each for each in results if wanted in each.parts)
