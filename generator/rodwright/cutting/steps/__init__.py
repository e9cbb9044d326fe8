"""Cuts in their order: what is set, what is cut, what falls off."""

from rodwright.cutting.steps.arrange import arranged
from rodwright.cutting.steps.come_off import that_come_off
from rodwright.cutting.steps.cuts import Contour, Held, LotSteps, Result, SheetSteps, Step
from rodwright.cutting.steps.sequence import lot_steps
from rodwright.cutting.steps.settings import Setting, rip_settings, stop_settings

__all__ = [
    "Contour",
    "Held",
    "LotSteps",
    "Result",
    "Setting",
    "SheetSteps",
    "Step",
    "arranged",
    "lot_steps",
    "rip_settings",
    "stop_settings",
    "that_come_off",
]
