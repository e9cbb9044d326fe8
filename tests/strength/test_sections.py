"""Sections against tables, closed forms, and sectionproperties' finite elements."""

from __future__ import annotations

import random
from math import inf, pi

import numpy as np
import pytest
from sectionproperties.analysis import Section as Meshed
from sectionproperties.pre import Geometry, Material
from sectionproperties.pre.library import rectangular_section

from rodwright.strength.layers import Layers, Seam
from rodwright.strength.sections import (
    Rectangle,
    Section,
    edges_of_lipped,
    stress_factor,
    torsion_factor,
)

PLY, OAK = 7000.0, 12000.0


def meshed(section: Section, elements: float = 40) -> Meshed:
    """The same section in sectionproperties, each part in so many elements."""
    whole: Geometry | None = None
    for part in section.parts:
        shape = rectangular_section(d=part.height, b=part.width, material=_material(part))
        shape = shape.shift_section(part.front, part.bottom)
        whole = shape if whole is None else whole + shape
    assert whole is not None
    whole.create_mesh([part.area / elements for part in section.parts])
    return Meshed(whole)


def _material(part: Rectangle) -> Material:
    return Material(f"E{part.modulus}", part.modulus, 0.0, 1.0, 1.0, "w")


BETA = {1: 0.1406, 1.5: 0.1958, 2: 0.2287, 3: 0.2633, 4: 0.2808, 6: 0.2983, 10: 0.3123, 20: 0.3228}
ALPHA = {1: 0.208, 1.5: 0.231, 2: 0.246, 3: 0.267, 4: 0.282, 6: 0.299, 10: 0.312, 20: 0.32}


@pytest.mark.parametrize("slimness", BETA)
def test_torsion_of_rectangles_as_in_tables(slimness: float) -> None:
    """Timoshenko & Goodier, Theory of Elasticity, chapter 10 (both rows)."""
    assert torsion_factor(slimness) == pytest.approx(BETA[slimness], abs=6e-5)
    # The table's third figure of alpha is one too many at a/t = 6 (0.2984 by the series).
    places = 1.1e-3 if slimness == 6 else 5.1e-4 if slimness < 20 else 5.1e-3
    assert stress_factor(slimness) == pytest.approx(ALPHA[slimness], abs=places)


def test_torsion_of_a_strip() -> None:
    assert torsion_factor(1e6) == pytest.approx(1 / 3, rel=1e-6)
    assert stress_factor(1e6) == pytest.approx(1 / 3, rel=1e-6)
    with pytest.raises(ValueError, match="at least as long as thick"):
        torsion_factor(0.5)


def test_a_lipping_by_the_transformed_section() -> None:
    """Section 4 of any text: n, ybar, and the sum of own and moved moments of inertia."""
    b, t, bl, h = 280.0, 18.0, 20.0, 45.0
    n = OAK / PLY
    y1, y2 = h - t / 2, h / 2
    ybar = (b * t * y1 + n * bl * h * y2) / (b * t + n * bl * h)
    board = b * t**3 / 12 + b * t * (y1 - ybar) ** 2
    lip = bl * h**3 / 12 + bl * h * (y2 - ybar) ** 2
    section = Section(
        (Rectangle(b, t, PLY, front=bl, bottom=h - t), Rectangle(bl, h, OAK, front=0, bottom=0))
    )
    assert section.centroid[1] == pytest.approx(ybar)
    assert section.bending == pytest.approx(PLY * (board + n * lip))
    assert section.separate == pytest.approx(PLY * b * t**3 / 12 + OAK * bl * h**3 / 12)
    moment = 5e4
    low, high = section.stresses(0, moment)
    assert high == pytest.approx(-moment * (h - ybar) * PLY / section.bending)
    assert low == pytest.approx(moment * (ybar - (h - t)) * PLY / section.bending)
    assert section.stresses(1, moment)[0] == pytest.approx(moment * ybar * OAK / section.bending)
    flow = 300.0 * OAK * bl * h * (ybar - y2) / section.bending
    assert section.shear_flow((1,), 300.0) == pytest.approx(flow)
    assert section.shear_flow((0,), 300.0) == pytest.approx(flow)


