"""Plates against Timoshenko's tables, series, their limits as beams, and PyNite's elements."""

from __future__ import annotations

from itertools import product
from math import inf, pi, sin

import pytest
from Pynite import FEModel3D

from rodwright.strength.beams import Beam, Segment, Stretch, Support, bend
from rodwright.strength.plates import (
    CLAMPED,
    FREE,
    HELD,
    Edge,
    Lipping,
    Patch,
    Plate,
    PlateNotHeldError,
    Stiffness,
    bend_plate,
    stiffness_of,
)
from rodwright.strength.sections import Rectangle, Section, edges_of_lipped
from rodwright.trade.mechanics import Family, Mechanics
from rodwright.trade.sources import Figure, Source

SHEET = Stiffness.isotropic(10000.0, 10.0, 0.3)
Q, B = 1e-3, 300.0

ALL_HELD = {1: 0.00406, 1.2: 0.00565, 1.5: 0.00772, 2: 0.01013, 3: 0.01223, 10: 0.01302}
ALL_CLAMPED = {1: 0.00126, 1.5: 0.00220, 2: 0.00254}
"""alpha of Timoshenko & Woinowsky-Krieger by a/b; 10 stands for infinite."""


@pytest.mark.parametrize("ratio", ALL_HELD)
def test_all_edges_held_as_in_timoshenkos_table(ratio: float) -> None:
    bent = bend_plate(Plate(ratio * B, B, SHEET, front=HELD, back=HELD, pressure=Q))
    middle = bent.deflection(ratio * B / 2, B / 2)
    assert middle * SHEET.along / Q / B**4 == pytest.approx(ALL_HELD[ratio], abs=6e-6)
    x, y, most = bent.greatest_deflection
    assert most == pytest.approx(middle, rel=1e-3)
    if ratio < 10:
        assert (x, y) == pytest.approx((ratio * B / 2, B / 2), abs=1.0)
    assert sum(bent.reactions().values()) == pytest.approx(Q * ratio * B**2, rel=1e-6)


@pytest.mark.parametrize("ratio", ALL_CLAMPED)
def test_all_edges_clamped_as_in_timoshenkos_table(ratio: float) -> None:
    plate = Plate(ratio * B, B, SHEET, CLAMPED, CLAMPED, CLAMPED, CLAMPED, pressure=Q)
    found = bend_plate(plate).deflection(ratio * B / 2, B / 2)
    assert found * SHEET.along / Q / B**4 == pytest.approx(ALL_CLAMPED[ratio], abs=1e-5)


FRONT_FREE = {
    # b/a: back held, back clamped, back free; at the middle of the front edge
    0.2: (0.00165, 0.00019, 0.01438),
    0.3: (0.00336, 0.00082, 0.01446),
    0.333: (0.00398, 0.00116, 0.01449),
    0.4: (0.00526, 0.00202, 0.01455),
    0.5: (0.00709, 0.00364, 0.01464),
    0.667: (0.00968, 0.00663, 0.01480),
}


@pytest.mark.parametrize("ratio", FRONT_FREE)
@pytest.mark.parametrize("number", range(3))
def test_the_front_edge_free(ratio: float, number: int) -> None:
    """b/a = 0.5 and 0.667 stand in Timoshenko & Woinowsky-Krieger, the rest by Levy's series."""
    span, back = 1000.0, (HELD, CLAMPED, FREE)[number]
    bent = bend_plate(Plate(span, ratio * span, SHEET, back=back, pressure=Q))
    x, y, most = bent.greatest_deflection
    assert most * SHEET.along / Q / span**4 == pytest.approx(FRONT_FREE[ratio][number], abs=1.1e-5)
    assert x == pytest.approx(span / 2, abs=2)
    # Free at both, front and back sag alike.
    assert y == pytest.approx(0, abs=0.5) or (back is FREE and y == pytest.approx(ratio * span))


def test_an_orthotropic_plate_by_navier_s_series() -> None:
    stiff = Stiffness(3.0e6, 0.9e6, 0.1e6, 0.35e6)
    a, b = 900.0, 400.0
    cross = stiff.coupling + 2 * stiff.twisting

    def term(m: int, n: int) -> float:
        below = (
            stiff.along * (m / a) ** 4
            + 2 * cross * (m * n / a / b) ** 2
            + stiff.across * (n / b) ** 4
        )
        return sin(m * pi / 3) * sin(n * pi / 2) / (m * n * below)

    series = sum(term(m, n) for m, n in product(range(1, 120, 2), repeat=2))
    found = bend_plate(Plate(a, b, stiff, front=HELD, back=HELD, pressure=Q))
    assert found.deflection(a / 3, b / 2) == pytest.approx(16 * Q / pi**6 * series, rel=1e-5)


NARROW = Stiffness(2.0e6, 2.0e6, 0.0, 1.0e6)
"""Without Poisson's effect a plate held at its ends alone is a beam."""


