"""How bought-in pieces look in pictures: plain shapes of the usual kind.

What is bought is the maker's choice; sizes that the spec doesn't give are common practice, without
a source.  All lengths in mm, unit frame, everything closed.
"""

from __future__ import annotations

from rodwright.unit import Block, Rod

PROJECTION = 30.0
"""How far a handle stands out where nothing is said."""
KNOB, STEM = 30.0, 12.0
"""Diameters of a knob and of what holds it."""
BAR, FOOT = 12.0, 9.0
"""Diameters of a bar handle and of its feet."""
PAST = 12.0
"""A bar goes on so far past its feet."""
RIM = 1.5
"""How far a hinge's cup stands proud of the door."""
PLATE = (6.0, 32.0, 48.0)
"""A hinge's plate: thickness, depth and height."""
ARM = (14.0, 18.0)
"""A hinge's arm: thickness and height."""


def handle(
    holes: tuple[tuple[float, float], ...], front: float, projection: float = PROJECTION
) -> tuple[Rod, ...]:
    """A knob over one hole, or a bar over two, given by x and z, on a face at the y ``front``."""
    if len(holes) == 1:
        ((x, z),) = holes
        neck = front - 0.45 * projection
        return (
            Rod((x, front, z), (x, neck, z), STEM),
            Rod((x, neck, z), (x, front - projection, z), KNOB),
        )
    middle = front - projection + BAR / 2
    feet = tuple(Rod((x, front, z), (x, middle, z), FOOT) for x, z in holes)
    (x0, z0), (x1, z1) = holes[0], holes[-1]
    along = max(abs(x1 - x0), abs(z1 - z0))
    dx, dz = (PAST * (x1 - x0) / along, PAST * (z1 - z0) / along)
    return (*feet, Rod((x0 - dx, middle, z0 - dz), (x1 + dx, middle, z1 + dz), BAR))


def cup(x: float, rear: float, z: float, diameter: float) -> Rod:
    """A hinge's cup in a door whose rear is at ``rear``."""
    return Rod((x, rear - RIM, z), (x, rear + RIM, z), diameter)


def arm(face: float, inward: float, rear: float, plate: float, z: float) -> tuple[Block, Block]:
    """A hinge's plate on an upright's ``face``, its holes at the y ``plate``, and the arm that
    reaches from it to the door's ``rear``; ``inward`` is 1 where the door lies at greater x."""
    thick, deep, high = PLATE

    def box(low: float, high: float, front: float, back: float, half: float) -> Block:
        left, right = sorted((face + inward * low, face + inward * high))
        return Block((left, front, z - half), (right, back, z + half))

    back = plate + deep / 2
    return (
        box(0.0, thick, plate - deep / 2, back, high / 2),
        box(thick, thick + ARM[0], min(rear, plate) + RIM, back + deep / 2, ARM[1] / 2),
    )


def knuckle(x: float, y: float, z: float, length: float, diameter: float) -> Rod:
    """A butt hinge's knuckle, by its middle."""
    return Rod((x, y, z - length / 2), (x, y, z + length / 2), diameter)
