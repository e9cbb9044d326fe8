"""Joints of a unit as springs between the nodes of its pieces.

N, mm and radians, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import pairwise
from operator import add

from rodwright.geometry import Vector
from rodwright.strength.bearings import Bearing
from rodwright.strength.bracing import slip_modulus
from rodwright.strength.model.mesh import Grid, Mesh, Tie
from rodwright.strength.model.pieces import Softening, Stick, rise_of
from rodwright.strength.seats import PULLS
from rodwright.strength.turning import lasting, turning_of
from rodwright.unit import Joint, JointKind, Part, Role, Unit
from rodwright.unit.facts import STANDS
from rodwright.unit.roles import BASE, LEVELS, PANELS, UPRIGHTS

STIFF = 1e6
"""N/mm at a node: what meets doesn't come apart.  An 18 mm board gives way no more by its own."""
GLUED = 1e9
"""N mm per radian at a node of an edge that is glued on."""
LEAST = 1000.0
"""N mm per radian: a pin's own; without it a case that nothing braces would have no figure."""
BUTTONS = 200.0
"""N/mm along what is held so that it can move: stated estimate, a screw in a slot slides."""
IN_GROOVE = 20.0
"""N/mm in its plane at each edge of a panel loose in its groove, before it jams (stated estimate:
it only has to be carried)."""
PINS_IN = 37.0
"""How far pins stand in from the edges of a shelf, mm (common practice, no source)."""
POINT = 60.0
"""What meets over no more than this, mm, meets at a point."""
BETWEEN_PANELS = (*PANELS, *BASE, Role.WORKTOP)
LOOSE = {JointKind.RESTING: 1, JointKind.STANDING: -1}
"""Joints that only push: what lies on pins is their second part, what stands their first."""
APART = (
    JointKind.HINGED,
    JointKind.SLIDING,
    JointKind.CLIPPED,
    JointKind.FLOATING,
    JointKind.FACE_GLUED,
)
"""Joints that hold nothing which is in the model."""


@dataclass(frozen=True, slots=True)
class Contact:
    """Where two pieces meet: the middle, and how long each way."""

    middle: Vector
    size: Vector

    @property
    def ways(self) -> tuple[int, ...]:
        """The axes along which they meet, the longest first: none at a point, two over an area."""
        longest = sorted(range(3), key=lambda axis: -self.size[axis])[:2]
        return tuple(axis for axis in longest if self.size[axis] > POINT)

    def ends(self, axis: int) -> tuple[float, float]:
        """From where to where along an axis."""
        half = self.size[axis] / 2
        return self.middle[axis] - half, self.middle[axis] + half


def ties_of(
    unit: Unit,
    mesh: Mesh,
    borne: Mapping[str, Bearing],
    softening: Softening,
    tight: bool = False,
) -> Iterator[Tie]:
    """What holds the pieces together.

    ``borne`` says at what x the ends of levels lie, and what comes off what it lies or stands on;
    ``softening`` is as for :func:`pieces.boards_of`, ``tight`` as for :func:`whole.model_of`.
    """
    seats, loose, grounded = _seats(borne), _loose(borne), set(_on_floor(unit, borne))
    for number, joint in enumerate(unit.joints):
        first, second = mesh.grids.get(joint.first), mesh.grids.get(joint.second)
        if first is None or second is None or first is second or not _holds(unit, joint):
            continue
        contact = _contact(joint, unit.part(joint.first), unit.part(joint.second))
        places = _places(joint, first, second, contact)
        moves, turns = _stiffness(unit, joint, contact, softening, tight)
        stands = _stands_in(joint, [unit.part(joint.first), unit.part(joint.second)])
        pair = frozenset((joint.first, joint.second))
        seat = seats.get(pair)
        if pair in grounded:
            moves = (moves[0], moves[1], 0.0)
        for middle, share in places:
            at = middle if seat is None else (seat, *middle[1:])
            at = _in_pack(second, _in_pack(first, at))
            nodes = (first.nearest(at), second.nearest(at))
            yield Tie(
                nodes,
                at,
                _shared(moves, share),
                _shared(turns, share),
                number,
                1 if stands else _pushes(joint, loose.get(pair)),
            )


