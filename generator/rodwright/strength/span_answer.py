"""A question about one plain shelf, its answer, and the figures behind it with their sources."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from math import inf, isinf
from typing import Literal

from rodwright.amounts import GRAVITY, Kind
from rodwright.lengths import LengthUnit
from rodwright.strength.load_factors import FACTORS, PERMANENT, PSI2, PSI2_SOURCE, VARIABLE
from rodwright.strength.plain_board import UnanswerableError
from rodwright.strength.results import Group, Input, Result
from rodwright.strength.span import (
    LONGEST,
    THICKEST,
    Carried,
    Plank,
    Trial,
    greatest_load,
    greatest_span,
    least_thickness,
    trial,
)
from rodwright.trade.creep import Duration
from rodwright.trade.design_strength import design_strength
from rodwright.trade.loads import Burden
from rodwright.trade.mechanics import Mechanics
from rodwright.trade.sources import Figure, Source

__all__ = ["Question", "SpanAnswer", "UnanswerableError", "answer"]

Wanted = Literal["span", "load", "thickness", "check"]
HEIGHT = 300.0
"""mm.  Clear height above a shelf that is filled (common practice, no source)."""

_BEAM = Source("Timoshenko's beam between two ends, bent exactly; creep by EN 1995-1-1, 2.2.3")
_STRESS = Source("EN 1995-1-1, 6.1.6, its ends turning freely", seen=False)
_ASKED = Source("as asked")
_CREPT = "the same with E and G over 1 + c, c = kdef (g + psi2 q)/(g + q)"


@dataclass(frozen=True)
class Question:
    """What is known of a shelf; of thickness, span (mm) and burden one may be None, which is asked.

    ``known`` gives what is known of the board by thickness (mm), ``turning`` how its ends are held
    by thickness (N mm/rad), ``density`` is in kg/m3 (0: its own weight isn't counted); it may sag
    by its span over ``limit`` after ``years`` (0: at once).  ``notes`` say what was taken for
    granted, ``unit`` is the maker's.
    """

    board: str
    known: Callable[[float], Mechanics | None]
    turning: Callable[[float], Figure]
    density: Figure
    depth: float
    thickness: float | None
    span: float | None
    burden: Burden | None
    limit: float
    years: float
    ends: str
    limit_source: Source = _ASKED
    notes: tuple[str, ...] = ()
    unit: LengthUnit = "mm"

    @property
    def wanted(self) -> Wanted:
        """What is asked for."""
        if self.span is None:
            return "span"
        if self.burden is None:
            return "load"
        return "thickness" if self.thickness is None else "check"

    def plank(self, thickness: float) -> Plank | None:
        """The shelf of a thickness (mm), as far as is known."""
        known = self.known(thickness)
        if known is None:
            return None
        strength = design_strength(known, "bending", Duration.LONG)
        creep = known.creep.value if known.creep and self.years > 0 else 0.0
        return Plank(
            self.depth,
            thickness,
            known.along.value,
            known.shear.value if known.shear else inf,
            self.turning(thickness).value,
            self.density.value * GRAVITY * 1e-9 * thickness,
            creep,
            strength.value if strength else None,
        )


@dataclass(frozen=True)
class SpanAnswer:
    """The question with what was asked for filled in: span and thickness (mm), what it carries
    (``row`` kg/m, ``total`` kg), which limit governs, and the figures.

    ``endless``: it still holds over the longest span that is looked for.
    """

    question: Question
    thickness: float
    span: float
    row: float
    total: float
    governs: str
    endless: bool
    results: tuple[Result, ...]

    @property
    def holds(self) -> bool:
        """Whether it is within every limit."""
        return all(each.holds for each in self.results)

    @property
    def from_memory(self) -> tuple[Source, ...]:
        """The sources in it that were not looked up."""
        found = (source for each in self.results for source in each.from_memory)
        return tuple(dict.fromkeys(found))


def answer(question: Question) -> SpanAnswer:
    """The greatest span or load, the least thickness, or whether it holds.

    Raises:
        UnanswerableError: no shelf does, or its stiffness isn't known.
    """
    carried = carried_by(question.burden) if question.burden else Carried()
    thickness = question.thickness or _thickness(question, carried)
    plank = question.plank(thickness)
    if plank is None:
        raise UnanswerableError(
            f"it isn't known how stiff {question.board} is {thickness:g} mm thick",
            'Give its modulus of elasticity: `--e "9300 N/mm2"`.',
        )
    found = question.span or greatest_span(plank, carried, question.limit)
    span = LONGEST if found is None else found
    if question.burden is None:
        row = greatest_load(plank, span, question.limit)
        if row is None:
            raise UnanswerableError(
                "it doesn't hold under its own weight", "Take a shorter span or a thicker board."
            )
        carried = Carried(row=row)
    tried = trial(plank, carried, span, question.limit)
    total = tried.carried / GRAVITY
    return SpanAnswer(
        question,
        thickness,
        span,
        total / span * 1000,
        total,
        tried.governs,
        found is None,
        tuple(_results(question, plank, carried, tried)),
    )


def carried_by(burden: Burden) -> Carried:
    """What lies on a shelf in newtons and millimetres; what fills a space does so :data:`HEIGHT`
    high."""
    weight = burden.amount.value * GRAVITY
    match burden.amount.kind:
        case Kind.RUN_WEIGHT:
            return Carried(row=weight / 1e3)
        case Kind.AREA_WEIGHT:
            return Carried(spread=weight / 1e6)
        case Kind.DENSITY:
            return Carried(spread=weight * HEIGHT / 1e9)
        case _ if burden.manner == "stands":
            return Carried(standing=weight)
        case _:
            return Carried(whole=weight)


def _thickness(question: Question, carried: Carried) -> float:
    assert question.span is not None
    found = least_thickness(question.plank, carried, question.span, question.limit)
    if found is None:
        raise UnanswerableError(
            f"no thickness up to {THICKEST:g} mm holds",
            "Take a shorter span, or a divider half-way.",
        )
    return found


def _results(question: Question, plank: Plank, carried: Carried, tried: Trial) -> Iterator[Result]:
    known = question.known(plank.thickness)
    assert known is not None
    subject = f"shelf of {question.board}"
    sizes = tuple(_sizes(question, plank, tried))
    loads = tuple(_loads(question, plank, carried, tried))
    stiff = tuple(_stiffness(question, known, plank))
    later = question.years > 0
    at_once = Result(
        Group.LEVELS, subject, (), "sag at once", tried.at_once, None if later else tried.allowed,
        "mm", _sag_formula(plank, carried), _BEAM, (*sizes, *loads, *stiff),
        limit_source=None if later else question.limit_source, notes=_notes(question, plank),
    )  # fmt: skip
    yield at_once
    if later:
        yield replace(
            at_once,
            what=f"sag after {question.years:g} year{'' if question.years == 1 else 's'}",
            figure=tried.sag,
            limit=tried.allowed,
            formula=_CREPT + (", S over 1 + 2 c" if plank.turning else ""),
            inputs=tuple(_creep(known)),
            limit_source=question.limit_source,
            notes=("creep is taken whole after any time: EN 1995-1-1 gives its final figure",),
        )
    strength = design_strength(known, "bending", Duration.LONG)
    unknown = ("its bending strength isn't known, so that only sag limits it",)
    yield Result(
        Group.LEVELS, subject, (), "bending stress", tried.stress, tried.strength, "N/mm2",
        f"6 M/(b t^2), M of {PERMANENT:g} g + {VARIABLE:g} q", _STRESS,
        (
            Input("", "its own weight counts", PERMANENT, "", FACTORS),
            Input("", "what lies on it counts", VARIABLE, "", FACTORS),
        ),
        limit_source=strength.source if strength else None,
        notes=() if strength else unknown,
    )  # fmt: skip


def _notes(question: Question, plank: Plank) -> tuple[str, ...]:
    """What was taken for granted."""
    turning = question.turning(plank.thickness)
    if turning.value or question.ends == "pinned":
        return question.notes
    freely = f"ends {question.ends} are counted as turning freely; {turning.source}"
    return (*question.notes, freely)


def _sag_formula(plank: Plank, carried: Carried) -> str:
    """How it sags, as a handbook writes it."""
    if isinf(plank.turning):
        terms = ["w L^4/(384 E I)"] + (["P L^3/(192 E I)"] if carried.standing else [])
    else:
        terms = ["5 w L^4/(384 E I)"] + (["P L^3/(48 E I)"] if carried.standing else [])
    if not isinf(plank.shear):
        terms.append("(w L^2/8 + P L/4)/(G A')" if carried.standing else "w L^2/(8 G A')")
    if plank.turning and not isinf(plank.turning):
        moment = "(w L^2/12 + P L/8)" if carried.standing else "(w L^2/12)"
        return f"{' + '.join(terms)} - M L^2/(8 E I), M = {moment}/(1 + 2 E I/(S L))"
    return " + ".join(terms)


def _sizes(question: Question, plank: Plank, tried: Trial) -> Iterator[Input]:
    yield Input("L", "span", tried.span, "mm")
    yield Input("b", "depth, front to back", plank.depth, "mm")
    yield Input("t", "thickness", plank.thickness, "mm")
    yield Input("", "span over", question.limit, "", question.limit_source)


def _loads(question: Question, plank: Plank, carried: Carried, tried: Trial) -> Iterator[Input]:
    source = question.burden.source if question.burden else None
    density = question.density
    if density.value:
        yield Input("", "density", density.value, density.measure, density.source)
    yield Input("g", "its own weight", tried.own / GRAVITY / tried.span * 1e3, "kg/m")
    even = carried.even(plank, tried.span) / GRAVITY * 1e3
    if even or not carried.standing:
        yield Input("q", "what lies on it; w = g + q", even, "kg/m", source)
    if carried.standing:
        yield Input("P", "what stands in its middle", carried.standing / GRAVITY, "kg", source)


def _stiffness(question: Question, known: Mechanics, plank: Plank) -> Iterator[Input]:
    yield Input("E", "modulus of elasticity", known.along.value, "N/mm2", known.along.source)
    if known.shear is not None:
        yield Input("G", "shear modulus lying flat", known.shear.value, "N/mm2", known.shear.source)
    turning = question.turning(plank.thickness)
    if turning.value and not isinf(turning.value):
        yield Input("S", f"ends {question.ends}", turning.value, "N mm/rad", turning.source)


def _creep(known: Mechanics) -> Iterator[Input]:
    if known.creep is not None:
        yield Input("kdef", "creep", known.creep.value, "", known.creep.source)
    yield Input("psi2", "share of what lies there that stays", PSI2, "", PSI2_SOURCE)
