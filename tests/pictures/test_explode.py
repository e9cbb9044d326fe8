"""Exploded views: what moves where, and that nothing collides."""

from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kit import samples
from rodwright.geometry import Box, Vector
from rodwright.jobs.new import model_path
from rodwright.pictures.explode import GAPS, explode
from rodwright.setout import set_out
from rodwright.unit import Blank, Grain, Joint, JointKind, Part, Placement, Role, Unit
from rodwright.wishes import read_spec

NONE: Vector = (0.0, 0.0, 0.0)


def _moved(unit: Unit) -> dict[str, Box]:
    moves = explode(unit)
    return {
        part.ref: Box(
            tuple(a + b for a, b in zip(part.bounds().low, moves[part.ref], strict=True)),
            tuple(a + b for a, b in zip(part.bounds().high, moves[part.ref], strict=True)),
        )
        for part in unit.parts
    }


def _overlaps(unit: Unit) -> list[tuple[str, str]]:
    return [
        (first, second)
        for (first, a), (second, b) in combinations(_moved(unit).items(), 2)
        if all(min(a.high[i], b.high[i]) - max(a.low[i], b.low[i]) > 1e-3 for i in range(3))
    ]


def _board(ref: str, box: Box, withdraw: Vector = NONE) -> Part:
    blank = Blank(*box.size, samples.PLYWOOD, Grain.LENGTHWISE)
    placement = Placement(box.low, samples.X, samples.Y)
    return Part(ref, ref, Role.SHELF, "Group", blank, placement, withdraw=withdraw)


def test_bookcase_moves_as_worked_out_by_hand() -> None:
    # Longest side 1000 mm; shelves reach 6 mm into the sides.
    moves = explode(samples.bookcase())
    across, back = 1000.0 * GAPS[0], 1000.0 * GAPS[1]
    assert moves["SD1"] == pytest.approx((-(6.0 + across), 0.0, 0.0))
    assert moves["SD2"] == pytest.approx((6.0 + across, 0.0, 0.0))
    assert moves["BK1"] == pytest.approx((0.0, back, 0.0))
    assert moves["RL1"] == pytest.approx((0.0, -back, 0.0))
    for ref in ("BT1", "SH1", "TP1"):
        assert moves[ref] == NONE


def test_bookcase_is_left_with_no_overlap() -> None:
    unit = samples.bookcase()
    assert [(a.ref, b.ref) for a, b in combinations(unit.parts, 2) if _reach(a, b)] != []
    assert _overlaps(unit) == []


def _reach(first: Part, second: Part) -> bool:
    a, b = first.bounds(), second.bounds()
    return all(min(a.high[i], b.high[i]) - max(a.low[i], b.low[i]) > 1e-3 for i in range(3))


@pytest.mark.parametrize("name", ["boot-room", "library-wall", "reading-alcove", "record-cabinet"])
def test_models_come_apart(name: str) -> None:
    unit = set_out(read_spec(model_path(name)))
    moves = explode(unit)
    assert _overlaps(unit) == []
    for part in unit.parts:
        pull = sum(a * b for a, b in zip(part.withdraw, moves[part.ref], strict=True))
        assert pull > 0 or part.withdraw == NONE, part.ref


def test_lippings_stop_between_shelf_and_face_frame() -> None:
    parts = (
        _board("SH1", Box((0, 18, 0), (800, 200, 18))),
        _board("LP1", Box((0, 0, 0), (400, 18, 18)), samples.MINUS_Y),
        _board("RL1", Box((0, -22, -20), (400, 0, 18)), samples.MINUS_Y),
    )
    unit = Unit("Lipped", Box((0, -22, -20), (400, 200, 18)), parts)
    moves = explode(unit)
    gap = 400.0 * GAPS[1]
    assert moves["SH1"] == NONE
    assert moves["LP1"] == pytest.approx((0.0, -gap, 0.0))
    assert moves["RL1"] == pytest.approx((0.0, -2 * gap, 0.0))


def test_glued_layers_part_upwards_and_stay_in_their_space() -> None:
    layers = [
        _board("A1", Box((0, 0, 0), (800, 200, 18))),
        _board("A2", Box((0, 0, 18), (800, 200, 36)), samples.Z),
        _board("B1", Box((0, 0, 200), (800, 200, 218))),
    ]
    glued = Joint(JointKind.FACE_GLUED, "A1", "A2", (200.0, 100.0, 18.0))
    unit = Unit("Layers", Box((0, 0, 0), (800, 200, 218)), tuple(layers), (glued,))
    moves = explode(unit)
    # The gap between layers is half as much again as their thickness.
    assert moves["A2"] == pytest.approx((0.0, 0.0, 27.0))
    assert moves["A1"] == moves["B1"] == NONE


@settings(max_examples=40)
@given(
    st.lists(
        st.tuples(
            st.tuples(*[st.integers(0, 5)] * 3),
            st.tuples(*[st.sampled_from([60.0, 100.0, 106.0])] * 3),
            st.sampled_from([NONE, samples.X, samples.MINUS_X, samples.Y, samples.Z]),
        ),
        min_size=2,
        max_size=12,
        unique_by=lambda item: item[0],
    )
)
def test_anything_comes_apart(cells: list[tuple[Vector, Vector, Vector]]) -> None:
    parts = []
    for number, (cell, size, withdraw) in enumerate(cells):
        low = tuple(100.0 * c for c in cell)
        high = tuple(a + b for a, b in zip(low, size, strict=True))
        parts.append(_board(f"P{number}", Box(low, high), withdraw))
    unit = Unit("Boxes", Box((0, 0, 0), (606, 606, 606)), tuple(parts))
    assert _overlaps(unit) == []