def _seats(borne: Mapping[str, Bearing]) -> dict[frozenset[str], float]:
    """At what x the ends of levels lie, by the refs of panel and upright."""
    return {
        frozenset((ref, seat.on)): seat.at
        for bearing in borne.values()
        for seat in bearing.seats
        if seat.how == "end" and seat.on
        for ref in bearing.level.refs
    }


def _on_floor(unit: Unit, borne: Mapping[str, Bearing]) -> Iterator[frozenset[str]]:
    """Levels and uprights that stand beside each other on the floor, which carries both: held up
    by each other too, the uprights' feet couldn't turn."""
    for bearing in borne.values():
        if bearing.grounded:
            for part in unit.parts:
                if part.role in UPRIGHTS and part.bounds().low[2] <= STANDS:
                    yield from (frozenset((ref, part.ref)) for ref in bearing.level.refs)


def _loose(borne: Mapping[str, Bearing]) -> dict[frozenset[str], str]:
    """What only lies or stands on another, by the refs of both: the upper one's."""
    found = {}
    for bearing in borne.values():
        refs = bearing.level.refs
        for seat in bearing.seats:
            if seat.lifts and seat.on and seat.how == "under":
                found.update({frozenset((ref, seat.on)): ref for ref in refs})
        for each in bearing.standing:
            if each.joint.kind not in PULLS:
                found.update({frozenset((ref, each.ref)): each.ref for ref in refs})
    return found


def _pushes(joint: Joint, upper: str | None) -> int:
    if upper is None:
        return LOOSE.get(joint.kind, 0)
    return 1 if joint.second == upper else -1


def _in_pack(grid: Grid, at: Vector) -> Vector:
    """Layers that are glued to each other are held as one, in their middle: each alone would
    hold the other's end from turning."""
    piece = grid.piece
    if isinstance(piece, Stick) or len(piece.refs) == 1:
        return at
    x, y, z = (piece.middle if axis == piece.normal else at[axis] for axis in range(3))
    return (x, y, z)


def _shared(stiffness: Vector, share: float) -> Vector:
    # What is stiff is so at each node; what slips or turns does by its share.
    x, y, z = (each if each in {STIFF, GLUED} else each * share for each in stiffness)
    return (x, y, z)


def _holds(unit: Unit, joint: Joint) -> bool:
    if joint.kind in APART:
        return False
    if joint.kind is JointKind.BUTT and not joint.fixings:
        # What only touches the back or the face frame is fixed elsewhere.
        parts = (unit.part(joint.first), unit.part(joint.second))
        return all(part.role in BETWEEN_PANELS for part in parts)
    return True


def _contact(joint: Joint, first: Part, second: Part) -> Contact:
    one, other = first.bounds(), second.bounds()
    if rise_of(first) is not None or rise_of(second) is not None:
        # The box round what lies aslant says nothing of where it is met, but for its depth.
        deep = min(one.high[1], other.high[1]) - max(one.low[1], other.low[1])
        return Contact(joint.at, (0.0, deep, 0.0))
    low = [max(pair) for pair in zip(one.low, other.low, strict=True)]
    high = [min(pair) for pair in zip(one.high, other.high, strict=True)]
    x, y, z = ((a + b) / 2 for a, b in zip(low, high, strict=True))
    u, v, w = (b - a for a, b in zip(low, high, strict=True))
    return Contact((x, y, z), (u, v, w))


