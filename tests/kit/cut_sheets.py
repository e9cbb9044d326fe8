"""Sheets cut up at random, with all that a sheet may have."""

from __future__ import annotations

from dataclasses import replace
from random import Random

from hypothesis import strategies as st

from rodwright.cutting import Flaw, Inner, Layout, Piece, Placed, Plan, Supply, Trim
from rodwright.cutting.saws import Saw
from rodwright.cutting.work import Lot, LotPlan

Box = tuple[float, float, float, float]


def cut_up(random: Random, area: Box, kerf: float, cuts: int) -> list[Box]:
    """A rectangle (x, y, length, width) parted by cuts from edge to edge."""
    parts = [area]
    for _ in range(cuts):
        x, y, length, width = parts.pop(random.randrange(len(parts)))
        across = random.random() < length / (length + width)
        side = length if across else width
        if side < 60 + kerf:
            parts.append((x, y, length, width))
            continue
        at = float(random.randint(20, int(side - kerf) - 20))
        beyond = at + kerf
        if across:
            parts += [(x, y, at, width), (x + beyond, y, length - beyond, width)]
        else:
            parts += [(x, y, length, at), (x, y + beyond, length, width - beyond)]
    return parts


@st.composite
def sheets(draw: st.DrawFn) -> tuple[LotPlan, Saw]:
    """Up to three sheets cut up, some of it waste, with trims, flaws and pieces divided further."""
    random = Random(draw(st.integers(0, 10**9)))
    kerf = random.choice([0.0, 2.4, 3.2])
    trim = Trim(*(random.choice([0.0, 0.0, 2.0, 10.0]) for _ in range(4)))
    supply = Supply("ply", 2440, 1220, trim=trim)
    usable = (
        trim.near, trim.face, supply.length - trim.near - trim.far,
        supply.width - trim.face - trim.back,
    )  # fmt: skip
    pieces: dict[tuple[float, float, bool], Piece] = {}
    layouts, flaws = [], []
    for _ in range(random.randint(1, 3)):
        placed, waste = [], []
        for x, y, length, width in cut_up(random, usable, kerf, random.randint(0, 14)):
            if random.random() < 0.2:
                waste.append((x, y, length, width))
                continue
            turned = random.random() < 0.3
            size = (width, length) if turned else (length, width)
            key = (round(size[0], 6), round(size[1], 6), turned)
            piece = pieces.get(key) or Piece(f"P{len(pieces)}", *size, 0, turned)
            pieces[key] = replace(piece, count=piece.count + 1)
            placed.append(Placed(piece.name, x, y, length, width, turned))
        if placed:
            layouts += [Layout("ply", tuple(placed))] * random.choice([1, 1, 2])
            flaws.append(waste)
    if not layouts:
        layouts = [Layout("ply", (Placed("P0", usable[0], usable[1], 100, 50),))]
        pieces[100, 50, False] = Piece("P0", 100, 50)
    if len(set(layouts)) == 1 and flaws and flaws[0] and random.random() < 0.5:
        x, y, length, width = flaws[0][0]
        supply = replace(supply, flaws=(Flaw(x + 1, y + 1, length - 2, width - 2),))
    counted = [placed.piece for layout in layouts for placed in layout.placed]
    asked = tuple(
        _divided(random, replace(piece, count=counted.count(piece.name)), kerf)
        for piece in pieces.values()
    )
    lot = Lot("lot", "sheet", "birch", 18, 680, asked, {}, (supply,))
    saw = Saw(
        random.choice(["table saw", "track saw", "panel saw"]),
        kerf,
        random.choice([None, 500, 900]),
        random.choice([None, 700, 1300]),
        random.choice([12.0, 25.0, 60.0]),
    )
    return LotPlan(lot, Plan(tuple(layouts), len(layouts), 0, False, kerf)), saw


def _divided(random: Random, piece: Piece, kerf: float) -> Piece:
    if random.random() < 0.8:
        return piece
    parts = cut_up(random, (0, 0, piece.length, piece.width), kerf, random.randint(1, 3))
    inner = tuple(Inner(f"{piece.name}/{n}", *part) for n, part in enumerate(parts))
    return replace(piece, inner=inner) if len(parts) > 1 else piece
