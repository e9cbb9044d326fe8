"""Will it hold, will it stand: figures of strength, each with its formula, inputs and sources."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from itertools import chain

from rodwright.strength.fixings import level_joints
from rodwright.strength.framed_doors import framed_doors
from rodwright.strength.ground import ground
from rodwright.strength.hanging import hanging
from rodwright.strength.levels import levels
from rodwright.strength.lifting import lifting
from rodwright.strength.lipped_edges import lipped_edges
from rodwright.strength.moving_parts import moving_joints
from rodwright.strength.racking import racking
from rodwright.strength.results import Result
from rodwright.strength.runners_and_frames import frame_joints, runner_joints
from rodwright.strength.tipping import tipping
from rodwright.strength.uprights import uprights
from rodwright.unit import Unit

__all__ = ["ANALYSES", "strength_of"]

ANALYSES: tuple[Callable[[Unit], Iterable[Result]], ...] = (
    levels,
    lipped_edges,
    uprights,
    racking,
    ground,
    level_joints,
    moving_joints,
    runner_joints,
    frame_joints,
    framed_doors,
    hanging,
    tipping,
    lifting,
)
"""Each gives results of a unit, in the order of the table."""


def strength_of(unit: Unit) -> tuple[Result, ...]:
    """Every figure of a unit's strength that can be worked out from its parts and what they carry.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    return tuple(chain.from_iterable(analysis(unit) for analysis in ANALYSES))
