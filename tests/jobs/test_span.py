"""What a maker asks of one shelf, and what is told of it."""

from __future__ import annotations

import json
from typing import Any

import pytest

from rodwright.handover.span_json import span_json
from rodwright.jobs.span import SpanAnswer, span
from rodwright.problems import ProblemsError
from rodwright.strength.results import Result
from rodwright.trade.mechanics import mechanics_of

BOOKS = 25 * 0.45359237 / 0.3048


def figure(answer: SpanAnswer, what: str) -> Result:
    return next(each for each in answer.results if each.what.startswith(what))


def told(*words: str, **more: Any) -> str:
    with pytest.raises(ProblemsError) as refused:
        span(*words, **more)
    (problem,) = refused.value.problems
    return f"{problem.message} | {problem.remedy}"


def test_the_greatest_span_by_hand() -> None:
    """5 w L^4/(384 EI) + w L^2/(8 GA'), times 1 + kdef (g + 0.8 q)/(g + q), is L/200."""
    answer = span("birch plywood", "18", load="books")
    known = mechanics_of("birch plywood", 18.0)
    assert known is not None and known.shear is not None and known.creep is not None
    g = 680 * 9.80665e-9 * 18 * 300
    q = BOOKS * 9.80665 / 1000
    length = answer.span
    stiff = known.along.value * 300 * 18**3 / 12
    slide = known.shear.value * 5 / 6 * 300 * 18
    at_once = 5 * (g + q) * length**4 / 384 / stiff + (g + q) * length**2 / 8 / slide
    sag = at_once * (1 + known.creep.value * (g + 0.8 * q) / (g + q))
    assert sag == pytest.approx(length / 200, rel=1e-5)
    assert figure(answer, "sag at once").figure == pytest.approx(at_once, rel=1e-9)
    assert figure(answer, "sag after 10 years").figure == pytest.approx(sag, rel=1e-9)
    stress = (1.35 * g + 1.5 * q) * length**2 / 8 * 6 / 300 / 18**2
    assert figure(answer, "bending stress").figure == pytest.approx(stress, rel=1e-9)
    assert answer.governs == "sag"
    assert answer.row == pytest.approx(BOOKS)
    assert answer.total == pytest.approx(BOOKS * length / 1000)


def test_each_answer_is_the_others_question() -> None:
    answer = span("mdf", "18", load="25 kg/m")
    load = span("mdf", "18", length=f"{answer.span!r}")
    assert load.row == pytest.approx(25, rel=1e-4)
    thick = span("mdf", length=f"{answer.span!r}", load="25 kg/m")
    assert thick.thickness == pytest.approx(18, rel=1e-4)
    assert thick.holds
    just, beyond = (
        span("mdf", "18", load="25 kg/m", length=f"{answer.span + more!r}") for more in (-1, 1)
    )
    assert just.holds and not beyond.holds


def test_thinner_needs_a_shorter_span_and_years_too() -> None:
    spans = [
        span("oak", "18", load="books", **more).span
        for more in ({}, {"years": 0.0}, {"limit": 100.0}, {"ends": "fixed"})
    ]
    assert spans[0] < min(spans[1:])
    assert span("oak", "22", load="books").span > spans[0]


def test_what_doesnt_hold_is_told_what_would() -> None:
    answer = span("mdf", "18", load="25 kg/m", length="900", ends="housed")
    failing = figure(answer, "sag after 10 years")
    assert not answer.holds and failing.limit == 4.5
    shorter, thicker, less = failing.remedies
    assert all(each.holds for each in failing.remedies)
    words = shorter.what.removeprefix("a span of ").split()[0]
    again = span("mdf", "18", load="25 kg/m", length=words, ends="housed")
    assert again.holds
    assert figure(again, "sag after").figure == pytest.approx(shorter.figure)
    again = span("mdf", thicker.what.split()[0], load="25 kg/m", length="900", ends="housed")
    assert again.holds
    assert figure(again, "sag after").figure == pytest.approx(thicker.figure)
    most = span("mdf", "18", length="900", ends="housed")
    assert less.what == f"no more than {most.row:.1f} kg/m on it"
    assert less.figure == pytest.approx(4.5, rel=1e-4)


def test_a_thickness_isnt_a_remedy_where_none_does() -> None:
    answer = span("mdf", "18", load="100 kg/m", length="6000")
    told = [each.what for each in figure(answer, "sag after").remedies]
    assert len(told) == 1 and told[0].startswith("a span of")


@pytest.mark.parametrize("ends", ["screwed", "housed", "pocket-screwed"])
def test_jointed_ends_lie_between_pinned_and_fixed(ends: str) -> None:
    pinned, jointed, fixed = (
        span("birch plywood", "18", load="books", ends=each) for each in ("pinned", ends, "fixed")
    )
    assert pinned.span < jointed.span < fixed.span
    turning = next(i for i in figure(jointed, "sag at once").inputs if i.symbol == "S")
    assert turning.value > 0 and turning.source is not None
    assert "M L^2/(8 E I), M = (w L^2/12)/(1 + 2 E I/(S L))" in figure(jointed, "sag at").formula


def test_a_joint_that_isnt_counted_on_says_so() -> None:
    answer = span("birch plywood", "18", load="books", ends="butted")
    assert answer.span == span("birch plywood", "18", load="books", ends="pinned").span
    assert any("ends butted are counted as turning freely" in note for note in notes_of(answer))


def test_a_thickness_that_a_joint_cant_be_made_in_isnt_offered() -> None:
    answer = span("mdf", length="300", load="5 kg/m", ends="dowelled")
    assert answer.thickness >= 12
    assert span("mdf", length="300", load="5 kg/m").thickness < 12


