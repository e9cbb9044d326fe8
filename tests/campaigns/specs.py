"""Hostile specs: ready models with accidents in them, odd values, and specs drawn from the schema.

Every case is drawn from its own generator, so that one can be made again by itself.
"""

from __future__ import annotations

import copy
import json
import random
from collections.abc import Callable, Iterator
from functools import cache
from typing import Any

from ruamel.yaml import YAML

from rodwright.jobs.new import models_folder
from rodwright.wishes import spec_schema

Draw = random.Random
Data = Any
Place = tuple[Any, Any]
"""A mapping or list, and a key or index in it."""

SMALL = """\
title: Niche shelf
size: {width: 800, height: 900, depth: 250}
stock:
  case: {kind: sheet, material: birch plywood, thickness: 18}
  thin: {kind: sheet, material: mdf, thickness: 6}
  oak: {kind: board, material: oak, thickness: 22}
carcass: {stock: case, corners: housed}
interior: {shelves: {count: 2}}
"""
TOKENS = [
    *"[]{}:,&*!|>'\"%@`#-?~<=\t\n \\/09.+_aéx\x85\u2028\x00\x07\x1b\ufeff\u202e",
    *("<<: ", "*a", "&a ", "!!int ", "!x ", "---\n", "...\n", "%YAML 1.1\n", "? ", "- ", " |\n"),
    *("9" * 50, "1e400", "1e-9", "0x1F", ".inf", "null", "no", "2024-01-01", "'3/4 in'", "99999"),
    *("title: ", "width: ", "unit: in\n", "kind: board", "shelves: {count: 200}", "\n  ", "[[["),
]
SENSIBLE = [
    *(0, 1, 2, 3, 5, 9, 12, 18, 20, 22, 30, 37, 40, 60, 99, 110, 150, 200, 300, 450, 600, 900),
    *(1000, 1500, 2400, 0.4, 0.75, 1.5, 17.999, 18.001, 25.4),
]
ODD = [
    *(-1, 6000, 20_000, 99_999, 999_999, 10**6, 10**7, 10**12, 2**63, 10**30),
    *(1e-9, 1e-3, 0.02, 0.1, 1e15, 1e-300, 1e300),
]
TEXTS = [
    *("1 share", "2 shares", "0.001 shares", "1e9 shares", "3/4 in", "3/4", "1.2 m", "6 ft 3 in"),
    *("0 mm", "-5", "1/0", "99999999999/7 in", "9" * 70, "", " ", "x" * 300, "true", "none"),
    *(
        "=1+1",
        " =1+1",
        "\x1b[31mred\x1b[0m",
        "[bold]b[/bold]",
        ":smile:",
        "a\u202eb",
        "Ж",
        "\ud83d\ude00",
    ),
    *("../../etc/passwd", "/dev/zero", "a/b", "con", "ply", "case", "thin", "oak", "ash", "mdf"),
]


