"""What has to be given before anything can be worked out of a stock."""

from __future__ import annotations

from rodwright.trade.given_strength import strength_wanted
from rodwright.unit import Stock

_FIGURES = {
    "along": ("how stiff", "stiffness: 9300 N/mm2"),
    "across": ("how stiff across its grain", "stiffness_across: 600 N/mm2"),
    "shear": ("how stiff in shear lying flat", "shear_stiffness: 60 N/mm2"),
    "panel_shear": ("how stiff in shear in its own plane", "panel_shear_stiffness: 600 N/mm2"),
    "bending": ("how strong in bending", "bending_strength: 40 N/mm2"),
    "bending_across": (
        "how strong in bending across its grain",
        "bending_strength_across: 9 N/mm2",
    ),
    "shear_strength": ("how strong in shear", "shear_strength: 3 N/mm2"),
    "bearing": ("how strong in bearing", "bearing_strength: 4 N/mm2"),
    "gravity": ("how heavy", "density: 650"),
}


def lacking(stock: Stock, *figures: str) -> str:
    """What isn't known of a stock, what is, and what to give; empty if nothing is lacking.

    ``figures`` are those of :class:`rodwright.trade.mechanics.Mechanics` that are needed, its
    stiffness along the grain and its creep unless said.
    """
    known = stock.mechanics
    place = f"`strength:` of the stock `{stock.name}`"
    if known is None:
        return (
            f"nothing is known of how stiff `{stock.material}` is, only its density of "
            f"{stock.density:g} kg/m3; give in the stock `{stock.name}` "
            f"{strength_wanted(stock.kind)}"
        )
    for name in figures or ("along", "creep"):
        if getattr(known, name) is not None:
            continue
        if name == "creep":
            return (
                f"it isn't known how much `{stock.material}` creeps in such a room: EN 1995-1-1 "
                f"has no figure, for it isn't meant for one; give `creep:` under {place}, or take "
                "another board"
            )
        what, example = _FIGURES[name]
        return (
            f"it isn't known {what} `{stock.material}` is, only how stiff "
            f"({known.along.value:.0f} N/mm2); give `{example}` or the like under {place}"
        )
    return ""
