"""Levels and uprights put together by hand, of invented wood, for tests of strength."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from typing import Any

from kit.samples import X, Y, Z
from rodwright.geometry import Box
from rodwright.trade.mechanics import Family, Mechanics
from rodwright.trade.sources import Figure, Source
from rodwright.unit import (
    Blank,
    Grain,
    Joint,
    JointKind,
    Load,
    Loading,
    Part,
    Placement,
    Role,
    Stock,
    Stretch,
    Unit,
    Working,
)

INVENTED = Source("invented")


def stress(value: float) -> Figure:
    """A modulus or strength, N/mm2."""
    return Figure(value, "N/mm2", INVENTED)


STIFF = Mechanics(
    Family.PLYWOOD,
    along=stress(10_000.0),
    across=stress(5_000.0),
    bending=stress(40.0),
    bending_across=stress(30.0),
    shear_strength=stress(3.0),
    creep=Figure(0.8, "", INVENTED),
    table="plywood",
)
"""A sheet of round figures, without shear."""
BOARD = Stock(
    "board",
    "sheet",
    "invented plywood",
    20.0,
    Grain.LENGTHWISE,
    0.0,
    "invented",
    "#cccccc",
    size=(2440.0, 1220.0),
    mechanics=STIFF,
)
"""Without weight, so that what is worked out by hand is short."""


def level(
    ref: str,
    x: tuple[float, float],
    low: float,
    role: Role = Role.SHELF,
    *workings: Working,
    depth: tuple[float, float] = (0.0, 300.0),
    stock: Stock = BOARD,
    thick: float | None = None,
) -> Part:
    """A panel lying flat from ``x`` to ``x``, its underside at ``low``."""
    thickness = stock.thickness if thick is None else thick
    blank = Blank(x[1] - x[0], depth[1] - depth[0], thickness, stock, Grain.LENGTHWISE)
    placed = Placement((x[0], depth[0], low), X, Y)
    return Part(ref, role.value.capitalize(), role, "Test", blank, placed, workings)


def upright(
    ref: str,
    x: float,
    z: tuple[float, float],
    role: Role = Role.DIVIDER,
    depth: tuple[float, float] = (0.0, 300.0),
    stock: Stock = BOARD,
) -> Part:
    """A panel standing from front to back, its left face at ``x``."""
    blank = Blank(z[1] - z[0], depth[1] - depth[0], 20.0, stock, Grain.LENGTHWISE)
    placed = Placement((x + 20.0, depth[0], z[0]), Z, Y)
    return Part(ref, role.value.capitalize(), role, "Test", blank, placed)


def strip(
    ref: str,
    x: tuple[float, float],
    low: float,
    high: float,
    y: tuple[float, float] = (-20.0, 0.0),
    role: Role = Role.LIPPING,
    stock: Stock = BOARD,
) -> Part:
    """A strip along a level's edge."""
    blank = Blank(x[1] - x[0], high - low, y[1] - y[0], stock, Grain.LENGTHWISE)
    # Its width stands up, its thickness lies to the front.
    placed = Placement((x[0], y[1], low), X, Z)
    return Part(ref, role.value.capitalize(), role, "Test", blank, placed)


def books(ref: str, x: tuple[float, float], per_metre: float, **more: Any) -> Load:
    """So many kg/m from ``x`` to ``x``."""
    return Load(ref, "books", (Stretch(*x, per_metre, per_metre),), **more)


def carcass(
    parts: Iterable[Part], joints: Iterable[tuple[str, str, JointKind]], *loads: Load, **more: Any
) -> Unit:
    """A unit of parts that are joined so (first, second, kind), under loads."""
    parts = tuple(parts)
    by_ref = {part.ref: part for part in parts}
    made = []
    for first, second, kind in joints:
        patch = by_ref[first].bounds().intersection(by_ref[second].bounds())
        made.append(Joint(kind, first, second, patch.centre))
    around = Box.of_boxes(part.bounds() for part in parts)
    loading = replace(Loading(loads), **more)
    return Unit("Test", around, parts, tuple(made), loading=loading)


def between_sides(
    span: float, *parts: Part, kind: JointKind = JointKind.RESTING
) -> tuple[list[Part], list[tuple[str, str, JointKind]]]:
    """Two sides with ``span`` mm clear from x = 20 on, and the joints of these levels to them."""
    sides = [
        upright("SD1", 0.0, (0.0, 2000.0), Role.SIDE),
        upright("SD2", span + 20.0, (0.0, 2000.0), Role.SIDE),
    ]
    joints = [(side.ref, part.ref, kind) for part in parts for side in sides]
    return [*sides, *parts], joints
