"""The spec language's JSON Schema, and a way to walk through it beside the data."""

from __future__ import annotations

import ast
import inspect
import textwrap
from collections import deque
from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import pairwise
from typing import Any, get_args

from pydantic import BaseModel

from rodwright.wishes.fields import DEFAULT_IN

Schema = dict[str, Any]
"""A JSON Schema object."""

_DIALECT = "https://json-schema.org/draft/2020-12/schema"


@lru_cache
def _generated(model: type[BaseModel]) -> Schema:
    schema = model.model_json_schema()
    for title, part in {model.__name__: schema, **schema.get("$defs", {})}.items():
        descriptions = _descriptions(title, model)
        for key, value in part.get("properties", {}).items():
            if key in descriptions:
                value.setdefault("description", descriptions[key])
    return schema


def _descriptions(name: str, top: type[BaseModel]) -> dict[str, str]:
    """What stands in quotes under the fields of a model and its bases, by key.

    Read from the source only when a schema is asked for: pydantic's own way would parse it
    at every start.
    """
    found: dict[str, str] = {}
    known = _models(top)
    for model in reversed(known[name].__mro__) if name in known else ():
        if issubclass(model, BaseModel) and model is not BaseModel:
            keys = {name: field.alias or name for name, field in model.model_fields.items()}
            found |= {keys.get(name, name): text for name, text in _quoted(model).items()}
    return found


@lru_cache
def _models(top: type[BaseModel]) -> dict[str, type[BaseModel]]:
    """Every model that a model is made of, by name."""
    found = {top.__name__: top}
    waiting: list[Any] = [field.annotation for field in top.model_fields.values()]
    while waiting:
        kind = waiting.pop()
        waiting += get_args(kind)
        if isinstance(kind, type) and issubclass(kind, BaseModel) and kind.__name__ not in found:
            found[kind.__name__] = kind
            waiting += [field.annotation for field in kind.model_fields.values()]
    return found


@lru_cache
def _quoted(model: type) -> dict[str, str]:
    (tree,) = ast.parse(textwrap.dedent(inspect.getsource(model))).body
    assert isinstance(tree, ast.ClassDef)
    return {
        field.target.id: inspect.cleandoc(text.value.value)
        for field, text in pairwise(tree.body)
        if isinstance(field, ast.AnnAssign)
        and isinstance(field.target, ast.Name)
        and isinstance(text, ast.Expr)
        and isinstance(text.value, ast.Constant)
        and isinstance(text.value.value, str)
    }


def json_schema(model: type[BaseModel]) -> Schema:
    """The model's JSON Schema (draft 2020-12), for editors that check and complete a spec.

    Keys come in the order in which the model has them, so that the same model gives the
    same text.
    """
    schema = _with_units(_generated(model))
    title = (model.__doc__ or model.__name__).strip().splitlines()[0].rstrip(".")
    return {"$schema": _DIALECT, "title": title} | {
        key: value for key, value in schema.items() if key != "title"
    }


def _with_units(node: Any) -> Any:
    """A schema whose defaults of lengths name their unit: a bare number would mean inches in a
    file in inches.  Those of such a file are told in the description."""
    if isinstance(node, list):
        return [_with_units(each) for each in node]
    if not isinstance(node, dict):
        return node
    changed = {key: _with_units(value) for key, value in node.items() if key != DEFAULT_IN}
    default = node.get("default")
    if isinstance(default, int | float) and _is_length(node):
        changed["default"] = f"{default:g} mm"
    inches = node.get(DEFAULT_IN)
    if inches is not None:
        said = ", ".join(inches) if isinstance(inches, list) else inches
        also = f"In a file in inches {said} in unless said."
        changed["description"] = f"{node.get('description', '')}  {also}".strip()
    return changed


