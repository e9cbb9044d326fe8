"""What to buy and how to cut it: plans from the stock at hand, with proof of how good they are.

:func:`plan_boards` and :func:`plan_sheets` take plain sizes and know nothing of furniture.
"""

from rodwright.cutting.pieces import Inner, Piece
from rodwright.cutting.plans import CannotCutError, Layout, Offcut, Placed, Plan
from rodwright.cutting.supplies import Flaw, Supply, Trim

__all__ = [
    "CannotCutError",
    "Flaw",
    "Inner",
    "Layout",
    "Offcut",
    "Piece",
    "Placed",
    "Plan",
    "Supply",
    "Trim",
]
