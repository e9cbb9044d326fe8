"""Beams drawn by chance, against another library's frames and against the theorems of statics."""

from __future__ import annotations

import random
from collections.abc import Callable, Iterable
from dataclasses import replace
from itertools import pairwise
from math import inf

import numpy as np
import pytest
from anastruct import SystemElements
from hypothesis import given, settings
from hypothesis import strategies as st

from rodwright.strength.beams import (
    Beam,
    BeamNotHeldError,
    Point,
    Segment,
    Stretch,
    Support,
    bend,
)


def drawn(seed: int) -> Beam:
    """A beam drawn by chance: spans, overhangs, springs, sections, loads; whole cm."""
    dice = random.Random(seed)
    length = 10.0 * dice.randint(40, 300)
    places = sorted(dice.sample(range(0, int(length) + 1, 10), dice.randint(2, 5)))
    supports = tuple(
        Support(
            float(at),
            dice.choice([0.0, 0.0, inf, 10 ** dice.uniform(5, 8)]),
            dice.choice([inf, inf, 10 ** dice.uniform(1, 3)]),
        )
        for at in places
    )

    def place() -> float:
        return 10.0 * dice.randint(0, int(length / 10))

    def stretch() -> Stretch:
        start = min(place(), length - 10)
        stop = start + 10.0 * dice.randint(1, int((length - start) / 10))
        return Stretch(start, stop, dice.uniform(0, 2), dice.uniform(0, 2))

    stops = sorted({place() for _ in range(dice.randint(0, 2))} - {0.0, length})
    return Beam(
        length,
        tuple(Segment(stop, 10 ** dice.uniform(8.5, 10)) for stop in (*stops, length)),
        supports,
        tuple(stretch() for _ in range(dice.randint(1, 3))),
        tuple(Point(place(), dice.uniform(-200, 800)) for _ in range(dice.randint(0, 3))),
    )


def framed(one: Beam, places: list[float]) -> tuple[list[float], list[float]]:
    """Deflections at places (mm), and moments halfway between, by anastruct; a node at each."""
    frame = SystemElements(EA=1e12, mesh=101)
    at_node = {at: number for number, at in enumerate(places, 1)}
    for start, stop in pairwise(places):
        segment = next(each for each in one.segments if start < each.stop)
        frame.add_element([[start, 0.0], [stop, 0.0]], EA=1e12, EI=segment.bending)
    for number, support in enumerate(one.supports):
        node = at_node[support.at]
        if support.sinking == inf and support.turning == inf:
            frame.add_support_fixed(node)
        elif support.sinking == inf:
            frame.add_support_hinged(node) if number == 0 else frame.add_support_roll(node)
        else:
            frame.add_support_spring(node, translation=2, k=support.sinking, roll=True)
            if support.turning == inf:
                frame.add_support_rotational(node)
        if 0 < support.turning < inf:
            frame.add_support_spring(node, translation=3, k=support.turning, roll=True)
    if one.supports[0].sinking < inf:
        frame.add_support_roll(1, direction="y")
    for number, (start, stop) in enumerate(pairwise(places), 1):
        low = sum(_share(load, start) for load in one.stretches if load.start <= start < load.stop)
        high = sum(_share(load, stop) for load in one.stretches if load.start <= start < load.stop)
        if low or high:
            frame.q_load(q=(-low, -high), element_id=number)
    for at in {point.at for point in one.points}:
        force = sum(point.force for point in one.points if point.at == at)
        frame.point_load(at_node[at], Fy=-force)
    frame.solve()
    sags = [float(frame.get_node_results_system(number)["uy"]) for number in at_node.values()]
    return sags, [-float(element.bending_moment[50]) for element in frame.element_map.values()]


def _share(load: Stretch, at: float) -> float:
    share = (at - load.start) / (load.stop - load.start)
    return load.at_start + share * (load.at_stop - load.at_start)


@pytest.mark.parametrize("first", range(0, 300, 50))
def test_three_hundred_beams_drawn_by_chance_against_anastruct(first: int) -> None:
    for seed in range(first, first + 50):
        one = drawn(seed)
        places = sorted({*np.linspace(0, one.length, 9).round(-1).tolist(), *_breaks(one)})
        bent = bend(one)
        sags, moments = framed(one, places)
        ours = [bent.deflection(at) for at in places]
        np.testing.assert_allclose(ours, sags, rtol=1e-6, atol=1e-6 * max(map(abs, sags)))
        # Halfway between the nodes, where their elements' own lines are asked.
        middles = [bent.moment((start + stop) / 2) for start, stop in pairwise(places)]
        most = abs(bent.greatest_moment().value)
        np.testing.assert_allclose(middles, moments, rtol=1e-6, atol=1e-6 * most)


