"""Parts laid with the worked side up: turned over, never mirrored, and nothing moved in space."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from kit.points import Array, cut_away
from kit.samples import ASH, MINUS_X, MINUS_Y, X, Y, Z, bookcase, worked_part
from kit.specs import unit_from
from kit.strategies import placements, shapes
from rodwright.checks import check_parts
from rodwright.jobs.new import model_names, model_path
from rodwright.mass import mass_of, unit_weight
from rodwright.setout import set_out
from rodwright.unit import (
    Bevel,
    Blank,
    Easing,
    Edging,
    Grain,
    Hole,
    Housing,
    Mitre,
    Part,
    Placement,
    PocketHole,
    Rebate,
    Role,
    ShapeKey,
    Surface,
    Turn,
    Working,
)
from rodwright.unit.laid import laid, laid_unit, side_up
from rodwright.unit.laid import turned as turned_part
from rodwright.wishes import read_spec

TURNS = (Turn(), Turn(True, True), Turn(True, False, True), Turn(False, True, True))


LEVEL = Placement((0.0, 0.0, 0.0), X, Y)


POCKETS_THAT_CROSS_AT_AN_END: ShapeKey = (
    (80.0, 40.0, 17.4),
    (
        Rebate(Surface.FACE, Surface.FACE_EDGE, 0.5, 0.5),
        PocketHole(Surface.FACE, Surface.NEAR_END, 3.1, 8.9, 10.3, 4.2, 2.1, 20.0),
        PocketHole(Surface.REVERSE, Surface.NEAR_END, 3.1, 8.9, 10.3, 4.2, 2.1, 20.0),
    ),
)
POCKETS_THAT_CROSS: ShapeKey = (
    (80.0, 40.0, 10.0),
    (
        Rebate(Surface.FACE, Surface.FACE_EDGE, 0.5, 0.5),
        PocketHole(Surface.FACE, Surface.FACE_EDGE, 3.1, 4.2, 6.4, 4.2, 2.1, 20.0),
        PocketHole(Surface.REVERSE, Surface.FACE_EDGE, 3.1, 4.0, 6.4, 4.2, 2.1, 20.0),
    ),
)


def part_of(shape: ShapeKey, placement: Placement = LEVEL) -> Part:
    size, workings = shape
    blank = Blank(*size, ASH, Grain.LENGTHWISE)
    return Part("X1", "Piece", Role.SHELF, "Sample", blank, placement, workings)


def piece(*workings: Working, shows: tuple[Surface, ...] = (Surface.FACE,)) -> Part:
    part = part_of(((400.0, 120.0, 20.0), workings))
    return replace(part, blank=replace(part.blank, show_surfaces=shows))


def in_space(part: Part, points: Array) -> Array:
    matrix = np.array(part.placement.matrix())
    return points @ matrix[:3, :3].T + matrix[:3, 3]


def in_part(part: Part, points: Array) -> Array:
    matrix = np.array(part.placement.matrix())
    return (points - matrix[:3, 3]) @ matrix[:3, :3]


@given(shapes(), placements(), st.sampled_from(TURNS), st.integers(0, 2**32 - 1))
@example(POCKETS_THAT_CROSS, LEVEL, Turn(True, True, False), 0)
@example(POCKETS_THAT_CROSS_AT_AN_END, LEVEL, Turn(True, True, False), 0)
def test_a_turned_part_is_the_same_piece_in_the_same_place(
    shape: ShapeKey, placement: Placement, turn: Turn, seed: int
) -> None:
    part = part_of(shape, placement)
    turned = turned_part(part, turn)
    matrix = np.array(turned.placement.matrix())
    assert np.linalg.det(matrix[:3, :3]) == pytest.approx(1.0)  # -1 would be a mirror image
    before, after = mass_of(part.shape), mass_of(turned.shape)
    # Rounds that cross aslant are summed numerically, along other lines once they are turned:
    # in six thousand shapes the two sums were never further apart than 1e-9.
    assert after.volume == pytest.approx(before.volume, rel=1e-8)
    assert turned.placement.to_unit(after.centroid) == pytest.approx(
        part.placement.to_unit(before.centroid), abs=1e-6
    )
    size = np.array(part.blank.size)
    points = np.random.default_rng(seed).uniform(0, 1, (400, 3)) * size
    moved = in_part(turned, in_space(part, points))
    for old, new in zip(part.workings, turned.workings, strict=True):
        assert type(old) is type(new)
        assert np.array_equal(cut_away(points, size, old), cut_away(moved, size, new))


@pytest.mark.parametrize("axes", [(True, False, False), (False, True, False), (True, True, True)])
def test_no_turn_mirrors(axes: tuple[bool, bool, bool]) -> None:
    with pytest.raises(ValueError, match="two axes or none"):
        Turn(*axes)


@given(shapes(), placements())
def test_the_side_with_the_most_workings_is_up(shape: ShapeKey, placement: Placement) -> None:
    (part,) = laid([part_of(shape, placement)])
    sides = [working.worked_from(part.blank.size) for working in part.workings]
    assert sides.count(Surface.FACE) >= sides.count(Surface.REVERSE)
    assert laid([part]) == (part,)


@pytest.mark.parametrize(
    ("working", "face"),
    [
        (Hole(Surface.REVERSE, (50.0, 50.0), 5.0, 9.0), Surface.REVERSE),
        (Hole(Surface.REVERSE, (50.0, 50.0), 5.0), None),  # bored from either side
        (Hole(Surface.REVERSE, (50.0, 50.0), 5.0, 20.0), None),
        (Hole(Surface.FAR_END, (50.0, 10.0), 5.0, 9.0), None),
        (Rebate(Surface.BACK_EDGE, Surface.REVERSE, 5.0, 9.0), Surface.REVERSE),
        (Rebate(Surface.BACK_EDGE, Surface.FAR_END, 5.0, 9.0), None),
        (Easing(Surface.FACE_EDGE, Surface.FACE, 3.0), Surface.FACE),
        (Bevel(Surface.FACE, Surface.FAR_END, 5.0, 9.0), Surface.FACE),
        (Bevel(Surface.FACE, Surface.FAR_END, 5.0, 20.0), None),  # sawn, the whole end off
        (Mitre(Surface.FAR_END, 45.0, Surface.FACE), None),
        (Mitre(Surface.FAR_END, 45.0, Surface.FACE_EDGE), None),
    ],
)
def test_which_face_a_working_is_cut_from(working: Working, face: Surface | None) -> None:
    assert working.worked_from((400.0, 120.0, 20.0)) is face


def test_of_faces_worked_alike_the_one_that_shows_is_up() -> None:
    both = [Housing(surface, 100.0, 18.0, 6.0) for surface in (Surface.FACE, Surface.REVERSE)]
    assert side_up(piece(*both)) is Surface.FACE
    assert side_up(piece(*both, shows=(Surface.REVERSE,))) is Surface.REVERSE
    assert side_up(piece(*both, shows=(Surface.FACE, Surface.REVERSE))) is Surface.FACE
    assert side_up(piece(shows=(Surface.REVERSE,))) is Surface.REVERSE
    assert side_up(piece(both[1], shows=(Surface.FACE,))) is Surface.REVERSE


def test_facing_sides_are_measured_from_the_same_end() -> None:
    """A housing 386 from the bottom has x = 386 on both, whichever edge y then runs from."""
    housing = Housing(Surface.REVERSE, 386.0, 18.0, 6.0)
    blank = Blank(2020.0, 294.0, 18.0, ASH, Grain.LENGTHWISE)
    left, right = (
        Part(ref, "Side", Role.SIDE, "Carcass", blank, placement, (housing,))
        for ref, placement in (
            ("SD1", Placement((18.0, 0.0, 0.0), Z, Y)),
            ("SD2", Placement((982.0, 294.0, 0.0), Z, MINUS_Y)),
        )
    )
    for part, up in ((left, X), (right, MINUS_X)):
        (lying,) = laid([part])
        assert lying.placement.thickness == up
        assert lying.workings == (replace(housing, surface=Surface.FACE),)


def test_everything_on_a_surface_turns_with_it() -> None:
    part = worked_part()
    blank = replace(
        part.blank, show_surfaces=(Surface.FACE, Surface.NEAR_END), trim_at=(Surface.BACK_EDGE,)
    )
    edging = Edging(Surface.FACE_EDGE, "birch veneer", 0.6)
    turned = turned_part(replace(part, blank=blank, edged=(edging,)), Turn(False, True, True))
    assert turned.blank.show_surfaces == (Surface.REVERSE, Surface.NEAR_END)
    assert turned.blank.trim_at == (Surface.FACE_EDGE,)
    assert [each.surface for each in turned.edged] == [Surface.BACK_EDGE]


def test_equal_pieces_stay_equal_whichever_way_they_stand() -> None:
    unit = laid_unit(bookcase())
    assert unit.part("SD1").shape == unit.part("SD2").shape
    assert unit.part("SD1").workings == tuple(
        replace(each, surface=Surface.FACE) for each in bookcase().part("SD1").workings
    )
    assert laid_unit(unit) == unit


@pytest.mark.parametrize("name", model_names())
def test_a_laid_unit_is_the_same_unit(name: str) -> None:
    unit = unit_from(model_path(name).read_text(encoding="utf-8"))
    lying = laid_unit(unit)
    assert [part.ref for part in lying.parts] == [part.ref for part in unit.parts]
    for before, after in zip(unit.parts, lying.parts, strict=True):
        assert after.bounds().low == pytest.approx(before.bounds().low, abs=1e-6)
        assert after.bounds().high == pytest.approx(before.bounds().high, abs=1e-6)
    assert unit_weight(lying) == pytest.approx(unit_weight(unit), rel=1e-12)
    found, expected = check_parts(lying), check_parts(unit)
    assert [(each.rule, each.message, each.parts) for each in found] == [
        (each.rule, each.message, each.parts) for each in expected
    ]
    assert laid_unit(lying) == lying


@pytest.mark.parametrize("name", model_names())
def test_no_ready_model_has_a_part_worked_face_down(name: str) -> None:
    for part in set_out(read_spec(model_path(name))).parts:
        sides = [working.worked_from(part.blank.size) for working in part.workings]
        assert sides.count(Surface.FACE) >= sides.count(Surface.REVERSE), part.ref
