"""The figures behind an answer about one plain shelf, with formula, inputs and sources."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from math import isinf

from rodwright.amounts import GRAVITY
from rodwright.strength.load_factors import FACTORS, PERMANENT, PSI2, PSI2_SOURCE, VARIABLE
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.strength.span import Carried, Plank, Trial
from rodwright.strength.span_question import Question
from rodwright.strength.span_remedies import span_remedies
from rodwright.trade.creep import Duration
from rodwright.trade.design_strength import design_strength
from rodwright.trade.mechanics import Mechanics
from rodwright.trade.sources import Source

__all__ = ["span_results"]

_BEAM = Source("Timoshenko's beam between two ends, bent exactly; creep by EN 1995-1-1, 2.2.3")
_STRESS = Source("EN 1995-1-1, 6.1.6, its ends turning freely", seen=False)
_AT_ONCE, _STRESSED = "sag at once", "bending stress"
_NEARLY = 1e-9
_CREPT = "the same with E and G over 1 + c, c = kdef (g + psi2 q)/(g + q)"


def span_results(
    question: Question, plank: Plank, carried: Carried, tried: Trial
) -> tuple[Result, ...]:
    """Sag at once and after years, and bending stress; with what would do where one is too much."""
    results = tuple(_results(question, plank, carried, tried))
    if tried.share <= 1:
        return results
    return _remedied(question, plank, carried, tried, results)


def _remedied(
    question: Question, plank: Plank, carried: Carried, tried: Trial, results: tuple[Result, ...]
) -> tuple[Result, ...]:
    """Results with what would do, where they don't hold."""
    others = tuple(
        span_remedies(question.plank, plank, carried, tried, question.limit, question.unit)
    )

    def figure(result: Result, other: Trial) -> float:
        if result.what == _STRESSED:
            return other.stress
        return other.at_once if result.what == _AT_ONCE else other.sag

    return tuple(
        result
        if result.holds
        else replace(
            result,
            remedies=tuple(
                Remedy(what, figure(result, other), other.share <= 1 + _NEARLY)
                for what, other in others
            ),
        )
        for result in results
    )


def _results(question: Question, plank: Plank, carried: Carried, tried: Trial) -> Iterator[Result]:
    known = question.known(plank.thickness)
    assert known is not None
    subject = f"shelf of {question.board}"
    sizes = tuple(_sizes(question, plank, tried))
    loads = tuple(_loads(question, plank, carried, tried))
    stiff = tuple(_stiffness(question, known, plank))
    later = question.years > 0
    at_once = Result(
        Group.LEVELS,
        subject,
        (),
        _AT_ONCE,
        tried.at_once,
        None if later else tried.allowed,
        "mm",
        _sag_formula(plank, carried),
        _BEAM,
        (*sizes, *loads, *stiff),
        limit_source=None if later else question.limit_source,
        notes=_notes(question, plank),
    )
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
        Group.LEVELS,
        subject,
        (),
        _STRESSED,
        tried.stress,
        tried.strength,
        "N/mm2",
        f"6 M/(b t^2), M of {PERMANENT:g} g + {VARIABLE:g} q",
        _STRESS,
        (
            Input("", "its own weight counts", PERMANENT, "", FACTORS),
            Input("", "what lies on it counts", VARIABLE, "", FACTORS),
        ),
        limit_source=strength.source if strength else None,
        notes=() if strength else unknown,
    )


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
