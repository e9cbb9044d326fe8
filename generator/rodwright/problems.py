"""What a maker is told when something is wrong, with its place in the file."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from rodwright.lengths import LengthUnit, at_least, at_most, format_length

KeyPath = tuple[str | int, ...]
"""The way to a value in a spec: keys and list positions from the top of the file."""
_LIBRARIES = {
    "libGL.so.1": "libgl1",
    "libEGL.so.1": "libegl1",
    "libatomic.so.1": "libatomic1",
}
"""Debian's and Ubuntu's packages by the file that is loaded (packages.debian.org, bookworm)."""
_UNLOADED = re.compile(r"(\S+\.so[\w.]*): cannot open shared object file")
"""As the loader of the GNU C library says it (elf/dl-load.c)."""


def printable(text: str) -> str:
    """Text on one line, with what a terminal might obey instead of showing it written out.

    Those are the control and format characters, and whatever else has no shape of its own
    (Unicode's categories C, and line and paragraph separators).
    """
    if text.isprintable():
        return text
    return "".join(
        each if each == " " or each.isprintable() else each.encode("unicode_escape").decode("ascii")
        for each in text
    )


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing that is wrong: what, what to do about it, and where.

    ``where`` is the way to the value in the spec; ``file``, ``line`` and ``column`` (both
    counted from 1) are filled in once the file is known.
    """

    message: str
    remedy: str
    where: KeyPath = ()
    file: str | None = None
    line: int | None = None
    column: int | None = None

    def __str__(self) -> str:
        place = ":".join(str(item) for item in (self.file, self.line, self.column) if item)
        start = f"{place}: " if place else ""
        return f"{printable(f'{start}{self.message}')}\n  {printable(self.remedy)}"


def told_once(problems: Iterable[Problem]) -> tuple[Problem, ...]:
    """The same problems, each once: what is said in the same words of the same line and column has
    one cause, though it is used in several places by its name (``&name``)."""
    found: dict[object, Problem] = {}
    for each in problems:
        place = (each.file, each.line, each.column, each.message)
        found.setdefault(each if each.line is None else place, each)
    return tuple(found.values())


class ProblemsError(ValueError):
    """Raised with every problem found, each once, so that they can all be mended in one go."""

    def __init__(self, problems: Iterable[Problem]) -> None:
        self.problems: tuple[Problem, ...] = told_once(problems)
        super().__init__("\n".join(str(problem) for problem in self.problems))


class Problems:
    """Gathers problems while a spec is worked through; says lengths in the spec's ``unit``."""

    def __init__(self, unit: LengthUnit = "mm") -> None:
        self._unit = unit
        self._found: list[Problem] = []

    @property
    def unit(self) -> LengthUnit:
        """The spec's unit."""
        return self._unit

    def length(self, length: float) -> str:
        """A length given in mm as the maker would say it, with its unit."""
        return f"{format_length(length, self._unit)} {self._unit}"

    def at_least(self, length: float) -> str:
        """A length (mm) that is enough, rounded up: whoever keeps to it isn't refused again."""
        return self.length(at_least(length, self._unit))

    def at_most(self, length: float) -> str:
        """A length (mm) that isn't too much, rounded down."""
        return self.length(at_most(length, self._unit))

    def add(self, where: KeyPath, message: str, remedy: str) -> None:
        """Note one problem at ``where``."""
        self._found.append(Problem(message, remedy, where))

    def add_once(self, where: KeyPath, message: str, remedy: str) -> None:
        """Note one problem, unless exactly that was noted before."""
        if Problem(message, remedy, where) not in self._found:
            self.add(where, message, remedy)

    def noted_at(self, where: KeyPath) -> bool:
        """Whether anything was noted at exactly this place."""
        return any(problem.where == where for problem in self._found)

    def mark(self) -> int:
        """A mark to ask :meth:`noted_since` by."""
        return len(self._found)

    def noted_since(self, mark: int = 0) -> bool:
        """Whether anything was noted since a mark, or at all."""
        return len(self._found) > mark

    def error(self) -> ProblemsError:
        """What to raise when nothing more can be worked out: all that was noted, in order."""
        return ProblemsError(self._found)

    def raise_if_any(self) -> None:
        """Stop here if anything was noted.

        Raises:
            ProblemsError: with all that was noted, in order.
        """
        if self._found:
            raise self.error()


def missing_library(error: BaseException) -> Problem | None:
    """What to tell where a package couldn't be loaded for want of a library of the system; None
    where ``error`` has another cause.

    A package may stumble once more over what it couldn't load, so what came before counts too.
    """
    seen: BaseException | None = error
    while seen is not None:
        if isinstance(seen, ImportError) and (unloaded := _UNLOADED.search(str(seen))):
            package = _LIBRARIES.get(unloaded[1])
            return Problem(
                f"a library of the system is missing: {unloaded[1]}",
                f"On Debian or Ubuntu: `apt-get install {package}`."
                if package
                else "Find out which of your system's packages has it, and install that.",
            )
        seen = seen.__cause__ or seen.__context__
    return None
