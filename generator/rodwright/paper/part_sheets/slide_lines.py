"""The middle lines of slides at the sides of drawers, on what carries them and on the boxes; mm.

A slide begins with its box and is fixed along the middle of the box's side, where the set-out has
the screws of its joint.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rodwright.geometry import TOUCH, Box
from rodwright.handover.slides import Slides, slides_of
from rodwright.paper.part_sheets.datum import AXES, Datum
from rodwright.paper.part_sheets.figures import Entry, Figure
from rodwright.paper.part_sheets.patches import Patch
from rodwright.paper.part_sheets.purposes import named
from rodwright.unit import Part, Surface, Unit

_LINE = 2.0
"""mm: a slide of unknown height is drawn so high, round its line."""


def slide_lines(unit: Unit, pieces: Sequence[Part], datum: Datum) -> Iterator[tuple[Entry, Patch]]:
    """The lines on equal pieces, each once, from the datum end on."""
    found: dict[tuple[Patch, str], dict[str, list[str]]] = {}
    for piece in pieces:
        for ref, slides in slides_of(unit).items():
            if slides.kind != "side" or piece.ref not in (ref, *slides.carriers):
                continue
            patch = _patch(unit, piece, unit.part(ref), slides)
            if patch is not None:
                whose, begins = _told(piece, unit.part(ref), datum)
                found.setdefault((patch, begins), {}).setdefault(whose, []).append(piece.ref)
    for (patch, begins), named_on in sorted(
        found.items(), key=lambda each: _place(datum, each[0][0])
    ):
        on = dict.fromkeys(ref for refs in named_on.values() for ref in refs)
        some = "" if len(on) == len(pieces) else f", on {named([tuple(on)])} only"
        yield _entry(datum, patch, f"{named([tuple(named_on)])}, middle line{begins}{some}"), patch


def _patch(unit: Unit, piece: Part, side: Part, slides: Slides) -> Patch | None:
    """What a slide covers of a piece that lies along it, part frame."""
    other = unit.part(slides.carriers[0]) if piece.ref == side.ref else side
    size, to_part = piece.blank.size, piece.placement.to_part
    away = Box.of_points(map(to_part, other.bounds().corners())).centre[2]
    bounds, half = side.bounds(), (slides.height or _LINE) / 2
    band = bounds.spanning(2, bounds.centre[2] - half, bounds.centre[2] + half)
    there = Box.of_points(map(to_part, band.corners())).spanning(2, 0.0, size[2])
    shared = there.intersection(Box.of_size(size))
    if min(shared.size[:2]) <= TOUCH:
        return None
    return Patch.of(Surface.FACE if away > size[2] / 2 else Surface.REVERSE, shared)


def _told(piece: Part, side: Part, datum: Datum) -> tuple[str, str]:
    """Whose slide it is, and where it begins if that is before the piece's front."""
    if piece.ref == side.ref:
        return "slide", ""
    out = piece.bounds().low[1] - side.bounds().low[1]
    begins = f", begins {datum.words.say(out)} before the front edge" if out > TOUCH else ""
    return f"slide of {side.group.lower()}", begins


def _place(datum: Datum, patch: Patch) -> tuple[str, float, float]:
    x, y = (datum.from_datum(axis, patch.box.low[axis], patch.box.size[axis]) for axis in (0, 1))
    return patch.surface, x, y


def _entry(datum: Datum, patch: Patch, purpose: str) -> Entry:
    """The longer way of the box is along the slide, which has one figure across it."""
    box = patch.box
    along = 0 if box.size[0] >= box.size[1] else 1
    across = 1 - along
    middle = datum.from_datum(across, box.centre[across])
    figures: dict[str, Figure] = {
        AXES[along]: datum.stretch(along, box.low[along], box.high[along]),
        AXES[across]: (datum.words.say(middle),),
    }
    return Entry(0, "line", 1, (datum.words.name(patch.surface),), figures, purpose)
