"""Figures of a spec changed from its page: the file is written, and nothing else kept.

The file stays the truth.  It is written only while it is as the page that wishes saw it, or as
this left it since; what stands in it once an editor has saved is never written over.
"""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from pathlib import Path
from threading import Lock

from rodwright.jobs.look.figures import figure_at
from rodwright.jobs.look.saving import replace_content
from rodwright.jobs.look.spans import spelt
from rodwright.problems import Problem, ProblemsError
from rodwright.wishes.reading.documents import decoded, read_content
from rodwright.wishes.reading.editing import value_at, with_value
from rodwright.wishes.reading.files import SpecFile, parse_spec

_MARK = b"\xef\xbb\xbf"
"""The mark that some editors put before UTF-8 text (Unicode Standard, 23.8)."""
_MOST_STEPS = 200


def digest_of(content: bytes) -> str:
    """What a file's content is told apart by."""
    return hashlib.sha256(content).hexdigest()


@dataclass(frozen=True, slots=True)
class _Step:
    """What a file held before and after a change; changes by the same ``drag`` are one."""

    before: bytes
    after: bytes
    drag: tuple[str, str]


@dataclass(frozen=True, slots=True)
class Back:
    """Whether there is something to undo and to redo; ``overtaken``: there would be, but the file
    isn't as it was left."""

    undo: bool
    redo: bool
    overtaken: bool


class Nudging:
    """Changes one spec file as its pages wish, and takes changes back."""

    def __init__(self, path: Path) -> None:
        """``path`` is the spec's."""
        self._path = path
        self._lock = Lock()
        self._done: list[_Step] = []
        self._undone: list[_Step] = []
        self._ours: list[str] = []
        """Digests of what the file has held since someone else last wrote it, the last one now."""

    def nudge(self, key: str, value: str, seen: str, drag: str = "") -> None:
        """Write a figure into the file.

        ``key`` is that of a :class:`rodwright.page.document.Nudge`, ``seen`` the digest of the file
        that its page shows (:func:`digest_of`).  A bare figure is in the unit that stands there.
        Changes of one figure with the same ``drag`` are taken back as one.

        A value that leaves a spec is written even where no unit can be made of it: two figures that
        hang together can only be changed one after the other, and the page tells what is wrong with
        its place.  One that leaves no spec is refused.

        Raises:
            ProblemsError: the file was changed by someone else, is no spec as it stands, can't be
                read or written, or the value doesn't make a spec.
        """
        with self._lock:
            content = read_content(self._path)
            text, spec = self._parsed(content)
            self._refuse_unseen(content, seen)
            mark = _MARK if content.startswith(_MARK) else b""
            after = mark + self._with(text, spec, key, value).encode()
            if after == content:
                return
            self._write(content, after)
            self._note(_Step(content, after, (key, drag) if drag else ("", "")))

    def undo(self) -> None:
        """Take the last change back: the file holds again what it held before, byte for byte.

        Raises:
            ProblemsError: there is none, or the file isn't as it was left.
        """
        with self._lock:
            self._swap(self._done, self._undone, back=True)

    def redo(self) -> None:
        """Make the change that was last taken back once more.

        Raises:
            ProblemsError: there is none, or the file isn't as it was left.
        """
        with self._lock:
            self._swap(self._undone, self._done, back=False)

    def can(self, content_digest: str) -> Back:
        """What can be taken back with a file of this digest."""
        with self._lock:
            undo = bool(self._done) and digest_of(self._done[-1].after) == content_digest
            redo = bool(self._undone) and digest_of(self._undone[-1].before) == content_digest
            # A page may lag behind what it wished itself.
            ours = content_digest in self._ours
            overtaken = bool(self._done or self._undone) and not (undo or redo or ours)
            return Back(undo, redo, overtaken)

    def _refuse_unseen(self, content: bytes, seen: str) -> None:
        now = digest_of(content)
        if self._ours and self._ours[-1] == now and seen in self._ours:
            return
        if seen != now:
            raise _changed(self._path, "Look at the figure as it is now, and set it again.")
        self._ours = [now]

    def _parsed(self, content: bytes) -> tuple[str, SpecFile]:
        """The text and the spec in it; what is wrong there is told by the page at its place."""
        try:
            text = decoded(content, str(self._path))
            return text, parse_spec(text, self._path)
        except ProblemsError:
            message = f"`{self._path.name}` is no spec as it stands, so no figure can be set in it"
            raise ProblemsError([Problem(message, "Mend it in your editor first.")]) from None

    def _with(self, text: str, spec: SpecFile, key: str, value: str) -> str:
        figure = figure_at(spec, key)
        if figure is None:
            raise ProblemsError(
                [Problem("there is no such figure in the file", "Write it in your editor.")]
            )
        path = figure.path
        said = spelt(value, value_at(spec.data, path))
        after = with_value(text, path, said, str(self._path))
        parse_spec(after, self._path)
        return after

    def _write(self, before: bytes, after: bytes) -> None:
        if read_content(self._path) != before:
            raise _changed(self._path, "Look at it as it is now, and try again.")
        replace_content(self._path, after)
        self._ours = [*self._ours, digest_of(after)][-_MOST_STEPS:]

    def _note(self, step: _Step) -> None:
        self._undone.clear()
        last = self._done[-1] if self._done else None
        if last and step.drag[1] and last.drag == step.drag and last.after == step.before:
            self._done.pop()
            step = _Step(last.before, step.after, step.drag)
        if step.before != step.after:
            self._done.append(step)
        del self._done[:-_MOST_STEPS]

    def _swap(self, taken: list[_Step], given: list[_Step], *, back: bool) -> None:
        if not taken:
            word = "undo" if back else "redo"
            raise ProblemsError([Problem(f"there is nothing to {word}", "Change a figure first.")])
        step = taken[-1]
        now, then = (step.after, step.before) if back else (step.before, step.after)
        content = read_content(self._path)
        if content != now:
            raise _changed(self._path, "Take it back in your editor.")
        self._write(now, then)
        given.append(taken.pop())


def _changed(path: Path, remedy: str) -> ProblemsError:
    return ProblemsError([Problem(f"`{path.name}` was changed by someone else meanwhile", remedy)])
