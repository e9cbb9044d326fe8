"""What the carcass stands on: a plinth, a toe board, legs or adjustable feet."""

from __future__ import annotations

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.spacing import spread_between
from rodwright.setout import looks
from rodwright.setout.around.legs import set_out_legs
from rodwright.setout.boards import Board, carry, lay_board, screw_on
from rodwright.setout.fixings import screws
from rodwright.setout.rod.sizes import feet_across, feet_places
from rodwright.setout.setting import Setting
from rodwright.trade.feet import (
    CLIPPED_BOARD_ROOM,
    FOOT,
    FOOT_INSET,
    FOOT_RANGE,
    FOOT_SCREW,
    FOOT_SCREWS,
)
from rodwright.trade.sizes import TradeSizes
from rodwright.unit import Fixing, JointKind, Role, Stock, Surface
from rodwright.unit.directions import DOWN, FORWARD, LEFT, X, Y
from rodwright.wishes.base import BaseSpec, LegsSpec, LevellersSpec, PlinthSpec, ToeBoardSpec

GROUP = "Base"


def set_out_base(setting: Setting) -> None:
    """Lay what the carcass stands on on the bench; what can't be made is noted."""
    wish = setting.spec.base
    assert wish is not None
    setting.notes.levelling = _levelling(wish, setting.sizes)
    if setting.spec.hung:
        setting.moved_to(("hung",)).refuse(
            "a unit that hangs on the wall stands on no base", "Leave `hung` or `base` out."
        )
    if setting.carcass.bottom is None and not isinstance(wish, PlinthSpec):
        setting.moved_to(("carcass", "bottom")).refuse(
            f"there is no bottom to fix `{wish.kind}` to",
            "Write `bottom: between`.",
        )
        return
    if isinstance(wish, LegsSpec):
        set_out_legs(setting, wish)
        return
    if isinstance(wish, LevellersSpec):
        _levellers(setting, wish)
        return
    stock = setting.at("stock").stock(wish.stock)
    if stock is None:
        return
    if isinstance(wish, PlinthSpec):
        _plinth(setting, wish, stock)
    else:
        _toe_board(setting, wish, stock)


def _levelling(wish: BaseSpec, sizes: TradeSizes) -> float | None:
    """How far (mm) the base can be packed or turned up off a floor that falls away from its high
    spot; None where it isn't said."""
    if isinstance(wish, PlinthSpec):
        return wish.levelling
    if isinstance(wish, LevellersSpec):
        return _range(wish, sizes.usual(FOOT_RANGE))[1] - wish.height
    return None


def _plinth(setting: Setting, wish: PlinthSpec, stock: Stock) -> None:
    """Front and back over the whole width, ends and cross members between them.

    It stands on the floor's high spot, whatever it is packed up off the low side.
    """
    rod, bench, say, t = setting.rod, setting.bench, setting.say, stock.thickness
    left, right = wish.sides, rod.outside.width - wish.sides
    front, rear = rod.front.face + wish.toe_space, rod.outside.depth - wish.rear
    if wish.levelling >= wish.height:
        setting.at("levelling").refuse(
            f"packed up by {say(wish.levelling)}, a plinth {say(wish.height)} high stands on more "
            f"packing than wood",
            "Make it smaller: it is how far the floor may fall away from its high spot.",
        )
        return
    if rear - front < 3 * t:
        key = "rear" if wish.rear > wish.toe_space else "toe_space"
        setting.at(key).refuse(
            f"set back by {say(wish.toe_space)} in front and {say(wish.rear)} behind, a plinth of "
            f"{say(t)} boards has no room under a carcass {say(rod.outside.depth)} deep",
            "Make the toe space smaller or the unit deeper.",
        )
        return
    if right - left < 3 * t:
        setting.at("sides").refuse(
            f"set in by {say(wish.sides)} at each side, a plinth of {say(t)} boards has no room "
            f"under a carcass {say(rod.outside.width)} wide",
            "Make `sides` smaller.",
        )
        return
    if setting.carcass.bottom is None and wish.sides > rod.thickness - TOUCH:
        setting.at("sides").refuse(
            f"there is no bottom, and a plinth set in by {say(wish.sides)} misses sides "
            f"{say(rod.thickness)} thick",
            "Make `sides` smaller, or write `bottom: between`.",
        )
        return
    low, high = 0.0, rod.outside.base
    long = [
        lay_board(
            bench,
            Board(
                Role.PLINTH,
                name,
                GROUP,
                stock,
                shows=(Surface.FACE,) if y == front else (),
                withdraw=DOWN,
            ),
            Box((left, y, low), (right, y + t, high)),
            X,
            face,
        ).ref
        for name, y, face in (("Plinth front", front, FORWARD), ("Plinth back", rear - t, Y))
    ]
    between = [left, *spread_between(left + t, right - t, t, wish.spacing), right - t]
    for number, x in enumerate(between):
        outer = number in (0, len(between) - 1)
        cross = lay_board(
            bench,
            Board(
                Role.PLINTH,
                "Plinth end" if outer else "Plinth cross member",
                GROUP,
                stock,
                shows=(Surface.FACE,) if outer else (),
                withdraw=DOWN,
            ),
            Box((x, front + t, low), (x + t, rear - t, high)),
            Y,
            X if number else LEFT,
        )
        for board in long:
            screw_on(bench, board, cross.ref, setting.moisture)
    for part in bench.refs_of(Role.PLINTH):
        carry(bench, part, setting.moisture, anchor=front)


