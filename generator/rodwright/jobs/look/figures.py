"""The figures of a spec that makers try: which there are, what they are called, how far they go."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from rodwright.jobs.look.spans import span_of
from rodwright.lengths import LengthUnit, format_length
from rodwright.page import document as page
from rodwright.problems import KeyPath
from rodwright.wishes import SpecFile, UnitSpec
from rodwright.wishes.reading.documents import Data
from rodwright.wishes.reading.editing import value_at
from rodwright.wishes.reading.schema import Shape

_TRIED = (
    *("size", "interior", "base", "carcass", "face_frame", "back", "lipping", "edging"),
    *("worktop", "cornice", "scribes", "fit", "stock"),
)
"""Where figures are that a maker chooses, what is tried most first.  What was measured (the
opening, the way in) isn't."""
_LEFT_OUT = frozenset({"load", "top_load", "packers", "pieces", "sold", "size", "trim", "bad_ends"})
"""Keys below which nothing is for the design to choose: what there is, what it carries."""
_OF_STOCK = frozenset({"thickness"})
_UNSAID: dict[str, tuple[str, ...]] = {
    "fit": ("sides", "top", "back"),
    "shelves": ("layers", "setback"),
    "doors": ("gap",),
    "drawers": ("gap",),
    "base": ("toe_space",),
    "face_frame": ("eased", "setback"),
}
"""Keys that are offered where they aren't written, by the key of the group they go into."""
_WORDS = {
    "at": "underside",
    "near": "places up and down",
    "between": "between rows",
    "eased": "rounded by",
    "fronts": "front",
    "mid_rails": "width of rails between",
    "mid_stiles": "width of stiles between",
    "openings": "opening",
    "size": "overall",
    "fit": "gaps to the opening",
    "handle": "handles",
    "hinge": "hinges",
}
_ITEMS = {"columns": "column", "rows": "row"}
_ESCAPES = (("~", "~0"), ("/", "~1"))
"""As in a JSON Pointer (RFC 6901, section 3)."""


@dataclass(frozen=True, slots=True)
class Figure:
    """A length, share or count of a spec: its place, what stands there or is wished unless said,
    and the least and most that it may be (of counts; else None)."""

    path: KeyPath
    value: int | float | str
    written: bool
    count: bool
    least: int | None = None
    most: int | None = None


def figures_of(spec: SpecFile) -> tuple[Figure, ...]:
    """The figures that may be changed; those that are only wished by default after those beside
    which they would be written."""
    top = Shape.of(UnitSpec)
    found: list[Figure] = []
    for root in _TRIED:
        if root in spec.data:
            found += _figures(spec, top.key(root), (root,))
        elif root == "fit" and "opening" in spec.data:
            found += _unsaid(spec, top.key(root), (root,), {})
    return tuple(found)


def _figures(spec: SpecFile, shape: Shape, path: KeyPath) -> Iterator[Figure]:
    data = value_at(spec.data, path)
    match data:
        case dict() | list():
            steps = list(data) if isinstance(data, dict) else list(range(len(data)))
            for step in steps:
                inner = shape.at(step, data)
                if inner is not None and not _left_out((*path, step)):
                    yield from _figures(spec, inner, (*path, step))
            if isinstance(data, dict):
                yield from _unsaid(spec, shape, path, data)
        case bool() | None:
            return
        case _:
            yield from _figure(shape, path, data, written=True)


def _left_out(path: KeyPath) -> bool:
    if path[0] == "stock" and len(path) == 3:
        return path[-1] not in _OF_STOCK
    return len(path) > 1 and path[0] != "stock" and path[-1] in _LEFT_OUT


def _figure(shape: Shape, path: KeyPath, value: float | str, *, written: bool) -> Iterator[Figure]:
    whole = [each for each in shape.variants if each.get("type") == "integer"]
    if shape.is_length:
        yield Figure(path, value, written, count=False)
    elif whole and isinstance(value, int):
        among = whole[0].get("enum")
        least = min(among) if among else whole[0].get("minimum", 0)
        most = max(among) if among else whole[0].get("maximum")
        yield Figure(path, value, written, count=True, least=least, most=most)


def _unsaid(
    spec: SpecFile, shape: Shape, path: KeyPath, data: Mapping[str, Data]
) -> Iterator[Figure]:
    """Figures of a group that are wished by default, and that makers try."""
    for key in _UNSAID.get(str(path[-1]), ()):
        inner = shape.at(key, data)
        if key in data or inner is None or (key == "gap" and not data):
            continue
        wished = _wished(spec.spec, (*path, key))
        if isinstance(wished, float):
            yield from _figure(inner, (*path, key), _bare(wished, spec.spec.unit), written=False)
        elif isinstance(wished, int):
            yield from _figure(inner, (*path, key), wished, written=False)


