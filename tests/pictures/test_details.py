"""What is shown enlarged of a large unit: whole, and with every ref."""

from __future__ import annotations

import pytest

from rodwright.jobs.new import model_path
from rodwright.pictures.details import FOLLOWED, details
from rodwright.pictures.explode import explode
from rodwright.setout import set_out
from rodwright.unit import Role, Unit
from rodwright.wishes import read_spec


@pytest.fixture(scope="module")
def wall() -> Unit:
    return set_out(read_spec(model_path("archive-wall")))


def test_a_small_unit_needs_none() -> None:
    unit = set_out(read_spec(model_path("reading-alcove")))
    assert len(unit.parts) <= FOLLOWED
    assert details(unit) == ()


def test_a_column_and_a_drawer_of_a_large_one(wall: Unit) -> None:
    column, drawer = details(wall)
    assert (column.name, drawer.name) == ("column", "drawer")
    roles = [part.role for part in column.unit.parts]
    assert sum(role in (Role.SIDE, Role.DIVIDER) for role in roles) == 2
    # A fifth of the wall: eight shelves, two doors, three fronts; the boxes are left out.
    assert roles.count(Role.SHELF) == sum(p.role is Role.SHELF for p in wall.parts) / 5
    assert roles.count(Role.DOOR) == 2
    assert roles.count(Role.DRAWER_FRONT) == 3
    assert Role.DRAWER_SIDE not in roles
    assert sorted(part.role for part in drawer.unit.parts) == sorted(
        [Role.DRAWER_FRONT, *[Role.DRAWER_SIDE] * 2, *[Role.DRAWER_END] * 2, Role.DRAWER_BOTTOM]
    )


def test_every_part_of_a_detail_is_named_and_says_how_many_there_are(wall: Unit) -> None:
    for detail in details(wall):
        named = sorted(number for _, row in detail.named for number in row)
        assert named == list(range(len(detail.unit.parts)))
        for text, row in detail.named:
            part = detail.unit.parts[row[0]]
            assert text.split(",")[0].split(" ")[0] == part.ref
            alike = [p for p in wall.parts if (p.shape, p.role) == (part.shape, part.role)]
            if len(row) == 1 and len(alike) > 1:
                assert text == f"{part.ref}, 1 of {len(alike)}"


def test_details_come_apart(wall: Unit) -> None:
    for detail in details(wall):
        moves = explode(detail.unit)
        assert set(moves) == {part.ref for part in detail.unit.parts}
        assert sum(any(move) for move in moves.values()) > len(moves) / 2
