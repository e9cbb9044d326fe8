"""Beams against handbooks' formulas, published examples and another library's frames."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from math import inf, sqrt

import numpy as np
import pytest

from rodwright.strength.beams import (
    Beam,
    BeamNotHeldError,
    Bent,
    Point,
    Segment,
    Stretch,
    Support,
    bend,
)

L, EI, W, P = 1000.0, 2.0e9, 1.5, 800.0
PINS = (Support(0), Support(L))
FIXED = (Support(0, turning=inf), Support(L, turning=inf))


def beam(supports: Iterable[Support], loads: Iterable[Stretch | Point], shear: float = inf) -> Bent:
    loads = tuple(loads)
    return bend(
        Beam(
            L,
            (Segment(L, EI, shear),),
            tuple(supports),
            tuple(load for load in loads if isinstance(load, Stretch)),
            tuple(load for load in loads if isinstance(load, Point)),
        )
    )


UNIFORM = (Stretch(0, L, W, W),)
QUARTERS = (Point(L / 4, P / 2), Point(3 * L / 4, P / 2))

ONE_SPAN = {
    "simple, uniform": (PINS, UNIFORM, 5 * W * L**4 / 384 / EI, 0.5, W * L**2 / 8, 0.5),
    "simple, point": (PINS, (Point(L / 2, P),), P * L**3 / 48 / EI, 0.5, P * L / 4, 0.5),
    "fixed, uniform": (FIXED, UNIFORM, W * L**4 / 384 / EI, 0.5, -W * L**2 / 12, 0.5),
    "fixed, point": (FIXED, (Point(L / 2, P),), P * L**3 / 192 / EI, 0.5, -P * L / 8, 0.5),
    "cantilever, uniform": (FIXED[:1], UNIFORM, W * L**4 / 8 / EI, 1.0, -W * L**2 / 2, 1.0),
    "cantilever, point": (FIXED[:1], (Point(L, P),), P * L**3 / 3 / EI, 1.0, -P * L, 1.0),
    "simple, quarter points": (PINS, QUARTERS, 11 * P * L**3 / 768 / EI, 0.5, P * L / 8, 0.5),
}
"""Supports, loads, greatest sag and where, greatest moment, left reaction as a share of all."""


@pytest.mark.parametrize("name", ONE_SPAN)
def test_one_span_as_in_the_wood_handbooks_table_9_1(name: str) -> None:
    supports, loads, sag, where, moment, share = ONE_SPAN[name]
    bent = beam(supports, loads)
    found = bent.greatest_deflection()
    assert found.value == pytest.approx(sag, rel=1e-12)
    assert found.at == pytest.approx(where * L, rel=1e-9)
    assert bent.deflection(where * L) == pytest.approx(sag, rel=1e-12)
    assert bent.greatest_moment().value == pytest.approx(moment, rel=1e-12)
    whole = W * L if isinstance(loads[0], Stretch) else P
    assert bent.reactions[0] == pytest.approx(share * whole, rel=1e-12)
    assert sum(bent.reactions) == pytest.approx(whole, rel=1e-12)


def test_one_end_fixed() -> None:
    bent = beam((FIXED[0], PINS[1]), UNIFORM)
    found = bent.greatest_deflection()
    assert round(W * L**4 / EI / found.value, 1) == 184.6
    assert L - found.at == pytest.approx(0.42 * L, abs=0.002 * L)
    assert bent.greatest_moment().value == pytest.approx(-W * L**2 / 8)
    assert bent.reactions == pytest.approx((5 / 8 * W * L, 3 / 8 * W * L))


def test_uniform_load_at_any_place() -> None:
    bent = beam(PINS, UNIFORM)
    for x in np.linspace(0, L, 17):
        at = float(x)
        line = W * at * (L**3 - 2 * L * at**2 + at**3) / 24 / EI
        assert bent.deflection(at) == pytest.approx(line, rel=1e-12, abs=1e-12)
        assert bent.moment(at) == pytest.approx(W * at * (L - at) / 2, abs=1e-6)
        assert bent.shear(at) == pytest.approx(W * (L / 2 - at), abs=1e-9)


@pytest.mark.parametrize("a", [510.0, 640.0, 900.0])
def test_a_point_anywhere(a: float) -> None:
    b = L - a
    bent = beam(PINS, (Point(a, P),))
    found = bent.greatest_deflection()
    assert found.value == pytest.approx(
        P * b * (L**2 - b**2) ** 1.5 / (9 * sqrt(3) * L * EI), rel=1e-12
    )
    assert found.at == pytest.approx(sqrt((L**2 - b**2) / 3), rel=1e-9)
    assert bent.greatest_moment().value == pytest.approx(P * a * b / L)
    assert bent.reactions == pytest.approx((P * b / L, P * a / L))


def test_a_triangular_load() -> None:
    bent = beam(PINS, (Stretch(0, L, 0, W),))
    found = bent.greatest_deflection()
    assert found.value == pytest.approx(0.00652 * W * L**4 / EI, rel=1e-3)
    assert found.at == pytest.approx(0.519 * L, abs=0.001 * L)
    assert bent.greatest_moment().value == pytest.approx(0.0642 * W * L**2, rel=1e-3)
    assert bent.reactions == pytest.approx((W * L / 6, W * L / 3))


@pytest.mark.parametrize("k", [0.1, 0.4, 0.75, 1.0])
def test_a_load_over_the_middle(k: float) -> None:
    bent = beam(PINS, (Stretch((1 - k) / 2 * L, (1 + k) / 2 * L, W, W),))
    expected = W * L**4 / 384 / EI * (8 * k - 4 * k**3 + k**4)
    assert bent.deflection(L / 2) == pytest.approx(expected, rel=1e-12)


@pytest.mark.parametrize("stiffness", [0.0, 1e5, 5e6, 1e9, inf])
def test_ends_between_pinned_and_fixed(stiffness: float) -> None:
    ends = tuple(Support(at, turning=stiffness) for at in (0.0, L))
    bent = beam(ends, UNIFORM)
    held = 0.0 if stiffness == 0 else (W * L**2 / 12) / (1 + 2 * EI / (stiffness * L))
    sag = 5 * W * L**4 / 384 / EI - held * L**2 / 8 / EI
    assert bent.deflection(L / 2) == pytest.approx(sag, rel=1e-12)
    assert bent.turnings == pytest.approx((held, -held), abs=1e-9)


HANDBOOK = {
    "uniform, simple": (PINS, UNIFORM, 5 / 384, 1 / 8),
    "uniform, clamped": (FIXED, UNIFORM, 1 / 384, 1 / 8),
    "point, simple": (PINS, (Point(L / 2, W * L),), 1 / 48, 1 / 4),
    "point, clamped": (FIXED, (Point(L / 2, W * L),), 1 / 192, 1 / 4),
    "quarter points, simple": (
        PINS,
        (Point(L / 4, W * L / 2), Point(3 * L / 4, W * L / 2)),
        11 / 768,
        1 / 8,
    ),
    "uniform, cantilever": (FIXED[:1], UNIFORM, 1 / 8, 1 / 2),
    "point, cantilever": (FIXED[:1], (Point(L, W * L),), 1 / 3, 1.0),
}


@pytest.mark.parametrize("name", HANDBOOK)
def test_bending_and_shear_as_in_the_wood_handbook(name: str) -> None:
    supports, loads, kb, ks = HANDBOOK[name]
    shear = 4.0e4
    found = beam(supports, loads, shear).greatest_deflection().value
    whole = W * L
    assert found == pytest.approx(kb * whole * L**3 / EI + ks * whole * L / shear, rel=1e-12)


CONTINUOUS = {
    1: (0.013021, 0.5, (0.5, 0.5), ()),
    2: (0.005416, 0.421, (0.375, 1.25, 0.375), (0.125,)),
    3: (0.006884, 0.446, (0.4, 1.1, 1.1, 0.4), (0.1, 0.1)),
    4: (0.00646, 0.440, (0.393, 1.143, 0.929, 1.143, 0.393), (0.107, 0.071, 0.107)),
    5: (0.00657, 0.440, (0.395, 1.132, 0.974, 0.974, 1.132, 0.395), (0.105, 0.079, 0.079, 0.105)),
}


@pytest.mark.parametrize("spans", CONTINUOUS)
def test_equal_spans(spans: int) -> None:
    sag, where, reactions, moments = CONTINUOUS[spans]
    length = spans * L
    bent = bend(
        Beam(
            length,
            (Segment(length, EI),),
            tuple(Support(number * L) for number in range(spans + 1)),
            (Stretch(0, length, W, W),),
        )
    )
    found = bent.greatest_sag()
    assert found.sag * EI / W / L**4 == pytest.approx(sag, abs=6e-6)
    # The handbook gives the place to about a hundredth of the span.
    assert found.at / L == pytest.approx(where, abs=2e-3)
    assert [each / W / L for each in bent.reactions] == pytest.approx(reactions, abs=6e-4)
    inner = [-bent.moment(number * L) / W / L**2 for number in range(1, spans)]
    assert inner == pytest.approx(moments, abs=6e-4)


TWO = tuple(Support(number * L) for number in range(3))


def two_spans(supports: tuple[Support, ...]) -> Bent:
    return bend(Beam(2 * L, (Segment(2 * L, EI),), supports, (Stretch(0, L, W, W),)))


def test_one_loaded_span_of_two_pulls_at_the_far_support() -> None:
    bent = two_spans(TWO)
    assert bent.greatest_sag().sag * EI / W / L**4 == pytest.approx(0.00915, abs=6e-6)
    assert bent.reactions[2] == pytest.approx(-W * L / 16)


def test_the_same_lifts_off_a_pin_that_it_only_rests_on() -> None:
    bent = two_spans((*TWO[:2], replace(TWO[2], lifts=True)))
    assert bent.touching == (True, True, False)
    assert bent.reactions == pytest.approx((W * L / 2, W * L / 2, 0.0))
    inner, outer = bent.sags()
    assert inner.sag == pytest.approx(5 * W * L**4 / 384 / EI)
    assert (outer.overhang, outer.at) == (True, 2 * L)
    assert outer.sag == pytest.approx(-W * L**4 / 24 / EI)


def test_an_overhangs_load_lifts_it_off_the_far_one_of_three() -> None:
    supports = tuple(Support(at, lifts=True) for at in (0.0, 400.0, 800.0))
    bent = beam(supports, (Point(900.0, P), Point(500.0, P)))
    assert bent.touching == (False, True, True)
    assert bent.reactions == pytest.approx((0.0, 0.5 * P, 1.5 * P))
    assert bent.deflection(0.0) < 0


def test_what_tips_off_its_supports_is_not_held() -> None:
    with pytest.raises(BeamNotHeldError):
        beam((Support(0, lifts=True), Support(600, lifts=True)), (Point(L, P),))


@pytest.mark.parametrize(
    "supports", [(), (Support(500),), (Support(0, sinking=0), Support(L)), (Support(0, inf, 0),)]
)
def test_what_nothing_holds_is_refused(supports: tuple[Support, ...]) -> None:
    with pytest.raises(BeamNotHeldError, match="nothing holds the beam"):
        beam(supports, UNIFORM)


def test_a_hinge_too_many_folds_up() -> None:
    chain = Beam(L, (Segment(L, EI),), PINS, (Stretch(0, L, W, W),), hinges=(L / 2,))
    with pytest.raises(BeamNotHeldError):
        bend(chain)


def test_a_hung_span_carries_no_moment_at_its_hinge() -> None:
    """Fixed at the left, hinged in the middle, on a pin: the right half is a span of its own."""
    hung = bend(
        Beam(L, (Segment(L, EI),), (FIXED[0], PINS[1]), (Stretch(0, L, W, W),), hinges=(L / 2,))
    )
    assert hung.reactions[1] == pytest.approx(W * L / 4)
    assert hung.moment(L / 2) == pytest.approx(0.0, abs=1e-6)
    half = L / 2
    tip = W * half**4 / 8 / EI + (W * half / 2) * half**3 / 3 / EI
    assert hung.deflection(half) == pytest.approx(tip)


def test_sag_is_counted_between_supports_that_sink() -> None:
    sinking = (Support(0, sinking=100.0), Support(L, sinking=50.0))
    bent = beam(sinking, UNIFORM)
    assert bent.deflection(0) == pytest.approx(W * L / 2 / 100)
    assert bent.greatest_sag().sag == pytest.approx(5 * W * L**4 / 384 / EI)
    assert bent.greatest_deflection().value > bent.greatest_sag().sag


def test_a_board_cut_out_at_its_middle() -> None:
    """Half as stiff over the middle 400 mm: by the moment's area, worked by hand."""
    cut = bend(
        Beam(
            L,
            (Segment(300, EI), Segment(700, EI / 2), Segment(L, EI)),
            PINS,
            points=(Point(L / 2, P),),
        )
    )
    extra = P / 4 * 2 * (500**3 - 300**3) / 3 / EI
    assert cut.deflection(L / 2) == pytest.approx(P * L**3 / 48 / EI + extra)


