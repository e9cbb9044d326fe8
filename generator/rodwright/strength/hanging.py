"""What a unit that hangs on the wall asks of its fixings, its back and the wall.

Millimetres, newtons.  Its weight and all that is in it turn it about the lower edge that bears on
the wall: the top fixings are drawn by T = W e / h; they carry half of W downwards, those at the
lower edge the other half.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil

from rodwright.geometry import TOUCH
from rodwright.strength.back_ties import ties
from rodwright.strength.paths import GRAVITY, paths
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.trade.creep import Duration
from rodwright.trade.design_strength import design_strength
from rodwright.trade.fastenings import Into, screw_aside, screw_drawn
from rodwright.trade.mechanics import Family, mechanics_of
from rodwright.trade.sources import Source
from rodwright.trade.wall_fixings import (
    BELOW_TOP,
    BOARD_FAILS,
    CABINET_TEST,
    FROM_END,
    HEAD,
    LEAST_BACK,
    LEAST_FIXINGS,
    PLASTERBOARD,
    PLUG,
    PLUG_SPACING,
    PULL_THROUGH,
    SCREW,
    SCREWS_A_STUD,
    STUD_CENTRES,
    STUD_GRAVITY,
    STUD_WIDTH,
    TALL,
    TALL_CABINET_TEST,
    WALL_SAFETY,
)
from rodwright.unit import Part, Role, Unit

STATICS = Source("statics: moments about the lower edge that bears on the wall")
PULL = "pull on its top fixings"
CARRIES = "weight with all that is in it, against what wall cabinets are tried with"
IN_MASONRY = "fixings at its top in masonry, needed"
IN_STUDS = "screws at its top in studs, needed"
IN_PLASTERBOARD = "pull on each of its top fixings in plasterboard alone"
BACK_BENDS = "bending stress in the back round its fixings"
PULLED_THROUGH = "pull on each head through the back"
RAIL_BENDS = "bending stress in a rail that it could hang by"
RAIL = (100.0, 22.0, "pine")
"""Height, thickness and wood of that rail, which lies between the sides under the top, mm."""


@dataclass(frozen=True, slots=True)
class Hung:
    """A unit on the wall: ``weight`` (N) with all that is in it, ``out`` how far its centre stands
    from the wall, ``height`` of its upper fixings over the edge that bears (mm)."""

    weight: float
    out: float
    height: float
    width: float

    @property
    def pull(self) -> float:
        """What its top fixings are drawn by, N: T = W e / h."""
        return self.weight * self.out / self.height


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
    fixed += [in_studs(unit, hung)] if wall in {None, "studs"} else []
    yield from fixed
    if wall == "plasterboard":
        yield _in_plasterboard(hung)
    back = carrying_back(unit)
    if back is None or back.blank.thickness < LEAST_BACK - TOUCH:
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
    return Hung(down.total, moment / down.total, high - BELOW_TOP - low, width)


def carrying_back(unit: Unit) -> Part | None:
    """The thickest back, that it hangs by."""
    backs = [part for part in unit.parts if part.role is Role.BACK]
    return max(backs, key=lambda part: part.blank.thickness, default=None)


def _given(hung: Hung) -> tuple[Input, ...]:
    return (
        Input("W", "its weight and all that is in it", hung.weight, "N"),
        Input("e", "its centre from the wall", hung.out, "mm"),
        Input("h", "its upper fixings over its lower edge", hung.height, "mm"),
    )


def _result(
    what: str, figure: float, limit: float | None, measure: str, formula: str, source: Source,
    inputs: tuple[Input, ...], **more: object,
) -> Result:  # fmt: skip
    return Result(
        Group.HANGING,
        "the unit",
        (),
        what,
        figure,
        limit,
        measure,
        formula,
        source,
        inputs,
        **more,  # type: ignore[arg-type]
    )


def _pull(hung: Hung) -> Result:
    return _result(PULL, hung.pull, None, "N", "T = W e/h", STATICS, _given(hung))


def _tested(unit: Unit, hung: Hung) -> Result:
    test = TALL_CABINET_TEST if unit.size[1] > TALL else CABINET_TEST
    return _result(
        CARRIES, hung.weight / GRAVITY, test.value, "kg", "W", STATICS, _given(hung)[:1],
        limit_source=test.source, notes=("a test of new cabinets, not a load for years",),
    )  # fmt: skip


def in_masonry(hung: Hung) -> Result:
    """How many plugs its top takes: each for its share of pull and weight."""
    both = hung.pull + hung.weight / 2
    needed = max(LEAST_FIXINGS, ceil(both / PLUG.value - 1e-9))
    fit = int((hung.width - 2 * FROM_END) // PLUG_SPACING) + 1
    share = both / needed
    return _result(
        IN_MASONRY, needed, max(fit, 0), "", "n = (T + W/2)/R", STATICS,
        (*_given(hung), Input("T", "pull", hung.pull, "N"),
         Input("R", "what one plug may carry", PLUG.value, "N", PLUG.source)),
        limit_source=Source(f"room for them {PLUG_SPACING:g} mm apart: common practice, no source"),
        notes=(
            f"each is drawn by {hung.pull / needed / GRAVITY:.0f} kg and carries "
            f"{hung.weight / 2 / needed / GRAVITY:.0f} kg downwards; pull and weight are added",
            f"take plugs whose maker gives {share / GRAVITY:.0f} kg to work with, half at most of "
            f"what breaks them ({WALL_SAFETY.source})",
            "as many more at its lower edge carry the other half of the weight",
        ),
        remedies=_rows(needed, fit) if needed > fit else (),
    )  # fmt: skip


def _rows(needed: int, fit: int) -> tuple[Remedy, ...]:
    """Plugs in two or three rows, and how many are then in each."""
    return tuple(
        Remedy(f"{rows} rows one under the other, so many plugs in each", ceil(needed / rows),
               ceil(needed / rows) <= fit)
        for rows in (2, 3)
    )  # fmt: skip


def screw_in_stud(unit: Unit) -> tuple[float, float, tuple[Input, ...]]:
    """What one screw through the back into a stud may be drawn by and may carry downwards, N."""
    diameter, length = SCREW
    back = carrying_back(unit)
    thick = back.blank.thickness if back is not None else 0.0
    deep = length - thick - PLASTERBOARD
    stud = Into(Family.SOLID_WOOD, STUD_GRAVITY.value, 2 * STUD_WIDTH, "face")
    drawn = screw_drawn(stud, diameter, deep)
    mechanics = back.blank.stock.mechanics if back is not None else None
    gravity = mechanics.gravity.value if mechanics and mechanics.gravity else STUD_GRAVITY.value
    family = mechanics.family if mechanics else Family.SOLID_WOOD
    panel = Into(family, gravity, thick or 18.0, "face")
    aside = screw_aside(diameter, (stud, deep), (panel, thick or 18.0))
    inputs = (
        Input("R", f"a {diameter:g} mm screw {deep:.0f} mm in a stud, drawn", drawn.allowed, "N",
              drawn.source),
        Input("Q", "the same, pressed down", aside.allowed, "N", aside.source),
        Input("G", "specific gravity of the stud", STUD_GRAVITY.value, "", STUD_GRAVITY.source),
    )  # fmt: skip
    return drawn.allowed, aside.allowed, inputs


def in_studs(unit: Unit, hung: Hung) -> Result:
    """How many screws its top takes in studs, and how many studs are surely behind it."""
    drawn, aside, inputs = screw_in_stud(unit)
    needed = max(LEAST_FIXINGS, ceil(hung.pull / drawn + hung.weight / 2 / aside - 1e-9))
    studs = int((hung.width - STUD_WIDTH) // STUD_CENTRES.value)
    fit = SCREWS_A_STUD * studs
    diameter, length = SCREW
    return _result(
        IN_STUDS, needed, fit, "", "n = T/R + W/(2 Q)", STATICS,
        (*_given(hung), Input("T", "pull", hung.pull, "N"), *inputs,
         Input("c", "studs apart at most", STUD_CENTRES.value, "mm", STUD_CENTRES.source)),
        limit_source=Source(
            f"{studs} studs surely behind it, {SCREWS_A_STUD} screws in each: common practice, "
            "no source"),
        notes=(
            f"{diameter:g} x {length:g} mm screws; each is drawn by "
            f"{hung.pull / needed / GRAVITY:.0f} kg and carries "
            f"{hung.weight / 2 / needed / GRAVITY:.0f} kg downwards; as many more at its lower "
            "edge carry the other half of the weight",
            "plasterboard between back and stud isn't counted on; the stud and what it is fixed "
            "to are the builder's to judge",
        ),
        remedies=_on_batten(needed, hung) if needed > fit else (),
    )  # fmt: skip


def _on_batten(needed: int, hung: Hung) -> tuple[Remedy, ...]:
    """A batten across as many studs as it takes, with the unit hung on that."""
    studs = ceil(needed / SCREWS_A_STUD)
    length = studs * STUD_CENTRES.value + STUD_WIDTH
    per_stud = SCREWS_A_STUD * studs
    centres = (hung.width - STUD_WIDTH) / studs
    across = "1 stud" if studs == 1 else f"{studs} studs"
    holds = needed <= per_stud
    return (
        Remedy(f"a batten {length:.0f} mm long across {across}, the unit screwed to that", needed,
               holds),
        Remedy(f"studs or noggings put in {centres:.0f} mm apart at most behind it", needed, holds),
    )  # fmt: skip


def _in_plasterboard(hung: Hung) -> Result:
    """What each of so many fixings as have room would draw; refused whatever it is."""
    count = max(LEAST_FIXINGS, int((hung.width - 2 * FROM_END) // 300.0) + 1)
    return _result(
        IN_PLASTERBOARD, hung.pull / count, 0.0, "N", "T1 = T/n", STATICS,
        (*_given(hung), Input("n", "fixings 300 mm apart", count, ""),
         Input("R", "what breaks the board", BOARD_FAILS.value, "N", BOARD_FAILS.source)),
        limit_source=Source("plasterboard alone carries no cabinet: common practice, no source"),
    )  # fmt: skip


def _bends(back: Part, hung: Hung, count: float) -> Result:
    mechanics = back.blank.stock.mechanics
    stress = 3 * hung.pull / count / back.blank.thickness**2
    limit = design_strength(mechanics, "bending", Duration.LONG) if mechanics else None
    return Result(
        Group.HANGING, "back", (back.ref,), BACK_BENDS, stress, limit.value if limit else None,
        "N/mm2", "s = 3 T/(n t^2)",
        Source("stated estimate: a strip twice as wide as the fixing is below the top bends"),
        (Input("T", "pull", hung.pull, "N"), Input("n", "fixings", count, ""),
         Input("t", "thickness of the back", back.blank.thickness, "mm")),
        limit_source=limit.source if limit else None,
    )  # fmt: skip


def _through(back: Part, hung: Hung, count: float) -> Result:
    head = HEAD * SCREW[0]
    limit = PULL_THROUGH.value * head**2 / WALL_SAFETY.value / WALL_SAFETY.value
    return Result(
        Group.HANGING, "back", (back.ref,), PULLED_THROUGH, hung.pull / count, limit, "N",
        "T/n <= f dh^2/4", PULL_THROUGH.source,
        (Input("T", "pull", hung.pull, "N"), Input("n", "fixings", count, ""),
         Input("dh", "diameter of the head", head, "mm"),
         Input("f", "pull-through", PULL_THROUGH.value, "N/mm2", PULL_THROUGH.source)),
        limit_source=WALL_SAFETY.source,
        notes=("a quarter of what pulls a head through, for years; washers spread it",),
    )  # fmt: skip


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
        Group.HANGING, "rail", (), RAIL_BENDS, stress, limit.value if limit else None, "N/mm2",
        "s = T L/8/(b t^2/6)", STATICS,
        (Input("T", "pull", hung.pull, "N"), Input("L", "between the sides", length, "mm"),
         Input("b", "its height", high, "mm"), Input("t", "its thickness", thick, "mm")),
        limit_source=limit.source if limit else None,
        notes=(
            f"of {wood}, {high:g} x {thick:g} mm, between the sides under the top; at each end its "
            f"joint carries {hung.pull / 2 / GRAVITY:.0f} kg out from the wall and "
            f"{hung.weight / 2 / GRAVITY:.0f} kg downwards",
        ),
    )  # fmt: skip
