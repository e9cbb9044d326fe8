"""Cuts in their order: what is set, what is cut, what falls off."""

from rodwright.cutting.steps.cuts import Contour, Held, LotSteps, Result, SheetSteps, Step
from rodwright.cutting.steps.sequence import lot_steps

__all__ = ["Contour", "Held", "LotSteps", "Result", "SheetSteps", "Step", "lot_steps"]
