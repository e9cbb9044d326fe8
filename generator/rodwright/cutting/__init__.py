"""What to buy and how to cut it: plans from the stock at hand, with proof of how good they are.

:func:`plan_boards` and :func:`plan_sheets` take plain sizes and know nothing of furniture.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from rodwright.cutting.pieces import Inner, Piece
from rodwright.cutting.plans import CannotCutError, Layout, Offcut, Placed, Plan
from rodwright.cutting.supplies import Flaw, Supply, Trim

if TYPE_CHECKING:
    from rodwright.cutting.boards.planning import plan_boards
    from rodwright.cutting.bounds.fill import fill_sheet
    from rodwright.cutting.sheets.planning import plan_sheets

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
    "fill_sheet",
    "plan_boards",
    "plan_sheets",
]

_PLANNING = {
    "fill_sheet": "rodwright.cutting.bounds.fill",
    "plan_boards": "rodwright.cutting.boards.planning",
    "plan_sheets": "rodwright.cutting.sheets.planning",
}
"""Where those are that load solvers, which happens when they are first used."""


def __getattr__(name: str) -> Any:
    if name not in _PLANNING:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from importlib import import_module

    return getattr(import_module(_PLANNING[name]), name)
