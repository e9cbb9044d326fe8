"""What the search asks of a board: the best that can be cut from it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol

from rodwright.cutting.boards.problem import Pattern


@dataclass(frozen=True, slots=True)
class Offer:
    """What one board is worth at most, at the values asked for, and patterns that come near."""

    board: int
    worth: int
    patterns: tuple[Pattern, ...]


class Oracle(Protocol):
    """Whoever knows how a kind of board can be cut."""

    def offers(
        self, values: Sequence[int], counts: Sequence[int], prices: Sequence[int], most: int
    ) -> list[Offer]:
        """Of every board what it is worth at most, with ``counts`` pieces of each item; where that
        is more than its price, the best pattern and up to ``most`` others."""
