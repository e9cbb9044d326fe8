"""Files that makers write, read and validated, with the place of every value in them."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TypeVar

from rodwright.problems import KeyPath, Problem, ProblemsError, told_once
from rodwright.wishes.fields import SpecModel
from rodwright.wishes.limits import beyond_limits
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.documents import Data, Document, read_document, read_text
from rodwright.wishes.reading.file_kinds import SPEC, FileKind
from rodwright.wishes.reading.places import Places
from rodwright.wishes.reading.validation import in_file_order, validate

_MOST_TOLD = 100
"""Problems told at a time: nobody mends more before looking again."""

ModelT = TypeVar("ModelT", bound=SpecModel)


@dataclass(frozen=True, slots=True)
class SpecFile:
    """A spec and where it was read from.

    ``data`` is what was written, before anything was made of it.  Of an option of a spec
    ``of_option`` is the name, and its places are those of what it changes.
    """

    path: Path
    spec: UnitSpec
    places: Places
    data: Mapping[str, Data]
    of_option: str = ""

    @contextmanager
    def located(self) -> Iterator[None]:
        """Gives problems found in the spec later on their place in the file.

        Raises:
            ProblemsError: raised inside, with file, line and column filled in; the place of
                a value that isn't written in the file is that of the group it belongs to.
        """
        with located(self.path, self.places):
            try:
                yield
            except ProblemsError as error:
                if not self.of_option:
                    raise
                of = f"option `{self.of_option}`: "
                raise ProblemsError(
                    replace(
                        each,
                        message=of + each.message.removeprefix(of),
                        remedy=self._in_option(each),
                    )
                    for each in error.problems
                ) from None

    def _in_option(self, problem: Problem) -> str:
        """What to do about a problem in an option; with a key of the spec that the option left as
        it is, how to take it out there."""
        ways = (problem.where[:end] for end in range(1, len(problem.where) + 1))
        way = next((each for each in ways if each not in self.places.values), ())
        if not _is_key(way, self.data) or UnitSpec.model_fields[str(way[0])].is_required():
            return problem.remedy
        hint = f" In an option `{way[-1]}: null` takes the spec's own out."
        return problem.remedy.removesuffix(hint) + hint


def _is_key(way: KeyPath, data: object) -> bool:
    """Whether a way through data leads to a key that is written there."""
    for step in way:
        if not isinstance(data, dict) or step not in data:
            return False
        data = data[step]
    return bool(way)


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
    spec, document = _parsed(UnitSpec, text, Path(path), SPEC, beyond_limits)
    read = SpecFile(Path(path), spec, document.places, document.data)
    if spec.options or spec.first_option:
        from rodwright.wishes.reading.options import option_specs

        option_specs(read)
    return read


def parse(
    model: type[ModelT],
    text: str,
    path: Path,
    kind: FileKind,
    look_closer: Callable[[ModelT], Iterable[Problem]],
) -> tuple[ModelT, Places]:
    """A file's text as a model, with the places of its values.

    ``look_closer`` says what is wrong with a model that is valid as such.

    Raises:
        ProblemsError: with every problem found, each with its place.
    """
    read, document = _parsed(model, text, path, kind, look_closer)
    return read, document.places


def _parsed(
    model: type[ModelT],
    text: str,
    path: Path,
    kind: FileKind,
    look_closer: Callable[[ModelT], Iterable[Problem]],
) -> tuple[ModelT, Document]:
    document = read_document(text, str(path), kind)
    problems = list(document.problems)
    try:
        read = validate(model, document.data, document.places, str(path), kind)
    except ProblemsError as error:
        told = [each for each in error.problems if not _lies_in(each.where, document.spoilt)]
        found_too = {each.where for each in told}  # what is no key needs no quotes
        problems = [each for each in problems if each.where not in found_too] + told
    else:
        with located(path, document.places):
            if not problems and (found := tuple(look_closer(read))):
                raise ProblemsError(found)
        if not problems:
            return read, document
    raise ProblemsError(_cut_short(in_file_order(problems)))


@contextmanager
def located(path: Path, places: Places) -> Iterator[None]:
    """Gives problems that are found in a file's values their place in the file.

    Raises:
        ProblemsError: raised inside, with file, line and column filled in.
    """
    try:
        yield
    except ProblemsError as error:
        problems = [_with_place(problem, path, places) for problem in error.problems]
        raise ProblemsError(_cut_short(in_file_order(problems))) from None


def _with_place(problem: Problem, path: Path, places: Places) -> Problem:
    if problem.line is not None:
        return problem
    line, column = places.of_value(problem.where)
    return replace(problem, file=str(path), line=line, column=column)


def _cut_short(all_told: list[Problem]) -> list[Problem]:
    """The first of very many problems, and a word on how many there are."""
    problems = list(told_once(all_told))
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
