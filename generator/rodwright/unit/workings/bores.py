"""Workings of drills: holes, and pockets for slanting screws."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from rodwright.unit.surfaces import Surface


@dataclass(frozen=True, slots=True)
class Hole:
    """A round hole square to ``surface``.

    ``position`` is its centre along the two axes of that surface, in the order x, y, z;
    ``depth`` of None goes right through.
    """

    kind: Literal["hole"] = field(default="hole", init=False, repr=False, compare=False)
    surface: Surface
    position: tuple[float, float]
    diameter: float
    depth: float | None = None
    use: str = field(default="", compare=False)


@dataclass(frozen=True, slots=True)
class PocketHole:
    """A hole for a slanting screw, drilled from a face out through an end or an edge.

    Its axis lies at ``position`` along the arris of the two, ``angle`` degrees from
    ``surface``, and leaves the ``end`` at ``exit`` mm below ``surface``.  The pocket of
    ``diameter`` stops ``stop`` mm short of the end, measured along the axis, with a floor
    square to it; from there the screw goes on through a hole of ``screw`` mm diameter.
    """

    kind: Literal["pockethole"] = field(default="pockethole", init=False, repr=False, compare=False)
    surface: Surface
    end: Surface
    position: float
    exit: float
    stop: float
    diameter: float
    screw: float
    angle: float = 15.0
    use: str = field(default="", compare=False)
