"""The order in which a unit goes together, as plain data; mm, unit frame."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.geometry import Vector
from rodwright.unit import Joint

Where = Literal["bench", "site"]


@dataclass(frozen=True, slots=True)
class Step:
    """Pieces (``refs``) that go in together, straight along ``towards`` (a unit vector), past what
    ``standing`` says stands already.

    ``travel`` is how far they come (mm): from clear of everything.  ``joints`` are those that the
    step closes.  ``within`` is the sub-assembly that is being made (``drawer 1``, ``face frame``),
    empty for the unit itself; a sub-assembly comes as one step when it is put into the unit, which
    ``brings`` it.  ``towards`` is a zero vector for a first piece, and ``free`` is false where no
    straight way in was found, so that the step has to be told otherwise (sprung in, glued up in
    place); ``why`` says then what is in the way.  Where all of a sub-assembly is drawn together at
    once, ``drawn`` says how far (mm, unit frame) each part comes, in the order of ``refs``, and
    ``towards`` is zero.  ``opened`` are parts of doors that stand open meanwhile.
    """

    refs: tuple[str, ...]
    standing: tuple[str, ...]
    towards: Vector
    travel: float
    joints: tuple[Joint, ...]
    within: str = ""
    where: Where = "bench"
    free: bool = True
    brings: str = ""
    why: str = ""
    drawn: tuple[Vector, ...] = ()
    opened: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Order:
    """Every step, from the first to the last."""

    steps: tuple[Step, ...]
