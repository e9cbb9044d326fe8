"""Hours of saves: what a session holds doesn't grow with their number."""

from __future__ import annotations

import gc
from dataclasses import asdict
from pathlib import Path

from kit.looking import SHELF
from rodwright.jobs.look.board import Board, Reader
from rodwright.jobs.look.figures import nudges_of
from rodwright.jobs.look.following import State, read_state
from rodwright.jobs.look.watching import Seen
from rodwright.page.shapes import shape_of


def _held() -> int:
    """How many objects there are, but for those of caches that have a bound."""
    caches = [each for each in gc.get_objects() if isinstance(each, type(shape_of))]
    for each in caches:
        if each.cache_parameters()["maxsize"] is not None:
            each.cache_clear()
    gc.collect()
    return len(gc.get_objects())


def test_what_is_held_doesnt_grow_with_the_saves() -> None:
    state, board, reader = State(), Board(), Reader()
    held = []
    for number in range(61):
        content = SHELF.replace("width: 600", f"width: {600 + number}").encode()
        state = read_state(Path("shelf.yaml"), Seen(content), state)
        assert state.spec is not None
        assert state.made is not None
        assert state.made.version == number + 1
        board.tell_model(state.version, state.made.model)
        told = nudges_of(state.spec)
        board.tell("nudges", version=state.version, nudges=[asdict(each) for each in told])
        while board.next(reader) is not None:
            pass
        if number % 20 == 0:
            held.append(_held())
    # One object left over by each save would be twenty more.
    assert held[3] - held[2] < 20
