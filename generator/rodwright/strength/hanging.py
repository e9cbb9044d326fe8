"""What a unit that hangs on the wall asks of its fixings, its back and the wall.

Millimetres, newtons.  Its weight and all that is in it turn it about the lower edge that bears on
the wall: the top fixings are drawn by T = W e / h; they carry half of W downwards, those at the
lower edge the other half.
"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.geometry import TOUCH
from rodwright.strength.back_ties import ties
from rodwright.strength.hanging_fixings import (
    STATICS,
    Hung,
    given,
    in_masonry,
    in_plasterboard,
    in_studs,
    on_wall,
)
from rodwright.strength.hanging_remedies import (
    lighter,
    stiffer_rail,
    thicker_back,
    wider_heads,
)
from rodwright.strength.paths import GRAVITY, paths
from rodwright.strength.results import Group, Input, Result
from rodwright.trade.creep import Duration
from rodwright.trade.design_strength import design_strength
from rodwright.trade.mechanics import mechanics_of
from rodwright.trade.sources import Source
from rodwright.trade.wall_fixings import (
    BELOW_TOP,
    CABINET_TEST,
    HEAD,
    LEAST_BACK,
    LEAST_FIXINGS,
    PULL_THROUGH,
    SCREW,
    TALL,
    TALL_CABINET_TEST,
    WALL_SAFETY,
)
from rodwright.unit import Part, Role, Unit

PULL = "pull on its top fixings"
CARRIES = "weight with all that is in it, against what wall cabinets are tried with"
BACK_BENDS = "bending stress in the back round its fixings"
PULLED_THROUGH = "pull on each head through the back"
HOLDS = "thickness of the back that it hangs by"
RAIL_BENDS = "bending stress in a rail that it could hang by"
RAIL = (100.0, 22.0, "pine")
"""Height, thickness and wood of that rail, which lies between the sides under the top, mm."""


def hanging(unit: Unit) -> Iterator[Result]:
    """Results for a unit that hangs on the wall; none of one that stands.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    if not unit.hung:
        return
    hung = measured(unit)
    yield _pull(hung)
    yield _tested(unit, hung)
    wall = unit.loading.wall
    fixed = [in_masonry(hung)] if wall in {None, "masonry"} else []
    fixed += [in_studs(carrying_back(unit), hung)] if wall in {None, "studs"} else []
    yield from fixed
    if wall == "plasterboard":
        yield in_plasterboard(carrying_back(unit), hung)
    back = carrying_back(unit)
    if back is None or back.blank.thickness < LEAST_BACK - TOUCH:
        yield _held_by(back)
        yield rail(unit, hung)
    else:
        count = min((each.figure or 0.0 for each in fixed), default=float(LEAST_FIXINGS))
        yield _bends(back, hung, count)
        yield _through(back, hung, count)
        yield from ties(unit, back, hung.pull, hung.weight)


def measured(unit: Unit) -> Hung:
    """How a unit hangs."""
    down = paths(unit)
    boxes = [part.bounds() for part in unit.parts if part.role in (Role.SIDE, Role.BACK)] or [
        part.bounds() for part in unit.parts
    ]
    wall = max(box.high[1] for box in boxes)
    low, high = min(box.low[2] for box in boxes), max(box.high[2] for box in boxes)
    width = max(box.high[0] for box in boxes) - min(box.low[0] for box in boxes)
    moment = sum(force.force * (wall - force.at[1]) for _, _, force in down.given)
    return Hung(down.total, moment / down.total, high - BELOW_TOP - low, width, unit.display_unit)


def carrying_back(unit: Unit) -> Part | None:
    """The thickest back, that it hangs by."""
    backs = [part for part in unit.parts if part.role is Role.BACK]
    return max(backs, key=lambda part: part.blank.thickness, default=None)


def _pull(hung: Hung) -> Result:
    return on_wall(PULL, hung.pull, None, "N", "T = W e/h", given(hung))


