"""How parts move in use."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from rodwright.geometry.vectors import Vector


@dataclass(frozen=True, slots=True)
class Swing:
    """Parts (refs) that turn together about an upright axis when a door is opened.

    ``hinge`` is the axis's x and y in the unit frame, ``angle`` how far it opens in
    degrees, anticlockwise seen from above where positive.
    """

    kind: Literal["swing"] = field(default="swing", init=False, repr=False, compare=False)
    refs: tuple[str, ...]
    hinge: tuple[float, float]
    angle: float


@dataclass(frozen=True, slots=True)
class Slide:
    """Parts (refs) that move together along ``travel`` (unit frame, mm) when opened."""

    kind: Literal["slide"] = field(default="slide", init=False, repr=False, compare=False)
    refs: tuple[str, ...]
    travel: Vector


Motion = Swing | Slide
"""How parts move in use."""
