"""Operations of fitting: what is carried, stood, fixed, scribed and adjusted."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.geometry import Box
from rodwright.making.sub_assemblies import pieces_of
from rodwright.mass import unit_weight
from rodwright.opening.gaps import fixing_points
from rodwright.quote.from_joints import carcasses
from rodwright.quote.tally import Count
from rodwright.strength.hanging import hanging
from rodwright.strength.hanging_fixings import IN_MASONRY as HUNG_IN_MASONRY
from rodwright.strength.hanging_fixings import IN_STUDS as HUNG_IN_STUDS
from rodwright.strength.restraint import IN_MASONRY, IN_STUDS
from rodwright.strength.tipping import tipping
from rodwright.trade.gaps import FIXING_SPACING
from rodwright.trade.sizes import trade_sizes
from rodwright.unit import TRAITS, JointKind, Role, Unit
from rodwright.unit.facts import carcass_size, frame_reach, is_scribed
from rodwright.unit.roles import FACE_FRAME, SURROUND, Assembly

_METRE = 1e3


def fitted(unit: Unit, spacing: float | None = None) -> Iterator[Count]:
    """What is done on the way to the site and there; fixings to the sides of an opening stand
    ``spacing`` mm apart at most (None: as usual)."""
    yield from _carried(unit)
    yield "loading", unit_weight(unit)
    yield "settling_in", 1
    yield "standing", carcasses(unit)
    yield "fixing_point", wall_fixings(unit, spacing)
    yield "scribing", _scribed(unit) / _METRE
    if unit.opening is not None:
        yield "frame_member", _frame_members(unit)
    if not _travels_whole(unit):
        round_it = (part.role in SURROUND and part.role is not Role.SCRIBE for part in unit.parts)
        yield "surround", sum(round_it)
    yield "adjusting", len(unit.motions)
    yield "clearing", 1


def _carried(unit: Unit) -> Iterator[Count]:
    """Loose shelves, other pieces that are carried as one, and what is left of each carcass; doors
    and all else stay on a unit that travels whole."""
    whole = _travels_whole(unit)
    resting = {each.second for each in unit.joints if each.kind is JointKind.RESTING}
    for piece in pieces_of(unit):
        if not resting.isdisjoint(piece.refs):
            yield "loose_shelf", 1
        elif not whole and TRAITS[unit.part(piece.refs[0]).role].of is not Assembly.CARCASS:
            yield "packing", 1
    yield "packing", carcasses(unit)


def _travels_whole(unit: Unit) -> bool:
    """Whether it leaves the workshop in one piece: of one carcass, for no opening (common practice,
    no source)."""
    return unit.opening is None and carcasses(unit) == 1


def wall_fixings(unit: Unit, spacing: float | None = None) -> int:
    """Fixings to the wall.

    In an opening a point near both ends of each side and between them no more than ``spacing`` mm
    apart (None: as usual), in each plane that was measured, as the survey has them; of what hangs
    or could tip, the plugs in masonry that it needs, or where it stands at no masonry the screws
    in studs.
    """
    if unit.hung or unit.opening is None:
        results = (*(hanging(unit) if unit.hung else tipping(unit)),)
        kinds = (HUNG_IN_MASONRY, HUNG_IN_STUDS) if unit.hung else (IN_MASONRY, IN_STUDS)
        needed = [
            sum(each.figure or 0.0 for each in results if each.what == what) for what in kinds
        ]
        return round(next(filter(None, needed), 0.0))
    shape = unit.opening.shape
    planes = 1 if shape is None else len(shape.planes)
    apart = spacing or trade_sizes(unit.display_unit).usual(FIXING_SPACING)
    return 2 * planes * len(fixing_points(carcass_size(unit)[1], apart))


def _scribed(unit: Unit) -> float:
    """Length (mm) of what is scribed: scribes, and the edges of a face frame that reaches past the
    gaps."""
    length = sum(part.blank.length for part in unit.parts if part.role is Role.SCRIBE)
    if is_scribed(unit):
        frame = Box.of_boxes(part.bounds() for part in unit.parts if part.role in FACE_FRAME)
        wide, _, high = frame.size
        along = {"left": high, "right": high, "top": wide}
        length += sum(along[side] for side, by in frame_reach(unit).items() if by > 0)
    return length


def _frame_members(unit: Unit) -> int:
    """Face frames that are fitted as one, and members that are fitted one by one."""
    roles = (unit.part(piece.refs[0]).role for piece in pieces_of(unit))
    return sum(role in FACE_FRAME for role in roles)
