"""A spec file as it stands now: its unit and model, or why there is none."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path
from time import perf_counter

from rodwright.jobs.look.nudging import digest_of
from rodwright.jobs.look.watching import Seen
from rodwright.page import document as page
from rodwright.page.model import model_of
from rodwright.problems import KeyPath, Problem, ProblemsError
from rodwright.setout import set_out_traced
from rodwright.unit import Unit
from rodwright.wishes import SpecFile
from rodwright.wishes.reading.documents import decoded
from rodwright.wishes.reading.files import parse_spec

_LONGEST_LINE = 200
"""Characters of a spec's line that a page shows."""
_KEPT_DIGESTS = 100
"""Readings whose content is still known: what a page wishes is of one it was lately told of."""


@dataclass(frozen=True, slots=True)
class Made:
    """What a reading made of the file: ``version`` is that reading's.

    ``places`` are where in the spec each part was wished, by ref.
    """

    version: int
    text: str
    unit: Unit
    model: page.Model
    places: Mapping[str, page.Place]


@dataclass(frozen=True, slots=True)
class State:
    """The file as it was last read: what it last ``made``, the ``troubles`` of what stands there
    now, and how long the reading took, in seconds.

    ``version`` counts the readings; ``spec`` is None where the file can't be read as one.
    ``digests`` are of what it held, by version, the last ones only.
    """

    version: int = 0
    made: Made | None = None
    spec: SpecFile | None = None
    troubles: tuple[page.Trouble, ...] = ()
    seconds: float = 0.0
    digests: Mapping[int, str] = field(default_factory=dict)


def read_state(path: Path, seen: Seen, before: State) -> State:
    """Make of the file what can be made; what it last made stays where that is nothing."""
    began, version = perf_counter(), before.version + 1
    state = replace(before, version=version, spec=None, troubles=())
    try:
        if seen.content is None:
            raise ProblemsError(seen.problems)
        state = replace(state, digests=_digests(before, version, seen.content))
        text = decoded(seen.content, str(path))
        spec = parse_spec(text, path)
        state = replace(state, spec=spec)
        unit, wished = set_out_traced(spec)
        made = Made(version, text, unit, model_of(unit), _places(spec, text, wished))
        state = replace(state, made=made)
    except ProblemsError as error:
        state = replace(state, troubles=tuple(map(_trouble, error.problems)))
    except Exception as error:  # whatever it is, the page goes on and says so
        state = replace(state, troubles=(own_fault(error),))
    return replace(state, seconds=perf_counter() - began)


def _digests(before: State, version: int, content: bytes) -> dict[int, str]:
    kept = [*before.digests.items(), (version, digest_of(content))]
    return dict(kept[-_KEPT_DIGESTS:])


def _places(spec: SpecFile, text: str, wished: Mapping[str, KeyPath]) -> dict[str, page.Place]:
    lines = text.splitlines()
    places = {}
    for ref, where in wished.items():
        line, column = spec.places.of_value(where)
        said = lines[line - 1].rstrip()[:_LONGEST_LINE] if line <= len(lines) else ""
        places[ref] = page.Place(line, column, said)
    return places


def _trouble(problem: Problem) -> page.Trouble:
    return page.Trouble(problem.message, problem.remedy, problem.line, problem.column)


def own_fault(error: Exception) -> page.Trouble:
    """What is told where something failed for which no file is to blame."""
    return page.Trouble(
        f"Rodwright itself failed: {type(error).__name__}: {error}",
        "Please report it with your spec file.",
    )
