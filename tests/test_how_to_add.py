"""What must know a new joint or role does, as "How to add" in DEVELOPERS.md has it.

Each test names what was forgotten.
"""

from __future__ import annotations

import pytest

from rodwright.unit import JointKind


@pytest.mark.parametrize("kind", JointKind)
def test_a_kind_of_joint_says_whether_parts_touch_and_whether_it_leaves_play(
    kind: JointKind,
) -> None:
    assert kind.meets in (True, False)
    assert kind.free in (True, False)
