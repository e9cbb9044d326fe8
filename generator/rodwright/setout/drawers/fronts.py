"""The fronts of drawers: how high and wide they are, and what they cover.

All lengths in mm, unit frame.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.geometry import TOUCH
from rodwright.setout.carcass.division import divide
from rodwright.setout.inside import Space
from rodwright.setout.setting import Setting
from rodwright.unit import Stock
from rodwright.wishes.drawers import DrawersSpec
from rodwright.wishes.fields import Share


@dataclass(frozen=True, slots=True)
class Fronts:
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


def set_out_fronts(
    setting: Setting, wish: DrawersSpec, stock: Stock, space: Space
) -> Fronts | None:
    """The fronts of a space's drawers; None where they can't be made, which is noted."""
    before = setting.problems.mark()
    edges = _edges(setting, wish, space)
    thickness = _thickness(setting, wish, stock)
    if setting.problems.noted_since(before):
        return None
    left, right, low, high = edges
    say = setting.say
    if right - left <= 0 or high - low <= 0:
        setting.at("gap").refuse(
            f"gaps of {say(wish.gap)} leave nothing of fronts in an opening of "
            f"{say(space.front.width)} x {say(space.front.height)}",
            "Make the gap smaller or the space larger.",
        )
        return None
    heights = _heights(setting, wish, high - low)
    zs, z = [], high
    for height in heights:
        zs.append((z - height, z))
        z -= height + wish.gap
    plane = max(space.front.plane, space.setback) if space.closed else space.front.plane
    face = plane + wish.setback if wish.hung == "inset" else plane - wish.bumper - thickness
    return Fronts(stock, left, right, face, thickness, tuple(zs)) if zs else None


def _edges(setting: Setting, wish: DrawersSpec, space: Space) -> tuple[float, float, float, float]:
    """Outline of all fronts together: left, right, low, high.

    Inset fronts leave the gap to what is round them, overlay ones half of it to what they may
    cover; where nothing stands between two rows, each leaves half.
    """
    rod, front, gap, say = setting.rod, space.front, wish.gap, setting.say
    covers = {
        "left": front.cover_left, "right": front.cover_right,
        "low": front.cover_low, "high": front.cover_high,
    }  # fmt: skip
    reach = {edge: cover - gap / 2 for edge, cover in covers.items()}
    if wish.hung == "inset":
        shared = {
            "low": space.floor is None and space.low > rod.inside.floor + TOUCH,
            "high": space.ceiling is None and space.high < rod.inside.ceiling - TOUCH,
        }
        reach = {edge: -gap / 2 if shared.get(edge) else -gap for edge in covers}
        for key in ("overlay", "bumper"):
            if key in wish.model_fields_set and getattr(wish, key) is not None:
                setting.at(key).refuse(
                    "inset fronts cover nothing",
                    f"Leave `{key}` out, or write `hung: overlay`.",
                )
    elif space.closed or space.covered:
        setting.at("hung").refuse(
            "overlay fronts have no room behind a door",
            "Write `hung: inset`.",
        )
    elif wish.overlay is not None:
        least = min((r for edge, r in reach.items() if covers[edge] > 0), default=0.0)
        if wish.overlay > least + TOUCH:
            setting.at("overlay").refuse(
                f"fronts can't cover {say(wish.overlay)} of what is round them: there are "
                f"{say(max(least, 0.0))}, with {say(gap / 2)} left to what comes next",
                "Make it smaller, or leave it out.",
            )
        reach = {e: wish.overlay if covers[e] > 0 else r for e, r in reach.items()}
    for key in ("packing", "setback"):
        if getattr(wish, key) and wish.hung == "overlay":
            setting.at(key).refuse(
                f"overlay fronts lie over what is round them, so `{key}` says nothing",
                "Leave it out, or write `hung: inset`.",
            )
    handle = wish.handle
    if (space.closed or space.covered) and handle and handle.projection > wish.setback + TOUCH:
        setting.at("handle").refuse(
            f"a {handle.name} that stands out {say(handle.projection)} has no room behind a door, "
            f"before fronts set back {say(wish.setback)}",
            "Make `setback` as much, or leave the handle out.",
        )
    for edge in ("left", "right"):
        reach[edge] -= wish.packing
    return (
        front.left - reach["left"], front.right + reach["right"],
        front.low - reach["low"], front.high + reach["high"],
    )  # fmt: skip


def _thickness(setting: Setting, wish: DrawersSpec, stock: Stock) -> float:
    thickness, say = wish.front_thickness, setting.say
    if thickness is None:
        return stock.thickness
    if thickness > stock.thickness + TOUCH or (
        stock.kind == "sheet" and thickness < stock.thickness - TOUCH
    ):
        setting.at("front_thickness").refuse(
            f"fronts {say(thickness)} thick can't come out of `{stock.name}`, which is "
            f"{say(stock.thickness)}",
            "Leave it out, or name other stock in `front_stock`.",
        )
    return thickness


def _heights(setting: Setting, wish: DrawersSpec, whole: float) -> tuple[float, ...]:
    """Heights of the fronts from the top down; none where they don't add up, which is noted."""
    say = setting.say
    if (wish.count is None) == (wish.fronts is None):
        setting.refuse(
            "drawers need one of `count` and `fronts`; there is "
            + ("none of them" if wish.count is None else "`count` and `fronts`"),
            "Give exactly one.",
        )
        return ()
    if wish.fronts is not None:
        return divide(setting.at("fronts"), whole, wish.gap, wish.fronts, ("fronts", "gaps"))
    assert wish.count is not None
    if whole - wish.gap * (wish.count - 1) <= 0:
        setting.at("count").refuse(
            f"{wish.count} fronts with gaps of {say(wish.gap)} don't fit a height of {say(whole)}",
            "Take fewer drawers.",
        )
        return ()
    share = [Share(1.0)] * wish.count
    return divide(setting.at("count"), whole, wish.gap, share, ("fronts", "gaps"))