def notes_of(answer: SpanAnswer) -> list[str]:
    return [note for each in answer.results for note in each.notes]


def test_what_is_assumed_is_told() -> None:
    assert notes_of(span("birch plywood", "18", load="books"))[:4] == [
        "its depth is assumed (--depth)",
        "its ends are taken to turn freely, as on pins or cleats (--ends)",
        "it is to last 10 years (--years)",
        "its grain, or that of its face, runs along the span",
    ]
    said = notes_of(
        span("birch plywood", "18", load="books", depth="250", ends="pinned", years=0.0)
    )
    assert said == ["its grain, or that of its face, runs along the span"]
    assert "a clear height of 300 mm is filled with folded clothes" in notes_of(
        span("mdf", "18", load="folded clothes")
    )
    assert "television 18 kg stands in its middle" in notes_of(
        span("mdf", "18", load="television 18 kg")
    )


def test_a_material_of_ones_own() -> None:
    answer = span("Grandfather's board", "3/4 in", load="50 lb/ft2", e="1820000 psi", years=0.0)
    stiffness = next(i for i in figure(answer, "sag at once").inputs if i.symbol == "E")
    assert stiffness.value == pytest.approx(1820000 * 0.0068947573, rel=1e-6)
    assert str(stiffness.source) == "given with --e"
    assert answer.question.unit == "in"
    assert answer.question.depth == pytest.approx(304.8)
    notes = notes_of(answer)
    assert "its density isn't known: 800 kg/m3 is assumed, on the safe side" in notes
    assert "its bending strength isn't known, so that only sag limits it" in notes
    creeping = notes_of(span("Grandfather's board", "18", load="books", e="9 GPa"))
    assert any(note.startswith("it is counted as solid timber for creep") for note in creeping)
    as_ply = notes_of(span("Grandfather's plywood", "18", load="books", e="9 GPa"))
    assert not any("counted as" in note for note in as_ply)


def test_ones_own_modulus_goes_before_what_is_known() -> None:
    plain, own = (span("oak", "18", load="books", e=e) for e in (None, "5000 N/mm2"))
    assert own.span < plain.span
    assert figure(own, "bending stress").limit == figure(plain, "bending stress").limit


def test_the_least_modulus_there_is_is_one() -> None:
    assert span("cork", "40", load="5 kg/m", e="100 N/mm2").span > 0


def test_strength_may_govern() -> None:
    answer = span("glass", "6", load="25 kg/m", limit=20.0, years=0.0)
    assert answer.governs == "bending strength"
    stress = figure(answer, "bending stress")
    assert stress.limit is not None
    assert stress.figure == pytest.approx(stress.limit, rel=1e-4)


def test_no_end_is_told() -> None:
    answer = span("oak", "150", load="1 kg/m", limit=20.0)
    assert answer.endless
    assert json.loads(span_json(answer))["endless"] is True


def test_from_memory_is_marked() -> None:
    document = json.loads(span_json(span("birch plywood", "18", load="books")))
    assert "EN 1990:2002, table A1.1, category E" in document["from_memory"]
    assert document["wanted"] == "span"
    assert document["results"][1]["what"] == "sag after 10 years"


REFUSED = {
    "nothing asked": (("oak", "18"), {}, "two of thickness, --load and --span are needed"),
    "unknown": (("birc plywood", "18"), {"load": "books"}, "Did you mean `birch plywood`?"),
    "unknown, what to give": (("xyz", "18"), {"load": "books"}, '`--e "9300 N/mm2"`'),
    "unknown, what is known": (("xyz", "18"), {"load": "books"}, "scots pine"),
    "no unit": (("oak", "18"), {"load": "25"}, "--load: `25` has no unit"),
    "negative": (("oak", "18"), {"load": "-5 kg/m"}, "less than zero"),
    "absurd": (("oak", "18"), {"load": "10 t/m"}, "more than a shelf carries"),
    "absurd in all": (
        ("oak", "18"),
        {"load": "30000 kg", "length": "1000"},
        "`30000 kg` is more than a shelf carries over 1000 mm",
    ),
    "hopeless": (("oak", "18"), {"load": "30000 kg"}, "doesn't hold over as little as 50 mm"),
    "nothing": (("oak", "18"), {"load": "nothing"}, "--load: nothing lies on it"),
    "hangs": (("oak", "18"), {"load": "coats"}, "hang on a rail"),
    "ends": (("oak", "18"), {"load": "books", "ends": "housd"}, "Did you mean `housed`?"),
    "corner": (("oak", "18"), {"load": "books", "ends": "mitred"}, "only a corner can be mitred"),
    "fraction": (("oak", "3/4"), {"load": "books"}, "if inches are meant, write `3/4 in`"),
    "thick": (("oak", "1800"), {"load": "books"}, "is no size of a shelf"),
    "E's unit": (("x", "18"), {"load": "books", "e": "9300"}, "--e: `9300` has no unit"),
    "E": (("x", "18"), {"load": "books", "e": "9 N/mm2"}, "boards have 100 N/mm2 at least"),
    "limit": (("oak", "18"), {"load": "books", "limit": 0.0}, "--limit: 0 can't be"),
    "years": (("oak", "18"), {"load": "books", "years": float("nan")}, "--years: nan can't be"),
    "own weight": (("mdf", "6"), {"length": "4000"}, "doesn't hold under its own weight"),
    "too far": (("mdf",), {"length": "20000", "load": "books"}, "no thickness up to 100 mm"),
}


@pytest.mark.parametrize("name", REFUSED)
def test_refused(name: str) -> None:
    words, more, said = REFUSED[name]
    assert said in told(*words, **more)