def test_two_layers() -> None:
    """Section 5: unglued twice a single one, glued eight times."""
    low, high = Rectangle(300, 18, PLY), Rectangle(300, 18, PLY, bottom=18)
    pair = Section((low, high))
    assert pair.separate == pytest.approx(2 * low.bending)
    assert pair.bending == pytest.approx(8 * low.bending)
    assert pair.shear_flow((1,), 100.0) == pytest.approx(1.5 * 100 / 36)


def test_skins_on_a_core() -> None:
    """Section 5: a stressed-skin shelf."""
    tf, c, b = 6.0, 24.0, 300.0
    box = Section(
        (
            Rectangle(b, c, 100.0, bottom=tf),
            Rectangle(b, tf, PLY),
            Rectangle(b, tf, PLY, bottom=tf + c),
        )
    )
    expected = PLY * b * (tf * (c + tf) ** 2 / 2 + tf**3 / 6) + 100.0 * b * c**3 / 12
    assert box.bending == pytest.approx(expected)


PAIR = (Rectangle(300, 18, PLY), Rectangle(300, 22, OAK, bottom=18))


def test_the_gamma_method_lies_between_unglued_and_glued() -> None:
    whole = Section(PAIR)
    glued, loose = (Layers(PAIR, (Seam(slip),), 1000.0) for slip in (inf, 0.0))
    assert glued.bending == pytest.approx(whole.bending)
    assert loose.bending == pytest.approx(whole.separate)
    stress = max(map(abs, whole.stresses(0, 1e5)))
    assert glued.stress(0, 1e5) == pytest.approx(stress)
    assert glued.fastener_force(0, 200.0) == pytest.approx(whole.shear_flow((0,), 200.0))
    screwed = [Layers(PAIR, (Seam(1000.0, s),), 1000.0).bending for s in (300.0, 150.0, 50.0)]
    assert loose.bending < screwed[0] < screwed[1] < screwed[2] < glued.bending


def test_the_gamma_method_as_annex_b_writes_it() -> None:
    k, s, span = 900.0, 150.0, 1200.0
    one, two = PAIR
    gamma = 1 / (1 + 3.141592653589793**2 * one.axial * s / (k * span**2))
    a2 = gamma * one.axial * (one.height + two.height) / 2 / (gamma * one.axial + two.axial)
    a1 = (one.height + two.height) / 2 - a2
    layers = Layers(PAIR, (Seam(k, s),), span)
    effective = one.bending + two.bending + gamma * one.axial * a1**2 + two.axial * a2**2
    assert layers.bending == pytest.approx(effective)
    assert layers.levers == pytest.approx((-a1, a2))
    force = gamma * one.axial * a1 * s * 250.0 / effective
    assert layers.fastener_force(0, 250.0) == pytest.approx(force)


def test_three_slipping_layers_meet_their_limits() -> None:
    three = (*PAIR, Rectangle(300, 12, PLY, bottom=40))
    whole = Section(three)
    for slip, bending in ((inf, whole.bending), (0.0, whole.separate)):
        layers = Layers(three, (Seam(slip), Seam(slip)), 900.0)
        assert layers.bending == pytest.approx(bending)
    glued = Layers(three, (Seam(inf), Seam(inf)), 900.0)
    assert glued.fastener_force(1, 80.0) == pytest.approx(whole.shear_flow((2,), 80.0))
    with pytest.raises(ValueError, match="two or three layers"):
        Layers(three, (Seam(inf),), 900.0)


def drawn(seed: int) -> Section:
    """A shelf drawn by chance, with or without a second layer, lippings at front and back."""
    dice = random.Random(seed)

    def stiff() -> float:
        return round(dice.uniform(2500, 14000))

    depth, thick = dice.uniform(120, 450), dice.uniform(12, 40)
    parts = [Rectangle(depth, thick, stiff())]
    if dice.random() < 0.4:
        parts.append(Rectangle(depth, dice.uniform(6, 30), stiff(), bottom=thick))
    for front in (True, False):
        if dice.random() < 0.6:
            width, height = dice.uniform(6, 35), dice.uniform(thick, 80)
            low = dice.choice([thick - height, 0.0])
            parts.append(Rectangle(width, height, stiff(), 0.0, -width if front else depth, low))
    return Section(tuple(parts))


