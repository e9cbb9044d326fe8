"""The rod: the main lines of a unit, from which every part is taken.

All lengths in mm, unit frame: the carcass fills ``[0, width] x [0, depth] x [base, height]``.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.setout.rod.front_and_back import BackLines, FrameLines, LippingLines
from rodwright.setout.rod.reach import reach
from rodwright.unit import Opening, Stock
from rodwright.wishes.joints import JointSpec


@dataclass(frozen=True, slots=True)
class OutsideLines:
    """Where the carcass ends.

    ``base`` and ``height`` are where it begins and ends, ``overall`` is the top of the whole piece,
    ``rear`` the y of the rear of the back.  ``toe`` is the height of a notch at the foot of the
    sides (0: none).  ``gap_behind`` is what an opening leaves behind it (None: not known).
    """

    width: float
    base: float
    height: float
    overall: float
    depth: float
    rear: float
    toe: float
    gap_behind: float | None

    @property
    def foot(self) -> float:
        """Height at which the front of the carcass begins: where it stands, or over its toe."""
        return max(self.base, self.toe)


@dataclass(frozen=True, slots=True)
class InsideLines:
    """What bounds the clear space inside.

    ``floor`` and ``ceiling`` are where it begins and ends, ``shelf_rear`` is where shelves and
    dividers end at the back.
    """

    has_top: bool
    has_bottom: bool
    bottom_underside: float
    floor: float
    ceiling: float
    shelf_rear: float


@dataclass(frozen=True, slots=True)
class FrontLines:
    """What stands in the front.

    ``head`` is how high door and drawer fronts may reach because of what stands out above them.
    """

    frame: FrameLines | None
    lipping: LippingLines | None
    head: float

    @property
    def face(self) -> float:
        """The y of the front of the face frame, or of the carcass where there is none."""
        return -self.frame.thickness if self.frame is not None else 0.0

    def behind_lipping(self, edge: str) -> float:
        """The y at which the panels named by ``edge`` end at the front: behind their lipping, if
        they have one."""
        if self.lipping is None or self.frame is not None or edge not in self.lipping.edges:
            return 0.0
        return self.lipping.thickness


@dataclass(frozen=True, slots=True)
class Joinery:
    """How parts of the carcass meet.

    ``corners`` is how top and bottom meet the sides, ``usual`` how dividers and shelves meet what
    carries them unless said; ``housing`` is the depth of housings, if it is given.
    """

    corners: JointSpec
    usual: JointSpec
    housing: float | None
    unit: Literal["mm", "in"]

    def joint(self, wish: JointSpec | None) -> JointSpec:
        """A joint inside as it is wished, or the usual one."""
        return housed_to(wish, self.housing) if wish is not None else self.usual

    def reach(self, joint: JointSpec, thickness: float) -> float:
        """How far a part reaches into one of this thickness that carries it."""
        return reach(joint, thickness, self.unit)


@dataclass(frozen=True, slots=True)
class Rod:
    """Everything the parts are set out from."""

    stocks: dict[str, Stock]
    stock: Stock
    outside: OutsideLines
    inside: InsideLines
    front: FrontLines
    joinery: Joinery
    back: BackLines | None
    opening: Opening | None

    @property
    def thickness(self) -> float:
        """Thickness of the carcass stock."""
        return self.stock.thickness


def housed_to(joint: JointSpec, depth: float | None) -> JointSpec:
    """A housed joint whose own depth isn't given, to this depth."""
    if joint.joint != "housed" or joint.depth is not None or depth is None:
        return joint
    return joint.model_copy(update={"depth": depth})
