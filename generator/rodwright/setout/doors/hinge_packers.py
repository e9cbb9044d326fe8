"""What the plates of concealed hinges are screwed to where a face frame stands inside the upright.

All lengths in mm, unit frame.
"""

from __future__ import annotations

from rodwright.geometry import Box
from rodwright.setout.boards import Board, lay_board, screw_on
from rodwright.setout.doors.hinge_places import Hinge
from rodwright.trade.hinges import BEHIND_FRAME, HALF_PACKER, PLATE_DEPTH
from rodwright.trade.wood_left import LEAST_FLOOR
from rodwright.unit import JointKind, Role
from rodwright.unit.directions import Y, Z


def holds_plates(hinge: Hinge) -> bool:
    """Whether packers are thick enough for a plate's screws to hold in them alone."""
    return hinge.packing >= PLATE_DEPTH + LEAST_FLOOR


def lay_hinge_packer(hinge: Hinge, plate: float, z: float) -> str:
    """Lay the packer under the plate whose middle is at this height, and give its ref.

    It is ripped from the stock of the frame, as wide as there is to pack, and stands with its
    edge on the upright, so that the plate's screws go across the grain. It is screwed on above and
    below the plate; one too thin for that is glued, and the plate is screwed on through it.
    """
    bench, space = hinge.bench, hinge.space
    stile = bench.parts_of(Role.STILE)[0]
    thick = stile.blank.thickness
    half = bench.sizes.usual(HALF_PACKER)
    left, right = sorted((hinge.face, hinge.surround))
    front = max(plate - thick / 2, BEHIND_FRAME)
    low, high = max(z - half, space.low), min(z + half, space.high)
    box = Box((left, front, low), (right, front + thick, high))
    for other in bench.parts_of(Role.PACKER):  # of hinges near each other, they end at each other
        beside = bench.bounds(other.ref)
        if beside.intersects(box):
            low, high = (
                (max(low, beside.high[2]), high)
                if beside.centre[2] < z
                else (low, min(high, beside.low[2]))
            )
    box = box.spanning(2, low, high)
    packer = lay_board(
        bench,
        Board(Role.PACKER, "Hinge packer", "Carcass", stile.blank.stock, shows=()),
        box,
        Z,
        Y,
    )
    if holds_plates(hinge):
        screw_on(bench, packer.ref, hinge.upright.ref)
    else:
        bench.meet(JointKind.FACE_GLUED, hinge.upright.ref, packer.ref)
    return packer.ref
