"""The box of a drawer: two sides that run through, two ends between them, and a bottom.

All lengths in mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass, replace
from itertools import product

from rodwright.geometry import TOUCH, Box
from rodwright.problems import Problems
from rodwright.setout.bench import Bench
from rodwright.setout.boards import Board, lay_board, screw_on
from rodwright.setout.carcass.box import BOTH_FACES
from rodwright.setout.joints import make_joint
from rodwright.setout.rod.reach import reach
from rodwright.setout.rod.sizes import easily_set
from rodwright.setout.setting import Setting
from rodwright.trade.gaps import BOTTOM_PLAY
from rodwright.unit import JointKind, Role, Stock
from rodwright.unit.directions import FORWARD, LEFT, X, Y, Z
from rodwright.wishes.drawers import DrawersSpec
from rodwright.wishes.joints import JointSpec

LEAST_INSIDE = 40.0
"""Narrowest drawer inside, mm, half a hand (common practice, no source)."""
LEAST_ABOVE = 20.0
"""Least height of a box's sides above its bottom, mm (common practice, no source)."""
LEAST_GROOVE = 3.0
"""Shallowest groove that holds a bottom, mm (common practice, no source)."""
EDGE_STEP = 1.0
"""Steps (mm) in which the outermost fixings of a corner are moved away from the bottom's groove."""
HEIGHT = {"side": 10.0, "under": 13.0, "runners": 10.0}
"""From the lower edge of a box to its bottom, mm (common practice, no source; under slides take up
about half an inch there, from memory)."""


@dataclass(frozen=True, slots=True)
class BoxWish:
    """What every box of a space is made like: stocks, groove, and the height of its bottom."""

    wish: DrawersSpec
    stock: Stock
    bottom: Stock
    groove: float
    height: float

    @property
    def above(self) -> float:
        """From the lower edge of the box to the upper face of its bottom."""
        return self.height + self.bottom.thickness


@dataclass(frozen=True, slots=True)
class Laid:
    """A box on the bench: its sides, its front end, and all its parts, by their refs."""

    sides: tuple[str, str]
    front: str
    refs: tuple[str, ...]


def box_wish(setting: Setting, wish: DrawersSpec, stock: Stock, bottom: Stock) -> BoxWish | None:
    """What a space's boxes are made like; None where they can't be, which is noted."""
    before, say, t = setting.problems.mark(), setting.say, stock.thickness
    groove = wish.bottom.groove
    if groove is None:
        groove = easily_set(t / 3, setting.unit)
        if groove < LEAST_GROOVE:
            setting.at("stock").refuse(
                f"a groove of a third of {say(t)} stock is too shallow to hold a drawer's bottom",
                "Use thicker stock, or give `bottom.groove`, at least "
                f"{setting.at_least(LEAST_GROOVE)}.",
            )
    elif groove > t / 2 + TOUCH:
        setting.at("bottom", "groove").refuse(
            f"grooves {say(groove)} deep are more than half of {say(t)} stock",
            f"Make them {say(easily_set(t / 3, setting.unit))} deep, or use thicker stock.",
        )
    elif groove < LEAST_GROOVE - TOUCH:
        setting.at("bottom", "groove").refuse(
            f"grooves {say(groove)} deep don't hold a drawer's bottom",
            f"Make them at least {setting.at_least(LEAST_GROOVE)} deep.",
        )
    if wish.corners.joint == "mitred" and wish.bottom.held == "from_rear":
        setting.at("corners").refuse(
            "the back of a mitred box is as high as its sides, so no bottom goes in under it",
            "Write `bottom: {held: all_round}`, or choose another joint.",
        )
    if setting.problems.noted_since(before):
        return None
    height = wish.bottom.height
    return BoxWish(
        wish,
        stock,
        bottom,
        groove,
        setting.sizes.usual(HEIGHT[wish.slides.kind]) if height is None else height,
    )


