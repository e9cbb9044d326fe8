"""What is only marked on a part: where others are screwed, pinned or biscuited to a face, or run
beside it, into which nothing is cut that would say where they go; mm."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from rodwright.geometry import TOUCH, Box
from rodwright.handover.slides import slides_of
from rodwright.paper.part_sheets.datum import AXES, Datum
from rodwright.paper.part_sheets.figures import Entry
from rodwright.paper.part_sheets.patches import Patch
from rodwright.paper.part_sheets.purposes import named
from rodwright.paper.part_sheets.slide_lines import slide_lines
from rodwright.unit import Hole, Joint, JointKind, Mortise, Part, Surface, Unit

_SET_AGAINST = (
    JointKind.SCREWED,
    JointKind.PINNED,
    JointKind.BUTTONED,
    JointKind.BISCUIT,
    JointKind.POCKET_SCREW,
    JointKind.SLIDING,
)
_ALL = 0.98
"""Part of a face: what covers more of it needs no mark."""
_NEAR = 80.0
"""mm: no slide or runner holds a drawer farther off."""


def marks(unit: Unit, pieces: Sequence[Part], datum: Datum) -> Iterator[tuple[Entry, Patch]]:
    """What is marked on equal pieces, each place once, from the datum end on."""
    found: dict[tuple[Patch, JointKind], dict[str, list[str]]] = {}
    for piece in pieces:
        for joint, other in _met(unit, piece):
            patch = _patch(piece, other, sliding=joint.kind is JointKind.SLIDING)
            if patch is not None and not _cut_there(piece, patch):
                there = found.setdefault((patch, joint.kind), {})
                there.setdefault(_called(other, joint), []).append(piece.ref)
    refs = [piece.ref for piece in pieces]
    for patch, kind in sorted(found, key=lambda each: _place(datum, each[0])):
        yield _entry(datum, patch, _purpose(found[patch, kind], kind, refs)), patch
    yield from slide_lines(unit, pieces, datum)


def _met(unit: Unit, piece: Part) -> Iterator[tuple[Joint, Part]]:
    lined = [ref for ref, each in slides_of(unit).items() if each.kind == "side"]
    for joint in unit.joints:
        if joint.kind is JointKind.SLIDING and (piece.ref == joint.second or joint.second in lined):
            continue
        if joint.kind in _SET_AGAINST and piece.ref in (joint.first, joint.second):
            other = joint.second if joint.first == piece.ref else joint.first
            yield joint, unit.part(other)


def _patch(piece: Part, other: Part, *, sliding: bool) -> Patch | None:
    """Where another part lies against a face, or beside it if it slides; part frame."""
    size = piece.blank.size
    corners = map(piece.placement.to_part, other.bounds().corners())
    there = Box.of_points(corners)
    out = {Surface.FACE: there.low[2] - size[2], Surface.REVERSE: -there.high[2]}
    most = _NEAR if sliding else TOUCH
    surface = next((face for face, gap in out.items() if -TOUCH <= gap <= most), None)
    shared = Box.of_size(size).intersection(there.spanning(2, 0.0, size[2]))
    if surface is None or min(shared.size[:2]) <= TOUCH:
        return None
    if _area(shared) > _ALL * size[0] * size[1]:
        return None
    return Patch.of(surface, shared)


def _cut_there(piece: Part, patch: Patch) -> bool:
    """Whether something as large is cut into the face there, or something bored: it says where
    what comes there goes."""
    size = piece.blank.size
    for each in piece.workings:
        shared = each.bounds(size).intersection(patch.box)
        if min(shared.size[:2]) <= TOUCH:
            continue
        if isinstance(each, Hole | Mortise) and each.surface.axis == 2:
            # What is bored into the other face and doesn't come through says nothing here.
            if each.surface is patch.surface or shared.size[2] >= size[2] - TOUCH:
                return True
            continue
        if each.worked_from(size) is patch.surface and _area(shared) > _area(patch.box) / 2:
            return True
    return False


def _area(box: Box) -> float:
    return box.size[0] * box.size[1]


def _called(other: Part, joint: Joint) -> str:
    """What is there: of a drawer that runs there, which."""
    if joint.kind is JointKind.SLIDING:
        return f"box of {other.group.lower()}"
    return other.ref


def _purpose(there: Mapping[str, Sequence[str]], kind: JointKind, refs: Sequence[str]) -> str:
    """What goes there, how, and on which of the pieces if not on all."""
    on = dict.fromkeys(ref for pieces in there.values() for ref in pieces)
    some = "" if len(on) == len(refs) else f", on {named([tuple(on)])} only"
    return f"{named([tuple(there)])}, {kind}{some}"


def _place(datum: Datum, patch: Patch) -> tuple[str, float, float]:
    x, y = (datum.from_datum(axis, patch.box.low[axis], patch.box.size[axis]) for axis in (0, 1))
    return patch.surface, x, y


def _entry(datum: Datum, patch: Patch, purpose: str) -> Entry:
    box = patch.box
    figures = {AXES[axis]: datum.stretch(axis, box.low[axis], box.high[axis]) for axis in (0, 1)}
    return Entry(0, "mark", 1, (datum.words.name(patch.surface),), figures, purpose)
