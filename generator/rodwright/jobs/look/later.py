"""What is told after the picture, each worked out in a process of its own.

A function here is given a spec's text and path and gives sections, as JSON by their names.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import asdict, fields
from functools import lru_cache
from importlib import import_module
from time import monotonic

from rodwright.page import document as page
from rodwright.problems import KeyPath, ProblemsError
from rodwright.setout import set_out_traced
from rodwright.unit import Unit
from rodwright.wishes import SpecFile
from rodwright.wishes.reading.files import parse_spec

Known = dict[str, str]
"""Sections by name, each as JSON."""

_PLANNING = 8.0
"""Seconds of the clock that a cutting plan may take: what `cut` finds with more may be better."""

_PORTION = 0.5
"""Seconds of what hangs on figures that are worked out at a time."""


@lru_cache(maxsize=1)
def _read(text: str, path: str) -> tuple[SpecFile, Unit, Mapping[str, KeyPath]]:
    spec = parse_spec(text, path)
    return spec, *set_out_traced(spec)


def warm_words() -> None:
    """Load what words need, so that the first save isn't kept waiting for it."""
    for name in ("rodwright.page.telling", "rodwright.page.tiles"):
        import_module(name)


def warm_checks() -> None:
    """Load what checks need."""
    import_module("rodwright.checks.collisions")


def quick(text: str, path: str, places: Mapping[str, page.Place]) -> Known:
    """How the unit comes apart, its parts' details and its dimensions."""
    from rodwright.page.telling import quick_sections

    return _known(quick_sections(_read(text, path)[1], places))


def textures(text: str, path: str, had: Iterable[str]) -> Known:
    """What its surfaces look like, but for those the page has ``had``."""
    from rodwright.page.tiles import textures_of

    return {
        name: as_json(each) for name, each in textures_of(_read(text, path)[1], set(had)).items()
    }


def findings(text: str, path: str) -> Known:
    """What all checks find."""
    from rodwright.checks import check_parts, check_solids
    from rodwright.page.telling.findings import findings_told

    unit = _read(text, path)[1]
    return {"findings": as_json(findings_told((*check_parts(unit), *check_solids(unit))))}


def lists(text: str, path: str) -> Known:
    """The parts list and what is bought."""
    from rodwright.page.telling.lists import lists_told

    return {"lists": as_json(lists_told(_read(text, path)[1]))}


def opening(text: str, path: str) -> Known:
    """The opening, and how the unit goes into it."""
    from rodwright.jobs.survey import survey
    from rodwright.page.telling.opening import opening_told

    spec, unit, _ = _read(text, path)
    if unit.opening is None:
        return {"opening": as_json(page.Sheet(words=("The spec has no `opening`.",)))}
    return {"opening": as_json(opening_told(survey(spec)))}


def strength(text: str, path: str) -> Known:
    """Whether it holds and stands."""
    from rodwright.page.telling.strength import strength_told

    return {"strength": as_json(strength_told(_read(text, path)[1]))}


def hanging(text: str, path: str, begin: int) -> tuple[dict[str, page.Hanging], int | None]:
    """What hangs on each figure from the ``begin``-th on, by its key, as far as half a second goes;
    and with which one to go on, None after the last.

    In portions, so that a newer save waits for no more than one.
    """
    from rodwright.jobs.look.figures import key_of, told_once
    from rodwright.jobs.look.hanging import hanging_on

    spec, unit, wished = _read(text, path)
    until = monotonic() + _PORTION
    told: dict[str, page.Hanging] = {}
    figures = told_once(spec)
    for number, same in enumerate(figures[begin:], start=begin + 1):
        found = hanging_on(same, spec, unit, wished)
        if found is not None:
            told[key_of(same[0])] = found
        if monotonic() > until and number < len(figures):
            return told, number
    return told, None


def cutting(text: str, path: str) -> Known:
    """What to buy and how to cut it, as well as can be found in some seconds."""
    from rodwright.jobs.cut import Watch, cut
    from rodwright.page.telling import cutting_sheet

    try:
        plan = cut([_read(text, path)[0]], watch=Watch(seconds=_PLANNING))
    except ProblemsError as error:
        said = tuple(f"{each.message}. {each.remedy}" for each in error.problems)
        return {"cutting": as_json(page.Sheet(words=("There is no cutting plan.", *said)))}
    return {"cutting": as_json(cutting_sheet(plan))}


def _known(sections: page.Sections) -> Known:
    told = {each.name: getattr(sections, each.name) for each in fields(sections)}
    return {name: as_json(each) for name, each in told.items() if each is not None}


def as_json(told: object) -> str:
    """A section, or what is to be one."""
    return json.dumps(told, default=asdict, ensure_ascii=False, separators=(",", ":"))
