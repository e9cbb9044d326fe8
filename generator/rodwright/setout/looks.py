"""How bought-in pieces look in pictures: plain shapes of the usual kind.

What is bought is the maker's choice; sizes that the spec doesn't give are common practice, without
a source.  All lengths in mm, unit frame, everything closed.
"""

from __future__ import annotations

import re

from rodwright.unit import Block, Knob, Rod, Shape, Ware

PROJECTION = 30.0
"""How far a handle stands out where nothing is said."""
KNOB, STEM = 30.0, 12.0
"""Diameters of a knob and of what holds it."""
BAR, FOOT = 12.0, 9.0
"""Diameters of a bar handle and of its feet."""
PULL = (70.0, 22.0, 2.5)
"""A pull's plate: length, width and thickness, which its lip has too."""
PAST = 12.0
"""A bar goes on so far past its feet."""
RIM = 1.5
"""How far a hinge's cup stands proud of the door."""
PLATE = (6.0, 32.0, 48.0)
"""A hinge's plate: thickness, depth and height."""
ARM = (14.0, 18.0)
"""A hinge's arm: thickness and height."""
WINGS = (16.0, 1.2, 62.0)
"""The wings by which a hinge's cup is screwed on: across, thickness and height."""
FINIAL = (6.0, 0.75)
"""What closes a knuckle at either end: length, and diameter as a share of the knuckle's."""
PIN = 8.0
"""How far a shelf pin stands out."""
SHEET = 1.5
"""Thickness of the steel that slides are folded of."""
SLIDE = 45.0
"""Height of a slide at the side of a drawer where the spec doesn't say it."""
UNDER = (32.0, 11.0)
"""A slide under a drawer: how far it reaches past the side of the box, and its height."""
FOOT_PAD, FOOT_STEM, FOOT_HEAD = (50.0, 9.0), 30.0, (62.0, 6.0)
"""An adjustable foot: diameter and height of its pad, diameter of its stem, diameter and thickness
of what is screwed on."""


def handle(
    name: str,
    holes: tuple[tuple[float, float], ...],
    front: float,
    projection: float = PROJECTION,
    *,
    upright: bool = False,
) -> tuple[Shape, ...]:
    """What the maker calls ``name`` over holes given by x and z, on a face at the y ``front``.

    A bar over two; over one a knob, or what is called a pull: a plate with a lip to take hold of,
    ``upright`` or lying.
    """
    if len(holes) == 1:
        ((x, z),) = holes
        if "pull" in re.findall(r"\w+", name.casefold()):
            return _pull(x, z, front, projection, upright=upright)
        return (Knob((x, front, z), (x, front - projection, z), KNOB, STEM),)
    middle = front - projection + BAR / 2
    feet = tuple(Rod((x, front, z), (x, middle, z), FOOT) for x, z in holes)
    (x0, z0), (x1, z1) = holes[0], holes[-1]
    along = max(abs(x1 - x0), abs(z1 - z0))
    dx, dz = (PAST * (x1 - x0) / along, PAST * (z1 - z0) / along)
    return (*feet, Rod((x0 - dx, middle, z0 - dz), (x1 + dx, middle, z1 + dz), BAR))


def _pull(
    x: float, z: float, front: float, projection: float, *, upright: bool
) -> tuple[Block, Block]:
    long, wide, thick = PULL

    def block(across: float, near: float, far: float) -> Block:
        half = (across / 2, long / 2) if upright else (long / 2, across / 2)
        return Block((x - half[0], far, z - half[1]), (x + half[0], near, z + half[1]))

    return block(wide, front, front - thick), block(thick, front - thick, front - projection)


_WARES: tuple[tuple[Ware, tuple[str, ...]], ...] = (
    ("brass", ("brass", "bronze", "gilt")),
    ("walnut", ("walnut",)),
    ("oak", ("oak",)),
    ("black", ("black", "iron")),
    ("white", ("white", "porcelain", "china", "ceramic")),
    ("painted", ("painted",)),
    ("wood", ("wood", "wooden", "turned", "ash", "beech", "birch", "maple")),
)


