"""What finishes do to colours."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from rodwright.photo.finished import Reflectance, finished_colour, finished_surface, linear
from rodwright.unit.finish import Finish, FinishKind, Sheen

PALE = linear("#e2cda4")
KINDS: tuple[FinishKind, ...] = ("oil", "lacquer", "paint", "stain")
reflectances = st.tuples(*[st.floats(0.0, 1.0)] * 3).map(np.array)


def saturation(colour: Reflectance) -> float:
    """How far a colour is from grey: its least share over its greatest, from 1."""
    return float(1 - colour.min() / colour.max())


def test_bare_stays_bare() -> None:
    assert np.array_equal(finished_colour(PALE, None), PALE)


def test_oil_darkens_and_warms_more_than_lacquer() -> None:
    oil, lacquer = (finished_colour(PALE, Finish(kind)) for kind in ("oil", "lacquer"))
    assert (oil < lacquer).all()
    assert (lacquer < PALE).all()
    assert saturation(oil) > saturation(lacquer) > saturation(PALE)


def test_paint_covers() -> None:
    figure = np.array([PALE, 0.5 * PALE])
    painted = finished_colour(figure, Finish("paint", "#2e8b57"))
    assert np.allclose(painted, linear("#2e8b57"))
    assert painted.shape == figure.shape


def test_a_stain_keeps_the_figure() -> None:
    early, late = finished_colour(np.array([PALE, 0.7 * PALE]), Finish("stain", "#5f4026"))
    assert np.allclose(late, 0.7 * early)
    assert (early < PALE).all()


@given(reflectances, st.sampled_from(KINDS))
def test_no_finish_gives_light(bare: Reflectance, kind: FinishKind) -> None:
    colour = "#ffffff" if kind in ("paint", "stain") else ""
    found = finished_colour(bare, Finish(kind, colour))
    assert (found >= 0).all()
    assert (found <= 1).all()
    if kind != "paint":
        assert (found <= bare + 1e-12).all()


@pytest.mark.parametrize("shape", [(3,), (5, 3), (2, 4, 3)])
@pytest.mark.parametrize("kind", KINDS)
def test_any_number_at_once(kind: FinishKind, shape: tuple[int, ...]) -> None:
    many = np.random.default_rng(0).uniform(size=shape)
    finish = Finish(kind, "#5f4026" if kind in ("paint", "stain") else "")
    one_by_one = [finished_colour(each, finish) for each in many.reshape(-1, 3)]
    assert np.allclose(finished_colour(many, finish).reshape(-1, 3), one_by_one)


def test_gloss_is_smoother_than_satin_than_matt() -> None:
    sheens: tuple[Sheen, ...] = ("gloss", "satin", "matt")
    rough = [
        finished_surface((0.5, 0.5, 0.5), "birch", Finish("lacquer", "", sheen)).roughness
        for sheen in sheens
    ]
    assert rough == sorted(rough)
    assert rough[-1] < finished_surface((0.5, 0.5, 0.5), "birch", None).roughness


def test_glass_is_clear_and_wood_is_not() -> None:
    assert finished_surface((0.9, 0.9, 0.9), "glass", None).clear
    assert not finished_surface((0.9, 0.9, 0.9), "oak", None).clear
