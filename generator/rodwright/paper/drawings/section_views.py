"""Sections as views: what the plane cuts, what stands behind it, and the chains that it shows.

Lengths in mm, in the frame of the view.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit
from rodwright.paper.drawings.bays import Bay, clipped, in_bay
from rodwright.paper.drawings.clipping import cuts_within
from rodwright.paper.drawings.cutouts import cutout_chains, cutout_notes
from rodwright.paper.drawings.cutting_planes import CuttingPlane, cut_through
from rodwright.paper.drawings.elevations import corners
from rodwright.paper.drawings.refs import around, cut_notes
from rodwright.pictures.drafting.bands import Interval, Rectangle, is_square, rectangle
from rodwright.pictures.drafting.chains import (
    Chain,
    chain,
    chains,
    dimensions_of,
    pitch_note,
    running,
)
from rodwright.pictures.drafting.seen import AXES, ViewName
from rodwright.pictures.drafting.views import Cut, Side, View
from rodwright.unit import (
    BASE,
    DRAWERS,
    FACE_FRAME,
    FRONTS,
    LEVELS,
    UPRIGHTS,
    Part,
    Role,
    Unit,
)

_FACES = (*FACE_FRAME, *FRONTS)


@dataclass(frozen=True, slots=True)
class Pieces:
    """What a plane cuts, by ref: each part, and what it covers of the view.

    That is the part's own box; of a part that lies askew or is cut aslant, what the plane cuts.
    """

    parts: tuple[Part, ...]
    boxes: dict[str, Rectangle]

    def extents(self, roles: Iterable[Role], along: int) -> list[Interval]:
        """From where to where parts of some roles reach along an axis of the view."""
        wanted = set(roles)
        return [self.boxes[part.ref][along] for part in self.parts if part.role in wanted]

    def levels(self, roles: Iterable[Role]) -> list[Interval]:
        """How high parts of some roles lie, the layers of a shelf as one."""
        found: list[tuple[Role, Interval, Interval]] = []
        wanted = set(roles)
        parts = [part for part in self.parts if part.role in wanted]
        for part in sorted(parts, key=lambda each: self.boxes[each.ref][1]):
            across, (foot, head) = self.boxes[part.ref]
            if found and found[-1][:2] == (part.role, across):
                _, _, (low, high) = found[-1]
                if abs(foot - high) <= TOUCH:
                    found[-1] = (part.role, across, (low, head))
                    continue
            found.append((part.role, across, (foot, head)))
        return [up for _, _, up in found]

    def deepest(self, roles: Iterable[Role], along: int) -> Part | None:
        """The part of some roles that reaches farthest along an axis of the view."""
        wanted = set(roles)
        found = [part for part in self.parts if part.role in wanted]
        return max(found, key=lambda part: _length(self.boxes[part.ref][along]), default=None)

    def around(self) -> Rectangle:
        """The box round all."""
        return around(list(self.boxes.values()))


def section_view(
    unit: Unit, plane: CuttingPlane, bay: Bay | None = None, *, cut_round: bool = False
) -> View:
    """What a plane cuts of a unit, looked at from the left or from above; a level one of a stretch
    of it, if that is given.  ``cut_round`` tells what is cut out round pipes and skirtings too.

    Raises:
        ValueError: the plane cuts nothing.
    """
    kind: ViewName = "side" if plane.axis == 0 else "plan"
    unit = unit if bay is None else in_bay(unit, bay)
    cuts, visible = cut_through(unit, plane)
    pieces = pieces_cut(unit, cuts, kind)
    box = pieces.around()
    if plane.axis == 0:
        # An upright section stands on the floor line.
        box = (box[0], (min(box[1][0], unit.envelope.low[2]), box[1][1]))
    if bay is not None and bay.count > 1:
        box = (bay.ends, box[1])
    low, high = corners(box, visible)
    noted = (
        cuts if bay is None else cuts_within(cuts, ((bay.ends[0], low[1]), (bay.ends[1], high[1])))
    )
    told = [*(_upright(unit, pieces, box) if plane.axis == 0 else _level(unit, pieces, box))]
    notes = [*cut_notes(noted, unit), *pitch_note(unit, kind)]
    if cut_round:
        told[:0] = cutout_chains(unit, kind, box)
        notes += cutout_notes(unit, kind)
    view = View(
        f"Section {plane.letter}-{plane.letter}",
        low,
        high,
        visible,
        cuts=cuts,
        dimensions=dimensions_of(each for each in told if each.dimensions),
        notes=tuple(notes),
    )
    return view if bay is None else clipped(view, bay)


def pieces_cut(unit: Unit, cuts: Sequence[Cut], kind: ViewName) -> Pieces:
    """The parts that were cut, with what they cover of a view."""
    rings: dict[str, list[Rectangle]] = {}
    for cut in cuts:
        across, up = zip(*cut.rings[0], strict=True)
        rings.setdefault(cut.ref, []).append(((min(across), max(across)), (min(up), max(up))))
    parts = tuple(part for part in unit.parts if part.ref in rings)
    boxes = {
        part.ref: rectangle(part.bounds(), *AXES[kind])
        if is_square(part) and not _aslant(part)
        else around(rings[part.ref])
        for part in parts
    }
    return Pieces(parts, boxes)


def _aslant(part: Part) -> bool:
    return any(each.planes(part.blank.size) for each in part.workings)


def _upright(unit: Unit, cut: Pieces, box: Rectangle) -> Iterator[Chain]:
    """Levels and what is clear between them, fronts and frame, and depths."""
    say = unit.display_unit
    stack = cut.levels((*LEVELS, Role.WORKTOP, Role.CORNICE))
    yield _outside("shelves", stack, box, "left", say)
    yield _outside("front", cut.extents(_FACES, 1), box, "right", say)
    yield running(unit, [high for _, high in cut.levels(LEVELS)], box)
    yield from _depths(cut, box, say)
    yield _outside("base", _one(cut.extents(BASE, 0)), box, "below", say)
    yield from (each for each in chains(unit, "side") if each.name == "slope")
    yield from _overall(box, say)


def _depths(cut: Pieces, box: Rectangle, say: LengthUnit) -> Iterator[Chain]:
    """From the front to the back at a shelf, and, above, at a drawer."""
    others = cut.extents((*_FACES, Role.BACK), 0)
    level = cut.deepest((Role.SHELF,), 0) or cut.deepest(LEVELS, 0)
    if level is not None:
        own, up = cut.boxes[level.ref]
        lipped = [
            cut.boxes[part.ref][0]
            for part in cut.parts
            if part.role is Role.LIPPING and _overlap(cut.boxes[part.ref][1], up)
        ]
        yield _outside("depths", [own, *lipped, *others], box, "below", say)
    ends = cut.extents((role for role in DRAWERS if role is not Role.DRAWER_BOTTOM), 0)
    if ends:
        back = cut.extents((Role.BACK,), 0)
        yield _outside("drawer", [*ends, *back], box, "above", say)


def _level(unit: Unit, cut: Pieces, box: Rectangle) -> Iterator[Chain]:
    """Fronts and frame at the foot, uprights and what is clear between them at the head, and
    depths at the left."""
    say = unit.display_unit
    yield _outside("front", cut.extents(_FACES, 0), box, "below", say)
    yield _outside("columns", cut.extents(UPRIGHTS, 0), box, "above", say)
    yield _outside("base", cut.extents(BASE, 0), box, "above", say)
    pieces = cut.extents((*_FACES, Role.BACK, *BASE), 1)
    upright = cut.deepest(UPRIGHTS, 1)
    if upright is not None:
        low, high = cut.boxes[upright.ref][1]
        outside = [each for each in pieces if each[0] < low - TOUCH or high + TOUCH < each[1]]
        pieces = [(low, high), *outside]
    yield _outside("depths", pieces, box, "left", say)
    yield from _overall(box, say)


def _overall(box: Rectangle, say: LengthUnit) -> Iterator[Chain]:
    yield _outside("overall", [box[0]], box, "below", say)
    yield _outside("overall", [box[1]], box, "left", say)


def _outside(
    name: str, pieces: Sequence[Interval], box: Rectangle, side: Side, say: LengthUnit
) -> Chain:
    """A chain along the whole of a view's side; empty where the overall size tells as much."""
    along = 1 if side in ("left", "right") else 0
    where = box[1 - along][0 if side in ("left", "below") else 1]
    if not pieces:
        return Chain(name, main=False, dimensions=())
    told = chain(name, pieces, box[along], ("y" if along else "x", side, where), say)
    return told if name == "overall" or len(told.dimensions) > 1 else Chain(name, False, ())


def _one(pieces: Sequence[Interval]) -> list[Interval]:
    """One stretch round all; none round none."""
    if not pieces:
        return []
    return [(min(low for low, _ in pieces), max(high for _, high in pieces))]


def _overlap(one: Interval, other: Interval) -> bool:
    return one[0] < other[1] and other[0] < one[1]


def _length(each: Interval) -> float:
    return each[1] - each[0]
