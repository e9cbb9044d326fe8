"""What is dimensioned in a unit: chains of figures for its front, its side and its plan.

Everything is worked out from the parts, never from drawn lines.  Lengths in mm; a view's frame is
that of its camera (:mod:`rodwright.pictures.camera`): front x and z, from the left -y and z, plan
x and y of the unit.  The figures of a chain are in the unit's measure and add up, as they are
read, to what the whole chain reads (:func:`rodwright.lengths.shown_adding_up`): thicknesses of
boards and gaps are shown as they are, of clear spaces some may be a step (0.1 mm, 1/64 in) off, or
where there are none, of what is long.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit, format_length, shown_adding_up
from rodwright.pictures.drafting import seen
from rodwright.pictures.drafting.bands import (
    Interval,
    Rectangle,
    Row,
    is_square,
    rectangle,
    rows,
    stretches,
)
from rodwright.pictures.drafting.seen import ViewName
from rodwright.pictures.drafting.slopes import Slope, slope_of
from rodwright.pictures.drafting.views import Dimension, Note, Side
from rodwright.unit import BASE, FACE_FRAME, FRONTS, UPRIGHTS, Role, Unit

Place = tuple[Literal["x", "y"], Side, float]
"""The axis that a chain is measured along, its side of the view, and where on the other axis its
points are."""
_MANY = 14
"""Heights from one datum are told of no more levels than this: more crowd each other."""
_GAP, _LONG = 6.0, 50.0
"""Clear spaces under this are gaps, which read the same wherever they are told; and on a board so
long a step is little."""


@dataclass(frozen=True, slots=True)
class Chain:
    """Dimensions that stand on one line, and what they are of.

    ``name`` is one of ``overall``, ``overhangs``, ``storeys`` (base, carcass, worktop, cornice),
    ``slope``, ``columns``, ``shelves``, ``levels`` (from one datum), ``front`` (doors, drawers and
    face frame), ``depths`` and ``base``.  ``main`` ones are wanted where there is little room.
    """

    name: str
    main: bool
    dimensions: tuple[Dimension, ...]


def dimensions_of(chains: Iterable[Chain]) -> tuple[Dimension, ...]:
    """The dimensions of chains, those of the first nearest to the view."""
    ranks: dict[Side, int] = {}
    found: list[Dimension] = []
    for number, chain in enumerate(chains):
        for side in {each.side: None for each in chain.dimensions}:
            rank = ranks[side] = ranks.get(side, -1) + 1
            found += [
                replace(each, rank=rank, chain=f"{chain.name} {number}")
                for each in chain.dimensions
                if each.side == side
            ]
    return tuple(found)


def chains(unit: Unit, view: ViewName, *, fitted: bool = False) -> tuple[Chain, ...]:
    """All chains of a view, the nearest to it first, none twice; those of the outside as it is
    made, or as it is once ``fitted``, where that is less (`unit.facts.box_as_fitted`)."""
    of = {"front": _front, "side": _side, "plan": _plan}[view]
    box = seen.fitted(unit, view) if fitted else seen.whole(unit, view)
    found = [chain for chain in of(unit, box) if chain.dimensions]
    return tuple(
        chain
        for number, chain in enumerate(found)
        if not any(_says_the_same(chain, other) for other in found[number + 1 :])
    )


def _says_the_same(one: Chain, two: Chain) -> bool:
    """Whether both are of one figure, and it is the same at the same side."""
    if (len(one.dimensions), len(two.dimensions)) != (1, 1):
        return False
    (a,), (b,) = one.dimensions, two.dimensions
    return (a.side, a.start, a.end, a.running) == (b.side, b.start, b.end, b.running)


def pitch_note(unit: Unit, view: ViewName) -> tuple[Note, ...]:
    """The pitch of a slope, in the view that shows it: ``45°``."""
    slope = slope_of(unit)
    if slope is None or not _shows(view, slope):
        return ()
    (a, b), (c, d) = (_in_view(point, slope) for point in (slope.low, slope.high))
    return (Note(((a + c) / 2, (b + d) / 2), f"{slope.pitch:.1f}".removesuffix(".0") + "°"),)


def running(unit: Unit, levels: Sequence[float], box: Rectangle) -> Chain:
    """Heights (mm, of the view's frame) from the foot of its ``box``, on one line at its right
    (ISO 129-1: running dimensions)."""
    datum, right = box[1][0], box[0][1]
    heights = sorted(each for each in levels if each > datum + TOUCH)
    found = tuple(
        Dimension(
            (right, datum),
            (right, each),
            format_length(each - datum, unit.display_unit),
            "y",
            "right",
            "levels",
            running=True,
        )
        for each in heights
    )
    return Chain("levels", False, found if len(found) <= _MANY else ())


def chain(
    name: str,
    boards: Iterable[Interval],
    ends: Interval,
    place: Place,
    unit: LengthUnit,
    *,
    main: bool = False,
) -> Chain:
    """A chain from end to end, each board and each space between two of them a figure."""
    along, side, where = place
    found = stretches(boards, ends)
    texts = shown_adding_up([b - a for a, b, _ in found], unit, [_kept(*each) for each in found])

    def at(length: float) -> tuple[float, float]:
        return (where, length) if along == "y" else (length, where)

    pairs = zip(found, texts, strict=True)
    shown = (Dimension(at(a), at(b), text, along, side, name) for (a, b, _), text in pairs)
    return Chain(name, main, tuple(shown))


def _kept(start: float, end: float, filled: bool) -> int:
    """How much a figure is to be shown as it is, where others of its chain can give way."""
    if filled:
        return 1 if end - start >= _LONG else 3
    return 2 if end - start < _GAP else 0


def _front(unit: Unit, box: Rectangle) -> Iterator[Chain]:
    columns = rows(seen.rectangles(unit, UPRIGHTS, "front"), 0)
    levels = rows(seen.levels(unit), 1, seen.between_columns(unit))
    yield from _of_rows(unit, "columns", columns, box, "below")
    yield from _of_rows(unit, "shelves", levels, box, "left")
    yield from _faces(unit, box)
    if levels:
        yield running(unit, [high for _, high in levels[0].boards], box)
    yield from _slope(unit, "front", box)
    yield from _outsides(unit, "front", box)


def _side(unit: Unit, box: Rectangle) -> Iterator[Chain]:
    yield from _depths(unit, box)
    yield from _slope(unit, "side", box)
    yield from _outsides(unit, "side", box)


def _plan(unit: Unit, box: Rectangle) -> Iterator[Chain]:
    yield from _outsides(unit, "plan", box)


def _outsides(unit: Unit, view: ViewName, box: Rectangle) -> Iterator[Chain]:
    """What stands round the carcass, and overall sizes outermost."""
    case = seen.case(unit)
    if case is not None:
        across, up = rectangle(case, *seen.AXES[view])
        if len(stretches([across], box[0])) > 1 and view != "side":
            yield _outside(unit, "overhangs", [across], box, "below")
        on_top = seen.rectangles(unit, (Role.WORKTOP, Role.CORNICE), view)
        name, boards = ("overhangs", [up])
        if view != "plan":
            name, boards = ("storeys", [up, *(each[1] for each in on_top)])
        if len(stretches(boards, box[1])) > 1:
            yield _outside(unit, name, boards, box, "left")
    yield _outside(unit, "overall", (), box, "below", main=True)
    yield _outside(unit, "overall", (), box, "left", main=True)


def _faces(unit: Unit, box: Rectangle) -> Iterator[Chain]:
    """Doors, drawer fronts and the face frame as they are seen from the front."""
    leaves = [rectangle(each, *seen.AXES["front"]) for each in seen.leaves(unit)]
    frame = [part for part in seen.parts_of(unit, FACE_FRAME) if is_square(part)]
    for side in _ROUND:
        upright = side == "above"
        members = [
            rectangle(part.bounds(), *seen.AXES["front"])
            for part in frame
            if seen.runs_up(part) is upright
        ]
        found = rows([*leaves, *members], 0 if upright else 1)
        yield from _of_rows(unit, "front", found, box, side)


_ROUND: tuple[Side, Side] = ("above", "right")


def _depths(unit: Unit, box: Rectangle) -> Iterator[Chain]:
    """From the front to the back: doors, frame, carcass, and a back behind it; and the base."""
    pieces = [
        across for across, _ in seen.rectangles(unit, (*FACE_FRAME, *FRONTS, Role.BACK), "side")
    ]
    case = seen.case(unit)
    if case is not None:
        inner = rectangle(case, *seen.AXES["side"])[0]
        pieces = [inner, *(each for each in pieces if not seen.is_inside(each, inner))]
    yield _outside(unit, "depths", pieces, box, "below", main=True)
    base = [end for across, _ in seen.rectangles(unit, BASE, "side") for end in across]
    if base and len(stretches([(min(base), max(base))], box[0])) > 1:
        yield _outside(unit, "base", [(min(base), max(base))], box, "below")


def _slope(unit: Unit, view: ViewName, box: Rectangle) -> Iterator[Chain]:
    """Where a slope begins, and its height at the low side."""
    slope = slope_of(unit)
    if slope is None or not _shows(view, slope):
        return
    low, high = (_in_view(point, slope) for point in (slope.low, slope.high))
    ends = [(low[0], low[0]), (high[0], high[0])]
    yield _outside(unit, "slope", ends, box, "above", main=True)
    side: Side = "left" if low[0] < high[0] else "right"
    yield _outside(unit, "slope", [(low[1], low[1])], box, side, main=True)


def _of_rows(
    unit: Unit, name: str, found: Sequence[Row], box: Rectangle, side: Side
) -> Iterator[Chain]:
    """The fullest row outside the view as the main chain, the others where they are in it.

    All go from the lowest face of any to the highest: each adds up to the same.
    """
    if not found:
        return
    ends = (
        min(row.boards[0][0] for row in found),
        max(end for row in found for _, end in row.boards),
    )
    yield _outside(unit, name, found[0].boards, box, side, main=True, ends=ends)
    along: Literal["x", "y"] = "y" if side in ("left", "right") else "x"
    for row in found[1:]:
        yield chain(name, row.boards, ends, (along, "inside", row.middle), unit.display_unit)


def _outside(
    unit: Unit,
    name: str,
    boards: Iterable[Interval],
    box: Rectangle,
    side: Side,
    *,
    main: bool = False,
    ends: Interval | None = None,
) -> Chain:
    """A chain at a side of the view, along the whole of it unless other ``ends`` are given."""
    along: Literal["x", "y"] = "y" if side in ("left", "right") else "x"
    own = 1 if along == "y" else 0
    where = box[1 - own][0 if side in ("left", "below") else 1]
    return chain(name, boards, ends or box[own], (along, side, where), unit.display_unit, main=main)


def _shows(view: ViewName, slope: Slope) -> bool:
    return view == ("front" if slope.sideways else "side")


def _in_view(point: tuple[float, float], slope: Slope) -> tuple[float, float]:
    return (point[0] if slope.sideways else -point[0], point[1])