def test_joist_4_8_m() -> None:
    """Timber joist 4.8 m, 2.4 kN/m, 11 GPa, 7119 cm4: 21.18 mm (a worked example)."""
    joist = Beam(4800, (Segment(4800, 11e3 * 7119e4),), (Support(0), Support(4800)))
    bent = bend(replace(joist, stretches=(Stretch(0, 4800, 2.4, 2.4),)))
    assert round(bent.greatest_deflection().value, 2) == 21.18


def test_bookshelf_of_kaw() -> None:
    """A. Kaw, numerical methods notes (University of South Florida), chapter 03.00C.

    29 x 12 x 3/8 in, 3.667e6 psi, books of 4 lb per inch at 11 in high, falling to 8.5 in: 103 lb,
    0.169 in at 14.5725 in.  The elastic curve is printed with five figures.
    """
    length, whole = 29.0, 4 * 29 * (1 + 8.5 / 11) / 2
    assert round(whole) == 103
    # The notes go on with the rounded weight.
    tall = 4 * 103 / whole
    short = tall * 8.5 / 11
    stiffness = 3.667e6 * 12 * 0.375**3 / 12
    bent = bend(
        Beam(
            length,
            (Segment(length, stiffness),),
            (Support(0), Support(length)),
            (Stretch(0, length, short, tall),),
        )
    )
    assert sum(bent.reactions) == pytest.approx(103)
    found = bent.greatest_deflection()
    assert round(found.value, 3) == 0.169
    assert found.at == pytest.approx(14.5725, abs=1e-3)
    for x in (5.0, 12.0, 20.0, 27.0):
        curve = 0.42493e-4 * x**3 - 0.13533e-8 * x**5 - 0.66722e-6 * x**4 - 0.018507 * x
        assert bent.deflection(x) == pytest.approx(-curve, abs=1e-4)


