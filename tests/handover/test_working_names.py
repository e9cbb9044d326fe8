"""Short names of workings."""

from __future__ import annotations

import json
import re
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given

from kit.samples import worked_part
from kit.specs import unit_from
from kit.strategies import shapes
from rodwright.handover.unit_json import read_unit, unit_json
from rodwright.handover.working_names import working_names
from rodwright.jobs.new import model_names, model_path
from rodwright.unit import (
    Bevel,
    Easing,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    PocketHole,
    Rebate,
    ShapeKey,
    Surface,
    Unit,
    Working,
)

FACE, EDGE, END = Surface.FACE, Surface.FACE_EDGE, Surface.NEAR_END
SIZE = (400.0, 120.0, 20.0)


@pytest.mark.parametrize(
    ("working", "name"),
    [
        (Hole(FACE, (50.0, 37.0), 35.0, 12.5, "hinge cup"), "hole for hinge cup, 35 mm, 12.5 deep"),
        (Hole(FACE, (50.0, 37.0), 4.5), "hole, 4.5 mm, right through"),
        (Rebate(FACE, EDGE, 10.0, 8.0, use="back"), "rebate for back, 10 mm, 8 deep"),
        (Groove(FACE, 10.0, 6.0, 7.0, use="back"), "groove for back, 6 mm, 7 deep"),
        (Housing(FACE, 10.0, 18.0, 6.0, use="shelf"), "housing for shelf, 18 mm, 6 deep"),
        (Notch(0.0, 0.0, 30.0, 40.0, "pipe"), "notch for pipe, 30 x 40 mm, right through"),
        (Mortise(EDGE, (90.0, 0.0), (65.0, 15.0), 2.0, use="hinge leaf"),
         "leaf recess for hinge, 65 x 15 mm, 2 deep"),
        (Mortise(EDGE, (90.0, 5.0), (20.0, 5.0), 2.0, True, use="screw"),
         "slot for screw, 20 x 5 mm, 2 deep"),
        (Mortise(FACE, (90.0, 5.0), (5.0, 20.0), 20.0, True, use="screw"),
         "slot for screw, 20 x 5 mm, right through"),
        (Mortise(EDGE, (9.0, 4.0), (40.0, 8.0), 25.0, use="loose tenon"),
         "mortise for loose tenon, 40 x 8 mm, 25 deep"),
        (PocketHole(FACE, END, 50.0, 9.0, 20.0, 9.5, 4.0, use="pocket screw"),
         "pocket hole for pocket screw, 9.5 mm, at 15 degrees"),
        (Easing(FACE, EDGE, 4.0), "eased arris, 4 mm radius"),
        (Mitre(END, 45.0, EDGE), "mitre, 45 degrees"),
        (Mitre(END, 22.5, FACE), "bevel, 22.5 degrees"),
        (Bevel(FACE, EDGE, 10.0, 10.0), "bevel, 45 degrees"),
    ],
)  # fmt: skip
def test_names(working: Working, name: str) -> None:
    assert working_names([working], SIZE, "mm") == (name,)


def row(count: int, use: str, y: float = 37.0) -> list[Working]:
    return [Hole(FACE, (100.0 + 32 * i, y), 5.0, 10.0, use) for i in range(count)]


def test_equal_holes_in_a_line_are_a_row() -> None:
    shelves = working_names(row(5, "adjustable shelves"), SIZE, "mm")
    assert set(shelves) == {"row for adjustable shelves, 5 mm, 10 deep"}
    assert set(working_names(row(5, "dowel"), SIZE, "mm")) == {"row for dowels, 5 mm, 10 deep"}
    assert set(working_names(row(4, "dowel"), SIZE, "mm")) == {"hole for dowel, 5 mm, 10 deep"}


def test_what_holes_are_for_keeps_them_apart() -> None:
    names = working_names(
        [*row(6, "adjustable shelves"), *row(2, "hinge plate", 251.0)], SIZE, "mm"
    )
    assert names[0] == "row for adjustable shelves, 5 mm, 10 deep"
    assert names[-1] == "hole for hinge plate, 5 mm, 10 deep"


def test_inches() -> None:
    hole = Hole(FACE, (50.0, 37.0), 6.35, 9.525, "adjustable shelves")
    assert working_names([hole], SIZE, "in") == ("hole for adjustable shelves, 1/4 in, 3/8 deep",)
    cup = Hole(FACE, (50.0, 37.0), 35.0, 12.7, "hinge cup")
    assert working_names([cup], SIZE, "in") == ("hole for hinge cup, 35 mm (1 3/8 in), 1/2 deep",)


@given(shapes())
def test_every_working_has_a_name_in_plain_letters(shape: ShapeKey) -> None:
    names = working_names(shape[1], shape[0], "mm")
    assert len(names) == len(shape[1])
    for name in names:
        assert re.fullmatch(r"[a-z]+( [a-z]+)*, [ -~]+", name)


@pytest.mark.parametrize("model", model_names())
def test_bores_of_every_ready_model_say_what_they_are_for(model: str) -> None:
    unit = unit_from(model_path(model).read_text(encoding="utf-8"))
    for part in unit.parts:
        for each in part.workings:
            if not isinstance(each, Mitre | Bevel | Easing):
                assert each.use, (part.ref, each)


def test_a_use_is_no_difference_and_goes_into_the_document(tmp_path: Path) -> None:
    hole = Hole(FACE, (50.0, 37.0), 5.0, 10.0, "adjustable shelves")
    assert hole == replace(hole, use="")
    assert hash(hole) == hash(replace(hole, use=""))
    part = replace(worked_part(), workings=(hole,))
    document = json.loads(unit_json(Unit("One", part.bounds(), (part,))))
    path = tmp_path / "unit.json"
    path.write_text(json.dumps(document))
    [read] = read_unit(path).parts[0].workings
    assert isinstance(read, Hole)
    assert read.use == "adjustable shelves"
    # As it was before workings said what they are for.
    del document["parts"][0]["workings"][0]["use"]
    path.write_text(json.dumps(document))
    [read] = read_unit(path).parts[0].workings
    assert isinstance(read, Hole)
    assert read.use == ""
