"""Cuts carried out one after another on rectangles in hand, with shapely: nothing but what a step
says is known of the plan it was made from.

Lengths in mm.  What has no width (lengths of a bought section) is as wide as its section, or 1 mm.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field
from math import radians, tan

from shapely import LineString, MultiPolygon, Polygon, box

from rodwright.cutting.steps import LotSteps, Result, SheetSteps, Step

NOISE = 1e-4
"""mm; sums of floats over some twenty cuts."""


@dataclass
class Workshop:
    """What is in hand, and what was put aside, from one sheet."""

    steps: LotSteps
    sheet: SheetSteps
    hands: dict[str, list[Polygon]] = field(default_factory=lambda: defaultdict(list))
    aside: list[tuple[Result, Polygon]] = field(default_factory=list)
    carried: int = 0

    def __post_init__(self) -> None:
        stock = self.sheet.stock
        name = str(self.sheet.numbers[0])
        whole = box(0, self.sheet.jointed or 0, stock.length, stock.width or self.deep)
        if self.sheet.whole is not None:
            self.put(self.sheet.whole, whole)
        else:
            self.hands[name].append(whole)

    @property
    def deep(self) -> float:
        return self.steps.lot.section or 1.0

    def cut(self, step: Step) -> None:
        """Make a cut, and hold what it says to what comes of it."""
        assert step.setting > NOISE, f"{step}: no fence is set to that"
        held = self.hands[step.held.name].pop()
        x0, y0, x1, y1 = held.bounds
        self.same("what is in hand", (x1 - x0, y1 - y0), (step.held.length, step.held.width))
        self.by_hand(step, held)
        blade = self.blade(step, held)
        if step.line is not None and self.sheet.stock.width:
            assert blade.buffer(1e-3).covers(LineString(step.line)), "it is drawn elsewhere"
        low = _halfplane(step, blade, held, before=step.edge in ("face", "near"))
        sides = (_whole(held.intersection(low)), _whole(held.difference(low).difference(blade)))
        for side, result in zip(sides, (step.measured, step.rest), strict=True):
            if result is None:
                assert side is None or side.area < 1e-2, f"{step}: something is left unsaid"
            else:
                assert side is not None, f"{step}: nothing is left of {result}"
                self.put(result, side)

    def by_hand(self, step: Step, held: Polygon) -> None:
        """That nothing too heavy or too large goes on the saw unsaid."""
        lot, saw = self.steps.lot, self.steps.saw
        x0, y0, x1, y1 = held.bounds
        weight = (x1 - x0) * (y1 - y0) * lot.thickness * lot.density * 1e-9
        if lot.section or step.held.width:
            assert abs(weight - step.held.weight) < 1e-3
        assert step.heavy == (step.held.weight > saw.lift)
        self.carried += step.how == "carried"
        if step.how != "fence":
            return
        assert not step.heavy or saw.kind == "panel saw"
        if step.along:
            assert saw.rip is None or step.setting <= saw.rip + NOISE
        else:
            assert saw.crosscut is None or step.held.width <= saw.crosscut + NOISE

    def blade(self, step: Step, held: Polygon) -> Polygon:
        """What the blade takes, a little beyond what is in hand."""
        x0, y0, x1, y1 = held.bounds
        kerf, far = self.steps.kerf, 1e5
        if step.along:
            at = y0 + step.setting if step.edge == "face" else y1 - step.setting - kerf
            return box(-far, at, far, at + kerf)
        lean = tan(radians(step.angle)) * (y1 - y0)
        wide = kerf * ((y1 - y0) ** 2 + lean**2) ** 0.5 / (y1 - y0)
        if step.edge == "near":
            long, short, thick = x0 + step.setting, x0 + step.setting - lean, wide
        else:
            long, short, thick = x1 - step.setting, x1 - step.setting + lean, -wide
        face, back = (short, long) if step.long_point == "back" else (long, short)
        return Polygon([(face, y0), (face + thick, y0), (back + thick, y1), (back, y1)])

    def put(self, result: Result, shape: Polygon) -> None:
        """Something off the saw, as it is said to be."""
        x0, y0, x1, y1 = shape.bounds
        size = (x1 - x0, y1 - y0)
        if result.what == "offcut" and shape.area < (size[0] * size[1]) - 1:
            # Behind a mitre, what is square of it.
            size = (shape.area / size[1] - (size[0] - shape.area / size[1]), size[1])
        if result.what != "waste":
            said = (result.length, result.width)
            self.same(f"{result.what} {result.name}", size, said[::-1] if result.turned else said)
        if result.what == "panel":
            self.hands[result.name].append(shape)
            return
        self.aside.append((result, shape))
        if result.what == "outer":
            self.hands[result.name].append(box(0, 0, result.length, result.width))

    def same(self, what: str, size: tuple[float, float], said: tuple[float, float]) -> None:
        for got, asked, flat in zip(size, said, (False, not self.sheet.stock.width), strict=True):
            assert flat or abs(got - asked) < NOISE, f"{what} is {size}, not {said}"

    def done(self) -> None:
        """That nothing is left in hand, and no piece has a flaw."""
        assert not any(self.hands.values()), f"left in hand: {self.hands}"
        stock = self.sheet.stock
        for result, shape in self.aside:
            if result.what in ("piece", "outer") and result.name in self.outers:
                for flaw in stock.flaws:
                    bad = box(flaw.x, flaw.y, flaw.x + flaw.length, flaw.y + (flaw.width or 1.0))
                    assert shape.intersection(bad).area < 1e-2, f"{result.name} has a flaw"

    @property
    def outers(self) -> set[str]:
        return {piece.name for piece in self.steps.lot.pieces}


def replayed(steps: LotSteps) -> list[Workshop]:
    """All sheets cut sheet by sheet, and then again in the lot's order; the workshops after."""
    shops = []
    for sheet in steps.sheets:
        shop = Workshop(steps, sheet)
        for number, step in enumerate(sheet.steps, 1):
            assert step.number == number
            shop.cut(step)
        shop.done()
        shops.append(shop)
    together = [Workshop(steps, sheet) for sheet in steps.sheets]
    for sheet, place in steps.order:
        together[sheet].cut(steps.sheets[sheet].steps[place])
    for shop, other in zip(shops, together, strict=True):
        other.done()
        assert _found([shop]) == _found([other])
    assert len(set(steps.order)) == len(steps.order) == sum(len(x.steps) for x in steps.sheets)
    return shops


