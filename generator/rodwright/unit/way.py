"""The way in, as measured: what a finished unit has to pass before it stands in its place.

Plain data, in millimetres; the set-out puts it on the :class:`rodwright.unit.Unit`.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Doorway:
    """A doorway's clear width and height, the door open or off its hinges."""

    width: float
    height: float


@dataclass(frozen=True, slots=True)
class Corner:
    """A right-angled corner between two corridors and the ceiling over it (None: high enough)."""

    before: float
    after: float
    ceiling: float | None = None


@dataclass(frozen=True, slots=True)
class Skirting:
    """The skirting board (US: baseboard) along the walls of the opening and beside it."""

    height: float
    thickness: float


@dataclass(frozen=True, slots=True)
class Mouth:
    """The front of an opening where nibs, a frame or a downstand make it narrower or lower.

    ``width`` and ``height`` are clear, None where it is as wide or high as inside;
    ``thickness`` is from front to back.  What narrows it stands evenly at both sides.
    """

    width: float | None
    height: float | None
    thickness: float


@dataclass(frozen=True, slots=True)
class WayIn:
    """All that is known of the way in.

    ``ceiling`` is the height of the room where the unit is stood up, ``front`` the clear
    floor before its opening (None: plenty), ``hands`` the room kept free for hands and
    straps at each side and below while it is carried.
    """

    ceiling: float | None = None
    doors: tuple[Doorway, ...] = ()
    corners: tuple[Corner, ...] = ()
    skirting: Skirting | None = None
    mouth: Mouth | None = None
    front: float | None = None
    hands: float = 20.0
