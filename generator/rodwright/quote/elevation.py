"""The dimensioned elevation on a quote: the front, and the side where both have room; mm of paper.

It has the figures that a client looks for, overall sizes and what is seen of columns, shelves,
doors and drawers, and no refs of a bench.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from rodwright.lengths import LengthUnit
from rodwright.paper.drawings.elevations import view_of
from rodwright.paper.drawings.swings import triangles
from rodwright.pictures.drafting.chains import chains, pitch_note
from rodwright.pictures.drafting.figures import SCALES
from rodwright.pictures.drafting.inked import told_marks, view_marks
from rodwright.pictures.drafting.letters import around
from rodwright.pictures.drafting.on_paper import DraftedView, draft_view
from rodwright.pictures.drafting.views import View
from rodwright.pictures.ink import Drawing, Mark
from rodwright.quote.seen_sizes import seen_chains
from rodwright.unit import Unit

_SCALES: dict[LengthUnit, tuple[int, ...]] = {
    "mm": tuple(sorted((*SCALES["mm"], 15, 25, 30, 40, 75, 150))),
    "in": SCALES["in"],
}
"""Those of drawings, and in mm some between: nobody measures on a quote (1:25 and 1:75 are
on scale rules; common practice, no source)."""
_APART = 8.0
"""Between the two views."""
_ROUND = 1.0
"""Round both of them."""
_SEEN = ("seen", "slope", "overall")
_MAIN = ("slope", "storeys", "overall")


@dataclass(frozen=True, slots=True)
class Elevation:
    """A drawing and what it stands for: ``scale`` mm to a mm of paper."""

    drawing: Drawing
    scale: int


def elevation(unit: Unit, width: float, height: float) -> Elevation:
    """The front of a unit, with its side at the same scale, as large as ``width`` x ``height``
    (mm of paper) hold them at a scale that drawings are made at.

    The side is left out where it would make the front smaller; figures are, the inner ones first,
    where they would have no room at any scale.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    side = _side(unit)
    for wanted in (_SEEN, _MAIN, ("overall",), ()):
        front = _front(unit, wanted)
        alone = _largest((front,), (width, height), unit.display_unit)
        # The view from the left stands at the right in first angle, in third at the left.
        pair = (side, front) if unit.display_unit == "in" else (front, side)
        both = _largest(pair, (width, height), unit.display_unit)
        if alone is not None:
            found = both if both and both[0].scale == alone[0].scale else alone
            return Elevation(_drawing(unit, found), found[0].scale)
    raise ValueError(f"it goes into {width:g} x {height:g} mm at no scale")


def _front(unit: Unit, wanted: Sequence[str]) -> View:
    """The front without what is hidden."""
    inner = seen_chains(unit) if "seen" in wanted else ()
    told = [*inner, *(each for each in chains(unit, "front", fitted=True) if each.name in wanted)]
    notes, ways = pitch_note(unit, "front"), triangles(unit)
    return replace(view_of(unit, "", "front", told, notes, (), ways), hidden=())


def _side(unit: Unit) -> View:
    """The side with its depth: its height stands beside the front."""
    told = [
        each
        for each in chains(unit, "side")
        if each.name == "overall" and all(one.along == "x" for one in each.dimensions)
    ]
    return replace(view_of(unit, "", "side", told, pitch_note(unit, "side")), hidden=())


def _largest(
    views: Sequence[View], room: tuple[float, float], measure: LengthUnit
) -> tuple[DraftedView, ...] | None:
    """The views side by side at the largest scale at which they go into the room."""
    for scale in _SCALES[measure]:
        if any((view.high[1] - view.low[1]) / scale > room[1] for view in views):
            continue
        if sum((view.high[0] - view.low[0]) / scale for view in views) > room[0]:
            continue
        placed = tuple(_beside(draft_view(view, scale) for view in views))
        whole = around([view.extent for view in placed])
        if whole.right <= room[0] - _ROUND and whole.bottom - whole.top <= room[1] - 2 * _ROUND:
            return placed
    return None


def _beside(views: Iterator[DraftedView]) -> Iterator[DraftedView]:
    """Views from left to right on one floor line."""
    left = _ROUND
    for view in views:
        placed = view.moved(left - view.extent.left, 0.0)
        yield placed
        left = placed.extent.right + _APART


def _drawing(unit: Unit, views: Sequence[DraftedView]) -> Drawing:
    whole = around([view.extent for view in views])
    down = [view.moved(0.0, _ROUND - whole.top) for view in views]
    marks: list[Mark] = [mark for view in down for mark in view_marks(view)]
    marks += [mark for view in down for mark in told_marks(view)]
    seen = "Front" if len(views) == 1 else "Front and side"
    return Drawing(
        whole.right + _ROUND,
        whole.bottom - whole.top + 2 * _ROUND,
        unit.title,
        f"{seen}, at 1:{views[0].scale}.",
        tuple(marks),
        "mm",
    )
