"""The unit as a record: plain data that JSON can hold, and back into an equal unit.

Made by pydantic from the dataclasses, so that a field stands in one place only.  Each stock is
written once, under its name.  Loaded only where a record is written, read or described.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any, TypeVar

from pydantic import TypeAdapter, ValidationError
from pydantic.json_schema import GenerateJsonSchema

from rodwright.problems import KeyPath
from rodwright.unit import OpeningPlane, Quadrilateral, Stock, Unit

Record = dict[str, Any]
"""An object of JSON."""

_UNIT = TypeAdapter(Unit)
_STOCKS = TypeAdapter(dict[str, Stock])
_PLANE = TypeAdapter(OpeningPlane)
_CORNERS = TypeAdapter(Quadrilateral)

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Fault:
    """What is wrong with a record, and the way to it."""

    where: KeyPath
    what: str


class NoUnitError(ValueError):
    """Raised where a record isn't one of a whole unit."""

    def __init__(self, faults: Iterable[Fault]) -> None:
        self.faults = tuple(faults)
        super().__init__("; ".join(f"{fault.where}: {fault.what}" for fault in self.faults))


# --- writing ---------------------------------------------------------------------------


def unit_record(unit: Unit) -> Record:
    """Everything that a unit holds, in the order of its fields, and its ``stocks`` by name.

    Raises:
        ValueError: two different stocks have the same name.
    """
    stocks: dict[str, Stock] = {}
    for part in unit.parts:
        stock = part.blank.stock
        if stocks.setdefault(stock.name, stock) != stock:
            raise ValueError(f"two different stocks are called `{stock.name}`")
    record: Record = _plain(_UNIT, unit)
    for part in record["parts"]:
        part["blank"]["stock"] = part["blank"]["stock"]["name"]
    shelf: Record = _plain(_STOCKS, dict(sorted(stocks.items())))
    for stock in shelf.values():
        del stock["name"]
    return record | {"stocks": shelf}


def _plain(kind: TypeAdapter[T], value: T) -> Any:
    # Not in pydantic's own JSON mode, which writes an int that stands for a float as a float.
    return kind.dump_python(value, warnings=False)


# --- reading ---------------------------------------------------------------------------


def unit_of(record: Mapping[str, Any]) -> Unit:
    """The unit that a record is of.

    Keys that have a default may be left out, and others than a unit's are passed over.

    Raises:
        NoUnitError: with all that is wrong with it.
    """
    named = record.get("stocks")
    if isinstance(named, dict):
        named = {name: _with(each, name=name) for name, each in named.items()}
    _read(_STOCKS, named, ("stocks",))
    assert isinstance(named, dict)
    parts = record.get("parts")
    if isinstance(parts, list):
        parts = [_with_stock(part, named, number) for number, part in enumerate(parts)]
    return _read(_UNIT, {**record, "parts": parts, "opening": _opening(record.get("opening"))})


def _read(kind: TypeAdapter[T], value: object, where: KeyPath = ()) -> T:
    try:
        return kind.validate_json(json.dumps(value, allow_nan=False), strict=True)
    except ValidationError as error:
        raise NoUnitError(
            Fault((*where, *_way(each["loc"], value)), each["msg"])
            for each in error.errors(include_url=False, include_context=False)
        ) from None
    except ValueError:
        raise NoUnitError([Fault(where, "Figures should be finite")]) from None


def _way(steps: KeyPath, value: Any) -> KeyPath:
    """The steps that lead through a value: pydantic also names the kinds that it chose."""
    way: list[str | int] = []
    for number, step in enumerate(steps, start=1):
        try:
            value = value[step]
        except (LookupError, TypeError):
            if number < len(steps):
                continue  # else it is missing
        way.append(step)
    return tuple(way)


def _with(record: Any, **more: object) -> Any:
    return {**record, **more} if isinstance(record, dict) else record


def _with_stock(part: Any, stocks: Mapping[str, Any], number: int) -> Any:
    blank = part.get("blank") if isinstance(part, dict) else None
    if not isinstance(blank, dict):
        return part
    name = blank.get("stock")
    if not isinstance(name, str) or name not in stocks:
        raise NoUnitError([Fault(("parts", number, "blank", "stock"), "No stock is called this")])
    return _with(part, blank=_with(blank, stock=stocks[name]))


def _opening(record: Any) -> Any:
    """Records from before walls were read as lines have nothing but the corners of planes."""
    shape = record.get("shape") if isinstance(record, dict) else None
    if not isinstance(shape, dict):
        return record
    planes = {
        name: _plain(_PLANE, OpeningPlane.straight(_read(_CORNERS, plane, (*_SHAPE, name))))
        for name, plane in shape.items()
        if name in ("front", "rear") and isinstance(plane, list)
    }
    return _with(record, shape=_with(shape, **planes))


_SHAPE = ("opening", "shape")


# --- describing ------------------------------------------------------------------------


class _AsWritten(GenerateJsonSchema):
    """A schema of what is written: every key is there, none has a title made of its name."""

    def field_is_required(self, *_: Any, **__: Any) -> bool:
        return True

    def field_title_should_be_set(self, *_: Any) -> bool:
        return False

    def default_schema(self, schema: Any) -> Record:
        return self.generate_inner(schema["schema"])


def written_schema(kind: TypeAdapter[Any]) -> Record:
    """The JSON Schema (draft 2020-12) of what is written of a type."""
    return kind.json_schema(mode="serialization", schema_generator=_AsWritten)


def record_schema() -> Record:
    """The JSON Schema of a unit's record."""
    schema = written_schema(_UNIT)
    definitions = schema["$defs"]
    stock = definitions["Stock"]
    del stock["properties"]["name"]
    stock["required"].remove("name")
    definitions["Blank"]["properties"]["stock"] = {
        "type": "string",
        "description": "The name of its stock.",
    }
    schema["properties"]["stocks"] = {
        "type": "object",
        "description": "The stocks that parts are cut from, by name.",
        "additionalProperties": {"$ref": "#/$defs/Stock"},
    }
    schema["required"].append("stocks")
    return schema
