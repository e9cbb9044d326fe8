"""Random blanks, workings and placements for property tests."""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import permutations

import numpy as np
from hypothesis import assume
from hypothesis import strategies as st

from rodwright.geometry import Vector
from rodwright.unit import (
    Bevel,
    Channel,
    Easing,
    FingerPull,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    Placement,
    PocketHole,
    Rebate,
    ShapeKey,
    Surface,
    Working,
)

CORNERS = [
    (first, second) for first, second in permutations(Surface, 2) if first.axis != second.axis
]
FACES = [Surface.FACE, Surface.REVERSE]
EDGES = [Surface.FACE_EDGE, Surface.BACK_EDGE]
ENDS = [Surface.NEAR_END, Surface.FAR_END]


def lengths(low: float, high: float) -> st.SearchStrategy[float]:
    """Lengths in mm to the tenth, as a maker would give them."""
    return st.integers(math.ceil(low * 10), math.floor(high * 10)).map(lambda each: each / 10)


def sizes() -> st.SearchStrategy[Vector]:
    """Length, width and thickness of a blank."""
    return st.tuples(lengths(80, 600), lengths(40, 300), lengths(10, 40))


@st.composite
def runs(draw: st.DrawFn, length: float) -> tuple[float, float | None]:
    """Start and stop along a length; right through as often as not."""
    start = draw(st.one_of(st.just(0.0), lengths(length * 0.1, length * 0.3)))
    stop = draw(st.one_of(st.none(), lengths(length * 0.5, length * 0.9)))
    return start, stop


@st.composite
def rebates(draw: st.DrawFn, size: Vector) -> Rebate:
    surface, edge = draw(st.sampled_from(CORNERS))
    width, depth = (draw(lengths(0.5, 0.4 * size[each.axis])) for each in (edge, surface))
    run = size[3 - surface.axis - edge.axis]
    return Rebate(surface, edge, width, depth, *draw(runs(run)))


@st.composite
def grooves(draw: st.DrawFn, size: Vector) -> Groove:
    surface = draw(st.sampled_from(FACES + EDGES))
    across = size[3 - surface.axis]
    width = draw(lengths(1.0, 0.3 * across))
    position = draw(lengths(0.0, across - width))
    depth = draw(lengths(0.5, 0.4 * size[surface.axis]))
    return Groove(surface, position, width, depth, *draw(runs(size[0])))


@st.composite
def housings(draw: st.DrawFn, size: Vector) -> Housing:
    width = draw(lengths(1.0, 0.3 * size[0]))
    position = draw(lengths(0.0, size[0] - width))
    depth = draw(lengths(0.5, 0.4 * size[2]))
    surface = draw(st.sampled_from(FACES))
    return Housing(surface, position, width, depth, *draw(runs(size[1])))


@st.composite
def notches(draw: st.DrawFn, size: Vector) -> Notch:
    length, width = (draw(lengths(1.0, 0.3 * size[axis])) for axis in (0, 1))
    return Notch(
        draw(lengths(0.0, size[0] - length)), draw(lengths(0.0, size[1] - width)), length, width
    )


@st.composite
def mitres(draw: st.DrawFn, size: Vector) -> Mitre:
    long = draw(st.sampled_from(FACES + EDGES))
    steepest = math.degrees(math.atan(0.45 * size[0] / size[long.axis]))
    angle = draw(st.integers(6, math.floor(min(75.0, steepest) * 2))) / 2
    return Mitre(draw(st.sampled_from(ENDS)), angle, long)


@st.composite
def easings(draw: st.DrawFn, size: Vector) -> Easing:
    surface, edge = draw(st.sampled_from(CORNERS))
    radius = draw(lengths(0.5, min(12.0, 0.4 * size[surface.axis], 0.4 * size[edge.axis])))
    run = size[3 - surface.axis - edge.axis]
    return Easing(surface, edge, radius, *draw(runs(run)))


@st.composite
def holes(draw: st.DrawFn, size: Vector) -> Hole:
    surface = draw(st.sampled_from(list(Surface)))
    across = [size[axis] for axis in range(3) if axis != surface.axis]
    diameter = draw(lengths(2.0, min(35.0, 0.4 * min(across))))
    first, second = (draw(lengths(diameter / 2 + 1, each - diameter / 2 - 1)) for each in across)
    through = size[surface.axis]
    depth = draw(st.one_of(st.none(), lengths(1.0, 0.9 * through)))
    return Hole(surface, (first, second), diameter, depth)


@st.composite
def bevels(draw: st.DrawFn, size: Vector) -> Bevel:
    """Across an arris or a corner, or over a whole end, edge or face."""
    surface, edge = draw(st.sampled_from(CORNERS))
    across = {each: size[each.axis] for each in (surface, edge)}
    width, depth = draw(lengths(0.5, 0.3 * across[edge])), draw(lengths(0.5, 0.3 * across[surface]))
    whole = draw(st.sampled_from([None, None, "width", "depth"]))
    if whole == "width":
        width = draw(lengths(1.2 * across[edge], 3 * across[edge]))
    elif whole == "depth":
        depth = draw(lengths(1.2 * across[surface], 3 * across[surface]))
    return Bevel(surface, edge, width, depth)