@pytest.mark.parametrize("first", range(0, 300, 50))
def test_three_hundred_sections_drawn_by_chance_against_sectionproperties(first: int) -> None:
    for seed in range(first, first + 50):
        section = drawn(seed)
        other = meshed(section, elements=4)
        other.calculate_geometric_properties()
        found = other.get_eic(e_ref=1)
        assert section.axial == pytest.approx(other.get_ea(), rel=1e-6)
        assert section.centroid == pytest.approx(other.get_c(), rel=1e-6, abs=1e-6)
        assert section.bending == pytest.approx(found[0], rel=1e-6)
        assert section.sideways == pytest.approx(found[1], rel=1e-6)
        assert section.product == pytest.approx(found[2], rel=1e-6, abs=1e-6 * found[1])


@pytest.mark.parametrize("seed", range(20))
def test_torsion_of_rectangles_against_sectionproperties(seed: int) -> None:
    dice = random.Random(seed)
    one = Rectangle(dice.uniform(20, 300), dice.uniform(10, 40), 2.0, 1.0)
    other = meshed(Section((one,)), elements=150)
    other.calculate_geometric_properties()
    other.calculate_warping_properties()
    assert one.torsion == pytest.approx(other.get_ej(e_ref=1) / 2, rel=0.005)


@pytest.mark.parametrize("lip", [(18.0, 40.0), (18.0, 60.0), (30.0, 30.0), (8.0, 50.0)])
def test_a_lipped_shelf_twists_as_sectionproperties_has_it(lip: tuple[float, float]) -> None:
    """Shear centre within 3% of the depth; torsion the sum, on the safe side by at most a
    twelfth; warping within a ninth."""
    width, height = lip
    section = Section(
        (
            Rectangle(280, 18, PLY, PLY / 2, width, height - 18),
            Rectangle(width, height, OAK, OAK / 2),
        )
    )
    other = meshed(section, elements=200)
    other.calculate_geometric_properties()
    other.calculate_warping_properties()
    assert section.shear_centre == pytest.approx(other.get_sc()[0], abs=0.03 * (280 + width))
    exact = other.get_ej(e_ref=1) / 2
    assert exact * 11 / 12 <= section.torsion <= exact
    assert section.warping == pytest.approx(other.get_egamma(), rel=1 / 9)


@pytest.mark.parametrize("seed", [3, 8, 21])
def test_stresses_by_part_against_sectionproperties(seed: int) -> None:
    """Of layers that mirror front and back: there both bend about one axis alone."""
    dice = random.Random(seed)
    section = Section(
        (
            Rectangle(300, 18, dice.uniform(3000, 9000)),
            Rectangle(300, dice.uniform(6, 20), dice.uniform(8000, 14000), bottom=18),
        )
    )
    other = meshed(section, elements=60)
    other.calculate_geometric_properties()
    other.calculate_warping_properties()
    seen = other.calculate_stress(mxx=-1e5).get_stress()
    for number, group in enumerate(seen):
        ours = sorted(section.stresses(number, 1e5))
        inside = group["sig_zz"][group["sig_zz"] != 0]  # elsewhere it gives nothing
        assert min(inside) == pytest.approx(ours[0], rel=0.005, abs=1e-3)
        assert max(inside) == pytest.approx(ours[1], rel=0.005, abs=1e-3)


def test_the_back_edge_of_a_lipped_shelf_sags_more_than_its_front() -> None:
    section = Section((Rectangle(282, 18, PLY, 400.0, 18, 22), Rectangle(18, 40, OAK, 700.0, 0, 0)))
    sag = 3.0
    front, back = edges_of_lipped(section, 300.0, sag, 900.0, 0.3)
    assert front < sag < back
    twist = (back - front) / 300
    torque = 0.3 * (150 - section.shear_centre)
    # Vlasov's equation with no twist and no warping moment at the ends, by its series of sines.
    waves = np.arange(1, 4000, 2) * pi / 900
    stiffness = waves**2 * section.torsion + waves**4 * section.warping
    signs = (-1.0) ** np.arange(len(waves))
    assert twist == pytest.approx(float(np.sum(4 * torque / 900 / waves * signs / stiffness)))
    assert twist < torque * 900**2 / 8 / section.torsion
    assert front + twist * section.shear_centre == pytest.approx(sag)
    plain = Section((Rectangle(300, 18, PLY, 400.0),))
    assert edges_of_lipped(plain, 300.0, sag, 900.0, 0.3) == pytest.approx((sag, sag))
