"""How far parts reach into each other for their joints."""

from __future__ import annotations

from typing import Literal

from rodwright.setout.rod.sizes import easily_set
from rodwright.wishes.joints import JointSpec, JointWord


def joint_of(word: JointWord) -> JointSpec:
    """The joint of this name with its usual figures."""
    return JointSpec.model_validate({"joint": word})


REACHES: dict[JointWord, int] = {
    "butted": 0,
    "screwed": 0,
    "housed": 3,
    "rebated": 2,
    "tongued": 3,
    "dowelled": 0,
    "biscuited": 0,
    "loose-tenoned": 0,
    "pocket-screwed": 0,
    "knock-down": 0,
    "mitred": 1,
}
"""The part of the first's thickness that each joint reaches into, as a divisor; 0 for none: a third
in housings and for tongues, half in rebates (common practice, no source), all of it in a mitre."""


def reach(wish: JointSpec, first_thickness: float, unit: Literal["mm", "in"]) -> float:
    """How far (mm) the second part reaches into the first, which is so thick there.

    As far as is wished, or by the usual part of the thickness, made round.
    """
    divisor = REACHES[wish.joint]
    if divisor < 2:
        return divisor * first_thickness
    if wish.depth is not None:
        return wish.depth
    return easily_set(first_thickness / divisor, unit)
