"""The panel of a framed door: how thick it is, and what play it has in its groove."""

from __future__ import annotations

import math
from dataclasses import dataclass

from rodwright.geometry import TOUCH
from rodwright.setout.setting import Setting
from rodwright.trade.gaps import SHEET_GAP
from rodwright.unit import Stock
from rodwright.wishes.doors import DoorsSpec

LEAST_CHEEK = 4.0
"""Wood left on each side of a panel's groove, mm (common practice, no source)."""
LEAST_LAP = 2.0
"""What a panel keeps in its groove at the driest, mm (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Outline:
    """A door's bounds in mm, unit frame: x, z, and y of its front and rear."""

    left: float
    right: float
    low: float
    high: float
    front: float
    rear: float

    @property
    def width(self) -> float:
        """Left to right."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """Bottom to top."""
        return self.high - self.low


@dataclass(frozen=True, slots=True)
class Panel:
    """A panel's stock and thickness, and the gaps beside its sides and its ends, mm."""

    stock: Stock
    thickness: float
    beside: float
    ends: float


def fit_panel(
    setting: Setting, wish: DoorsSpec, outline: Outline, inner: Outline, stock: Stock
) -> Panel | None:
    """The panel, and the gaps that its swelling asks for, in a door of this stock."""
    say = setting.say
    if wish.panel.stock is not None:
        found = setting.at("stock").stock(wish.panel.stock)
        if found is None:
            return None
        stock = found
    thick = outline.rear - outline.front
    thickness = wish.panel.thickness
    if thickness is None:
        # Sheets are used as they are; boards are planed down to what the frame can hold.
        third = math.floor(thick / 3 * 2) / 2
        thickness = stock.thickness if stock.kind == "sheet" else min(stock.thickness, third)
    elif thickness > stock.thickness or (stock.kind == "sheet" and thickness != stock.thickness):
        setting.at("thickness").refuse(
            f"a panel {say(thickness)} thick can't come out of `{stock.name}`, which is "
            f"{say(stock.thickness)}",
            "Name other stock, or leave `thickness` out.",
        )
        return None
    cheek = (thick - thickness) / 2
    if cheek < LEAST_CHEEK - TOUCH:
        setting.at("thickness").refuse(
            f"a groove for a panel {say(thickness)} thick leaves {say(max(0.0, cheek))} on each "
            f"side of it in a frame {say(thick)} thick",
            f"Leave at least {setting.at_least(LEAST_CHEEK)}: take a thinner panel or a thicker "
            "frame.",
        )
        return None
    grows = stock.swelling(inner.width + 2 * wish.frame.groove, setting.moisture)
    beside = _gap(setting.at("clearance"), wish, stock, grows)
    if beside is None:
        return None
    return Panel(stock, thickness, beside, min(beside, setting.sizes.usual(SHEET_GAP)))


def _gap(setting: Setting, wish: DoorsSpec, stock: Stock, grows: float) -> float | None:
    """The gap on each side of a panel; None where it would burst the frame or fall out.

    The panel is held at its middle, so half of its movement goes to each side.  It may be
    made at any moisture content of its range, so the gap takes up all the swelling, and the
    groove holds it after all the shrinking.
    """
    say, sizes = setting.say, setting.sizes
    wished, groove = wish.panel.clearance, wish.frame.groove
    sheet = sizes.usual(SHEET_GAP)
    # Up to the next half millimetre, or 32nd, so that the figure can be measured.
    gap = sizes.round_up(grows) / 2 if stock.kind == "board" else sheet
    gap = max(gap, sheet) if wished is None else wished
    dry, wet = setting.moisture
    if gap < grows / 2 - TOUCH:
        setting.refuse(
            f"from {dry:g} to {wet:g} % moisture the panel swells by {say(grows)}: gaps of "
            f"{say(gap)} at each side let it burst the frame",
            f"Leave at least {say(sizes.round_up(grows) / 2)}, or leave `clearance` out.",
        )
        return None
    lap = groove - gap - grows / 2
    if lap < LEAST_LAP - TOUCH:
        needed = sizes.round_up(gap + grows / 2 + LEAST_LAP)
        shrunk = f" and shrunk by {say(grows)} as it dries to {dry:g} %" if grows else ""
        left = "nothing" if lap <= 0 else say(lap)
        calmer = stock.quarter_sawn is not None
        setting.refuse(
            f"with gaps of {say(gap)} at each side{shrunk}, the panel keeps {left} in a groove "
            f"{say(groove)} deep and can fall out",
            f"Make `frame.groove` at least {say(needed)}, the panel narrower (two doors), or take "
            + ("quarter-sawn wood (`sawn: quarter`) or a sheet." if calmer else "a sheet."),
        )
        return None
    return gap