def _places(
    joint: Joint, first: Grid, second: Grid, contact: Contact
) -> list[tuple[Vector, float]]:
    """Where there are ties, and what share of the joint each is."""
    places = [(list(contact.middle), 1.0)]
    for way in contact.ways:
        low, high = contact.ends(way)
        if joint.kind is JointKind.RESTING:
            inset = min(PINS_IN, (high - low) / 4)
            along = [(low + inset, 0.5), (high - inset, 0.5)]
        else:
            within = (
                [at for at in grid.along(way) if low - 1 <= at <= high + 1]
                for grid in (first, second)
            )
            along = _shares(max(within, key=lambda ticks: (_run(ticks), len(ticks))))
        places = [
            ([*at[:way], place, *at[way + 1 :]], share * part)
            for at, share in places
            for place, part in along or [(at[way], 1.0)]
        ]
    return [((at[0], at[1], at[2]), share) for at, share in places]


def _run(ticks: list[float]) -> float:
    return ticks[-1] - ticks[0] if ticks else 0.0


def _shares(ticks: list[float]) -> list[tuple[float, float]]:
    """Places with the share of the whole that lies nearest to each; none if there is only one."""
    if len(ticks) < 2:
        return []
    halves = [(b - a) / 2 / (ticks[-1] - ticks[0]) for a, b in pairwise(ticks)]
    return list(zip(ticks, map(add, [*halves, 0.0], [0.0, *halves]), strict=True))


def _stiffness(
    unit: Unit, joint: Joint, contact: Contact, softening: Softening, tight: bool
) -> tuple[Vector, Vector]:
    """Stiffness of the whole joint along and about the axes."""
    ways = contact.ways
    parts = [unit.part(joint.first), unit.part(joint.second)]
    back = next((part for part in parts if part.role is Role.BACK), None)
    if back is not None:
        return _of_back(unit, joint, back, softening, tight), (0.0, 0.0, 0.0)
    if joint.kind is JointKind.BUTTONED:
        return (BUTTONS, BUTTONS, STIFF), (0.0, 0.0, 0.0)
    if joint.kind is JointKind.EDGE_GLUED:
        return (STIFF, STIFF, STIFF), _only(ways, GLUED)
    creep = max(softening(part) for part in parts)
    turns = [LEAST, LEAST, LEAST]
    if any(rise_of(part) is not None for part in parts):
        return (STIFF, STIFF, STIFF), (LEAST, LEAST, LEAST)
    for axis in range(3):
        if not ways or axis in ways[:1]:
            turns[axis] += lasting(turning_of(unit, joint, axis).value, creep)
    return (STIFF, STIFF, STIFF), (turns[0], turns[1], turns[2])


def _only(ways: tuple[int, ...], value: float) -> Vector:
    x, y, z = (value if axis in ways else 0.0 for axis in range(3))
    return (x, y, z)


def _of_back(unit: Unit, joint: Joint, back: Part, softening: Softening, tight: bool) -> Vector:
    """A back: stiff square to itself, by the slip of its fasteners in its own plane."""
    normal = min(range(3), key=lambda axis: back.bounds().size[axis])
    slip = 0.0
    for fixing in joint.fixings:
        if fixing.diameter:
            densities = [unit.part(ref).blank.stock.density for ref in (joint.first, joint.second)]
            mean = (densities[0] * densities[1]) ** 0.5
            slip += fixing.count * slip_modulus(fixing.diameter, mean, "screw" in fixing.name)
    if not slip and joint.kind in {JointKind.GROOVE, JointKind.REBATE}:
        slip = STIFF if tight else IN_GROOVE
    slip /= 1 + 2 * softening(back)
    moves = [STIFF if axis == normal else slip for axis in range(3)]
    if _stands_in(joint, [unit.part(joint.first), unit.part(joint.second)]):
        moves[2] = STIFF
    return (moves[0], moves[1], moves[2])


def _stands_in(joint: Joint, parts: list[Part]) -> bool:
    """Whether a back stands loose in a groove of a level below it."""
    level, back = parts
    loose = joint.kind in {JointKind.GROOVE, JointKind.REBATE} and not joint.fixings
    return loose and level.role in LEVELS and joint.at[2] < back.bounds().centre[2]
