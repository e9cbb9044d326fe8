"""Square legs under the carcass, with the blocks or rails that hold them."""

from __future__ import annotations

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.spacing import spread_between
from rodwright.setout.boards import Board, carry, lay_board, screw_on
from rodwright.setout.joints import make_joint
from rodwright.setout.setting import Setting
from rodwright.trade.gaps import GLUE_ROOM
from rodwright.trade.sizes import TradeSizes
from rodwright.trade.wood_left import BETWEEN
from rodwright.unit import Role, Stock
from rodwright.unit.directions import DOWN, FORWARD, X, Y, Z
from rodwright.wishes.base import LegsSpec
from rodwright.wishes.joints import JointSpec

GROUP = "Base"


def set_out_legs(setting: Setting, wish: LegsSpec) -> None:
    """Lay legs on the bench, in a row near the front and one near the rear, and what holds them."""
    rod, say = setting.rod, setting.say
    here = setting.at("stock") if wish.stock else setting
    stock = here.stock(wish.stock or None)
    if stock is None:
        return
    if stock.kind != "board":
        here.refuse(
            f"square legs come out of solid wood, and `{stock.name}` is a sheet",
            "Name a stock of kind `board` in `base.stock`.",
        )
        return
    section = wish.section if wish.section is not None else stock.thickness
    if section > stock.thickness + TOUCH:
        setting.at("section").refuse(
            f"legs {say(section)} square can't come out of `{stock.name}`, which is "
            f"{say(stock.thickness)} thick",
            "Make them thinner or name thicker stock.",
        )
        return
    held = 2 if wish.held_by == "blocks" else 0
    wide, deep = rod.outside.width - 2 * wish.inset, rod.outside.depth - 2 * wish.inset
    if wide < (2 + held) * section or deep < 2 * section + TOUCH:
        setting.at("inset").refuse(
            f"legs {say(section)} square, set in by {say(wish.inset)}, have no room under a "
            f"carcass {say(rod.outside.width)} x {say(rod.outside.depth)}",
            "Make `inset` or the legs smaller.",
        )
        return
    first, last = wish.inset, rod.outside.width - wish.inset - section
    xs = [first, *spread_between(first + section, last, section, wish.span), last]
    ys = [wish.inset, rod.outside.depth - wish.inset - section]
    feet = _Feet(setting, section, xs, ys)
    legs = feet.legs(stock)
    if wish.held_by == "blocks":
        feet.blocks(stock, legs)
    else:
        rails = setting.at("rail_stock").stock(wish.rail_stock or None)
        if rails is not None:
            feet.rails(wish, rails, legs)


def _dowels(section: float, rail: float, sizes: TradeSizes) -> JointSpec | None:
    """The dowels of rails in the middle of two sides of a leg: short enough to miss each other.

    Lengths in mm; None where none are.
    """
    for diameter in sorted(sizes.dowels, reverse=True)[1:]:
        reach = section / 2 - diameter / 2 - BETWEEN - sizes.usual(GLUE_ROOM)
        if rail / 3 <= diameter <= rail / 2 and reach >= diameter:
            return JointSpec.model_validate(
                {
                    "joint": "dowelled",
                    "diameter": diameter,
                    "length": sizes.round_down(2 * reach),
                }
            )
    return None


class _Feet:
    """Legs in rows, and what stands between them."""

    def __init__(self, setting: Setting, section: float, xs: list[float], ys: list[float]) -> None:
        self._setting, self._bench = setting, setting.bench
        self._base = setting.rod.outside.base
        self._section, self._xs, self._ys = section, xs, ys

    def legs(self, stock: Stock) -> dict[tuple[int, int], str]:
        """Legs by their numbers from the left and from the front."""
        s, laid = self._section, {}
        for i, x in enumerate(self._xs):
            for j, y in enumerate(self._ys):
                box = Box((x, y, 0.0), (x + s, y + s, self._base))
                leg = lay_board(
                    self._bench,
                    Board(Role.LEG, "Leg", GROUP, stock, withdraw=DOWN),
                    box,
                    Z,
                    FORWARD,
                )
                laid[i, j] = leg.ref
                carry(self._bench, leg.ref, self._setting.moisture, screwed=False)
        return laid

    def blocks(self, stock: Stock, legs: dict[tuple[int, int], str]) -> None:
        """A block on the inner side of every leg, screwed to it and up into the bottom."""
        setting, s, base = self._setting, self._section, self._base
        clear = self._xs[1] - self._xs[0] - s
        if clear < 2 * s:
            setting.at("span").refuse(
                f"blocks {setting.say(s)} wide have no room between legs "
                f"{setting.say(clear)} apart",
                "Make `span` larger, or write `held_by: rails`.",
            )
            return
        high = min(s, base / 2)
        for (i, j), leg in legs.items():
            left = self._xs[i] + (s if i < len(self._xs) / 2 else -s)
            y = self._ys[j]
            box = Box((left, y, base - high), (left + s, y + s, base))
            block = lay_board(
                self._bench,
                Board(Role.LEG, "Leg block", GROUP, stock, shows=(), withdraw=DOWN),
                box,
                Y,
                DOWN,
            )
            screw_on(self._bench, block.ref, leg, self._setting.moisture)
            carry(self._bench, block.ref, self._setting.moisture)

    def rails(self, wish: LegsSpec, stock: Stock, legs: dict[tuple[int, int], str]) -> None:
        """Rails on edge between neighbouring legs, in the middle of their thickness."""
        s, t, base = self._section, stock.thickness, self._base
        setting, say = self._setting, self._setting.say
        if t > s + TOUCH:
            setting.at("rail_stock").refuse(
                f"rails {say(t)} thick don't go between legs {say(s)} square",
                "Name thinner stock for them, or make the legs thicker.",
            )
            return
        if wish.rail_width >= base:
            setting.at("rail_width").refuse(
                f"rails {say(wish.rail_width)} wide reach the floor beside legs {say(base)} high",
                "Make them narrower.",
            )
            return
        dowels = _dowels(s, t, self._bench.sizes)
        if dowels is None:
            setting.at("section").refuse(
                f"legs {say(s)} square take no dowels from two sides for rails {say(t)} thick",
                "Make them thicker, or write `held_by: blocks`.",
            )
            return
        low, inset = base - wish.rail_width, (s - t) / 2
        across = range(len(self._xs))
        ties = [((i, j), (i + 1, j)) for j in (0, 1) for i in across[:-1]]
        ties += [((i, 0), (i, 1)) for i in across]
        for start, end in ties:
            x, y = self._xs[start[0]], self._ys[start[1]]
            if start[1] == end[1]:
                box = Box((x + s, y + inset, low), (self._xs[end[0]], y + inset + t, base))
            else:
                box = Box((x + inset, y + s, low), (x + inset + t, self._ys[1], base))
            along = X if start[1] == end[1] else Y
            rail = lay_board(
                self._bench,
                Board(Role.LEG, "Leg rail", GROUP, stock, withdraw=DOWN),
                box,
                along,
                FORWARD if along is X else X,
            )
            for end_of in (start, end):
                make_joint(setting.at("rail_width"), dowels, legs[end_of], rail.ref)
            carry(self._bench, rail.ref, self._setting.moisture, anchor=self._ys[0])
