"""What an eye sees of parts: what is turned to it and stands before the others."""

from __future__ import annotations

import numpy as np

from kit.specs import unit_from
from rodwright.photo.bodies import unit_bodies
from rodwright.photo.bodies.easing import eased
from rodwright.photo.bodies.seen import Standing, seen
from rodwright.photo.scene import Texture
from rodwright.unit import Rebate, ShapeKey, Surface

PANEL: ShapeKey = ((600.0, 400.0, 20.0), ())
EYE = (300.0, 200.0, 2000.0)


def standing(shape: ShapeKey, z: float, *, clear: bool = False) -> Standing:
    matrix = np.eye(4)
    matrix[2, 3] = z
    return Standing(eased(shape, 0.7), shape[0], matrix, clear)


def faces(part: Standing, shown: tuple[bool, ...]) -> list[list[int]]:
    return sorted(
        np.round(each.flat).astype(int).tolist()
        for each, of_it in zip(part.patches, shown, strict=True)
        if of_it and each.flat is not None
    )


def test_one_face_of_a_panel_is_seen_from_straight_before_it() -> None:
    part = standing(PANEL, 0.0)
    (shown,) = seen(EYE, [part])
    assert faces(part, shown) == [[0, 0, 1]]


def test_three_faces_are_seen_from_a_corner() -> None:
    part = standing(PANEL, 0.0)
    (shown,) = seen((-500.0, -500.0, 500.0), [part])
    assert faces(part, shown) == [[-1, 0, 0], [0, -1, 0], [0, 0, 1]]


def test_what_stands_behind_another_is_hidden_unless_that_is_glass_or_cut_away() -> None:
    behind = standing(PANEL, 0.0)
    rebated: ShapeKey = (PANEL[0], (Rebate(Surface.FACE, Surface.FAR_END, 200.0, 20.0),))
    for before, visible in (
        (standing(PANEL, 100.0), False),
        (standing(PANEL, 100.0, clear=True), True),
        (standing(rebated, 100.0), True),
    ):
        shown = seen(EYE, [behind, before])
        assert bool(faces(behind, shown[0])) is visible
        assert faces(before, shown[1])


def test_only_what_is_seen_has_fine_textures() -> None:
    unit = unit_from(
        "size: {width: 600, height: 700, depth: 350}\ninterior: {shelves: 2, doors: {}}\n"
    )
    front = (300.0, -3000.0, 350.0)

    def pixels(**more: object) -> dict[str, int]:
        return {
            each.name: each.surface.colour.pixels.size
            for each in unit_bodies(unit, {}, texel=2.0, **more)  # type: ignore[arg-type]
            if isinstance(each.surface.colour, Texture)
        }

    every, few = pixels(), pixels(eye=front)
    width, _, height = unit.part("DO1").bounds().size
    assert few["DO1"] > 3 * width * height / 2.0**2
    assert few["SH1"] < 0.1 * every["SH1"]
