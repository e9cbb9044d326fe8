"""What a part sheet tells of each working: plain words and figures as they are printed.

Every figure is text in the unit's measure, as :func:`rodwright.lengths.format_length` has it, and
is a distance from the sheet's datum: x from the datum end, y from the datum edge, z from the datum
face.  A stretch that runs out of the piece has the name of the surface there in place of a figure.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from rodwright.unit import Surface


@dataclass(frozen=True, slots=True)
class Stretch:
    """Where something begins and where it ends along an axis: figures, or the names of the surfaces
    where it runs out."""

    start: str
    stop: str


@dataclass(frozen=True, slots=True)
class Point:
    """A point of the outline of the piece: ``on`` which surface, and its place along ``axis``."""

    on: str
    axis: str
    at: str


@dataclass(frozen=True, slots=True)
class Row:
    """Places in equal steps: the first, how many, how far apart, and the last."""

    first: str
    pitch: str
    count: int
    last: str


Places = tuple[str | Row, ...]
"""Places along an axis, those in a row together."""
Figure = str | Places | Stretch | tuple[Stretch, ...] | Point
"""One figure, several places, a stretch, several stretches, or a point."""


@dataclass(frozen=True, slots=True)
class Entry:
    """Equal workings that are made in one go.

    ``number`` is theirs on the sheet, ``kind`` the trade's word for one, ``count`` how many there
    are.  ``into`` are the surfaces that it is cut into, by name: one, or the two that meet in the
    arris that it runs along.  ``figures`` are by name; docs/part-sheets.md
    says which each kind has.  ``purpose`` is what goes there.
    """

    number: int
    kind: str
    count: int
    into: tuple[str, ...]
    figures: Mapping[str, Figure]
    purpose: str = ""


@dataclass(frozen=True, slots=True)
class Operation:
    """Workings that are made as the piece lies, and how it lies: by its ``side`` that is up, the
    face or the reverse of its frame, None for what is done to its outline, ends and edges."""

    heading: str
    side: Surface | None
    entries: tuple[Entry, ...]
