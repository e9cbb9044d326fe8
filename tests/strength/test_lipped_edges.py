"""Levels that a lipping twists, against the section by hand and a plate with a stiffened edge."""

from __future__ import annotations

from dataclasses import replace
from math import cosh, sqrt

import pytest

from kit.carcasses import BOARD, STIFF, between_sides, books, carcass, level, stress, strip
from rodwright.amounts import GRAVITY
from rodwright.strength.lipped_edges import lipped_edges
from rodwright.strength.plates import Lipping, Plate, Stiffness, bend_plate
from rodwright.strength.results import Result
from rodwright.strength.sections import Rectangle, Section, torsion_factor
from rodwright.unit import JointKind, Part, Stock, Unit

TWISTS = replace(BOARD, mechanics=replace(STIFF, panel_shear=stress(700.0)))
LOAD = 30 * GRAVITY / 1000
GLUED = JointKind.EDGE_GLUED


def shelf(*strips: Part, stock: Stock = TWISTS, kind: JointKind = GLUED, **more: object) -> Unit:
    """A shelf 1200 mm long, 300 mm deep and 20 mm thick between two sides, under 30 kg/m."""
    parts, joints = between_sides(1200, level("SH1", (20, 1220), 500, stock=stock))
    glued = [(each.ref, "SH1", kind) for each in strips]
    return carcass([*parts, *strips], [*joints, *glued], books("SH1", (20, 1220), 30), **more)


def lip(low: float, high: float, *, back: bool = False, stock: Stock = TWISTS) -> Part:
    y = (300.0, 320.0) if back else (-20.0, 0.0)
    return strip("LP2" if back else "LP1", (20, 1220), low, high, y, stock=stock)


def told(unit: Unit) -> Result:
    (found,) = lipped_edges(unit)
    assert found.figure is not None
    return found


def test_by_hand() -> None:
    found = told(shelf(lip(480, 520), years=0.0))
    assert found.what == "back edge lower than its front with the lipping"
    section = Section(
        (
            Rectangle(300, 20, 10_000.0, 700.0, 20, 20),
            Rectangle(20, 40, 10_000.0, 700.0, 0, 0),
        )
    )
    torsion = 700 * (torsion_factor(15) * 300 * 20**3 + torsion_factor(2) * 40 * 20**3)
    assert section.torsion == pytest.approx(torsion)
    board, edge = 10_000 * 300 * 20**3 / 12, 10_000 * 20 * 40**3 / 12
    e = section.shear_centre
    warping = board * (300**2 / 12 + (170 - e) ** 2) + edge * (20**2 / 12 + (10 - e) ** 2)
    held = 1 - 1 / cosh(600 / sqrt(warping / torsion))
    per_torque = (1200**2 / 8 - warping / torsion * held) / torsion
    assert found.figure == pytest.approx(LOAD * (160 - e) * per_torque * 320, rel=1e-9)
    assert found.limit is None


def test_as_a_plate_with_a_stiffened_edge() -> None:
    """The lipping stands astride the shelf, so that its own EI is all that it adds; the plate is
    stiff across, as a section is taken to be."""
    found = told(shelf(lip(490, 530), years=0.0))
    share = 20**3 / 12
    bent = bend_plate(
        Plate(
            1200.0,
            310.0,
            Stiffness(10_000 * share, 200_000 * share, 0.0, 700 * share),
            front_lipping=Lipping(
                10_000 * 20 * (40**3 - 20**3) / 12,
                700 * (torsion_factor(2) * 40 * 20**3 - 20 * 20**3 / 3),
            ),
            pressure=LOAD / 310,
        )
    )
    edges = bent.deflection(600.0, 310.0) - bent.deflection(600.0, 0.0)
    assert found.figure == pytest.approx(edges, rel=0.05)


def test_years_twist_it_further() -> None:
    now, later = (told(shelf(lip(480, 520), years=years)) for years in (0.0, 10.0))
    assert now.figure is not None
    assert later.what == "back edge lower than its front with the lipping after 10 years"
    assert later.figure == pytest.approx(now.figure * (1 + 0.8 * 0.8))


def test_a_back_strip_lowers_the_front() -> None:
    assert told(shelf(lip(480, 520, back=True), years=0.0)).what.startswith("front edge lower")


def test_layers_twist_as_one_board() -> None:
    upper = level("SH2", (20, 1220), 520, stock=TWISTS)
    parts, joints = between_sides(1200, level("SH1", (20, 1220), 500, stock=TWISTS), upper)
    strips = lip(480, 540)
    unit = carcass(
        [*parts, strips],
        [*joints, ("SH1", "SH2", JointKind.FACE_GLUED), ("LP1", "SH1", GLUED)],
        books("SH2", (20, 1220), 30),
        years=0.0,
    )
    torsion = next(each.value for each in told(unit).inputs if each.symbol == "GJ")
    board, edge = torsion_factor(7.5) * 300 * 40**3, torsion_factor(3) * 60 * 20**3
    assert torsion == pytest.approx(700 * (board + edge))


@pytest.mark.parametrize(
    "unit",
    [
        shelf(),
        shelf(lip(500, 520), lip(500, 520, back=True)),
        shelf(lip(480, 520), kind=JointKind.SCREWED),
        shelf(lip(480, 520), stock=BOARD),
    ],
    ids=["no strip", "both edges", "screwed", "shear modulus not known"],
)
def test_nothing_is_told(unit: Unit) -> None:
    assert not list(lipped_edges(unit))
