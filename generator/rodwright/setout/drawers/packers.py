"""What slides are fixed to where a face frame, or packing, stands inside the uprights.

All lengths in mm, unit frame.
"""

from __future__ import annotations

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.spacing import spread_between
from rodwright.setout.boards import Board, lay_board, screw_on
from rodwright.setout.drawers.slides import Chest
from rodwright.trade.hinges import PAST_HINGE
from rodwright.trade.slides import FIRST_HOLE, PACKERS_APART
from rodwright.unit import Role
from rodwright.unit.directions import Y, Z


def lay_packers(chest: Chest) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Lay what brings the slides of all drawers of a space up to the edge of their way; its refs at
    the left and at the right, none where the uprights stand there themselves.

    Strips stand upright over the whole height of the space, as wide as there is to fill, so that
    they are screwed to the uprights by themselves, between the slides, and the slides go
    across them at any height.  One stands at the slides' first hole, or behind the hinges of
    a door, one at their rear, and others between.
    """
    setting, space, clear = chest.setting, chest.space, chest.clear
    bench, stock = setting.bench, setting.rod.stock
    t = stock.thickness
    behind_door = space.closed or space.covered
    first = clear.start + (PAST_HINGE if behind_door else FIRST_HOLE - t / 2)
    last = min(clear.start + chest.run.length - FIRST_HOLE + t / 2, clear.rear) - t
    places = (first, *(y for y in spread_between(first + t, last, t, PACKERS_APART)), last)
    if last < first + t:
        places = (min(first, clear.rear - t),)

    def at(low: float, high: float, upright: str) -> tuple[str, ...]:
        if high - low <= TOUCH:
            return ()
        refs = []
        for y in places:
            box = Box((low, y, space.low), (high, y + t, space.high))
            strip = lay_board(
                bench,
                Board(Role.PACKER, "Drawer packer", "Carcass", stock, shows=()),
                box,
                Z,
                Y,
            )
            screw_on(bench, strip.ref, upright)
            refs.append(strip.ref)
        return tuple(refs)

    return (
        at(space.left.right, clear.left, space.left.ref),
        at(clear.right, space.right.left, space.right.ref),
    )
