"""What may be put somewhere: sizes, weights, looks.  Lengths in mm."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

import numpy as np

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector
from rodwright.photo.contents.shapes import chamfered
from rodwright.photo.planes import faces, sides_of, upright
from rodwright.photo.scene import Body, Surface
from rodwright.pictures.colours import linear


@dataclass(frozen=True, slots=True, eq=False)
class Candidate:
    """Something that may be put somewhere: the size of the box round it, what it weighs in kg, the
    gap to what stands beside it, and its bodies in a box of that size."""

    size: Vector
    mass: float
    gap: float
    bodies: Callable[[Box], tuple[Body, ...]]


Candidates = Iterator[Candidate]
"""One after another without end."""
Kind = Callable[[np.random.Generator, float, float], Candidates]
"""Of what there is room for: it is told how deep and how high that is."""


LABEL = Surface(linear("#e9e6dd"), 0.9, 0.2)
"""Paper (a choice)."""
_PROUD = 0.02
"""How far a label stands off what it is on, mm."""


def surfaces(colours: str, roughness: float, gloss: float) -> tuple[Surface, ...]:
    """Surfaces of some colours (``#rrggbb``), alike in all else."""
    return tuple(Surface(linear(each), roughness, gloss) for each in colours.split())


def mass_of(size: Vector, density: float) -> float:
    """The mass in kg of a box of a size at so many kg/m3."""
    return size[0] * size[1] * size[2] * 1e-9 * density


def any_of(random: np.random.Generator, some: tuple[Surface, ...]) -> Surface:
    """One of some surfaces."""
    return some[int(random.integers(len(some)))]


def boxed(surface: Surface, chamfer: float) -> Callable[[Box], tuple[Body, ...]]:
    """A plain box, its edges taken off by ``chamfer``."""

    def bodies(box: Box) -> tuple[Body, ...]:
        body = faces("box", chamfered(box, chamfer) if chamfer else sides_of(box), surface)
        return () if body is None else (body,)

    return bodies


def labelled(
    surface: Surface, wide: float, foot: float, head: float
) -> Callable[[Box], tuple[Body, ...]]:
    """A box with a label on its front: its width, and where it begins and ends, as shares."""

    def bodies(box: Box) -> tuple[Body, ...]:
        (a, b, c), (x, _, z) = box.low, box.high
        half, middle = (x - a) * wide / 2, (a + x) / 2
        low, high = c + (z - c) * foot, c + (z - c) * head
        made = faces("box", chamfered(box, 2.0), surface)
        shown = upright((middle - half, b - _PROUD), (middle + half, b - _PROUD), low, high)
        label = faces("label", [shown], LABEL)
        return tuple(body for body in (made, label) if body is not None)

    return bodies
