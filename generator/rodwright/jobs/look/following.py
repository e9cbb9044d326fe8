"""A spec file as it stands now: its model, or why there is none."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path

from rodwright.page import document as page
from rodwright.page.model import model_of
from rodwright.problems import Problem, ProblemsError
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.wishes.reading.files import read_spec


@dataclass(frozen=True, slots=True)
class State:
    """What the file makes: the last good unit and model, and the troubles of what stands there
    now.  ``version`` counts the readings."""

    version: int
    unit: Unit | None
    model: page.Model | None
    troubles: tuple[page.Trouble, ...] = ()


def read_state(path: Path, before: State | None) -> State:
    """Read the file again; what it last made stays where it makes nothing now."""
    version = before.version + 1 if before else 1
    try:
        unit = set_out(read_spec(path))
        return State(version, unit, model_of(unit))
    except ProblemsError as error:
        told = tuple(map(_trouble, error.problems))
        if before is None:
            return State(version, None, None, told)
        return replace(before, version=version, troubles=told)


def _trouble(problem: Problem) -> page.Trouble:
    return page.Trouble(problem.message, problem.remedy, problem.line, problem.column)
