"""The best patterns of boards that are ripped to strips."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from rodwright.cutting.boards.across import Across
from rodwright.cutting.boards.offers import Offer
from rodwright.cutting.boards.problem import Blank, BoardProblem, Pattern, Run, Spot
from rodwright.cutting.boards.rows import Rows

_Parts = tuple[Blank, ...]


class StripOracle:
    """Answers what is best cut from one of each of the boards.

    Each blank is ripped over its whole length, or first cut across once, at any length if it has
    no flaws, or else at the ends of its flaws.  A strip is as wide as its widest piece;
    narrower ones are ripped once more.

    Strips of one board may have more of an item together than there are.  So what a board
    is worth may be too much, never too little; a pattern is told as it is and without what is
    too much, filled up anew.
    """

    def __init__(self, problem: BoardProblem) -> None:
        self._problem = problem

    def offers(
        self, values: Sequence[int], counts: Sequence[int], prices: Sequence[int], most: int
    ) -> list[Offer]:
        """What each board is worth at most, and patterns that are worth more than its price: with
        head cuts and without; without alone if ``most`` is 0."""
        across = Across(self._problem, values, counts)
        filling = _Filling(self._problem, values, across)
        return [
            self._offer(number, price, across, filling, counts, most)
            for number, price in enumerate(prices)
        ]

    def _offer(
        self,
        number: int,
        price: int,
        across: Across,
        filling: _Filling,
        counts: Sequence[int],
        most: int,
    ) -> Offer:
        board = self._problem.boards[number]
        worth = sum(max(worth for worth, _ in _parted(across, blank)) for blank in board.roomy)
        if worth <= price:
            return Offer(number, worth, ())
        patterns = []
        for way in board.ways:
            plain = [(blank,) for blank in way]
            best = [max(_parted(across, blank), key=lambda part: part[0])[1] for blank in way]
            for parts in dict.fromkeys([tuple(plain), tuple(best)]):
                blanks = [part for blank in parts for part in blank]
                patterns.append(filling.pattern(number, blanks, counts))
                if most:
                    patterns.append(filling.pattern(number, blanks, None))
        return Offer(number, worth, tuple(dict.fromkeys(patterns)))


def _parted(across: Across, blank: Blank) -> list[tuple[int, _Parts]]:
    """What a blank is worth whole, and cut across where that is best."""
    ways: list[tuple[int, _Parts]] = [(across.worth(blank), (blank,))]
    if blank.spots:
        places = {x for spot in blank.spots for x in (spot.x + across.kerf, spot.far)}
    else:
        places = {across.best_place(blank)}
    for place in sorted(places):
        if across.kerf < place < blank.length - across.kerf:
            parts = _cut_across(blank, place)
            ways.append((sum(map(across.worth, parts)), parts))
    return ways


def _cut_across(blank: Blank, place: int) -> _Parts:
    """The two parts of a blank; the first is so long, with the kerf."""
    return (
        replace(blank, length=place, spots=tuple(s for s in blank.spots if s.x < place)),
        replace(
            blank,
            x=blank.x + place,
            length=blank.length - place,
            spots=tuple(
                Spot(max(s.x - place, 0), s.y, s.far - place, s.back)
                for s in blank.spots
                if s.far > place
            ),
        ),
    )


class _Filling:
    """Fills the strips that are best with pieces."""

    def __init__(self, problem: BoardProblem, values: Sequence[int], across: Across) -> None:
        self._problem, self._values, self._across = problem, values, across

    def pattern(
        self, number: int, blanks: Sequence[Blank], counts: Sequence[int] | None
    ) -> Pattern:
        """The pattern of a board that is parted into these; with no more pieces than there are, or
        with as many as each strip on its own may have."""
        left = None if counts is None else list(counts)
        runs = [run for blank in blanks for run in self._ripped(blank, left)]
        return Pattern.of(number, tuple(runs))

    def _ripped(self, blank: Blank, left: list[int] | None) -> list[Run]:
        """The strips of a blank, the widest filled first, each with what is then left; and what is
        left beside them."""
        held: dict[tuple[int, int], list[Run]] = {}
        for begin, width in sorted(self._across.strips(blank), key=lambda cut: -cut[1]):
            runs = []
            for x, length in self._across.stretches(blank, begin, width):
                row = self._row(width, length, left)
                runs.append(Run(blank.x + x, blank.y + begin, length, width, row))
            if any(run.items for run in runs):
                held[begin, width] = runs
        moved = _packed(held, blank) if not blank.spots else held
        return [run for runs in moved.values() for run in runs] + list(_beside(moved, blank))

    def _row(self, width: int, length: int, left: list[int] | None) -> tuple[int, ...]:
        if left is None:
            return self._across.rows[width].fill(length)
        items = [n for n, item in enumerate(self._problem.items) if item.width <= width]
        row = Rows(self._problem, items, self._values, left, length).fill(length)
        for item in row:
            left[item] -= 1
        return row


_Strips = dict[tuple[int, int], list[Run]]


def _packed(strips: _Strips, blank: Blank) -> _Strips:
    """Strips moved up to each other, from the face edge on."""
    packed: _Strips = {}
    y = 0
    for (_, width), runs in strips.items():
        packed[y, width] = [replace(run, y=blank.y + y) for run in runs]
        y += width
    return packed


def _beside(strips: _Strips, blank: Blank) -> Iterator[Run]:
    """What is left of a blank beside its strips."""
    y = 0
    for begin, width in [*sorted(strips), (blank.width, 0)]:
        if begin > y:
            yield Run(blank.x, blank.y + y, blank.length, begin - y, ())
        y = begin + width
