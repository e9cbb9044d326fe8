"""Knobs and handles, and the screws that hold them; lengths in mm."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.geometry import TOUCH
from rodwright.trade.screws import HANDLE_BITE
from rodwright.trade.sizes import TradeSizes
from rodwright.unit import Fixing
from rodwright.wishes.doors import HandleSpec
from rodwright.wishes.drawers import DrawerHandleSpec


def handle_fixings(
    sizes: TradeSizes,
    wish: HandleSpec | DrawerHandleSpec,
    through: Sequence[float],
    on: str,
    play: float | None = None,
) -> tuple[Fixing, ...]:
    """The knobs or handles wished on a piece (its ref), and their screws.

    ``through`` has for each screw how
    much wood lies between its head and the handle; it has the least length that bites.  ``play`` is
    how wide the holes are in the drawer's box behind the front, if that has to move on it.
    """
    behind = (
        f", {sizes.say(play)} wide in the drawer's box so that the wood can move" if play else ""
    )
    count = wish.count if isinstance(wish, DrawerHandleSpec) else 1
    holes = f"2 holes {sizes.say(wish.spacing)} apart" if wish.spacing else "1 hole"
    return (
        Fixing(wish.name, count, holes, f"{sizes.say(wish.hole)}, right through", on),
        *(
            Fixing(
                "handle screw",
                sum(abs(each - wood) < TOUCH for each in through),
                f"{sizes.handle_thread} x {sizes.say(screw_length(sizes, wood))}",
                f"through {sizes.say(wood)}{behind}",
                on,
            )
            for wood in sorted(set(through))
        ),
    )


def screw_length(sizes: TradeSizes, through: float) -> float:
    """Length of a handle's screw through so much wood: the least that bites, of those sold."""
    fit = [each for each in sizes.handle_lengths if each >= through + HANDLE_BITE - TOUCH]
    return min(fit, default=sizes.round_up(through + HANDLE_BITE))
