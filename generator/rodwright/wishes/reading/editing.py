"""One value of a spec's text written anew in its place, and nothing else of it touched.

Comments, quotes, layout, line ends and anchors stay byte for byte.  An edit is read again before
it is given out: unless the data differ at that one place alone, there is none.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping
from typing import Any, cast

from ruamel.yaml.nodes import MappingNode, Node, ScalarNode, SequenceNode

from rodwright.problems import KeyPath, Problem, ProblemsError, printable
from rodwright.wishes.reading.documents import Data, composed, read_document
from rodwright.wishes.reading.places import Place

_PROPERTIES = re.compile(r"(?:(?:[&!]\S*|#.*)\s+)*")
"""Anchor and tag before a node's content, with the comments between them (YAML 1.2, 6.9)."""
_LONGEST = 200
"""Characters of one value; no figure has as many."""


def with_value(text: str, path: KeyPath, value: str, file: str) -> str:
    """The text of a spec with ``value``, as a maker writes it, at ``path``.

    What stands in quotes stays in quotes.  A value that has a name (``&name``) is written where it
    stands, and changes wherever it is used.  A key that isn't written yet is put into its mapping,
    or with the mappings it needs into the nearest one that is written.

    Raises:
        ProblemsError: the text can't be read, or the value can't be put there so that all else
            stays as it is.
    """
    before = read_document(text, file)
    root = composed(text, file)
    node = _at(root, path)
    if len(value) <= _LONGEST:
        if node is None:
            group, steps = _nearest(root, path)
            edits = _insertions(text, group, steps, value)
            paths = [(*way, *steps) for way in _ways_to(group, root)]
        else:
            edits, paths = _replacements(text, node, value), list(_ways_to(node, root))
        for edited in edits:
            if _is_that_alone(before.data, edited, paths, value, file):
                return edited
    raise ProblemsError([_unwritable(path, value, file, before.places.of_value(path))])


def ways_to_same(text: str, path: KeyPath, file: str) -> tuple[KeyPath, ...]:
    """Every way to the value at ``path``: several where it, or what it is in, has a name
    (``&name``) and is used again; none where it isn't written.

    Raises:
        ProblemsError: the text can't be read.
    """
    read_document(text, file)
    root = composed(text, file)
    node = _at(root, path)
    return () if node is None else tuple(_ways_to(node, root))


def value_at(data: Mapping[str, Data], path: KeyPath) -> Data:
    """What stands at a path in data that were read; None where there is nothing."""
    here: Any = data
    for step in path:
        if isinstance(here, Mapping):
            here = here.get(step)
        elif isinstance(here, list) and isinstance(step, int) and step < len(here):
            here = here[step]
        else:
            return None
    return cast("Data", here)


def _at(node: Node | None, path: KeyPath) -> Node | None:
    for step in path:
        if isinstance(node, MappingNode):
            node = next((held for key, held in node.value if key.value == step), None)
        elif isinstance(node, SequenceNode) and isinstance(step, int) and step < len(node.value):
            node = node.value[step]
        else:
            return None
    return node


def _ways_to(wanted: Node | None, node: Node | None, path: KeyPath = ()) -> Iterator[KeyPath]:
    if node is wanted:
        yield path
    elif isinstance(node, MappingNode):
        for key, held in node.value:
            yield from _ways_to(wanted, held, (*path, str(key.value)))
    elif isinstance(node, SequenceNode):
        for number, held in enumerate(node.value):
            yield from _ways_to(wanted, held, (*path, number))


def _replacements(text: str, node: Node, value: str) -> Iterator[str]:
    """Texts with another value in the place of a scalar, the likeliest first."""
    if not isinstance(node, ScalarNode) or node.style in ("|", ">"):
        return
    start, end = _content(text, node), node.end_mark.index
    quoted = json.dumps(value, ensure_ascii=False)
    match node.style:
        case "'":
            spellings = ["'" + value.replace("'", "''") + "'", quoted]
        case '"':
            spellings = [quoted]
        case _:
            spellings = [value, quoted]
    for spelling in spellings:
        yield text[:start] + spelling + text[end:]


def _content(text: str, node: Node) -> int:
    """Where a node's content starts, behind its anchor and tag."""
    found = _PROPERTIES.match(text, node.start_mark.index, node.end_mark.index)
    assert found is not None
    return found.end()


def _nearest(root: Node | None, path: KeyPath) -> tuple[Node | None, KeyPath]:
    """What is written nearest to a path, and the steps on from there."""
    held = len(path) - 1
    while held and _at(root, path[:held]) is None:
        held -= 1
    return _at(root, path[:held]), path[held:]


def _insertions(text: str, group: Node | None, steps: KeyPath, value: str) -> Iterator[str]:
    """Texts with a key more, and the mappings it needs, in a mapping; the tidiest first."""
    if not isinstance(group, MappingNode) or not all(isinstance(each, str) for each in steps):
        return
    for spelling in (value, json.dumps(value, ensure_ascii=False)):
        written = spelling
        for step in reversed(steps[1:]):
            written = f"{{{step}: {written}}}"
        entry = f"{steps[0]}: {written}"
        for place, insertion in (_in_flow if group.flow_style else _in_block)(text, group, entry):
            yield text[:place] + insertion + text[place:]


def _in_flow(text: str, group: MappingNode, entry: str) -> Iterator[tuple[int, str]]:
    first = _content(text, group) + 1
    if not group.value:
        yield first, entry
        return
    last = group.value[-1][1]
    yield last.end_mark.index, f", {entry}"
    yield first, f"{entry}, "


def _in_block(text: str, group: MappingNode, entry: str) -> Iterator[tuple[int, str]]:
    line_end = "\r\n" if "\r\n" in text else "\n"
    start = group.value[0][0].start_mark
    margin = " " * start.column
    for _, held in reversed(group.value):
        if isinstance(held, ScalarNode) or held.flow_style:
            found = re.compile(r"\r?\n|$").search(text, held.end_mark.index)
            assert found is not None
            yield found.start(), f"{line_end}{margin}{entry}"
    yield start.index, f"{entry}{line_end}{margin}"


def _is_that_alone(
    data: dict[str, Data], edited: str, paths: list[KeyPath], value: str, file: str
) -> bool:
    """Whether an edited text reads as these data but for the value at these paths."""
    try:
        after = read_document(edited, file)
    except ProblemsError:
        return False
    new = value_at(after.data, paths[0])
    if after.problems or not _says(new, value):
        return False
    expected: Any = data
    for path in paths:
        expected = data_with(expected, path, new)
    return bool(after.data == expected)


def _says(new: Data, value: str) -> bool:
    """Whether data are what a value says: its text, or the number that it is."""
    if isinstance(new, bool) or not isinstance(new, int | float):
        return new == value
    try:
        return float(value) == new
    except ValueError:
        return False


def data_with(data: Any, path: KeyPath, value: Data) -> Any:
    """Data with a value at a path, and those given as they were; mappings on the way are made where
    there are none."""
    if not path:
        return value
    step, rest = path[0], path[1:]
    if isinstance(data, list):
        return [
            data_with(each, rest, value) if at == step else each for at, each in enumerate(data)
        ]
    held = data if isinstance(data, dict) else {}
    return {**held, step: data_with(held.get(step), rest, value)}


def _unwritable(path: KeyPath, value: str, file: str, place: Place) -> Problem:
    shown = printable(value if len(value) <= _LONGEST else f"{value[:_LONGEST]}…")
    return Problem(
        f"`{shown}` can't be written here without changing something else of the file",
        "Write it in your editor.",
        path,
        file,
        *place,
    )
