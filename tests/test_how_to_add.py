"""What must know a new joint or role does, as "How to add" in DEVELOPERS.md has it.

Each test names what was forgotten.
"""

from __future__ import annotations

import pytest

from rodwright.unit import JointKind, Role
from rodwright.unit.roles import TRAITS


@pytest.mark.parametrize("kind", JointKind)
def test_a_kind_of_joint_says_whether_parts_touch_and_whether_it_leaves_play(
    kind: JointKind,
) -> None:
    assert kind.meets in (True, False)
    assert kind.free in (True, False)


@pytest.mark.parametrize("role", Role)
def test_a_role_has_its_row_of_traits_and_a_mark_of_its_own(role: Role) -> None:
    assert role in TRAITS, f"{role!r} has no row in unit/roles.py"
    assert [each for each in Role if TRAITS[each].mark == TRAITS[role].mark] == [role]