def _toe_board(setting: Setting, wish: ToeBoardSpec, stock: Stock) -> None:
    """Notch the sides at the toe, and stand a board behind the notches, under the bottom."""
    rod, bench, carcass = setting.rod, setting.bench, setting.carcass
    say, t = setting.say, stock.thickness
    assert carcass.bottom is not None
    front = rod.front.face + wish.toe_space
    if carcass.bottom.over:
        setting.moved_to(("carcass", "bottom")).refuse(
            "sides that run to the floor past a toe board can't stand on the bottom",
            "Write `bottom: between`, or choose another `base`.",
        )
    elif front <= rod.front.behind_lipping("sides") + TOUCH:
        setting.at("toe_space").refuse(
            f"a toe space of {say(wish.toe_space)} doesn't reach behind the face frame or lipping "
            f"before the sides",
            f"Make it deeper than {say(rod.front.behind_lipping('sides') - rod.front.face)}.",
        )
    elif front + t > rod.outside.depth - TOUCH:
        setting.at("toe_space").refuse(
            f"a toe space of {say(wish.toe_space)} leaves no room for a board {say(t)} thick "
            f"under a carcass {say(rod.outside.depth)} deep",
            "Make it smaller or the unit deeper.",
        )
    else:
        board = lay_board(
            bench,
            Board(Role.PLINTH, "Toe board", GROUP, stock, withdraw=DOWN),
            Box((carcass.left.right, front, 0.0), (carcass.right.left, front + t, rod.outside.toe)),
            X,
            FORWARD,
        )
        for side in (carcass.left, carcass.right):
            before = rod.front.behind_lipping("sides")
            bench.notch(
                side.ref,
                Box((side.left, before, 0.0), (side.right, front, rod.outside.toe)),
                "toe space",
            )
            screw_on(bench, side.ref, board.ref, setting.moisture)
        screw_on(bench, carcass.bottom.ref, board.ref, setting.moisture)


def _levellers(setting: Setting, wish: LevellersSpec) -> None:
    """Count feet: a row near the front and one near the rear, none farther apart than asked."""
    rod, bench, say = setting.rod, setting.bench, setting.say
    least, most = _range(wish, bench.sizes.usual(FOOT_RANGE))
    if not least <= wish.height <= most:
        setting.at("range" if wish.range else "height").refuse(
            f"feet that can be set from {say(least)} to {say(most)} don't give a height of "
            f"{say(wish.height)}",
            "Change the height, or choose other feet.",
        )
        return
    across, deep = (
        feet_across(size, wish.spacing) for size in (rod.outside.width, rod.outside.depth)
    )
    count, sizes = across * deep, bench.sizes
    _show_feet(setting, wish, deep)
    reach = f"{say(least)} to {say(most)} high"
    under = " and ".join(bench.refs_of(Role.BOTTOM))
    bench.buy(Fixing(FOOT, count, reach, on=under))
    bench.buy(
        screws(
            sizes,
            FOOT_SCREWS * count,
            sizes.longest_screw(FOOT_SCREW),
            sizes.pilot_hole(sizes.screw, rod.stock.grip),
            on=f"the feet under {under}",
        )
    )
    if wish.board is None:
        return
    stock = setting.at("board", "stock").stock(wish.board.stock)
    if stock is None:
        return
    front, t = rod.front.face + wish.board.toe_space, stock.thickness
    if front + t > rod.outside.depth / 2:
        setting.at("board", "toe_space").refuse(
            f"a toe space of {say(wish.board.toe_space)} puts the plinth board behind the middle "
            f"of a carcass {say(rod.outside.depth)} deep",
            "Make it smaller or the unit deeper.",
        )
        return
    room = min(CLIPPED_BOARD_ROOM, rod.outside.base / 2)
    board = lay_board(
        bench,
        Board(Role.PLINTH, "Plinth board", GROUP, stock, withdraw=FORWARD),
        Box((0.0, front, 0.0), (rod.outside.width, front + t, rod.outside.base - room)),
        X,
        FORWARD,
    )
    for ref in bench.refs_of(Role.BOTTOM):
        at = (rod.outside.width / 2, front + t / 2, rod.outside.base)
        bench.join(JointKind.CLIPPED, ref, board.ref, at, Fixing("plinth clip", across))
        bench.keep_apart(ref, board.ref, room)


def _show_feet(setting: Setting, wish: LevellersSpec, deep: int) -> None:
    """Show the feet, each on the bottom that stands over it."""
    rod, bench = setting.rod, setting.bench
    step = (rod.outside.depth - 2 * FOOT_INSET) / (deep - 1)
    bottoms = {ref: bench.bounds(ref) for ref in bench.refs_of(Role.BOTTOM)}
    for x in feet_places(wish, rod.outside.width):
        over = next((ref for ref, box in bottoms.items() if box.low[0] <= x <= box.high[0]), None)
        if over is None:
            continue
        for number in range(deep):
            shapes = looks.foot(x, FOOT_INSET + number * step, rod.outside.base)
            bench.show(over, *shapes, fine=True, ware="plastic")


def _range(wish: LevellersSpec, usual: float) -> tuple[float, float]:
    """The least and the most height that the feet can be set to."""
    if wish.range is not None:
        return wish.range.least, wish.range.most
    return max(wish.height - usual, 0.0), wish.height + usual
