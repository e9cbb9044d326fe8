"""Changing a rack file and leaving everything else in it as its maker wrote it.

Only what changes is touched: figures where they stand, the lines of what is gone, new lines at the
end.  So comments, blank lines and layout stay.  A file laid out so that this can't be done (all in
one line, say) is written anew by ruamel.yaml, which keeps comments as well.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from io import StringIO
from typing import Any, Protocol

from ruamel.yaml import YAML
from ruamel.yaml.comments import CommentedMap, CommentedSeq
from ruamel.yaml.nodes import MappingNode, Node, ScalarNode, SequenceNode
from ruamel.yaml.scalarstring import DoubleQuotedScalarString

_WIDE = 10_000
"""Lines are never broken."""


class _Mark(Protocol):
    line: int
    column: int


@dataclass(frozen=True, slots=True)
class Changes:
    """What is changed: ``counts`` by the names of entries, entries that are ``gone``, new ones that
    ``come`` (their keys as they are written), and the ``plan`` that is noted as taken."""

    counts: Mapping[str, int] = field(default_factory=dict)
    gone: Sequence[str] = ()
    come: Mapping[str, Mapping[str, Any]] = field(default_factory=dict)
    plan: str = ""


class CannotEditError(Exception):
    """Raised where a file isn't laid out so that lines can be changed in it."""


def edited_in_place(text: str, changes: Changes) -> str:
    """The text with nothing but the changes made.

    Raises:
        CannotEditError: its layout doesn't allow it.
    """
    root = YAML(typ="safe", pure=True).compose(text)
    if not isinstance(root, MappingNode) or root.flow_style:
        raise CannotEditError
    top = {str(key.value): (key, value) for key, value in root.value}
    return _Editor(text, top).made(changes)


def written_anew(text: str, changes: Changes) -> str:
    """The text as ruamel.yaml writes it, with the changes made and comments kept."""
    yaml = YAML()
    yaml.preserve_quotes = True
    yaml.width = _WIDE
    yaml.indent(mapping=2, sequence=4, offset=2)
    data = yaml.load(text)
    if not isinstance(data.get("stock"), dict):
        data["stock"] = CommentedMap()
    stock = data["stock"]
    for name, count in changes.counts.items():
        stock[name]["count"] = count
    for name in changes.gone:
        del stock[name]
    for name, keys in changes.come.items():
        stock[name] = _flow(keys)
    if not isinstance(data.get("taken"), list):
        data["taken"] = CommentedSeq()
    data["taken"].append(DoubleQuotedScalarString(changes.plan))
    written = _dumped(yaml, data)
    return written.replace("\n", "\r\n") if "\r\n" in text else written


def _flow(keys: Mapping[str, Any]) -> CommentedMap:
    """Keys, and lists and keys in them, on one line."""
    found = CommentedMap((key, _flow_value(value)) for key, value in keys.items())
    found.fa.set_flow_style()
    return found


def _flow_value(value: Any) -> Any:
    if isinstance(value, Mapping):
        return _flow(value)
    if isinstance(value, list):
        found = CommentedSeq(map(_flow_value, value))
        found.fa.set_flow_style()
        return found
    return value


def _dumped(yaml: YAML, data: Any) -> str:
    stream = StringIO()
    yaml.dump(data, stream)
    return stream.getvalue()


def _line_of(name: str, keys: Mapping[str, Any]) -> str:
    """An entry on one line, its name and texts in quotes where they need them."""
    yaml = YAML()
    yaml.width = _WIDE
    return _dumped(yaml, CommentedMap({name: _flow(keys)})).rstrip("\n")


class _Editor:
    """A file's lines, and what is done to them from the last to the first."""

    def __init__(self, text: str, top: dict[str, tuple[Node, Node]]) -> None:
        self._lines = text.splitlines(keepends=True)
        self._end = "\r\n" if "\r\n" in text else "\n"
        self._top = top
        self._new: dict[int, list[str]] = {}
        self._struck: set[int] = set()

    def made(self, changes: Changes) -> str:
        self._change_stock(changes)
        self._note_taken(changes.plan)
        if self._lines and not self._lines[-1].endswith(("\n", "\r")):
            self._lines[-1] += self._end
        out = list(self._new.get(0, []))
        for number, line in enumerate(self._lines):
            if number not in self._struck:
                out.append(line)
            out += self._new.get(number + 1, [])
        return "".join(out)

    def _change_stock(self, changes: Changes) -> None:
        if not (changes.counts or changes.gone or changes.come):
            return
        _, stock = self._top.get("stock", (None, None))
        if not isinstance(stock, MappingNode) or stock.flow_style or not stock.value:
            raise CannotEditError
        entries = {str(key.value): (key, value) for key, value in stock.value}
        if len(changes.gone) == len(entries) and not changes.come:
            raise CannotEditError  # `stock:` with nothing below it is no mapping
        for name, count in changes.counts.items():
            self._set_count(entries[name][1], count)
        for name in changes.gone:
            key, value = entries[name]
            self._struck |= set(range(key.start_mark.line, self._last_line(value) + 1))
        last_key, last_value = stock.value[-1]
        indent = " " * last_key.start_mark.column
        after = self._last_line(last_value) + 1
        self._add(after, [indent + _line_of(*each) for each in changes.come.items()])

    def _set_count(self, entry: Node, count: int) -> None:
        if not isinstance(entry, MappingNode):
            raise CannotEditError
        written = next((value for key, value in entry.value if key.value == "count"), None)
        if not isinstance(written, ScalarNode) or written.anchor:
            raise CannotEditError
        start, stop = written.start_mark, written.end_mark
        if start.line != stop.line:
            raise CannotEditError
        line = self._lines[start.line]
        self._lines[start.line] = f"{line[: start.column]}{count}{line[stop.column :]}"

    def _note_taken(self, plan: str) -> None:
        quoted = f'"{plan}"'
        _, taken = self._top.get("taken", (None, None))
        if taken is None:
            self._add(len(self._lines), [f"taken:{self._end}  - {quoted}"])
            return
        if not isinstance(taken, SequenceNode) or not taken.value:
            raise CannotEditError
        if taken.flow_style:
            mark: _Mark = taken.value[-1].end_mark
            line = self._lines[mark.line]
            self._lines[mark.line] = f"{line[: mark.column]}, {quoted}{line[mark.column :]}"
            return
        last = taken.value[-1]
        dash = self._lines[last.start_mark.line][: last.start_mark.column]
        if dash.strip() != "-":
            raise CannotEditError
        self._add(self._last_line(last) + 1, [dash + quoted])

    def _add(self, before: int, lines: list[str]) -> None:
        """Put lines before the line of this number."""
        if 0 < before <= len(self._lines) and not self._lines[before - 1].endswith(("\n", "\r")):
            self._lines[before - 1] += self._end
        self._new.setdefault(before, []).extend(line + self._end for line in lines)

    def _last_line(self, node: Node) -> int:
        """The last line (from 0) that something is written in: the mark at the end of a block lies
        behind the comments that follow it, that of a text in lines behind empty ones."""
        if isinstance(node, MappingNode) and not node.flow_style:
            return max(self._last_line(each) for pair in node.value for each in pair)
        if isinstance(node, SequenceNode) and not node.flow_style:
            return max(map(self._last_line, node.value))
        end: _Mark = node.end_mark
        if not (isinstance(node, ScalarNode) and node.style in ("|", ">") and end.column == 0):
            return end.line
        last = end.line - 1
        while not self._lines[last].strip():
            last -= 1
        return last
