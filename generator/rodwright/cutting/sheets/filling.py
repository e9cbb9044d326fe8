"""Sheets that are being filled, and where a piece goes best."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from random import Random
from typing import NamedTuple

from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, Way
from rodwright.cutting.sheets.fields import Field
from rodwright.cutting.sheets.slicing import BEHIND, BESIDE, Knot

_ASKED = 10
"""What it costs to ask a field, beside its places."""
_LOOK = 100_000
"""After how many places that were looked at a search asks whether to stop."""


@dataclass(slots=True)
class Effort:
    """How much a search may do: ``left`` places that it may look at, so that the same question has
    the same answer on any machine."""

    left: int
    patience: Patience
    _until_look: int = _LOOK

    def spend(self, places: int) -> None:
        """Note that places were looked at."""
        self.left -= places
        self._until_look -= places

    def over(self) -> bool:
        """Whether all is spent, or the patience of who asked is."""
        if self._until_look < 0:
            self._until_look = _LOOK
            if self.patience.over():
                return True
        return self.left <= 0 or self.patience.stopped


@dataclass(frozen=True, slots=True)
class Taste:
    """What makes one place better than another, beside the waste made at once.

    ``snug`` is how much of the room that is left beside a piece counts as waste; ``missed``
    how often a sheet is passed over for no reason, so that not always the same is done.
    """

    snug: float = 0.0
    missed: float = 0.0


class Filling:
    """A sheet that is being filled: its ``sheet`` in the problem, its fields, its ``free`` area."""

    __slots__ = ("area", "fields", "free", "sheet")

    def __init__(self, sheet: int, fields: Iterable[Field], area: int) -> None:
        self.sheet = sheet
        self.fields = list(fields)
        self.area = area
        self.free = area

    def copy(self) -> Filling:
        """The same again, with its own trees."""
        same = Filling(self.sheet, (field.copy() for field in self.fields), self.area)
        same.free = self.free
        return same

    @property
    def empty(self) -> bool:
        """Whether nothing lies on it."""
        return self.free == self.area

    @property
    def entries(self) -> int:
        """How many places there are on it."""
        return sum(len(field.entries) for field in self.fields)

    def sizes(self) -> list[int]:
        """The size of each piece on it."""
        return [leaf.size for field in self.fields for leaf in field.leaves()]

    def pattern(self) -> Pattern:
        """What lies on it, and where."""
        return Pattern(self.sheet, tuple(put for field in self.fields for put in field.puts()))

    def add(self, place: Place, size: int) -> None:
        """A piece where it was found to go."""
        leaf = Knot(place.length, place.width, size, place.turned)
        place.field.add(place.knot, place.axis, leaf)
        self.free -= place.length * place.width

    def take_off(self, chosen: Iterable[tuple[Field, Knot]]) -> None:
        """Some pieces off it."""
        touched: list[Field] = []
        for field, leaf in chosen:
            field.remove(leaf)
            self.free += leaf.length * leaf.width
            if field not in touched:
                touched.append(field)
        for field in touched:
            field.list_entries()


class Place(NamedTuple):
    """Where a piece may go: joined to a ``knot`` of a ``field``; the less ``waste`` the better."""

    waste: float
    field: Field
    knot: Knot | None
    axis: int
    turned: bool
    length: int
    width: int


def best_place(filling: Filling, ways: Sequence[Way], taste: Taste, effort: Effort) -> Place | None:
    """The best place on a sheet for a piece that may lie in some ways; None if it doesn't go."""
    best: Place | None = None
    least = float("inf")
    for turned, length, width in ways:
        for field in filling.fields:
            if field.root is None:
                over = min(field.length - length, field.width - width)
                if 0 <= over < least:
                    least = over
                    best = Place(over, field, None, BEHIND, turned, length, width)
                continue
            effort.spend(len(field.entries) + _ASKED)
            found = _in_field(field, length, width, taste.snug, least)
            if found is not None:
                least = found[0]
                best = Place(least, field, found[1], found[2], turned, length, width)
    return best


def _in_field(
    field: Field, length: int, width: int, snug: float, least: float
) -> tuple[float, Knot, int] | None:
    """The place in a field with the least waste, if it is less than that: waste, knot and axis.

    Written out for both axes, since most of the time of a search is spent here.
    """
    found = None
    for its_length, its_width, longer, wider, knot in field.entries:
        if length <= longer:
            over = width - its_width
            if over <= wider:
                waste: float = its_length * over if over > 0 else -length * over
                if snug:
                    waste += snug * (longer - length) * (its_width if over > 0 else width)
                if waste < least and field.may_join(knot, BEHIND):
                    least = waste
                    found = (waste, knot, BEHIND)
        if width <= wider:
            over = length - its_length
            if over <= longer:
                waste = its_width * over if over > 0 else -width * over
                if snug:
                    waste += snug * (wider - width) * (its_length if over > 0 else length)
                if waste < least and field.may_join(knot, BESIDE):
                    least = waste
                    found = (waste, knot, BESIDE)
    return found


def place_all(
    fillings: Sequence[Filling],
    sizes: Iterable[int],
    ways: Sequence[Sequence[Way]],
    taste: Taste,
    effort: Effort,
    rng: Random,
) -> list[int]:
    """Pieces one after another, each where it goes best; those that went nowhere."""
    left = []
    for size in sizes:
        area = ways[size][0][1] * ways[size][0][2]
        best: Place | None = None
        on: Filling | None = None
        for filling in fillings:
            if filling.free < area or (taste.missed and rng.random() < taste.missed):
                continue
            place = best_place(filling, ways[size], taste, effort)
            if place is not None and (best is None or place.waste < best.waste):
                best, on = place, filling
        if best is None or on is None:
            left.append(size)
        else:
            on.add(best, size)
            effort.spend(len(best.field.entries) + _ASKED)
    return left
