"""Sheets cut to pieces at random, edge to edge: a plan for those pieces is known then."""

from __future__ import annotations

from dataclasses import dataclass
from random import Random

from rodwright.cutting import Piece, Supply


@dataclass(frozen=True)
class Cut:
    """Pieces, the stock that they were cut from, and what of it was used cost."""

    pieces: list[Piece]
    stock: list[Supply]
    cost: float


def cut_at_random(random: Random, *, kerf: int = 0, most: int = 8, side: int = 30) -> Cut:
    """One to three kinds of sheets, up to four used; some of what is cut off is waste.

    ``most`` cuts a sheet; ``side`` the longest side of a sheet.
    """
    stock = [
        Supply(
            f"s{kind}",
            random.randint(side // 2, side),
            random.randint(side // 2, side),
            random.choice([None, 4, 7]),
            price=random.randint(1, 9),
        )
        for kind in range(random.randint(1, 3))
    ]
    used = [random.choice(stock) for _ in range(random.randint(1, 4))]
    pieces = [
        Piece(f"p{number}", length, width, turning=random.random() < 0.4)
        for number, (length, width) in enumerate(
            each for sheet in used for each in _cut(random, sheet, kerf, random.randint(1, most))
        )
    ]
    return Cut(pieces, stock, sum(sheet.price for sheet in used))


def _cut(random: Random, sheet: Supply, kerf: int, cuts: int) -> list[tuple[int, int]]:
    """Sizes of pieces, some of them as if turned; at least one."""
    rest = [(int(sheet.length), int(sheet.width))]
    for _ in range(cuts):
        length, width = rest.pop(random.randrange(len(rest)))
        across = random.random() < length / (length + width)
        side = length if across else width
        if side < kerf + 2:
            rest.append((length, width))
            continue
        at = random.randint(1, side - kerf - 1)
        parts = (at, side - kerf - at)
        rest += [(part, width) if across else (length, part) for part in parts]
    kept = [each for each in rest if random.random() < 0.9]
    return kept or rest[:1]
