"""Panels of a back: edges, slip and play as they are set out."""

from __future__ import annotations

import pytest

from kit.specs import unit_from
from rodwright.strength import bracing
from rodwright.strength.back_fixings import EACH_CARRIES, back_fixings
from rodwright.strength.backs import panels

SIZE = "size: {width: 900, height: 1500, depth: 300}\n"


def test_a_screwed_back_by_the_formulas() -> None:
    """Fixings not quite evenly spaced: within a tenth of the formula for even spacing."""
    unit = unit_from(SIZE, carcass={"stock": "ply"}, back={"stock": "thin"})
    (panel,) = panels(unit)
    assert panel.held
    assert panel.play == 0.0
    assert panel.modulus is not None
    shear = bracing.shear_sway(1.0, panel.width, panel.height, 6.0, panel.modulus)
    spacing = sum(edge.spacing for edge in panel.edges) / 4
    slip = bracing.slip_sway(1.0, panel.width, panel.height, spacing, panel.edges[0].slip)
    assert panel.give == pytest.approx(shear + slip, rel=0.1)


def test_edges_by_hand() -> None:
    """Each edge adds (s/k) L/B^2, for four screws in 900: 225/k x 900/900^2."""
    unit = unit_from(SIZE, carcass={"stock": "ply"}, back={"stock": "thin"})
    (panel,) = panels(unit)
    by_hand = panel.height / (panel.modulus * 6.0 * panel.width)
    for joint in unit.joints:
        if joint.second == panel.part.ref and joint.fixings:
            (fixing,) = joint.fixings
            upright = abs(joint.at[2] - 750) < 100
            length = panel.height if upright else panel.width
            slip = 680**1.5 * fixing.diameter / 23
            edge = length / fixing.count / slip * length / panel.width**2
            by_hand += edge
    assert panel.give == pytest.approx(by_hand, rel=0.01)


def test_a_grooved_back_has_its_clearance_for_play() -> None:
    """0.8 mm left all round: 2 c (1 + H/B), H and B those of the panel."""
    back = {"stock": "thin", "fixing": "grooved", "clearance": 0.8}
    unit = unit_from(SIZE, carcass={"stock": "ply"}, back=back)
    (panel,) = panels(unit)
    assert panel.loose
    by_hand = 2 * 0.8 * (1 + panel.height / panel.width)
    assert panel.play == pytest.approx(by_hand, rel=1e-6)


def test_what_each_screw_carries_by_hand() -> None:
    """180 N over the panel's width, times the widest spacing."""
    unit = unit_from(SIZE, carcass={"stock": "ply"}, back={"stock": "thin"})
    found = panels(unit)
    (result,) = back_fixings(unit, found, 180.0)
    assert result.what == EACH_CARRIES
    widest = max(edge.spacing for edge in found[0].edges)
    assert result.figure == pytest.approx(180 / found[0].width * widest)
    assert result.holds
