"""A spec file, read and validated, with the place of every value in it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path

from rodwright.problems import KeyPath, Problem, ProblemsError
from rodwright.wishes.limits import beyond_limits
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.documents import read_document, read_text
from rodwright.wishes.reading.places import Places
from rodwright.wishes.reading.validation import in_file_order, validate

_MOST_TOLD = 100
"""Problems told at a time: nobody mends more before looking again."""


@dataclass(frozen=True, slots=True)
class SpecFile:
    """A spec and where it was read from."""

    path: Path
    spec: UnitSpec
    places: Places

    @contextmanager
    def located(self) -> Iterator[None]:
        """Gives problems found in the spec later on their place in the file.

        Raises:
            ProblemsError: raised inside, with file, line and column filled in; the place of
                a value that isn't written in the file is that of the group it belongs to.
        """
        try:
            yield
        except ProblemsError as error:
            problems = [self._located(problem) for problem in error.problems]
            raise ProblemsError(_cut_short(in_file_order(problems))) from None

    def _located(self, problem: Problem) -> Problem:
        if problem.line is not None:
            return problem
        line, column = self.places.of_value(problem.where)
        return replace(problem, file=str(self.path), line=line, column=column)


def read_spec(path: str | Path) -> SpecFile:
    """Reads a spec file.

    Raises:
        ProblemsError: it can't be opened, read as YAML or understood as a spec; with every
            problem found, each with its place.
    """
    return parse_spec(read_text(Path(path)), path)


def parse_spec(text: str, path: str | Path) -> SpecFile:
    """Reads a spec from text; ``path`` is the file that problems name.

    Raises:
        ProblemsError: as for ``read_spec``.
    """
    document = read_document(text, str(path))
    problems = list(document.problems)
    try:
        spec = validate(UnitSpec, document.data, document.places, str(path))
    except ProblemsError as error:
        problems += [each for each in error.problems if not _lies_in(each.where, document.spoilt)]
    else:
        found = SpecFile(Path(path), spec, document.places)
        with found.located():
            if not problems and (beyond := beyond_limits(spec)):
                raise ProblemsError(beyond)
        if not problems:
            return found
    raise ProblemsError(_cut_short(in_file_order(problems)))


def _cut_short(problems: list[Problem]) -> list[Problem]:
    """The first of very many problems, and a word on how many there are."""
    if len(problems) <= _MOST_TOLD:
        return problems
    more = replace(
        problems[_MOST_TOLD],
        message="there is more that is wrong, from here on",
        remedy=f"Mend the {_MOST_TOLD} problems above first.",
    )
    return [*problems[:_MOST_TOLD], more]


def _lies_in(path: KeyPath, spoilt: tuple[KeyPath, ...]) -> bool:
    return any(path[: len(each)] == each for each in spoilt)
