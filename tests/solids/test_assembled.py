"""A unit as a CadQuery assembly and as a trimesh scene, against the parts it is of."""

from __future__ import annotations

import dataclasses
import re
import shutil
from io import BytesIO
from pathlib import Path

import cadquery
import numpy as np
import pytest
import trimesh

import rodwright
from rodwright.mass import mass_of
from rodwright.solids.assembled import assembly, scene
from rodwright.solids.meshes import placed_mesh

MODELS = Path(__file__).parents[2] / "models"


def unit_of(model):
    return rodwright.set_out(rodwright.read_spec(MODELS / f"{model}.yaml"))


@pytest.fixture(scope="module", params=["pottery-dresser", "hostel-eaves"])
def unit(request):
    return unit_of(request.param)


@pytest.fixture(scope="module")
def made(unit):
    return assembly(unit)


@pytest.fixture(scope="module")
def shown(unit):
    return scene(unit)


def test_the_assembly_has_every_part_by_its_ref_in_its_group(unit, made):
    assert made.name == unit.title
    for part in unit.parts:
        child = made.objects[f"{part.group}/{part.ref}"]
        assert child.name == part.ref
        assert child.metadata["material"] == part.blank.stock.material
    groups = [child.name for child in made.children]
    assert groups == list(dict.fromkeys(part.group for part in unit.parts))


def test_the_assemblys_volume_is_the_parts(unit, made):
    by_arithmetic = sum(mass_of(part.shape).volume for part in unit.parts)
    assert made.toCompound().Volume() == pytest.approx(by_arithmetic, rel=1e-5)


def test_parts_of_the_assembly_stand_where_their_meshes_stand(unit, made):
    found = {name.rsplit("/", 1)[-1]: shape for shape, name, _ in placed(made)}
    for part in unit.parts:
        box = found[part.ref].BoundingBox()
        low, high = placed_mesh(part).bounds
        assert (box.xmin, box.ymin, box.zmin) == pytest.approx(low, abs=0.05)
        assert (box.xmax, box.ymax, box.zmax) == pytest.approx(high, abs=0.05)


def placed(made):
    """Every shape of an assembly where it stands, as CadQuery itself goes through it."""
    for shape, name, location, colour in made:
        yield shape.moved(location), name, colour


def test_parts_of_the_assembly_have_the_colour_that_is_seen(unit, made):
    colours = {name.rsplit("/", 1)[-1]: colour for _, name, colour in placed(made)}
    for part in unit.parts:
        painted = part.finish and part.finish.kind == "paint"
        wanted = part.finish.colour if painted else part.blank.stock.colour
        *seen, alpha = colours[part.ref].toTuple()
        assert seen == pytest.approx([int(wanted[at : at + 2], 16) / 255 for at in (1, 3, 5)])
        assert alpha == 1


def test_the_assembly_goes_through_a_step_file(unit, made, tmp_path):
    path = tmp_path / "unit.step"
    made.export(str(path))
    read = cadquery.importers.importStep(str(path))
    assert len(read.solids().vals()) == len(unit.parts)


def test_the_scene_has_every_part_by_its_ref(unit, shown):
    assert shown.units == "mm"
    assert set(shown.graph.nodes_geometry) == {part.ref for part in unit.parts}
    for part in unit.parts:
        assert shown.graph.transforms.parents[part.ref] == part.group
        told = shown.graph.transforms.edge_data[part.group, part.ref]["metadata"]
        assert told["name"] == part.name
    assert len(shown.geometry) < len(unit.parts)


def test_parts_of_the_scene_are_their_placed_meshes(unit, shown):
    for part in unit.parts:
        matrix, name = shown.graph[part.ref]
        mesh = shown.geometry[name].copy().apply_transform(matrix)
        wanted = placed_mesh(part)
        assert np.allclose(mesh.vertices, wanted.vertices)
        assert mesh.is_volume
    total = sum(mass_of(part.shape).volume for part in unit.parts)
    assert shown.to_mesh().volume == pytest.approx(total, rel=1e-3)


def test_the_scene_goes_through_a_file_with_its_names_and_colours(unit, shown):
    read = trimesh.load_scene(BytesIO(shown.export(file_type="glb")), file_type="glb")
    assert set(read.graph.nodes_geometry) == {part.ref for part in unit.parts}
    part = unit.parts[0]
    colour = (part.finish and part.finish.colour) or part.blank.stock.colour
    wanted = [int(colour[at : at + 2], 16) for at in (1, 3, 5)]
    (vertex, *_) = read.geometry[read.graph[part.ref][1]].visual.vertex_colors
    assert list(vertex[:3]) == wanted


def test_nothing_is_lost_where_names_are_alike_or_strange():
    unit = unit_of("niche-shelf")
    ref = unit.parts[0].ref
    parts = tuple(
        dataclasses.replace(part, group=ref if number % 2 else "a/b@c?d")
        for number, part in enumerate(unit.parts)
    )
    strange = dataclasses.replace(unit, title=ref, parts=parts)
    made = assembly(strange)
    assert made.name == f"{ref} 2"
    assert {f"{ref} 3", "a-b-c-d"} <= set(made.objects)
    assert {part.ref for part in parts} == {name.rsplit("/", 1)[-1] for _, name, _ in placed(made)}
    assert set(scene(strange).graph.nodes_geometry) == {part.ref for part in parts}


def test_both_are_offered_by_name():
    unit = unit_of("niche-shelf")
    assert rodwright.assembly(unit).objects.keys() == assembly(unit).objects.keys()
    assert rodwright.scene(unit).units == "mm"


def test_what_the_documentation_says_runs(tmp_path, monkeypatch, capsys):
    text = (MODELS.parent / "docs" / "python.md").read_text(encoding="utf-8")
    blocks = re.findall(r"```python\n(.*?)```", text, re.DOTALL)
    assert len(blocks) == 3
    shutil.copy(MODELS / "reading-alcove.yaml", tmp_path / "alcove.yaml")
    monkeypatch.chdir(tmp_path)
    exec("\n".join(blocks), {})
    assert "birch plywood" in capsys.readouterr().out
    assert (tmp_path / "unit.step").stat().st_size > 1000
    assert (tmp_path / "unit.glb").stat().st_size > 1000
