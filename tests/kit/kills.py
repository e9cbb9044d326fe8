"""Killing what a function does at any moment: before each of its changes to the file system.

``os._exit`` in a process of its own, which like SIGKILL runs nothing any more.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from contextlib import suppress

import pytest

if not hasattr(os, "fork"):
    pytest.skip("nothing can be forked and killed here", allow_module_level=True)

CHANGES = ("mkdir", "rmdir", "rename", "replace", "unlink", "open")
Action = Callable[[], object]


def killed_before(number: int, action: Action, calls: tuple[str, ...] = CHANGES) -> bool:
    """Do something in a process of its own that ends before its change of this number;
    whether it came that far."""
    child = os.fork()
    if child == 0:
        code = 1
        with suppress(BaseException):
            _count_down(number, calls)
            action()
            code = 0
        os._exit(code)
    _, status = os.waitpid(child, 0)
    code = os.waitstatus_to_exitcode(status)
    assert code in (0, 9), f"the process failed instead of being killed: {code}"
    return code == 9


def _count_down(number: int, calls: tuple[str, ...]) -> None:
    left = [number]

    def counted(real: Callable[..., object]) -> Callable[..., object]:
        def call(*words: object, **more: object) -> object:
            left[0] -= 1
            if left[0] < 0:
                os._exit(9)
            return real(*words, **more)

        return call

    for name in calls:
        setattr(os, name, counted(getattr(os, name)))


def moments(action: Action, calls: tuple[str, ...] = CHANGES) -> Iterator[int]:
    """Kill an action before its first change, then before its second, until it gets through."""
    number = 0
    while killed_before(number, action, calls):
        yield number
        number += 1
    assert number > 3
