"""`unit.json`: the whole resolved unit as one document, and its reader.

The document is the unit's record (:mod:`rodwright.unit.record`), so that reading it gives back an
equal unit, and beside it what others would otherwise have to work out: matrices, overall sizes
and masses.  The reader takes no notice of those.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from pydantic import TypeAdapter
from pydantic.json_schema import GenerateJsonSchema

from rodwright.geometry import Box, Matrix, Vector, vector
from rodwright.handover.json_text import json_text
from rodwright.mass import centre_of_mass, mass_of, unit_weight, weight
from rodwright.problems import KeyPath, Problem, ProblemsError
from rodwright.unit import Part, Unit
from rodwright.unit.cut_edges import outlines
from rodwright.unit.record import (
    NoUnitError,
    Record,
    record_schema,
    unit_of,
    unit_record,
    written_schema,
)

SCHEMA_VERSION = 1
"""Goes up when a document written before can no longer be read."""

_FRAMES = {
    "unit": "x to the right seen from the front, y from the front to the back, z up; "
    "origin at the carcass's front lower left corner on the floor line",
    "part": "x along the length, y across the width, z through the thickness, up as the part is "
    "laid to be worked; the finished blank fills 0 to its size, and show_surfaces say what is seen",
    "surfaces": "near end x = 0, face edge y = 0, reverse z = 0; opposite them far end, back edge "
    "and face",
    "as_cut": "size of the blank before it is trimmed and edged, and the finished outline in its "
    "frame: a place of the part frame lies there with the outline's low corner added",
    "matrix": "rows of the 4 x 4 transform from part frame to unit frame",
}
_MEASURES = {
    "length": "mm",
    "mass": "kg",
    "angle": "degree",
    "volume": "mm3",
    "density": "kg/m3",
    "moisture": "% of the oven-dry mass",
}
_MOST_TOLD = 20
"""Problems told at a time."""


@dataclass(frozen=True, slots=True)
class OfUnit:
    """What follows from a whole unit: its mass (kg) and centre of mass (unit frame)."""

    mass: float
    centre_of_mass: Vector


@dataclass(frozen=True, slots=True)
class AsCut:
    """A blank before it is trimmed and edged, and the finished outline in its frame."""

    size: Vector
    finished: Box


@dataclass(frozen=True, slots=True)
class OfPart:
    """What follows from a part: length, width and thickness to cut, the transform from part frame
    to unit frame by rows, its mass (kg), volume (mm3) and centre of volume (part frame)."""

    rough_size: Vector
    as_cut: AsCut
    matrix: Matrix
    mass: float
    volume: float
    centroid: Vector


_OF_UNIT, _OF_PART = TypeAdapter(OfUnit), TypeAdapter(OfPart)

_UNIT_ORDER = (
    "title", "display_unit", "least_gap", "envelope", "opening", "way_in", "mass",
    "centre_of_mass", "stocks", "parts",
)  # fmt: skip
_PART_ORDER = (
    "ref", "name", "role", "group", "blank", "rough_size", "as_cut", "workings", "lipped",
    "edged", "withdraw",
)  # fmt: skip
_FITTING_ORDER = ("ref", "ware", "inner", "fine")
"""Keys that come first, as a reader looks for them; the others follow as the fields do."""


def unit_json(unit: Unit) -> bytes:
    """The document, UTF-8, the same bytes for the same unit.

    Raises:
        ValueError: two different stocks have the same name.
    """
    record = unit_record(unit) | _OF_UNIT.dump_python(_of_unit(unit))
    record["parts"] = [
        _ordered(each | _OF_PART.dump_python(_of_part(part)), _PART_ORDER)
        for each, part in zip(record["parts"], unit.parts, strict=True)
    ]
    record["fittings"] = [_ordered(each, _FITTING_ORDER) for each in record["fittings"]]
    about = {"schema_version": SCHEMA_VERSION, "frames": _FRAMES, "measures": _MEASURES}
    return json_text(about | _ordered(record, _UNIT_ORDER))


def _ordered(record: Record, first: Sequence[str]) -> Record:
    return {key: record[key] for key in first} | record


def _of_unit(unit: Unit) -> OfUnit:
    centre = vector(round(each, 4) for each in centre_of_mass(unit))
    return OfUnit(round(unit_weight(unit), 6), centre)


def _of_part(part: Part) -> OfPart:
    mass = mass_of(part.shape)
    return OfPart(
        part.rough_size,
        AsCut(*outlines(part)),
        tuple((a + 0.0, b + 0.0, c + 0.0, d + 0.0) for a, b, c, d in part.placement.matrix()),
        round(weight(part), 6),
        round(mass.volume, 3),
        vector(round(each, 4) for each in mass.centroid),
    )


def unit_schema() -> Record:
    """The JSON Schema (draft 2020-12) of the document, as it is written."""
    schema = record_schema()
    definitions = schema.pop("$defs")
    for kind, described in ((_OF_UNIT, schema), (_OF_PART, definitions["Part"])):
        derived = written_schema(kind)
        definitions |= derived.get("$defs", {})
        described["properties"] |= derived["properties"]
        described["required"] += derived["required"]
    texts = {"type": "object", "additionalProperties": {"type": "string"}}
    about = {"schema_version": {"const": SCHEMA_VERSION}, "frames": texts, "measures": texts}
    return {
        "$schema": GenerateJsonSchema.schema_dialect,
        **schema,
        "title": "Unit",
        "properties": about | _ordered(schema["properties"], _UNIT_ORDER),
        "required": [*about, *schema["required"]],
        "$defs": dict(sorted(definitions.items())),
    }


def read_unit(path: str | Path) -> Unit:
    """The unit that a `unit.json` holds, equal to the one it was written of.

    Raises:
        ProblemsError: the file can't be read, or isn't such a document; with what is wrong, and
            its place in the document.
    """
    path = Path(path)
    try:
        document = json.loads(path.read_bytes())
    except OSError as error:
        raise _problem(
            path, f"can't be read: {error.strerror}", "Give a file that is there."
        ) from None
    except (ValueError, RecursionError) as error:
        raise _problem(path, f"isn't JSON: {error}", "Build the unit again.") from None
    version = document.get("schema_version") if isinstance(document, dict) else None
    if version != SCHEMA_VERSION:
        raise _problem(
            path,
            f"isn't a unit of schema version {SCHEMA_VERSION}, the only one known here"
            + (f", but of {version}" if isinstance(version, int) else ""),
            "Build the unit again with this version of Rodwright.",
        )
    try:
        return unit_of(document)
    except NoUnitError as error:
        faults = error.faults
    raise ProblemsError(
        Problem(
            f"`{path}` doesn't hold a whole unit: {_place(fault.where)}{fault.what}",
            "Build the unit again; the file has been changed since.",
            fault.where,
        )
        for fault in faults[:_MOST_TOLD]
    )


def _place(where: KeyPath) -> str:
    """The way to a value as programs write it: `parts[3].blank.length`."""
    steps = (f"[{step}]" if isinstance(step, int) else f".{step}" for step in where)
    way = "".join(steps).removeprefix(".")
    return f"`{way}`: " if way else ""


def _problem(path: Path, what: str, remedy: str) -> ProblemsError:
    return ProblemsError([Problem(f"`{path}` {what}", remedy)])
