"""Shelves, tops, bottoms, rails and worktops: how far they sag, and whether they break."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping
from dataclasses import dataclass, replace
from functools import lru_cache

from rodwright.geometry import Box
from rodwright.strength.bearings import Bearing
from rodwright.strength.level_parts import Ply
from rodwright.strength.level_remedies import remedies_of
from rodwright.strength.level_sections import modulus
from rodwright.strength.level_states import (
    LevelState,
    creep_of,
    states,
    unknown_of,
)
from rodwright.strength.load_factors import FACTORS, PSI2, PSI2_SOURCE
from rodwright.strength.pin_remedies import pin_remedies
from rodwright.strength.pin_results import pin_results
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.strength.sagging import BY_TURNS, SAGS, Sagged, sag_by_turns, sag_of
from rodwright.strength.stresses import BENDS, SHEARS, Stressed, bending_of, shear_of
from rodwright.strength.told_support import said, support_notes
from rodwright.strength.twisting import twist_of
from rodwright.trade.sources import Source
from rodwright.unit import Part, Unit

SPAN, REACHES = "span", "twice its overhang"
"""What the input is called that a sag is held to a share of."""
STANDING = "what stands on it"
"""What an input is called that uprights bring a level."""
TWISTS = "twist by its"
"""Followed by what stiffens an edge: its lipping, its mid rail."""
SAINT_VENANT = Source("de Saint-Venant's torsion, ends kept from twisting", seen=False)
UNCARRIED = "nothing that is known of carries both its ends"
"""What is lacking of a level that nothing holds where it is."""
BEAM = Source(
    "Timoshenko's beam between the supports there are, bent exactly; creep by EN 1995-1-1, 2.2.3"
)
_AT_ONCE = "w by E I w'''' = q and G A' between the supports"
_AFTER = "w_fin = w_inst (1 + kdef (G + psi2 Q)/(G + Q)), joints by 2 kdef"
_ALL_OF_CREEP = (
    "creep is taken whole after any time: EN 1995-1-1 gives its final figure, and no rule for less"
)
_SPAN_OVER = Source("span over 200 where the spec says nothing: common practice, no source")


@lru_cache(maxsize=4)
def levels(unit: Unit) -> tuple[Result, ...]:
    """The results of each level of a unit, in the order of its parts.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    return tuple(_all(unit))


def _all(unit: Unit) -> Iterator[Result]:
    told = _Told(unit, states(unit), {})
    for state in told.states.values():
        if not state.now.grounded:
            yield from _results(told, state)


@dataclass(frozen=True, slots=True)
class _Told:
    """A unit's levels, and remedies that are known already: levels alike have the same."""

    unit: Unit
    states: Mapping[str, LevelState]
    known: dict[Hashable, tuple[Remedy, ...]]

    def remedied(self, state: LevelState, result: Result) -> Result:
        """A result with what would help, if it doesn't hold."""
        if result.holds:
            return result
        boards = tuple((part.blank, part.role) for part in state.level.parts)
        key = (boards, state.now.beam, result.what, result.figure)
        if key not in self.known:
            self.known[key] = remedies_of(self.unit, self.states, state, result)
        return replace(result, remedies=self.known[key])


def _results(told: _Told, state: LevelState) -> Iterator[Result]:
    """The results of one level."""
    unit = told.unit
    missing = unknown_of(unit, state.now)
    if missing or not _is_held(state.now):
        yield _unknown(unit, state, missing or UNCARRIED)
        return
    at_once = sag_of(unit, state, 0.0)
    assert at_once is not None
    years = unit.loading.years
    first = _sag(unit, state, at_once, 0.0, limited=years == 0)
    yield told.remedied(state, first)
    worst = at_once
    if years > 0:
        after = sag_of(unit, state, years)
        assert after is not None
        yield told.remedied(state, _sag(unit, state, after, years, limited=True))
        worst = after
    turns = sag_by_turns(unit, state, years)
    if turns is not None and turns.share > worst.share:
        last = _sag(unit, state, turns, years, limited=True)
        yield told.remedied(state, replace(last, what=f"{last.what}{BY_TURNS}"))
    yield from _twist(unit, state, at_once)
    for what, found in ((BENDS, bending_of(unit, state)), (SHEARS, shear_of(unit, state))):
        if found is not None:
            yield told.remedied(state, _stress(state, what, found))
    for each in pin_results(unit, state):
        mended = () if each.holds else pin_remedies(unit, told.states, state, each.what)
        yield replace(each, remedies=mended)


def _twist(unit: Unit, state: LevelState, sagged: Sagged) -> Iterator[Result]:
    """How far the edges of a lipped level sag apart, at once: no limit is known of it."""
    found = twist_of(state, sagged)
    if found is None:
        return
    front, back = (said(unit, each) for each in (found.front, found.back))
    yield Result(
        Group.LEVELS,
        subject_of(state.level.main),
        state.level.refs,
        f"{TWISTS} {stiffened_by(state.level.plies[0])}",
        abs(found.back - found.front),
        None,
        "mm",
        "m L^2/(8 GJ), m = q times its distance from the shear centre",
        SAINT_VENANT,
        (Input("q", "load", found.load, "N/mm"), Input("L", "span", sagged.span, "mm")),
        notes=(f"at once its front edge sags {front} and its back edge {back}",),
    )


