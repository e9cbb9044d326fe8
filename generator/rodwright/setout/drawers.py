"""Drawers: their fronts, their boxes, and what they run on.

All lengths in mm, unit frame.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.parts import Box, Fixing, JointKind, Role, Slide, Stock
from rodwright.problems import KeyPath, Problems
from rodwright.setout.bench import FORWARD, TOUCH, Bench, X, Y
from rodwright.setout.boards import lay_board, screw_on
from rodwright.setout.division import divide
from rodwright.setout.drawer_box import (
    LEAST_ABOVE,
    LEAST_INSIDE,
    BoxWish,
    Laid,
    box_wish,
    lay_box,
)
from rodwright.setout.rod import Rod
from rodwright.setout.slides import Running, Way, lay_kickers, lay_slides, running, stand
from rodwright.setout.spaces import Space
from rodwright.setout.stocks import find_stock
from rodwright.spec.drawers import DrawersSpec
from rodwright.spec.fields import Share


@dataclass(frozen=True, slots=True)
class _Fronts:
    """The fronts of one space: x and y of all of them, z of each from the top down."""

    stock: Stock
    left: float
    right: float
    face: float
    thickness: float
    heights: tuple[tuple[float, float], ...]

    @property
    def rear(self) -> float:
        """The y at which the boxes begin."""
        return self.face + self.thickness


def set_out_drawers(
    wish: DrawersSpec, space: Space, rod: Rod, bench: Bench, problems: Problems, where: KeyPath
) -> None:
    """Lay the drawers of a space on the bench, from the top down; what can't be made is noted.

    Each is a group of its own, and slides forward.
    """
    named = {
        key: find_stock(rod.stocks, name, (*where, *key), problems)
        for key, name in (
            (("front_stock",), wish.front_stock or rod.stock.name),
            (("stock",), wish.stock or rod.stock.name),
            (
                ("bottom", "stock"),
                wish.bottom.stock
                or (rod.back.stock.name if rod.back else wish.stock or rod.stock.name),
            ),
        )
    }
    front, stock, bottom = named.values()
    if front is None or stock is None or bottom is None:
        return
    fronts = _fronts(wish, front, space, rod, problems, where)
    like = box_wish(wish, stock, bottom, problems, where)
    if fronts is None or like is None:
        return
    way = _way(wish, fronts, space, rod, bench)
    run = running(wish.slides, way, stock.thickness, problems, (*where, "slides"))
    if run is None or not _wide_enough(like, run, way, problems, where):
        return
    drawers = _Drawers(like, fronts, run, way, space, rod, bench, problems, where)
    for number in range(len(fronts.heights)):
        # Equal fronts are all too low, and told once.
        if not drawers.lay(number) and wish.fronts is None:
            return
    lay_kickers(run, stock.thickness, space, way, rod, bench)


def _fronts(
    wish: DrawersSpec, stock: Stock, space: Space, rod: Rod, problems: Problems, where: KeyPath
) -> _Fronts | None:
    before = len(problems)
    edges = _edges(wish, space, rod, problems, where)
    thickness = _thickness(wish, stock, problems, where)
    if len(problems) > before:
        return None
    left, right, low, high = edges
    say = problems.length
    if right - left <= 0 or high - low <= 0:
        problems.add(
            (*where, "gap"),
            f"gaps of {say(wish.gap)} leave nothing of fronts in an opening of "
            f"{say(space.front.width)} x {say(space.front.height)}",
            "Make the gap smaller or the space larger.",
        )
        return None
    heights = _heights(wish, high - low, problems, where)
    zs, z = [], high
    for height in heights:
        zs.append((z - height, z))
        z -= height + wish.gap
    plane = max(space.front.plane, space.setback) if space.closed else space.front.plane
    face = plane if wish.hung == "inset" else plane - thickness
    return _Fronts(stock, left, right, face, thickness, tuple(zs)) if zs else None


def _edges(
    wish: DrawersSpec, space: Space, rod: Rod, problems: Problems, where: KeyPath
) -> tuple[float, float, float, float]:
    """Outline of all fronts together: left, right, low, high.

    Inset fronts leave the gap to what is round them, overlay ones half of it to what they may
    cover; where nothing stands between two rows, each leaves half.
    """
    front, gap, say = space.front, wish.gap, problems.length
    covers = {
        "left": front.cover_left, "right": front.cover_right,
        "low": front.cover_low, "high": front.cover_high,
    }  # fmt: skip
    reach = {edge: cover - gap / 2 for edge, cover in covers.items()}
    if wish.hung == "inset":
        shared = {
            "low": space.floor is None and space.low > rod.floor + TOUCH,
            "high": space.ceiling is None and space.high < rod.ceiling - TOUCH,
        }
        reach = {edge: -gap / 2 if shared.get(edge) else -gap for edge in covers}
        if wish.overlay is not None:
            problems.add(
                (*where, "overlay"),
                "inset fronts cover nothing",
                "Leave `overlay` out, or write `hung: overlay`.",
            )
    elif space.closed or space.covered:
        problems.add(
            (*where, "hung"),
            "overlay fronts have no room behind a door",
            "Write `hung: inset`.",
        )
    elif wish.overlay is not None:
        least = min((r for edge, r in reach.items() if covers[edge] > 0), default=0.0)
        if wish.overlay > least + TOUCH:
            problems.add(
                (*where, "overlay"),
                f"fronts can't cover {say(wish.overlay)} of what is round them: there are "
                f"{say(max(least, 0.0))}, with {say(gap / 2)} left to what comes next",
                "Make it smaller, or leave it out.",
            )
        reach = {e: wish.overlay if covers[e] > 0 else r for e, r in reach.items()}
    if wish.packing and wish.hung == "overlay":
        problems.add(
            (*where, "packing"),
            "overlay fronts cover the sides of the opening, so they don't stand in from them",
            "Leave `packing` out, or write `hung: inset`.",
        )
    for edge in ("left", "right"):
        reach[edge] -= wish.packing
    return (
        front.left - reach["left"], front.right + reach["right"],
        front.low - reach["low"], front.high + reach["high"],
    )  # fmt: skip


def _thickness(wish: DrawersSpec, stock: Stock, problems: Problems, where: KeyPath) -> float:
    thickness, say = wish.front_thickness, problems.length
    if thickness is None:
        return stock.thickness
    if thickness > stock.thickness + TOUCH or (
        stock.kind == "sheet" and thickness < stock.thickness - TOUCH
    ):
        problems.add(
            (*where, "front_thickness"),
            f"fronts {say(thickness)} thick can't come out of `{stock.name}`, which is "
            f"{say(stock.thickness)}",
            "Leave it out, or name other stock in `front_stock`.",
        )
    return thickness


def _heights(
    wish: DrawersSpec, whole: float, problems: Problems, where: KeyPath
) -> tuple[float, ...]:
    """Heights of the fronts from the top down; none where they don't add up, which is noted."""
    say = problems.length
    if (wish.count is None) == (wish.fronts is None):
        problems.add(
            where,
            "drawers need one of `count` and `fronts`; there is "
            + ("none of them" if wish.count is None else "`count` and `fronts`"),
            "Give exactly one.",
        )
        return ()
    if wish.fronts is not None:
        return divide(
            whole, wish.gap, wish.fronts, (*where, "fronts"), ("fronts", "gaps"), problems
        )
    assert wish.count is not None
    if whole - wish.gap * (wish.count - 1) <= 0:
        problems.add(
            (*where, "count"),
            f"{wish.count} fronts with gaps of {say(wish.gap)} don't fit a height of {say(whole)}",
            "Take fewer drawers.",
        )
        return ()
    share = [Share(1.0)] * wish.count
    return divide(whole, wish.gap, share, (*where, "count"), ("fronts", "gaps"), problems)


