"""What fixings in masonry, studs or plasterboard have to hold of a unit that hangs.

Millimetres, newtons.  The top fixings are drawn by T = W e / h; they carry half of W downwards,
those at the lower edge the other half.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from rodwright.amounts import format_weight
from rodwright.lengths import LengthUnit
from rodwright.strength.paths import GRAVITY
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.trade.fastenings import Into, screw_aside, screw_drawn
from rodwright.trade.mechanics import Family
from rodwright.trade.sizes import trade_sizes
from rodwright.trade.sources import Source
from rodwright.trade.wall_fixings import (
    BOARD_FAILS,
    FROM_END,
    LEAST_FIXINGS,
    PLASTERBOARD,
    PLUG,
    PLUG_SPACING,
    SCREW,
    SCREWS_A_STUD,
    STUD_CENTRES,
    STUD_GRAVITY,
    STUD_WIDTH,
    WALL_SAFETY,
)
from rodwright.unit import Part

STATICS = Source("statics: moments about the lower edge that bears on the wall")
IN_MASONRY = "fixings at its top in masonry, needed"
IN_STUDS = "screws at its top in studs, needed"
IN_PLASTERBOARD = "pull on each of its top fixings in plasterboard alone"


@dataclass(frozen=True, slots=True)
class Hung:
    """A unit on the wall: ``weight`` (N) with all that is in it, ``out`` how far its centre stands
    from the wall, ``height`` of its upper fixings over the edge that bears (mm); ``measures`` are
    those of its maker."""

    weight: float
    out: float
    height: float
    width: float
    measures: LengthUnit = "mm"

    @property
    def kilograms(self) -> float:
        """Its weight and all that is in it, kg."""
        return self.weight / GRAVITY

    def kg(self, newtons: float) -> str:
        """A force as the weight that exerts it, in the maker's measure."""
        return format_weight(newtons / GRAVITY, self.measures, 0)

    def long(self, *lengths: float) -> str:
        """Lengths in the maker's measure."""
        return trade_sizes(self.measures).by(*lengths)

    @property
    def screw(self) -> str:
        """The screws in studs, as they are bought."""
        return trade_sizes(self.measures).screw_size(*SCREW)

    @property
    def pull(self) -> float:
        """What its top fixings are drawn by, N: T = W e / h."""
        return self.weight * self.out / self.height


def given(hung: Hung) -> tuple[Input, ...]:
    """What its pull is worked out from."""
    return (
        Input("W", "its weight and all that is in it", hung.weight, "N"),
        Input("e", "its centre from the wall", hung.out, "mm"),
        Input("h", "its upper fixings over its lower edge", hung.height, "mm"),
    )


def on_wall(
    what: str,
    figure: float,
    limit: float | None,
    measure: str,
    formula: str,
    inputs: tuple[Input, ...],
    limit_source: Source | None = None,
    notes: tuple[str, ...] = (),
    remedies: tuple[Remedy, ...] = (),
) -> Result:
    """A result of the unit as it hangs, by statics."""
    return Result(
        Group.HANGING,
        "the unit",
        (),
        what,
        figure,
        limit,
        measure,
        formula,
        STATICS,
        inputs,
        limit_source=limit_source,
        notes=notes,
        remedies=remedies,
    )


