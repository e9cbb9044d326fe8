"""Units at random go together, and so do their mirror images."""

from __future__ import annotations

import math

from hypothesis import HealthCheck, assume, example, given, settings
from hypothesis import strategies as st

from kit.assembly_replay import made_in_order, replay
from kit.mirrors import mirrored
from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright.geometry import Box
from rodwright.making.order import order_of
from rodwright.making.steps import Step
from rodwright.problems import ProblemsError
from rodwright.unit import Unit

MANY = settings(
    max_examples=25, suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much]
)


def _unit(wish: Wish) -> Unit:
    try:
        return unit_from("unit: mm\n", **wish)
    except ProblemsError:
        assume(False)
        raise


PIPED: Wish = {
    "size": {"width": 700, "height": 700, "depth": 250},
    "carcass": {"stock": "ply", "corners": "housed", "top": "between", "bottom": "none"},
    "interior": {"shelves": {"count": 1}},
    "cutouts": [{"kind": "pipe", "runs": "upright", "at": [200, 40], "diameter": 15}],
}


@MANY
@given(wishes(), st.booleans())
@example(PIPED, True)
def test_any_unit_goes_together_and_its_mirror_image_in_a_mirror(wish: Wish, fit: bool) -> None:
    wish = {"opening" if fit and key == "size" else key: each for key, each in wish.items()}
    unit = _unit(wish)
    image = _unit(mirrored(wish, unit.size[0] if fit else None))
    order = order_of(unit)
    made_in_order(unit, order)
    assert order_of(unit) == order
    seen = [_seen(image, step, 1) for step in order_of(image).steps]
    in_mirror = [_seen(unit, step, -1) for step in order.steps]
    # What is its own image is put together from the left, and so is its image.
    assert _alike(in_mirror, seen) or _alike([_seen(unit, step, 1) for step in order.steps], seen)


@settings(MANY, max_examples=5)
@given(wishes())
def test_any_order_can_be_carried_out(wish: Wish) -> None:
    unit = _unit(wish)
    replay(unit, order_of(unit))


Row = tuple[float, ...]


def _seen(unit: Unit, step: Step, hand: int) -> tuple[Row, list[Row]]:
    """From where something comes, and its places and sizes about the unit's middle."""
    middle = Box.of_boxes(part.bounds() for part in unit.parts).centre[0]
    boxes: list[Row] = []
    for ref in step.refs:
        box = unit.part(ref).bounds()
        across, deep, up = box.centre
        boxes.append(((across - middle) * hand, deep, up, *box.size))
    x, y, z = step.towards
    return (x * hand, y, z), boxes


def _alike(one: list[tuple[Row, list[Row]]], other: list[tuple[Row, list[Row]]]) -> bool:
    return len(one) == len(other) and all(
        len(a) == len(b) and _near(way, its) and all(any(_near(u, v) for v in b) for u in a)
        for (way, a), (its, b) in zip(one, other, strict=True)
    )


def _near(one: Row, other: Row) -> bool:
    return all(math.isclose(u, v, abs_tol=0.01) for u, v in zip(one, other, strict=True))
