"""Front, carcass, side and plan as views with their dimensions; mm."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from rodwright.geometry import Box
from rodwright.paper.drawings.bays import Bay, clipped, in_bay
from rodwright.paper.drawings.cutouts import cutout_chains, cutout_notes
from rodwright.paper.drawings.cutting_planes import CuttingPlane
from rodwright.paper.drawings.lines import bodies, lines_seen, only, outlines_behind
from rodwright.paper.drawings.refs import group_notes, panel_note, part_notes
from rodwright.paper.drawings.swings import opened_in_plan, triangles
from rodwright.pictures.bodies import foremost
from rodwright.pictures.camera import FROM_LEFT, FRONT, PLAN, Camera
from rodwright.pictures.drafting.bands import Rectangle
from rodwright.pictures.drafting.chains import Chain, chain, chains, dimensions_of, pitch_note
from rodwright.pictures.drafting.seen import ViewName, rectangles, whole
from rodwright.pictures.drafting.views import Line, Note, Point, View
from rodwright.unit import (
    BASE,
    DOORS,
    DRAWERS,
    FACE_FRAME,
    FRONTS,
    LEVELS,
    SURROUND,
    UPRIGHTS,
    Part,
    Role,
    Unit,
)

_CAMERAS: dict[ViewName, Camera] = {"front": FRONT, "side": FROM_LEFT, "plan": PLAN}
_IN_FRONT = (*FACE_FRAME, *DOORS, *DRAWERS)
"""What closes and frames the front."""
_COVERED: dict[ViewName, tuple[Role, ...]] = {
    "front": (*UPRIGHTS, *LEVELS),
    "side": (*LEVELS, Role.BACK, *BASE),
    "plan": (*UPRIGHTS, Role.BACK, *FACE_FRAME),
}
"""What is dashed in each view where something stands before it."""
_ROUND = ("slope", "overhangs", "storeys", "overall")
_INSIDE = ("columns", "shelves", "levels")


def is_closed(unit: Unit) -> bool:
    """Whether a face frame, doors or drawers stand before the carcass."""
    return any(part.role in (*FACE_FRAME, *FRONTS) for part in unit.parts)


def without_front(unit: Unit) -> Unit:
    """The unit without what closes and frames its front, on the same floor line."""
    kept = [part for part in unit.parts if part.role not in _IN_FRONT]
    around = Box.of_boxes(part.bounds() for part in kept)
    return replace(
        only(unit, kept), motions=(), envelope=around.spanning(2, low=unit.envelope.low[2])
    )


def front_view(unit: Unit, planes: Iterable[CuttingPlane], bay: Bay) -> View:
    """A stretch of the unit from the front, all shut."""
    closed, there = is_closed(unit), in_bay(unit, bay)
    outside = [part for part in there.parts if part.role in (*SURROUND, *BASE)]
    notes = [*_front_notes(there), *part_notes(_seen_first(outside), "front", there.envelope)]
    if not closed:
        notes += _carcass_notes(there)
    told = ("front",) if closed else _INSIDE
    return _in_bay(there, "Front", (told, notes), planes, bay)


def carcass_view(unit: Unit, planes: Iterable[CuttingPlane], bay: Bay) -> View:
    """A stretch of the unit from the front without what closes and frames it."""
    there = in_bay(without_front(unit), bay)
    return _in_bay(there, "Carcass", (_INSIDE, [*_carcass_notes(there)]), planes, bay)


def overview(unit: Unit) -> View:
    """The whole of a long unit from the front with its main sizes alone."""
    return _view(unit, "Front", "front", _ROUND, pitch_note(unit, "front"), (), triangles(unit))


def _in_bay(
    unit: Unit,
    name: str,
    told: tuple[Iterable[str], list[Note]],
    planes: Iterable[CuttingPlane],
    bay: Bay,
) -> View:
    """The front of a stretch; a slope is told of whole units only."""
    wanted, notes = told
    slope = ("slope",) if bay.count == 1 else ()
    pitch = pitch_note(unit, "front") if bay.count == 1 else ()
    names = (*wanted, *slope, "overhangs", "storeys", "overall")
    chained = [each for each in chains(unit, "front") if each.name in names]
    if set(_INSIDE) <= set(wanted):
        chained = [*cutout_chains(unit, "front", whole(unit, "front")), *chained]
        notes = [*notes, *cutout_notes(unit, "front")]
    view = view_of(unit, name, "front", chained, (*notes, *pitch), planes, triangles(unit))
    return clipped(view, bay)


def side_view(unit: Unit) -> View:
    """The unit from the left."""
    wanted = ("depths", "base", *_ROUND)
    return _view(unit, "From the left", "side", wanted, pitch_note(unit, "side"))


def plan_view(unit: Unit) -> View:
    """The unit from above, with doors and drawers as they stand open."""
    top = [part for part in unit.parts if part.role in (Role.WORKTOP, Role.CORNICE, Role.TOP)]
    on_top = [part for part in top if part.role is not Role.TOP] or top
    moved = opened_in_plan(unit)
    told = [*_reach(unit, moved), *chains(unit, "plan")]
    return view_of(
        unit, "From above", "plan", told, part_notes(on_top, "plan", unit.envelope), (), moved
    )


def _reach(unit: Unit, moved: tuple[tuple[Point, ...], ...]) -> Iterator[Chain]:
    """How far doors and drawers reach in front of the unit when they stand open."""
    (_, right), (front, _) = whole(unit, "plan")
    farthest = min((y for path in moved for _, y in path), default=front)
    if farthest < front:
        yield chain("open", (), (farthest, front), ("y", "right", right), unit.display_unit)


def view_of(
    unit: Unit,
    name: str,
    kind: ViewName,
    told: Iterable[Chain],
    notes: Iterable[Note],
    planes: Iterable[CuttingPlane] = (),
    moved: tuple[tuple[Point, ...], ...] = (),
) -> View:
    """What a camera sees of a unit, with all that is told of it."""
    camera = _CAMERAS[kind]
    shapes = [each.placed_solid() for each in foremost(bodies(unit), camera)]
    visible = lines_seen(shapes, camera)
    covered = [part for part in unit.parts if part.role in _COVERED[kind]]
    low, high = corners(whole(unit, kind), (*visible, *moved))
    return View(
        name,
        low,
        high,
        visible,
        outlines_behind(covered, camera, visible),
        planes=tuple((each.letter, _trace(each, low, high)) for each in planes),
        moved=moved,
        dimensions=dimensions_of(told),
        notes=tuple(notes),
    )


def corners(box: Rectangle, lines: Iterable[tuple[Point, ...]]) -> tuple[Point, Point]:
    """The corners of the box round another and round some lines."""
    (left, right), (foot, head) = box
    points = [(left, foot), (right, head), *(point for line in lines for point in line)]
    across, up = zip(*points, strict=True)
    return (min(across), min(up)), (max(across), max(up))


def _view(
    unit: Unit,
    name: str,
    kind: ViewName,
    wanted: Iterable[str],
    notes: Iterable[Note],
    planes: Iterable[CuttingPlane] = (),
    moved: tuple[tuple[Point, ...], ...] = (),
) -> View:
    names = set(wanted)
    told = [each for each in chains(unit, kind) if each.name in names]
    return view_of(unit, name, kind, told, notes, planes, moved)


def _trace(plane: CuttingPlane, low: Point, high: Point) -> Line:
    """Where a plane is seen edge-on from the front."""
    if plane.axis == 0:
        return (plane.at, low[1]), (plane.at, high[1])
    return (low[0], plane.at), (high[0], plane.at)


def _seen_first(parts: Iterable[Part]) -> Iterator[Part]:
    """Of parts straight behind each other, the foremost."""
    seen: set[tuple[float, ...]] = set()
    for part in sorted(parts, key=lambda each: each.bounds().low[1]):
        box = part.bounds()
        covers = (box.low[0], box.high[0], box.low[2], box.high[2])
        overlaps = any(
            covers[0] < other[1]
            and other[0] < covers[1]
            and covers[2] < other[3]
            and other[2] < covers[3]
            for other in seen
        )
        if not overlaps:
            seen.add(covers)
            yield part


def _front_notes(unit: Unit) -> Iterator[Note]:
    """Refs of the face frame and of fronts in one piece, and the names of framed doors."""
    framed = [part for part in unit.parts if part.role in DOORS and part.role is not Role.DOOR]
    single = (*FACE_FRAME, Role.DOOR, Role.DRAWER_FRONT)
    yield from part_notes(
        [part for part in unit.parts if part.role in single], "front", unit.envelope
    )
    yield from group_notes(framed, "front")


def _carcass_notes(unit: Unit) -> Iterator[Note]:
    """Refs of the panels, and of the backs in the largest field that is left of each."""
    panels = [part for part in unit.parts if part.role in (*UPRIGHTS, *LEVELS)]
    yield from part_notes(panels, "front", unit.envelope)
    before = rectangles(unit, (*UPRIGHTS, *LEVELS), "front")
    for part in unit.parts:
        if part.role is Role.BACK:
            yield panel_note(part, before, "front", unit.envelope)