def stiffened_by(ply: Ply) -> str:
    """What is glued along a level's edges, in the maker's words: ``lipping``, ``mid rail``."""
    return " and ".join(dict.fromkeys(each.role.value for each in ply.strips))


def subject_of(part: Part) -> str:
    """A level in the maker's words: ``shelf SH3``."""
    return f"{part.role.value} {part.ref}"


def place_of(state: LevelState, sagged: Sagged) -> tuple[float, float, float]:
    """Where a level sags most, unit frame."""
    box: Box = state.level.box
    middle = box.centre
    if sagged.front_to_back:
        return (middle[0], sagged.place, box.high[2])
    return (sagged.place, middle[1], box.high[2])


def _is_held(bearing: Bearing) -> bool:
    return bearing.bent is not None or bearing.across


def _unknown(unit: Unit, state: LevelState, missing: str) -> Result:
    return Result(
        Group.LEVELS,
        subject_of(state.level.main),
        state.level.refs,
        _what(unit.loading.years),
        None,
        None,
        "mm",
        _AT_ONCE,
        BEAM,
        lacking=missing,
    )


def _what(years: float) -> str:
    if years <= 0:
        return f"{SAGS} at once"
    return f"{SAGS} after {years:g} year{'' if years == 1 else 's'}"


def _sag(unit: Unit, state: LevelState, sagged: Sagged, years: float, *, limited: bool) -> Result:
    return Result(
        Group.LEVELS,
        subject_of(state.level.main),
        state.level.refs,
        _what(years),
        sagged.sag,
        sagged.limit if limited else None,
        "mm",
        _AFTER if years > 0 else _AT_ONCE,
        BEAM,
        tuple(_inputs(unit, state, sagged, years)),
        limit_source=_SPAN_OVER if limited and unit.loading.limit == 200 else None,
        notes=(*support_notes(unit, state.now, sagged), *((_ALL_OF_CREEP,) if years > 0 else ())),
    )


def _inputs(unit: Unit, state: LevelState, sagged: Sagged, years: float) -> Iterator[Input]:
    bearing, axis = state.now, 1 if sagged.front_to_back else 0
    yield Input("L", REACHES if sagged.overhang else SPAN, sagged.span, "mm")
    yield Input("Q", "what lies on it", bearing.contents, "N", _load_source(unit, bearing))
    yield Input("G", "its own weight", bearing.weight, "N")
    yield from _standing(bearing)
    for part in _unlike(bearing):
        known = modulus(part, axis)
        if known is not None:
            what = f"modulus of elasticity of {part.blank.stock.material} ({part.ref})"
            yield Input("E", what, known.value, known.measure, known.source)
        mechanics = part.blank.stock.mechanics
        if mechanics and mechanics.shear:
            yield Input(
                "Gv",
                f"shear modulus of {part.ref}",
                mechanics.shear.value,
                "N/mm2",
                mechanics.shear.source,
            )
        if years > 0 and mechanics and mechanics.creep:
            yield Input("kdef", f"creep of {part.ref}", creep_of(part), "", mechanics.creep.source)
    for seat in bearing.seats:
        if seat.stiffness is not None and seat.stiffness.value > 0:
            yield Input(
                "S",
                f"joint with {seat.on} against turning",
                seat.stiffness.value,
                seat.stiffness.measure,
                seat.stiffness.source,
            )
    if years > 0:
        yield Input("psi2", "share of what lies there that stays", PSI2, "", PSI2_SOURCE)


def _standing(bearing: Bearing) -> Iterator[Input]:
    standing = sum(each.force for each in bearing.standing)
    if standing:
        yield Input("F", STANDING, standing, "N")


def _unlike(bearing: Bearing) -> Iterator[Part]:
    """One part of each stock."""
    seen = set()
    for part in bearing.level.parts:
        if part.blank.stock not in seen:
            seen.add(part.blank.stock)
            yield part


def _load_source(unit: Unit, bearing: Bearing) -> Source | None:
    refs = {part.ref for part in bearing.level.parts}
    sources = (load.source for load in unit.loading.loads if load.ref in refs)
    return next((source for source in sources if source), None)


def _stress(state: LevelState, what: str, found: Stressed) -> Result:
    strength = found.strength
    lacking = "" if strength else f"how strong {found.part.blank.stock.material} is isn't known"
    return Result(
        Group.LEVELS,
        subject_of(state.level.main),
        state.level.refs,
        what,
        found.stress,
        strength.value if strength else None,
        "N/mm2",
        "sigma = M E z/EI" if what == BENDS else "tau = V S/(I b)",
        FACTORS,
        (
            *_standing(state.now),
            Input("f", f"loads count for so much ({found.part.ref})", found.raised, ""),
            *(
                (Input("fd", "design strength", strength.value, "N/mm2", strength.source),)
                if strength
                else ()
            ),
        ),
        limit_source=strength.source if strength else None,
        notes=(lacking,) if lacking else (),
    )
