"""A spec file's text to plain data, with the place of every key and value.

YAML 1.2, one document, a mapping at the top.  ``no`` and ``on`` are text, dates are text,
plain aliases may be used; tags, merge keys and directives may not.
"""

from __future__ import annotations

import math
import os
import stat
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any, NoReturn

from ruamel.yaml import YAML
from ruamel.yaml.composer import Composer, MaxDepthExceededError
from ruamel.yaml.error import MarkedYAMLError, StringMark
from ruamel.yaml.nodes import MappingNode, Node, ScalarNode, SequenceNode
from ruamel.yaml.reader import ReaderError

from rodwright.problems import KeyPath, Problem, ProblemsError
from rodwright.wishes.reading.file_kinds import SPEC, FileKind
from rodwright.wishes.reading.places import Place, Places
from rodwright.wishes.reading.syntax import explain_syntax

Data = None | bool | int | float | str | list["Data"] | dict[str, "Data"]
"""What YAML holds once it is read."""

_LARGEST_FILE = 1_000_000
_DEEPEST = 40
_MOST_VALUES = 20_000
_LONGEST_NUMBER = 40
_TAG = "tag:yaml.org,2002:"


@dataclass(frozen=True, slots=True)
class Document:
    """What was read: data, places, and the problems that didn't stop the reading.

    What lies at or under a path in ``spoilt`` stands in for something that couldn't be read.
    """

    data: dict[str, Data]
    places: Places
    problems: tuple[Problem, ...]
    spoilt: tuple[KeyPath, ...]


def read_text(path: Path, kind: FileKind = SPEC) -> str:
    """The text of a spec file, or of one of another ``kind``.

    A pipe is read to its end; of neither is more read than such a file may hold.

    Raises:
        ProblemsError: as :func:`read_content`, or it isn't UTF-8.
    """
    return decoded(read_content(path, kind), str(path))


def read_content(path: Path, kind: FileKind = SPEC) -> bytes:
    """What a file holds, byte for byte.

    Raises:
        ProblemsError: there is no such file, it can't be opened, it is a device, or larger than
            1 MB.
    """
    file = str(path)
    try:
        content = _read(path)
    except FileNotFoundError:
        _stop(file, f"there is no file `{file}`", "Check the name and the folder you are in.")
    except IsADirectoryError:
        _stop(file, f"`{file}` is a folder", f"Give the name of a {kind.name} file.")
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or "its name isn't a file's name"
        _stop(file, f"`{file}` can't be opened: {reason}", "Check its name and who may read it.")
    if content is None:
        _stop(file, f"`{file}` isn't a file, but a device", f"Give the name of a {kind.name} file.")
    if len(content) > _LARGEST_FILE:
        _stop(
            file, "the file is larger than 1 MB", f"Give a {kind.name} file; they are much smaller."
        )
    return content


def decoded(content: bytes, file: str) -> str:
    """What a file holds as text, without a mark of its encoding (BOM).

    Raises:
        ProblemsError: it isn't UTF-8.
    """
    try:
        return content.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        before = content[: error.start].decode("utf-8-sig", errors="replace")
        _stop(
            file,
            "there is something here that isn't UTF-8 text",
            "Save the file as UTF-8 in your editor.",
            _place_after(before),
        )


def _read(path: Path) -> bytes | None:
    """The content of a file or pipe, cut off once it is too large; None for a device."""
    # Opening a pipe that nobody writes to would wait for ever.
    with open(path, "rb", buffering=0, opener=_open_at_once) as file:
        kind = os.fstat(file.fileno()).st_mode
        if not (stat.S_ISREG(kind) or stat.S_ISFIFO(kind)):
            return None
        content = bytearray()
        while len(content) <= _LARGEST_FILE:
            some = file.read(_LARGEST_FILE + 1 - len(content))
            if some is None:  # somebody writes to the pipe, but hasn't yet
                os.set_blocking(file.fileno(), True)
            elif not some:
                break
            else:
                content += some
        return bytes(content)


def _open_at_once(name: str, flags: int) -> int:
    return os.open(name, flags | getattr(os, "O_NONBLOCK", 0))