def lay_box(setting: Setting, like: BoxWish, box: Box, group: str) -> Laid:
    """Lay a drawer's box, without the front board, in a box of the unit frame."""
    bench = setting.bench
    stock, t = like.stock, like.stock.thickness
    (left, front, low), (right, rear, high) = box.low, box.high
    corners = like.wish.corners
    r = reach(corners, t, setting.unit)
    captured = like.wish.bottom.held == "all_round"
    sides = tuple(
        lay_board(
            bench,
            Board(Role.DRAWER_SIDE, name, group, stock, shows=BOTH_FACES, withdraw=FORWARD),
            Box((x, front, low), (x + t, rear, high)),
            along,
            face,
        ).ref
        for name, x, along, face in (
            ("Left drawer side", left, Y, X),
            ("Right drawer side", right - t, FORWARD, LEFT),
        )
    )
    back_low = low if captured else low + like.above
    ends = tuple(
        lay_board(
            bench,
            Board(Role.DRAWER_END, name, group, stock, shows=BOTH_FACES, withdraw=FORWARD),
            Box((left + t - r, y, z), (right - t + r, y + t, high)),
            LEFT if face is Y else X,
            face,
        ).ref
        for name, y, z, face in (
            ("Front drawer end", front, low, Y),
            ("Back drawer end", rear - t, back_low, FORWARD),
        )
    )
    bottom = _bottom(like, box, group, bench)
    # First of all, so that fixings keep clear of the grooves.
    _grooves(like, box, (*sides, *(ends if captured else ends[:1])), bench)
    before, corners_at = setting.problems.mark(), setting.at("corners")
    for end, side in product(ends, sides):
        # What one corner can't take, the others can't either, and it is told once.
        if not setting.problems.noted_since(before):
            _corner(corners_at, like, side, end, (*sides, *ends))
    kind = JointKind.FLOATING if like.bottom.kind == "board" else JointKind.GROOVE
    for holder in (*sides, *(ends if captured else ends[:1])):
        bench.meet(kind, holder, bottom)
    if not captured:
        screw_on(bench, bottom, ends[1])
    return Laid((sides[0], sides[1]), ends[0], (*sides, *ends, bottom))


def _corner(setting: Setting, like: BoxWish, side: str, end: str, box: Collection[str]) -> None:
    """Joint an end to a side, before the ``box`` goes in; fixings stand as near their usual place
    as the groove lets them."""
    wish = like.wish.corners
    half = setting.bench.bounds(end).size[2] / 2
    for each in _spread(wish, like.above, half, setting.sizes.usual(EDGE_STEP)):
        tried = Problems(setting.unit)
        make_joint(replace(setting, problems=tried), each, side, end, among=box)
        if not tried.noted_since():
            return
    make_joint(setting, wish, side, end, among=box)


def _spread(wish: JointSpec, above: float, half: float, step: float) -> Iterator[JointSpec]:
    """The joint as it is wished, and then with its outermost fixings farther and farther in."""
    yield wish
    edge = above + step
    while wish.edge is None and edge <= half:
        yield wish.model_copy(update={"edge": edge})
        edge += step


def _bottom(like: BoxWish, box: Box, group: str, bench: Bench) -> str:
    """The bottom, its grain from side to side, so that it can shrink and swell to the rear."""
    t, into = like.stock.thickness, like.groove - bench.sizes.usual(BOTTOM_PLAY)
    captured = like.wish.bottom.held == "all_round"
    low = box.low[2] + like.height
    return lay_board(
        bench,
        Board(Role.DRAWER_BOTTOM, "Drawer bottom", group, like.bottom, withdraw=FORWARD),
        Box(
            (box.low[0] + t - into, box.low[1] + t - into, low),
            (
                box.high[0] - t + into,
                box.high[1] - t + into if captured else box.high[1],
                low + like.bottom.thickness,
            ),
        ),
        X,
        Z,
    ).ref


def _grooves(like: BoxWish, box: Box, refs: tuple[str, ...], bench: Bench) -> None:
    """Plough each part from end to end, in the face that looks into the box."""
    t, d = like.stock.thickness, like.groove
    low = box.low[2] + like.height
    high = low + like.bottom.thickness
    for ref in refs:
        bounds = bench.bounds(ref)
        (x0, y0, _), (x1, y1, _) = bounds.low, bounds.high
        if bench.parts[ref].role is Role.DRAWER_SIDE:
            inner = box.low[0] + t if x0 < box.low[0] + TOUCH else box.high[0] - t
            x0, x1 = (inner - d, inner) if x0 < box.low[0] + TOUCH else (inner, inner + d)
        elif y0 < box.low[1] + TOUCH:
            y0, y1 = box.low[1] + t - d, box.low[1] + t
        else:
            y0, y1 = box.high[1] - t, box.high[1] - t + d
        bench.groove_along(ref, Box((x0, y0, low), (x1, y1, high)), "drawer bottom")
