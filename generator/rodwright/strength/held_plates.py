"""How much less a level sags where one of its long edges is held: as a plate with a free edge.

What a strip sags is made less by the share that a plate of its span and depth sags of it at the
middle of its free edge, both on ends that turn freely, under an even load.  Joints, middle supports
and uneven loads are the strip's.
"""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache
from itertools import pairwise

from rodwright.strength.level_parts import Level, Ply
from rodwright.strength.level_sections import Section, modulus, with_grain
from rodwright.strength.plates import FREE, HELD, Lipping, Plate, bend_plate, stiffness_of
from rodwright.strength.seats import Lying
from rodwright.strength.sections import torsion_factor
from rodwright.unit import Part

_bent = lru_cache(maxsize=1024)(bend_plate)


def held_share(level: Level, lie: Lying) -> float:
    """The share of a strip's sag that is left by an edge that is held; 1 where none is (or both
    are, and it spans from one to the other), or where the plate's stiffness isn't known: across its
    grain, and in its own plane.

    It is that of the widest span; shorter ones, of which more is left, are far below their limits.
    """
    if len({line.edge for line in lie.lines}) != 1 or lie.grounded or len(lie.seats) < 2:
        return 1.0
    plate = _plate(level, max(b.at - a.at for a, b in pairwise(lie.seats)))
    if plate is None:
        return 1.0
    back = lie.lines[0].edge == "back"
    free = _stiffened(level, plate, front=back, back=not back)
    held = replace(free, back=HELD) if back else replace(free, front=HELD)
    middle, edge = plate.span / 2, 0.0 if back else plate.depth
    both = _stiffened(level, plate, front=True, back=True)
    strips = [each.bending for each in (both.front_lipping, both.back_lipping) if each]
    bending = plate.stiffness.along * plate.depth + sum(strips)
    strip = 5 * plate.pressure * plate.depth * plate.span**4 / (384 * bending)
    return min(1.0, _bent(held).deflection(middle, edge) / strip)


def is_plate(level: Level) -> bool:
    """Whether it is known how stiff a level is as a plate: across its grain, and in its own
    plane."""
    return _plate(level, level.box.size[0]) is not None


def eased(section: Section, share: float) -> Section:
    """A section that bends by so small a share of what it did, its stresses with it."""
    if share == 1.0:
        return section
    return replace(
        section,
        bending=section.bending / share,
        shear=section.shear / share,
        fibres=tuple(replace(each, per_moment=each.per_moment * share) for each in section.fibres),
    )


def _plate(level: Level, span: float) -> Plate | None:
    """A level's panels as one plate without strips, under 1 N/mm2; None where it isn't known."""
    stiffness = None
    for ply in level.plies:
        main = ply.layers[0]
        mechanics = main.blank.stock.mechanics
        if mechanics is None:
            return None
        thick = sum(part.bounds().size[2] for part in ply.layers)
        found = stiffness_of(mechanics, thick, along=with_grain(main, 0))
        if found is None:
            return None
        stiffness = (
            found
            if stiffness is None
            else replace(
                stiffness,
                along=stiffness.along + found.along,
                across=stiffness.across + found.across,
                twisting=stiffness.twisting + found.twisting,
            )
        )
    assert stiffness is not None
    # Rounded, so that levels alike are bent once.
    span, depth = round(span, 3), round(level.main.bounds().size[1], 3)
    return Plate(span, depth, stiffness, front=FREE, back=FREE, pressure=1.0)


def _stiffened(level: Level, plate: Plate, *, front: bool, back: bool) -> Plate:
    """A plate with the strips that are glued along its front or its back."""
    middle = level.box.centre[1]
    strips = {"front": front, "back": back}
    found: dict[str, Lipping] = {}
    for ply in level.plies:
        for strip in ply.strips:
            edge = "front" if strip.bounds().centre[1] < middle else "back"
            added = _lipping(ply, strip, plate)
            if strips[edge] and added is not None:
                found[edge] = added
    return replace(plate, front_lipping=found.get("front"), back_lipping=found.get("back"))


def _lipping(ply: Ply, strip: Part, plate: Plate) -> Lipping | None:
    """What a strip adds: EI about the axis that it shares with the board, and its own GJ."""
    known = modulus(strip, 0)
    if known is None:
        return None
    its, low = strip.bounds(), ply.layers[0].bounds().low[2]
    high = ply.layers[-1].bounds().high[2]
    thick, deep = high - low, plate.depth
    board_area = plate.stiffness.along * 12 / thick**3 * deep * thick
    _, wide, tall = its.size
    area = known.value * wide * tall
    apart = (low + high) / 2 - its.centre[2]
    bending = area * tall**2 / 12 + board_area * area / (board_area + area) * apart**2
    mechanics = strip.blank.stock.mechanics
    shear = mechanics.shear.value if mechanics and mechanics.shear else 0.0
    slim, fat = sorted((wide, tall))
    return Lipping(bending, shear * torsion_factor(fat / slim) * fat * slim**3)
