"""Formulas and model beside each other: sag, what comes to the floor, sway; and why they differ.

N and mm.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import suppress
from dataclasses import dataclass, replace

from rodwright.strength.bearings import Bearing
from rodwright.strength.bracing import Racking
from rodwright.strength.carriers import Ground
from rodwright.strength.level_states import LevelState, front_to_back, softened, states
from rodwright.strength.levels import subject_of
from rodwright.strength.model.causes import Cause, Comparing, Does
from rodwright.strength.model.pieces import lacking_stiffness
from rodwright.strength.model.sagging import borne_on, greatest_moments, sag_of
from rodwright.strength.model.sagging import front_to_back as sag_across
from rodwright.strength.model.solving import Moved, UnsolvedError
from rodwright.strength.model.swaying import Sway, sway
from rodwright.strength.model.whole import Model, after_years, model_of
from rodwright.strength.paths import paths
from rodwright.strength.racking import measured
from rodwright.unit import UPRIGHTS, Joint, Part, Role, Unit

SAGS, FLOOR, SWAYS = "sag at once", "comes to the floor there", "sway sideways under a push"
BOUNDS = {SAGS: 0.05, FLOOR: 0.1, SWAYS: 0.25}
"""How far a model may be off its formula, as a share: of the sag, of all that comes to the floor,
of the sway.  Beams alone are off by less than 2 %; 5 % is what workings and strips that end short
add.  What comes to the floor is shared out by how stiff everything is, which no formula knows of.
Stiffnesses of joints are good for a factor of two, so a quarter says nothing."""
SWAY_LITTLE = 0.15
"""A sway that differs by less than this, mm, differs by nothing: a hundredth of what is allowed."""
BACK, LEGS = "back", "legs"
"""How a cause tells of all of a back together, and of all legs."""
TOLD = 0.15
"""Causes that make less than this share of a difference aren't told."""
TOO_LITTLE = 0.05
"""A difference below this, mm, is none: paper is thicker."""


class UnknownStiffnessError(ValueError):
    """How stiff something is isn't known: says what is to be given."""


@dataclass(frozen=True, slots=True)
class Row:
    """One figure by formula and by model: of ``subject`` (``parts`` are its refs) and ``what``, in
    ``measure``; they agree if they differ by no more than ``within``.  ``causes`` are why not."""

    subject: str
    parts: tuple[str, ...]
    what: str
    formula: float
    model: float
    measure: str
    within: float
    causes: tuple[Cause, ...] = ()

    @property
    def ratio(self) -> float | None:
        """The model's over the formula's; None where that is nothing."""
        return self.model / self.formula if self.formula else None

    @property
    def agrees(self) -> bool:
        """Whether both are within the bound."""
        return abs(self.model - self.formula) <= self.within


@dataclass(frozen=True, slots=True)
class Beside:
    """What a model has to say of a unit: ``rows`` beside the formulas, ``weight`` and ``reaction``
    (N) of all there is, the joint with the greatest moment (N mm), the sway of front and back
    under a ``push`` (N), how many ``nodes`` it has, and the refs of parts that are only weights in
    it."""

    rows: tuple[Row, ...]
    weight: float
    reaction: float
    joint: Joint | None
    moment: float
    sway: Sway | None
    push: float
    nodes: int
    weights_only: tuple[str, ...]


def beside(unit: Unit) -> Beside:
    """A unit's formulas and its model beside each other.

    Raises:
        UnknownStiffnessError: how stiff one of its parts is isn't known.
        ValueError: the workings of a part leave nothing of it.
        UnsolvedError: something in it moves freely.
    """
    unknown = lacking_stiffness(unit)
    if unknown:
        raise UnknownStiffnessError(unknown)
    levels = states(unit)
    now = model_of(unit)
    moved = now.moved()
    rows = [*_sags(now, moved, levels, SAGS, 0.0)]
    if unit.loading.years > 0:
        rows += _later(unit, levels)
    rows += _floor(now, moved)
    swayed, push = None, 0.0
    if not unit.hung:
        racked = measured(unit, paths(unit))
        tight = model_of(unit, tight=True)
        push = racked.push
        swayed = _swayed(tight, push)
        rows.append(_swaying(tight, racked, swayed))
    joint, moment = _turned(now, moved)
    return Beside(
        tuple(rows),
        -sum(values[2] for values in now.forces.values()),
        sum(each[2] for each in moved.reactions),
        joint,
        moment,
        swayed,
        push,
        len(now.mesh.nodes),
        now.left_out,
    )


