"""What is told after the picture, each worked out in a process of its own.

A function here is given a spec's text and path and gives sections, as JSON by their names.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import asdict, fields
from functools import lru_cache
from importlib import import_module

from rodwright.page import document as page
from rodwright.problems import ProblemsError
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.wishes import SpecFile
from rodwright.wishes.reading.files import parse_spec

Known = dict[str, str]
"""Sections by name, each as JSON."""

_PLANNING = 8.0
"""Seconds of the clock that a cutting plan may take: what `cut` finds with more may be better."""


@lru_cache(maxsize=1)
def _read(text: str, path: str) -> tuple[SpecFile, Unit]:
    spec = parse_spec(text, path)
    return spec, set_out(spec)


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

    return {name: _json(each) for name, each in textures_of(_read(text, path)[1], set(had)).items()}


def findings(text: str, path: str) -> Known:
    """What all checks find."""
    from rodwright.checks import check_parts, check_solids
    from rodwright.page.telling.findings import findings_told

    unit = _read(text, path)[1]
    return {"findings": _json(findings_told((*check_parts(unit), *check_solids(unit))))}


def lists(text: str, path: str) -> Known:
    """The parts list and what is bought."""
    from rodwright.page.telling.lists import lists_told

    return {"lists": _json(lists_told(_read(text, path)[1]))}


def opening(text: str, path: str) -> Known:
    """The opening, and how the unit goes into it."""
    from rodwright.jobs.survey import survey
    from rodwright.page.telling.opening import opening_told

    spec, unit = _read(text, path)
    if unit.opening is None:
        return {"opening": _json(page.Sheet(words=("The spec has no `opening`.",)))}
    return {"opening": _json(opening_told(survey(spec)))}


def strength(text: str, path: str) -> Known:
    """Whether it holds and stands."""
    from rodwright.page.telling.strength import strength_told

    return {"strength": _json(strength_told(_read(text, path)[1]))}


def cutting(text: str, path: str) -> Known:
    """What to buy and how to cut it, as well as can be found in some seconds."""
    from rodwright.jobs.cut import Watch, cut
    from rodwright.page.telling import cutting_sheet

    try:
        plan = cut([_read(text, path)[0]], watch=Watch(seconds=_PLANNING))
    except ProblemsError as error:
        said = tuple(f"{each.message}. {each.remedy}" for each in error.problems)
        return {"cutting": _json(page.Sheet(words=("There is no cutting plan.", *said)))}
    return {"cutting": _json(cutting_sheet(plan))}


def _known(sections: page.Sections) -> Known:
    told = {each.name: getattr(sections, each.name) for each in fields(sections)}
    return {name: _json(each) for name, each in told.items() if each is not None}


def _json(told: object) -> str:
    return json.dumps(told, default=asdict, ensure_ascii=False, separators=(",", ":"))
