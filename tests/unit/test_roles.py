"""Roles: one table says what is so of each."""

from __future__ import annotations

from rodwright.unit import (
    CASE,
    DOORS,
    DRAWERS,
    FACE_FRAME,
    LEVELS,
    PANELS,
    STANDS_OUT,
    TRAITS,
    UPRIGHTS,
    Assembly,
    Role,
)


def test_every_role_has_a_row_in_the_order_of_roles() -> None:
    assert tuple(TRAITS) == tuple(Role)


def test_marks_tell_roles_apart_and_leave_room_for_numbers() -> None:
    marks = [traits.mark for traits in TRAITS.values()]
    assert len(set(marks)) == len(marks)
    assert all(mark.isalpha() and mark.isupper() for mark in marks)


def test_panels_are_either_upright_or_level_and_of_the_carcass() -> None:
    assert set(UPRIGHTS).isdisjoint(LEVELS)
    assert set(PANELS) == {*UPRIGHTS, *LEVELS}
    assert set(CASE) <= set(PANELS)
    assert {TRAITS[role].of for role in PANELS} == {Assembly.CARCASS}


def test_what_stands_out_is_no_part_of_carcass_frame_or_base() -> None:
    assert {TRAITS[role].of for role in STANDS_OUT} == {
        Assembly.DOOR,
        Assembly.DRAWER,
        Assembly.SURROUND,
    }
    assert set(STANDS_OUT).isdisjoint({*PANELS, *FACE_FRAME})
    assert {*DOORS, *DRAWERS} < set(STANDS_OUT)