def read_document(text: str, file: str, kind: FileKind = SPEC) -> Document:
    """The data in a spec's text, or of one of another ``kind``; ``file`` is the name that problems
    give.

    Raises:
        ProblemsError: the text isn't YAML, is empty, or isn't a mapping at the top.
    """
    root = composed(text, file, kind)
    if root is None or (isinstance(root, ScalarNode) and not root.value):
        _stop(file, "the file is empty", f"Start with {kind.keys}.", Place(1, 1))
    if not isinstance(root, MappingNode):
        _stop(
            file,
            "the file doesn't hold keys and values",
            f"Write a `key: value` on each line, like `{kind.example}`.",
            _place(root.start_mark),
        )
    builder = _Builder(file, kind)
    data = builder.build(root)
    return Document(
        data if isinstance(data, dict) else {},
        Places(builder.values, builder.keys),
        tuple(builder.problems),
        tuple(builder.spoilt),
    )


@lru_cache(maxsize=2)
def composed(text: str, file: str, kind: FileKind = SPEC) -> Node | None:
    """The nodes of a file's text, with their marks, to be read only; None where there is nothing
    in it.  The last two are kept: an edit looks at a text and what becomes of it several times.

    Raises:
        ProblemsError: the text isn't YAML, or too deep or too much of it.
    """
    for number, line in enumerate(text.splitlines(), start=1):
        if line.startswith("%"):
            _stop(
                file,
                f"a line that starts with `%` has no place in a {kind.name}",
                "Take the line out.",
                Place(number, 1),
            )
        if line.strip() and not line.startswith("#"):
            break
    yaml = YAML(typ="safe", pure=True)
    yaml.Composer = _CountingComposer
    yaml.max_depth = _DEEPEST
    yaml.composer.warn_double_anchors = False
    try:
        node: Node | None = yaml.compose(text)
    except MaxDepthExceededError as error:
        _stop(file, *_too_deep(kind), _place(error.problem_mark))
    except _TooManyError as error:
        _stop(
            file,
            f"the file holds more than {_MOST_VALUES:,} keys and values",
            f"Give a {kind.name} file; they are much smaller.",
            _place(error.problem_mark),
        )
    except MarkedYAMLError as error:
        message, remedy, mark = explain_syntax(error, text)
        _stop(file, message, remedy, _place(mark))
    except ReaderError as error:
        _stop(
            file,
            f"there is a character here that can't be in a {kind.name} (U+{error.character:04X})",
            "Delete it; it may be invisible in your editor.",
            _place_after(text[: error.position]),
        )
    return node


class _TooManyError(MarkedYAMLError):
    """Raised in the midst of a text that holds too many values."""


class _CountingComposer(Composer):
    """Stops once there are more keys, values and aliases than any spec needs."""

    count = 0

    def compose_node(self, parent: Any, index: Any) -> Any:
        """Make the next node."""
        self.count += 1
        if self.count > _MOST_VALUES:
            mark = self.parser.peek_event().start_mark
            raise _TooManyError(None, None, "too many values", mark)
        return super().compose_node(parent, index)


def _too_deep(kind: FileKind) -> tuple[str, str]:
    return "this is nested too deeply", f"Take some levels out; a {kind.name} needs far fewer."


