"""Options: each laid over the spec it belongs to, and read as a whole spec of its own."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from rodwright.problems import KeyPath, Problem, Problems, ProblemsError
from rodwright.wishes.limits import beyond_limits
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.documents import Data
from rodwright.wishes.reading.files import SpecFile
from rodwright.wishes.reading.places import Place, Places
from rodwright.wishes.reading.validation import in_file_order, validate


def option_specs(spec: SpecFile) -> tuple[tuple[str, SpecFile], ...]:
    """The spec itself under its name, then each of its options: its name, and the whole spec that
    it makes.

    Raises:
        ProblemsError: an option makes no spec, nothing else than another, or has the name of
            another; every problem is told at the option's own lines, and says which option it is
            of.
    """
    first = spec.spec.first_option
    made = [(first.name if first else spec.spec.title, spec)]
    problems = _of_names(spec)
    for number, option in enumerate(spec.spec.options):
        try:
            made.append((option.name, _option(spec, number, made)))
        except ProblemsError as error:
            problems += error.problems
    if problems:
        raise ProblemsError(in_file_order(problems))
    return tuple(made)


def _of_names(spec: SpecFile) -> list[Problem]:
    """What is wrong with the options' names."""
    first = spec.spec.first_option
    own = {_bare(first.name): "`first_option`"} if first else {_bare(spec.spec.title): "the title"}
    problems, seen = Problems(), own
    if first and not spec.spec.options:
        problems.add(
            ("first_option",),
            "`first_option` says nothing where there are no `options`",
            "Take it out, or give the spec `options`.",
        )
    for number, option in enumerate(spec.spec.options):
        name = _bare(option.name)
        if name in seen:
            problems.add(
                ("options", number, "name"),
                f"`{option.name}` is the name of {seen[name]} too",
                "Give each a name of its own.",
            )
        seen.setdefault(name, f"option {number + 1}")
    try:
        with spec.located():
            problems.raise_if_any()
    except ProblemsError as error:
        return list(error.problems)
    return []


def _bare(name: str) -> str:
    return " ".join(name.casefold().split())


def _option(spec: SpecFile, number: int, others: Iterable[tuple[str, SpecFile]]) -> SpecFile:
    """One option as a whole spec, that makes something else than each of ``others``."""
    option, where = spec.spec.options[number], ("options", number)
    change: dict[str, Data] = option.change
    own = _own_places(spec.places, (*where, "change"))
    made = SpecFile(spec.path, spec.spec, own, spec.data, option.name)
    with made.located():
        problems = Problems(spec.spec.unit)
        for key in ("options", "first_option", "unit"):
            if key in change:
                problems.add((key,), f"an option doesn't change `{key}`", "Take it out.")
        problems.raise_if_any()
        whole = laid_over(spec.data, {**change, "options": None, "first_option": None})
        read = validate(UnitSpec, whole, own, str(spec.path))
        if found := beyond_limits(read):
            raise ProblemsError(found)
        for name, other in others:
            if _made(read) == _made(other.spec):
                problems.add(
                    (),
                    f"what it makes is the same as `{name}`",
                    "Change something that is made, not words alone, or take the option out.",
                )
        problems.raise_if_any()
    return SpecFile(spec.path, read, own, whole, option.name)


_WORDS = (
    *("title", "made_by", "number", "revision", "approved_by", "quote", "date"),
    *("options", "first_option"),
)
"""Keys that say something of a unit, and change nothing that is made."""


def _made(spec: UnitSpec) -> dict[str, object]:
    """What of a spec is made."""
    return {key: value for key, value in spec if key not in _WORDS}


def laid_over(whole: Mapping[str, Data], change: Mapping[str, Data]) -> dict[str, Data]:
    """Data with a part of such data laid over it: mappings are merged, all else replaces what there
    was, and None takes its key out."""
    made = dict(whole)
    for key, value in change.items():
        old = made.get(key)
        if value is None:
            made.pop(key, None)
        elif isinstance(value, dict):
            made[key] = laid_over(old if isinstance(old, dict) else {}, value)
        else:
            made[key] = value
    return made


def _own_places(places: Places, where: KeyPath) -> Places:
    """The places of what an option changes, as those of a whole spec; all else, in which nothing is
    wrong by itself, stands at the change."""

    def own(of: Mapping[KeyPath, Place]) -> dict[KeyPath, Place]:
        return {path[len(where) :]: at for path, at in of.items() if path[: len(where)] == where}

    return Places(own(places.values), own(places.keys))
