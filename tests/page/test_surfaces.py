"""Surfaces of parts on a page: finishes, what is glued on edges, where parts were cut."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from photo.woods.samples import lab, part_of
from rodwright.page.surfaces import edge_surfaces, lie_of, surface_of, ware_surface
from rodwright.pictures.colours import linear
from rodwright.trade.wood_colours import WOOD_COLOURS
from rodwright.unit import Part, Placement
from rodwright.unit.finish import Finish
from rodwright.unit.stock import Edging
from rodwright.unit.surfaces import Surface

OAK = part_of("european oak")


def shown_lab(colour: str) -> np.ndarray:
    return lab(np.array(linear(colour)))


def test_bare_wood_has_the_colour_that_was_measured() -> None:
    _, surface = surface_of(OAK)
    assert WOOD_COLOURS["european oak"].difference(*shown_lab(surface.colour)) < 1.0
    assert (surface.metal, surface.clear) == (False, False)


def test_paint_is_the_colour_on_the_card_and_oil_makes_wood_darker_and_yellower() -> None:
    _, painted = surface_of(replace(OAK, finish=Finish("paint", "#305848", "satin")))
    # 4 % of the light is thrown back at the film before it meets the paint.
    expected = 0.04 + 0.96 * np.array(linear("#305848"))
    assert np.array(linear(painted.colour)) == pytest.approx(expected, abs=0.004)
    (bare, _, bare_yellow), (oiled, _, yellow) = (
        shown_lab(surface_of(replace(OAK, finish=finish))[1].colour)
        for finish in (None, Finish("oil", "", "matt"))
    )
    assert oiled < bare - 5
    assert yellow > bare_yellow


def test_sheens_shine_more_from_matt_to_gloss() -> None:
    roughness = [
        surface_of(replace(OAK, finish=Finish("lacquer", "", sheen)))[1].roughness
        for sheen in ("matt", "satin", "gloss")
    ]
    assert roughness == sorted(roughness, reverse=True)
    assert surface_of(OAK)[1].roughness > roughness[0]


def test_glass_is_clear_and_brass_is_metal() -> None:
    assert surface_of(part_of("glass", kind="sheet"))[1].clear
    _, brass = ware_surface("brass", None)
    assert brass.metal
    red, green, blue = linear(brass.colour)
    assert red > green > blue
    painted = Finish("paint", "#305848", "gloss")
    assert (
        ware_surface("painted", painted)[1].colour
        == surface_of(replace(OAK, finish=painted))[1].colour
    )


def test_a_name_says_what_is_seen_and_nothing_else() -> None:
    name = surface_of(OAK)[0]
    assert surface_of(replace(OAK, ref="P9", name="Rail"))[0] == name
    assert surface_of(part_of("european oak", (900.0, 70.0, 32.0)))[0] == name
    others = [
        part_of("walnut"),
        part_of("european oak", kind="sheet"),
        part_of("european oak", sawn="quarter"),
        replace(OAK, finish=Finish("oil")),
    ]
    assert len({name, *(surface_of(each)[0] for each in others)}) == 5
    plies = [part_of("birch plywood", (600, 300, each), kind="sheet") for each in (12.0, 18.0)]
    assert len({surface_of(each)[0] for each in plies}) == 2


def test_edges_show_what_is_glued_on_them() -> None:
    board = part_of(
        "melamine-faced chipboard",
        kind="sheet",
        edged=(
            Edging(Surface.FACE_EDGE, "oak veneer", 0.6),
            Edging(Surface.FAR_END, "abs tape", 1.0, "black"),
        ),
    )
    edges = edge_surfaces(board)
    assert list(edges) == ["-y", "+x"]
    assert edges["-y"][1].colour == surface_of(part_of("oak"))[1].colour
    assert edges["+x"][1].colour == "#262626"
    assert edge_surfaces(OAK) == {}


def fronts(turned: bool) -> tuple[Part, Part]:
    """Two fronts of one run, the right one perhaps laid the other way round."""
    left = part_of("european oak", (400.0, 200.0, 20.0), ref="D1", grain_run="run")
    other = (
        Placement((800.0, 200.0, 0.0), (-1, 0, 0), (0, -1, 0))
        if turned
        else Placement((400.0, 0.0, 0.0), (1, 0, 0), (0, 1, 0))
    )
    return left, part_of(
        "european oak", (400.0, 200.0, 20.0), ref="D2", grain_run="run", placement=other
    )


@pytest.mark.parametrize("turned", [False, True])
def test_grain_runs_on_through_fronts_of_one_run(turned: bool) -> None:
    where = []
    for part in fronts(turned):
        x, y, _ = part.placement.to_part((400.0, 60.0, 10.0))  # where the two meet
        along, start, across, beside = lie_of(part)
        where.append((along * x + start, across * y + beside))
    assert where[0] == pytest.approx(where[1])


def test_no_two_other_parts_look_cut_from_one_place() -> None:
    assert len({lie_of(replace(OAK, ref=f"P{number}")) for number in range(50)}) == 50