def _breaks(one: Beam) -> Iterable[float]:
    yield from (0.0, one.length)
    for support in one.supports:
        yield support.at
    for segment in one.segments:
        yield segment.stop
    for load in one.stretches:
        yield from (load.start, load.stop)
    for point in one.points:
        yield point.at


def gauss(line: Callable[[float], float], places: list[float]) -> float:
    """An integral over pieces between places, by Gauss's rule: exact for what is integrated."""
    points, weights = np.polynomial.legendre.leggauss(8)
    return sum(
        float(weight)
        * (stop - start)
        / 2
        * line((start + stop) / 2 + float(u) * (stop - start) / 2)
        for start, stop in pairwise(places)
        for u, weight in zip(points, weights, strict=True)
    )


@settings(max_examples=60)
@given(seed=st.integers(0, 10**6), shear=st.floats(3e3, 1e6), share=st.floats(0, 1))
def test_sag_with_shear_by_virtual_work(seed: int, shear: float, share: float) -> None:
    """The sag where a unit force stands is the work its moments and shears do on the curvatures
    and slides (and its reactions on the springs) of the loads."""
    one = drawn(seed)
    one = replace(one, segments=tuple(replace(each, shear=shear) for each in one.segments))
    at = round(share * one.length, 3)
    real = bend(one)
    unit = bend(replace(one, stretches=(), points=(Point(at, 1.0),)))

    def stiffness(x: float) -> float:
        return next(each.bending for each in one.segments if x < each.stop)

    places = sorted({*_breaks(one), at})
    work = gauss(lambda x: real.moment(x) * unit.moment(x) / stiffness(x), places)
    work += gauss(lambda x: real.shear(x) * unit.shear(x) / shear, places)
    for number, support in enumerate(one.supports):
        if 0 < support.sinking < inf:
            work += real.reactions[number] * unit.reactions[number] / support.sinking
        if 0 < support.turning < inf:
            work += real.turnings[number] * unit.turnings[number] / support.turning
    most = abs(real.greatest_deflection().value)
    assert real.deflection(at) == pytest.approx(work, rel=1e-7, abs=1e-9 * most)


@settings(max_examples=60)
@given(seed=st.integers(0, 10**6))
def test_supports_that_only_push_push_or_stand_clear(seed: int) -> None:
    one = drawn(seed)
    supports = (replace(each, turning=0.0, lifts=True) for each in one.supports)
    resting = replace(one, supports=tuple(supports))
    try:
        bent = bend(resting)
    except BeamNotHeldError:
        # Then the loads' resultant is upward, or stands beyond the outer supports.
        whole = Beam(
            one.length, one.segments, (Support(0.0, turning=inf),), one.stretches, one.points
        )
        force, turn = bend(whole).reactions[0], -bend(whole).turnings[0]
        ends = sorted(support.at for support in one.supports)
        assert force < 0 or not ends[0] < turn / force < ends[-1]
        return
    size = sum(map(abs, bent.reactions)) + 1e-9
    for support, force, touches in zip(one.supports, bent.reactions, bent.touching, strict=True):
        assert force >= -1e-6 * size
        if not touches:
            assert bent.deflection(support.at) <= 1e-6 * abs(bent.greatest_deflection().value)


@settings(max_examples=40)
@given(seed=st.integers(0, 10**6))
def test_the_greatest_is_nowhere_passed(seed: int) -> None:
    bent = bend(drawn(seed))
    for peak, line in (
        (bent.greatest_deflection(), bent.deflection),
        (bent.greatest_moment(), bent.moment),
        (bent.greatest_shear(), bent.shear),
    ):
        seen = [abs(line(float(x))) for x in np.linspace(0, bent.beam.length, 301)]
        assert max(seen) <= abs(peak.value) * (1 + 1e-9) + 1e-12
    for sag in bent.sags():
        assert sag.start <= sag.at <= sag.stop
