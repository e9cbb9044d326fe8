"""Steps of sheets and boards cut up at random, replayed: exactly the pieces and the offcuts."""

from __future__ import annotations

from dataclasses import replace
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from kit.cutting_checker import check_boards, check_sheets
from kit.cutting_replay import check_steps, offcuts
from rodwright.cutting import Flaw, Inner, Layout, Offcut, Piece, Placed, Plan, Supply, Trim
from rodwright.cutting.offcuts import Least, kept_offcuts
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps import arranged, lot_steps, rip_settings, stop_settings
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
        random.choice(["table saw", "track saw", "panel saw"]), kerf,
        random.choice([None, 500, 900]), random.choice([None, 700, 1300]),
        random.choice([12.0, 25.0, 60.0]),
    )  # fmt: skip
    return LotPlan(lot, Plan(tuple(layouts), len(layouts), 0, False, kerf)), saw


def _divided(random: Random, piece: Piece, kerf: float) -> Piece:
    if random.random() < 0.8:
        return piece
    parts = cut_up(random, (0, 0, piece.length, piece.width), kerf, random.randint(1, 3))
    inner = tuple(Inner(f"{piece.name}/{n}", *part) for n, part in enumerate(parts))
    return replace(piece, inner=inner) if len(parts) > 1 else piece


@settings(deadline=None, max_examples=120)
@given(sheets())
def test_any_sheets(case: tuple[LotPlan, Saw]) -> None:
    planned, saw = case
    check_steps(lot_steps(planned, saw))
    best = arranged(planned)
    check_sheets(
        best.plan, planned.lot.pieces, planned.lot.supplies, kerf=planned.plan.kerf, turning=True
    )
    assert arranged(best) == best
    kept = kept_offcuts([best], "ab" * 32, Least(200, 80))
    steps = lot_steps(best, saw, kept)
    shops = check_steps(steps)
    for shop, sheet in zip(shops, steps.sheets, strict=True):
        wanted = [each.offcut for each in kept if each.layout + 1 == sheet.numbers[0]]
        _same(offcuts(shop), wanted)
    names = [name for sheet in steps.sheets for _, those in sheet.kept for name in those]
    assert sorted(names) == sorted(each.name for each in kept)
    for listed, along in ((rip_settings(steps), True), (stop_settings(steps), False)):
        places = [place for each in listed for place in each.steps]
        assert len(places) == sum(
            step.along is along for sheet in steps.sheets for step in sheet.steps
        )


@settings(deadline=None, max_examples=60)
@given(st.integers(0, 10**9), st.sampled_from(["board", "length"]))
def test_any_boards(seed: int, kind: str) -> None:
    random = Random(seed)
    kerf = random.choice([0.0, 3.2])
    trim = Trim(near=random.choice([0.0, 15.0]), far=random.choice([0.0, 15.0]))
    widths = [40.0, 60.0] if kind == "board" else [0.0]
    supply = Supply("ash", 2400, 130 if kind == "board" else 0, trim=trim)
    pieces: dict[tuple[float, ...], Piece] = {}
    placed, y = [], 0.0
    for width in widths:
        end, slanted = trim.near, False
        for _ in range(random.randint(1, 6)):
            slants = (random.choice([0.0, 0.0, 40.0]), random.choice([0.0, 40.0, 18.0]))
            length = float(random.randint(200, 500))
            if end + length > 2400 - trim.far:
                break
            key = (length, width, *slants)
            piece = pieces.get(key) or Piece(
                f"P{len(pieces)}",
                length,
                width,
                0,
                slants=slants,
                section=44.0 if not width else 0.0,
            )
            pieces[key] = replace(piece, count=piece.count + 1)
            flipped = bool(any(slants)) and random.random() < 0.5
            placed.append(Placed(piece.name, end, y, length, width, flipped=flipped))
            end += length + kerf
            slanted = slanted or any(slants)
        y += width + kerf
    layout = Layout("ash", tuple(placed))
    lot = Lot("lot", kind, "ash", 22, 700, tuple(pieces.values()), {}, (supply,), 44.0)  # type: ignore[arg-type]
    planned = arranged(LotPlan(lot, Plan((layout,), 1, 0, False, kerf)))
    check_boards(planned.plan, lot.pieces, lot.supplies, kerf=kerf)
    kept = kept_offcuts([planned], "ab" * 32, Least())
    (shop,) = check_steps(lot_steps(planned, Saw(), kept))
    if kind == "board":
        _same(offcuts(shop), [each.offcut for each in kept])


def _same(got: list[tuple[float, ...]], wanted: list[Offcut]) -> None:
    said = sorted((each.x, each.y, each.length, each.width) for each in wanted)
    assert len(got) == len(said)
    for one, other in zip(got, said, strict=True):
        assert all(abs(a - b) < 1e-3 for a, b in zip(one, other, strict=True)), (got, said)