def test_what_stands_at_nearly_one_place_is_nearly_one() -> None:
    """A break a hundred thousandth of a millimetre from another changes nothing."""
    near = bend(
        Beam(
            L,
            (Segment(500.00001, EI, 5e4), Segment(L, EI, 5e4)),
            PINS,
            (Stretch(0, 500, W, W), Stretch(500, L, W, W)),
            (Point(500.00002, P),),
        )
    )
    one = beam(PINS, (*UNIFORM, Point(500, P)), 5e4)
    assert near.deflection(500) == pytest.approx(one.deflection(500), rel=1e-7)


@pytest.mark.parametrize("shear", [1e-6, 1.0, 1e3])
def test_what_is_soft_in_shear_is_held_all_the_same(shear: float) -> None:
    found = beam(PINS, UNIFORM, shear).greatest_deflection().value
    assert found == pytest.approx(5 * W * L**4 / 384 / EI + W * L**2 / 8 / shear, rel=1e-9)
    with pytest.raises(BeamNotHeldError):
        beam((Support(500),), UNIFORM, shear)


BAD = {
    "length": {"length": -1.0},
    "segments": {"segments": (Segment(400, EI),)},
    "stiffness": {"segments": (Segment(L, 0.0),)},
    "two supports": {"supports": (*PINS, Support(L))},
    "support": {"supports": (Support(-1), Support(L))},
    "spring": {"supports": (Support(0, turning=-1), Support(L))},
    "stretch": {"stretches": (Stretch(500, 400, W, W),)},
    "beyond": {"points": (Point(L + 1, P),)},
    "hinge": {"hinges": (0.0,)},
    "resting": {"supports": (PINS[0], Support(L, turning=1.0, lifts=True))},
}


@pytest.mark.parametrize("name", BAD)
def test_no_beam(name: str) -> None:
    with pytest.raises(ValueError):
        replace(Beam(L, (Segment(L, EI),), PINS, UNIFORM), **BAD[name])


def test_what_only_rises_goes_down_nowhere() -> None:
    """A beam that reaches out left of its supports by a little, loaded between them."""
    supports = (Support(100.0), Support(L))
    bent = bend(Beam(L, (Segment(L, EI),), supports, (Stretch(100.0, L, W, W),)))
    risen, _ = bent.sags()
    assert risen.sag == pytest.approx(-W * (L - 100) ** 3 / 24 / EI * 100)
    out, inner = bent.sags(down=True)
    assert (out.overhang, out.sag) == (True, 0.0)
    assert inner.sag == pytest.approx(5 * W * (L - 100) ** 4 / 384 / EI)
