"""Drawers: their fronts, their boxes, and what they run on.

All lengths in mm, unit frame.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.geometry import TOUCH, Box
from rodwright.setout.boards import Board, lay_board
from rodwright.setout.drawers.box import LEAST_ABOVE, LEAST_INSIDE, BoxWish, box_wish, lay_box
from rodwright.setout.drawers.front_fixing import FrontFixing
from rodwright.setout.drawers.fronts import Fronts, set_out_fronts
from rodwright.setout.drawers.packers import lay_packers
from rodwright.setout.drawers.slides import (
    Chest,
    ClearOpening,
    Running,
    lay_kickers,
    lay_slides,
    running,
    stand,
)
from rodwright.setout.fixings import bumpers
from rodwright.setout.inside import Space
from rodwright.setout.setting import Setting
from rodwright.unit import Role, Slide
from rodwright.unit.directions import FORWARD, X
from rodwright.wishes.drawers import DrawersSpec


def set_out_drawers(setting: Setting) -> None:
    """Lay the drawers of every space on the bench, each a group of its own that slides forward."""
    for each in setting.notes.drawers:
        with setting.bench.wished_at(each.where):
            _lay_drawers(setting.moved_to(each.where), each.wish, each.space)


def _lay_drawers(setting: Setting, wish: DrawersSpec, space: Space) -> None:
    """Lay the drawers of a space, from the top down; what can't be made is noted.

    Fronts of solid wood are held so that they can move.
    """
    rod = setting.rod
    front = setting.at("front_stock").stock(wish.front_stock or None)
    stock = setting.at("stock").stock(wish.stock or None)
    usual = rod.back.stock if rod.back else stock or rod.stock
    bottom = setting.at("bottom", "stock").stock(wish.bottom.stock or usual.name)
    if front is None or stock is None or bottom is None:
        return
    fronts = set_out_fronts(setting, wish, front, space)
    like = box_wish(setting, wish, stock, bottom)
    if fronts is None or like is None:
        return
    clear = _clear_opening(setting, wish, fronts, space)
    run = running(setting.at("slides"), wish.slides, clear, stock.thickness)
    if run is None or not _wide_enough(setting, like, run, clear):
        return
    chest = Chest(setting, space, clear, run)
    packers = lay_packers(chest) if run.kind != "runners" else ((), ())
    drawers = _Drawers(chest, like, fronts, packers)
    for number in range(len(fronts.heights)):
        # Equal fronts are all too low, and told once.
        if not drawers.lay(number) and wish.fronts is None:
            return
    lay_kickers(chest, stock.thickness)


def _clear_opening(
    setting: Setting, wish: DrawersSpec, fronts: Fronts, space: Space
) -> ClearOpening:
    """What boxes pass through: between the panels, and within what stands in front of them."""
    opening, parts = space.front, setting.bench.parts
    uprights = [parts[each.ref].bounds().low[1] for each in (space.left, space.right)]
    return ClearOpening(
        left=max(opening.left, space.left.right) + wish.packing,
        right=min(opening.right, space.right.left) - wish.packing,
        low=max(opening.low, space.low),
        high=min(opening.high, space.high),
        front=fronts.rear,
        start=max(0.0, space.setback, *uprights),
        rear=setting.rod.inside.shelf_rear,
    )


def _wide_enough(setting: Setting, like: BoxWish, run: Running, clear: ClearOpening) -> bool:
    say = setting.say
    inside = clear.width - 2 * (run.clearance + like.stock.thickness)
    if inside < LEAST_INSIDE:
        setting.refuse(
            f"in a clear width of {say(clear.width)}, less {say(run.clearance)} and "
            f"{say(like.stock.thickness)} of box at each side, drawers are too narrow: less than "
            f"{say(LEAST_INSIDE)} inside",
            "Make the space wider, or the box of thinner stock.",
        )
    return inside >= LEAST_INSIDE


@dataclass(frozen=True, slots=True)
class _Drawers:
    """What the drawers of one space have in common."""

    chest: Chest
    like: BoxWish
    fronts: Fronts
    packers: tuple[tuple[str, ...], ...]

    def lay(self, number: int) -> bool:
        """Lay one drawer, counted from the top, on the bench; whether it can be made."""
        chest, setting, run, clear = (
            self.chest,
            self.chest.setting,
            self.chest.run,
            self.chest.clear,
        )
        bench = setting.bench
        zone = self.fronts.heights[number]
        like, wish = self.like, self.like.wish
        last = number == len(self.fronts.heights) - 1
        place = stand(chest, wish.slides, zone, last)
        high = place.high - place.low
        if not self._high_enough(number, high):
            return False
        drawers = bench.count_moving(Slide)
        group = f"Drawer {drawers + 1}"
        front = lay_board(
            bench,
            Board(Role.DRAWER_FRONT, "Drawer front", group, self.fronts.stock, withdraw=FORWARD),
            Box(
                (self.fronts.left, self.fronts.face, zone[0]),
                (self.fronts.right, self.fronts.rear, zone[1]),
            ),
            X,
            FORWARD,
        )
        box = Box(
            (clear.left + run.clearance, clear.front, place.low),
            (clear.right - run.clearance, clear.front + run.length, place.high),
        )
        before = setting.problems.mark()
        laid = lay_box(setting, like, box, group)
        fixing = FrontFixing(
            setting.at("handle"),
            wish.handle,
            (box.low[0], box.high[0]),
            like.stock.thickness,
            like.above,
            front.ref,
            laid.front,
        )
        fixing.fix()
        lay_slides(chest, place, laid.sides, self.packers)
        if wish.hung == "overlay" and wish.bumper:
            bench.buy(bumpers(wish.bumper, front.ref, setting.unit))
        bench.move_together(Slide((front.ref, *laid.refs), (0.0, -run.travel, 0.0)))
        return not setting.problems.noted_since(before)

    def _high_enough(self, number: int, high: float) -> bool:
        """Whether a box so high holds its bottom, and the slides at its sides."""
        setting, wish, above = self.chest.setting, self.like.wish, self.like.above
        say = setting.say
        low, top = self.fronts.heights[number]
        box = f"behind a front {say(top - low)} high a box of {say(max(high, 0.0))} is"
        slides = wish.slides.height if self.chest.run.kind == "side" else 0.0
        least = max(above + LEAST_ABOVE, slides)
        if high >= least - TOUCH:
            return True
        help_with = f"Make the front at least {setting.at_least(least - high)} higher"
        if high < above + LEAST_ABOVE:
            why = f"too low: its bottom alone takes {say(above)}"
        else:
            why = f"lower than the slides at its sides, which are {say(slides)} high"
            help_with += ", or take lower slides (`slides.height`) or runners"
        key = ("count",) if wish.fronts is None else ("fronts", number)
        setting.at(*key).refuse(f"{box} {why}", f"{help_with}.")
        return False