class _Builder:
    """Turns nodes into data, noting places and problems on the way."""

    def __init__(self, file: str, kind: FileKind) -> None:
        self.values: dict[KeyPath, Place] = {}
        self.keys: dict[KeyPath, Place] = {}
        self.problems: list[Problem] = []
        self.spoilt: list[KeyPath] = []
        self._file = file
        self._kind = kind

    def build(self, node: Node, path: KeyPath = ()) -> Data:
        place = _place(node.start_mark)
        self.values[path] = place if isinstance(node, ScalarNode) else self.keys.get(path, place)
        # Aliases share their node, so a small file can unfold into a huge or endless one.
        if len(path) > _DEEPEST:
            _stop(self._file, *_too_deep(self._kind), place)
        if len(self.values) > _MOST_VALUES:
            _stop(
                self._file,
                "the file unfolds into too many values",
                "Use fewer aliases (`*name`).",
                place,
            )
        tag = str(node.tag).removeprefix(_TAG)
        if isinstance(node, MappingNode) and tag == "map":
            return self._mapping(node, path)
        if isinstance(node, SequenceNode) and tag == "seq":
            return [self.build(item, (*path, index)) for index, item in enumerate(node.value)]
        if isinstance(node, ScalarNode) and tag in _SCALARS:
            return self._scalar(node, tag, path)
        message = f"tags (`!` and a name) aren't used in a {self._kind.name}"
        self._spoil(path, message, "Take the tag out.", place)
        return None

    def _mapping(self, node: MappingNode, path: KeyPath) -> Data:
        data: dict[str, Data] = {}
        for key_node, value_node in node.value:
            place = _place(key_node.start_mark)
            key = self._key(key_node, path, place)
            if key is None:
                continue
            here = (*path, key)
            if key in data:
                first = self.keys[here]
                self._note(
                    here,
                    f"`{key}` is written twice: here and in line {first.line}, "
                    f"column {first.column}",
                    "Keep one of them.",
                    place,
                )
                continue
            self.keys[here] = place
            data[key] = self.build(value_node, here)
        return data

    def _key(self, node: Node, path: KeyPath, place: Place) -> str | None:
        tag = str(node.tag).removeprefix(_TAG)
        if tag == "merge":
            self._spoil(
                path,
                f"merge keys (`<<`) aren't used in a {self._kind.name}",
                "Write the keys out, or give a whole value a name (`&name`) and use it (`*name`).",
                place,
            )
            return None
        if not isinstance(node, ScalarNode) or tag not in _SCALARS or not node.value:
            self._spoil(
                path, "this key isn't a name", "Write a name before the `:`, as plain text.", place
            )
            return None
        key = _with_pairs_joined(str(node.value))
        if key is None:
            self._spoil(path, *_HALF_A_CHARACTER, place)
            return None
        if tag not in _TEXT:
            self._note(
                (*path, key),
                f"a key is always text; `{key}` reads as something else",
                f'Put it in quotes: `"{key}"`.',
                place,
            )
        return key

    def _scalar(self, node: ScalarNode, tag: str, path: KeyPath) -> Data:
        written = _with_pairs_joined(str(node.value))
        if written is None:
            self._spoil(path, *_HALF_A_CHARACTER, _place(node.start_mark))
            return None
        if tag in _TEXT:
            return written
        if tag == "null":
            return None
        if tag == "bool" and written.lower() in ("true", "false"):
            return written.lower() == "true"
        number = _number(written, tag) if tag in ("int", "float") else None
        if number is None:
            shown = written if len(written) <= _LONGEST_NUMBER else f"{written[:_LONGEST_NUMBER]}…"
            self._spoil(
                path,
                f"`{shown}` isn't a number that can be used here",
                "Write it like `18` or `602.5`; put it in quotes if it is a name.",
                _place(node.start_mark),
            )
        return number

    def _note(self, path: KeyPath, message: str, remedy: str, place: Place) -> None:
        self.problems.append(Problem(message, remedy, path, self._file, *place))

    def _spoil(self, path: KeyPath, message: str, remedy: str, place: Place) -> None:
        self._note(path, message, remedy, place)
        self.spoilt.append(path)


# A timestamp is a date, which a spec takes as text; `=` alone is YAML's "value".
_TEXT = frozenset({"str", "timestamp", "value"})
_SCALARS = _TEXT | {"null", "bool", "int", "float"}


_HALF_A_CHARACTER = (
    "a `\\u` here stands for half a character",
    "Write the character itself, or `\\U` and eight digits.",
)


def _with_pairs_joined(text: str) -> str | None:
    """Text in which surrogates written as in JSON (RFC 8259, section 7) are the characters they
    stand for; None where one is alone."""
    if text.isascii():
        return text
    try:
        return text.encode("utf-16", "surrogatepass").decode("utf-16")
    except UnicodeDecodeError:
        return None


def _number(written: str, tag: str) -> int | float | None:
    """A finite number from its YAML 1.2 form (decimal; 0x and 0o for the curious)."""
    if len(written) > _LONGEST_NUMBER:
        return None
    try:
        if tag == "int":
            digits = written.lower().lstrip("+-")
            base = {"0x": 16, "0o": 8, "0b": 2}.get(digits[:2], 10)
            return int(written, base)
        number = float(written)
    except ValueError:
        return None
    return number if math.isfinite(number) else None


def _place(mark: StringMark) -> Place:
    return Place(mark.line + 1, mark.column + 1)


def _place_after(text: str) -> Place:
    lines = (text + "|").splitlines()
    return Place(len(lines), len(lines[-1]))


def _stop(file: str, message: str, remedy: str, place: Place | None = None) -> NoReturn:
    line, column = place or (None, None)
    raise ProblemsError([Problem(message, remedy, (), file, line, column)])