def check_steps(steps: LotSteps, left: Iterable[str] = ()) -> list[Workshop]:
    """Replay a lot's cuts and find exactly its pieces, each with its labels, and the offcuts."""
    shops = replayed(steps)
    wanted: Counter[str] = Counter()
    for piece in steps.lot.pieces:
        wanted[piece.name] += piece.count
        for inner in piece.inner:
            wanted[inner.name] += piece.count
    wanted -= Counter(left)
    got: Counter[str] = Counter()
    labels: dict[str, set[int]] = defaultdict(set)
    for shop in shops:
        for result, shape in shop.aside:
            if result.what in ("piece", "outer"):
                got[result.name] += len(shop.sheet.numbers)
                assert len(result.copies) == len(shop.sheet.numbers)
                assert labels[result.name].isdisjoint(result.copies), "a label is given out twice"
                labels[result.name].update(result.copies)
                _piece(steps, result, shape)
    assert got == wanted, f"cut: {got - wanted} too many, {wanted - got} too few"
    assert all(given == set(range(got[name])) for name, given in labels.items())
    return shops


def offcuts(shop: Workshop) -> list[tuple[float, ...]]:
    """What is kept: near corner and size, mm."""
    kept = [(each, shape.bounds) for each, shape in shop.aside if each.what == "offcut"]
    # Behind a mitre an offcut begins where it is square.
    sides = ((x1 - each.length, y0, each.length, y1 - y0) for each, (_, y0, x1, y1) in kept)
    return sorted(tuple(round(side, 3) + 0.0 for side in each) for each in sides)


def _piece(steps: LotSteps, result: Result, shape: Polygon) -> None:
    """That a piece's shape is what was asked for."""
    pieces = {piece.name: piece for piece in steps.lot.pieces}
    inner = {each.name: each for piece in steps.lot.pieces for each in piece.inner}
    asked = pieces.get(result.name) or inner[result.name]
    assert abs(result.length - asked.length) < NOISE and abs(result.width - asked.width) < NOISE
    slants = sum(pieces[result.name].slants) if result.name in pieces else 0.0
    x0, y0, x1, y1 = shape.bounds
    assert abs(shape.area - (x1 - x0 - slants / 2) * (y1 - y0)) < 0.1, f"{result.name}'s shape"


def _found(shops: Iterable[Workshop]) -> Counter[tuple[str, str, float, float]]:
    return Counter(
        (result.what, result.name, result.length, result.width)
        for shop in shops
        for result, _ in shop.aside
    )


def _halfplane(step: Step, blade: Polygon, held: Polygon, *, before: bool) -> Polygon:
    """All that lies on the measured side of the blade."""
    far = 2e5
    x0, y0, x1, y1 = held.bounds
    if step.along:
        low, high = blade.bounds[1], blade.bounds[3]
        return box(x0 - 1, y0 - 1, x1 + 1, low) if before else box(x0 - 1, high, x1 + 1, y1 + 1)
    (face, _), _, _, (back, _), _ = blade.exterior.coords
    away = -far if before else far
    return Polygon([(face, y0), (back, y1), (away, y1), (away, y0)])


def _whole(shape: Polygon | MultiPolygon) -> Polygon | None:
    """The one piece that it is, crumbs of rounding aside."""
    parts = [each for each in getattr(shape, "geoms", [shape]) if each.area > 1e-3]
    assert len(parts) <= 1, "a cut leaves more than it says"
    return parts[0] if parts else None
