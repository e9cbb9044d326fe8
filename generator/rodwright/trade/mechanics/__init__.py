"""How stiff and how strong boards and sheets are, with the source of each figure."""

from rodwright.trade.mechanics.figures import Family, Mechanics
from rodwright.trade.mechanics.of import mechanics_of

__all__ = ["Family", "Mechanics", "mechanics_of"]