@pytest.mark.parametrize("turning", [0.0, 3e3, 1e5, inf])
def test_held_at_its_ends_it_is_a_beam(turning: float) -> None:
    span, depth = 900.0, 250.0
    bent = bend_plate(
        Plate(span, depth, NARROW, Edge(inf, turning), Edge(inf, turning), pressure=Q)
    )
    ends = tuple(Support(at, turning * depth) for at in (0.0, span))
    beam = bend(
        Beam(
            span,
            (Segment(span, NARROW.along * depth),),
            ends,
            (Stretch(0, span, Q * depth, Q * depth),),
        )
    )
    for x in (200.0, 450.0):
        assert bent.deflection(x, 60.0) == pytest.approx(beam.deflection(x), rel=1e-5)
        assert bent.moments(x, 60.0)[0] * depth == pytest.approx(beam.moment(x), rel=1e-4)


def test_a_load_on_part_of_the_span() -> None:
    span, depth = 900.0, 250.0
    patch = Patch(Q, 100.0, 420.0, 0.0, depth)
    bent = bend_plate(Plate(span, depth, NARROW, patches=(patch,)))
    beam = bend(
        Beam(
            span,
            (Segment(span, NARROW.along * depth),),
            (Support(0), Support(span)),
            (Stretch(100.0, 420.0, Q * depth, Q * depth),),
        )
    )
    assert bent.deflection(400.0, 0.0) == pytest.approx(beam.deflection(400.0), rel=1e-4)
    sides = bent.reactions()
    assert sides["left"] == pytest.approx(beam.reactions[0], rel=1e-6)


def test_a_lipping_carries_as_a_beam_along_the_edge() -> None:
    """Limp along, stiff across, held at its back: half the load goes to the stiff front edge."""
    span, depth = 800.0, 300.0
    limp = Stiffness(1.0, 2.0e7, 0.0, 1.0)
    lipping = Lipping(5.0e9, 0.0)
    bent = bend_plate(Plate(span, depth, limp, back=HELD, front_lipping=lipping, pressure=Q))
    load = Q * depth / 2
    sag = 5 * load * span**4 / 384 / lipping.bending
    assert bent.deflection(span / 2, 0.0) == pytest.approx(sag, rel=0.01)


def test_a_lipped_shelf_as_a_section_that_twists() -> None:
    """Where the depth is small beside the span, plate and section agree on both edges."""
    span, depth, thick, e, g = 1200.0, 200.0, 18.0, 9000.0, 700.0
    board = Rectangle(depth, thick, e, g)
    # Its middle is the board's, so that the section's EI is the sum of the two; and it stands on
    # the very edge, as that of a plate does.
    lip = Rectangle(20.0, 36.0, e, g, -10.0, -9.0)
    section = Section((board, lip))
    share = thick**3 / 12
    bent = bend_plate(
        Plate(
            span,
            depth,
            Stiffness(e * share, 20 * e * share, 0.0, g * share),
            front_lipping=Lipping(lip.bending, lip.torsion),
            pressure=Q,
        )
    )
    load = Q * depth
    sag = 5 * load * span**4 / 384 / section.bending
    front, back = edges_of_lipped(section, depth, sag, span, load)
    assert bent.deflection(span / 2, 0.0) == pytest.approx(front, rel=0.04)
    assert bent.deflection(span / 2, depth) == pytest.approx(back, rel=0.04)


@pytest.mark.parametrize("back", ["held", "clamped", "free"])
def test_against_pynites_plate_elements(back: str) -> None:
    span, depth, step = 900.0, 300.0, 50.0
    model = FEModel3D()
    model.add_material("board", 9000.0, 9000.0 / 2.6, 0.3, 0.0)
    model.add_rectangle_mesh("shelf", step, span, depth, 18.0, "board", element_type="Rect")
    model.meshes["shelf"].generate()
    for node in model.nodes.values():
        ends = node.X in (0.0, span)
        behind = depth == node.Y and back != "free"
        model.def_support(
            node.name, True, True, ends or behind, behind and back == "clamped", False, True
        )
    for quad in model.plates.values():
        model.add_plate_surface_pressure(quad.name, Q)
    model.analyze_linear()
    edge = {"held": HELD, "clamped": CLAMPED, "free": FREE}[back]
    stiff = Stiffness.isotropic(9000.0, 18.0, 0.3)
    bent = bend_plate(Plate(span, depth, stiff, back=edge, pressure=Q))
    for node in model.nodes.values():
        if node.Y == 0.0 and 0.0 < node.X < span:
            found = abs(node.DZ["Combo 1"])
            assert bent.deflection(node.X, 0.0) == pytest.approx(found, rel=0.01)


@pytest.mark.parametrize(
    ("left", "back"), [(FREE, FREE), (FREE, HELD), (Edge(0, inf), FREE), (HELD, FREE)]
)
def test_what_nothing_holds_is_refused(left: Edge, back: Edge) -> None:
    with pytest.raises(PlateNotHeldError):
        bend_plate(Plate(900.0, 300.0, SHEET, left, FREE, back=back, pressure=Q))


def test_stiffness_of_a_board() -> None:
    source = Source("a maker's own")

    def figure(value: float) -> Figure:
        return Figure(value, "N/mm2", source)

    board = Mechanics(Family.PLYWOOD, figure(9000), figure(6000), panel_shear=figure(600))
    share = 18**3 / 12
    assert stiffness_of(board, 18.0) == Stiffness(9000 * share, 6000 * share, 0.0, 600 * share)
    across = stiffness_of(board, 18.0, along=False)
    assert across == Stiffness(6000 * share, 9000 * share, 0.0, 600 * share)
    assert stiffness_of(Mechanics(Family.MDF, figure(3000)), 18.0) is None