def _sags(
    model: Model, moved: Moved, levels: Mapping[str, LevelState], what: str, years: float
) -> Iterator[Row]:
    """The sag of each level, with causes where formula and model differ."""
    for state in levels.values():
        bearing = state.later if years > 0 else state.now
        row = _sag(model, moved, state, bearing, what, years)
        if row is None:
            continue
        if not row.agrees and bearing.across:
            row = replace(row, causes=_ends_too(model, bearing, moved, row))
        elif not row.agrees:
            causes = Comparing(model, bearing, moved).causes()
            least = max(TOO_LITTLE / 2, TOLD * abs(row.model - row.formula))
            told = tuple(c for c in causes if abs(c.effect) >= least)
            row = replace(row, causes=told or causes[:1])
        yield row


def _ends_too(model: Model, bearing: Bearing, moved: Moved, row: Row) -> tuple[Cause, ...]:
    """A level that spans from front to back has ends as well, and they carry some of it."""
    refs = bearing.level.refs
    ends = {seat.on: borne_on(model, refs, seat.on, moved) for seat in bearing.seats if seat.on}
    carried = sum(ends.values())
    effect = row.model - row.formula
    return (Cause(Does.CARRIES, ", ".join(ends), effect, 0.0, carried),)


def _later(unit: Unit, levels: Mapping[str, LevelState]) -> Iterator[Row]:
    lasting = {part.ref: state.lasting for state in levels.values() for part in state.level.parts}
    model = model_of(unit, after_years(unit, lasting))
    moved = model.moved()
    years = unit.loading.years
    what = f"sag after {years:g} year{'' if years == 1 else 's'}"
    yield from _sags(model, moved, levels, what, years)


def _sag(
    model: Model, moved: Moved, state: LevelState, bearing: Bearing, what: str, years: float
) -> Row | None:
    level = bearing.level
    grid = model.mesh.grids.get(level.ref)
    if grid is None or bearing.grounded or len(grid.axes) < 2:
        return None
    strip = front_to_back(bearing, softened(state, years))
    if strip is not None:
        front, back = sorted(line.at for line in bearing.lines)[:2]
        formula, found = strip[0].greatest_sag().sag, sag_across(grid, moved, front, back)
        what = f"{what}, front to back"
    elif bearing.bent is not None:
        sags = [each.sag for each in bearing.bent.sags() if not each.overhang]
        if not sags:
            return None
        formula, found = max(sags, key=abs), sag_of(model, bearing, moved)
    else:
        return None
    within = max(TOO_LITTLE, BOUNDS[SAGS] * abs(formula))
    return Row(subject_of(level.main), level.refs, what, formula, found, "mm", within)


