"""The most from one sheet against published optima, and against all there is for tiny ones."""

from __future__ import annotations

from functools import cache
from random import Random

import pytest

from kit.cutting_published import Instance, instances, pieces_of, stock_of
from rodwright.cutting import Piece, Supply
from rodwright.cutting.bounds.one_sheet import Best, best_of_sheet
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Sheet, Size


def _in_mm(piece: Piece) -> Size:
    length, width = round(piece.length), round(piece.width)
    return Size(length, width, piece.count, bool(piece.turning) and length != width, ())


def _best(pieces: list[Piece], supply: Supply, *, pairs: int = 40_000_000) -> Best:
    sheet = Sheet(round(supply.length), round(supply.width), 1, 1, (), 0, 0, 0)
    values = [round(piece.value or 0) for piece in pieces]
    return best_of_sheet(
        [_in_mm(piece) for piece in pieces], values, sheet, Patience(), pairs=pairs
    )


VALUES = instances("sheet_values.json")


@pytest.mark.parametrize("instance", VALUES, ids=lambda each: each["name"])
def test_published_optima_are_found_and_proven(instance: Instance) -> None:
    best = _best(pieces_of(instance, any_number=1000), stock_of(instance)[0])
    assert (best.value, best.bound) == (instance["best_known"], instance["best_known"])


@pytest.mark.parametrize("seed", range(60))
def test_all_cuts_of_a_small_sheet_give_no_more(seed: int) -> None:
    random = Random(seed)
    side, other = random.randint(4, 9), random.randint(4, 9)
    pieces = [
        Piece(
            f"p{number}",
            random.randint(1, side),
            random.randint(1, other),
            random.randint(1, 2),
            turning=random.random() < 0.5,
            value=random.randint(1, 40),
        )
        for number in range(random.randint(1, 4))
    ]
    best = _best(pieces, Supply("s", side, other))
    assert best.value == best.bound == _by_all_cuts(pieces, side, other)


def _by_all_cuts(pieces: list[Piece], side: int, other: int) -> int:
    """By trying every cut at every millimetre, with every share of the pieces on either side."""

    @cache
    def mixes(length: int, width: int) -> frozenset[tuple[int, ...]]:
        none = (0,) * len(pieces)
        found = {none}
        for number, piece in enumerate(pieces):
            ways = {(piece.length, piece.width)}
            if piece.turning:
                ways.add((piece.width, piece.length))
            if any(along <= length and across <= width for along, across in ways):
                found.add((*none[:number], 1, *none[number + 1 :]))
        for at in range(1, length // 2 + 1):
            found |= both(mixes(at, width), mixes(length - at, width))
        for at in range(1, width // 2 + 1):
            found |= both(mixes(length, at), mixes(length, width - at))
        return frozenset(found)

    def both(
        ones: frozenset[tuple[int, ...]], others: frozenset[tuple[int, ...]]
    ) -> set[tuple[int, ...]]:
        sums = (tuple(map(sum, zip(a, b, strict=True))) for a in ones for b in others)
        return {
            each for each in sums if all(n <= p.count for n, p in zip(each, pieces, strict=True))
        }

    return max(
        sum(n * round(piece.value or 0) for n, piece in zip(mix, pieces, strict=True))
        for mix in mixes(side, other)
    )


def test_a_search_cut_short_still_says_what_is_the_most() -> None:
    instance = next(each for each in VALUES if each["name"] == "cgcut2")
    best = _best(pieces_of(instance), stock_of(instance)[0], pairs=10)
    assert best.value < instance["best_known"] < best.bound
    assert not best.proven


def test_who_has_no_patience_gets_what_is_known_by_then() -> None:
    instance = next(each for each in VALUES if each["name"] == "NGCUT11_R")
    stopped = Patience()
    stopped.stop()
    sizes = [_in_mm(piece) for piece in pieces_of(instance)]
    values = [item["value"] for item in instance["items"]]
    supply = stock_of(instance)[0]
    sheet = Sheet(round(supply.length), round(supply.width), 1, 1, (), 0, 0, 0)
    assert best_of_sheet(sizes, values, sheet, stopped).bound >= instance["best_known"]
