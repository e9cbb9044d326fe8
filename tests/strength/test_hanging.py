"""T = W e/h by hand, and what follows from it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.specs import unit_from
from rodwright.mass import centre_of_mass, unit_weight
from rodwright.strength.hanging import hanging, measured, rail
from rodwright.strength.hanging_fixings import Hung, in_masonry
from rodwright.strength.paths import GRAVITY
from rodwright.unit.loading import Loading

CABINET = "size: {width: 800, height: 720, depth: 320}\nhung: true\ncarcass: {stock: ply}\n"


def test_pull_by_hand() -> None:
    """600 N, 160 mm from the wall, fixings 640 mm up: 600 x 160/640 = 150 N."""
    assert Hung(600.0, 160.0, 640.0, 800.0).pull == pytest.approx(150.0)


def test_how_an_empty_cabinet_hangs() -> None:
    unit = replace(unit_from(CABINET), loading=Loading())
    found = measured(unit)
    assert found.weight == pytest.approx(unit_weight(unit) * GRAVITY)
    assert found.out == pytest.approx(320 - centre_of_mass(unit)[1], abs=0.5)
    assert (found.height, found.width) == (670.0, 800.0)


def test_plugs_by_hand() -> None:
    """(150 + 600/2)/300 = 1.5, two at least; with 2400 N at 160/640: (600 + 1200)/300 = 6, and 700
    leave room for 8."""
    assert in_masonry(Hung(600.0, 160.0, 640.0, 800.0)).figure == 2
    result = in_masonry(Hung(2400.0, 160.0, 640.0, 800.0))
    assert (result.figure, result.limit) == (6, 8)
    assert result.holds
    heavy = in_masonry(Hung(6000.0, 160.0, 640.0, 800.0))
    assert (heavy.figure, heavy.limit) == (15, 8)
    assert [(each.figure, each.holds) for each in heavy.remedies] == [(8, True), (5, True)]


def test_a_rail_by_hand() -> None:
    """240 N over 764 mm: 240 x 764/8/(100 x 22^2/6) = 2.841 N/mm2."""
    result = rail(unit_from(CABINET), Hung(1000.0, 160.0, 1000 * 160 / 240, 800.0))
    assert result.figure == pytest.approx(240 * 764 / 8 / (100 * 22**2 / 6))
    assert result.figure == pytest.approx(2.841, abs=0.001)


def test_what_stands_does_not_hang() -> None:
    assert not list(hanging(unit_from(CABINET.replace("hung: true\n", ""))))
