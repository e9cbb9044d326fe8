"""What units' parts are cut from: pieces, their labels and the stock they may come from.

:func:`lots_of` makes lots of :class:`Job` s: one for each material of one thickness and kind.
"""

from rodwright.cutting.demand.jobs import Job
from rodwright.cutting.demand.lots import lots_of
from rodwright.cutting.demand.refusals import DemandError, Refusal

__all__ = ["DemandError", "Job", "Refusal", "lots_of"]
