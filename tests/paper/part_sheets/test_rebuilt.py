"""Every part made again of its sheet alone, and held to its solid.

What the figures mean is known to half of the last place printed.  So two pieces are made: with all
the wood that they may mean and with the least, and the solid has to lie between the two.
"""

from __future__ import annotations

import copy
from collections.abc import Iterator
from dataclasses import replace
from itertools import permutations, product
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st
from manifold3d import Manifold, Mesh64

from kit.panels import unit_of
from kit.samples import PLYWOOD
from kit.sheet_frame import STEP
from kit.sheet_reader import Bench
from kit.specs import unit_from
from kit.strategies import shapes
from kit.wishes import Wish, wishes
from rodwright.geometry import Vector
from rodwright.lengths import LengthUnit
from rodwright.paper.part_sheets.files import sheet_data
from rodwright.paper.part_sheets.sheets import Laid, laid_sheets
from rodwright.problems import ProblemsError
from rodwright.setout import set_out
from rodwright.solids.meshes import LINEAR_TOLERANCE, mesh_of
from rodwright.unit import (
    Bevel,
    Blank,
    Easing,
    FingerPull,
    Grain,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    Part,
    Placement,
    PocketHole,
    Rebate,
    Role,
    ShapeKey,
    Surface,
    Unit,
)
from rodwright.wishes import read_spec

MODELS = sorted(Path(__file__).parents[3].glob("models/*.yaml"))
NOTHING = 0.01
"""mm3 that rounding of coordinates leaves."""
SLIVER = 1.0
"""mm3: what a hundredth of a millimetre is over the wall of a bore, 5 mm wide and 12 deep."""
WAYS: list[tuple[Vector, Vector]] = [
    (first, second)
    for first, second in permutations(
        [
            tuple(sign if axis == at else 0.0 for axis in range(3))
            for at, sign in product(range(3), (1.0, -1.0))
        ],
        2,
    )
    if abs(np.dot(first, second)) < 0.5
]
"""All the ways in which a piece can lie square to the unit."""


def solid(part: Part) -> Manifold:
    mesh = mesh_of(part.shape)
    return Manifold(Mesh64(mesh.vertices, mesh.faces.astype(np.uint64)))


def made(sheet: dict[str, Any]) -> tuple[Manifold, Manifold]:
    """A piece with all the wood that a sheet's figures may mean, and with the least."""
    slack = STEP[sheet["unit"]] + LINEAR_TOLERANCE
    return Bench(sheet, -slack).made(), Bench(sheet, slack).made()


def differs(real: Manifold, sheet: dict[str, Any]) -> float:
    """mm3 of wood that a sheet's figures can't mean, and that they mean and isn't there."""
    most, least = made(sheet)
    return float((real - most).volume() + (least - real).volume())


def sheets(unit: Unit) -> list[tuple[Manifold, Laid, dict[str, Any]]]:
    return [(solid(each.piece), each, sheet_data(each.sheet)) for each in laid_sheets(unit)]


@pytest.mark.parametrize("model", MODELS, ids=lambda path: path.stem)
def test_every_part_of_every_model_is_made_of_its_sheet(model: Path) -> None:
    unit = set_out(read_spec(model))
    pieces = sheets(unit)
    assert sorted(ref for _, _, sheet in pieces for ref in sheet["refs"]) == sorted(
        part.ref for part in unit.parts
    )
    for real, each, sheet in pieces:
        most, least = made(sheet)
        assert (real - most).volume() + (least - real).volume() < NOTHING, each.sheet.refs
        assert least.volume() < real.volume() < most.volume()
        inner, box, outer = (np.array(one.bounding_box()) for one in (least, real, most))
        assert np.all((outer[:3] < box[:3]) & (box[:3] < inner[:3]))
        assert np.all((inner[3:] < box[3:]) & (box[3:] < outer[3:]))


def a_unit(shape: ShapeKey, way: tuple[Vector, Vector], shows: Surface, unit: str) -> Unit:
    blank = Blank(*shape[0], PLYWOOD, Grain.LENGTHWISE, (shows,))
    placed = Placement((0.0, 0.0, 0.0), *way)
    part = Part("P1", "Piece", Role.PACKER, "Test", blank, placed, shape[1])
    return unit_of(part, display_unit=unit)


