"""What finishes do to colours."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from rodwright.photo.finished import Reflectance, finished_colour, finished_surface
from rodwright.pictures.colours import linear
from rodwright.unit.finish import Finish, FinishKind, Sheen

PALE = np.array(linear("#e2cda4"))
OAK = np.array(linear("#c8a271"))
KINDS: tuple[FinishKind, ...] = ("oil", "lacquer", "paint", "stain")
SHEENS: tuple[Sheen, ...] = ("matt", "satin", "gloss")
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


_TO_XYZ = np.array(
    [
        [0.4124564, 0.3575761, 0.1804375],
        [0.2126729, 0.7151522, 0.0721750],
        [0.0193339, 0.1191920, 0.9503041],
    ]
)
"""Of IEC 61966-2-1."""


def lab(colour: Reflectance) -> Reflectance:
    """A colour in CIELAB (ISO/CIE 11664-4), D65."""
    light = _TO_XYZ @ colour / (_TO_XYZ @ np.ones(3))
    bent = np.where(light > 216 / 24389, np.cbrt(light), (24389 / 27 * light + 16) / 116)
    return np.array([116 * bent[1] - 16, 500 * (bent[0] - bent[1]), 200 * (bent[1] - bent[2])])


def test_oak_changes_as_it_was_measured_to() -> None:
    """Wax on white oak (Ayata and Ayata 2024): darker, redder, yellower, by 5.6 in one coat and
    10.6 to 12.0 in several.  Oil soaks in as those do, lacquer less than one."""
    oil, lacquer = (
        lab(finished_colour(OAK, Finish(kind))) - lab(OAK) for kind in ("oil", "lacquer")
    )
    for change in (oil, lacquer):
        assert change[0] < 0 < min(change[1], change[2])
    assert 9 < np.linalg.norm(oil) < 12
    assert 3 < np.linalg.norm(lacquer) < 5.6


def test_what_a_film_throws_back_is_by_fresnel() -> None:
    """The film's formula with nothing but itself: summed here over all directions within it."""
    index, steps = 1.5, 200_000
    sines2 = (np.arange(steps) + 0.5) / steps  # equal shares of diffuse light
    inside, beyond = np.sqrt(1 - sines2), np.sqrt(np.maximum(0.0, 1 - index**2 * sines2))
    across = ((index * inside - beyond) / (index * inside + beyond)) ** 2
    along = ((inside - index * beyond) / (inside + index * beyond)) ** 2
    thrown_back = np.where(index**2 * sines2 > 1, 1.0, (across + along) / 2).mean()
    white, half = (finished_colour(np.full(3, each), Finish("lacquer")) for each in (1.0, 0.5))
    wet = (half / white - 0.5) / 0.3 + 0.5  # of what it wets, 0.3
    assert wet == pytest.approx((1 - thrown_back) * 0.5 / (1 - thrown_back * 0.5), abs=2e-3)


def gloss(roughness: float, degrees: float) -> float:
    """Gloss units of a surface of index 1.5: what microfacets (Trowbridge and Reitz's, with Smith's
    shadowing) send into the receptor of ISO 2813, over what black glass of index 1.567 does."""
    alpha, angle, half = roughness**2, np.radians(degrees), np.radians([4.4, 11.7]) / 2
    if degrees == 85:
        half = np.radians([4.0, 6.0]) / 2
    steps = (np.arange(300) + 0.5) / 150 - 1
    tilt, turn = np.meshgrid(angle + steps * half[0], steps * half[1], indexing="ij")
    out = np.stack([np.sin(tilt) * np.cos(turn), np.sin(turn), np.cos(tilt) * np.cos(turn)], -1)
    middle = out + np.array([-np.sin(angle), 0.0, np.cos(angle)])
    middle /= np.linalg.norm(middle, axis=-1, keepdims=True)
    up = middle[..., 2]
    facets = alpha**2 / (np.pi * (up**2 * (alpha**2 - 1) + 1) ** 2)

    def shadowed(cosine: Reflectance) -> Reflectance:
        return 2 / (1 + np.sqrt(1 + alpha**2 * (1 / cosine**2 - 1)))

    def fresnel(cosine: Reflectance, index: float) -> Reflectance:
        beyond = np.sqrt(1 - (1 - cosine**2) / index**2)
        across = (cosine - index * beyond) / (cosine + index * beyond)
        along = (index * cosine - beyond) / (index * cosine + beyond)
        return (across**2 + along**2) / 2

    square = np.array(np.cos(angle))
    meets = (middle * out).sum(axis=-1)
    sent = facets * fresnel(meets, 1.5) * shadowed(square) * shadowed(out[..., 2]) / (4 * square)
    solid = np.cos(turn) * half[0] * half[1] / 150**2
    return float(100 * (sent * solid).sum() / fresnel(square, 1.567))


def test_sheens_are_those_of_the_gloss_meter() -> None:
    """EN 13300: 60 and more at 60 degrees is glossy, less than 10 at 85 degrees matt, and satin is
    what lies between."""
    matt, satin, glossy = (
        finished_surface((0.5, 0.5, 0.5), "oak", Finish("lacquer", "", sheen)).roughness
        for sheen in SHEENS
    )
    assert gloss(0.05, 60) == pytest.approx(89, abs=1)  # all but polished: only its index is less
    assert gloss(matt, 60) == pytest.approx(6.7, abs=0.3) and gloss(matt, 85) < 10
    assert gloss(satin, 60) == pytest.approx(27, abs=1) and gloss(satin, 85) >= 10
    assert gloss(glossy, 60) == pytest.approx(75, abs=2)


def test_paint_covers() -> None:
    figure = np.array([PALE, 0.5 * PALE])
    painted = finished_colour(figure, Finish("paint", "#2e8b57"))
    beside_the_highlight = (painted - 0.04) / 0.96  # what glass of index 1.5 reflects, and the rest
    assert np.allclose(beside_the_highlight, linear("#2e8b57"))
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


def test_glass_is_clear_and_wood_is_not() -> None:
    assert finished_surface((0.9, 0.9, 0.9), "glass", None).clear
    assert not finished_surface((0.9, 0.9, 0.9), "oak", None).clear
    assert not finished_surface((0.9, 0.9, 0.9), "oak", Finish("oil")).clear


def test_bare_wood_is_dull_and_melamine_is_less_so() -> None:
    wood, fibres, melamine = (
        finished_surface((0.5, 0.5, 0.5), each, None)
        for each in ("oak-veneered mdf", "mdf", "melamine-faced chipboard")
    )
    assert fibres.roughness > wood.roughness > melamine.roughness
    assert gloss(wood.roughness, 60) < gloss(melamine.roughness, 60) < 10


def test_a_stain_comes_to_its_colour_on_pale_wood() -> None:
    stained = finished_colour(np.array(linear("#dcc59b")), Finish("stain", "#5f4026"))
    assert np.allclose(stained, linear("#5f4026"), rtol=0.02)