@st.composite
def mortises(draw: st.DrawFn, size: Vector) -> Mortise:
    surface = draw(st.sampled_from(list(Surface)))
    across = [size[axis] for axis in range(3) if axis != surface.axis]
    first, second = (draw(lengths(1.0, 0.3 * each)) for each in across)
    # Round ends stay off the edges: a round that touches one leaves wood without thickness.
    x, y = (
        draw(lengths(1.0, each - extent - 1.0))
        for each, extent in zip(across, (first, second), strict=True)
    )
    depth = draw(lengths(1.0, 0.9 * size[surface.axis]))
    return Mortise(surface, (x, y), (first, second), depth, draw(st.booleans()))


@st.composite
def pocket_holes(draw: st.DrawFn, size: Vector) -> PocketHole:
    surface = draw(st.sampled_from(FACES))
    end = draw(st.sampled_from(ENDS + EDGES))
    diameter = draw(lengths(4.0, 9.5))
    along = size[3 - surface.axis - end.axis]
    return PocketHole(
        surface,
        end,
        draw(lengths(diameter / 2 + 1, along - diameter / 2 - 1)),
        draw(lengths(0.4 * size[2], 0.6 * size[2])),
        draw(lengths(6.0, 20.0)),
        diameter,
        draw(lengths(2.0, 0.5 * diameter)),
        draw(st.sampled_from([15.0, 20.0, 30.0])),
    )


@st.composite
def finger_pulls(draw: st.DrawFn, size: Vector) -> FingerPull:
    """Open to its edge or off it; a round that touches the edge leaves wood without thickness."""
    surface, edge = draw(st.sampled_from(FACES)), draw(st.sampled_from(ENDS + EDGES))
    run = size[3 - surface.axis - edge.axis]
    radius = draw(lengths(2.0, min(9.0, 0.09 * run)))
    depth = draw(lengths(1.0, min(0.9 * radius, 0.45 * size[2])))
    position = draw(lengths(0.0, 0.4 * size[edge.axis]))
    pull = FingerPull(surface, edge, position, radius, depth, *draw(runs(run)))
    assume(abs(pull.reach - position) > 0.5)
    return pull


WORKINGS: dict[type[Working], Callable[[Vector], st.SearchStrategy[Working]]] = {
    Rebate: rebates,
    Groove: grooves,
    Housing: housings,
    Notch: notches,
    Hole: holes,
    Mortise: mortises,
    PocketHole: pocket_holes,
    FingerPull: finger_pulls,
    Mitre: mitres,
    Bevel: bevels,
    Easing: easings,
}
"""Random ones of every kind, in a blank of a size."""


@st.composite
def shapes(draw: st.DrawFn, most: int = 4) -> ShapeKey:
    """A blank with random workings inside it, crossing as they may."""
    size = draw(sizes())
    working: st.SearchStrategy[Working] = st.one_of(*(kind(size) for kind in WORKINGS.values()))
    workings = tuple(draw(st.lists(working, max_size=most)))
    assume(not _hangs_by_a_line(size, workings))
    return size, workings


def _hangs_by_a_line(size: Vector, workings: tuple[Working, ...]) -> bool:
    """Whether box workings meet corner to corner, so that wood touches wood along a line only.

    Such a piece has no closed surface: four faces would share one edge.
    """
    boxes = [each.bounds(size) for each in workings if isinstance(each, Channel | Notch | Mortise)]
    edges = [
        np.unique([0.0, size[i], *(place for box in boxes for place in (box.low[i], box.high[i]))])
        for i in range(3)
    ]
    wood = np.ones([len(each) - 1 for each in edges], dtype=bool)
    for box in boxes:
        cells = (
            slice(np.searchsorted(edges[i], box.low[i]), np.searchsorted(edges[i], box.high[i]))
            for i in range(3)
        )
        wood[tuple(cells)] = False
    for axis in range(3):
        layers = np.moveaxis(wood, axis, 0)
        low, high = layers[:, :-1, :-1], layers[:, 1:, 1:]
        left, right = layers[:, :-1, 1:], layers[:, 1:, :-1]
        if np.any((low & high & ~left & ~right) | (left & right & ~low & ~high)):
            return True
    return False


@st.composite
def placements(draw: st.DrawFn) -> Placement:
    """Any place and any turn, by a random unit quaternion."""
    part = st.floats(-1, 1)
    w, x, y, z = draw(st.tuples(part, part, part, part).filter(lambda q: math.hypot(*q) > 0.1))
    norm = math.hypot(w, x, y, z)
    w, x, y, z = w / norm, x / norm, y / norm, z / norm
    origin = draw(st.tuples(*[lengths(-3000, 3000)] * 3))
    return Placement(
        origin,
        (1 - 2 * (y * y + z * z), 2 * (x * y + z * w), 2 * (x * z - y * w)),
        (2 * (x * y - z * w), 1 - 2 * (x * x + z * z), 2 * (y * z + x * w)),
    )