@cache
def models() -> tuple[tuple[str, Data], ...]:
    """Text and data of each ready model, the small ones over and over: they are soon read."""
    reader = YAML(typ="safe", pure=True)
    texts = [path.read_text(encoding="utf-8") for path in sorted(models_folder().glob("*.yaml"))]
    texts.append(SMALL)
    return tuple(
        (text, reader.load(text)) for text in texts for _ in range(max(1, 6 - len(text) // 350))
    )


@cache
def schema() -> dict[str, Any]:
    """The spec language's JSON Schema."""
    return spec_schema()


def any_text(draw: Draw) -> str:
    """Bits of YAML in any order."""
    return "".join(draw.choices(TOKENS, k=draw.randint(0, 40)))


def accident(draw: Draw) -> str:
    """A model's text, or some lines of it, with a few accidents."""
    lines = draw.choice(models())[0].splitlines(keepends=True)
    if draw.random() < 0.3:
        start = draw.randrange(len(lines))
        lines = lines[start : start + draw.randint(1, 14)]
    for _ in range(draw.randint(1, 4)):
        if not lines:
            break
        at = draw.randrange(len(lines))
        line = lines[at]
        column = draw.randint(0, len(line))
        kind = draw.choice(("lose", "move", "insert", "cut", "double", "figure"))
        if kind == "lose":
            del lines[at]
        elif kind == "move":
            lines.insert(draw.randint(0, len(lines)), lines.pop(at))
        elif kind == "insert":
            lines[at] = line[:column] + draw.choice(TOKENS) + line[column:]
        elif kind == "cut":
            lines[at] = line[:column] + line[column + draw.randint(1, 8) :]
        elif kind == "double":
            lines.insert(at, line)
        else:
            digits = [place for place, letter in enumerate(line) if letter.isdigit()]
            if digits:
                place = draw.choice(digits)
                lines[at] = line[:place] + str(_number(draw)) + line[place + 1 :]
    return "".join(lines)


def odd_values(draw: Draw) -> str:
    """A model with a few of its values changed, taken out, moved or repeated."""
    data = _thinned(draw)
    for _ in range(draw.choice((1, 1, 1, 2, 2, 3, 5))):
        _change(draw, data)
    return _written(draw, data)


def wrong_scale(draw: Draw) -> str:
    """A model in another unit than it says, or with some of its figures much too large or small."""
    data = _thinned(draw)
    factor = draw.choice((1 / 25.4, 25.4, 10, 0.1, 100, 0.01, 1000, 1e-6, 1e6))
    if draw.random() < 0.4:
        data["unit"] = draw.choice(("in", "mm"))
    if draw.random() < 0.6:
        share = draw.choice((0.2, 0.6, 1.0))
        for holder, key in list(_leaves(data)):
            value = holder[key]
            number = isinstance(value, int | float) and not isinstance(value, bool)
            if number and draw.random() < share and value * factor < 1e300:
                holder[key] = type(value)(value * factor)
    return _written(draw, data)


def many(draw: Draw) -> str:
    """A model with something in it far too often."""
    data = _thinned(draw)
    spaces = [place for place in _groups(data) if place[1] in ("columns", "rows", "shelves")]
    count = draw.choice((3, 10, 50, 150, 400, 1000))
    if not spaces or draw.random() < 0.3:
        size = "width" if draw.random() < 0.5 else "height"
        inner = draw.choice(
            (
                {},
                {"shelves": {"count": draw.choice((1, 20, 200)), "fixed": draw.random() < 0.5}},
                {"drawers": {"count": draw.choice((1, 5, 50)), "bottom": {"stock": "thin"}}},
            )
        )
        key = "columns" if size == "width" else "rows"
        data["interior"] = {key: [{size: "1 share"} | inner for _ in range(count)]}
    else:
        holder, key = draw.choice(spaces)
        if isinstance(holder[key], list):
            holder[key] = holder[key] * max(1, count // 4)
        else:
            holder[key] = {
                "count": draw.choice((40, 120, 200)),
                "fixed": False,
                "holes": {"pitch": draw.choice((5, 8, 32, 0.01))},
            }
    if draw.random() < 0.5 and isinstance(data.get("size"), dict):
        data["size"]["width"] = draw.choice((5000, 14_000, 100_000))
        data["size"]["height"] = draw.choice((2000, 5000, 100_000))
    if draw.random() < 0.3:
        data["base"] = {"kind": "plinth", "height": 100, "spacing": draw.choice((20, 1, 1e-3))}
    return json.dumps(data)


def from_schema(draw: Draw) -> str:
    """A spec drawn from the JSON Schema, with lengths that a maker might write."""
    stock = {
        "case": {
            "kind": "sheet",
            "material": "birch plywood",
            "thickness": draw.choice((12, 18, 25)),
        },
        "thin": {"kind": "sheet", "material": "mdf", "thickness": draw.choice((4, 6, 9))},
        "oak": {"kind": "board", "material": "oak", "thickness": draw.choice((20, 22, 32))},
    }
    data: dict[str, Any] = {
        "title": "Drawn",
        "size": {
            "width": draw.randint(300, 2400),
            "height": draw.randint(300, 2400),
            "depth": draw.randint(120, 700),
        },
        "stock": stock,
        "carcass": {"stock": "case"},
    }
    rest = [
        key
        for key in schema()["properties"]
        if key not in ("title", "unit", "stock", "size", "date")
    ]
    for key in draw.sample(rest, draw.randint(1, 4)):
        data[key] = _drawn(draw, schema()["properties"][key], 0, key)
    if isinstance(data["carcass"], dict):
        data["carcass"].setdefault("stock", "case")
    if draw.random() < 0.2:
        _change(draw, data)
    return _written(draw, data)


KINDS: dict[str, tuple[float, Callable[[Draw], str]]] = {
    "bits of YAML": (0.06, any_text),
    "accidents in the text": (0.26, accident),
    "odd values": (0.32, odd_values),
    "wrong scale": (0.10, wrong_scale),
    "far too many": (0.02, many),
    "drawn from the schema": (0.24, from_schema),
}
"""Each kind of spec, with its share of the campaign."""


def case(seed: int, number: int) -> tuple[str, str, str]:
    """Kind, verb and text of one case."""
    draw = Draw(f"{seed}:{number}")
    kind = draw.choices(list(KINDS), [share for share, _ in KINDS.values()])[0]
    verb = draw.choices(("check", "parts", "survey", "way-in"), (88, 6, 4, 2))[0]
    text = KINDS[kind][1](draw)
    return kind, verb, text.encode("utf-8", "replace").decode()


def _thinned(draw: Draw) -> Data:
    """A copy of a model's data, with a few of its groups left out and long lists cut short."""
    data = copy.deepcopy(draw.choice(models())[1])
    for key in list(data):
        if key not in ("title", "size", "opening", "stock", "carcass") and draw.random() < 0.3:
            del data[key]
    for holder, key in list(_groups(data)):
        if isinstance(holder[key], list) and len(holder[key]) > 3 and draw.random() < 0.8:
            holder[key] = holder[key][:3]
    return data


def _written(draw: Draw, data: Data) -> str:
    return json.dumps(data, indent=draw.choice((None, 1)), ensure_ascii=draw.random() < 0.5)


def _places(data: Data) -> Iterator[Place]:
    items = data.items() if isinstance(data, dict) else enumerate(data)
    for key, value in list(items):
        yield data, key
        if isinstance(value, dict | list):
            yield from _places(value)


def _leaves(data: Data) -> Iterator[Place]:
    return ((on, key) for on, key in _places(data) if not isinstance(on[key], dict | list))


def _groups(data: Data) -> Iterator[Place]:
    return ((on, key) for on, key in _places(data) if isinstance(on[key], dict | list))


def _change(draw: Draw, data: Data) -> None:
    places = list(_places(data))
    if not places:
        return
    holder, key = draw.choice(places)
    kind = draw.choices(
        ("number", "near", "text", "other", "drop", "repeat", "key", "add", "elsewhere"),
        (30, 14, 12, 6, 8, 4, 4, 16, 6),
    )[0]
    if kind in ("number", "near", "text"):
        holder, key = draw.choice(list(_leaves(data)) or places)
    if kind in ("number", "near") and draw.random() < 0.9:
        figures = [place for place in _leaves(data) if type(place[0][place[1]]) in (int, float)]
        holder, key = draw.choice(figures or places)
    value = holder[key]
    if kind == "number":
        holder[key] = _number(draw)
    elif kind == "near" and isinstance(value, int | float) and not isinstance(value, bool):
        holder[key] = round(value * draw.choice((0.02, 0.1, 0.5, 0.9, 1.1, 2, 10)), 3)
    elif kind == "text":
        holder[key] = draw.choice(TEXTS)
    elif kind == "other":
        holder[key] = draw.choice((None, True, [], {}, [1], {"a": 1}, [[]], "housed"))
    elif kind == "drop" and isinstance(holder, dict):
        del holder[key]
    elif kind == "repeat" and isinstance(value, list):
        holder[key] = value * draw.choice((2, 3, 10))
    elif kind == "key" and isinstance(holder, dict):
        holder[draw.choice((*TEXTS, str(key)[:-1], str(key).title()))] = holder.pop(key)
    elif kind == "add":
        name = draw.choice(list(schema()["properties"]))
        if name not in ("title", "stock", "date"):
            data[name] = _drawn(draw, schema()["properties"][name], 0, name)
    elif kind == "elsewhere":
        there, other = draw.choice(places)
        holder[key] = copy.deepcopy(there[other])


def _drawn(draw: Draw, shape: dict[str, Any], depth: int, name: str) -> Data:
    """A value that the schema (nearly) takes."""
    if "$ref" in shape:
        shape = schema()["$defs"][shape["$ref"].rsplit("/", 1)[1]]
    if "const" in shape:
        return shape["const"]
    if "enum" in shape:
        return draw.choice(shape["enum"])
    for key in ("anyOf", "oneOf", "allOf"):
        if key in shape:
            if "length" in str(shape.get("title", "")):
                return _length(draw, str(shape["title"]))
            kinds = [each for each in shape[key] if each.get("type") != "null"]
            return _drawn(draw, draw.choice(kinds), depth, name)
    if "length" in str(shape.get("title", "")):
        return _length(draw, str(shape["title"]))
    kind = shape.get("type")
    if kind == "object":
        fields = shape.get("properties", {})
        needed = shape.get("required", [])
        optional = [key for key in fields if key not in needed]
        most = min(len(optional), 3 if depth < 4 else 0)
        chosen = [*needed, *draw.sample(optional, draw.randint(0, most))]
        return {key: _drawn(draw, fields[key], depth + 1, key) for key in chosen}
    if kind == "array":
        few = range(max(shape.get("minItems", 1), draw.choice((1, 2, 2, 3))))
        items = shape.get("items") or next(iter(shape.get("prefixItems", [{}])))
        if depth > 4:
            return [] if not shape.get("minItems") else [{}] * shape["minItems"]
        return [_drawn(draw, items, depth + 1, name) for _ in few]
    if kind in ("integer", "number"):
        low = shape.get("minimum", shape.get("exclusiveMinimum", 0))
        high = min(shape.get("maximum", shape.get("exclusiveMaximum", 3000)), low + 12)
        return draw.randint(int(low), max(int(low), int(high)))
    if kind == "boolean":
        return draw.random() < 0.5
    return (
        draw.choice(("case", "thin", "oak"))
        if "stock" in name
        else draw.choice([*TEXTS[:1], "oak", "Knob"])
    )


def _number(draw: Draw) -> int | float:
    return draw.choice(SENSIBLE if draw.random() < 0.75 else ODD)


def _length(draw: Draw, title: str) -> Data:
    if "share" in title and draw.random() < 0.6:
        return draw.choice(("1 share", "1 share", "2 shares"))
    kind = draw.random()
    if kind < 0.03:
        return draw.choice(ODD)
    if kind < 0.06:
        return f"{draw.randint(1, 80)} {draw.randint(1, 15)}/16 in"
    return draw.randint(*draw.choice(((1, 12), (2, 30), (5, 80), (20, 200), (100, 900))))
