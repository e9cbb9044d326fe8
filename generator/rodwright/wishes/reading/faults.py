"""What pydantic has against some data, as a maker is told it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from pydantic import BaseModel
from pydantic_core import ErrorDetails

from rodwright.lengths import LengthUnit
from rodwright.problems import KeyPath, Problem
from rodwright.wishes.reading.documents import Data
from rodwright.wishes.reading.file_kinds import SPEC, FileKind
from rodwright.wishes.reading.places import Place, Places
from rodwright.wishes.reading.schema import Shape, key_homes
from rodwright.wishes.reading.wording import Fault, Wording, word

_MOST_FAULTS = 500
"""Faults that are looked into; a spec with more is another kind of file."""


def told(
    details: Sequence[ErrorDetails],
    model: type[BaseModel],
    data: Mapping[str, Data],
    places: Places,
    file: str,
    unit: LengthUnit,
    kind: FileKind = SPEC,
) -> list[Problem]:
    """What is wrong, each with its place in the file, and nothing that only follows from it."""
    faults = _of_one_variant(
        [_fault(detail, model, data, kind) for detail in details[:_MOST_FAULTS]]
    )
    return [_problem(word(fault, unit), fault, places, file) for fault in _worth_telling(faults)]


def _problem(wording: Wording, fault: Fault, places: Places, file: str) -> Problem:
    place: Place
    if fault.kind == "extra_forbidden":
        place = places.of_key(fault.path)
    else:
        place = places.of_value(fault.path)
    return Problem(wording.message, wording.remedy, fault.path, file, *place)


def _fault(
    detail: ErrorDetails, model: type[BaseModel], data: Mapping[str, Data], file: FileKind
) -> Fault:
    """Follows an error's location through the data, leaving out what pydantic adds to it.

    Where one of several variants may stand, pydantic puts the name of the variant into the
    location: kept in ``variants``, with the path at which it was chosen.
    """
    kind, steps = detail["type"], detail["loc"]
    shape: Shape | None = Shape.of(model)
    parent: Shape | None = None
    here: object = data
    holder: object = None
    path: KeyPath = ()
    variants: dict[KeyPath, str] = {}
    for number, step in enumerate(steps, start=1):
        if shape is not None and len(shape.variants) > 1 and path not in variants:
            variants[path] = str(step)
            continue
        if not _leads_on(here, step, kind if number == len(steps) else None):
            continue
        parent, holder = shape, here
        shape = shape.at(step, here) if shape is not None else None
        path = (*path, step)
        here = _inside(here, step)
    if kind == "union_tag_invalid" and shape is not None and shape.discriminator is not None:
        path = (*path, shape.discriminator)
        here = _inside(here, shape.discriminator)
    context = detail.get("ctx", {})
    homes = key_homes(model).get(str(path[-1]), ()) if kind == "extra_forbidden" else ()
    elsewhere = homes[0] if len(homes) == 1 else None
    return Fault(
        kind, detail["msg"], context, path, here, shape, parent, holder, variants, elsewhere, file
    )


def _leads_on(here: object, step: str | int, last_kind: str | None) -> bool:
    if isinstance(here, dict):
        return step in here or last_kind == "missing"
    return isinstance(here, list) and isinstance(step, int) and step < len(here)


def _inside(here: object, step: str | int) -> object:
    if isinstance(here, dict):
        return here.get(step)
    return here[step] if isinstance(here, list) and isinstance(step, int) else None


def _of_one_variant(faults: list[Fault]) -> list[Fault]:
    """Where every variant of a value was tried in vain, keeps what is wrong with the nearest."""
    for path in sorted({path for fault in faults for path in fault.variants}, key=len):
        tried: dict[str, list[Fault]] = {}
        for fault in faults:
            if path in fault.variants:
                tried.setdefault(fault.variants[path], []).append(fault)
        if tried:
            nearest = min(tried.values(), key=lambda group: _distance(group, path))
            kept = {id(fault) for fault in nearest}
            faults = [fault for fault in faults if path not in fault.variants or id(fault) in kept]
    return faults


def _distance(faults: list[Fault], path: KeyPath) -> tuple[int, int]:
    """How far what is written is from the variant that these faults are about."""
    if all(len(fault.path) > len(path) for fault in faults):
        return 0, len(faults)
    wrong_type = any(fault.is_wrong_type for fault in faults)
    return (2 if wrong_type else 1), len(faults)


def _worth_telling(faults: list[Fault]) -> list[Fault]:
    """Leaves out what only follows from another fault."""
    misspelt = {
        (*fault.path[:-1], fault.meant) for fault in faults if fault.kind == "extra_forbidden"
    }
    cut = {(*fault.path[:-1], comma[0]) for fault in faults if (comma := fault.decimal_comma)}
    return [
        fault
        for fault in faults
        if not (fault.kind == "missing" and fault.path in misspelt)
        and fault.path not in cut
        and not (fault.kind == "too_short" and fault.size >= fault.context["min_length"])
    ]
