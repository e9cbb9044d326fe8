"""When doors and drawers open in files that move."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.samples import bookcase
from rodwright.handover.clips import Clip, opening
from rodwright.unit import Slide, Swing

DOOR = Swing(("ST1",), (0.0, 0.0), -110.0)
DRAWER = Slide(("SH1",), (0.0, -300.0, 0.0))


def clip_of(*motions: Swing | Slide) -> Clip:
    return opening(replace(bookcase(), motions=motions))


def test_a_door_opens_gently_waits_and_shuts() -> None:
    clip = clip_of(DOOR)
    (move,) = clip.moves
    assert isinstance(move.motion, Swing)
    assert move.motion.angle == -90.0  # as pictures have doors open
    shares = dict(move.keys)
    assert (shares[0.0], shares[1.5], shares[3.5], shares[5.0], shares[6.0]) == (0, 1, 1, 0, 0)
    assert clip.length == 6.0
    assert shares[0.75] == pytest.approx(0.5)
    assert shares[0.1875] < 0.125 * 0.5  # slower at first
    assert list(shares) == sorted(shares)
    assert all(0 <= each <= 1 for each in shares.values())


def test_a_drawer_behind_a_door_waits_for_it() -> None:
    door, drawer = clip_of(DOOR, DRAWER).moves
    opened, out = dict(door.keys), dict(drawer.keys)
    assert opened[1.5] == 1
    assert out[1.5] == 0
    assert out[3.0] == 1
    # The other way about when they shut; both clips are equally long.
    assert out[6.5] == opened[8.0] == 0
    assert opened[6.5] == 1
    assert door.keys[-1][0] == drawer.keys[-1][0] == 9.0


def test_a_drawer_alone_doesnt_wait() -> None:
    (drawer,) = clip_of(DRAWER).moves
    assert dict(drawer.keys)[1.5] == 1


def test_nothing_moves_where_nothing_opens() -> None:
    assert clip_of().moves == ()
