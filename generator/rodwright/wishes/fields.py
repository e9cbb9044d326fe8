"""Field types of the spec language: lengths, shares and colours."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable
from dataclasses import dataclass
from typing import Annotated, Any, TypeVar

from pydantic import (
    AfterValidator,
    BaseModel,
    ConfigDict,
    Field,
    GetCoreSchemaHandler,
    ValidationInfo,
)
from pydantic_core import CoreSchema, PydanticCustomError, PydanticKnownError, core_schema

from rodwright.lengths import from_inches, parse_length


class InShort:
    """Takes one value for a group of keys of which that alone is written, and gives the group.

    ``kind`` is what that value may be, ``keys`` the key it stands for, or several that are alike.
    """

    def __init__(self, kind: Any, *keys: str) -> None:
        self._kind, self._keys = kind, keys

    def __get_pydantic_core_schema__(
        self, source: Any, handler: GetCoreSchemaHandler
    ) -> CoreSchema:
        def whole(value: Any) -> Any:
            if isinstance(value, source):
                return value
            return source.model_validate(dict.fromkeys(self._keys, value))

        return core_schema.no_info_after_validator_function(
            whole, handler.generate_schema(self._kind | source)
        )


class SpecModel(BaseModel):
    """Base of every spec model: immutable, and no key passes unread.

    What stands under a field in quotes is its description (see ``schema``).  Models are
    built when they are first used: most commands use one of them.
    """

    model_config = ConfigDict(frozen=True, extra="forbid", strict=True, defer_build=True)


DEFAULT_IN = "x-default-in"
"""In the JSON Schema, beside a default in mm: the default of a file in inches."""


def default(mm: float | tuple[float, ...], inches: str | tuple[str, ...]) -> Any:
    """The default of a length, or of a list of them: in mm, and round in a file in inches."""
    return Field(default=mm, json_schema_extra={DEFAULT_IN: inches})  # type: ignore[dict-item]


ModelT = TypeVar("ModelT", bound=SpecModel)


def in_inches(model: ModelT) -> ModelT:
    """The same wishes, with the defaults of a file in inches for all that wasn't said."""
    changes: dict[str, Any] = {}
    for name, field in type(model).model_fields.items():
        value = getattr(model, name)
        if name in model.model_fields_set:
            changes[name] = _inside(value)
        elif isinstance(extra := field.json_schema_extra, dict) and DEFAULT_IN in extra:
            changes[name] = _read_inches(extra[DEFAULT_IN])
        else:
            changes[name] = _inside(value)
    said = {type(model).model_fields[name].alias or name: changes[name] for name in changes}
    said |= {key: _inside(value) for key, value in (model.model_extra or {}).items()}
    return type(model).model_construct(model.model_fields_set, **said)


def _inside(value: Any) -> Any:
    if isinstance(value, SpecModel):
        return in_inches(value)
    if isinstance(value, tuple):
        return tuple(map(_inside, value))
    if isinstance(value, dict):
        return {key: _inside(each) for key, each in value.items()}
    return value


def _read_inches(inches: Any) -> Any:
    if isinstance(inches, str):
        return from_inches(inches)
    return tuple(map(from_inches, inches))


_FINEST = 0.01
"""Lengths finer than this (mm) are in no workshop."""


def _length(value: Any, info: ValidationInfo) -> Any:
    """Millimetres from a number in the file's unit or a string with its own."""
    context = info.context or {}
    if not isinstance(value, int | float | str):
        raise PydanticKnownError("float_type")
    try:
        length = parse_length(value, context.get("unit", "mm"))
    except ValueError as error:
        raise PydanticCustomError("length", "{reason}", {"reason": str(error)}) from None
    if 0 < length < _FINEST:
        raise PydanticCustomError(
            "length",
            "`{value}` is less than a hundredth of a millimetre",
            {"value": value, "remedy": "Check the figure, or write 0 if it may be left out."},
        )
    return length


_LENGTH_SCHEMA = {
    "anyOf": [{"type": "number", "minimum": 0}, {"type": "string", "pattern": r"^\s*[0-9¼-¾⅐-⅞.]"}]
}


class _ReadBy:
    """Reads a value with ``function``, then as ``inner`` says; ``title`` names it in schemas.

    One mark instead of pydantic's three, `BeforeValidator`, `Field` and `WithJsonSchema`: most
    keys are lengths, and going through the marks of each takes longer than reading a spec.
    """

    def __init__(
        self, function: Callable[[Any, ValidationInfo], Any], inner: CoreSchema, title: str
    ) -> None:
        self._function = function
        self._inner = inner
        self._title = title

    def __get_pydantic_core_schema__(self, *_: Any) -> CoreSchema:
        return core_schema.with_info_before_validator_function(self._function, self._inner)

    def __get_pydantic_json_schema__(self, *_: Any) -> dict[str, Any]:
        return _LENGTH_SCHEMA | {"title": self._title}


Length = Annotated[float, _ReadBy(_length, core_schema.float_schema(gt=0), "length")]
"""A length above zero, mm once read."""

Spacing = Annotated[float, _ReadBy(_length, core_schema.float_schema(ge=50), "length")]
"""A greatest distance between things that repeat; closer ones would be too many."""

LengthOrZero = Annotated[float, _ReadBy(_length, core_schema.float_schema(ge=0), "length")]
"""A length, zero allowed, mm once read."""


@dataclass(frozen=True, slots=True)
class Share:
    """A part of what is left once every given length is taken off."""

    count: float


_SHARE = re.compile(r"^\s*(\d+(?:\.\d+)?)\s+shares?\s*$")


def _length_or_share(value: Any, info: ValidationInfo) -> Any:
    if isinstance(value, str) and "share" in value:
        found = _SHARE.match(value)
        if found is None or float(found[1]) == 0:
            raise PydanticCustomError(
                "share",
                "`{value}` can't be read as a share",
                {"value": value, "remedy": "Write `1 share`, `2 shares` and so on."},
            )
        return Share(float(found[1]))
    length = _length(value, info)
    if not length > 0:
        raise PydanticCustomError(
            "length",
            "must be more than 0",
            {"remedy": "Write a length or a share of what is left."},
        )
    return length


LengthOrShare = Annotated[
    float | Share, _ReadBy(_length_or_share, core_schema.any_schema(), "length or share")
]
"""A length above zero, or `1 share`, `2 shares` ... of what is left."""


def _printable(text: str) -> str:
    if not text.strip() or any(unicodedata.category(letter).startswith("C") for letter in text):
        raise PydanticCustomError(
            "text",
            "it is empty or holds characters that can't be printed",
            {"remedy": "Write plain text on one line."},
        )
    return text


Text = Annotated[str, AfterValidator(_printable)]
"""Text on one line that can be printed."""

Colour = Annotated[str, Field(pattern=r"^#[0-9a-fA-F]{6}$")]
"""A colour as #rrggbb."""