class Shape:
    """One place in a schema: what may stand there.

    ``variants`` are the ways it can be written, references resolved, null left out.
    """

    def __init__(self, schema: Schema, definitions: dict[str, Schema]) -> None:
        self.schema = schema
        self._definitions = definitions
        self.variants: tuple[Schema, ...] = tuple(self._spread(schema))

    @classmethod
    def of(cls, model: type[BaseModel]) -> Shape:
        """The shape of a whole file."""
        schema = _generated(model)
        return cls(schema, schema.get("$defs", {}))

    @property
    def description(self) -> str:
        """What the place is for, in one line; empty if the model doesn't say."""
        text = self.schema.get("description") or next(
            (each["description"] for each in self.variants if "description" in each), ""
        )
        return " ".join(str(text).split())

    @property
    def is_length(self) -> bool:
        """True where a length is wanted, whatever else may stand there."""
        return any(_is_length(each) for each in self.variants)

    def groups(self, data: object = None) -> list[Schema]:
        """The variants with keys of their own; only the one that ``data`` names, if it does."""
        groups = [each for each in self.variants if "properties" in each]
        name = self.discriminator
        if name is not None and isinstance(data, dict):
            named = [
                each for each in groups if data.get(name) in _choices(each["properties"][name])
            ]
            return named or groups
        return groups

    @property
    def discriminator(self) -> str | None:
        """The key that says which of several groups of keys is meant."""
        # Where the groups may be left out, they are one of two choices.
        for each in (self.schema, *self.schema.get("anyOf", ())):
            if isinstance(found := each.get("discriminator"), dict):
                return str(found["propertyName"])
        return None

    def choices(self) -> list[str]:
        """The words to choose from here, or in the key that tells groups of keys apart."""
        name = self.discriminator
        fields = [each["properties"][name] for each in self.groups()] if name else self.variants
        return [str(value) for field in fields for value in _choices(field)]

    def key_names(self, data: object = None) -> list[str]:
        """The keys that may be written here, in the model's order."""
        return list(dict.fromkeys(key for each in self.groups(data) for key in each["properties"]))

    def required(self, data: object = None) -> set[str]:
        """The keys that have to be written here."""
        return {key for each in self.groups(data) for key in each.get("required", ())}

    def at(self, step: str | int, data: object = None) -> Shape | None:
        """The shape of a key or a list item; None where the schema doesn't know it."""
        if isinstance(step, int):
            found = [each["items"] for each in self.variants if isinstance(each.get("items"), dict)]
        else:
            found = [
                each["properties"][step] for each in self.groups(data) if step in each["properties"]
            ] or [
                each["additionalProperties"]
                for each in self.variants
                if isinstance(each.get("additionalProperties"), dict)
            ]
        return Shape(found[0], self._definitions) if found else None

    def key(self, name: str) -> Shape:
        """The shape of one of ``key_names()``."""
        found = self.at(name)
        if found is None:
            raise KeyError(name)
        return found

    def takes(self, group: str | None = None) -> str:
        """What may be written here, in words; ``group`` are the words for a group of keys."""
        choices = [f"`{choice}`" for choice in self.choices()]
        if self.discriminator:
            return group or f"keys, among them `{self.discriminator}` with {either(choices)}"
        ordered = sorted(self.variants, key=lambda each: "properties" in each)
        others = [self._words(each, group) for each in ordered if not _choices(each)]
        words = list(dict.fromkeys(choices + others))
        for each in words:
            rest = [other for other in words if other is not each]
            if each == f"a list, each with {either(rest)}":
                return either([*rest, "a list of such"])
        return either(words)

    def _words(self, schema: Schema, group: str | None) -> str:
        if _is_length(schema):
            return " or ".join(f"a {word}" for word in schema["title"].split(" or "))
        kind, title = str(schema.get("type")), str(schema.get("title", ""))
        if title.startswith("a "):  # the field type says it in words
            return title
        for key, words in (("items", "a list"), ("additionalProperties", "names of your choice")):
            if isinstance(schema.get(key), dict):
                inner = Shape(schema[key], self._definitions).takes(group)
                return (
                    f"{words}, each with {inner}" if "keys" in inner else f"{words}, each {inner}"
                )
        if "properties" in schema:
            return group or "the keys " + both([f"`{key}`" for key in schema["properties"]])
        return _PLAIN.get(kind, "a value")

    def _spread(self, schema: Schema) -> Iterator[Schema]:
        while "$ref" in schema:
            schema = self._definitions[schema["$ref"].rpartition("/")[2]]
        inner = schema.get("anyOf") or schema.get("oneOf")
        if inner is not None and not _is_length(schema):
            for each in inner:
                yield from self._spread(each)
        elif schema.get("type") != "null":
            yield schema


_PLAIN = {
    "string": "text",
    "integer": "a whole number",
    "number": "a number",
    "boolean": "`true` or `false`",
    "object": "names of your choice",
    "array": "a list",
}


@lru_cache
def key_homes(model: type[BaseModel]) -> dict[str, tuple[str, ...]]:
    """For each key of a file the groups of keys that it may stand in, by their shortest way from
    the top; groups in lists and under names of one's choice have no such way."""
    homes: dict[str, dict[str, None]] = {}
    seen: set[int] = set()
    waiting = deque([(Shape.of(model), "")])
    while waiting:
        shape, way = waiting.popleft()
        fresh = [group for group in shape.groups() if id(group) not in seen]
        seen |= {id(group) for group in fresh}
        for group in fresh:
            for key in group["properties"]:
                homes.setdefault(key, {})[way] = None
        if fresh:
            waiting += [
                (shape.key(key), f"{way}.{key}" if way else key) for key in shape.key_names()
            ]
    return {key: tuple(ways) for key, ways in homes.items()}


def either(words: Sequence[str]) -> str:
    """Words as a list that ends in "or"."""
    return _joined(words, "or")


def both(words: Sequence[str]) -> str:
    """Words as a list that ends in "and"."""
    return _joined(words, "and")


def _joined(words: Sequence[str], last: str) -> str:
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} {last} {words[-1]}"


def _is_length(schema: Schema) -> bool:
    """Lengths are told by the title that their field type gives them."""
    return "anyOf" in schema and str(schema.get("title", "")).startswith("length")


def _choices(schema: Schema) -> list[object]:
    if "const" in schema:
        return [schema["const"]]
    return list(schema.get("enum", ()))
