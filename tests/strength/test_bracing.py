"""Formulas of what braces a carcass, by hand and against a model of springs."""

from __future__ import annotations

import math

import numpy as np
import pytest

from rodwright.strength import bracing


def test_shear_of_a_panel_by_hand() -> None:
    """OSB/3, Gv = 1080 N/mm2: 1000 N on 2400 x 1200 of 9 mm gives 0.2058 mm."""
    assert bracing.shear_sway(1000, 1200, 2400, 9, 1080) == pytest.approx(0.20576, rel=1e-4)


def test_slip_modulus_by_hand() -> None:
    """350^1.5 x 4/23 = 1138.8 and 350^1.5 x 4^0.8/30 = 661.7."""
    assert bracing.slip_modulus(4, 350, drilled=True) == pytest.approx(1138.76, rel=1e-4)
    assert bracing.slip_modulus(4, 350, drilled=False) == pytest.approx(661.6, rel=1e-3)


def test_buckling_of_a_square_panel() -> None:
    """Square plate: 9.34 pi2 E/(12 (1 - nu2)) (t/b)2."""
    expected = 9.34 * math.pi**2 * 3000 / (12 * 0.91) * (4 / 1000) ** 2
    assert bracing.buckling_stress(1000, 1000, 4, 3000) == pytest.approx(expected)
    longer = bracing.buckling_stress(1000, 2000, 4, 3000)
    assert longer == bracing.buckling_stress(2000, 1000, 4, 3000) < expected


def test_a_loose_panel_jams_where_geometry_says() -> None:
    """The greatest lean of a frame round a panel, found by turning the panel in it."""
    width, height, play = 900.0, 1500.0, 0.8
    lean = 0.0
    for trial in np.linspace(0, 0.01, 20001):
        # Between rails that stay level and uprights that lean by `trial`, turned by `turn`.
        turns = np.linspace(0, trial, 201)
        level = height * np.cos(turns) + width * np.sin(turns) <= height + 2 * play
        aslant = width * np.cos(trial - turns) + height * np.sin(trial - turns)
        if not np.any(level & (aslant <= (width + 2 * play) * np.cos(trial))):
            break
        lean = trial
    assert bracing.play_sway(width, height, play) == pytest.approx(lean * height, rel=0.03)


def _springs(width: float, height: float, count: int, slip: float, push: float) -> float:
    """Sway of a frame of hinged stiff members round a stiff panel, fixed to it by springs all
    round: the least energy over the panel's move across, up and its turn, for every lean."""
    fine = 4 * count
    points = []
    for i in range(fine):
        share = (i + 0.5) / fine - 0.5
        points += [(share * width, side * height / 2, width / fine) for side in (-1, 1)]
        points += [(side * width / 2, share * height, height / fine) for side in (-1, 1)]
    spacing = width / count
    rows, weights = [], []
    for x, z, run in points:
        # Slip across and up: the frame leans by g (x moves g z), the panel by u, v and turn r.
        rows += [[z, -1.0, 0.0, z], [0.0, 0.0, -1.0, -x]]
        weights += [slip * run / spacing] * 2
    matrix = np.array(rows)
    energy = matrix.T @ (matrix * np.array(weights)[:, None])
    moved = np.linalg.solve(energy, [push * height, 0.0, 0.0, 0.0])
    return float(moved[0]) * height


@pytest.mark.parametrize(("width", "height"), [(900.0, 900.0), (600.0, 2000.0), (2400.0, 800.0)])
def test_fastener_slip_against_a_model_of_springs(width: float, height: float) -> None:
    """Members hinged at their corners bend and turn with the panel as they like, so that each
    fastener bears along its edge alone; members that stay straight, as in the model of springs,
    make fasteners bear across it too: the formula, without that, never sways less, and by no
    more than twice."""
    spacing, slip, push = 100.0, 700.0, 300.0
    by_formula = bracing.slip_sway(push, width, height, spacing, slip)
    by_springs = _springs(width, height, int(width / spacing), slip, push)
    assert by_springs <= by_formula * 1.001
    assert by_formula <= 2 * by_springs


def test_frame_and_back_side_by_side_by_hand() -> None:
    """100 N on 2 and 48 N/mm; 8000 N at 2000 mm takes 4 N/mm of that: 100/46."""
    assert bracing.braced_sway(100, 2, 48, 0, 0) == pytest.approx(2.0)
    assert bracing.braced_sway(100, 2, 48, 0, 4) == pytest.approx(100 / 46)
    assert bracing.braced_sway(100, 2, 0, 0, 4) is None
    assert bracing.braced_sway(100, 2, 0, 0, 1) == pytest.approx(100.0)


def test_a_loose_back_bears_after_its_play() -> None:
    """A frame of 20 N/mm sways 5 mm alone; with 3 mm of play to a back of 80: 100 = 20 d +
    80 (d - 3), d = 3.4."""
    assert bracing.braced_sway(100, 20, 80, 6, 0) == pytest.approx(5.0)
    assert bracing.braced_sway(100, 20, 80, 3, 0) == pytest.approx(3.4)
