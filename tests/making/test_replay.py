"""The replay of orders finds what is wrong with one."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from kit.assembly_replay import replay
from kit.specs import unit_from
from rodwright.making.order import order_of
from rodwright.making.steps import Order, Step

UNIT = unit_from("""
size: {width: 900, height: 1200, depth: 300}
carcass: {stock: ply, corners: dowelled}
interior: {shelves: {count: 1, ends: housed, stopped: 10}}
back: {stock: thin}
""")
STEPS = order_of(UNIT).steps


def _at(ref: str) -> int:
    return next(number for number, step in enumerate(STEPS) if step.refs == (ref,))


def _instead(ref: str, change: Callable[[Step], Step]) -> tuple[Step, ...]:
    return tuple(change(step) if step.refs == (ref,) else step for step in STEPS)


def _swapped(one: str, other: str) -> tuple[Step, ...]:
    """Two steps in each other's place, with what stands and what is joined put right."""
    order = list(STEPS)
    order[_at(one)], order[_at(other)] = order[_at(other)], order[_at(one)]
    standing: list[str] = []
    found = []
    for step in order:
        joints = tuple(
            joint
            for joint in UNIT.joints
            if {joint.first, joint.second} <= {*standing, *step.refs}
            and not {joint.first, joint.second} <= {*standing}
        )
        found.append(replace(step, standing=tuple(standing), joints=joints))
        standing += step.refs
    return tuple(found)


def test_the_order_that_is_spoilt_is_sound() -> None:
    replay(UNIT, Order(STEPS))


@pytest.mark.parametrize(
    ("steps", "told"),
    [
        (STEPS[:-1], "left over"),
        ((*STEPS, STEPS[-1]), "not made before"),
        (_instead("SD2", lambda step: replace(step, joints=step.joints[1:])), "joint"),
        (_instead("SH1", lambda step: replace(step, towards=(0.0, 1.0, 0.0))), "SH1 runs into"),
        (_instead("SD2", lambda step: replace(step, towards=(1.0, 0.0, 0.0))), "SD2 runs into"),
        (_instead("SD2", lambda step: replace(step, travel=2.0)), "not clear yet"),
        (
            _instead("BT1", lambda step: replace(step, towards=(0.0, 1.0, 0.0), travel=900.0)),
            "comes across what is let in",
        ),
        (_swapped("SH1", "SD2"), "runs into SD2"),
    ],
    ids=["dropped", "twice", "joint", "across", "backwards", "short", "dowels", "too late"],
)
def test_a_spoilt_order_is_found_out(steps: tuple[Step, ...], told: str) -> None:
    with pytest.raises(AssertionError, match=told):
        replay(UNIT, Order(steps))
