"""How far a piece goes into the joints that its step closes, mm."""

from __future__ import annotations

from rodwright.making.bodies import body_of
from rodwright.making.steps import Step
from rodwright.making.sweeping import Sweeps
from rodwright.unit import JointKind, Unit

_LET_INTO = (
    JointKind.HOUSING,
    JointKind.REBATE,
    JointKind.GROOVE,
    JointKind.TONGUE,
    JointKind.FLOATING,
)


def depth_of(unit: Unit, step: Step) -> float:
    """How far (mm) a step's pieces go into housings, rebates and grooves along their way: the
    farthest of them; 0 where nothing is let into anything.

    Unlike the step's travel it counts nothing that the pieces merely pass.
    """
    if not any(step.towards):
        return 0.0
    joints = [joint for joint in step.joints if joint.kind in _LET_INTO]
    refs = dict.fromkeys(ref for joint in joints for ref in (joint.first, joint.second))
    sweeps = Sweeps({ref: body_of(unit.part(ref)) for ref in refs})
    found = [0.0]
    for joint in joints:
        lows, highs = zip(
            *(sweeps.span(ref, step.towards) for ref in (joint.first, joint.second)), strict=True
        )
        found.append(min(highs) - max(lows))
    return max(found)
