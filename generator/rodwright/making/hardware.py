"""What of the hardware goes in at which step: all of it, each piece once."""

from __future__ import annotations

import re
from collections.abc import Sequence

from rodwright.making.steps import Order, Step
from rodwright.unit import Fixing, Unit


def fixings_by_step(unit: Unit, order: Order) -> tuple[tuple[Fixing, ...], ...]:
    """For each step of an order the fixings that go in at it, and at the end those that belong to
    no step.

    Those of joints go in where the joint is closed.  What is fitted to one part (a handle) goes on
    when that is put into the unit, what is on several (sleeves for pins) as soon as they stand
    together.
    """
    found: list[list[Fixing]] = [
        [fixing for joint in step.joints for fixing in joint.fixings] for step in order.steps
    ]
    closed = {joint for step in order.steps for joint in step.joints}
    rest = [fixing for joint in unit.joints if joint not in closed for fixing in joint.fixings]
    refs = {part.ref for part in unit.parts}
    for fixing in unit.fixings:
        on = {word for word in re.findall(r"\w+", fixing.on) if word in refs}
        at = _step_for(order.steps, on) if on else None
        (rest if at is None else found[at]).append(fixing)
    return (*map(tuple, found), tuple(rest))


def _step_for(steps: Sequence[Step], refs: set[str]) -> int | None:
    if len(refs) == 1:
        with_it = (number for number, step in enumerate(steps) if refs <= set(step.refs))
        return max(with_it, default=None)
    return next(
        (
            number
            for number, step in enumerate(steps)
            if refs & set(step.refs) and refs <= {*step.refs, *step.standing}
        ),
        None,
    )
