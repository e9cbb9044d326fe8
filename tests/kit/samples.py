"""A small unit set out by hand, for tests of everything that comes after the set-out."""

from __future__ import annotations

from rodwright.geometry import Box, Vector
from rodwright.unit import (
    Bevel,
    Blank,
    Easing,
    FingerPull,
    Grain,
    Groove,
    Hole,
    Housing,
    Joint,
    JointKind,
    Mitre,
    Mortise,
    Notch,
    Part,
    Placement,
    PocketHole,
    Rebate,
    Role,
    Stock,
    Surface,
    Unit,
)

X: Vector = (1.0, 0.0, 0.0)
Y: Vector = (0.0, 1.0, 0.0)
Z: Vector = (0.0, 0.0, 1.0)
MINUS_Y: Vector = (0.0, -1.0, 0.0)
MINUS_X: Vector = (-1.0, 0.0, 0.0)

PLYWOOD = Stock(
    "case",
    "sheet",
    "birch plywood",
    18.0,
    Grain.LENGTHWISE,
    680.0,
    "invented",
    "#e3c99a",
    size=(2440.0, 1220.0),
    price=74.0,
)
THIN = Stock(
    "back",
    "sheet",
    "birch plywood",
    6.0,
    Grain.LENGTHWISE,
    680.0,
    "invented",
    "#e6d0a6",
    size=(2440.0, 1220.0),
)
ASH = Stock("ash", "board", "ash", 22.0, Grain.LENGTHWISE, 680.0, "invented", "#d9c19c")


def _blank(length: float, width: float, thickness: float, stock: Stock) -> Blank:
    return Blank(length, width, thickness, stock, Grain.LENGTHWISE)


def bookcase() -> Unit:
    """800 wide, 1000 high, 300 deep carcass: housed shelves, applied back, mitred frame."""
    width, height, depth, t = 800.0, 1000.0, 300.0, 18.0
    shelf_heights = (0.0, 482.0, height - t)  # undersides of bottom, shelf and top
    housings = tuple(Housing(Surface.REVERSE, z, t, 6.0) for z in shelf_heights)
    parts = [
        Part(
            "SD1",
            "Left side",
            Role.SIDE,
            "Carcass",
            _blank(height, depth, t, PLYWOOD),
            Placement((t, 0.0, 0.0), Z, Y),
            housings,
            withdraw=MINUS_X,
        ),
        Part(
            "SD2",
            "Right side",
            Role.SIDE,
            "Carcass",
            _blank(height, depth, t, PLYWOOD),
            Placement((width - t, depth, 0.0), Z, MINUS_Y),
            housings,
            withdraw=X,
        ),
    ]
    joints = []
    across = width - 2 * t + 12.0
    named = (("BT1", "Bottom", Role.BOTTOM), ("SH1", "Shelf", Role.SHELF), ("TP1", "Top", Role.TOP))
    for (ref, name, role), z in zip(named, shelf_heights, strict=True):
        parts.append(
            Part(
                ref,
                name,
                role,
                "Shelves" if role is Role.SHELF else "Carcass",
                _blank(across, depth, t, PLYWOOD),
                Placement((t - 6.0, 0.0, z), X, Y),
            )
        )
        joints += [
            Joint(JointKind.HOUSING, side, ref, (x, depth / 2, z + t / 2))
            for side, x in (("SD1", t - 6.0), ("SD2", width - t + 6.0))
        ]
    parts.append(
        Part(
            "BK1",
            "Back",
            Role.BACK,
            "Back",
            _blank(height, width, 6.0, THIN),
            Placement((width, depth + 6.0, 0.0), Z, MINUS_X),
            withdraw=Y,
        )
    )
    joints += [
        Joint(JointKind.BUTT, part.ref, "BK1", (width / 2, depth, part.bounds().centre[2]))
        for part in parts
        if part.role is not Role.BACK
    ]
    parts += _frame(width, height)
    for member in ("ST1", "ST2", "RL1", "RL2"):
        touched = {"ST1": "SD1", "ST2": "SD2", "RL1": "BT1", "RL2": "TP1"}[member]
        joints.append(Joint(JointKind.BUTT, touched, member, (width / 2, 0.0, height / 2)))
    for stile, x in (("ST1", 22.5), ("ST2", width - 22.5)):
        joints.append(Joint(JointKind.MITRE, stile, "RL1", (x, -11.0, 22.5)))
        joints.append(Joint(JointKind.MITRE, stile, "RL2", (x, -11.0, height - 22.5)))
    return Unit(
        "Sample bookcase",
        Box((0.0, -22.0, 0.0), (width, depth + 6.0, height)),
        tuple(parts),
        tuple(joints),
    )