def _floor(model: Model, moved: Moved) -> Iterator[Row]:
    """What comes to the floor at each side and divider: by whatever stands nearest to it."""
    unit = model.unit
    uprights = [part for part in unit.parts if part.role in UPRIGHTS]
    if unit.hung or not uprights:
        return
    places = [part.bounds().centre[0] for part in uprights]

    def nearest(x: float) -> str:
        # Of dividers above each other the first stands for all.
        return min(zip(places, uprights, strict=True), key=lambda each: abs(each[0] - x))[1].ref

    formula: dict[tuple[str, str], float] = {}
    for ground in (Ground.FLOOR, Ground.BASE):
        for ref, force in paths(unit).onto(ground):
            key = (nearest(force.at[0]), ref)
            formula[key] = formula.get(key, 0.0) + force.force
    found: dict[tuple[str, str], float] = {}
    held = zip(model.holders, model.supports, moved.reactions, strict=True)
    for ref, support, reaction in held:
        key = (nearest(model.mesh.nodes[support.node][0]), ref)
        found[key] = found.get(key, 0.0) + reaction[2]
    within = BOUNDS[FLOOR] * sum(formula.values())
    for part in uprights:
        keys = [key for key in dict.fromkeys((*formula, *found)) if key[0] == part.ref]
        if keys:
            pairs = {
                ref: (formula.get((at, ref), 0.0), found.get((at, ref), 0.0)) for at, ref in keys
            }
            yield _onto_floor(part, pairs, within)


def _onto_floor(part: Part, pairs: dict[str, tuple[float, float]], within: float) -> Row:
    given, taken = (sum(pair[side] for pair in pairs.values()) for side in (0, 1))
    row = Row(f"{part.role.value} {part.ref}", (part.ref,), FLOOR, given, taken, "N", within)
    if row.agrees:
        return row
    causes = (
        Cause(Does.BRINGS, ref, after - before, before, after)
        for ref, (before, after) in pairs.items()
        if abs(after - before) > TOLD * abs(taken - given)
    )
    return replace(row, causes=tuple(sorted(causes, key=lambda each: -abs(each.effect))))


def _swayed(model: Model, push: float) -> Sway | None:
    """How far a model sways; None where nothing holds it against a push: it folds."""
    with suppress(UnsolvedError):
        return sway(model, push)
    return None


def _swaying(model: Model, racked: Racking, swayed: Sway | None) -> Row:
    """Sway by the stiffnesses alone: no play in grooves, nothing that leans with it."""
    bare = racked.frame + racked.face
    stiff = bare + racked.back
    formula = racked.push / stiff + racked.legs if stiff else racked.height
    refs = tuple(part.ref for part in model.unit.parts if part.role is Role.SIDE)
    # Swayed by all its height it has folded, and how much further says nothing; where only one of
    # them says that it folds they differ, however near to it the other comes.
    formula = min(formula, racked.height)
    found = racked.height if swayed is None else min(swayed.back, racked.height)
    folds = racked.height in (formula, found)
    within = SWAY_LITTLE if folds else max(SWAY_LITTLE, BOUNDS[SWAYS] * formula)
    row = Row("carcass", refs, SWAYS, formula, found, "mm", within)
    if row.agrees:
        return row
    return replace(row, causes=tuple(_softer(model, racked, swayed, row.model - row.formula)))


def _softer(model: Model, racked: Racking, swayed: Sway | None, off: float) -> Iterator[Cause]:
    """How stiff legs, carcass and back are against a push, by formula and by model, N/mm."""
    push = racked.push
    if racked.legs and swayed:
        on_legs = push / swayed.foot if swayed.foot else 0.0
        yield Cause(Does.STIFFENS, LEGS, off, push / racked.legs, on_legs)
    without = _swayed(model.without(Role.BACK), push)
    bare = _over_foot(push, without.mean, without.foot) if without else 0.0
    yield Cause(Does.STIFFENS, "carcass and face frame", off, racked.frame + racked.face, bare)
    if any(part.role is Role.BACK for part in model.unit.parts):
        whole = _over_foot(push, swayed.back, swayed.foot) if swayed else 0.0
        yield Cause(Does.STIFFENS, BACK, off, racked.back, whole - bare)


def _over_foot(push: float, top: float, foot: float) -> float:
    return push / (top - foot) if top > foot else 0.0


def _turned(model: Model, moved: Moved) -> tuple[Joint | None, float]:
    moments = greatest_moments(model, moved)
    if not moments:
        return None, 0.0
    most = max(moments, key=lambda number: moments[number])
    return model.unit.joints[most], moments[most]
