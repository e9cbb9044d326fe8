"""A unit's strength, whole or of one part."""

from __future__ import annotations

from collections.abc import Sequence
from difflib import get_close_matches
from typing import TYPE_CHECKING

from rodwright.checks import check_strength
from rodwright.checks.findings import Severity
from rodwright.problems import Problem, ProblemsError
from rodwright.strength import strength_of
from rodwright.strength.results import Result
from rodwright.unit import Unit

if TYPE_CHECKING:
    from rodwright.strength.model.beside import Beside

__all__ = ["breaks", "modelled", "results_about", "strength_of"]


def modelled(unit: Unit) -> Beside:
    """A unit's formulas and its model by finite elements beside each other.

    Raises:
        ProblemsError: PyNiteFEA isn't installed, how stiff something is isn't known, or nothing
            holds some of the unit.
    """
    try:
        from rodwright.strength.model.beside import UnknownStiffnessError, beside
        from rodwright.strength.model.solving import UnsolvedError
    except ModuleNotFoundError as error:
        if (error.name or "").partition(".")[0] != "Pynite":
            raise
        told = Problem("`--model` needs PyNiteFEA", "Install it: `pip install PyNiteFEA`.")
        raise ProblemsError([told]) from error
    try:
        return beside(unit)
    except UnsolvedError as error:
        told = Problem(
            f"the model has no answer: {error}",
            "`rodwright check` says what isn't joined to anything; the formulas stand: leave out "
            "`--model`.",
        )
        raise ProblemsError([told]) from error
    except UnknownStiffnessError as error:
        told = Problem("there is no model of what isn't known", f"{error}.")
        raise ProblemsError([told]) from error


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