def in_masonry(hung: Hung) -> Result:
    """How many plugs its top takes: each for its share of pull and weight."""
    both = hung.pull + hung.weight / 2
    needed = max(LEAST_FIXINGS, ceil(both / PLUG.value - 1e-9))
    fit = int((hung.width - 2 * FROM_END) // PLUG_SPACING) + 1
    share = both / needed
    return on_wall(
        IN_MASONRY,
        needed,
        max(fit, 0),
        "",
        "n = (T + W/2)/R",
        (
            *given(hung),
            Input("T", "pull", hung.pull, "N"),
            Input("R", "what one plug may carry", PLUG.value, "N", PLUG.source),
        ),
        limit_source=Source(
            f"room for them {hung.long(PLUG_SPACING)} apart: common practice, no source"
        ),
        notes=(
            f"each is drawn by {hung.kg(hung.pull / needed)} and carries "
            f"{hung.kg(hung.weight / 2 / needed)} downwards; pull and weight are added",
            f"take plugs whose maker gives {hung.kg(share)} to work with, half at most of "
            f"what breaks them ({WALL_SAFETY.source})",
            "as many more at its lower edge carry the other half of the weight",
        ),
        remedies=_rows(needed, fit) if needed > fit else (),
    )


def _rows(needed: int, fit: int) -> tuple[Remedy, ...]:
    """Plugs in two or three rows, and how many are then in each."""
    return tuple(
        Remedy(
            f"{rows} rows one under the other, so many plugs in each",
            ceil(needed / rows),
            ceil(needed / rows) <= fit,
        )
        for rows in (2, 3)
    )


def screw_in_stud(back: Part | None, hung: Hung) -> tuple[float, float, tuple[Input, ...]]:
    """What one screw through the back into a stud may be drawn by and may carry downwards, N."""
    diameter, length = SCREW
    thick = back.blank.thickness if back is not None else 0.0
    deep = length - thick - PLASTERBOARD
    stud = Into(Family.SOLID_WOOD, STUD_GRAVITY.value, 2 * STUD_WIDTH, "face")
    drawn = screw_drawn(stud, diameter, deep)
    mechanics = back.blank.stock.mechanics if back is not None else None
    gravity = mechanics.gravity.value if mechanics and mechanics.gravity else STUD_GRAVITY.value
    family = mechanics.family if mechanics else Family.SOLID_WOOD
    panel = Into(family, gravity, thick or 18.0, "face")
    aside = screw_aside(diameter, (stud, deep), (panel, thick or 18.0))
    said = f"a screw {hung.long(diameter)} thick, {hung.long(round(deep))}"
    inputs = (
        Input("R", f"{said} in a stud, drawn", drawn.allowed, "N", drawn.source),
        Input("Q", "the same, pressed down", aside.allowed, "N", aside.source),
        Input("G", "specific gravity of the stud", STUD_GRAVITY.value, "", STUD_GRAVITY.source),
    )
    return drawn.allowed, aside.allowed, inputs


def in_studs(back: Part | None, hung: Hung) -> Result:
    """How many screws its top takes in studs, and how many studs are surely behind it."""
    drawn, aside, inputs = screw_in_stud(back, hung)
    needed = max(LEAST_FIXINGS, ceil(hung.pull / drawn + hung.weight / 2 / aside - 1e-9))
    studs = int((hung.width - STUD_WIDTH) // STUD_CENTRES.value)
    fit = SCREWS_A_STUD * studs
    return on_wall(
        IN_STUDS,
        needed,
        fit,
        "",
        "n = T/R + W/(2 Q)",
        (
            *given(hung),
            Input("T", "pull", hung.pull, "N"),
            *inputs,
            Input("c", "studs apart at most", STUD_CENTRES.value, "mm", STUD_CENTRES.source),
        ),
        limit_source=Source(
            f"{studs} {'stud' if studs == 1 else 'studs'} surely behind it, "
            f"{SCREWS_A_STUD} screws in each: common practice, no source"
        ),
        notes=(
            f"{hung.screw} screws; each is drawn by {hung.kg(hung.pull / needed)} and carries "
            f"{hung.kg(hung.weight / 2 / needed)} downwards; as many more at its lower "
            "edge carry the other half of the weight",
            "plasterboard between back and stud isn't counted on; the stud and what it is fixed "
            "to are the builder's to judge",
        ),
        remedies=_on_batten(needed, hung) if needed > fit else (),
    )


def _on_batten(needed: int, hung: Hung) -> tuple[Remedy, ...]:
    """A batten across as many studs as it takes, with the unit hung on that."""
    studs = ceil(needed / SCREWS_A_STUD)
    length = studs * STUD_CENTRES.value + STUD_WIDTH
    per_stud = SCREWS_A_STUD * studs
    centres = (hung.width - STUD_WIDTH) / studs
    across = "1 stud" if studs == 1 else f"{studs} studs"
    holds = needed <= per_stud
    return (
        Remedy(
            f"a batten {hung.long(round(length))} long across {across}, the unit screwed to that",
            needed,
            holds,
        ),
        Remedy(
            f"studs or noggings put in {hung.long(round(centres))} apart at most behind it",
            needed,
            holds,
        ),
    )


def in_plasterboard(back: Part | None, hung: Hung) -> Result:
    """What each of so many fixings as have room would draw; refused whatever it is."""
    screws = in_studs(back, hung).figure
    count = max(LEAST_FIXINGS, int((hung.width - 2 * FROM_END) // 300.0) + 1)
    return on_wall(
        IN_PLASTERBOARD,
        hung.pull / count,
        0.0,
        "N",
        "T1 = T/n",
        (
            *given(hung),
            Input("n", f"fixings {hung.long(300.0)} apart", count, ""),
            Input("R", "what breaks the board", BOARD_FAILS.value, "N", BOARD_FAILS.source),
        ),
        limit_source=Source("plasterboard alone carries no cabinet: common practice, no source"),
        remedies=(
            Remedy(
                f"{screws:.0f} screws {hung.screw} into studs, or a batten across them",
                0.0,
                holds=True,
            ),
        ),
    )
