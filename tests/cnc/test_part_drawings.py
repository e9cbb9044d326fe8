"""Parts as DXF: read back by their layers' names alone, they are the parts as they are cut."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

import rodwright
from kit.machine_reader import from_edges, outline, pockets, read, removed
from rodwright.cnc.dxf import shapes_dxf
from rodwright.cnc.layers import SAID, said
from rodwright.cnc.part_shapes import PartShapes, layers_in, part_shapes
from rodwright.handover.products import products
from rodwright.mass import mass_of
from rodwright.unit import (
    Bevel,
    Easing,
    FingerPull,
    Hole,
    Mitre,
    Notch,
    PocketHole,
    Surface,
    Unit,
)

MODELS = sorted(Path("models").resolve().glob("*.yaml"))


@pytest.fixture(scope="module", params=MODELS, ids=lambda path: path.stem)
def unit(request: pytest.FixtureRequest) -> Unit:
    return rodwright.set_out(rodwright.read_spec(request.param))


@pytest.fixture(scope="module")
def drawn(unit: Unit) -> list[PartShapes]:
    return [part_shapes(each) for each in products(unit, "cut")]


def test_blanks_less_what_is_cut_from_faces_are_the_parts(drawn: list[PartShapes]) -> None:
    """Volumes in mm3, by layers' names and areas alone; what is cut aslant or rounded is left
    to the next tests."""
    seen = 0
    for each in drawn:
        part = each.product.part
        size = part.blank.size
        if any(
            isinstance(it, Easing | FingerPull | PocketHole)
            or (isinstance(it, Mitre | Bevel) and _leans(it))
            for it in part.workings
        ):
            continue
        document = read(shapes_dxf((*each.cut, *each.texts)))
        shape = outline(document)
        cut = [*pockets(document, "FACE"), *pockets(document, "THROUGH")]
        taken = removed(cut, shape, size[2])
        if each.reverse:
            back = read(shapes_dxf(each.reverse))
            assert outline(back).area == pytest.approx(shape.area)
            taken += removed([*pockets(back, "REVERSE")], outline(back), size[2])
        edges = from_edges(document)
        left = shape.area * size[2] - taken - edges
        # What is bored from an edge may run into what comes from a face, and slots have round ends.
        within = 2e-3 if edges else 2e-5
        assert left == pytest.approx(mass_of(part.shape).volume, rel=within), each.product.name
        seen += 1
    assert seen >= len(drawn) / 2


def _leans(working: Mitre | Bevel) -> bool:
    both = (working.end, working.long) if isinstance(working, Mitre) else ()
    return any(it.axis == 2 for it in both or (working.surface, working.edge))  # type: ignore[union-attr]


def test_every_hole_is_a_circle_where_it_is_bored(drawn: list[PartShapes]) -> None:
    for each in drawn:
        part, size = each.product.part, each.product.part.blank.size
        there = {(0, *hole) for hole in _circles(each.cut)}
        there |= {(1, x, size[1] - y, d) for x, y, d in _circles(each.reverse)}
        wanted = {
            (int(it.worked_from(size) is Surface.REVERSE), *it.position, it.diameter)
            for it in part.workings
            if isinstance(it, Hole) and it.surface.axis == 2
        }
        assert {tuple(round(v, 6) for v in it) for it in there} == {
            tuple(round(v, 6) for v in it) for it in wanted
        }


def _circles(shapes: tuple[object, ...]) -> set[tuple[float, float, float]]:
    from rodwright.cnc.shapes import Circle

    return {(*it.centre, it.diameter) for it in shapes if isinstance(it, Circle)}


def test_every_working_is_on_a_layer_of_its_own_figures_or_told(drawn: list[PartShapes]) -> None:
    for each in drawn:
        part, size = each.product.part, each.product.part.blank.size
        layers = layers_in((*each.cut, *each.reverse))
        for it in part.workings:
            if isinstance(it, Mitre | Bevel | Notch | PocketHole):
                continue
            figures = it.figures(size)
            names = [name for name in layers if it.called.upper().replace(" ", "_") in name]
            if isinstance(it, Easing):
                names = [name for name in layers if "EASING" in name]
            assert names, (each.product.name, it)
            if figures.drill is not None:
                assert any(f"HOLE_{_figure(figures.drill)}" in name for name in names)
        if any(isinstance(it, PocketHole) for it in part.workings):
            assert any("by hand" in note for note in each.by_hand)


def _figure(mm: float) -> str:
    return f"{mm:.2f}".rstrip("0").rstrip(".").replace(".", "p")


def test_layers_are_plain_and_can_be_told(drawn: list[PartShapes]) -> None:
    for each in drawn:
        for name in layers_in((*each.cut, *each.texts, *each.reverse)):
            assert re.fullmatch("[A-Z0-9_p]+", name)
            assert said(name)
            assert name in SAID or any(word in said(name) for word in ("from the", "through"))


def test_the_same_part_gives_the_same_bytes(drawn: list[PartShapes]) -> None:
    first = drawn[0]
    assert shapes_dxf(first.cut) == shapes_dxf(first.cut)


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("FACE_HOLE_5_DEEP_12p5", "from the face: hole 5 mm, deep 12.5 mm"),
        ("THROUGH_HOLE_8", "right through: hole 8 mm"),
        (
            "FACE_EDGE_HOLE_5_DEEP_10_UP_11",
            "from the face edge: hole 5 mm, deep 10 mm, its middle above the lower face by 11 mm",
        ),
        (
            "NEAR_END_HOLE_8_DEEP_24_UP_9",
            "from the near end: hole 8 mm, deep 24 mm, its middle above the lower face by 9 mm",
        ),
        ("FACE_BEVEL_AT_22p5", "from the face: bevel at 22.5 degrees"),
        ("FACE_EASING_R_4", "from the face: easing radius 4 mm"),
    ],
)
def test_layers_in_words(name: str, words: str) -> None:
    assert said(name) == words
