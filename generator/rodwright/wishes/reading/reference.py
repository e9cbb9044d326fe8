"""The table of every key of the spec language, made from the models."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterator
from typing import Any

from pydantic import BaseModel

from rodwright.wishes.fields import DEFAULT_IN
from rodwright.wishes.reading.schema import Shape

_HEAD = "| Key | Takes | Default | Meaning |\n| --- | --- | --- | --- |\n"
_NAME = "NAME"
TABLE_STARTS = "<!-- spec keys: made from the models, not by hand -->"
TABLE_ENDS = "<!-- end of spec keys -->"
"""What stands around the table in a page that shows it."""


def reference_table(model: type[BaseModel]) -> str:
    """A Markdown table with a row for each key.

    A key is given with its way from the top: ``[]`` stands for any item of a list, ``NAME``
    for a name of the maker's choice.  Keys that may stand in several places have their rows
    in the first of the shallowest; elsewhere the table refers to it.
    """
    top = Shape.of(model)
    homes = _homes(top)
    rows = ("| " + " | ".join(row) + " |\n" for row in _rows(top, "", homes))
    return _HEAD + "".join(rows)


def _homes(top: Shape) -> dict[int, str]:
    """The path under which each group of keys has its rows, by the group's identity."""
    homes: dict[int, str] = {}
    waiting = deque([(top, "")])
    while waiting:
        shape, path = waiting.popleft()
        if any(id(group) not in homes for group in shape.groups()):
            for group in shape.groups():
                homes.setdefault(id(group), path)
            waiting += [
                _held(each, _joined(path, key))
                for key in shape.key_names()
                for each, _ in _shapes(shape, key)
            ]
    return homes


def _rows(shape: Shape, path: str, homes: dict[int, str]) -> Iterator[tuple[str, ...]]:
    for key in sorted(shape.key_names(), key=lambda key: key != shape.discriminator):
        way = _joined(path, key)
        group = "the keys below"
        inside: dict[tuple[str, ...], list[str]] = {}
        shapes = _shapes(shape, key)
        for each, choices in shapes:
            held, below = _held(each, way)
            home = next((homes[id(group)] for group in held.groups()), below)
            if home != below:
                group = f"the keys of `{home}`"
                continue
            for row in _rows(held, below, homes):
                inside.setdefault(row, []).extend(choices)
        for cells in _cells(shape, key, group):
            yield tuple(cell.replace("|", "\\|") for cell in (f"`{way}`", *cells))
        for row, choices in inside.items():
            of_all = len(choices) == sum(len(each) for _, each in shapes)
            yield row if of_all else (*row[:-1], _with(shape, choices, row[-1]))


def _shapes(shape: Shape, key: str) -> list[tuple[Shape, list[str]]]:
    """What may stand at a key: of groups that are told apart by a choice, once for each that has
    keys of its own there, with the choices that have these."""
    name = shape.discriminator
    if name is None or key == name:
        return [(shape.key(key), [])]
    found: dict[tuple[int, ...], tuple[Shape, list[str]]] = {}
    for choice in shape.choices():
        each = shape.at(key, {name: choice})
        if each is not None and key in shape.key_names({name: choice}):
            groups = tuple(id(group) for group in _held(each, "")[0].groups())
            found.setdefault(groups, (each, []))[1].append(choice)
    return list(found.values())


def _with(shape: Shape, choices: list[str], meaning: str) -> str:
    """A meaning that is so with some of a group's choices alone."""
    return f"With `{shape.discriminator}: {' or '.join(choices)}`. {meaning}"


def _cells(shape: Shape, key: str, group: str) -> Iterator[tuple[str, str, str]]:
    """What a key takes, its default and its meaning: once for all the choices for which they are
    the same, with these named where there are others."""
    name = shape.discriminator
    if key == name:
        choices = " or ".join(f"`{choice}`" for choice in shape.choices())
        yield choices, "required", "What the other keys are about."
        return
    owners: dict[tuple[str, str, str], list[str]] = {}
    for choice in shape.choices() if name else [""]:
        data = {name: choice} if name else None
        value = shape.at(key, data) if key in shape.key_names(data) else None
        if value is not None:
            default = "required" if key in shape.required(data) else _default(value)
            cells = (value.takes(group), default, value.description)
            owners.setdefault(cells, []).append(choice)
    for (takes, default, meaning), choices_with in owners.items():
        if name and len(choices_with) < len(shape.choices()):
            meaning = _with(shape, choices_with, meaning)
        yield takes, default, meaning


def _held(shape: Shape, path: str) -> tuple[Shape, str]:
    """The shape inside lists and names, and its path."""
    while not shape.groups():
        if (item := shape.at(0)) is not None:
            shape, path = item, f"{path}[]"
        elif (named := shape.at(_NAME)) is not None:
            shape, path = named, _joined(path, _NAME)
        else:
            break
    return shape, path


def _joined(path: str, key: str) -> str:
    return f"{path}.{key}" if path else key


def _default(shape: Shape) -> str:
    value, inches = shape.schema.get("default"), shape.schema.get(DEFAULT_IN)
    if inches is not None:
        return f"{_lengths(value, 'mm')}, or {_lengths(inches, 'in')}"
    if value is None or isinstance(value, dict) or value == []:
        return ""
    if isinstance(value, bool):
        return f"`{str(value).lower()}`"
    if isinstance(value, list):
        return f"`[{', '.join(str(item) for item in value)}]`"
    if isinstance(value, int | float):
        return f"{value:g} mm" if shape.is_length else f"{value:g}"
    return f"`{value}`"


def _lengths(values: Any, unit: str) -> str:
    """A length, or several, as a default is shown."""
    if isinstance(values, list):
        return f"`[{', '.join(map(_shown, values))}]` {unit}"
    return f"{_shown(values)} {unit}"


def _shown(value: float | str) -> str:
    return value if isinstance(value, str) else f"{value:g}"


def with_table(page: str, model: type[BaseModel]) -> str:
    """A Markdown page with the table between its two marks made anew.

    Raises:
        ValueError: the page lacks the marks.
    """
    before, start, rest = page.partition(TABLE_STARTS)
    _, end, after = rest.partition(TABLE_ENDS)
    if not start or not end:
        raise ValueError(f"the page has no `{TABLE_STARTS}` and `{TABLE_ENDS}`")
    return f"{before}{start}\n\n{reference_table(model)}\n{end}{after}"


if __name__ == "__main__":
    import sys
    from pathlib import Path

    from rodwright.wishes.models import UnitSpec
    from rodwright.wishes.rack import RackSpec
    from rodwright.wishes.rates import RatesSpec

    page, *of = sys.argv[1:]
    file = Path(page)
    models: dict[str, type[BaseModel]] = {"rack": RackSpec, "rates": RatesSpec}
    model = models.get("".join(of), UnitSpec)
    file.write_text(with_table(file.read_text(encoding="utf-8"), model), encoding="utf-8")