def ware_of(name: str) -> Ware:
    """What a knob or handle is made of, by the maker's words for it; steel where none says."""
    words = re.findall(r"\w+", name.casefold())
    return next((ware for ware, known in _WARES if any(each in words for each in known)), "steel")


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


def finials(x: float, y: float, z: float, length: float, diameter: float) -> tuple[Rod, Rod]:
    """What closes a butt hinge's knuckle at its ends, by the knuckle's middle."""
    long, share = FINIAL
    low, high = z - length / 2, z + length / 2
    return (
        Rod((x, y, low - long), (x, y, low), diameter * share),
        Rod((x, y, high), (x, y, high + long), diameter * share),
    )


def leaf(x: float, reach: float, y: tuple[float, float], z: float, length: float) -> Block:
    """A butt hinge's leaf, so far (``reach``, with its sign) along x from the middle of the gap."""
    return Block.between((x, y[0], z - length / 2), (x + reach, y[1], z + length / 2))


def wings(x: float, rear: float, z: float) -> Block:
    """What a hinge's cup is screwed on a door's ``rear`` by."""
    wide, thick, high = WINGS
    return Block((x - wide / 2, rear, z - high / 2), (x + wide / 2, rear + thick, z + high / 2))


def pin(face: float, inward: float, y: float, z: float, sizes: tuple[float, float]) -> Rod:
    """A shelf pin in an upright's ``face``: its ``sizes`` are diameter and how deep it goes in."""
    diameter, deep = sizes
    return Rod((face - inward * deep, y, z), (face + inward * PIN, y, z), diameter)


def side_slide(
    x: tuple[float, float], y: tuple[float, float], z: float, height: float
) -> tuple[tuple[Block, ...], tuple[Block, ...]]:
    """A slide between an upright and the side of a drawer (their faces are the two x): the channel
    on the upright, and the one on the side, which runs within it."""
    outer, inner = x
    out = 1.0 if inner > outer else -1.0
    deep = abs(inner - outer)
    return (
        _channel((outer, out * 0.75 * deep), y, z, height),
        _channel((inner, -out * 0.7 * deep), y, z, height - 4 * SHEET),
    )


def _channel(
    x: tuple[float, float], y: tuple[float, float], z: float, height: float
) -> tuple[Block, ...]:
    """A channel of folded steel: its back stands at the first x, its flanges reach so far on."""
    back, reach = x
    half, thick = height / 2, SHEET if reach > 0 else -SHEET
    return (
        Block.between((back, y[0], z - half), (back + thick, y[1], z + half)),
        Block.between((back, y[0], z - half), (back + reach, y[1], z - half + SHEET)),
        Block.between((back, y[0], z + half - SHEET), (back + reach, y[1], z + half)),
    )


def under_slide(x: tuple[float, float], y: tuple[float, float], low: float) -> tuple[Block, Block]:
    """A slide under a drawer whose side's lower edge is at ``low``, from the upright's face at the
    first x past the side's inner face at the second: what is screwed to the upright, and what the
    box lies on."""
    reach, high = UNDER
    out = 1.0 if x[1] > x[0] else -1.0
    return (
        Block.between((x[0], y[0], low - high), (x[1] + out * reach, y[1], low - SHEET)),
        Block.between((x[1], y[0], low - SHEET), (x[1] + out * reach * 0.7, y[1], low)),
    )


def foot(x: float, y: float, height: float) -> tuple[Rod, ...]:
    """An adjustable foot between the floor and a bottom so high."""
    (pad, thick), (head, plate) = FOOT_PAD, FOOT_HEAD
    thick, plate = min(thick, height / 3), min(plate, height / 3)
    return (
        Rod((x, y, 0.0), (x, y, thick), pad),
        Rod((x, y, thick), (x, y, height - plate), FOOT_STEM),
        Rod((x, y, height - plate), (x, y, height), head),
    )
