"""A unit's strength, whole or of what is asked about."""

from __future__ import annotations

from collections.abc import Collection
from typing import TYPE_CHECKING

from rodwright.checks import check_strength
from rodwright.checks.findings import Severity
from rodwright.handover.strength_about import About, about
from rodwright.problems import Problem, ProblemsError
from rodwright.strength import strength_of
from rodwright.unit import Unit

if TYPE_CHECKING:
    from rodwright.strength.model.beside import Beside

__all__ = ["About", "about", "breaks", "modelled", "strength_of"]


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


def breaks(unit: Unit, refs: Collection[str] | None = None) -> bool:
    """Whether the checks find an error of strength, such as something that breaks, falls or may
    not be: in the whole unit, or about one of some parts by their refs."""
    return any(
        finding.severity is Severity.ERROR
        and (refs is None or not frozenset(refs).isdisjoint(finding.parts))
        for finding in check_strength(unit)
    )
