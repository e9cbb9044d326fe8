"""Drawers: their fronts, their boxes, and what they run on.

All lengths in mm, unit frame.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.geometry import TOUCH, Box
from rodwright.problems import KeyPath, Problems
from rodwright.setout.bench import FORWARD, Bench, X
from rodwright.setout.boards import bumpers, lay_board
from rodwright.setout.carcass.spaces import Space
from rodwright.setout.drawers.box import LEAST_ABOVE, LEAST_INSIDE, BoxWish, box_wish, lay_box
from rodwright.setout.drawers.front_fixing import FrontFixing
from rodwright.setout.drawers.fronts import Fronts, set_out_fronts
from rodwright.setout.drawers.packers import lay_packers
from rodwright.setout.drawers.slides import Running, Way, lay_kickers, lay_slides, running, stand
from rodwright.setout.rod.main_lines import Rod
from rodwright.setout.stocks import find_stock
from rodwright.unit import Role, Slide, Stock
from rodwright.wishes.drawers import DrawersSpec


def set_out_drawers(
    wish: DrawersSpec,
    space: Space,
    rod: Rod,
    bench: Bench,
    problems: Problems,
    where: KeyPath,
    moisture: tuple[float, float],
) -> None:
    """Lay the drawers of a space on the bench, from the top down; what can't be made is noted.

    Each is a group of its own, and slides forward.  Fronts of solid wood are held so that they
    can move between the least and the most ``moisture`` (%).
    """

    def of(name: str | None, usual: str, *key: str) -> Stock | None:
        return find_stock(rod.stocks, name or usual, (*where, *key), problems)

    front = of(wish.front_stock, rod.stock.name, "front_stock")
    stock = of(wish.stock, rod.stock.name, "stock")
    usual = rod.back.stock if rod.back else stock or rod.stock
    bottom = of(wish.bottom.stock, usual.name, "bottom", "stock")
    if front is None or stock is None or bottom is None:
        return
    fronts = set_out_fronts(wish, front, space, rod, problems, where)
    like = box_wish(wish, stock, bottom, problems, where)
    if fronts is None or like is None:
        return
    way = _way(wish, fronts, space, rod, bench)
    run = running(wish.slides, way, stock.thickness, problems, (*where, "slides"))
    if run is None or not _wide_enough(like, run, way, problems, where):
        return
    packers = lay_packers(run, space, way, rod, bench) if run.kind != "runners" else ((), ())
    drawers = _Drawers(
        like, fronts, run, way, packers, space, rod, bench, problems, where, moisture
    )
    for number in range(len(fronts.heights)):
        # Equal fronts are all too low, and told once.
        if not drawers.lay(number) and wish.fronts is None:
            return
    lay_kickers(run, stock.thickness, space, way, rod, bench)


def _way(wish: DrawersSpec, fronts: Fronts, space: Space, rod: Rod, bench: Bench) -> Way:
    """What boxes pass through: between the panels, and within what stands in front of them."""
    opening = space.front
    uprights = [bench.parts[each.ref].bounds().low[1] for each in (space.left, space.right)]
    return Way(
        left=max(opening.left, space.left.right) + wish.packing,
        right=min(opening.right, space.right.left) - wish.packing,
        low=max(opening.low, space.low),
        high=min(opening.high, space.high),
        front=fronts.rear,
        start=max(0.0, space.setback, *uprights),
        rear=rod.shelf_rear,
    )


def _wide_enough(like: BoxWish, run: Running, way: Way, problems: Problems, where: KeyPath) -> bool:
    say = problems.length
    inside = way.width - 2 * (run.clearance + like.stock.thickness)
    if inside < LEAST_INSIDE:
        problems.add(
            where,
            f"in a clear width of {say(way.width)}, less {say(run.clearance)} and "
            f"{say(like.stock.thickness)} of box at each side, drawers are too narrow: less than "
            f"{say(LEAST_INSIDE)} inside",
            "Make the space wider, or the box of thinner stock.",
        )
    return inside >= LEAST_INSIDE


@dataclass(frozen=True, slots=True)
class _Drawers:
    """What the drawers of one space have in common."""

    like: BoxWish
    fronts: Fronts
    run: Running
    way: Way
    packers: tuple[tuple[str, ...], ...]
    space: Space
    rod: Rod
    bench: Bench
    problems: Problems
    where: KeyPath
    moisture: tuple[float, float]

    def lay(self, number: int) -> bool:
        """Lay one drawer, counted from the top, on the bench; whether it can be made."""
        run, way = self.run, self.way
        zone = self.fronts.heights[number]
        like, wish = self.like, self.like.wish
        last = number == len(self.fronts.heights) - 1
        place = stand(wish.slides, zone, last, self.space, way, self.rod, self.bench)
        high = place.high - place.low
        if not self._high_enough(number, high):
            return False
        drawers = sum(isinstance(motion, Slide) for motion in self.bench.motions)
        group = f"Drawer {drawers + 1}"
        front = lay_board(
            self.bench, Role.DRAWER_FRONT, "Drawer front", group,
            Box(
                (self.fronts.left, self.fronts.face, zone[0]),
                (self.fronts.right, self.fronts.rear, zone[1]),
            ),
            X, FORWARD, self.fronts.stock, withdraw=FORWARD,
        )  # fmt: skip
        box = Box(
            (way.left + run.clearance, way.front, place.low),
            (way.right - run.clearance, way.front + run.length, place.high),
        )
        before = len(self.problems)
        laid = lay_box(self.like, box, group, self.bench, self.problems, self.where)
        fixing = FrontFixing(
            wish.handle, (box.low[0], box.high[0]), like.stock.thickness, like.above, self.moisture
        )
        fixing.fix(front.ref, laid.front, self.bench, self.problems, (*self.where, "handle"))
        lay_slides(run, place, laid.sides, self.packers, self.space, way, self.rod, self.bench)
        if wish.hung == "overlay" and wish.bumper:
            self.bench.buy(bumpers(wish.bumper, front.ref, self.problems.unit))
        self.bench.move_together(Slide((front.ref, *laid.refs), (0.0, -run.travel, 0.0)))
        return len(self.problems) == before

    def _high_enough(self, number: int, high: float) -> bool:
        """Whether a box so high holds its bottom, and the slides at its sides."""
        say, wish, above = self.problems.length, self.like.wish, self.like.above
        low, top = self.fronts.heights[number]
        box = f"behind a front {say(top - low)} high a box of {say(max(high, 0.0))} is"
        slides = wish.slides.height if self.run.kind == "side" else 0.0
        least = max(above + LEAST_ABOVE, slides)
        if high >= least - TOUCH:
            return True
        help_with = f"Make the front at least {self.problems.at_least(least - high)} higher"
        if high < above + LEAST_ABOVE:
            why = f"too low: its bottom alone takes {say(above)}"
        else:
            why = f"lower than the slides at its sides, which are {say(slides)} high"
            help_with += ", or take lower slides (`slides.height`) or runners"
        key = ("count",) if wish.fronts is None else ("fronts", number)
        self.problems.add((*self.where, *key), f"{box} {why}", f"{help_with}.")
        return False