def _wished(spec: object, path: KeyPath) -> object:
    for step in path:
        if isinstance(spec, tuple) and isinstance(step, int):
            spec = spec[step]
        else:
            spec = getattr(spec, str(step), None)
    return spec


def _bare(mm: float, unit: LengthUnit) -> int | float | str:
    """A length as it is written bare in a file in ``unit``."""
    text = format_length(mm, unit)
    return text if unit == "in" and "/" in text else _number(float(text))


def _number(value: float) -> int | float:
    return int(value) if value == int(value) else value


def told_once(spec: SpecFile) -> tuple[tuple[Figure, ...], ...]:
    """The figures of a spec, those that are one in the file (``&name``) together."""
    told: dict[tuple[int | str, ...], list[Figure]] = {}
    for figure in figures_of(spec):
        told.setdefault(_node_of(spec, figure), []).append(figure)
    return tuple(map(tuple, told.values()))


def nudges_of(spec: SpecFile) -> tuple[page.Nudge, ...]:
    """The figures of a spec as a page shows them; what has a name in the file is told once."""
    return tuple(_nudge(spec, same) for same in told_once(spec))


def _other(group: str, label: str, own: str) -> str:
    """Another figure in a sentence, by its label too if that isn't the one's ``own``."""
    of = group[:1].lower() + group[1:]
    return of if label == own else f"{of}: {label}"


def _node_of(spec: SpecFile, figure: Figure) -> tuple[int | str, ...]:
    """What is the same for figures that are one in the file: where it, or the first thing beside
    which it would be written, stands."""
    if figure.written:
        return spec.places.values[figure.path]
    group, key = figure.path[:-1], str(figure.path[-1])
    beside = value_at(spec.data, group)
    first = next(iter(beside)) if isinstance(beside, dict) and beside else None
    return (*spec.places.of_key(group if first is None else (*group, first)), key)


def _nudge(spec: SpecFile, same: tuple[Figure, ...]) -> page.Nudge:
    figure = same[0]
    group, label = _names(figure.path)
    span = span_of(
        figure.value,
        spec.spec.unit,
        figure.least,
        figure.most,
        count=figure.count,
        alone=all(_is_alone(spec, each.path) for each in same),
    )
    others = [_names(each.path) for each in same[1:]]
    return page.Nudge(
        key=key_of(figure),
        group=group,
        label=label,
        value=_written(figure.value),
        unit=span.unit,
        number=span.number,
        least=span.least,
        most=span.most,
        step=span.step,
        line=spec.places.of_value(figure.path).line,
        also=tuple(_other(of, called, label) for of, called in others),
        written=figure.written,
        feet=span.feet,
    )


def _is_alone(spec: SpecFile, path: KeyPath) -> bool:
    """Whether what divides a space with the figure at a path are lengths alone."""
    at = max((number for number, step in enumerate(path) if isinstance(step, int)), default=None)
    if at is None:
        return True
    beside = value_at(spec.data, path[:at])
    others = range(len(beside)) if isinstance(beside, list) else ()
    values = (
        value_at(spec.data, (*path[:at], other, *path[at + 1 :]))
        for other in others
        if other != path[at]
    )
    return not any(isinstance(each, str) and "share" in each for each in values)


def _written(value: float | str) -> str:
    return (
        value.strip()
        if isinstance(value, str)
        else f"{value:g}"
        if value == int(value)
        else repr(value)
    )


def _names(path: KeyPath) -> tuple[str, str]:
    """What a figure is of, and what it is called there."""
    steps = list(path)
    if steps[0] == "stock":
        return f"Stock {steps[1]}", _word(str(steps[2]))
    group: list[str] = []
    if steps[0] == "interior":
        steps = steps[1:]
        while len(steps) > 1 and isinstance(steps[1], int) and steps[0] in _ITEMS:
            group.append(f"{_ITEMS[str(steps[0])]} {steps[1] + 1}")
            steps = steps[2:]
        group = group or ["inside"]
    else:
        group, steps = [_word(str(steps[0]))], steps[1:]
    words = [each + 1 if isinstance(each, int) else _word(each) for each in steps]
    if len(words) > 1 and steps[-1] == "count":
        words.pop()
    label = ", ".join(str(each) for each in words)
    # A list's item is told as "opening 2".
    label = re.sub(r", (\d+)", r" \1", label)
    named = ", ".join(group)
    return named[:1].upper() + named[1:], label or named


def _word(key: str) -> str:
    return _WORDS.get(key, key.replace("_", " "))


def key_of(figure: Figure) -> str:
    """What a page names a figure by: its path as text."""
    steps = []
    for step in map(str, figure.path):
        for plain, escaped in _ESCAPES:
            step = step.replace(plain, escaped)
        steps.append(step)
    return "/".join(steps)


def figure_at(spec: SpecFile, key: str) -> Figure | None:
    """The figure that a nudge's key names; None where a spec has no such."""
    return next((each for each in figures_of(spec) if key_of(each) == key), None)
