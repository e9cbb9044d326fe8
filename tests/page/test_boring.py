"""Holes put into facets without booleans: closed, of the volume of arithmetic, only where clear."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable
from typing import Any

import numpy as np
import pytest

import rodwright
from rodwright.jobs.new import model_path
from rodwright.mass.pieces import pieces
from rodwright.page import carving
from rodwright.page.boring import clear
from rodwright.page.carving import Carved, carved
from rodwright.setout import set_out
from rodwright.unit import Easing, Hole, Housing, Surface, Working

SIZE = (900.0, 300.0, 18.0)


def _row(surface: Surface, depth: float | None, across: float = 40.0) -> list[Hole]:
    return [Hole(surface, (60.0 + 32 * at, across), 5.0, depth) for at in range(20)]


def _volume(body: Carved) -> float:
    a, b, c = np.moveaxis(body.points[body.triangles], 1, 0)
    return float((np.cross(a, b) * c).sum() / 6)


def _is_closed(body: Carved) -> bool:
    """Whether each side of a facet is one side of another, run the other way."""
    sides = np.stack([body.triangles, np.roll(body.triangles, -1, axis=1)], axis=2).reshape(-1, 2)
    found = Counter(map(tuple, sides.tolist()))
    return all(found[one, other] == found[other, one] == 1 for one, other in found)


@pytest.mark.parametrize("depth", [12.0, None])
@pytest.mark.parametrize("surface", [Surface.FACE, Surface.REVERSE])
def test_a_row_of_holes_takes_its_prisms_from_the_blank(
    surface: Surface, depth: float | None
) -> None:
    body = carved((SIZE, (*_row(surface, depth), *_row(surface, depth, 250.0))))
    sides = 16
    prism = sides / 2 * 2.5**2 * math.sin(2 * math.pi / sides) * (depth or SIZE[2])
    assert _volume(body) == pytest.approx(math.prod(SIZE) - 40 * prism, abs=1e-3)
    assert _is_closed(body)
    assert len(body.rounds) == 40


def test_holes_in_ends_and_edges_leave_a_closed_body() -> None:
    ends = [Hole(Surface.NEAR_END, (at, 9.0), 8.0, 30.0) for at in (50.0, 150.0, 250.0)]
    edge = [Hole(Surface.FACE_EDGE, (at, 9.0), 8.0, 20.0) for at in (100.0, 400.0)]
    body = carved((SIZE, (*ends, *edge, *_row(Surface.FACE, 10.0, 150.0))))
    assert _is_closed(body)
    prism = 12 * 4.0**2 * math.sin(math.pi / 12)  # of 24 sides
    pins = 8 * 2.5**2 * math.sin(math.pi / 8) * 10.0 * 20
    wood = math.prod(SIZE) - prism * (3 * 30.0 + 2 * 20.0) - pins
    assert _volume(body) == pytest.approx(wood, abs=1e-3)


@pytest.mark.parametrize(
    "beside",
    [
        Hole(Surface.FACE, (104.9, 100.0), 5.0, 10.0),  # meets it
        Hole(Surface.REVERSE, (100.0, 100.0), 5.0, 8.0),  # ends in its floor
        Housing(Surface.FACE, 90.0, 18.0, 6.0),  # lies across it
    ],
    ids=["a hole beside it", "a hole behind it", "a housing"],
)
def test_a_hole_that_meets_something_is_left_to_booleans(beside: Working) -> None:
    workings = (Hole(Surface.FACE, (100.0, 100.0), 5.0, 10.0), beside)
    taken = [piece for each in workings for piece in pieces(each, SIZE)]
    assert not clear(taken, SIZE)[0]


@pytest.mark.parametrize("across", [2.4, 2.5, 297.6])
def test_a_hole_that_breaks_an_edge_is_left_to_booleans(across: float) -> None:
    (piece,) = pieces(Hole(Surface.FACE, (100.0, across), 5.0, 10.0), SIZE)
    assert not clear([piece], SIZE)[0]


def test_of_what_is_drilled_only_what_meets_something_costs_a_boolean(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Each shape is cut once, and never with a hole of a row."""
    cut: list[int] = []
    work = carving._cut  # noqa: SLF001  # what is counted

    def counted(shape: Any, taken: Iterable[Any]) -> Carved:
        taken = tuple(taken)
        cut.append(len(taken))
        return work(shape, taken)

    monkeypatch.setattr(carving, "_cut", counted)
    unit = set_out(rodwright.read_spec(model_path("archive-wall")))
    shapes = {part.shape for part in unit.parts}
    for shape in shapes:
        carved(shape)
    drilled = sum(isinstance(each, Hole) for _, workings in shapes for each in workings)
    assert len(cut) == len(shapes)
    assert drilled > 400
    assert sum(cut) < drilled / 3


def test_an_eased_blank_keeps_its_holes() -> None:
    eased = Easing(Surface.FACE, Surface.FACE_EDGE, 4.0)
    plain, drilled = carved((SIZE, (eased,))), carved((SIZE, (eased, *_row(Surface.FACE, 10.0))))
    pins = 8 * 2.5**2 * math.sin(math.pi / 8) * 10.0 * 20
    assert _volume(plain) - _volume(drilled) == pytest.approx(pins, abs=1e-3)
    assert _is_closed(drilled)
