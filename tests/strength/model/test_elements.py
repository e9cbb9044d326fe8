"""Plates, bars and joints against closed forms."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from Pynite import FEModel3D

from rodwright.strength.model.elements import NO_MATERIAL, Link, Plate
from rodwright.strength.model.sheet import Sheet
from rodwright.strength.model.stiffness import (
    Bar,
    bar_stiffness,
    between,
    carried,
    joint_stiffness,
)

Nodes = dict[tuple[int, int], Any]
CASE = "Combo 1"


def _sheet(along: float, across: float, shear: float, rolling: float, thick: float) -> Sheet:
    return Sheet(
        (along * thick, across * thick),
        shear * thick,
        (along * thick**3 / 12, across * thick**3 / 12),
        shear * thick**3 / 12,
        (5 / 6 * rolling * thick, 5 / 6 * rolling * thick),
    )


def _plate(size: tuple[float, float], count: tuple[int, int], sheet: Sheet) -> tuple[Any, Nodes]:
    model = FEModel3D()
    model.add_material(NO_MATERIAL, 1.0, 1.0, 0.0, 1.0)
    nodes: Nodes = {}
    known: dict[Any, Any] = {}
    for i in range(count[0] + 1):
        for j in range(count[1] + 1):
            name = f"{i},{j}"
            model.add_node(name, size[0] * i / count[0], size[1] * j / count[1], 0.0)
            nodes[i, j] = model.nodes[name]
    for i in range(count[0]):
        for j in range(count[1]):
            corners = (nodes[i, j], nodes[i + 1, j], nodes[i + 1, j + 1], nodes[i, j + 1])
            model.quads[f"{i},{j}"] = Plate(f"{i},{j}", corners, sheet, model, known)
    return model, nodes


def _share(at: int, last: int) -> float:
    return 0.5 if at in {0, last} else 1.0


def test_a_square_plate_on_four_edges_bends_as_navier_says() -> None:
    # Timoshenko and Woinowsky-Krieger, table 8: w = 0.00406 q a^4 / D.
    side, count, load, thick = 1000.0, 12, 0.001, 18.0
    sheet = _sheet(9000.0, 9000.0, 4500.0, 4500.0, thick)
    model, nodes = _plate((side, side), (count, count), sheet)
    area = (side / count) ** 2
    for (i, j), node in nodes.items():
        if i in {0, count} or j in {0, count}:
            model.def_support_spring(node.name, "DZ", 1e8)
        model.def_support(node.name, True, True, False, False, False, True)
        force = -load * area * _share(i, count) * _share(j, count)
        model.add_node_load(node.name, "FZ", force)
    model.analyze(check_stability=False)
    expected = -0.00406235 * load * side**4 / sheet.bending[0]
    assert nodes[6, 6].DZ[CASE] == pytest.approx(expected, rel=2e-3)


def test_a_strip_bends_along_its_grain_as_a_beam_with_shear() -> None:
    length, width, load, count = 800.0, 300.0, 0.3, 4
    model, nodes = _plate((length, width), (count, 2), _sheet(9000.0, 400.0, 600.0, 60.0, 18.0))
    step = length / count
    for (i, j), node in nodes.items():
        share = 0.25 if j in {0, 2} else 0.5
        if i in {0, count}:
            model.def_support_spring(node.name, "DZ", 1e9)
        model.def_support(node.name, True, True, False, False, False, True)
        model.add_node_load(node.name, "FZ", -load * step * share * _share(i, count))
        if i in {0, count}:
            model.add_node_load(
                node.name, "MY", (1 if i == 0 else -1) * load * step**2 / 12 * share
            )
    model.analyze(check_stability=False)
    bending, shear = 9000.0 * width * 18.0**3 / 12, 5 / 6 * 60.0 * width * 18.0
    expected = 5 * load * length**4 / (384 * bending) + load * length**2 / (8 * shear)
    assert -nodes[2, 1].DZ[CASE] == pytest.approx(expected, rel=1e-6)


def test_a_panel_in_pure_shear_gives_way_by_its_shear_modulus() -> None:
    model, nodes = _plate((1000.0, 2000.0), (4, 8), _sheet(9000.0, 4000.0, 600.0, 60.0, 6.0))
    force = 1000.0
    for (_, j), node in nodes.items():
        # A panel that can neither stretch nor bend in its plane: shear alone is left.
        model.def_support(node.name, j == 0, True, True, True, True, False)
    for i in range(5):
        model.add_node_load(nodes[i, 8].name, "FX", force / 4 * _share(i, 4))
    model.analyze(check_stability=False)
    expected = force * 2000.0 / (600.0 * 6.0 * 1000.0)
    swayed = sum(nodes[i, 8].DX[CASE] * _share(i, 4) for i in range(5)) / 4
    assert swayed == pytest.approx(expected, rel=0.01)


def test_a_plate_that_moves_and_turns_as_a_whole_resists_nothing() -> None:
    model, nodes = _plate((300.0, 200.0), (1, 1), _sheet(9000.0, 4000.0, 600.0, 60.0, 18.0))
    for number, node in enumerate(model.nodes.values()):
        node.ID = number
    stiff = next(iter(model.quads.values())).Ke()
    corners = [nodes[each] for each in ((0, 0), (1, 0), (1, 1), (0, 1))]
    for way in np.eye(6):
        moved = np.concatenate(
            [carried((node.X, node.Y, node.Z), (0.0, 0.0, 0.0)) @ way for node in corners]
        )
        assert stiff @ moved == pytest.approx(np.zeros(24), abs=1e-6 * np.abs(stiff).max())


@pytest.mark.parametrize("axis", [0, 1, 2])
@pytest.mark.parametrize("across", [0, 1])
def test_a_cantilever_bends_and_shears(axis: int, across: int) -> None:
    bar = Bar(1e6, 1e8, (2e9, 5e9), (3e5, 4e5))
    length, force = 700.0, 50.0
    end = tuple(length if each == axis else 0.0 for each in range(3))
    model = FEModel3D()
    model.add_node("fixed", 0.0, 0.0, 0.0)
    model.add_node("free", *end)
    stiff = bar_stiffness(bar, axis, length)
    link = Link("bar", model.nodes["fixed"], model.nodes["free"], stiff, model)
    model.springs["bar"] = link
    model.def_support("fixed", True, True, True, True, True, True)
    along = [each for each in range(3) if each != axis][across]
    model.add_node_load("free", ("FX", "FY", "FZ")[along], force)
    model.analyze(check_stability=False)
    node = model.nodes["free"]
    moved = (node.DX, node.DY, node.DZ)[along][CASE]
    bending, shear = bar.bending[across], bar.shear[across]
    assert moved == pytest.approx(force * length**3 / (3 * bending) + force * length / shear)
    # Reactions hold the force and its moment.
    held = model.nodes["fixed"]
    assert (held.RxnFX, held.RxnFY, held.RxnFZ)[along][CASE] == pytest.approx(-force)
    moment = max((held.RxnMX, held.RxnMY, held.RxnMZ), key=lambda each: abs(each[CASE]))
    assert abs(moment[CASE]) == pytest.approx(force * length)


def test_a_joint_turns_by_its_own_stiffness_and_holds_stiffly_what_is_off_its_nodes() -> None:
    model = FEModel3D()
    model.add_node("fixed", 0.0, 0.0, 0.0)
    model.add_node("free", 20.0, 0.0, 0.0)
    at = (10.0, 0.0, 0.0)
    stiff = between(
        joint_stiffness((1e9, 1e9, 1e9), (1e9, 2e5, 1e9)), (at, at), ((0, 0, 0), (20.0, 0, 0))
    )
    model.springs["joint"] = Link("joint", model.nodes["fixed"], model.nodes["free"], stiff, model)
    model.def_support("fixed", True, True, True, True, True, True)
    model.add_node_load("free", "FZ", -30.0)
    model.analyze(check_stability=False)
    node = model.nodes["free"]
    turned = 30.0 * 10.0 / 2e5
    assert node.RY[CASE] == pytest.approx(turned)
    assert node.DZ[CASE] == pytest.approx(-turned * 10.0, rel=1e-4)
