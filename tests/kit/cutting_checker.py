"""Whether a cutting plan is one: from what the words mean, not from how plans are made.

Lengths in mm.  A piece, an offcut or a flaw is a polygon of shapely's, in the frame of its sheet or
board.  What has no width (lengths of a bought section) is taken as 1 mm wide.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import combinations, pairwise
from math import isclose
from typing import Literal

from shapely import Polygon, box

from kit.edge_to_edge import TOLERANCE, Block, groups, headed, in_stages, separable
from rodwright.cutting import Layout, Piece, Placed, Plan, Supply

FirstCut = Literal["along", "across"]


@dataclass(frozen=True)
class Rules:
    """What a plan was asked to keep; ``ripped`` is for boards that are ripped to strips of one
    width each, after one cut across the board at most."""

    kerf: float = 0.0
    turning: bool = False
    guillotine: bool = True
    stages: int | None = None
    first_cut: FirstCut | None = None
    head_cuts: bool = False
    ripped: bool = False


def check_sheets(
    plan: Plan,
    pieces: Sequence[Piece],
    stock: Sequence[Supply],
    *,
    kerf: float = 0.0,
    turning: bool = False,
    guillotine: bool = True,
    stages: int | None = None,
    first_cut: FirstCut | None = None,
    head_cuts: bool = False,
) -> None:
    """Hold a plan for sheets to what was asked; an AssertionError says what is wrong."""
    check(plan, pieces, stock, Rules(kerf, turning, guillotine, stages, first_cut, head_cuts))


def check_boards(
    plan: Plan, pieces: Sequence[Piece], stock: Sequence[Supply], *, kerf: float = 0.0
) -> None:
    """Hold a plan for boards or bought lengths to what was asked: they are ripped along their whole
    length (or that of some parts, once cut across) to strips, these are cut to length, and pieces
    that are narrower than their strip are ripped once more."""
    check(plan, pieces, stock, Rules(kerf, ripped=True))


def check(plan: Plan, pieces: Sequence[Piece], stock: Sequence[Supply], rules: Rules) -> None:
    """Hold a plan to what was asked; an AssertionError says what is wrong."""
    supplies = {each.name: each for each in stock}
    wanted = {each.name: each for each in pieces}
    assert len(supplies) == len(stock), "two supplies have one name"
    assert len(wanted) == len(pieces), "two pieces have one name"
    assert plan.kerf == rules.kerf, f"the plan's kerf is {plan.kerf}, not {rules.kerf}"
    _counts(plan, wanted, supplies)
    _figures(plan, supplies)
    for piece in pieces:
        _inner(piece, rules.kerf)
    for number, layout in enumerate(plan.layouts, 1):
        try:
            _layout(layout, wanted, supplies[layout.stock], rules)
        except AssertionError as wrong:
            raise AssertionError(f"layout {number} ({layout.stock}): {wrong}") from None


def _counts(plan: Plan, wanted: dict[str, Piece], supplies: dict[str, Supply]) -> None:
    cut = Counter(placed.piece for layout in plan.layouts for placed in layout.placed)
    left = Counter({piece.name: 0 for piece in plan.left})
    for piece in plan.left:
        assert piece.count > 0, f"{piece.name} is left {piece.count} times"
        left[piece.name] += piece.count
    for name in cut | left:
        assert name in wanted, f"{name} wasn't asked for"
    for name, piece in wanted.items():
        got = cut[name] + left[name]
        assert got == piece.count, f"{name}: {got} of {piece.count}"
    for layout in plan.layouts:
        assert layout.placed, f"nothing is cut from a {layout.stock}"
        assert layout.stock in supplies, f"there is no {layout.stock}"
    for name, used in Counter(layout.stock for layout in plan.layouts).items():
        there = supplies[name].count
        assert there is None or used <= there, f"{used} {name} of {there}"


def _figures(plan: Plan, supplies: dict[str, Supply]) -> None:
    cost = sum(supplies[layout.stock].price for layout in plan.layouts)
    assert _equal(plan.cost, cost), f"cost {plan.cost}, but the stock costs {cost}"
    if plan.left:
        assert not plan.proven, "proven, though pieces are left"
        return
    assert plan.bound <= plan.cost or _equal(plan.bound, plan.cost), (
        f"bound {plan.bound} above the cost {plan.cost}"
    )
    if plan.proven:
        assert _equal(plan.bound, plan.cost), f"proven at {plan.cost} with bound {plan.bound}"


def _equal(one: float, other: float) -> bool:
    return isclose(one, other, rel_tol=1e-9, abs_tol=1e-6)


def _inner(piece: Piece, kerf: float) -> None:
    outer = box(0, 0, piece.length, piece.width)
    blocks = [
        Block(each.name, box(each.x, each.y, each.x + each.length, each.y + each.width))
        for each in piece.inner
    ]
    for block in blocks:
        _inside(block, outer, f"{piece.name}, which it is cut from")
    _apart(blocks, kerf)


def _layout(layout: Layout, wanted: dict[str, Piece], supply: Supply, rules: Rules) -> None:
    trim, width = supply.trim, supply.width or 1.0
    back = width - trim.back if supply.width else width
    face = trim.face if supply.width else 0.0
    usable = box(trim.near, face, supply.length - trim.far, back)
    pieces = [_piece(placed, wanted[placed.piece], supply, rules) for placed in layout.placed]
    offcuts = [
        Block(f"offcut {n}", box(cut.x, cut.y, cut.x + cut.length, cut.y + (cut.width or 1.0)))
        for n, cut in enumerate(layout.offcuts, 1)
    ]
    for block in pieces + offcuts:
        _inside(block, usable, f"what is left of the {supply.name} once it is trimmed")
    for flaw in supply.flaws:
        top = flaw.y + flaw.width if supply.width else width
        _clear_of_flaw(pieces, box(flaw.x, flaw.y, flaw.x + flaw.length, top))
    _apart(pieces + offcuts, rules.kerf, flat=not supply.width)
    areas = [cut.outline.area for cut in offcuts]
    assert all(one >= other - TOLERANCE for one, other in pairwise(areas)), (
        "the largest offcut isn't named first"
    )
    if rules.ripped:
        _strips(pieces, rules.kerf)
    elif rules.guillotine:
        together = separable(pieces + offcuts, rules.kerf)
        assert together, "edge-to-edge cuts don't part these pieces and offcuts"
        _cut_as_asked(pieces, rules)


def _piece(placed: Placed, piece: Piece, supply: Supply, rules: Rules) -> Block:
    """A piece as it lies, once its sizes and its grain are found right."""
    size = (piece.width, piece.length) if placed.turned else (piece.length, piece.width)
    for got, asked in zip((placed.length, placed.width), size, strict=True):
        assert abs(got - asked) <= TOLERANCE, (
            f"{piece.name} lies {placed.length} x {placed.width}, not {size[0]} x {size[1]}"
        )
    if placed.turned:
        may = rules.turning if piece.turning is None else piece.turning
        assert may and not rules.ripped, f"{piece.name} is turned across its grain"
    else:
        assert not placed.flipped or any(piece.slants), f"{piece.name} is flipped for nothing"
    assert bool(piece.width) == bool(supply.width), f"{piece.name} doesn't go with {supply.name}"
    x, y, high = placed.x, placed.y, placed.y + (placed.width or 1.0)
    if not any(piece.slants):
        return Block(piece.name, box(x, y, x + placed.length, high))
    assert not placed.turned, f"{piece.name} has slanted ends and is turned"
    slants = piece.slants[::-1] if placed.flipped else piece.slants  # turned by half a turn
    near, far = x + slants[0], x + placed.length - slants[1]
    long, short = (high, y) if placed.flipped else (y, high)
    return Block(
        piece.name, Polygon([(x, long), (x + placed.length, long), (far, short), (near, short)])
    )


def _inside(block: Block, outer: Polygon, what: str) -> None:
    assert outer.buffer(TOLERANCE).covers(block.outline), (
        f"{block.name} at {block.outline.bounds} isn't inside {what}: {outer.bounds}"
    )


def _clear_of_flaw(pieces: Iterable[Block], flaw: Polygon) -> None:
    for block in pieces:
        inside = block.outline.buffer(-TOLERANCE)
        assert not inside.intersects(flaw), f"a flaw at {flaw.bounds} is in {block.name}"


def _apart(blocks: Sequence[Block], kerf: float, *, flat: bool = False) -> None:
    """That there is room for a cut between any two; ``flat`` is a length that has no width."""
    for one, other in combinations(blocks, 2):
        apart = max(
            max(other.low[axis] - one.high[axis], one.low[axis] - other.high[axis])
            for axis in (0, 1)
        )
        if apart < -TOLERANCE:  # overlapping boxes: slanted ends side by side?
            overlap = one.outline.buffer(-TOLERANCE).intersects(other.outline)
            assert not overlap, f"{one.name} and {other.name} overlap"
            apart = _along(one, other) if flat else one.outline.distance(other.outline)
        assert apart >= kerf - TOLERANCE, (
            f"{one.name} and {other.name} are {apart} apart, and a cut takes {kerf}"
        )


def _along(one: Block, other: Block) -> float:
    """How far apart two pieces of a length are along it, at the edge where they are nearest."""
    first, second = sorted((one, other), key=lambda block: block.outline.centroid.x)
    gaps = []
    for edge in (0.0, 1.0):
        ends = max(x for x, y in first.outline.exterior.coords if y == edge)
        begins = min(x for x, y in second.outline.exterior.coords if y == edge)
        gaps.append(begins - ends)
    return min(gaps)


def _strips(pieces: Sequence[Block], kerf: float) -> None:
    """That a board's pieces lie in strips along the whole board, or along a part of it that is cut
    across first.  What lies in a strip that is wider than it has the strip's face edge."""
    for part in groups(pieces, 0, kerf):
        for one, other in combinations(part, 2):
            low, high = (one.low[1], other.low[1]), (one.high[1], other.high[1])
            same = abs(low[0] - low[1]) <= TOLERANCE
            assert same or min(high) <= max(low) + TOLERANCE, (
                f"{one.name} and {other.name} aren't cut from one strip, nor from two"
            )


def _cut_as_asked(pieces: Sequence[Block], rules: Rules) -> None:
    """That stages, first cut and head cut are as asked."""
    ways = {"across": (0,), "along": (1,), None: (0, 1)}[rules.first_cut]
    if rules.stages is None:
        first = not rules.first_cut or _first_parts(pieces, ways[0], rules.kerf)
        assert first, f"the first cut isn't {rules.first_cut} the sheet"
        return
    depth = rules.stages
    if any(in_stages(pieces, axis, depth, rules.kerf) for axis in ways):
        return
    if rules.head_cuts and any(
        all(any(in_stages(part, axis, depth, rules.kerf) for axis in ways) for part in parts)
        for parts in headed(pieces, rules.kerf)
    ):
        return
    raise AssertionError(f"{depth} stages of cuts don't part these pieces")


def _first_parts(pieces: Sequence[Block], axis: int, kerf: float) -> bool:
    """Whether a first cut across an axis parts some pieces, or all lie in one strip."""
    return len(groups(pieces, axis, kerf)) > 1 or in_stages(pieces, 1 - axis, 1, kerf)
