"""What a unit puts on its feet, its legs, its plinth and the floor.

Millimetres, newtons; loads told in kg.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import ceil, floor, inf

from rodwright.amounts import WEIGHTS, format_weight
from rodwright.geometry.spacing import spread
from rodwright.mass import unit_weight
from rodwright.strength.carriers import Ground
from rodwright.strength.paths import GRAVITY, Force, Paths, paths
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.trade.feet import FOOT, FOOT_INSET
from rodwright.trade.floors import AISLE, HOUSE_FLOOR_POINT, HOUSE_FLOORS
from rodwright.trade.sizes import trade_sizes
from rodwright.trade.sources import Source
from rodwright.unit import CASE, PANELS, Role, Unit
from rodwright.unit.facts import STANDS, plinth_boards

STATICS = Source("statics: each load by the rule of the lever to the nearest that carry it")
ON_FLOOR = "load on the floor under and before it"
ON_FOOT = "load on the most laden foot"
ON_LEG = "load on the most laden leg"
ON_PLINTH = "load along its plinth"
_ENGINEER = "whether the floor carries it is for a structural engineer to say; follow local codes"


def ground(unit: Unit) -> Iterator[Result]:
    """What comes to feet, legs, plinth and floor; nothing of a unit that hangs or has no carcass.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    if unit.hung or not any(part.role in PANELS for part in unit.parts):
        return
    down = paths(unit)
    yield from _on_base(unit, down)
    yield _on_floor(unit, down)


def shared(forces: Sequence[Force], xs: Sequence[float], ys: Sequence[float]) -> list[list[float]]:
    """What each of the points of a grid (``xs`` by ``ys``, two of each at least) carries of forces,
    N: by the rule of the lever from left to right, and from front to back."""
    carried = [[0.0] * len(ys) for _ in xs]
    for force in forces:
        for i, across in _levers(xs, force.at[0]):
            for j, back in _levers(ys, force.at[1]):
                carried[i][j] += force.force * across * back
    return carried


def _levers(places: Sequence[float], at: float) -> tuple[tuple[int, float], tuple[int, float]]:
    i = next((i for i, (_, high) in enumerate(pairwise(places)) if at <= high), len(places) - 2)
    share = (at - places[i]) / (places[i + 1] - places[i])
    return (i, 1 - share), (i + 1, share)


def _on_base(unit: Unit, down: Paths) -> Iterator[Result]:
    forces = [force for _, force in down.onto(Ground.BASE)]
    boxes = [part.bounds() for part in unit.parts if part.role in CASE]
    if not forces or not boxes:
        return
    left, right = min(box.low[0] for box in boxes), max(box.high[0] for box in boxes)
    rear = max(box.high[1] for box in boxes)
    feet = sum(fixing.count for fixing in unit.fixings if fixing.name == FOOT)
    posts = [
        part.bounds()
        for part in unit.parts
        if part.role is Role.LEG and part.bounds().low[2] < STANDS
    ]
    if feet >= 4:
        xs = spread(left, right, FOOT_INSET, feet // 2)
        yield _on_each(ON_FOOT, "feet", forces, xs, (FOOT_INSET, rear - FOOT_INSET))
    elif posts:
        xs = _apart(box.centre[0] for box in posts)
        ys = _apart(box.centre[1] for box in posts)
        if len(xs) > 1 and len(ys) > 1:
            yield _on_each(ON_LEG, "legs", forces, xs, ys)
    elif plinth_boards(unit):
        yield _on_plinth(unit, forces)


def _apart(places: Iterator[float]) -> tuple[float, ...]:
    """Places in their order, those that are one told once."""
    found: list[float] = []
    for place in sorted(places):
        if not found or place - found[-1] > 1.0:
            found.append(place)
    return tuple(found)


def _on_each(
    what: str, called: str, forces: Sequence[Force], xs: Sequence[float], ys: Sequence[float]
) -> Result:
    carried = shared(forces, xs, ys)
    most = max(each for column in carried for each in column) / GRAVITY
    return Result(
        Group.WHOLE,
        called,
        (),
        what,
        most,
        None,
        "kg",
        "rule of the lever",
        STATICS,
        (
            Input("n", f"{called} in all", len(xs) * len(ys), ""),
            Input("W", "all that comes down on them", sum(f.force for f in forces), "N"),
        ),
        notes=("take ones whose maker gives as much",),
    )


def _on_plinth(unit: Unit, forces: Sequence[Force]) -> Result:
    boards = plinth_boards(unit)
    length = sum(max(part.bounds().size[:2]) for part in boards) / 1000
    weight = sum(force.force for force in forces) / GRAVITY
    return Result(
        Group.WHOLE,
        "plinth",
        tuple(part.ref for part in boards),
        ON_PLINTH,
        weight / length,
        None,
        "kg/m",
        "W/L",
        STATICS,
        (
            Input("W", "all that comes down on it", weight, "kg"),
            Input("L", "all its boards together", length, "m"),
        ),
        notes=("as if every board of it took its share",),
    )


def _on_floor(unit: Unit, down: Paths) -> Result:
    boxes = [part.bounds() for part in unit.parts if part.role in PANELS]
    width = max(box.high[0] for box in boxes) - min(box.low[0] for box in boxes)
    depth = max(box.high[1] for box in boxes) - min(box.low[1] for box in boxes)
    area = width * (depth + AISLE.value) / 1e6
    weight = down.total / GRAVITY
    heavy = weight > HOUSE_FLOOR_POINT.value
    design = HOUSE_FLOORS[unit.display_unit]
    limit = design.value if heavy else inf

    def said(kg: float) -> str:
        return format_weight(kg, unit.display_unit, 0)

    return Result(
        Group.WHOLE,
        "floor",
        (),
        ON_FLOOR,
        weight / area,
        design.value if heavy else None,
        "kg/m2",
        "W/(B (D + A))",
        STATICS,
        (
            Input("W", "unit and all that is in it", weight, "kg"),
            Input("B", "its width", width, "mm"),
            Input("D", "its depth", depth, "mm"),
            Input(
                "A", "aisle before it, where nothing else stands", AISLE.value, "mm", AISLE.source
            ),
        ),
        limit_source=design.source if heavy else None,
        notes=(
            "floors of houses are designed for that all over, and often carry more along a wall",
            f"in all it is {said(weight)}; up to {said(HOUSE_FLOOR_POINT.value)} stand on one "
            f"spot ({HOUSE_FLOOR_POINT.source})",
            _ENGINEER,
        ),
        remedies=tuple(_eased(unit, weight, width, depth)) if weight / area > limit else (),
    )


def _eased(unit: Unit, weight: float, width: float, depth: float) -> Iterator[Remedy]:
    """Less in it, in whole kg or lb, and more of the floor left free before it; kg/m2."""
    limit, measure = HOUSE_FLOORS[unit.display_unit].value, WEIGHTS[unit.display_unit]
    area, own = width * (depth + AISLE.value) / 1e6, unit_weight(unit)
    most = floor((limit * area - own) / measure.one + 1e-9) * measure.one
    if most > 0:
        told = f"no more than {measure.said(most, 0)} in it"
        yield Remedy(told, (own + most) / area, holds=True)
    sizes = trade_sizes(unit.display_unit)
    step = 100 * sizes.step
    free = ceil((weight / limit * 1e6 / width - depth) / step) * step
    told = f"nothing else on the {sizes.say(free)} of floor before it"
    yield Remedy(told, weight / (width * (depth + free)) * 1e6, holds=True)