@given(
    shape=shapes(),
    way=st.sampled_from(WAYS),
    shows=st.sampled_from([Surface.FACE, Surface.REVERSE, Surface.FACE_EDGE]),
    unit=st.sampled_from(["mm", "in"]),
)
@settings(
    max_examples=100,
    suppress_health_check=[
        HealthCheck.too_slow,
        HealthCheck.filter_too_much,
        HealthCheck.data_too_large,
    ],
)
def test_any_piece_is_made_of_its_sheet(
    shape: ShapeKey, way: tuple[Vector, Vector], shows: Surface, unit: str
) -> None:
    try:
        ((real, _, sheet),) = sheets(a_unit(shape, way, shows, unit))
    except ValueError:  # cut to nothing, or into several
        assume(False)
    assert differs(real, sheet) < NOTHING


@given(wish=wishes(), unit=st.sampled_from(["mm", "in"]))
@settings(
    max_examples=6,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
def test_parts_of_any_unit_are_made_of_their_sheets(wish: Wish, unit: LengthUnit) -> None:
    try:
        random = replace(unit_from("unit: mm\n", **wish), display_unit=unit)
    except ProblemsError:
        assume(False)
    for real, each, sheet in sheets(random):
        assert differs(real, sheet) < SLIVER, each.sheet.refs


@pytest.mark.parametrize(("was", "is_"), [("near", "far"), ("far", "near")])
def test_a_piece_laid_the_other_way_round_is_another_one(was: str, is_: str) -> None:
    """A sheet that had its hand wrong would be found."""
    path = next(each for each in MODELS if each.stem == "linen-cupboard")
    handed = [each for each in laid_sheets(set_out(read_spec(path))) if each.sheet.hands.mirrored]
    found = [each for each in handed if each.sheet.lies.edge_lies == was]
    assert len(found) >= 1
    for each in found:
        sheet = sheet_data(each.sheet)
        sheet["lies"]["edge_lies"] = is_
        assert differs(solid(each.piece), sheet) > 1000.0


def figures(found: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    """Where the texts and counts of a sheet's figures are."""
    if isinstance(found, dict):
        for key, value in found.items():
            yield from figures(value, (*path, key))
    elif isinstance(found, list):
        for at, value in enumerate(found):
            yield from figures(value, (*path, at))
    else:
        yield path


def told(sheet: dict[str, Any]) -> list[tuple[Any, ...]]:
    """Where a sheet tells what a piece is made by."""
    paths = [("finished", each) for each in sheet["finished"]]
    paths += [("lies", each) for each in ("up", "end", "edge", "edge_lies", "face")]
    for at, operation in enumerate(sheet["operations"]):
        for number, entry in enumerate(operation["entries"]):
            place = ("operations", at, "entries", number)
            for key in ("figures", "into", "kind", "count"):
                paths += figures(entry[key], (*place, key))
    return paths


def without(sheet: dict[str, Any], path: tuple[Any, ...]) -> dict[str, Any]:
    lacking = copy.deepcopy(sheet)
    place: Any = lacking
    for key in path[:-1]:
        place = place[key]
    del place[path[-1]]
    return lacking


def piece_with_every_kind() -> Part:
    """A piece with every kind of working, none across another: each figure shows in the wood."""
    return Part(
        "X1", "Piece", Role.SHELF, "Test",
        Blank(1200.0, 300.0, 30.0, PLYWOOD, Grain.LENGTHWISE, (Surface.REVERSE,)),
        Placement((0.0, 0.0, 0.0), *WAYS[0]),
        (
            Mitre(Surface.NEAR_END, 20.0, Surface.BACK_EDGE),
            Bevel(Surface.FACE_EDGE, Surface.FAR_END, 60.0, 40.0),
            Bevel(Surface.FACE, Surface.BACK_EDGE, 9.0, 7.0),
            Notch(600.0, 0.0, 40.0, 30.0),
            Notch(900.0, 250.0, 50.0, 20.0),
            Rebate(Surface.REVERSE, Surface.FACE_EDGE, 12.0, 8.0, 200.0, 300.0),
            Groove(Surface.FACE, 100.0, 6.0, 7.0, 200.0, 400.0),
            Groove(Surface.BACK_EDGE, 10.0, 5.0, 6.0, 500.0, 620.0),
            Housing(Surface.FACE, 450.0, 18.0, 6.0, 50.0, 250.0),
            Easing(Surface.FACE, Surface.FACE_EDGE, 4.0, 350.0, 500.0),
            Hole(Surface.FACE, (700.0, 60.0), 8.0),
            *(Hole(Surface.REVERSE, (700.0 + 32.0 * at, 100.0), 5.0, 12.0) for at in range(6)),
            Hole(Surface.FAR_END, (180.0, 12.0), 6.0, 25.0),
            Mortise(Surface.FACE, (520.0, 170.0), (40.0, 8.0), 9.0, round_ends=True),
            Mortise(Surface.BACK_EDGE, (1000.0, 6.0), (30.0, 8.0), 20.0),
            PocketHole(Surface.REVERSE, Surface.FAR_END, 240.0, 15.0, 20.0, 9.5, 4.0),
            FingerPull(Surface.REVERSE, Surface.FACE_EDGE, 44.0, 6.0, 4.0, 700.0, 860.0),
        ),
    )  # fmt: skip


@pytest.fixture(scope="module")
def kinds() -> list[Laid]:
    """The part with every kind of working, a handed side with rows of holes, and a divider that is
    worked on both faces."""
    boot_room = laid_sheets(set_out(read_spec(MODELS[1])))
    worked = laid_sheets(unit_of(piece_with_every_kind()))
    return [*worked, *(each for each in boot_room if each.sheet.refs[0] in ("SD2", "DV1"))]


def test_the_samples_have_every_kind_of_working(kinds: list[Laid]) -> None:
    assert len(kinds) == 3
    entries = {
        entry.kind
        for each in kinds
        for operation in each.sheet.operations
        for entry in operation.entries
    }
    assert entries == {
        "rebate", "groove", "housing", "notch", "mitre", "bevel", "eased arris", "hole", "mortise",
        "pocket hole", "finger pull",
    }  # fmt: skip


@pytest.mark.parametrize("number", range(3))
def test_a_sheet_that_lacks_a_figure_makes_no_piece(kinds: list[Laid], number: int) -> None:
    """Whatever is left out: the bench can't make it, or what is told twice doesn't agree."""
    real, sheet = solid(kinds[number].piece), sheet_data(kinds[number].sheet)
    assert differs(real, sheet) < NOTHING
    for path in told(sheet):
        try:
            found = differs(real, without(sheet, path))
        except (KeyError, IndexError, ValueError, AssertionError):
            continue
        assert found > NOTHING, path


def test_a_figure_that_is_wrong_by_a_millimetre_is_found(kinds: list[Laid]) -> None:
    """On the piece whose workings don't cross."""
    real, sheet = solid(kinds[0].piece), sheet_data(kinds[0].sheet)
    for path in told(sheet):
        wrong = copy.deepcopy(sheet)
        place: Any = wrong
        for key in path[:-1]:
            place = place[key]
        figure = place[path[-1]]
        if not str(figure).removesuffix("°").replace(".", "").isdigit():
            continue
        degrees = "°" if str(figure).endswith("°") else ""
        more = float(str(figure).removesuffix("°")) + 1
        place[path[-1]] = f"{more:g}{degrees}" if isinstance(figure, str) else int(more)
        try:
            found = differs(real, wrong)
        except AssertionError:
            continue
        assert found > 1.0, (path, figure)


@pytest.mark.parametrize("off", [0.0, 1e-4, -1e-4])
def test_a_cut_through_a_corner_of_the_blank_is_told_by_two_points(off: float) -> None:
    """It crosses three surfaces there, two of them in one place."""
    cut = Bevel(Surface.BACK_EDGE, Surface.FAR_END, 200.0 + off, 100.0 + off)
    shape = ((600.0, 100.0, 18.0), (cut,))
    ((real, _, sheet),) = sheets(a_unit(shape, WAYS[0], Surface.FACE, "mm"))
    ((entry,),) = (operation["entries"] for operation in sheet["operations"])
    assert entry["figures"]["from"] != entry["figures"]["to"]
    assert differs(real, sheet) < NOTHING
