"""The model that a page draws, against the unit and its lists."""

from __future__ import annotations

import base64

import numpy as np
import pytest

from kit.specs import ready_unit
from rodwright.handover.lists import parts_list
from rodwright.jobs.new import model_names
from rodwright.lengths import format_length
from rodwright.page.document import Model
from rodwright.page.model import layers_of, model_of
from rodwright.unit import JointKind, Role, Swing, Unit
from rodwright.unit.roles import TRAITS, Assembly


@pytest.mark.parametrize("name", model_names())
def test_every_part_has_the_layer_that_a_maker_would_look_for(name: str) -> None:
    unit = ready_unit(name)
    layers = layers_of(unit)
    assert list(layers) == [part.ref for part in unit.parts]
    lipped = {j.second: j.first for j in unit.joints if j.kind is JointKind.EDGE_GLUED}
    for part in unit.parts:
        layer = layers[part.ref]
        if part.role is Role.LIPPING:
            assert layer == layers[lipped[part.ref]]
        elif part.role is Role.SHELF:
            assert layer == "shelves"
        elif part.role is Role.BACK:
            assert layer == "back"
        else:
            assert (
                layer
                == {
                    Assembly.CARCASS: "carcass",
                    Assembly.FACE_FRAME: "frame",
                    Assembly.DOOR: "doors",
                    Assembly.DRAWER: "drawers",
                    Assembly.BASE: "base",
                    Assembly.SURROUND: "surround",
                }[TRAITS[part.role].of]
            )


@pytest.fixture(scope="module")
def dresser() -> tuple[Unit, Model]:
    unit = ready_unit("pottery-dresser")
    return unit, model_of(unit)


@pytest.fixture(scope="module")
def bookcase() -> tuple[Unit, Model]:
    unit = ready_unit("hallway-bookcase")
    return unit, model_of(unit)


def test_sizes_are_those_of_the_lists(
    dresser: tuple[Unit, Model], bookcase: tuple[Unit, Model]
) -> None:
    for unit, model in (dresser, bookcase):
        told = {
            ref: " x ".join(
                format_length(each, unit.display_unit)
                for each in (row.length, row.width, row.thickness)
            )
            for row in parts_list(unit)
            for ref in row.refs
        }
        assert {part.ref: part.size for part in model.parts} == told
    assert dresser[1].size == "1690 x 900 x 505 mm"
    assert bookcase[1].size == "34 3/4 x 50 3/4 x 9 1/4 in"


def test_drawn_parts_stand_where_the_unit_has_them(dresser: tuple[Unit, Model]) -> None:
    unit, model = dresser
    for part in model.parts:
        points = np.frombuffer(base64.b64decode(model.shapes[part.shape].points), "<f4")
        matrix = np.array(part.matrix).reshape(4, 4)
        placed = points.reshape(-1, 3) @ matrix[:3, :3].T + matrix[:3, 3]
        box = unit.part(part.ref).bounds()
        assert placed.min(axis=0) == pytest.approx(box.low, abs=1e-3)
        assert placed.max(axis=0) == pytest.approx(box.high, abs=1e-3)
        assert part.surface in model.surfaces


def test_bought_in_pieces_lie_on_their_parts(dresser: tuple[Unit, Model]) -> None:
    unit, model = dresser
    assert {each.ref for each in model.fittings} == {each.ref for each in unit.fittings}
    assert {each.inner for each in model.fittings} == {True, False}
    knobs = [part.ref for part in unit.parts if part.role is Role.DRAWER_FRONT]
    for ref in knobs:
        (knob,) = (each for each in model.fittings if each.ref == ref and not each.inner)
        points = np.frombuffer(base64.b64decode(model.shapes[knob.shape].points), "<f4")
        placement = unit.part(ref).placement
        at = [placement.to_unit(tuple(map(float, each))) for each in points.reshape(-1, 3)]
        front = unit.part(ref).bounds().low[1]
        assert max(y for _, y, _ in at) == pytest.approx(front, abs=1e-3)
        assert min(y for _, y, _ in at) < front - 20


def test_doors_and_drawers_have_names_that_tell_them_apart() -> None:
    for name in ("pottery-dresser", "linen-cupboard", "archive-wall"):
        unit = ready_unit(name)
        labels = [each.label for each in model_of(unit).motions]
        assert len(set(labels)) == len(labels) == len(unit.motions)
        for label, motion in zip(labels, unit.motions, strict=True):
            assert unit.part(motion.refs[0]).group in label
            assert isinstance(motion, Swing) is ("hinged" in label)
    assert [each.label for each in model_of(ready_unit("linen-cupboard")).motions] == [
        "Door 1, hinged left",
        "Door 2, hinged right",
    ]
