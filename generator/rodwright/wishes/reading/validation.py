"""Data to a pydantic model, with everything that is wrong told in a maker's words."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TypeVar

from pydantic import BaseModel, ValidationError

from rodwright.lengths import LengthUnit
from rodwright.problems import Problem, ProblemsError
from rodwright.wishes.reading.documents import Data
from rodwright.wishes.reading.file_kinds import SPEC, FileKind
from rodwright.wishes.reading.places import Places

ModelT = TypeVar("ModelT", bound=BaseModel)


def validate(
    model: type[ModelT],
    data: Mapping[str, Data],
    places: Places,
    file: str,
    kind: FileKind = SPEC,
) -> ModelT:
    """The data as a model; ``kind`` says what file it is of.

    The data's own ``unit`` (``mm`` unless it says ``in``) is what bare numbers mean in its
    lengths; validators find it in their context.

    Raises:
        ProblemsError: with everything that is wrong, in the order of the file.
    """
    unit: LengthUnit = "in" if data.get("unit") == "in" else "mm"
    try:
        return model.model_validate(data, context={"unit": unit})
    except ValidationError as error:
        details = error.errors(include_url=False)
    from rodwright.wishes.reading.faults import told  # a spec that is right has no use for it

    raise ProblemsError(in_file_order(told(details, model, data, places, file, unit, kind)))


def in_file_order(problems: list[Problem]) -> list[Problem]:
    """Problems sorted by their place in the file."""
    return sorted(problems, key=lambda problem: (problem.line or 0, problem.column or 0))
