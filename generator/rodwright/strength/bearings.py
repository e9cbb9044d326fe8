"""What carries each level part, and with what it bears on it.

Millimetres and newtons.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from rodwright.strength.beams import Beam, Bent
from rodwright.strength.carcass_beams import Carcass, Carried, Laid
from rodwright.strength.held_plates import eased, held_share
from rodwright.strength.level_loads import level_loads
from rodwright.strength.level_parts import CARRIERS, Level, joints_of, levels_of
from rodwright.strength.level_sections import Moduli, Section, modulus, sections_along
from rodwright.strength.lying import lying
from rodwright.strength.seats import Line, Lying, Seat, Standing
from rodwright.unit import Part, Unit

__all__ = ["Bearing", "Line", "Seat", "Standing", "bear", "bearings", "lies", "lying_of"]

NOMINAL = 10_000.0
"""What parts count for whose modulus isn't known, N/mm2: it shares loads out between supports, and
no sag is ever told from it."""
_HELD_SHARE = 0.5
"""Of a level's load, what an edge that is held bears at most, the other being free: by moments
about the free edge."""


@dataclass(frozen=True, slots=True)
class Bearing:
    """How one level lies and what it brings to what carries it.

    ``seats`` are from left to right, ``lines`` the edges that are held along their length,
    ``standing`` the uprights that stand on it.  ``grounded`` where the floor carries it all over.
    ``weight`` is its own in N, ``contents`` what lies on it, N, and ``most_per_mm`` both together
    where they are heaviest, N per mm of its length.  ``bent`` is its beam under all this (x from
    ``level.box.low[0]``), for what isn't known as if of :data:`NOMINAL` modulus; None where it
    doesn't bend from seat to seat: it is grounded, held along both edges, or not held at all.
    ``sections`` are what the beam was made of.

    An edge that is held takes load off the seats, by how much is left open: the seats' reactions
    are those without it, and the line's is the most that it may be.
    """

    level: Level
    seats: tuple[Seat, ...]
    lines: tuple[Line, ...]
    standing: tuple[Standing, ...]
    grounded: bool
    weight: float
    contents: float
    most_per_mm: float
    bent: Bent | None
    sections: tuple[Section, ...]

    @property
    def beam(self) -> Beam | None:
        """Its beam, with its supports and loads."""
        return self.bent.beam if self.bent else None

    @property
    def spans(self) -> tuple[tuple[float, float], ...]:
        """The x of the seats at either end of each span, unit frame."""
        return tuple(pairwise(seat.at for seat in self.seats))

    @property
    def across(self) -> bool:
        """Whether it is held along its front and its back, so that it spans from one to the
        other."""
        return {line.edge for line in self.lines} == {"front", "back"}


def bearings(unit: Unit) -> dict[str, Bearing]:
    """What carries each shelf, top, bottom, carcass rail and worktop, by the ref of its lowest
    panel (``level.refs`` are all), under all that it carries, at once.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    return {each.level.ref: each for each in bear(unit, lies(unit), lambda _: 0.0)}


def lies(unit: Unit) -> tuple[tuple[Level, Lying], ...]:
    """Each level of a unit, and how it lies."""
    joints = joints_of(unit)
    return tuple((level, lying(unit, level, joints)) for level in levels_of(unit, joints))


def bear(
    unit: Unit, levels: Sequence[tuple[Level, Lying]], softening: Callable[[Part], float]
) -> tuple[Bearing, ...]:
    """Levels with what they bring to their seats, their parts gone softer.

    A part's moduli count for ``1 / (1 + softening(part))``, and joints, which creep twice as much,
    for ``1 / (1 + 2 softening)`` (EN 1995-1-1, 2.3.2.2).

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    laid = [
        Laid(
            level,
            lie,
            _sections(level, lie, softening),
            level_loads(unit, level),
            1 + 2 * softening(level.main),
        )
        for level, lie in levels
    ]
    carcass = Carcass(unit, laid)
    return tuple(_bearing(carcass, each) for each in carcass.carried())


def _sections(level: Level, lie: Lying, softening: Callable[[Part], float]) -> tuple[Section, ...]:
    """A level's sections, as much stiffer as an edge that is held makes it."""
    found = sections_along(level, lambda part: moduli_of(part, 0, softening(part)))
    share = held_share(level, lie)
    return tuple(eased(section, share) for section in found)


def moduli_of(part: Part, axis: int, softening: float) -> Moduli:
    """A part's moduli for a span along an axis, gone softer."""
    known = modulus(part, axis)
    if known is None and part.role not in CARRIERS:
        return Moduli(0.0, None)  # a strip that nothing is known of stiffens nothing
    mechanics = part.blank.stock.mechanics
    shear = mechanics.shear.value if mechanics and mechanics.shear else None
    bending = known.value if known else NOMINAL
    return Moduli(bending / (1 + softening), shear / (1 + softening) if shear is not None else None)


def lying_of(bearing: Bearing) -> Lying:
    """How a level lies, of which the bearing is known."""
    return Lying(bearing.seats, bearing.lines, bearing.standing, bearing.grounded)


def _bearing(carcass: Carcass, each: Carried) -> Bearing:
    laid, lie = each.laid, each.laid.lying
    total = laid.loads.total + sum(each.standing.values())
    share = _HELD_SHARE if lie.lines else 0.0
    return Bearing(
        laid.level,
        tuple(
            replace(seat, reaction=force, turning=turning)
            for seat, force, turning in carcass.reactions(each)
        ),
        tuple(replace(line, reaction=total * share) for line in lie.lines),
        tuple(replace(one, force=each.standing[one.ref]) for one in lie.standing),
        lie.grounded,
        laid.loads.weight,
        laid.loads.contents,
        laid.loads.most_per_mm,
        each.bent,
        laid.sections,
    )