def _way(wish: DrawersSpec, fronts: _Fronts, space: Space, rod: Rod, bench: Bench) -> Way:
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
    fronts: _Fronts
    run: Running
    way: Way
    space: Space
    rod: Rod
    bench: Bench
    problems: Problems
    where: KeyPath

    def lay(self, number: int) -> bool:
        """Lay one drawer, counted from the top, on the bench; whether it can be made."""
        say, run, way = self.problems.length, self.run, self.way
        zone = self.fronts.heights[number]
        wish = self.like.wish
        last = number == len(self.fronts.heights) - 1
        place = stand(wish.slides, zone, last, self.space, way, self.rod, self.bench)
        high = place.high - place.low
        if high < self.like.above + LEAST_ABOVE:
            key = "count" if wish.fronts is None else "fronts"
            self.problems.add(
                (*self.where, key) if key == "count" else (*self.where, key, number),
                f"behind a front {say(zone[1] - zone[0])} high a box of {say(max(high, 0.0))} is "
                f"too low: its bottom alone takes {say(self.like.above)}",
                f"Make the front at least {say(self.like.above + LEAST_ABOVE - high)} higher.",
            )
            return False
        group = f"Drawer {1 + sum(p.role is Role.DRAWER_FRONT for p in self.bench.parts.values())}"
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
        screw_on(self.bench, laid.front, front.ref)
        lay_slides(run, place, laid.sides, self.space, way, self.rod, self.bench, self.problems)
        self._handle(front.ref, laid, box)
        self.bench.motions.append(Slide((front.ref, *laid.refs), (0.0, -run.travel, 0.0)))
        return len(self.problems) == before

    def _handle(self, front: str, laid: Laid, box: Box) -> None:
        """Drill for the handles, through the front and the box behind it."""
        wish, say = self.like.wish.handle, self.problems.length
        if wish is None:
            return
        bounds, end = (self.bench.parts[ref].bounds() for ref in (front, laid.front))
        width, d = bounds.size[0], wish.hole
        half = wish.spacing / 2
        low, high = box.low[2] + self.like.above + d, box.high[2] - d
        if half + d > width / wish.count / 2 or low > high:
            self.problems.add(
                (*self.where, "handle"),
                f"holes of {say(d)} for it don't go into a front {say(width)} x "
                f"{say(bounds.size[2])}",
                "Choose a smaller one, or leave it out.",
            )
            return
        z = min(max(bounds.centre[2], low), high)
        for i in range(wish.count):
            middle = bounds.low[0] + width * (i + 0.5) / wish.count
            for x in sorted({middle - half, middle + half}):
                self.bench.drill(front, (x, bounds.low[1], z), Y, d, None)
                if end.low[0] + d < x < end.high[0] - d:
                    self.bench.drill(laid.front, (x, end.low[1], z), Y, d, None)
        holes = "1 hole" if not wish.spacing else f"2 holes {say(wish.spacing)} apart"
        self.bench.join(
            JointKind.SCREWED,
            laid.front,
            front,
            bounds.centre,
            Fixing(wish.name, wish.count, holes),
        )
