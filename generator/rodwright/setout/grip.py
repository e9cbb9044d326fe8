"""What a screw goes into, as far as its pilot hole asks."""

from __future__ import annotations

from rodwright.trade.sizes import Grip
from rodwright.unit import Stock

_SPLITTING = ("mdf", "chipboard", "particle", "fibreboard", "fiberboard")
_SOFTWOODS = frozenset(
    {
        "pine",
        "spruce",
        "fir",
        "larch",
        "hemlock",
        "cedar",
        "redwood",
        "whitewood",
        "deal",
        "cypress",
    }
)
"""Woods of conifers, by a word of their names."""


def grip(stock: Stock) -> Grip:
    """How a stock takes screws; a wood that isn't known for a softwood counts as hard."""
    material = stock.material.lower()
    if any(name in material for name in _SPLITTING):
        return "splitting"
    if stock.kind == "sheet":
        return "sheet"
    words = set(material.replace("-", " ").split())
    return "softwood" if words & _SOFTWOODS else "hardwood"