def _frame(width: float, height: float) -> list[Part]:
    w, t = 45.0, 22.0

    def workings(inner: Surface) -> tuple[Mitre | Easing, ...]:
        outer = Surface.FACE_EDGE if inner is Surface.BACK_EDGE else Surface.BACK_EDGE
        return (
            Mitre(Surface.NEAR_END, 45.0, outer),
            Mitre(Surface.FAR_END, 45.0, outer),
            Easing(Surface.FACE, inner, 4.0),
        )

    def member(
        ref: str,
        name: str,
        role: Role,
        length: float,
        origin: Vector,
        along: Vector,
        across: Vector,
        inner: Surface,
        withdraw: Vector,
    ) -> Part:
        placement = Placement(origin, along, across)
        return Part(
            ref,
            name,
            role,
            "Face frame",
            _blank(length, w, t, ASH),
            placement,
            workings(inner),
            withdraw=withdraw,
        )

    return [
        member("ST1", "Left stile", Role.STILE, height, (w, 0.0, 0.0), Z, MINUS_X,
               Surface.FACE_EDGE, MINUS_Y),
        member("ST2", "Right stile", Role.STILE, height, (width, 0.0, 0.0), Z, MINUS_X,
               Surface.BACK_EDGE, MINUS_Y),
        member("RL1", "Bottom rail", Role.RAIL, width, (0.0, 0.0, 0.0), X, Z,
               Surface.BACK_EDGE, MINUS_Y),
        member("RL2", "Top rail", Role.RAIL, width, (0.0, 0.0, height - w), X, Z,
               Surface.FACE_EDGE, MINUS_Y),
    ]  # fmt: skip


def worked_part() -> Part:
    """One part with every kind of working, some crossing each other."""
    return Part(
        "X1", "Worked part", Role.SHELF, "Sample", _blank(400.0, 120.0, 20.0, ASH),
        Placement((0.0, 0.0, 0.0), X, Y),
        (
            Rebate(Surface.REVERSE, Surface.BACK_EDGE, 10.0, 8.0, 0.0, 300.0),
            Groove(Surface.FACE, 30.0, 6.0, 7.0, 20.0),
            Groove(Surface.FACE_EDGE, 7.0, 5.0, 6.0, 100.0, 220.0),
            Housing(Surface.REVERSE, 150.0, 18.0, 6.0, 15.0),
            Housing(Surface.FACE, 250.0, 12.0, 5.0),
            Notch(370.0, 90.0, 30.0, 30.0),
            Mitre(Surface.NEAR_END, 40.0, Surface.BACK_EDGE),
            Mitre(Surface.FAR_END, 30.0, Surface.FACE),
            Easing(Surface.FACE, Surface.FACE_EDGE, 4.0),
            Hole(Surface.FACE, (320.0, 60.0), 8.0),
            Hole(Surface.REVERSE, (280.0, 20.0), 5.0, 12.0),
            Hole(Surface.FAR_END, (60.0, 8.0), 6.0, 25.0),
            Bevel(Surface.REVERSE, Surface.FACE_EDGE, 5.0, 4.0),
            Mortise(Surface.FACE, (180.0, 70.0), (40.0, 8.0), 9.0, round_ends=True),
            Mortise(Surface.BACK_EDGE, (310.0, 6.0), (30.0, 8.0), 20.0),
            PocketHole(Surface.REVERSE, Surface.BACK_EDGE, 240.0, 10.0, 20.0, 9.5, 4.0),
            FingerPull(Surface.REVERSE, Surface.FACE_EDGE, 14.0, 6.0, 4.0, 180.0, 260.0),
        ),
    )  # fmt: skip
