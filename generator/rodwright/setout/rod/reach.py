"""How far parts reach into each other for their joints."""

from __future__ import annotations

from typing import Literal

from rodwright.setout.rod.sizes import easily_set
from rodwright.wishes.joints import JointSpec, JointWord


def joint_of(word: JointWord) -> JointSpec:
    """The joint of this name with its usual figures."""
    return JointSpec.model_validate({"joint": word})


def reach(wish: JointSpec, first_thickness: float, unit: Literal["mm", "in"]) -> float:
    """How far (mm) the second part reaches into the first, which is so thick there.

    As far as is wished; else about a third of the thickness in housings and for tongues, half
    in rebates (common practice, no source), all of it in a mitred corner, and nothing in
    other joints.
    """
    if wish.joint == "mitred":
        return first_thickness
    if wish.joint not in ("housed", "rebated", "tongued"):
        return 0.0
    if wish.depth is not None:
        return wish.depth
    return easily_set(first_thickness / (2 if wish.joint == "rebated" else 3), unit)