def _tested(unit: Unit, hung: Hung) -> Result:
    test = TALL_CABINET_TEST if unit.size[1] > TALL else CABINET_TEST
    heavy = hung.kilograms > test.value
    return on_wall(
        CARRIES,
        hung.weight / GRAVITY,
        test.value,
        "kg",
        "W",
        given(hung)[:1],
        limit_source=test.source,
        notes=("a test of new cabinets, not a load for years",),
        remedies=tuple(lighter(unit, hung, test.value)) if heavy else (),
    )


def _held_by(back: Part | None) -> Result:
    """A back too thin to hang a unit by, or none (0): it falls, whatever the wall holds."""
    return Result(
        Group.HANGING,
        "back",
        (back.ref,) if back is not None else (),
        HOLDS,
        back.blank.thickness if back is not None else 0.0,
        LEAST_BACK,
        "mm",
        "t",
        Source("a back is screwed through to the wall: common practice, no source"),
        at_least=True,
        limit_source=Source("the thinnest back that holds: common practice, no source"),
    )


def _bends(back: Part, hung: Hung, count: float) -> Result:
    mechanics = back.blank.stock.mechanics
    stress = 3 * hung.pull / count / back.blank.thickness**2
    limit = design_strength(mechanics, "bending", Duration.LONG) if mechanics else None
    return Result(
        Group.HANGING,
        "back",
        (back.ref,),
        BACK_BENDS,
        stress,
        limit.value if limit else None,
        "N/mm2",
        "s = 3 T/(n t^2)",
        Source("stated estimate: a strip twice as wide as the fixing is below the top bends"),
        (
            Input("T", "pull", hung.pull, "N"),
            Input("n", "fixings", count, ""),
            Input("t", "thickness of the back", back.blank.thickness, "mm"),
        ),
        limit_source=limit.source if limit else None,
        remedies=tuple(thicker_back(hung, stress, limit.value, back.blank.thickness))
        if limit and stress > limit.value
        else (),
    )


def _through(back: Part, hung: Hung, count: float) -> Result:
    head = HEAD * SCREW[0]
    limit = PULL_THROUGH.value * head**2 / WALL_SAFETY.value / WALL_SAFETY.value
    return Result(
        Group.HANGING,
        "back",
        (back.ref,),
        PULLED_THROUGH,
        hung.pull / count,
        limit,
        "N",
        "T/n <= f dh^2/4",
        PULL_THROUGH.source,
        (
            Input("T", "pull", hung.pull, "N"),
            Input("n", "fixings", count, ""),
            Input("dh", "diameter of the head", head, "mm"),
            Input("f", "pull-through", PULL_THROUGH.value, "N/mm2", PULL_THROUGH.source),
        ),
        limit_source=WALL_SAFETY.source,
        notes=("a quarter of what pulls a head through, for years; washers spread it",),
        remedies=tuple(wider_heads(hung, hung.pull / count, limit, head))
        if hung.pull / count > limit
        else (),
    )


def rail(unit: Unit, hung: Hung) -> Result:
    """A rail that would carry a unit without a back to hang by: bent from end to end by the pull,
    as if that were spread over it."""
    high, thick, wood = RAIL
    mechanics = mechanics_of(wood, thick)
    sides = [part.bounds() for part in unit.parts if part.role is Role.SIDE]
    length = max(box.low[0] for box in sides) - min(box.high[0] for box in sides)
    stress = hung.pull * length / 8 / (high * thick**2 / 6)
    limit = design_strength(mechanics, "bending", Duration.LONG) if mechanics else None
    return Result(
        Group.HANGING,
        "rail",
        (),
        RAIL_BENDS,
        stress,
        limit.value if limit else None,
        "N/mm2",
        "s = T L/8/(b t^2/6)",
        STATICS,
        (
            Input("T", "pull", hung.pull, "N"),
            Input("L", "between the sides", length, "mm"),
            Input("b", "its height", high, "mm"),
            Input("t", "its thickness", thick, "mm"),
        ),
        limit_source=limit.source if limit else None,
        notes=(
            f"of {wood}, {hung.long(high, thick)}, between the sides under the top; at each end "
            f"its joint carries {hung.kg(hung.pull / 2)} out from the wall and "
            f"{hung.kg(hung.weight / 2)} downwards",
        ),
        remedies=tuple(stiffer_rail(hung, stress, limit.value, RAIL))
        if limit and stress > limit.value
        else (),
    )
