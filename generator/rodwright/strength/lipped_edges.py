"""How a lipping twists the level that it stiffens at one edge: the other edge sags more."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from rodwright.strength.bearings import Bearing
from rodwright.strength.level_parts import Ply
from rodwright.strength.level_sections import modulus
from rodwright.strength.level_states import LevelState, softened, states
from rodwright.strength.levels import stiffened_by, subject_of
from rodwright.strength.results import Group, Input, Result
from rodwright.strength.sections import Rectangle, Section, edges_of_lipped
from rodwright.trade.sources import Source
from rodwright.unit import Part, Unit

__all__ = ["lipped_edges"]

_TORSION = Source(
    "torsion with warping (Vlasov), ends kept from twisting and free to warp", seen=False
)
_LEAST = 0.05
"""mm.  What is less isn't told."""


def lipped_edges(unit: Unit) -> Iterator[Result]:
    """By how much one edge of each level lies lower than the other at midspan, where strips that
    are glued to it stiffen one of them.

    None of levels that are held along an edge, lie loose on each other, or whose shear modulus in
    their own plane isn't known.  Nothing limits it: it is told beside the sag, which is that of
    both edges together.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    for state in states(unit).values():
        bearing, plies = state.later, state.level.plies
        if bearing.bent is None or bearing.lines or len(plies) > 1 or not plies[0].strips:
            continue
        section = _section(plies[0], softened(state, unit.loading.years))
        if section is not None:
            yield from _told(unit, state, bearing, section)


def _told(unit: Unit, state: LevelState, bearing: Bearing, section: Section) -> Iterator[Result]:
    span = max(stop - start for start, stop in bearing.spans)
    depth = max(part.front + part.width for part in section.parts)
    front, back = edges_of_lipped(section, depth, 0.0, span, bearing.most_per_mm)
    if abs(back - front) < _LEAST:
        return
    years = unit.loading.years
    after = f" after {years:g} year{'' if years == 1 else 's'}" if years > 0 else ""
    strips = stiffened_by(state.level.plies[0])
    lower, higher = ("back", "front") if back > front else ("front", "back")
    yield Result(
        Group.LEVELS,
        subject_of(state.level.main),
        state.level.refs,
        f"{lower} edge lower than its {higher} with the {strips}{after}",
        abs(back - front),
        None,
        "mm",
        "m b/GJ (L^2/8 - EIw/GJ (1 - 1/cosh(L/2 sqrt(GJ/EIw)))), m = w (b/2 - e)",
        _TORSION,
        (
            Input("w", "load where it is heaviest", bearing.most_per_mm, "N/mm"),
            Input("L", "span", span, "mm"),
            Input("b", "depth", depth, "mm"),
            Input("e", "shear centre behind its front", section.shear_centre, "mm"),
            Input("GJ", "stiffness against twisting", section.torsion, "N mm2"),
            Input("EIw", "stiffness against warping", section.warping, "N mm4"),
            *_moduli(state.level.plies[0]),
        ),
        notes=("its sag is that of both edges together: half of this less and more at either",),
    )


def _section(ply: Ply, softer: Mapping[str, float]) -> Section | None:
    """A ply's panels as one board, and the strips along its edges; None where their stiffness
    isn't known."""
    boxes = [part.bounds() for part in ply.parts]
    front, low = min(box.low[1] for box in boxes), min(box.low[2] for box in boxes)

    def rectangle(part: Part) -> Rectangle | None:
        along, mechanics = modulus(part, 0), part.blank.stock.mechanics
        if along is None or mechanics is None or mechanics.panel_shear is None:
            return None
        box, crept = part.bounds(), 1 + softer.get(part.ref, 0.0)
        _, wide, high = box.size
        return Rectangle(
            wide,
            high,
            along.value / crept,
            mechanics.panel_shear.value / crept,
            box.low[1] - front,
            box.low[2] - low,
        )

    found = [rectangle(part) for part in ply.parts]
    known = [each for each in found if each is not None]
    if len(known) < len(found):
        return None
    count = len(ply.layers)
    return Section((_as_one(known[:count]), *known[count:]))


def _as_one(layers: list[Rectangle]) -> Rectangle:
    """Panels glued face to face as one that bends alike, its shear modulus the mean."""
    first, last = layers[0], layers[-1]
    height = last.bottom + last.height - first.bottom
    bending = Section(tuple(layers)).bending
    shear = sum(each.shear * each.height for each in layers) / height
    modulus_of_all = bending * 12 / first.width / height**3
    return Rectangle(first.width, height, modulus_of_all, shear, first.front, first.bottom)


def _moduli(ply: Ply) -> Iterator[Input]:
    stocks = set()
    for part in ply.parts:
        mechanics = part.blank.stock.mechanics
        if mechanics is None or mechanics.panel_shear is None or part.blank.stock in stocks:
            continue
        stocks.add(part.blank.stock)
        shear = mechanics.panel_shear
        what = f"shear modulus of {part.blank.stock.material} in its own plane ({part.ref})"
        yield Input("G", what, shear.value, shear.measure, shear.source)
